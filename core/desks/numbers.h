// SPDX-License-Identifier: GPL-3.0-or-later
// What is numbered from 1 on without a gap (attempts and gaps of a session, turns of a roster), and
// sessions that repeat one another, once two desks' are together.
#pragma once

#include "core/desks/meeting.h"

namespace slopebook::desks {

/// Attempts, gaps and turns: a log numbers them by their order whenever it writes one of them.
bool isNumberedAnew(const Thing& thing);
/// The number with which it said what a step of its trail says; nothing: it said something else.
std::optional<int> numberAt(const Slots& known, Thing thing, bool alive, const Sixteen& stepHash);
/// Turns of rosters that may not be written from here, where one comes to such a roster: those that
/// were numbered anew here alone are what the store has. That step was never told to anybody, and
/// never could be.
void numberAsStored(Meeting& meeting, const Desk& theirs, const std::map<Slot, Sixteen>& asStored);
/// Where such a thing goes to another session: behind what is there of its kind.
void putBehind(const Meeting& meeting, const Thing& before, Thing& thing);
/// Numbers them as a log does, wherever one was touched: attempts by test, in order of the first of
/// each.
void numberAnew(Meeting& meeting);
/// A repeat test is of the same athlete, and not of one that repeats it: else it is none any more,
/// and listed.
void settleRepeats(Meeting& meeting);

} // namespace slopebook::desks
