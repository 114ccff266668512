// SPDX-License-Identifier: GPL-3.0-or-later
// A rollback journal read before SQLite plays it back into a log: whatever it says, SQLite does.
#pragma once

#include "core/model/words.h"

#include <array>
#include <cstdint>
#include <filesystem>
#include <optional>

namespace slopebook::log {

/// The first 100 bytes of a SQLite file (its format: sqlite.org/fileformat2.html).
using HeaderBytes = std::array<unsigned char, 100>;

/// A file that may be played back into, as it stands.
struct LogFacts {
    HeaderBytes header{};
    std::int64_t bytes = 0;
};

/// Whether these bytes are the beginning of a log that is written with a rollback journal.
bool beginsLog(const HeaderBytes& header);

/// Four bytes of a SQLite file or journal as a number.
std::uint32_t bigEndian(const unsigned char* four);

/// Why the file is not a journal that a writer of that log can have left; nothing: it may be played
/// back. A link or a name for another file, another size of pages, a length that the log cannot
/// have had, a first page that begins no log. Throws LogError where it cannot be read.
std::optional<Words> strangeJournal(const std::filesystem::path& journal, const LogFacts& log);

/// The same of what it is alone, without reading it.
std::optional<Words> strangeFile(const std::filesystem::path& journal);

} // namespace slopebook::log
