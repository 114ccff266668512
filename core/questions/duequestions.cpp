// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/duequestions.h"

#include "core/log/lasttests.h"
#include "core/log/snapshot.h"
#include "core/questions/besidelog.h"
#include "core/questions/questions.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace slopebook::questions {

namespace {

/// Kept beside the log: after a write only the athletes whose sessions it changed are asked for.
struct KeptLast {
    log::AthleteWatch watch{};
    std::vector<log::LastTest> all{}; ///< by athlete
    bool read = false;
};

const std::vector<log::LastTest>& lastOfAll(const log::Log& log) {
    const log::Moment moment(log);
    auto& kept = besideLog<KeptLast>(log);
    const bool read = std::exchange(kept.read, false);
    const auto changed = kept.watch.changed(log);
    if (!read || !changed) {
        kept.all = log::lastTests(log);
        std::ranges::stable_sort(kept.all, {}, &log::LastTest::athlete);
    } else {
        for (const AthleteId athlete : *changed) {
            const auto of = &log::LastTest::athlete;
            const auto first = std::ranges::lower_bound(kept.all, athlete, {}, of);
            const auto last = std::ranges::upper_bound(kept.all, athlete, {}, of);
            const auto now = log::lastTests(log, athlete);
            const auto place = kept.all.erase(first, last);
            kept.all.insert(place, now.begin(), now.end());
        }
    }
    kept.read = true;
    return kept.all;
}

/// Those that were tested at all, lifts before tests, in the order of the log's lists.
std::vector<answers::TestedMeasure> measuresOf(const log::Log& log) {
    std::vector<answers::TestedMeasure> all;
    for (const auto& lift : log.lifts())
        all.push_back({.lift = lift.id, .name = lift.value.name});
    for (const auto& kind : log.testKinds())
        all.push_back({.test = kind.id, .name = kind.value.name});
    for (const log::LastTest& each : lastOfAll(log))
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
