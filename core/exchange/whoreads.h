// SPDX-License-Identifier: GPL-3.0-or-later
// Who reads a file that is to be imported: what stands in its header decides.
#pragma once

#include "core/exchange/tables.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace slopebook::exchange {

enum class ReadAs {
    Reps,
    Sessions,
    Table,
    Tests,
    Attempts,
    Equipment,
    Stations,
    Rosters,
    Identities,
    Derived ///< by nobody: it was worked out from the others
};

struct ToRead {
    std::filesystem::path file = {};
    ReadAs as = ReadAs::Reps;
    FileKind kind = FileKind::Reps; ///< of Table
};

/// columns: as ImportSettings::columns. Throws BadInput where the file has no header.
ToRead readerOf(const std::filesystem::path& file,
                const std::map<std::string, std::string>& columns);
/// The same of a header alone.
ToRead readerOf(const std::vector<std::string>& header,
                const std::map<std::string, std::string>& columns);

/// Whether anything stands below the header; true also of what cannot be read.
bool hasRows(const std::filesystem::path& file);

} // namespace slopebook::exchange
