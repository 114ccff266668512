// SPDX-License-Identifier: GPL-3.0-or-later
// What the repeat tests of everybody come to, kept beside the log: each question asks it, and an
// entered set changes one athlete's of thousands.
#pragma once

#include "core/log/log.h"
#include "core/stats/moderation.h"

namespace slopebook::questions {

/// An athlete's own repeat tests of the lift, as whoever asks has just read them.
struct OwnRepeats {
    AthleteId athlete{};
    stats::RepeatSums sums{};
};

/// Of all athletes' repeat tests of a lift; those of an athlete are read anew only where a session
/// of that athlete has changed since, or the lift has. own: need not be read. What is damaged is
/// left out: it is told where it is shown. Throws LogError.
stats::RepeatSums repeatsOfAll(const log::Log& log, const Stored<LiftId, Lift>& lift,
                               const std::optional<OwnRepeats>& own = {});

} // namespace slopebook::questions
