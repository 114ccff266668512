// SPDX-License-Identifier: GPL-3.0-or-later
// A log's copy, looked at before it bears its name.
#pragma once

#include "core/log/connection.h"

#include <functional>

namespace slopebook::log {

/// SQLite's online backup into a new file, which `look` looks at, and is then synced and given the
/// target's name. Throws LogError: Conflict when the target exists or a transaction is under way;
/// and what look throws. Nothing is left of a copy that failed.
void copyLooking(Connection& source, const std::filesystem::path& target,
                 const std::function<void(const std::filesystem::path& copy)>& look);

/// The same of a log of any layout, which throws Damaged when the copy does not pass SQLite's
/// check.
void copyVerified(Connection& source, const std::filesystem::path& target);

} // namespace slopebook::log
