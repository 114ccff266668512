// SPDX-License-Identifier: GPL-3.0-or-later
// Today against last time while a session goes on, in one sentence: the loads that were lifted on
// both days, all slower or faster or not, and what may be said of them.
#pragma once

#include "core/answers/comparison.h"

namespace slopebook::answers {

/// "Against 4 May 2026, each change alone: slower at all 4 loads, by 0.01 to 0.05 m/s; unclear at
/// all of them (clear from 0.07 m/s)." Changes and readings are the comparison's own,
/// and no other question is asked of them; the earlier day is named. Why the days may not be
/// compared. Empty where fewer than two loads were lifted on both.
Words againstLastWords(const Comparison& comparison);

} // namespace slopebook::answers
