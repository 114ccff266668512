// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadtests.h"

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
            m_repeats[key].push_back(
                {.athlete = session.athlete, .first = before->second, .second = value});
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
    std::vector<RepeatedTest> pairs;
    if (const auto found = m_repeats.find({kind, side}); found != m_repeats.end())
        for (const RepeatedTest& pair : found->second)
            if (!athlete || pair.athlete == *athlete)
                pairs.push_back(pair);
    return pairs;
}

} // namespace slopebook::answers
