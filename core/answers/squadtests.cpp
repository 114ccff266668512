// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadtests.h"

#include "core/answers/smallest.h"

#include <utility>

namespace slopebook::answers {

void SquadTests::add(const BatterySession& session) {
    if (session.athlete != m_athlete) {
        m_ofAthlete.clear();
        m_athlete = session.athlete;
    }
    auto& values = m_ofAthlete[session.session];
    const std::pair when{session.date, session.ordinal};
    for (const auto& kind : m_kinds)
        for (const BodySide side : sidesOf(kind.value)) {
            const auto value = testValue(kind, session, side);
            if (!value)
                continue;
            const Key key{kind.id, side};
            const TestAttempts* held = session.battery.test(kind.id);
            if (!held || held->conditions.notComparable.empty())
                values[key] = value->value; // for pairs
            const auto [place, isNew] =
                m_latest[key].try_emplace(session.athlete, Dated{when, value->value});
            if (!isNew && place->second.when < when)
                place->second = {when, value->value};
        }
    if (!session.repeatOf)
        return;
    const auto first = m_ofAthlete.find(*session.repeatOf);
    if (first == m_ofAthlete.end())
        return;
    for (const auto& [key, value] : values)
        if (const auto before = first->second.find(key); before != first->second.end())
            m_repeats[key][session.athlete].push_back(
                {.athlete = session.athlete, .first = before->second, .second = value});
}

void SquadTests::forget(AthleteId athlete) {
    for (auto& [key, dated] : m_latest)
        dated.erase(athlete);
    for (auto& [key, pairs] : m_repeats)
        pairs.erase(athlete);
    if (athlete == m_athlete)
        m_ofAthlete.clear();
}

std::vector<double> SquadTests::latest(TestKindId kind, BodySide side) const {
    std::vector<double> values;
    if (const auto found = m_latest.find({kind, side}); found != m_latest.end())
        for (const auto& [athlete, dated] : found->second)
            values.push_back(dated.value);
    return values;
}

std::vector<RepeatedTest> SquadTests::repeats(TestKindId kind, BodySide side,
                                              std::optional<AthleteId> athlete) const {
    const auto found = m_repeats.find({kind, side});
    if (found == m_repeats.end())
        return {};
    if (athlete) {
        const auto own = found->second.find(*athlete);
        return own == found->second.end() ? std::vector<RepeatedTest>() : own->second;
    }
    std::vector<RepeatedTest> pairs;
    for (const auto& [each, own] : found->second)
        pairs.insert(pairs.end(), own.begin(), own.end());
    return pairs;
}

std::optional<Smallest> SquadTests::ownSmallest(TestKindId kind, BodySide side) const {
    auto values = latest(kind, side);
    KeptSmallest& kept = m_smallest[{kind, side}];
    if (kept.values != values) {
        kept.found = chooseSmallest(values, std::nullopt, std::nullopt);
        kept.values = std::move(values);
    }
    return kept.found;
}

} // namespace slopebook::answers
