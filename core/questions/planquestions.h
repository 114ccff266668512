// SPDX-License-Identifier: GPL-3.0-or-later
// The questions of a plan as they are asked of a log: what the plan and the next test need to know
// of the athlete, gathered alike for the window, the card and the command. No Qt in here.
#pragma once

#include "core/answers/nexttest.h"
#include "core/answers/plan.h"
#include "core/questions/liftcontext.h"

#include <optional>
#include <vector>

namespace slopebook::questions {

/// What the day that is planned for says of the loads.
struct PlanDay {
    Date date{};
    std::vector<answers::LoadBound> bounds{}; ///< its block's ceiling
    std::optional<NoAnswer> notPossible{}; ///< the lift was written down as not possible that day
};
/// The day itself lies in a block, or else the day of the line's test does: what was at hand then
/// is the last that is known. today before the test: the day of the test is planned for.
PlanDay planDay(const log::Log& log, const Background& about, const LiftSession& session,
                std::optional<Date> today);

/// The ceiling of the block on that day, with its name.
std::optional<answers::LoadBound> blockCeiling(std::span<const Stored<BlockId, Block>> blocks,
                                               Date day);

/// Settings for a plan from that session: the equipment and the day-to-day noise in place, the rest
/// for the asker to fill in.
answers::PlanSettings planSettings(const LiftContext& context, const Background& about,
                                   const LiftSession& session, const Equipment& equipment);

/// Settings for the next test after that session: equipment, check loads, day noise, and the
/// athlete's scatter over all sessions of the lift.
answers::NextTestSettings nextTestSettings(const LiftContext& context, const Background& about,
                                           const LiftSession& session, const Equipment& equipment);

/// At each check load: how many tests would make a change of the smallest that matters clear, if
/// the next test were that ladder.
struct SettledAt {
    Mass load{};
    answers::Smallest smallest = {};
    answers::Repeats repeats = {};
};
/// What a chance a true change has to be read as one, what would make it 80 %, and what it takes to
/// say that there is none.
Words settledWords(const SettledAt& settled);
/// Empty where no smallest change is known, or no interval can be expected.
std::vector<SettledAt> settledAt(const LiftContext& context, const Background& about,
                                 const answers::Profile& profile, const answers::NextTest& next,
                                 const answers::LadderForecast& ladder);

/// The same of the estimated 1RM, kg; nothing where it has none or no smallest change is known.
struct SettledMax {
    answers::Smallest smallest = {};
    answers::Repeats repeats = {};
};
Words settledWords(const SettledMax& settled);
std::optional<SettledMax> settledMax(const LiftContext& context, const Background& about,
                                     const answers::Profile& profile, const answers::NextTest& next,
                                     const answers::LadderForecast& ladder);

/// The SD of one rep about its set, from the first two counting reps of the athlete's sets of the
/// lift (typical error of the pair); nothing with under three such sets.
std::optional<double> repSd(const log::Log& log, const Background& about);

/// The usual number of counting reps in a set of that session (the median), at least 1.
int repsOf(const log::Log& log, const LiftSession& session);

} // namespace slopebook::questions
