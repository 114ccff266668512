// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/layout.h"

#include "core/log/failure.h"
#include "core/log/query.h"
#include "core/log/tally.h"
#include "core/log/taught.h"
#include "core/model/phrases/log.h"
#include "resources/embedded.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <set>

namespace slopebook::log {

namespace {
struct Part {
    std::string type;
    std::string name;
    std::string table;
    std::string sql;
    auto operator<=>(const Part&) const = default;
};

std::set<Part> partsOf(SQLite::Database& database) {
    // What SQLite keeps about its own planning is harmless and left by other tools.
    SQLite::Statement rows(database, "SELECT type, name, tbl_name, ifnull(sql, '') FROM "
                                     "sqlite_schema WHERE name NOT IN ('sqlite_stat1', "
                                     "'sqlite_stat4') OR type <> 'table'");
    std::set<Part> parts;
    while (rows.executeStep())
        parts.insert({rows.getColumn(0).getString(), rows.getColumn(1).getString(),
                      rows.getColumn(2).getString(), rows.getColumn(3).getString()});
    return parts;
}
} // namespace

Layout Layout::ours() {
    Layout layout;
    for (const resources::File& file : resources::migrations())
        layout.steps.emplace_back(file.text);
    return layout;
}

void runSteps(Connection& connection, const Layout& layout, int from, int to) {
    for (int version = from; version < to; ++version)
        connection.execute(layout.steps.at(static_cast<std::size_t>(version)));
    connection.execute("PRAGMA user_version = " + std::to_string(to));
}

void requireLayout(Connection& connection, const Layout& layout, int version) {
    try {
        SQLite::Database expected(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        teachTally(expected.getHandle());
        teachMigrations(expected.getHandle());
        for (int step = 0; step < version; ++step)
            expected.exec(layout.steps.at(static_cast<std::size_t>(step)));
        if (partsOf(connection.database()) == partsOf(expected))
            return;
    } catch (...) {
        connection.fail();
    }
    throw damagedLog(connection.file(), say("its tables are not those that Slopebook makes"));
}

} // namespace slopebook::log
