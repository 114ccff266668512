// SPDX-License-Identifier: GPL-3.0-or-later
// The log's own backups: dated, verified copies in a folder beside it, the last ten of them.
#pragma once

#include "core/log/log.h"

#include <chrono>

namespace slopebook::log {

struct Backup {
    std::filesystem::path file{};
    std::chrono::sys_seconds made{}; ///< UTC, from its name
    friend bool operator==(const Backup&, const Backup&) = default;
};

constexpr std::size_t backupsKept = 10;

/// "season.slopebook.backups" beside season.slopebook; need not exist.
std::filesystem::path backupFolder(const std::filesystem::path& log);

/// The dated backups of a log, newest first. Files by other names there are not ours and stay out.
std::vector<Backup> backups(const std::filesystem::path& log);

/// Makes a backup when the last is over a day old (or there is none), and lets go of all but the
/// newest ten. The copy has passed everything that Log::check() looks at. Nothing when none was
/// due. Throws LogError: Damaged, and nothing is let go of, when the log is not sound.
std::optional<Backup> backUpWhenDue(const Log& log, std::chrono::sys_seconds now);

/// A backup as a new file, checked as above; the backup stays. The target must not exist.
void restore(const std::filesystem::path& backup, const std::filesystem::path& target);

/// Makes the folder unless it is there. Throws LogError.
void makeFolder(const std::filesystem::path& folder);

} // namespace slopebook::log
