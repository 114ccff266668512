// SPDX-License-Identifier: GPL-3.0-or-later
// Which of two desks' states of one thing counts: no clock and no name of a desk says so, the two
// trails alone (core/log/trail.h).
#pragma once

#include "core/log/trail.h"

namespace slopebook::desks {

using log::Sixteen;
using log::Trail;

enum class Verdict {
    Same,         ///< they are one state, or say the same: each learns the other's past
    Theirs,       ///< mine lies on the way to theirs
    Mine,         ///< theirs lies on the way to mine
    JoinTheirs,   ///< both went on; theirs alone says what is new
    JoinMine,     ///< the same, and mine stands
    ChooseTheirs, ///< both say something new: theirs stands, mine is listed for the coach
    ChooseMine    ///< mine stands, theirs is listed
};

/// One side of it. The trail is not empty.
struct Side {
    const Trail& trail;
    bool alive = true;
};

/// Both desks come to the same, whichever asks: the verdict of the one is the other's turned round.
/// Where one side says what it said when they last agreed, the other counts. Of two new states the
/// one that is there beats a removal, then the greater hash counts: what a state says, and not how
/// long its trail is, lest three desks that take from one another in a ring turn for ever.
Verdict verdictOn(const Side& mine, const Side& theirs);

/// The last step of both, which what came after is held against; nullptr: none, or the coach has
/// chosen of two sides since, and that is a word whatever it says.
const log::Step* lastAgreed(const Trail& trail, const Trail& other);

/// Before the step of what the coach chose of two sides: though that was said before, it is said
/// anew, and no going back to what both agreed on.
void noteChoice(Trail& trail);

/// Adds what another desk knows of the past of a state that says the same; whether that was
/// anything. No state is new: three desks that take from one another in a ring come to rest once
/// all know all.
bool learn(Trail& trail, const Trail& other);

/// The trail where two meet that say different things, with what the winner says: all of both, the
/// winner's first, and a last step that both desks find alike.
Trail joined(const Trail& winner, const Trail& loser);

} // namespace slopebook::desks
