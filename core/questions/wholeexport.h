// SPDX-License-Identifier: GPL-3.0-or-later
// The export as window and command make it: the log's tables and what is worked out from them. No
// Qt in here.
#pragma once

#include "core/exchange/tidyexport.h"

namespace slopebook::questions {

/// exchange::exportTables() with every session's line as estimates.csv.
std::vector<std::filesystem::path> exportWhole(const log::Log& log,
                                               const std::filesystem::path& folder,
                                               const Progress& progress = {},
                                               log::Existing existing = log::Existing::Refuse);

} // namespace slopebook::questions
