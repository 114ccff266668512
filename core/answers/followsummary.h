// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a load followed through the season: its last change, its trend, what a session's
// figures rest on.
#pragma once

#include "core/answers/checkloads.h"

#include <vector>

namespace slopebook::answers {

/// The last session's change from the baseline, with its interval and reading; or that it is the
/// baseline, or has none.
Words latestWords(const Follow& follow);
/// The trend a week and a month with its interval at that level, or why there is none.
Words trendWords(const Follow& follow, double level);
/// What would settle a session's change from the baseline where it is unclear; else empty.
Words settlingWords(const Followed& session);

/// That the load lies beyond the loads of a session.
Words beyondLoadsWords();
/// That the device's bias is taken off, and how much; empty where it is not.
Words biasWords(const Followed& session);

} // namespace slopebook::answers
