// SPDX-License-Identifier: GPL-3.0-or-later
// The checksums of every session made anew, once a log has been led to a layout in which they are
// made of other columns.
#pragma once

#include "core/log/layoutfour.h"

namespace slopebook::log {

/// The caller holds the transaction. What is hurt gets checksums that do not hold either. Tallies
/// change by what came and went: what was missing before is missing still.
void resealSessions(Connection& db, const Hurt& hurt);

} // namespace slopebook::log
