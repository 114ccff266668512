// SPDX-License-Identifier: GPL-3.0-or-later
// The next test in words: what its ladders are called, and what it can show before it is done.
#pragma once

#include "core/answers/nexttest.h"

namespace slopebook::answers {

/// "best for the 1RM", "as last time".
Words ladderWords(LadderForecast::Kind kind);
/// What a ladder of under three loads cannot show; empty of any other.
Words fewLoadsCaution(const LadderForecast& ladder);

/// What the profile's test and one by that ladder can show of a change before it is done, by check
/// load and of the max, and what they cannot; empty where neither is asked for.
Words canShowWords(const LadderForecast& ladder, bool byOneRm);

} // namespace slopebook::answers
