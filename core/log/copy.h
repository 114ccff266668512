// SPDX-License-Identifier: GPL-3.0-or-later
// A log's copy that is known to be whole.
#pragma once

#include "core/log/connection.h"

namespace slopebook::log {

/// SQLite's online backup into a new file, which is checked, synced and only then given the
/// target's name. Throws LogError: Conflict when the target exists or a transaction is under way,
/// Damaged when the copy does not pass SQLite's check. Nothing is left of a copy that failed.
void copyVerified(Connection& source, const std::filesystem::path& target);

} // namespace slopebook::log
