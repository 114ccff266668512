// SPDX-License-Identifier: GPL-3.0-or-later
// An athlete's sessions as they stand, for who reads each of them afterwards and tells of those
// that are damaged: Log::sessions() gives none where one is.
#pragma once

#include "core/log/log.h"

#include <vector>

namespace slopebook::log {

/// By day and ordinal, not compared with their checksums. Throws LogError, also where a day is
/// none.
std::vector<Stored<SessionId, SessionHead>> headsAsTheyStand(const Log& log, AthleteId athlete);

} // namespace slopebook::log
