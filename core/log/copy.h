// SPDX-License-Identifier: GPL-3.0-or-later
// A log's copy, looked at before it bears its name.
#pragma once

#include "core/log/connection.h"
#include "core/log/target.h"
#include "core/model/progress.h"

#include <functional>

namespace slopebook::log {

/// SQLite's online backup into a new file, which `look` looks at, and is then synced and given the
/// target's name. Throws LogError: Conflict when the target exists or a transaction is under way;
/// and what look throws. Nothing is left of a copy that failed, or that progress had stop
/// (Cancelled).
void copyLooking(Connection& source, const std::filesystem::path& target,
                 const std::function<void(const std::filesystem::path& copy)>& look,
                 Existing existing = Existing::Refuse, const Progress& progress = {});

/// Throws LogError (Damaged) where a copy does not pass SQLite's check.
void requireWhole(const std::filesystem::path& copy, const std::filesystem::path& of);

/// The same of a log of any layout, which throws Damaged when the copy does not pass SQLite's
/// check.
void copyVerified(Connection& source, const std::filesystem::path& target,
                  Existing existing = Existing::Refuse, const Progress& progress = {});

/// SQLite's online backup into an empty file: what stood in the log at one moment. Another program
/// that writes waits for a piece of 16 MB at the most; when it has made the copy begin anew three
/// times, for one whole copy.
void copyPages(const Connection& source, const std::filesystem::path& to,
               const Progress& progress = {});

} // namespace slopebook::log
