// SPDX-License-Identifier: GPL-3.0-or-later
// Gathers from the log what a question about the battery needs, and asks it: for the window, the
// page and the commands alike.
#pragma once

#include "core/answers/batterycomparison.h"
#include "core/answers/sharedloads.h"
#include "core/questions/questions.h"

#include <functional>
#include <string>
#include <variant>
#include <vector>

namespace slopebook::questions {

/// One side of a comparison: all sessions of a day, or of a training block.
using BatterySide = std::variant<Date, BlockId>;

/// A lift that both sides hold, from its last session on the one to its last on the other.
struct BatteryLift {
    Stored<LiftId, Lift> lift{};
    Answer<answers::Comparison> comparison = NoAnswer{};
    /// Where it has no line to judge by: the changes at loads that both sides lifted.
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

/// Where both sides are the same, or one holds no session: the reason.
Answer<BatteryAnswer> batteryOf(const log::Log& log, AthleteId athlete, const BatterySide& from,
                                const BatterySide& to, const AskSettings& settings = {});
/// The same where what all athletes say of a lift is known already.
using ContextOf = std::function<const LiftContext&(LiftId)>;
Answer<BatteryAnswer> batteryOf(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
                                const BatterySide& from, const BatterySide& to,
                                const AskSettings& settings = {});

/// Throws LogError: Conflict where it is not in the log any more.
Stored<BlockId, Block> blockOf(const log::Log& log, BlockId id);

/// "2026-03-14" or the name of a block (letter case aside); BadInput lists the blocks.
BatterySide batterySide(const log::Log& log, const std::string& text);

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
