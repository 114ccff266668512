// SPDX-License-Identifier: GPL-3.0-or-later
// Why a next load is or is not offered, in words: in the session and at the stations alike.
#pragma once

#include "core/answers/turns.h"
#include "core/model/words.h"

#include <optional>

namespace slopebook::answers {

/// At the line, where a key asks for a load that is not offered: what holds it back, and that it
/// may be typed. Masses as they stand; the estimate in kg.
Words notLiftedHint(Mass notLifted);
Words ceilingHint(Mass load, Mass ceiling);
Words estimateHint(Mass load, double estimate);

/// Beside the line, in two lines: that there is no next load, and why.
Words noNextNotLifted(Mass notLifted);
Words noNextCeiling(Mass ceiling);
Words noNextEstimate();
/// The next load, under one that was not lifted.
Words nextUnder(Mass next, Mass notLifted);

/// Why it is an athlete's turn with that load or with none; empty where that speaks for itself.
/// ownLadder: the ladder is the athlete's own of last time, for none is planned.
Words turnWords(const LiftDue& due, const std::optional<Mass>& notLifted, bool ownLadder);

} // namespace slopebook::answers
