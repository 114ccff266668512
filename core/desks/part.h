// SPDX-License-Identifier: GPL-3.0-or-later
// The part of a log that matters to some things which come to it: a meeting that brings ten sets
// reads and writes what is around them, in a log of any size.
#pragma once

#include "core/desks/reading.h"

#include <cstddef>
#include <optional>
#include <set>

namespace slopebook::desks {

/// Of what the log holds: those things as they are here, what they speak of, what stands or may
/// come to stand under one key with them, and what speaks of them where they go. Nothing else of
/// the log can change by their coming. Nothing where more than `most` speak of one that goes or
/// becomes one with another. Of one moment, which the caller holds. Throws as readDesk().
std::optional<ReadDesk> readAround(Slots& known, const log::Log& log, const Desk& coming,
                                   std::size_t most);

/// Those that are or were here, as they are now. Throws as readDesk().
ReadDesk readThings(Slots& known, const log::Log& log, const std::set<Slot>& slots);

} // namespace slopebook::desks
