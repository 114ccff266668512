// SPDX-License-Identifier: GPL-3.0-or-later
// The other tests of the day: what a test is, its attempts as written down, what was not possible,
// and what breaks a comparison.
#pragma once

#include "core/model/conditions.h"
#include "core/model/date.h"
#include "core/model/ids.h"
#include "core/model/mass.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook {

/// Both at once (or a test without sides), or one side of the body.
enum class BodySide { Both, Left, Right };
/// "both", "left", "right".
std::string_view word(BodySide side);
std::optional<BodySide> bodySideFromWord(std::string_view word);

/// What an attempt's value is made from.
enum class TestFormula {
    Value,        ///< the number as read
    FlightHeight, ///< flight time s: height m = g t^2 / 8
    HeightRsi,    ///< jump height m and contact time s: m/s
    FlightRsi,    ///< flight time s and contact time s: height / contact time, m/s
    PerBodyMass   ///< force N: N/kg with the session's body mass
};
/// "value", "flight height", "height rsi", "flight rsi", "per body mass".
std::string_view word(TestFormula formula);
std::optional<TestFormula> testFormulaFromWord(std::string_view word);
/// The formula takes a second number (contact time).
bool takesContact(TestFormula formula);

/// Which of the attempts makes the day's value.
enum class AttemptRule { Best, Mean };
/// "best", "mean".
std::string_view word(AttemptRule rule);
std::optional<AttemptRule> attemptRuleFromWord(std::string_view word);

/// How noisy a test is: its typical error, in the test's unit or in percent of the value.
struct TestNoise {
    double value = 0;
    bool percent = false;
    std::string source;
    friend bool operator==(const TestNoise&, const TestNoise&) = default;
};

struct TestKind {
    std::string name;
    std::string unit; ///< of the day's value
    bool higherIsBetter = true;
    bool twoSided = false; ///< left and right are tested apart
    bool bothToo = false;  ///< of a two-sided test: both at once as well
    AttemptRule rule = AttemptRule::Best;
    int bestOf = 0;   ///< of AttemptRule::Mean: the mean of so many best attempts; 0: of all
    int attempts = 3; ///< planned on each side
    TestFormula formula = TestFormula::Value;
    int decimals = 2;               ///< shown
    std::optional<TestNoise> noise; ///< published, or the coach's own
    std::optional<double> smallest; ///< the smallest change that matters, in the unit
    std::string smallestSource;     ///< where it came from; empty: the coach's own
    std::string note;
    friend bool operator==(const TestKind&, const TestKind&) = default;
};

/// One attempt as it was read.
struct Attempt {
    BodySide side = BodySide::Both;
    double value = 0;              ///< the formula's first number
    std::optional<double> contact; ///< s, where the formula takes it
    std::string note;
    std::string excluded; ///< the reason; empty when the attempt counts
    friend bool operator==(const Attempt&, const Attempt&) = default;
};

/// The attempts of one test on one day, in order, and under what they were made.
struct TestAttempts {
    TestKindId kind{};
    std::vector<Attempt> attempts; ///< none yet where the conditions alone are written down
    Conditions conditions{};
    friend bool operator==(const TestAttempts&, const TestAttempts&) = default;
};

/// A test, a lift or one load of a lift that was not possible on the day, on one side or at all: a
/// fact, not a zero.
struct Gap {
    std::optional<TestKindId> kind{}; ///< either a test
    std::optional<LiftId> lift{};     ///< or a lift,
    std::optional<Mass> load{};       ///< or of that lift one load only
    BodySide side = BodySide::Both;
    std::string reason;
    friend bool operator==(const Gap&, const Gap&) = default;
};

/// Everything of a session that is not a set of a lift.
struct Battery {
    std::vector<TestAttempts> tests; ///< in order of entry, each test once
    std::vector<Gap> gaps;
    bool empty() const { return *this == Battery{}; }
    const TestAttempts* test(TestKindId kind) const; ///< nullptr where the day has none of it
    friend bool operator==(const Battery&, const Battery&) = default;
};

/// A session's battery with what its questions need of the session.
struct BatterySession {
    SessionId session{};
    AthleteId athlete{};
    Date date{};
    int ordinal = 1; ///< of the athlete's sessions of that day
    std::optional<Mass> bodyMass;
    std::optional<SessionId> repeatOf;
    Battery battery;
    friend bool operator==(const BatterySession&, const BatterySession&) = default;
};

/// The battery as a log keeps it: without tests that say nothing, those without attempts last.
Battery asKept(Battery battery);
/// The conditions of a test, to be changed; the test comes into the battery where it is not there.
Conditions& conditionsOf(Battery& battery, TestKindId kind);

/// Throws BadInput for what may not stand: no name or unit, attempts outside 1..50, both at once of
/// a test without sides, a mean of the best of more than 50, decimals outside 0..4, a typical error
/// or smallest change that is not positive.
void validate(const TestKind& kind);
/// Throws BadInput: a value that is not finite or outside 0 < value < 1,000,000, a contact time
/// outside 0..10 s or where the formula takes none (or none where it takes one), a side that does
/// not suit the test.
void validate(const Attempt& attempt, const TestKind& kind);
/// Throws BadInput: a test twice, a gap about nothing or without a reason, a load that is not of a
/// lift.
void validate(const Battery& battery);

constexpr double largestTestValue = 1'000'000;
constexpr double longestContactTime = 10;

} // namespace slopebook
