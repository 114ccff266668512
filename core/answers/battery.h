// SPDX-License-Identifier: GPL-3.0-or-later
// One test on one day: what an attempt is worth, the day's value, and left against right (method.md
// section 10).
#pragma once

#include "core/model/answer.h"
#include "core/model/battery.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// Where a day has no attempt of a test.
NoAnswer notTested();

/// Standard acceleration of free fall, m/s2 (exact by convention, CGPM 1901).
constexpr double standardGravity = 9.80665;

/// The attempt in the test's unit: height g t^2 / 8 of a flight time (Bosco, Luhtanen and Komi
/// 1983, from memory), height over contact time for reactive strength (Young 1995, from memory),
/// force over body mass. NoBodyMass where that is needed and not known.
Answer<double> attemptValue(const TestKind& kind, const Attempt& attempt,
                            const std::optional<Mass>& bodyMass);

/// A test's value on a day, on one side.
struct TestValue {
    double value = 0; ///< by the kind's rule, in its unit
    int counted = 0;  ///< attempts that count
    double best = 0, mean = 0;
    std::optional<double> sd = {}; ///< of the attempts, two or more
    friend bool operator==(const TestValue&, const TestValue&) = default;
};

/// Refused with the reason: not possible (as written down), not tested, no body mass.
Answer<TestValue> testValue(const Stored<TestKindId, TestKind>& kind, const BatterySession& session,
                            BodySide side);

struct Asymmetry {
    double percent = 0; ///< 100 |better - weaker| / better
    BodySide better = BodySide::Both;
    friend bool operator==(const Asymmetry&, const Asymmetry&) = default;
};
/// Both sides positive; Both where they are equal.
Asymmetry asymmetry(double left, double right, bool higherIsBetter);

/// The sides that a test has.
std::span<const BodySide> sidesOf(const TestKind& kind);

} // namespace slopebook::answers
