// SPDX-License-Identifier: GPL-3.0-or-later
// What is taken together: what comes is written in small transactions, and nothing that hangs on
// each other is torn apart by them. Each thing is looked at in a moment of its own: what is
// otherwise when it is taken is noticed then.
#pragma once

#include "core/log/log.h"
#include "core/meetings/arrived.h"

#include <string>
#include <vector>

namespace slopebook::meetings {

/// So many things in one transaction to begin with; how many more is told by how long they take
/// (pace.h).
constexpr std::size_t mostAtOnce = 100;

/// What nothing else of its kind shares with it while both live; empty: nobody knows it any more.
std::string nameKeyOf(const log::Carried& one);

/// Whether all that came is to be taken in one transaction: something with a name goes that stands
/// here, and another comes under its name, or says that it is one with it.
bool hangsTogether(const log::Log& log, const std::vector<Arrived>& all);

/// What of those has a name and comes or changes, in pieces; before all else.
std::vector<Places> namedUnits(const log::Log& log, const std::vector<Arrived>& all,
                               const Places& places);
/// All else of them, in pieces to be taken one after the other: what athletes hold, of a piece
/// those sessions that hang on each other (a set that moves, a day's number that changes hands, one
/// that became another or repeats it); rosters; what has a name and goes, once nothing speaks of it
/// any more; choices last.
std::vector<Places> otherUnits(const log::Log& log, const std::vector<Arrived>& all,
                               const Places& places);

} // namespace slopebook::meetings
