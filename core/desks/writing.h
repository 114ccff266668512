// SPDX-License-Identifier: GPL-3.0-or-later
// From what a log holds to what it is to hold after a meeting, by the writes that a coach's own
// edits go through: points, checksums and tallies are made by them, and values that may not stand
// are refused by them.
#pragma once

#include "core/desks/reading.h"

#include <set>

namespace slopebook::desks {

/// Within one transaction (Log::together), which the caller holds. touched: what of `after` is not
/// as before. Reads the log again at the end and throws LogError (Damaged) unless it holds just
/// that. Throws BadInput, LogError; the caller's transaction is to be taken back then.
void writeDesk(log::Log& log, Slots& known, const ReadDesk& before, const Desk& after,
               const std::set<Slot>& touched);
/// The same where before is a part of the log (core/desks/part.h): the rest of it stays.
void writePart(log::Log& log, Slots& known, const ReadDesk& before, const Desk& after,
               const std::set<Slot>& touched);

} // namespace slopebook::desks
