// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/kepttests.h"

#include "core/log/snapshot.h"
#include "core/log/testedsessions.h"
#include "core/model/errors.h"
#include "core/questions/besidelog.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace slopebook::questions {

namespace {

// Where more athletes than one of so many have changed (an import), one pass reads all.
constexpr std::size_t fewToReread = 16;

struct KeptTests {
    answers::SquadTests squad{};
    std::vector<Stored<TestKindId, TestKind>> kinds{}; ///< all of the log, as they were
    std::set<TestKindId> asked{};                      ///< those whose sessions are in it
    log::SeenChanges seen{};
    std::vector<log::AthleteTally> tallies{}; ///< of when it was read
    bool read = false;
};

void readAllTests(const log::Log& log, KeptTests& kept) {
    kept.squad = answers::SquadTests(kept.kinds);
    kept.tallies = log::athleteTallies(log);
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

/// Brings the athletes up to date whose tallies are others; of all where nobody is named.
void followChanges(const log::Log& log, KeptTests& kept,
                   const std::optional<std::vector<AthleteId>>& named) {
    std::vector<AthleteId> changed;
    if (named) {
        for (const AthleteId athlete : *named) {
            const auto now = log::tallyOf(log, athlete).value_or(log::Tally{});
            auto before =
                std::ranges::lower_bound(kept.tallies, athlete, {}, &log::AthleteTally::athlete);
            if (before == kept.tallies.end() || before->athlete != athlete)
                before = kept.tallies.insert(before, {.athlete = athlete});
            if (std::exchange(before->sessions, now) != now)
                changed.push_back(athlete);
        }
    } else {
        auto now = log::athleteTallies(log);
        changed = log::changedBetween(kept.tallies, now);
        kept.tallies = std::move(now);
    }
    bool all = changed.size() * fewToReread > kept.tallies.size() + fewToReread;
    try {
        for (std::size_t i = 0; i < changed.size() && !all; ++i)
            readTestsAnew(log, kept, changed[i]);
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Damaged)
            throw;
        all = true; // it may be in what was not asked for, and is told if it is not
    }
    if (all)
        readAllTests(log, kept);
}

} // namespace

const answers::SquadTests& squadTests(const log::Log& log, std::span<const TestKindId> kinds) {
    const log::Moment moment(log);
    auto& kept = besideLog<KeptTests>(log);
    const bool covered =
        std::ranges::all_of(kinds, [&](TestKindId kind) { return kept.asked.contains(kind); });
    auto all = log.testKinds();
    const bool asBefore = std::exchange(kept.read, false) && covered && all == kept.kinds;
    const auto named = log::changedSince(log, kept.seen);
    kept.asked.insert(kinds.begin(), kinds.end());
    kept.kinds = std::move(all);
    if (asBefore)
        followChanges(log, kept, named);
    else
        readAllTests(log, kept);
    kept.read = true;
    return kept.squad;
}

const answers::SquadTests& squadTestsBefore(const log::Log& log) {
    return besideLog<KeptTests>(log).squad;
}

} // namespace slopebook::questions
