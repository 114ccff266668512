// SPDX-License-Identifier: GPL-3.0-or-later
// The log's file told to who will read it without this program.
#pragma once

#include "core/log/log.h"

#include <string>

namespace slopebook::log {

/// Tables, columns, units, meanings and checksums in words, then the SQL that makes the tables and
/// indexes, as that log has them.
std::string fileFormat(const Log& log);
/// The same of a log as this program makes them. Throws LogError where the system's temporary
/// folder takes none.
std::string fileFormat();

} // namespace slopebook::log
