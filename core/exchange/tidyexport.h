// SPDX-License-Identifier: GPL-3.0-or-later
// The whole log as CSV, one file a table, that importTidy takes back to an equal log, and as a
// workbook.
#pragma once

#include "core/exchange/tableout.h"
#include "core/log/log.h"
#include "core/log/target.h"
#include "core/model/progress.h"

#include <filesystem>
#include <functional>
#include <span>
#include <vector>

namespace slopebook::exchange {

/// A table that somebody else makes of the log: it goes into folder, workbook, dictionary and
/// descriptor as the log's own do.
struct AddedTable {
    using Row = std::function<void(std::span<const Cell>)>;
    TableSpec table;
    std::function<void(const log::Log& log, const Row& row, const Progress& progress)> rows;
};

/// Writes folder/<table>.csv of every table (tablelist.h) and of those added, dictionary.csv (every
/// column with its unit and meaning), all of them as sheets of folder/log.xlsx, datapackage.json
/// (the same for programs: a Frictionless Data Package, datapackage.org, version 1) with
/// added tables also read.R and read.py, which read the folder; all of one moment, and returns the
/// files. The folder must not exist, or be empty; with Replace its files of those names are written
/// anew and the others stay. It is written under another name beside it and renamed, so that it is
/// whole or not there (NewFolder); LogError where that may not be or fails; Cancelled, with nothing
/// left behind, where progress says to stop.
std::vector<std::filesystem::path> exportTables(const log::Log& log,
                                                const std::filesystem::path& folder,
                                                const Progress& progress = {},
                                                log::Existing existing = log::Existing::Refuse,
                                                std::span<const AddedTable> added = {});

} // namespace slopebook::exchange
