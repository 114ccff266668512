// SPDX-License-Identifier: GPL-3.0-or-later
// Gathers from the log what a question about the battery needs, and asks it: for the window, the
// page and the commands alike.
#pragma once

#include "core/answers/batterycomparison.h"
#include "core/answers/sharedloads.h"
#include "core/answers/squad.h"
#include "core/model/daystretch.h"
#include "core/questions/questions.h"

#include <functional>
#include <string>
#include <variant>
#include <vector>

namespace slopebook::questions {

/// One side of a comparison: a day, a training block, a stretch of days, or one session of a day;
/// of a block and of a stretch all sessions are made one.
using BatterySide = std::variant<Date, BlockId, DayStretch, DaySession>;
/// What it is called, and its first and last day.
struct SideDays {
    std::string name{};
    DayStretch days{};
    std::optional<int> session{}; ///< of its one day: the number of the session that is meant
    bool holds(Date date, int ordinal) const {
        return days.holds(date) && ordinal == session.value_or(ordinal);
    }
};
/// Throws LogError: Conflict where the block is not in the log any more.
SideDays daysOf(const log::Log& log, const BatterySide& side);

/// A lift that both sides hold: of a block or a stretch all its sessions, of a day its last.
struct BatteryLift {
    Stored<LiftId, Lift> lift{};
    Answer<answers::Comparison> comparison = NoAnswer{};
    /// Where it has no line to judge by: the changes at loads that both sides lifted, from the last
    /// session of the one to the last of the other.
    std::vector<answers::SharedLoadChange> shared{};
};

struct LiftContext;

struct BatteryAnswer {
    Stored<AthleteId, Athlete> athlete{};
    answers::BatteryComparison battery{};
    std::vector<BatteryLift> lifts{};
    /// What of both sides cannot be read, a sentence each: damage, so that the answer is not whole.
    std::vector<Words> unread{};
};

/// Where both sides are the same, share a session, or one holds none: the reason.
Answer<BatteryAnswer> batteryOf(const log::Log& log, AthleteId athlete, const BatterySide& from,
                                const BatterySide& to, const AskSettings& settings = {});
/// The same where what all athletes say of a lift is known already.
using ContextOf = std::function<const LiftContext&(LiftId)>;
Answer<BatteryAnswer> batteryOf(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
                                const BatterySide& from, const BatterySide& to,
                                const AskSettings& settings = {});

/// Throws LogError: Conflict where it is not in the log any more.
Stored<BlockId, Block> blockOf(const log::Log& log, BlockId id);

/// "2026-03-14", "2026-03-14#2", "2026-03-01..2026-03-14" or the name of a block (letter case
/// aside; the latest of that name); BadInput lists the blocks.
BatterySide batterySide(const log::Log& log, const std::string& text);

/// The same for a squad's changes; of a day, so many days before and after may stand in for it,
/// but not for one of its sessions (BadInput).
answers::Period periodOf(const log::Log& log, const std::string& text, int withinDays = 0);

/// A session among those of a block: what a timeline shows.
struct BlockSession {
    SessionId session{};
    AthleteId athlete{};
    Date date{};
    int ordinal = 1;
    std::vector<LiftId> lifts{};
    std::vector<TestKindId> tests{};
    std::vector<Gap> gaps{};
};
/// The athlete's sessions by date with what they hold and what was missing.
std::vector<BlockSession> seasonOf(const log::Log& log, AthleteId athlete);

/// The tests of the log, then the built-in ones that it does not have yet (without a key).
struct OfferedTest {
    std::optional<TestKindId> id{};
    TestKind kind{};
};
std::vector<OfferedTest> offeredTests(const log::Log& log);

} // namespace slopebook::questions
