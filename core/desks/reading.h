// SPDX-License-Identifier: GPL-3.0-or-later
// What a log holds, as a desk of the meeting's slots.
#pragma once

#include "core/desks/thing.h"
#include "core/log/carried.h"
#include "core/log/log.h"

#include <map>

namespace slopebook::desks {

struct ReadDesk {
    Desk desk;
    std::map<Slot, log::AtomKey> places; ///< in that log, of the removed where they were
};

/// All of it, of one moment. Throws LogError (Damaged); BadInput for what no log of ours says: a
/// trail that does not end in what the thing says, one UUID twice.
ReadDesk readDesk(Slots& known, const log::Log& log);

/// One of them, as a thing with its past. Throws BadInput likewise.
Atom atomOf(Slots& known, const log::Carried& carried);
/// Adds it.
void putCarried(ReadDesk& read, Slots& known, const log::Carried& carried);

} // namespace slopebook::desks
