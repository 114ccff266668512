// SPDX-License-Identifier: GPL-3.0-or-later
// What logs that met could not agree on: the side that lost, kept until the coach has chosen.
#pragma once

#include "core/log/atoms.h"
#include "core/log/log.h"
#include "core/log/things.h"

#include <functional>
#include <optional>
#include <vector>

namespace slopebook::log {

enum class ConflictId : long long {};

/// All that are still open, oldest first.
std::vector<Stored<ConflictId, ConflictThing>> conflictsIn(const Log& log);
/// Notes one; nothing, where this log has it, or had it and it was settled. With an id it is put
/// back (undo).
std::optional<ConflictId> noteConflict(const Log& log, const ConflictThing& conflict,
                                       std::optional<ConflictId> id = {});
/// Chosen: it is removed. Conflict: it is not in the log any more.
void settleConflict(const Log& log, ConflictId id);

void visitConflicts(Connection& db,
                    const std::function<void(ConflictId, const ConflictThing&)>& visit);
std::optional<Content> conflictAt(Connection& db, ConflictId id);

} // namespace slopebook::log
