// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/battery.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

double heightOf(double flightTime) {
    return standardGravity * flightTime * flightTime / 8;
}

std::optional<NoAnswer> notPossible(TestKindId kind, const BatterySession& session, BodySide side) {
    for (const Gap& gap : session.battery.gaps)
        if (gap.kind == kind && (gap.side == BodySide::Both || gap.side == side))
            return NoAnswer{NoAnswer::Why::NotPossible, say("not possible: %1", gap.reason)};
    return std::nullopt;
}

double meanOfBest(const TestKind& kind, std::vector<double> values) {
    std::ranges::sort(values);
    if (kind.higherIsBetter)
        std::ranges::reverse(values);
    values.resize(std::min(values.size(), static_cast<std::size_t>(kind.bestOf)));
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

} // namespace

NoAnswer notTested() {
    return {NoAnswer::Why::NotTested, say("not tested")};
}

Answer<double> attemptValue(const TestKind& kind, const Attempt& attempt,
                            const std::optional<Mass>& bodyMass) {
    switch (kind.formula) {
    case TestFormula::Value:
        return attempt.value;
    case TestFormula::FlightHeight:
        return heightOf(attempt.value);
    case TestFormula::HeightRsi:
        return attempt.value / attempt.contact.value();
    case TestFormula::FlightRsi:
        return heightOf(attempt.value) / attempt.contact.value();
    case TestFormula::PerBodyMass:
        if (!bodyMass)
            return NoAnswer{NoAnswer::Why::NoBodyMass, say("the session has no body mass")};
        return attempt.value / kilograms(*bodyMass);
    }
    return NoAnswer{NoAnswer::Why::Other, say("unknown formula")};
}

Answer<TestValue> testValue(const Stored<TestKindId, TestKind>& kind, const BatterySession& session,
                            BodySide side) {
    std::vector<double> values;
    for (const TestAttempts& test : session.battery.tests) {
        if (test.kind != kind.id)
            continue;
        for (const Attempt& attempt : test.attempts) {
            if (attempt.side != side || !attempt.excluded.empty())
                continue;
            const auto value = attemptValue(kind.value, attempt, session.bodyMass);
            if (!value)
                return value.why();
            values.push_back(*value);
        }
    }
    if (values.empty()) {
        if (const auto gap = notPossible(kind.id, session, side))
            return *gap;
        return notTested();
    }
    const auto n = static_cast<double>(values.size());
    TestValue found{.counted = static_cast<int>(values.size())};
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    found.best = kind.value.higherIsBetter ? *high : *low;
    for (const double value : values)
        found.mean += value / n;
    if (values.size() > 1) {
        double squares = 0;
        for (const double value : values)
            squares += (value - found.mean) * (value - found.mean);
        found.sd = std::sqrt(squares / (n - 1));
    }
    found.value = kind.value.rule == AttemptRule::Best ? found.best
                  : kind.value.bestOf > 0              ? meanOfBest(kind.value, std::move(values))
                                                       : found.mean;
    return found;
}

Asymmetry asymmetry(double left, double right, bool higherIsBetter) {
    if (left == right)
        return {.percent = 0, .better = BodySide::Both};
    const bool leftBetter = (left > right) == higherIsBetter;
    const double better = leftBetter ? left : right;
    return {.percent = 100 * std::abs(left - right) / better,
            .better = leftBetter ? BodySide::Left : BodySide::Right};
}

std::span<const BodySide> sidesOf(const TestKind& kind) {
    static constexpr std::array one{BodySide::Both};
    static constexpr std::array all{BodySide::Left, BodySide::Right, BodySide::Both};
    if (kind.twoSided)
        return std::span(all).first(kind.bothToo ? 3 : 2);
    return one;
}

} // namespace slopebook::answers
