// SPDX-License-Identifier: GPL-3.0-or-later
// How the tests of the battery stand in their table.
#pragma once

#include "core/log/tables.h"
#include "core/model/battery.h"

namespace slopebook::log {

template <>
struct Table<TestKindId> {
    using Value = TestKind;
    static constexpr const char* one = "test";
    static constexpr Says says{.gone = "That test is not in the log any more.",
                               .goneUnchanged =
                                   "That test is not in the log any more. Nothing was changed.",
                               .there = "That test is in the log already. Nothing was changed.",
                               .freeName = "a name that no other test has",
                               .damaged = "the entry of the test '%1' is not as it was written",
                               .numbered = "test %1"};
    static constexpr const char* select =
        "SELECT id, checksum, name, unit, higher_is_better, two_sided, rule, attempts, formula, "
        "decimals, noise, noise_percent, noise_source, smallest, smallest_source, note FROM tests "
        "ORDER BY name COLLATE NOCASE, name";
    static constexpr const char* exists = "SELECT name, checksum FROM tests WHERE id = ?";
    static constexpr const char* taken = "SELECT 1 FROM tests WHERE id <> ?1 AND name = ?2";
    static constexpr const char* insert =
        "INSERT INTO tests (name, unit, higher_is_better, two_sided, rule, attempts, formula, "
        "decimals, noise, noise_percent, noise_source, smallest, smallest_source, note, checksum, "
        "id) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    static constexpr const char* update =
        "UPDATE tests SET name = ?, unit = ?, higher_is_better = ?, two_sided = ?, rule = ?, "
        "attempts = ?, formula = ?, decimals = ?, noise = ?, noise_percent = ?, noise_source = ?, "
        "smallest = ?, smallest_source = ?, note = ?, checksum = ? WHERE id = ?";
    static constexpr const char* erase = "DELETE FROM tests WHERE id = ?";
    // Words that are none become a default here and fail the checksum right after.
    static Value read(const Query& row) {
        TestKind kind{.name = row.text(2),
                      .unit = row.text(3),
                      .higherIsBetter = row.flag(4),
                      .twoSided = row.flag(5),
                      .rule = attemptRuleFromWord(row.text(6)).value_or(AttemptRule::Best),
                      .attempts = row.small(7),
                      .formula = testFormulaFromWord(row.text(8)).value_or(TestFormula::Value),
                      .decimals = row.small(9),
                      .noise = {},
                      .smallest = row.optionalReal(13),
                      .smallestSource = row.text(14),
                      .note = row.text(15)};
        if (!row.null(10))
            kind.noise =
                TestNoise{.value = row.real(10), .percent = row.flag(11), .source = row.text(12)};
        return kind;
    }
    static int bind(Query& query, const Value& value) {
        query.bind(1, value.name);
        query.bind(2, value.unit);
        query.bind(3, value.higherIsBetter);
        query.bind(4, value.twoSided);
        query.bind(5, std::string(word(value.rule)));
        query.bind(6, value.attempts);
        query.bind(7, std::string(word(value.formula)));
        query.bind(8, value.decimals);
        if (value.noise) {
            query.bind(9, value.noise->value);
            query.bind(10, value.noise->percent);
            query.bind(11, value.noise->source);
        }
        query.bind(12, value.smallest);
        query.bind(13, value.smallestSource);
        query.bind(14, value.note);
        return 14;
    }
};

} // namespace slopebook::log
