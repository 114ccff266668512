// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions that come whole and of which the log knows nothing: about them nothing is in question,
// and they are written as an import writes new sessions, many at once.
#pragma once

#include "core/log/log.h"
#include "core/meetings/arrived.h"
#include "core/meetings/footing.h"

#include <span>

namespace slopebook::meetings {

/// Those of what came that may be such, each with all that belongs to it: nothing but sets and
/// conditions of lifts, all there.
std::vector<Places> wholeSessions(const std::vector<Arrived>& all);

/// Takes them in one transaction while the log meets that store, and notes that it has them; gives
/// those that cannot be taken so: something of them is known here, their day's number is taken,
/// what they speak of is not here, a value is none that a log takes. Of those nothing was written.
/// Throws LogError.
std::vector<Places> takeWhole(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                              std::span<const Places> sessions);

} // namespace slopebook::meetings
