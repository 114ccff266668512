// SPDX-License-Identifier: GPL-3.0-or-later
// The log's layouts: the numbered SQL that makes the first and leads from each to the next.
#pragma once

#include <string>
#include <vector>

namespace slopebook::log {

struct Layout {
    std::vector<std::string> steps; ///< step n leads from version n to n + 1; version 0 is no log
    int newest() const { return static_cast<int>(steps.size()); }

    /// This program's own.
    static Layout ours();
};

/// Marks the file as a log (SQLite's application_id): "SLBP".
constexpr int applicationId = 0x534C4250;

class Connection;

/// Runs the steps from `from` to `to` and sets the version; the caller holds the transaction.
void runSteps(Connection& connection, const Layout& layout, int from, int to);

/// Throws LogError unless the open file holds exactly the tables and indexes of that version.
void requireLayout(Connection& connection, const Layout& layout, int version);

} // namespace slopebook::log
