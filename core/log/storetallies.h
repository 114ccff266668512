// SPDX-License-Identifier: GPL-3.0-or-later
// What stands of the store in this log, counted and weighed: held against the tallies by check().
#pragma once

#include "core/log/connection.h"
#include "core/log/tally.h"

#include <vector>

namespace slopebook::log {

struct StoreTally {
    const char* kind = "";  ///< of the tally
    const char* table = ""; ///< that it is of
    Tally there{};
};
std::vector<StoreTally> storeTallies(Connection& db);

} // namespace slopebook::log
