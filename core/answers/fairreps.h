// SPDX-License-Identifier: GPL-3.0-or-later
// The best of five reps is faster than the best of one, with nothing changed: two days are compared
// by the fastest of as many reps.
#pragma once

#include "core/model/session.h"

#include <span>
#include <utility>
#include <vector>

namespace slopebook::answers {

/// The velocities of a set's counting reps, m/s, in their order; none of a set left out.
std::vector<double> countingReps(const Set& set);

/// The two sessions with the points of each set made anew: the fastest of its first k counting
/// reps, k the fewest that the other day has at that load, or at its nearest. Sets are those of the
/// lift in each session, in their order. Nothing where no point moves: the same numbers of reps, or
/// a lift whose point is the mean of its reps. (1 rep, then 5: 11.4 % false somewhere, 1.4 so.)
std::optional<std::pair<LiftSession, LiftSession>>
fairReps(const Lift& lift, const LiftSession& from, std::span<const Set> fromSets,
         const LiftSession& to, std::span<const Set> toSets);

/// The same of any number of sessions, the reps of each against all the others'; sets: of each.
/// Of two it is fairReps.
std::vector<LiftSession> fairRepsOfAll(const Lift& lift, std::vector<LiftSession> sessions,
                                       std::span<const std::vector<Set>> sets);

} // namespace slopebook::answers
