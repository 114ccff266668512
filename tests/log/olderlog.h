// SPDX-License-Identifier: GPL-3.0-or-later
// Logs as an older Slopebook would have written them.
#pragma once

#include "core/log/connection.h"
#include "core/log/layout.h"
#include "core/log/layoutfour.h"
#include "core/log/log.h"
#include "core/log/query.h"
#include "tests/log/rawfile.h"

#include <limits>
#include <map>

namespace slopebook::test {

/// Gives such a log of layout 3 or 4 the checksums, and the tallies of its sessions, that it had
/// then.
inline void sealAsOlder(const std::filesystem::path& file, int version) {
    log::Connection db(file, log::Connection::Purpose::ReadWrite, std::numeric_limits<int>::max());
    db.execute("BEGIN");
    std::vector<SessionId> sessions;
    for (log::Query rows(db, "SELECT id FROM sessions"); rows.next();)
        sessions.push_back(rows.id<SessionId>(0));
    for (const SessionId session : sessions) {
        const log::FourthSums sums = log::fourthSums(db, session);
        log::Query(db,
                   "UPDATE sessions SET line_checksum = ?, checksum = ?, battery_checksum = ? "
                   "WHERE id = ?",
                   sums.line, sums.all, sums.battery, session)
            .run();
    }
    if (version >= 4)
        db.execute("DELETE FROM tallies WHERE kind = 'session'; INSERT INTO tallies SELECT "
                   "athletes.id, 'session', count(sessions.id), tally(sessions.checksum, "
                   "sessions.battery_checksum) FROM athletes LEFT JOIN sessions ON "
                   "sessions.athlete = athletes.id GROUP BY athletes.id");
    db.execute("COMMIT");
}

/// What a log of this program's layout holds, in a new file of an older one; what that has no room
/// for is left out. version: 1 to 4, in which a session has one device and place, and its tests one
/// context; or 5, in which blocks have no story; or 6, in which nothing has a trail.
inline void writeAsOlder(const std::filesystem::path& log, const std::filesystem::path& file,
                         int version) {
    std::string sql;
    log::Layout older = log::Layout::ours();
    older.steps.resize(static_cast<std::size_t>(version));
    if (version >= 5) // whose steps take functions that SQLite alone does not have
        log::Log::create(file, older);
    else
        for (const std::string& step : older.steps)
            sql += step;
    runSql(file, sql + "DELETE FROM keys" + (version >= 4 ? "; DELETE FROM tallies" : ""));
    const std::map<std::string, std::string> wasThere{
        {"sessions.device", "(SELECT device FROM new.lift_conditions WHERE session = sessions.id)"},
        {"sessions.place",
         "ifnull((SELECT place FROM new.lift_conditions WHERE session = sessions.id), '')"}};
    sql = "ATTACH '" + log.string() + "' AS new; BEGIN; ";
    for (const std::string& table :
         rowsOf(file, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
        if (table == "contexts") {
            sql += "INSERT INTO main.contexts SELECT session, surface, ifnull((SELECT name FROM "
                   "new.devices WHERE id = device), ''), footwear, technique FROM "
                   "new.test_conditions GROUP BY session; ";
            continue;
        }
        std::string columns, values;
        for (const std::string& column :
             rowsOf(file, "SELECT name FROM pragma_table_info('" + table + "')")) {
            const auto other = wasThere.find(table + "." + column);
            columns += (columns.empty() ? "" : ", ") + column;
            values +=
                (values.empty() ? "" : ", ") + (other == wasThere.end() ? column : other->second);
        }
        sql += "INSERT OR IGNORE INTO main." + table + " (" + columns + ") SELECT " + values +
               " FROM new." + table + "; ";
    }
    if (version == 4)
        sql += "DELETE FROM tallies WHERE kind IN ('station', 'roster', 'atom', 'removed atom'); ";
    if (version >= 4 && version <= 6)
        sql += "DELETE FROM tallies WHERE kind IN ('store', 'squad', 'mark', 'sent', 'unsent'); ";
    if (version <= 6)
        sql += "DELETE FROM keys WHERE kind = 'conflict'; ";
    if (version <= 4)
        sql += "DELETE FROM keys WHERE kind = 'station'; ";
    runSql(file, sql + "COMMIT; PRAGMA application_id = " + std::to_string(log::applicationId) +
                     "; PRAGMA user_version = " + std::to_string(version));
    if (version == 3 || version == 4)
        sealAsOlder(file, version);
}

} // namespace slopebook::test
