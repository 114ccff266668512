// SPDX-License-Identifier: GPL-3.0-or-later
// Where a file of the program's may be written: the one rule for PDF, CSV, picture, workbook, card,
// export and backup, from the commands as from the window.
#pragma once

#include <filesystem>
#include <sys/types.h>
#include <type_traits>
#include <utility>

namespace slopebook::log {

/// Whether a file that is there may be written anew: only where the coach asked for just that.
enum class Existing { Refuse, Replace };

/// A file as it is asked for: by its name alone, or to be replaced too. "-" is standard output.
struct Destination {
    template <class Name,
              class = std::enable_if_t<std::is_convertible_v<Name, std::filesystem::path>>>
    Destination(Name&& name, Existing whatIsThere = Existing::Refuse) // NOLINT: as a name reads
        : file(std::forward<Name>(name)), existing(whatIsThere) {}
    bool standardOutput() const { return file == "-"; }

    std::filesystem::path file;
    Existing existing;
};

/// A name that may be written to, and what bore it when that was found.
struct Target {
    std::filesystem::path path; ///< a link that stood there is followed: it stays a link
    bool there = false;
    dev_t device = 0;
    ino_t number = 0;
    mode_t mode = 0;
};

/// Throws LogError, having written nothing: Conflict where something stands there that is not to be
/// replaced; where it is no plain file (a device, pipe, folder, a link to nothing); and, with
/// Replace too, where it is a log, a log's journal or one of its backups, known by what is in it,
/// whatever its name.
Target requireWritable(const std::filesystem::path& file, Existing existing);

/// Throws LogError (Conflict) for the name of a log's journal or folder of backups, there or not.
void requireNoLogsOwn(const std::filesystem::path& file);

/// Whether a file holds a log, or one that was cut short and has its journal beside it. Reads
/// nothing of a file that this process has open (closing it would drop the locks held on it): that
/// is one.
bool holdsLog(const std::filesystem::path& file);

} // namespace slopebook::log
