// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/sessionrows.h"

#include "core/log/columns.h"
#include "core/log/tables.h"

namespace slopebook::log {

namespace {
struct RowsSql {
    std::string select, insert, update;
};

/// keys: the columns beside those of the list, first where they are read, last where they are
/// written; by: of them that which a row is found by.
template <class Value, class Columns>
RowsSql sqlFor(const std::string& table, const std::string& keys, const std::string& where,
               const Columns& columns) {
    ColumnNames names;
    const Value none{};
    columns(none, names);
    std::string places = names.places + ", ?";
    for (const char c : keys)
        places += c == ',' ? ", ?" : "";
    return {.select = "SELECT " + keys + ", " + names.list + " FROM " + table + where,
            .insert = "INSERT INTO " + table + " (" + names.list + ", " + keys + ") VALUES (" +
                      places + ")",
            .update = "UPDATE " + table + " SET " + names.set};
}

const RowsSql& setSql() {
    static const RowsSql made = [] {
        RowsSql sql =
            sqlFor<Set>("sets", "point, counting, id, lift, ordinal, session",
                        " WHERE session = ? ORDER BY lift, ordinal",
                        [](const Set& set, ColumnNames& names) { setColumns(set, names); });
        sql.update += ", point = ?, counting = ? WHERE id = ?";
        return sql;
    }();
    return made;
}

const RowsSql& attemptSql() {
    static const RowsSql made = sqlFor<Attempt>(
        "attempts", "test, session, ordinal", " WHERE session = ? ORDER BY ordinal",
        [](const Attempt& attempt, ColumnNames& names) { attemptColumns(attempt, names); });
    return made;
}

const RowsSql& gapSql() {
    static const RowsSql made =
        sqlFor<Gap>("gaps", "session, ordinal", " WHERE session = ? ORDER BY ordinal",
                    [](const Gap& gap, ColumnNames& names) { gapColumns(gap, names); });
    return made;
}

const RowsSql& liftConditionsSql() {
    static const RowsSql made = sqlFor<Conditions>(
        "lift_conditions", "lift, session", " WHERE session = ? ORDER BY lift",
        [](const Conditions& held, ColumnNames& names) { conditionColumns(held, names); });
    return made;
}

const RowsSql& testConditionsSql() {
    static const RowsSql made = sqlFor<Conditions>(
        "test_conditions", "test, session", " WHERE session = ? ORDER BY test",
        [](const Conditions& held, ColumnNames& names) { conditionColumns(held, names); });
    return made;
}

void insertReps(Connection& db, const PlacedSet& placed) {
    int ordinal = 0;
    for (const Rep& rep : placed.set.reps)
        Query(db, "INSERT INTO reps (set_id, ordinal, velocity, excluded) VALUES (?, ?, ?, ?)",
              placed.id, ++ordinal, rep.velocity, rep.excluded)
            .run();
}

template <class... Keys>
void bindKeys(ColumnBinder& binder, const Keys&... keys) {
    (binder.query.bind(++binder.index, keys), ...);
}
} // namespace

std::vector<Rep> readReps(Connection& db, SetId id) {
    std::vector<Rep> reps;
    Query rows(db, "SELECT velocity, excluded FROM reps WHERE set_id = ? ORDER BY ordinal", id);
    while (rows.next())
        reps.push_back({.velocity = rows.real(0), .excluded = rows.text(1)});
    return reps;
}

namespace {
/// Without its reps.
StoredSet readSetRow(const Query& row) {
    StoredSet stored{.placed = {.id = row.id<SetId>(2),
                                .session = row.id<SessionId>(5),
                                .lift = row.id<LiftId>(3),
                                .ordinal = row.small(4)},
                     .point = row.optionalReal(0),
                     .counting = row.small(1)};
    ColumnReader reader{row, 6};
    setColumns(stored.placed.set, reader);
    return stored;
}
} // namespace

std::optional<StoredSet> readSet(Connection& db, SetId id) {
    static const std::string byId =
        sqlFor<Set>("sets", "point, counting, id, lift, ordinal, session", " WHERE id = ?",
                    [](const Set& set, ColumnNames& names) { setColumns(set, names); })
            .select;
    Query row(db, byId.c_str(), id);
    if (!row.next())
        return std::nullopt;
    StoredSet stored = readSetRow(row);
    stored.placed.set.reps = readReps(db, id);
    return stored;
}

std::vector<StoredSet> readSets(Connection& db, SessionId session) {
    std::vector<StoredSet> sets;
    Query rows(db, setSql().select.c_str(), session);
    while (rows.next())
        sets.push_back(readSetRow(rows));
    // All of the session in one go, beside their sets.
    Query reps(db,
               "SELECT reps.set_id, reps.velocity, reps.excluded FROM sets CROSS JOIN reps "
               "ON reps.set_id = sets.id WHERE sets.session = ? "
               "ORDER BY sets.lift, sets.ordinal, reps.ordinal",
               session);
    auto at = sets.begin();
    while (reps.next()) {
        const auto of = reps.id<SetId>(0);
        while (at != sets.end() && at->placed.id != of)
            ++at;
        if (at == sets.end())
            break;
        at->placed.set.reps.push_back({.velocity = reps.real(1), .excluded = reps.text(2)});
    }
    return sets;
}

void insertSet(Connection& db, const StoredSet& stored) {
    const PlacedSet& placed = stored.placed;
    Query insert(db, setSql().insert.c_str());
    ColumnBinder binder{insert};
    setColumns(placed.set, binder);
    bindKeys(binder, stored.point, stored.counting, placed.id, placed.lift, placed.ordinal,
             placed.session);
    insert.run();
    insertReps(db, placed);
}

void updateSet(Connection& db, const StoredSet& stored) {
    const PlacedSet& placed = stored.placed;
    Query(db, "DELETE FROM reps WHERE set_id = ?", placed.id).run();
    Query update(db, setSql().update.c_str());
    ColumnBinder binder{update};
    setColumns(placed.set, binder);
    bindKeys(binder, stored.point, stored.counting, placed.id);
    update.run();
    insertReps(db, placed);
}

std::vector<LiftConditions> readConditions(Connection& db, SessionId session) {
    std::vector<LiftConditions> all;
    Query rows(db, liftConditionsSql().select.c_str(), session);
    while (rows.next()) {
        LiftConditions& one = all.emplace_back(LiftConditions{.lift = rows.id<LiftId>(0)});
        ColumnReader reader{rows, 2};
        conditionColumns(one.conditions, reader);
    }
    return all;
}

void writeConditions(Connection& db, SessionId session, LiftId lift, const Conditions& conditions) {
    Query(db, "DELETE FROM lift_conditions WHERE session = ? AND lift = ?", session, lift).run();
    if (conditions == Conditions{})
        return;
    Query insert(db, liftConditionsSql().insert.c_str());
    ColumnBinder binder{insert};
    conditionColumns(conditions, binder);
    bindKeys(binder, lift, session);
    insert.run();
}

Battery readBattery(Connection& db, SessionId session) {
    Battery battery;
    Query rows(db, attemptSql().select.c_str(), session);
    while (rows.next()) {
        const auto kind = rows.id<TestKindId>(0);
        if (battery.tests.empty() || battery.tests.back().kind != kind)
            battery.tests.push_back({.kind = kind, .attempts = {}});
        ColumnReader reader{rows, 3};
        attemptColumns(battery.tests.back().attempts.emplace_back(), reader);
    }
    Query conditions(db, testConditionsSql().select.c_str(), session);
    while (conditions.next()) {
        ColumnReader reader{conditions, 2};
        conditionColumns(conditionsOf(battery, conditions.id<TestKindId>(0)), reader);
    }
    Query gaps(db, gapSql().select.c_str(), session);
    while (gaps.next()) {
        ColumnReader reader{gaps, 2};
        gapColumns(battery.gaps.emplace_back(), reader);
    }
    return battery;
}

void insertBattery(Connection& db, SessionId session, const Battery& battery) {
    int ordinal = 0;
    for (const TestAttempts& test : battery.tests) {
        for (const Attempt& attempt : test.attempts) {
            Query insert(db, attemptSql().insert.c_str());
            ColumnBinder binder{insert};
            attemptColumns(attempt, binder);
            bindKeys(binder, test.kind, session, ++ordinal);
            insert.run();
        }
        if (test.conditions == Conditions{})
            continue;
        Query insert(db, testConditionsSql().insert.c_str());
        ColumnBinder binder{insert};
        conditionColumns(test.conditions, binder);
        bindKeys(binder, test.kind, session);
        insert.run();
    }
    ordinal = 0;
    for (const Gap& gap : battery.gaps) {
        Query insert(db, gapSql().insert.c_str());
        ColumnBinder binder{insert};
        gapColumns(gap, binder);
        bindKeys(binder, session, ++ordinal);
        insert.run();
    }
}

} // namespace slopebook::log
