// SPDX-License-Identifier: GPL-3.0-or-later
// How the tests of the battery stand in their table.
#pragma once

#include "core/log/tables.h"
#include "core/model/battery.h"

namespace slopebook::log {

template <>
struct Table<TestKindId> : NamedTable {
    using Value = TestKind;
    static constexpr const char* one = "test";
    static constexpr Says says{.gone = "That test is not in the log any more.",
                               .goneUnchanged =
                                   "That test is not in the log any more. Nothing was changed.",
                               .there = "That test is in the log already. Nothing was changed.",
                               .freeName = "a name that no other test has",
                               .damaged = "the entry of the test '%1' is not as it was written",
                               .numbered = "test %1"};
    static constexpr const char* table = "tests";
    static constexpr char checksummedAs = 'K';
    template <class Row, class Visitor>
    static void columns(Row& kind, Visitor& visit) {
        visit("name", kind.name);
        visit("unit", kind.unit);
        visit("higher_is_better", kind.higherIsBetter);
        visit("two_sided", kind.twoSided);
        visit.later("both_too", kind.bothToo);
        visit("rule", kind.rule);
        visit.later("best_of", kind.bestOf);
        visit("attempts", kind.attempts);
        visit("formula", kind.formula);
        visit("decimals", kind.decimals);
        visit.group(kind.noise, [](auto& noise, auto& column) {
            column("noise", noise.value);
            column("noise_percent", noise.percent);
            column("noise_source", noise.source);
        });
        visit("smallest", kind.smallest);
        visit("smallest_source", kind.smallestSource);
        visit("note", kind.note);
    }
};

} // namespace slopebook::log
