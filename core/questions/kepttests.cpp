// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/kepttests.h"

#include "core/log/snapshot.h"
#include "core/log/testedsessions.h"
#include "core/model/errors.h"
#include "core/questions/besidelog.h"

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

namespace slopebook::questions {

namespace {

struct KeptTests {
    answers::SquadTests squad{};
    std::vector<Stored<TestKindId, TestKind>> kinds{}; ///< all of the log, as they were
    std::set<TestKindId> asked{};                      ///< those whose sessions are in it
    log::AthleteWatch watch{};
    bool read = false;
};

void readAllTests(const log::Log& log, KeptTests& kept) {
    kept.squad = answers::SquadTests(kept.kinds);
    const std::vector<TestKindId> ids(kept.asked.begin(), kept.asked.end());
    log::scanTested(log, ids, [&](const BatterySession& session) { kept.squad.add(session); });
}

void readTestsAnew(const log::Log& log, KeptTests& kept, AthleteId athlete) {
    kept.squad.forget(athlete);
    log.scanBatteries(athlete, [&](const BatterySession& session) {
        if (std::ranges::any_of(session.battery.tests, [&](const TestAttempts& test) {
                return kept.asked.contains(test.kind) && !test.attempts.empty();
            }))
            kept.squad.add(session);
    });
}

void readTestsAnew(const log::Log& log, KeptTests& kept, std::span<const AthleteId> changed) {
    try {
        for (const AthleteId athlete : changed)
            readTestsAnew(log, kept, athlete);
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Damaged)
            throw;
        readAllTests(log, kept); // it may be in what was not asked for; told where it is not
    }
}

} // namespace

const answers::SquadTests& squadTests(const log::Log& log, std::span<const TestKindId> kinds) {
    const log::Moment moment(log);
    auto& kept = besideLog<KeptTests>(log);
    const bool covered =
        std::ranges::all_of(kinds, [&](TestKindId kind) { return kept.asked.contains(kind); });
    auto all = log.testKinds();
    const bool asBefore = std::exchange(kept.read, false) && covered && all == kept.kinds;
    const auto changed = kept.watch.changed(log);
    kept.asked.insert(kinds.begin(), kinds.end());
    kept.kinds = std::move(all);
    if (asBefore && changed)
        readTestsAnew(log, kept, *changed);
    else
        readAllTests(log, kept);
    kept.read = true;
    return kept.squad;
}

const answers::SquadTests& squadTestsBefore(const log::Log& log) {
    return besideLog<KeptTests>(log).squad;
}

} // namespace slopebook::questions
