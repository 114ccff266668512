// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the battery's two tables: tests.csv and attempts.csv. Export writes them in this
// order.
#pragma once

#include <array>
#include <string_view>

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
constexpr std::array<std::string_view, TestCount> testColumns{"test",
                                                              "unit",
                                                              "better",
                                                              "sides",
                                                              "rule",
                                                              "best_of",
                                                              "attempts",
                                                              "formula",
                                                              "decimals",
                                                              "typical_error",
                                                              "typical_error_in",
                                                              "typical_error_source",
                                                              "smallest",
                                                              "smallest_source",
                                                              "test_note"};

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
    AttemptCount
};
constexpr std::size_t attemptRequired = AttemptValue + 1;
constexpr std::array<std::string_view, AttemptCount> attemptColumns{
    "date",        "athlete",   "test",         "value",    "session",        "lift",
    "side",        "contact_s", "not_possible", "excluded", "attempt_note",   "surface",
    "test_device", "footwear",  "technique",    "place",    "not_comparable", "load_kg"};

/// How sides tells a test of each side and of both at once; else "one" or "two".
constexpr std::string_view bothTooWord = "two and both";

} // namespace slopebook::exchange
