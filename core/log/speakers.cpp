// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/speakers.h"

#include "core/log/query.h"

namespace slopebook::log {

namespace {
struct Speaker {
    std::string_view of; ///< the kind of thing
    std::string sql;     ///< of its key ?1; ?2 at most
};

/// Rows of a table whose column has that key, and where they stand among the atoms.
Speaker speaker(std::string_view of, const std::string& column, const std::string& kind,
                const std::string& table, const std::string& one, const std::string& two = "0",
                const std::string& three = "0") {
    return {of, "SELECT a.uuid FROM " + table + " AS t JOIN atoms AS a ON a.kind = '" + kind +
                    "' AND a.one = t." + one + " AND a.two = " + two + " AND a.three = " + three +
                    " WHERE t." + column + " = ?1 LIMIT ?2"};
}

/// Kept as long as the program runs: statements are known by their texts.
const std::vector<Speaker>& speakers() {
    const std::string day = "CAST(replace(t.day, '-', '') AS INTEGER)";
    static const std::vector<Speaker> all{
        speaker("athlete", "athlete", "session", "sessions", "id"),
        speaker("athlete", "athlete", "check load", "check_loads", "athlete", "t.lift", "t.load_g"),
        speaker("athlete", "athlete", "roster", "roster_athletes", "station", day, "t.athlete"),
        speaker("station", "station", "roster", "roster_athletes", "station", day, "t.athlete"),
        speaker("lift", "lift", "set", "sets", "id"),
        speaker("lift", "lift", "lift conditions", "lift_conditions", "session", "t.lift"),
        speaker("lift", "lift", "check load", "check_loads", "athlete", "t.lift", "t.load_g"),
        speaker("lift", "lift", "gap", "gaps", "session", "t.ordinal"),
        speaker("lift", "lift", "station", "stations", "id"),
        speaker("test", "test", "attempt", "attempts", "session", "t.ordinal"),
        speaker("test", "test", "gap", "gaps", "session", "t.ordinal"),
        speaker("test", "test", "test conditions", "test_conditions", "session", "t.test"),
        speaker("test", "test", "station", "station_tests", "station"),
        speaker("device", "device", "lift conditions", "lift_conditions", "session", "t.lift"),
        speaker("device", "device", "test conditions", "test_conditions", "session", "t.test"),
        speaker("device", "device", "station", "stations", "id"),
    };
    return all;
}
} // namespace

std::vector<Sixteen> uuidsSpeakingOf(Connection& db, const std::string& kind, std::int64_t key,
                                     std::size_t most) {
    std::vector<Sixteen> all;
    for (const Speaker& one : speakers())
        if (one.of == kind && all.size() <= most)
            for (Query rows(db, one.sql.c_str(), key, static_cast<std::int64_t>(most) + 1);
                 rows.next();)
                all.push_back(rows.sixteen(0));
    return all;
}

std::vector<std::pair<std::int64_t, std::string>> namesIn(Connection& db, std::string_view kind) {
    Query rows(db, kind == "athlete"     ? "SELECT id, name FROM athletes"
                   : kind == "block"     ? "SELECT id, name FROM blocks"
                   : kind == "equipment" ? "SELECT id, name FROM equipment"
                                         : "SELECT id, name FROM stations");
    std::vector<std::pair<std::int64_t, std::string>> all;
    while (rows.next())
        all.emplace_back(rows.integer(0), rows.text(1));
    return all;
}

} // namespace slopebook::log
