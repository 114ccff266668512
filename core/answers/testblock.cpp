// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/testblock.h"

#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

constexpr double fewRepeats = 2; // df: what so few say may lie under what attempts show

BatterySession headOf(const BatterySession& session) {
    return {.session = session.session,
            .athlete = session.athlete,
            .date = session.date,
            .ordinal = session.ordinal,
            .bodyMass = session.bodyMass,
            .repeatOf = session.repeatOf,
            .battery = {}};
}

Conditions conditionsOfTest(const BatterySession& session, TestKindId kind) {
    const TestAttempts* test = session.battery.test(kind);
    return test == nullptr ? Conditions{} : test->conditions;
}

} // namespace

std::optional<MeanOfDays> TestBlock::mean() const {
    return meanOf(figures());
}

std::vector<double> TestBlock::figures() const {
    std::vector<double> all;
    for (const TestValue& value : values)
        all.push_back(value.value);
    return all;
}

TestBlock testBlock(const Stored<TestKindId, TestKind>& kind,
                    std::span<const BatterySession> sessions, BodySide side) {
    TestBlock block, apart;
    for (const BatterySession& session : sessions) {
        auto value = testValue(kind, session, side);
        const Conditions conditions = conditionsOfTest(session, kind.id);
        if (!value) {
            if (value.why().why != NoAnswer::Why::NotTested) {
                block.why = value.why();
                block.whySaid = headOf(session);
                block.whyConditions = conditions;
            }
            continue;
        }
        TestBlock& to = conditions.notComparable.empty() ? block : apart;
        to.values.push_back(*value);
        to.sessions.push_back(headOf(session));
        to.conditions.push_back(conditions);
    }
    if (block.values.empty() && !apart.values.empty())
        return apart;
    return block;
}

TestBlock latestOf(const Stored<TestKindId, TestKind>& kind,
                   std::span<const BatterySession> sessions, BodySide side) {
    for (std::size_t at = sessions.size(); at-- > 0;)
        if (testValue(kind, sessions[at], side))
            return testBlock(kind, sessions.subspan(at, 1), side);
    return testBlock(kind, sessions, side);
}

TestValue valueOf(const TestBlock& block, const TestKind& kind) {
    TestValue made = block.values.front();
    if (block.values.size() == 1)
        return made;
    const auto days = static_cast<double>(block.values.size());
    made = {.value = block.mean()->value, .best = block.values.front().best};
    for (const TestValue& value : block.values) {
        made.counted += value.counted;
        made.best =
            kind.higherIsBetter ? std::max(made.best, value.best) : std::min(made.best, value.best);
        made.mean += value.mean / days;
    }
    return made;
}

Under underOfBlocks(const TestBlock& from, const TestBlock& to, Devices devices) {
    Under under;
    for (const Conditions& before : from.conditions)
        for (const Conditions& after : to.conditions) {
            if (under.notComparable.empty())
                under.notComparable = notComparableWords(before, after);
            for (const ConditionChange& change : conditionChanges(before, after, devices))
                if (std::ranges::find(under.changes, change.what, &ConditionChange::what) ==
                    under.changes.end())
                    under.changes.push_back(change);
        }
    return under;
}

std::optional<double> leastNoise(const TestBlock& from, const TestBlock& to) {
    if (from.values.size() != 1 || to.values.size() != 1)
        return std::nullopt;
    return attemptNoise(from.values[0], to.values[0]);
}

std::optional<TestNoiseUsed> noiseBetween(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                          AthleteId athlete, const SquadTests& squad,
                                          const TestBlock& from, const TestBlock& to,
                                          std::span<const TestBlock> all) {
    const double middle = (from.mean()->value + to.mean()->value) / 2;
    if (auto known = testNoise(kind, side, athlete, squad, middle)) {
        if (known->df <= fewRepeats)
            if (const auto least = leastNoise(from, to))
                known->te = std::max(known->te, *least);
        return known;
    }
    std::vector<std::vector<double>> days;
    for (const TestBlock& block : all)
        days.push_back(block.figures());
    if (const auto spread = spreadOfDays(days))
        return TestNoiseUsed{.te = spread->sd,
                             .df = spread->df,
                             .origin = TestNoiseUsed::Origin::Athlete,
                             .source = say("how far these blocks' own days lie apart")};
    return std::nullopt;
}

} // namespace slopebook::answers
