// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/layoutfour.h"

#include "core/log/checksum.h"
#include "core/log/query.h"
#include "core/log/tally.h"
#include "core/model/names.h"

#include <bit>
#include <map>
#include <vector>

namespace slopebook::log {

namespace {
void addHead(Checksum& sum, const Query& head) {
    sum.add(head.integer(3)).add(head.integer(0)).add(head.date(1)).add(head.integer(2));
    sum.add(head.optionalInteger(4));
}

std::int64_t sideNumber(const std::string& word) {
    return word == "left" ? 1 : word == "right" ? 2 : 0;
}

/// Adds the sets to both sums, in one pass over them and their reps.
void addSets(Connection& db, SessionId session, Checksum& all, Checksum& line) {
    // A row a rep, or one of a set without any: the set's columns come with each.
    Query rows(db,
               "SELECT lift, sets.ordinal, id, load_g, point, counting, maximum, sets.excluded, "
               "note, reps.velocity, reps.excluded, "
               "(SELECT count(*) FROM reps WHERE set_id = id) FROM sets LEFT JOIN reps "
               "ON reps.set_id = sets.id WHERE session = ? "
               "ORDER BY lift, sets.ordinal, reps.ordinal",
               session);
    std::int64_t at = 0;
    while (rows.next()) {
        if (rows.integer(2) != at) {
            at = rows.integer(2);
            const auto point = rows.optionalReal(4);
            all.add(rows.integer(0)).add(rows.integer(1)).add(at).add(rows.integer(3));
            all.add(point).add(rows.integer(5)).add(rows.flag(6));
            all.add(rows.text(7)).add(rows.text(8)).add(rows.integer(11));
            line.add(rows.integer(0)).add((rows.integer(1) << 32) | rows.integer(3));
            line.add((rows.integer(5) << 2) | (rows.flag(6) ? 2 : 0) | (point ? 1 : 0));
            line.add(point.value_or(0));
        }
        if (!rows.null(9))
            all.add(rows.real(9)).add(rows.text(10));
    }
}

std::optional<std::int64_t> batterySum(Connection& db, SessionId session) {
    Checksum sum('T');
    bool anything = false;
    sum.add(session);
    Query context(db, "SELECT surface, device, footwear, technique FROM contexts WHERE session = ?",
                  session);
    const bool hasContext = context.next();
    for (int column = 0; column < 4; ++column) {
        const std::string text = hasContext ? context.text(column) : std::string();
        anything = anything || !text.empty();
        sum.add(text);
    }
    Query attempts(db,
                   "SELECT test, side, value, contact, note, excluded FROM attempts WHERE "
                   "session = ? ORDER BY ordinal",
                   session);
    struct Row {
        std::int64_t test, side;
        double value;
        std::optional<double> contact;
        std::string note, excluded;
    };
    std::vector<Row> rows;
    while (attempts.next())
        rows.push_back({attempts.integer(0), sideNumber(attempts.text(1)), attempts.real(2),
                        attempts.optionalReal(3), attempts.text(4), attempts.text(5)});
    for (std::size_t from = 0; from < rows.size();) {
        std::size_t to = from;
        while (to < rows.size() && rows[to].test == rows[from].test)
            ++to;
        sum.add(rows[from].test).add(static_cast<std::int64_t>(to - from));
        for (; from < to; ++from)
            sum.add(rows[from].side)
                .add(rows[from].value)
                .add(rows[from].contact)
                .add(rows[from].note)
                .add(rows[from].excluded);
    }
    std::int64_t gaps = 0;
    {
        Query count(db, "SELECT count(*) FROM gaps WHERE session = ?", session);
        count.next();
        gaps = count.integer(0);
    }
    sum.add(gaps);
    Query gap(db, "SELECT test, lift, side, reason FROM gaps WHERE session = ? ORDER BY ordinal",
              session);
    while (gap.next())
        sum.add(gap.optionalInteger(0))
            .add(gap.optionalInteger(1))
            .add(sideNumber(gap.text(2)))
            .add(gap.text(3));
    anything = anything || !rows.empty() || gaps > 0;
    return anything ? std::optional(sum.value()) : std::nullopt;
}

constexpr char fourthHeads[] = "SELECT athlete, day, ordinal, id, device, body_mass_g, repeat_of, "
                               "place, note, line_checksum, checksum, battery_checksum "
                               "FROM sessions ";
constexpr auto fourthById = joined(fourthHeads, "WHERE id = ?");
constexpr auto everyFourth = joined(fourthHeads, "ORDER BY athlete, day, ordinal");

FourthSums sumsOf(Connection& db, const Query& head) {
    const auto session = head.id<SessionId>(3);
    Checksum all('S');
    Checksum line('P');
    for (Checksum* sum : {&all, &line}) {
        addHead(*sum, head);
        sum->add(head.optionalInteger(5)).add(head.optionalInteger(6));
    }
    all.add(head.text(7)).add(head.text(8));
    addSets(db, session, all, line);
    return {.line = line.value(), .all = all.value(), .battery = batterySum(db, session)};
}

void makeDevicesOfContexts(Connection& db) {
    std::vector<std::string> names;
    for (Query rows(db, "SELECT DISTINCT device FROM contexts WHERE device <> '' ORDER BY device");
         rows.next();)
        names.push_back(rows.text(0));
    std::map<std::string, bool> known;
    for (Query rows(db, "SELECT name FROM devices"); rows.next();)
        known.emplace(nameKey(rows.text(0)), true);
    for (const std::string& name : names) {
        const auto tidy = tidyName(name);
        if (!tidy || !known.emplace(nameKey(name), true).second)
            continue;
        Query key(db, "UPDATE keys SET last = last + 1, turned = ~(last + 1) WHERE kind = 'device' "
                      "RETURNING last");
        if (!key.next())
            continue; // check finds the table of keys not whole
        const DeviceId id{key.integer(0)};
        key.run();
        const Device device{.name = *tidy};
        const std::int64_t sum = checksum(id, device);
        Query(db, "INSERT INTO devices (id, name, note, checksum) VALUES (?, ?, '', ?)", id,
              device.name, sum)
            .run();
        Query(db,
              "UPDATE tallies SET things = things + 1, sum = plus(sum, ?) WHERE owner = 0 AND "
              "kind = 'device'",
              std::bit_cast<std::int64_t>(weight(sum)))
            .run();
    }
}
} // namespace

FourthSums fourthSums(Connection& db, SessionId session) {
    Query head(db, fourthById.data(), session);
    head.next();
    return sumsOf(db, head);
}

Hurt leaveFourth(Connection& db) {
    makeDevicesOfContexts(db);
    Hurt hurt;
    Query heads(db, everyFourth.data());
    while (heads.next()) {
        const FourthSums sums = sumsOf(db, heads);
        if (sums.line != heads.integer(9) || sums.all != heads.integer(10))
            hurt.sessions.insert(heads.id<SessionId>(3));
        if (sums.battery != heads.optionalInteger(11))
            hurt.batteries.insert(heads.id<SessionId>(3));
    }
    return hurt;
}

} // namespace slopebook::log
