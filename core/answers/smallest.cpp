// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/smallest.h"

#include "core/answers/figures.h"
#include "core/answers/profile.h"
#include "core/answers/published.h"
#include "core/answers/threshold.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>

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

/// How many distances between two of the ascending values are no longer than that.
std::size_t countWithin(std::span<const double> ascending, double distance) {
    std::size_t count = 0;
    std::size_t low = 0;
    for (std::size_t high = 0; high < ascending.size(); ++high) {
        while (ascending[high] - ascending[low] > distance)
            ++low;
        count += high - low;
    }
    return count;
}

/// The k-th smallest distance, from 1, itself: doubles that are not negative are ordered as their
/// bits are, so that halving the bits ends on it, and the distances need not be listed.
double smallestDistance(std::vector<double> values, std::size_t k) {
    std::ranges::sort(values);
    std::uint64_t below = 0; // the least that may be it
    auto enough = std::bit_cast<std::uint64_t>(values.back() - values.front());
    while (below < enough) {
        const std::uint64_t middle = below + (enough - below) / 2;
        if (countWithin(values, std::bit_cast<double>(middle)) >= k)
            enough = middle;
        else
            below = middle + 1;
    }
    return std::bit_cast<double>(enough);
}

} // namespace

double robustSd(std::span<const double> values) {
    constexpr double atNormal = 2.21914;
    constexpr std::array few{0.399, 0.994, 0.512, 0.844, 0.611, 0.857, 0.669, 0.872}; // n = 2 to 9
    const std::size_t n = values.size();
    if (n < 2)
        return 0;
    const std::size_t h = n / 2 + 1;
    const double distance = smallestDistance({values.begin(), values.end()}, h * (h - 1) / 2);
    const auto count = static_cast<double>(n);
    const double ofFew = n <= 9 ? few[n - 2] : count / (count + (n % 2 == 1 ? 1.4 : 3.8));
    return atNormal * ofFew * distance;
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
    one.oneRm.reset();
    const std::pair when{session.date, session.ordinal};
    std::map<Mass, std::pair<double, int>> sums;
    for (const Point& p : session.points) {
        auto& [sum, count] = sums[massFromKilograms(p.load)];
        sum += p.velocity;
        ++count;
    }
    for (const auto& [load, total] : sums) {
        const double mean = total.first / total.second;
        const auto [place, isNew] = m_seen[load].try_emplace(session.athlete, Dated{when, mean});
        if (!isNew && place->second.when < when)
            place->second = {when, mean};
    }
    one.maxima.insert(one.maxima.end(), session.maxima.begin(), session.maxima.end());
    if (makesALine(session) &&
        (!one.latest || std::pair{one.latest->date, one.latest->ordinal} < when))
        one.latest = session;
}

void SquadLatest::forget(AthleteId athlete) {
    if (m_athletes.erase(athlete) == 0)
        return;
    for (auto& [load, seen] : m_seen)
        seen.erase(athlete);
    std::erase_if(m_seen, [](const auto& each) { return each.second.empty(); });
}

std::vector<Mass> SquadLatest::loads() const {
    std::vector<Mass> loads;
    for (const auto& [load, seen] : m_seen)
        loads.push_back(load);
    return loads;
}

std::vector<double> SquadLatest::atLoad(Mass load) const {
    std::vector<double> values;
    if (const auto seen = m_seen.find(load); seen != m_seen.end())
        for (const auto& [athlete, dated] : seen->second)
            values.push_back(dated.velocity);
    return values;
}

std::vector<double> SquadLatest::oneRms(const Lift& lift) const {
    const bool asBefore = lift == m_asked;
    m_asked = lift;
    std::vector<double> values;
    for (const auto& [athlete, one] : m_athletes) {
        if (!one.latest)
            continue;
        if (!asBefore || !one.oneRm) {
            const auto found = profile(lift, chooseMvt(lift, one.maxima), *one.latest);
            const bool usable =
                found && found->oneRm && found->oneRm->interval && !found->oneRm->extrapolatedFar();
            one.oneRm.emplace(usable ? std::optional(found->oneRm->estimate) : std::nullopt);
        }
        if (*one.oneRm)
            values.push_back(**one.oneRm);
    }
    return values;
}

namespace {
template <class Kept>
std::optional<Smallest> ownOf(Kept& kept, std::vector<double> values) {
    if (kept.values != values)
        kept = {values, chooseSmallest(values, std::nullopt, std::nullopt)};
    return kept.found;
}
} // namespace

std::optional<Smallest> SquadLatest::ownAt(Mass load) const {
    return ownOf(m_keptAt[load], atLoad(load));
}

std::optional<Smallest> SquadLatest::ownOneRm(const Lift& lift) const {
    return ownOf(m_keptOneRm, oneRms(lift));
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
                            .oneRm = squad.ownOneRm(lift)};
    if (!changes.oneRm)
        changes.oneRm = chooseSmallest({}, lift.smallestOneRm, ofOneRm);
    for (const Mass load : squad.loads())
        if (const auto own = squad.ownAt(load))
            changes.at.emplace(load, *own);
    return changes;
}

} // namespace slopebook::answers
