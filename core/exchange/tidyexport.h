// SPDX-License-Identifier: GPL-3.0-or-later
// The whole log as CSV, one file a table, that importTidy takes back to an equal log, and as a
// workbook.
#pragma once

#include "core/log/log.h"
#include "core/log/target.h"
#include "core/model/progress.h"

#include <filesystem>
#include <vector>

namespace slopebook::exchange {

/// Writes folder/{athletes,devices,lifts,blocks,sessions,reps,check_loads,tests,attempts,equipment}
/// .csv and folder/log.xlsx, all of one moment, and returns the files. The folder must not exist,
/// or be empty; with Replace its files of those names are written anew and the others stay. It is
/// written under another name beside it and renamed, so that it is whole or not there (NewFolder);
/// LogError where that may not be or fails; Cancelled, with nothing left behind, where progress
/// says to stop.
std::vector<std::filesystem::path> exportTables(const log::Log& log,
                                                const std::filesystem::path& folder,
                                                const Progress& progress = {},
                                                log::Existing existing = log::Existing::Refuse);

} // namespace slopebook::exchange
