// SPDX-License-Identifier: GPL-3.0-or-later
// What SQLite and the operating system report, as a LogError with a sentence for the coach.
#pragma once

#include "core/model/errors.h"

#include <filesystem>
#include <string>

struct sqlite3;
namespace SQLite {
class Exception;
}

namespace slopebook::log {

/// From SQLite's extended result code, the errno behind it (0 when none) and SQLite's own words.
LogError sqliteFailure(int extendedCode, int systemError, const std::string& words,
                       const std::filesystem::path& file);

/// The same from what SQLiteCpp throws.
LogError sqliteFailure(const SQLite::Exception& error, int systemError,
                       const std::filesystem::path& file);

/// The errno behind SQLite's last input or output error; 0 when none is known.
int systemErrorOf(sqlite3* db);

/// Throws LogError::Unavailable where the disk itself could not be read: what SQLite then finds
/// wrong says nothing about the file.
void requireReadable(sqlite3* db, const std::filesystem::path& file);

/// What a call of the system was to do with a file.
enum class Doing { Open, Make, Write };

/// What was to be made or written is there already. A kind of Conflict of its own, for who can say
/// how it is replaced all the same.
class AlreadyThere : public LogError {
public:
    explicit AlreadyThere(const std::filesystem::path& file);
};

/// From errno after a call that was to do that with the file.
LogError systemFailure(int systemError, Doing doing, const std::filesystem::path& file);

/// The sentence that says what to do with a damaged log.
LogError damagedLog(const std::filesystem::path& file, const Words& what);

/// The file's name, for sentences; of one under way (durable.h) the name that it will
/// have.
std::string shown(const std::filesystem::path& file);

} // namespace slopebook::log
