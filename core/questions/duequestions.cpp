// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/duequestions.h"

#include "core/log/lasttests.h"
#include "core/questions/questions.h"

#include <algorithm>

namespace slopebook::questions {

namespace {

/// Those that were tested at all, lifts before tests, in the order of the log's lists.
std::vector<answers::TestedMeasure> measuresOf(const log::Log& log) {
    std::vector<answers::TestedMeasure> all;
    for (const auto& lift : log.lifts())
        all.push_back({.lift = lift.id, .name = lift.value.name});
    for (const auto& kind : log.testKinds())
        all.push_back({.test = kind.id, .name = kind.value.name});
    for (const log::LastTest& each : log::lastTests(log))
        for (answers::TestedMeasure& measure : all)
            if (measure.lift == each.lift && measure.test == each.test)
                measure.last.push_back({each.athlete, each.last});
    std::erase_if(all, [](const auto& measure) { return measure.last.empty(); });
    return all;
}

} // namespace

answers::SquadDue squadDueOn(const log::Log& log, Date today, std::optional<LiftId> lift,
                             int weeks) {
    auto due = answers::squadDue(
        log.athletes(), measuresOf(log),
        {.today = today, .weeks = weeks, .running = blockOn(log.blocks(), today)});
    if (lift)
        std::erase_if(due.rows, [&](const answers::DueRow& row) { return row.lift != lift; });
    return due;
}

} // namespace slopebook::questions
