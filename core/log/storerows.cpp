// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/storerows.h"

#include "core/log/checksum.h"
#include "core/log/comingrows.h"
#include "core/log/impl.h"
#include "core/log/query.h"
#include "core/log/storetallies.h"
#include "core/log/tally.h"

#include <bit>

namespace slopebook::log {

namespace {
constexpr char storeRow[] = "SELECT id, connection, squad, met FROM store";
constexpr char squadRows[] = "SELECT id, name, may, taken FROM squads ";
constexpr char markRows[] = "SELECT n, tag FROM marks ";
constexpr char sentRows[] = "SELECT uuid, squad, version, revision FROM sent ";
constexpr char unsentRows[] = "SELECT uuid, squad FROM unsent ";

JoinedStore readStore(const Query& row) {
    return {.id = row.sixteen(0),
            .connection = row.text(1),
            .squad = row.sixteen(2),
            .met = row.text(3)};
}
JoinedSquad readSquad(const Query& row) {
    return {.id = row.sixteen(0),
            .name = row.text(1),
            .mayWrite = row.text(2) == "write",
            .taken = row.integer(3)};
}
Mark readMark(const Query& row) {
    return {.n = row.integer(0), .tag = row.sixteen(1)};
}
Sent readSent(const Query& row) {
    return {.uuid = row.sixteen(0),
            .squad = row.sixteen(1),
            .version = row.integer(2),
            .revision = row.sixteen(3)};
}
Unsent readUnsent(const Query& row) {
    return {.uuid = row.sixteen(0),
            .squad = row.null(1) ? std::nullopt : std::optional(row.sixteen(1))};
}

std::uint64_t weightOf(const JoinedStore& store) {
    Checksum sum('s');
    sum.add(viewOf(store.id)).add(store.connection).add(viewOf(store.squad)).add(store.met);
    return weight(sum.value());
}
std::uint64_t weightOf(const JoinedSquad& squad) {
    Checksum sum('q');
    sum.add(viewOf(squad.id)).add(squad.name).add(squad.mayWrite).add(squad.taken);
    return weight(sum.value());
}
std::uint64_t weightOf(const Mark& mark) {
    Checksum sum('m');
    sum.add(mark.n).add(viewOf(mark.tag));
    return weight(sum.value());
}
std::uint64_t weightOf(const Sent& sent) {
    Checksum sum('t');
    sum.add(viewOf(sent.uuid)).add(viewOf(sent.squad)).add(sent.version);
    return weight(sum.add(viewOf(sent.revision)).value());
}
std::uint64_t weightOf(const Unsent& unsent) {
    Checksum sum('u');
    sum.add(viewOf(unsent.uuid)).add(unsent.squad ? viewOf(*unsent.squad) : std::string_view());
    return weight(sum.value());
}

/// What came and went of a kind, told to its tally at the end.
class Change {
public:
    Change(Connection& db, const char* kind) : m_db(db), m_kind(kind) {}
    Tally tally{};
    void tell() {
        if (tally != Tally{})
            Query(m_db,
                  "UPDATE tallies SET things = things + ?, sum = plus(sum, ?) "
                  "WHERE owner = 0 AND kind = ?",
                  tally.things, std::bit_cast<std::int64_t>(tally.sum), std::string(m_kind))
                .run();
    }

private:
    Connection& m_db;
    const char* m_kind;
};

template <class Read>
auto listed(Query& rows, const Read& read) {
    std::vector<decltype(read(rows))> all;
    while (rows.next())
        all.push_back(read(rows));
    return all;
}

constexpr auto sentByUuid = joined(sentRows, "WHERE uuid = ?");
constexpr auto markByNumber = joined(markRows, "WHERE n = ?");
constexpr auto unsentByUuid = joined(unsentRows, "WHERE uuid = ?");
} // namespace

Connection& connectionOf(const Log& log) {
    return log.impl().db;
}

bool meetsStore(Connection& db) {
    return Query(db, "SELECT 1 FROM store").next();
}

std::optional<JoinedStore> joinedStore(Connection& db) {
    Query row(db, storeRow);
    return row.next() ? std::optional(readStore(row)) : std::nullopt;
}

void setJoinedStore(Connection& db, const JoinedStore& store) {
    Change change(db, "store");
    if (const auto held = joinedStore(db))
        change.tally.take(weightOf(*held));
    Query(db,
          "INSERT OR REPLACE INTO store (one, id, connection, squad, met) VALUES (1, ?, ?, ?, ?)",
          store.id, store.connection, store.squad, store.met)
        .run();
    change.tally.add(weightOf(store));
    change.tell();
}

void leaveStore(Connection& db) {
    db.execute(
        "DELETE FROM store; DELETE FROM squads; DELETE FROM marks; UPDATE tallies SET things "
        "= 0, sum = 0 WHERE owner = 0 AND kind IN ('store', 'squad', 'mark')");
}

std::vector<JoinedSquad> joinedSquads(Connection& db) {
    static constexpr auto all = joined(squadRows, "ORDER BY name, id");
    Query rows(db, all.data());
    return listed(rows, readSquad);
}

void putSquad(Connection& db, const JoinedSquad& squad) {
    eraseSquad(db, squad.id);
    Query(db, "INSERT INTO squads (id, name, may, taken) VALUES (?, ?, ?, ?)", squad.id, squad.name,
          std::string(squad.mayWrite ? "write" : "read"), squad.taken)
        .run();
    Change change(db, "squad");
    change.tally.add(weightOf(squad));
    change.tell();
}

void eraseSquad(Connection& db, const Sixteen& id) {
    static constexpr auto byId = joined(squadRows, "WHERE id = ?");
    Change change(db, "squad");
    if (Query row(db, byId.data(), id); row.next())
        change.tally.take(weightOf(readSquad(row)));
    Query(db, "DELETE FROM squads WHERE id = ?", id).run();
    change.tell();
}

std::vector<Mark> marksIn(Connection& db) {
    static constexpr auto all = joined(markRows, "ORDER BY n");
    Query rows(db, all.data());
    return listed(rows, readMark);
}

std::optional<Mark> highestMark(Connection& db) {
    static constexpr auto last = joined(markRows, "ORDER BY n DESC LIMIT 1");
    Query row(db, last.data());
    return row.next() ? std::optional(readMark(row)) : std::nullopt;
}

void eraseMarks(Connection& db, std::span<const std::int64_t> numbers) {
    Change change(db, "mark");
    for (const std::int64_t n : numbers) {
        if (Query row(db, markByNumber.data(), n); row.next())
            change.tally.take(weightOf(readMark(row)));
        Query(db, "DELETE FROM marks WHERE n = ?", n).run();
    }
    change.tell();
}

void putMark(Connection& db, const Mark& mark) {
    eraseMarks(db, std::span(&mark.n, 1));
    Change change(db, "mark");
    Query(db, "INSERT INTO marks (n, tag) VALUES (?, ?)", mark.n, mark.tag).run();
    change.tally.add(weightOf(mark));
    change.tell();
}

void eraseMarksAbove(Connection& db, std::int64_t n) {
    static constexpr auto above = joined(markRows, "WHERE n > ?");
    Change change(db, "mark");
    for (Query rows(db, above.data(), n); rows.next();)
        change.tally.take(weightOf(readMark(rows)));
    Query(db, "DELETE FROM marks WHERE n > ?", n).run();
    change.tell();
}

std::optional<Sent> sentOf(Connection& db, const Sixteen& uuid) {
    Query row(db, sentByUuid.data(), uuid);
    return row.next() ? std::optional(readSent(row)) : std::nullopt;
}

void visitSent(Connection& db, std::int64_t above, const std::function<void(const Sent&)>& visit) {
    static constexpr auto rowsAbove = joined(sentRows, "WHERE version > ? ORDER BY version, uuid");
    for (Query rows(db, rowsAbove.data(), above); rows.next();)
        visit(readSent(rows));
}

void putSent(Connection& db, std::span<const Sent> sent) {
    Change change(db, "sent");
    for (const Sent& one : sent) {
        if (const auto held = sentOf(db, one.uuid))
            change.tally.take(weightOf(*held));
        Query(db,
              "INSERT OR REPLACE INTO sent (uuid, squad, version, revision) VALUES (?, ?, ?, ?)",
              one.uuid, one.squad, one.version, one.revision)
            .run();
        change.tally.add(weightOf(one));
    }
    change.tell();
}

void putFirstSent(Connection& db, std::span<const Sent> sent) {
    if (sent.empty())
        return;
    ComingRows rows(4);
    rows.reserve(sent.size());
    Change change(db, "sent");
    for (const Sent& one : sent) {
        rows.blob(viewOf(one.uuid));
        rows.blob(viewOf(one.squad));
        rows.integer(one.version);
        rows.blob(viewOf(one.revision));
        change.tally.add(weightOf(one));
    }
    db.setComing(&rows);
    Query(db, "INSERT INTO sent (uuid, squad, version, revision) SELECT c0, c1, c2, c3 FROM coming")
        .run();
    db.setComing(nullptr);
    change.tell();
}

void eraseSent(Connection& db, std::span<const Sixteen> uuids) {
    Change change(db, "sent");
    for (const Sixteen& uuid : uuids)
        if (const auto held = sentOf(db, uuid)) {
            change.tally.take(weightOf(*held));
            Query(db, "DELETE FROM sent WHERE uuid = ?", uuid).run();
        }
    change.tell();
}

std::optional<Unsent> unsentOf(Connection& db, const Sixteen& uuid) {
    Query row(db, unsentByUuid.data(), uuid);
    return row.next() ? std::optional(readUnsent(row)) : std::nullopt;
}

bool isUnsent(Connection& db, const Sixteen& uuid) {
    return unsentOf(db, uuid).has_value();
}

std::int64_t countUnsent(Connection& db) {
    Query row(db, "SELECT count(*) FROM unsent");
    row.next();
    return row.integer(0);
}

void visitUnsent(Connection& db, const std::function<void(const Unsent&)>& visit) {
    for (Query rows(db, unsentRows); rows.next();)
        visit(readUnsent(rows));
}

std::vector<Unsent> unsentAfter(Connection& db, const std::optional<Sixteen>& last,
                                std::size_t most) {
    static constexpr auto after = joined(unsentRows, "WHERE uuid > ? ORDER BY uuid LIMIT ?");
    static constexpr auto first = joined(unsentRows, "ORDER BY uuid LIMIT ?");
    const auto count = static_cast<std::int64_t>(most);
    Query rows = last ? Query(db, after.data(), *last, count) : Query(db, first.data(), count);
    return listed(rows, readUnsent);
}

namespace {
void putUnsent(Connection& db, std::span<const Unsent> unsent) {
    Change change(db, "unsent");
    for (const Unsent& one : unsent) {
        const auto held = unsentOf(db, one.uuid);
        if (held && (!one.squad || held == one))
            continue;
        if (held)
            change.tally.take(weightOf(*held));
        Query(db, "INSERT OR REPLACE INTO unsent (uuid, squad) VALUES (?, ?)", one.uuid, one.squad)
            .run();
        change.tally.add(weightOf(one));
    }
    change.tell();
}
} // namespace

void noteUnsent(Connection& db, std::span<const Unsent> unsent) {
    if (!unsent.empty() && meetsStore(db))
        putUnsent(db, unsent);
}

void noteUnsentAhead(Connection& db, std::span<const Sixteen> uuids) {
    std::vector<Unsent> unsent;
    for (const Sixteen& uuid : uuids)
        unsent.push_back({.uuid = uuid});
    putUnsent(db, unsent);
}

std::vector<Sixteen> namesAfter(Connection& db, const std::optional<Sixteen>& last,
                                std::size_t most) {
    const auto count = static_cast<std::int64_t>(most);
    Query rows = last ? Query(db,
                              "SELECT uuid FROM atoms WHERE uuid > ?1 UNION ALL "
                              "SELECT uuid FROM removed_atoms WHERE uuid > ?1 ORDER BY 1 LIMIT ?2",
                              *last, count)
                      : Query(db,
                              "SELECT uuid FROM atoms UNION ALL "
                              "SELECT uuid FROM removed_atoms ORDER BY 1 LIMIT ?1",
                              count);
    return listed(rows, [](const Query& row) { return row.sixteen(0); });
}

bool hasSent(Connection& db) {
    return Query(db, "SELECT 1 FROM sent LIMIT 1").next();
}

std::size_t forgetNoted(Connection& db, std::size_t most) {
    const auto count = static_cast<std::int64_t>(most);
    std::vector<Sixteen> some;
    for (Query rows(db, "SELECT uuid FROM sent LIMIT ?", count); rows.next();)
        some.push_back(rows.sixteen(0));
    if (!some.empty()) {
        eraseSent(db, some);
        return some.size();
    }
    for (const Unsent& one : unsentAfter(db, std::nullopt, most))
        some.push_back(one.uuid);
    eraseUnsent(db, some);
    return some.size();
}

void noteUnsent(Connection& db, const Sixteen& uuid) {
    const Unsent one{.uuid = uuid};
    noteUnsent(db, std::span(&one, 1));
}

void eraseUnsent(Connection& db, std::span<const Sixteen> uuids) {
    Change change(db, "unsent");
    for (const Sixteen& uuid : uuids)
        if (const auto held = unsentOf(db, uuid)) {
            change.tally.take(weightOf(*held));
            Query(db, "DELETE FROM unsent WHERE uuid = ?", uuid).run();
        }
    change.tell();
}

namespace {
template <class Read>
Tally tallyOfRows(Connection& db, const char* sql, const Read& read) {
    Tally tally;
    for (Query rows(db, sql); rows.next();)
        tally.add(weightOf(read(rows)));
    return tally;
}
} // namespace

std::vector<StoreTally> storeTallies(Connection& db) {
    return {{"store", "store", tallyOfRows(db, storeRow, readStore)},
            {"squad", "squads", tallyOfRows(db, squadRows, readSquad)},
            {"mark", "marks", tallyOfRows(db, markRows, readMark)},
            {"sent", "sent", tallyOfRows(db, sentRows, readSent)},
            {"unsent", "unsent", tallyOfRows(db, unsentRows, readUnsent)}};
}

} // namespace slopebook::log
