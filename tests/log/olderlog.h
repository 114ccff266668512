// SPDX-License-Identifier: GPL-3.0-or-later
// Logs as an older Slopebook would have written them.
#pragma once

#include "core/log/layout.h"
#include "tests/log/rawfile.h"

namespace slopebook::test {

/// What a log of this program's layout holds, in a new file of an older one; what that has no room
/// for is left out.
inline void writeAsOlder(const std::filesystem::path& log, const std::filesystem::path& file,
                         int version) {
    const std::string attach = "ATTACH '" + log.string() + "' AS new; ";
    std::string sql;
    for (int step = 0; step < version; ++step)
        sql += log::Layout::ours().steps.at(static_cast<std::size_t>(step));
    runSql(file, sql + "DELETE FROM keys");
    sql = attach + "BEGIN; ";
    for (const std::string& table :
         rowsOf(file, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
        std::string columns;
        for (const std::string& column :
             rowsOf(file, "SELECT name FROM pragma_table_info('" + table + "')"))
            columns += (columns.empty() ? "" : ", ") + column;
        sql += "INSERT OR IGNORE INTO main." + table + " (" + columns + ") SELECT " + columns +
               " FROM new." + table + "; ";
    }
    runSql(file, sql + "COMMIT; PRAGMA application_id = " + std::to_string(log::applicationId) +
                     "; PRAGMA user_version = " + std::to_string(version));
}

} // namespace slopebook::test
