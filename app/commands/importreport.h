// SPDX-License-Identifier: GPL-3.0-or-later
// What the import command says: what came in, all that was wrong, who is to be told apart.
#pragma once

#include "core/exchange/faults.h"
#include "core/exchange/shapedimport.h"

#include <filesystem>
#include <string>

namespace slopebook::app {

/// What came in, or would: at most ten things of each kind are named, the others counted.
std::string reportText(const exchange::ImportReport& report, bool dryRun);

/// {"log", "new_log", "dry_run", "rows", "added", ...}: all of it, whatever the number.
std::string reportJson(const exchange::ImportReport& report, const std::filesystem::path& log,
                       bool newLog, bool dryRun);

/// Each fault on a line of its own, then how many there are in all.
void complain(const exchange::Faults& faults);
/// The same of the rows of a table that were refused.
void complain(const exchange::ShapedReport& done);
/// Each name that is nearly another's, and how to say who it is.
void complain(const exchange::Undecided& open);

} // namespace slopebook::app
