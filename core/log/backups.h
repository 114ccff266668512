// SPDX-License-Identifier: GPL-3.0-or-later
// The log's own backups: dated, verified copies in a folder beside it, the last ten of them.
#pragma once

#include "core/log/log.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::log {

struct Backup {
    std::filesystem::path file{};
    std::chrono::sys_seconds made{}; ///< UTC, from its name
    friend bool operator==(const Backup&, const Backup&) = default;
};

constexpr std::size_t backupsKept = 10;

/// How the names of copies begin that were made before a migration.
constexpr const char* migrationMark = "layout-";
/// The same of those made before another log was taken in.
constexpr const char* mergeMark = "merge-";

/// "season.slopebook.backups" beside season.slopebook; need not exist.
std::filesystem::path backupFolder(const std::filesystem::path& log);

/// The dated backups of a log, newest first. Files by other names there are not ours and stay out.
std::vector<Backup> backups(const std::filesystem::path& log);

/// Makes a backup when the last is over a day old (or there is none), and lets go of all but the
/// newest ten. The copy has passed everything that Log::check() looks at. Nothing when none was
/// due. Throws LogError: Damaged, and nothing is let go of, when the log is not sound.
std::optional<Backup> backUpWhenDue(const Log& log, std::chrono::sys_seconds now);

/// A copy of the log as it is, before another one is taken in: checked as above, under a name of
/// its own there. Of such copies the newest ten are kept. Throws LogError as backUpWhenDue().
std::filesystem::path backUpBeforeMerge(const Log& log);

/// A backup as a new file, checked as above; the backup stays. The target must not exist. A copy of
/// an older layout passes SQLite's own check here, and the rest when it is opened for writing.
void restore(const std::filesystem::path& backup, const std::filesystem::path& target);

/// How much a log holds.
struct Counts {
    std::int64_t sessions = 0;
    std::int64_t sets = 0;
    friend bool operator==(const Counts&, const Counts&) = default;
};

/// A copy in the backups' folder, looked into.
struct KeptCopy {
    Backup backup{};
    bool beforeMigration = false; ///< made before the log was brought to a newer layout
    bool beforeMerge = false;     ///< made before another log was taken in
    std::uintmax_t bytes = 0;
    std::optional<Counts> holds{}; ///< nothing where it cannot be read
    Words problem{};               ///< the first thing found wrong with it; empty: whole and sound
    friend bool operator==(const KeptCopy&, const KeptCopy&) = default;
};

/// Every copy that a log can go back to, newest first, each checked.
std::vector<KeptCopy> keptCopies(const std::filesystem::path& log);

/// Puts a checked copy of a backup in the place of the log, in one step, and gives the name beside
/// it under which the file that was there is kept (empty: there was none). The log must not be open
/// here; a window elsewhere that has it open writes no more. LogError, and the log is as it was.
std::filesystem::path goBackTo(const std::filesystem::path& backup,
                               const std::filesystem::path& log);

/// Makes the folder unless it is there. Throws LogError.
void makeFolder(const std::filesystem::path& folder);

} // namespace slopebook::log
