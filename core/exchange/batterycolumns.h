// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the battery's two tables: tests.csv and attempts.csv. Export writes them in this
// order.
#pragma once

#include "core/exchange/columnspec.h"

namespace slopebook::exchange {

enum TestColumn : std::size_t {
    TestName,
    TestUnit,
    TestBetter,
    TestSides,
    TestRule,
    TestBestOf, ///< of the mean: so many best attempts; nothing: all
    TestPlanned,
    TestFormulaWord,
    TestDecimals,
    TestError,
    TestErrorIn,
    TestErrorSource,
    TestSmallest,
    TestSmallestSource,
    TestNote,
    TestCount
};
constexpr std::size_t testRequired = TestBetter + 1;
inline constexpr std::array<ColumnSpec, TestCount> testSpec{
    textColumn("test", "name").needed(),
    textColumn("unit", "unit of the day's value").needed(),
    textColumn("better", "which way is better", "higher|lower").needed(),
    textColumn("sides", "one value, one of each side, or of each side and both at once",
               "one|two|two and both"),
    textColumn("rule", "which attempts make the day's value", "best|mean"),
    countColumn("best_of", "of the mean: so many best attempts; empty: all"),
    countColumn("attempts", "attempts planned on each side"),
    textColumn("formula", "how the value comes from what is read",
               "value|flight height|height rsi|flight rsi|per body mass"),
    countColumn("decimals", "decimals that the value is shown with", 0),
    ColumnSpec{.name = "typical_error",
               .holds = Holds::Number,
               .meaning = "typical error, in what typical_error_in says",
               .least = 0},
    textColumn("typical_error_in", "unit: the test's unit; percent: % of the value",
               "unit|percent"),
    textColumn("typical_error_source", "source of it, in words"),
    ColumnSpec{.name = "smallest",
               .holds = Holds::Number,
               .meaning = "smallest change that matters, in the test's unit",
               .least = 0},
    textColumn("smallest_source", "source of it; empty: the coach's own"),
    textColumn("test_note", "note on the test")};
inline constexpr auto testColumns = namesOf(testSpec);

/// One row an attempt, or one row a test, a lift or a load that was not possible, or one row with
/// the conditions of a test alone.
enum AttemptColumn : std::size_t {
    AttemptDate,
    AttemptAthlete,
    AttemptTest,
    AttemptValue,
    AttemptSession,
    AttemptLift,
    AttemptSide,
    AttemptContact,
    AttemptNotPossible,
    AttemptExcluded,
    AttemptNote,
    AttemptSurface,
    AttemptDevice,
    AttemptFootwear,
    AttemptTechnique,
    AttemptPlace,         ///< this and what follows: files from before have neither
    AttemptNotComparable, ///< why it stands beside no other day of the test
    AttemptLoad,          ///< of a lift that one load only was not possible of
    AttemptUnit,          ///< of the value as it was read: told to who reads the table alone
    AttemptCount
};
constexpr std::size_t attemptRequired = AttemptValue + 1;
inline constexpr std::array<ColumnSpec, AttemptCount> attemptSpec{
    dayColumn("date", "day of the session").needed(),
    textColumn("athlete", "whose it is").needed(),
    textColumn("test", "which test"),
    ColumnSpec{.name = "value",
               .holds = Holds::Number,
               .meaning = "what was read, in value_unit: of a jump by flight time that time, not "
                          "the height",
               .least = 0},
    countColumn("session", "which of the athlete's sessions of that day"),
    textColumn("lift", "a lift that was not possible"),
    textColumn("side", "which side; empty: both at once", "left|right|both"),
    ColumnSpec{.name = "contact_s",
               .holds = Holds::Number,
               .unit = "s",
               .meaning = "contact time, where the formula takes it",
               .least = 0,
               .most = 10},
    textColumn("not_possible", "why the test or the lift was not possible"),
    textColumn("excluded", "why the attempt does not count; empty: it counts"),
    textColumn("attempt_note", "note on the attempt"),
    textColumn("surface", "surface it was done on"),
    textColumn("test_device", "what it was measured with"),
    textColumn("footwear", "footwear it was done in"),
    textColumn("technique", "technique of the test in that session"),
    textColumn("place", "where it was measured"),
    textColumn("not_comparable", "why it stands beside no other day of the test; empty: it may"),
    massColumn("load_kg", "of a lift that one load only was not possible of: that load"),
    textColumn("value_unit", "unit of value")};
inline constexpr auto attemptColumns = namesOf(attemptSpec);

/// How sides tells a test of each side and of both at once; else "one" or "two".
constexpr std::string_view bothTooWord = "two and both";

} // namespace slopebook::exchange
