// SPDX-License-Identifier: GPL-3.0-or-later
// Conflicts as a coach sees them, both sides beside each other, and the choice of one.
#pragma once

#include "core/desks/names.h"
#include "core/log/log.h"

#include <set>
#include <string>
#include <vector>

namespace slopebook::desks {

/// Where the sides of a conflict differ. stands and lost are nothing where that side was removed,
/// or nobody knows any more what it said.
struct SideBySide {
    Words field{};
    Words stands{}, lost{};
    friend bool operator==(const SideBySide&, const SideBySide&) = default;
};

/// A conflict that is open.
struct ShownConflict {
    Sixteen uuid{};
    Why why{};
    std::string kind{}; ///< of the thing: "athlete", "set", ...
    Words about{};      ///< its name
    bool stands = true; ///< what counts now: it is there; false: removed
    bool lived = true;  ///< the same of what lost
    bool known = true;  ///< what lost can be brought back
    std::vector<SideBySide> fields{};
    friend bool operator==(const ShownConflict&, const ShownConflict&) = default;
};

/// Of one that is on the desk.
ShownConflict shownConflict(Slots& known, const Desk& desk, Slot slot);

/// Every conflict of a log that waits for the coach, oldest first. Throws LogError.
std::vector<ShownConflict> openConflicts(const log::Log& log);
/// How many there are: one quick look.
std::size_t openConflictCount(const log::Log& log);

enum class Choice {
    AsItStands, ///< the conflict is settled, nothing else changes
    WhatLost    ///< the thing says what lost, or is removed: an edit like any other
};
/// The same choice on a desk that is in no log (yet), of the conflict in that slot: everything that
/// is touched by it. Throws as settle(), and leaves the desk as it may be then.
std::set<Slot> settleOn(Slots& known, Desk& desk, Slot conflict, Choice choice);
/// Settles one, in one transaction. Throws LogError: Conflict where it is not open any more, or
/// what lost cannot stand now (its name is taken, what it belongs to is removed); BadInput.
void settle(log::Log& log, const Sixteen& conflict, Choice choice);

} // namespace slopebook::desks
