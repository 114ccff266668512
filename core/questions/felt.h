// SPDX-License-Identifier: GPL-3.0-or-later
// How the sets at a followed load felt, to stand beside what was seen at it. No figure is made of
// it.
#pragma once

#include "core/answers/checkloads.h"
#include "core/log/log.h"

#include <vector>

namespace slopebook::questions {

/// RPE of the counting sets within half the smallest plate pair of the load, session by session of
/// what is followed, in the order of entry; what a lift moves of the body is part of its loads.
/// Throws LogError.
std::vector<std::vector<Effort>> feltAt(const log::Log& log, const Stored<LiftId, Lift>& lift,
                                        const answers::Follow& follow, Mass plateStep);

} // namespace slopebook::questions
