// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/smallest.h"

#include "core/answers/figures.h"
#include "core/answers/profile.h"
#include "core/answers/published.h"
#include "core/answers/threshold.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace slopebook::answers {

namespace {

constexpr double squadShare = 0.2;

bool makesALine(const LiftSession& session) {
    if (session.points.size() < 3)
        return false;
    for (const Point& p : session.points)
        if (p.load != session.points.front().load)
            return true;
    return false;
}

} // namespace

double robustSd(std::span<const double> values) {
    constexpr double atNormal = 2.21914;
    constexpr std::array few{0.399, 0.994, 0.512, 0.844, 0.611, 0.857, 0.669, 0.872}; // n = 2 to 9
    const std::size_t n = values.size();
    if (n < 2)
        return 0;
    std::vector<double> apart;
    apart.reserve(n * (n - 1) / 2);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = i + 1; k < n; ++k)
            apart.push_back(std::abs(values[i] - values[k]));
    const std::size_t h = n / 2 + 1;
    const auto place = apart.begin() + static_cast<std::ptrdiff_t>(h * (h - 1) / 2 - 1);
    std::ranges::nth_element(apart, place);
    const auto count = static_cast<double>(n);
    const double ofFew = n <= 9 ? few[n - 2] : count / (count + (n % 2 == 1 ? 1.4 : 3.8));
    return atNormal * ofFew * *place;
}

std::optional<Smallest>
chooseSmallest(std::span<const double> latest, const std::optional<double>& coach,
               const std::optional<std::pair<double, std::string>>& published) {
    if (latest.size() >= squadNeeded)
        if (const double sd = robustSd(latest); sd > 0) {
            constexpr double efficiency = 0.82;
            const double df = efficiency * static_cast<double>(latest.size() - 1);
            const auto end = [&](double p) {
                return squadShare * sd * std::sqrt(df / stats::chiSquareQuantile(p, df));
            };
            return Smallest{squadShare * sd, Smallest::Origin::Squad,
                            "0.2 x robust SD of " + std::to_string(latest.size()) + " athletes",
                            static_cast<int>(latest.size()),
                            stats::Interval{end(0.975), end(0.025)}};
        }
    if (coach && *coach > 0)
        return Smallest{.value = *coach, .origin = Smallest::Origin::Coach, .source = "coach"};
    if (published && published->first > 0)
        return Smallest{.value = published->first,
                        .origin = Smallest::Origin::Published,
                        .source = published->second};
    return std::nullopt;
}

void SquadLatest::add(const LiftSession& session) {
    OfOne& one = m_athletes[session.athlete];
    const std::pair when{session.date, session.ordinal};
    std::map<Mass, std::pair<double, int>> sums;
    for (const Point& p : session.points) {
        auto& [sum, count] = sums[massFromKilograms(p.load)];
        sum += p.velocity;
        ++count;
    }
    for (const auto& [load, total] : sums) {
        const double mean = total.first / total.second;
        const auto [place, isNew] = one.seen.try_emplace(load, Dated{when, mean});
        if (!isNew && place->second.when < when)
            place->second = {when, mean};
    }
    one.maxima.insert(one.maxima.end(), session.maxima.begin(), session.maxima.end());
    if (makesALine(session) &&
        (!one.latest || std::pair{one.latest->date, one.latest->ordinal} < when))
        one.latest = session;
}

std::vector<Mass> SquadLatest::loads() const {
    std::set<Mass> loads;
    for (const auto& [athlete, one] : m_athletes)
        for (const auto& [load, seen] : one.seen)
            loads.insert(load);
    return {loads.begin(), loads.end()};
}

std::vector<double> SquadLatest::atLoad(Mass load) const {
    std::vector<double> values;
    for (const auto& [athlete, one] : m_athletes)
        if (const auto seen = one.seen.find(load); seen != one.seen.end())
            values.push_back(seen->second.velocity);
    return values;
}

std::vector<double> SquadLatest::oneRms(const Lift& lift) const {
    std::vector<double> values;
    for (const auto& [athlete, one] : m_athletes) {
        if (!one.latest)
            continue;
        const auto found = profile(lift, chooseMvt(lift, one.maxima), *one.latest);
        if (found && found->oneRm && found->oneRm->interval && !found->oneRm->extrapolatedFar())
            values.push_back(found->oneRm->estimate);
    }
    return values;
}

SmallestChanges smallestChanges(const Lift& lift, const SquadLatest& squad,
                                const std::optional<double>& earlierOneRm) {
    const auto row = published(lift.name, lift.kind);
    std::optional<std::pair<double, std::string>> ofSpeed;
    std::optional<std::pair<double, std::string>> ofOneRm;
    if (row && row->smallestVelocity)
        ofSpeed.emplace(*row->smallestVelocity, row->smallestSource);
    if (row && row->smallestOneRmPercent && earlierOneRm)
        ofOneRm.emplace(*row->smallestOneRmPercent / 100 * *earlierOneRm, row->smallestSource);
    SmallestChanges changes{.velocity = chooseSmallest({}, lift.smallestVelocity, ofSpeed),
                            .oneRm =
                                chooseSmallest(squad.oneRms(lift), lift.smallestOneRm, ofOneRm)};
    for (const Mass load : squad.loads())
        if (const auto own = chooseSmallest(squad.atLoad(load), std::nullopt, std::nullopt))
            changes.at.emplace(load, *own);
    return changes;
}

} // namespace slopebook::answers
