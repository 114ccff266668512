// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/fairreps.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>

namespace slopebook::answers {

std::vector<double> countingReps(const Set& set) {
    std::vector<double> reps;
    if (set.excluded.empty())
        for (const Rep& rep : set.reps)
            if (rep.excluded.empty())
                reps.push_back(rep.velocity);
    return reps;
}

namespace {

/// The fewest counting reps of a set, by load.
std::map<Mass, std::size_t> fewestByLoad(std::span<const Set> sets) {
    std::map<Mass, std::size_t> fewest;
    for (const Set& set : sets)
        if (const std::size_t n = countingReps(set).size(); n > 0) {
            const auto [place, isNew] = fewest.try_emplace(set.load, n);
            place->second = std::min(place->second, n);
        }
    return fewest;
}

std::size_t atNearest(const std::map<Mass, std::size_t>& fewest, Mass load) {
    return std::ranges::min_element(fewest,
                                    [&](const auto& a, const auto& b) {
                                        return std::llabs(a.first.grams - load.grams) <
                                               std::llabs(b.first.grams - load.grams);
                                    })
        ->second;
}

/// Whether a point moved.
bool remake(LiftSession& session, std::span<const Set> sets,
            std::span<const std::map<Mass, std::size_t>* const> others) {
    bool moved = false;
    for (Point& point : session.points) {
        const auto place = static_cast<std::size_t>(point.set) - 1;
        if (point.set < 1 || place >= sets.size())
            continue;
        const auto reps = countingReps(sets[place]);
        std::size_t k = reps.size();
        for (const auto* other : others)
            k = std::min(k, atNearest(*other, sets[place].load));
        if (k == 0)
            continue;
        const double best =
            *std::max_element(reps.begin(), reps.begin() + static_cast<std::ptrdiff_t>(k));
        moved = moved || best != point.velocity;
        point.velocity = best;
    }
    return moved;
}

} // namespace

std::optional<std::pair<LiftSession, LiftSession>>
fairReps(const Lift& lift, const LiftSession& from, std::span<const Set> fromSets,
         const LiftSession& to, std::span<const Set> toSets) {
    if (lift.rule != PointRule::Fastest)
        return std::nullopt;
    const auto before = fewestByLoad(fromSets), after = fewestByLoad(toSets);
    if (before.empty() || after.empty())
        return std::nullopt;
    std::pair made{from, to};
    const bool first = remake(made.first, fromSets, std::array{&after});
    const bool second = remake(made.second, toSets, std::array{&before});
    return first || second ? std::optional(made) : std::nullopt;
}

std::vector<LiftSession> fairRepsOfAll(const Lift& lift, std::vector<LiftSession> sessions,
                                       std::span<const std::vector<Set>> sets) {
    if (lift.rule != PointRule::Fastest)
        return sessions;
    std::vector<std::map<Mass, std::size_t>> fewest;
    for (const auto& each : sets)
        fewest.push_back(fewestByLoad(each));
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        std::vector<const std::map<Mass, std::size_t>*> others;
        for (std::size_t j = 0; j < fewest.size(); ++j)
            if (j != i && !fewest[j].empty())
                others.push_back(&fewest[j]);
        if (!others.empty() && !fewest[i].empty())
            remake(sessions[i], sets[i], others);
    }
    return sessions;
}

} // namespace slopebook::answers
