// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/monkey/book.h"

#include <sqlite3.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>

namespace slopebook::monkey {

namespace {

/// One row of an answer.
class Row {
public:
    explicit Row(sqlite3_stmt* at) : m_at(at) {}
    std::string text(int column) const {
        const unsigned char* found = sqlite3_column_text(m_at, column);
        return found != nullptr ? reinterpret_cast<const char*>(found) : "";
    }
    long long whole(int column) const { return sqlite3_column_int64(m_at, column); }
    /// A number in millionths: what is typed has at most four decimals.
    long micro(int column) const { return std::lround(sqlite3_column_double(m_at, column) * 1e6); }

private:
    sqlite3_stmt* m_at;
};

[[noreturn]] void refused(sqlite3* db, const char* sql) {
    std::fprintf(stderr, "%s: %s\n", sql, sqlite3_errmsg(db));
    std::abort();
}

void ask(sqlite3* db, const char* sql, const std::function<void(const Row&)>& take) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(db, sql, -1, &statement, nullptr) != SQLITE_OK)
        refused(db, sql);
    int result = 0;
    while ((result = sqlite3_step(statement)) == SQLITE_ROW)
        take(Row(statement));
    if (result != SQLITE_DONE)
        refused(db, sql);
    sqlite3_finalize(statement);
}

// Every other table in words; the checksums are the program's own.
constexpr const char* restSql =
    "SELECT 'athletes|' || name || '|' || note FROM athletes UNION ALL "
    "SELECT 'lifts|' || name || '|' || kind || '|' || rule || '|' || ballistic || '|' || "
    "ifnull(mvt, '') || '|' || ifnull(mvt_sd, '') || '|' || note FROM lifts UNION ALL "
    "SELECT 'devices|' || name || '|' || note FROM devices UNION ALL "
    "SELECT 'blocks|' || name || '|' || first_day || '|' || last_day || '|' || "
    "ifnull(ceiling_g, '') || '|' || note FROM blocks UNION ALL "
    "SELECT 'check load|' || a.name || '|' || l.name || '|' || load_g FROM check_loads c "
    "JOIN athletes a ON a.id = c.athlete JOIN lifts l ON l.id = c.lift UNION ALL "
    "SELECT 'equipment|' || name || '|' || ifnull(ceiling_10ng, '') || '|' || note FROM equipment "
    "UNION ALL SELECT 'piece|' || e.name || '|' || p.ordinal || '|' || p.kind || '|' || p.name || "
    "'|' || p.mass_10ng || '|' || ifnull(p.pairs, '') FROM equipment_pieces p "
    "JOIN equipment e ON e.id = p.equipment UNION ALL "
    "SELECT 'test|' || name || '|' || unit || '|' || rule || '|' || attempts || '|' || note "
    "FROM tests UNION ALL "
    "SELECT 'conditions|' || session || '|' || test || '|' || surface || '|' || "
    "ifnull(device, '') || '|' || footwear || '|' || technique FROM test_conditions UNION ALL "
    "SELECT 'gap|' || session || '|' || ordinal || '|' || side || '|' || reason FROM gaps";

Book read(sqlite3* db) {
    Book book;
    ask(db, "BEGIN", [](const Row&) {});
    ask(db,
        "SELECT s.id, a.name, s.day, s.ordinal, s.body_mass_g, s.note "
        "FROM sessions s JOIN athletes a ON a.id = s.athlete",
        [&](const Row& row) {
            book.sessions[row.whole(0)] = {.athlete = row.text(1),
                                           .day = row.text(2),
                                           .ordinal = static_cast<int>(row.whole(3)),
                                           .bodyGrams = static_cast<long>(row.whole(4)),
                                           .note = row.text(5),
                                           .under = {},
                                           .sets = {},
                                           .attempts = {}};
        });
    ask(db,
        "SELECT c.session, l.name, ifnull(d.name, ''), c.place FROM lift_conditions c "
        "JOIN lifts l ON l.id = c.lift LEFT JOIN devices d ON d.id = c.device",
        [&](const Row& row) {
            book.sessions[row.whole(0)].under[row.text(1)] = {.device = row.text(2),
                                                              .place = row.text(3)};
        });
    std::map<Key, std::vector<RepEntry>> reps;
    ask(db, "SELECT set_id, velocity, excluded FROM reps ORDER BY set_id, ordinal",
        [&](const Row& row) {
            reps[row.whole(0)].push_back({row.micro(1), row.text(2)});
        });
    ask(db,
        "SELECT s.session, l.name, s.id, s.load_g, s.maximum, s.excluded, s.note FROM sets s "
        "JOIN lifts l ON l.id = s.lift ORDER BY s.session, s.lift, s.ordinal",
        [&](const Row& row) {
            book.sessions[row.whole(0)].sets[row.text(1)].push_back(
                {.grams = static_cast<long>(row.whole(3)),
                 .maximum = row.whole(4) != 0,
                 .out = row.text(5),
                 .note = row.text(6),
                 .reps = reps[row.whole(2)]});
        });
    ask(db,
        "SELECT a.session, t.name, a.side, a.value, a.excluded, a.note FROM attempts a "
        "JOIN tests t ON t.id = a.test ORDER BY a.session, a.ordinal",
        [&](const Row& row) {
            book.sessions[row.whole(0)].attempts[row.text(1)].push_back({.side = row.text(2),
                                                                         .micro = row.micro(3),
                                                                         .out = row.text(4),
                                                                         .note = row.text(5)});
        });
    ask(db, restSql, [&](const Row& row) { book.rest.insert(row.text(0)); });
    ask(db, "COMMIT", [](const Row&) {});
    return book;
}

} // namespace

Disk::Disk(const std::filesystem::path& file) {
    if (sqlite3_open_v2(file.c_str(), &m_db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
        refused(m_db, file.c_str());
    sqlite3_busy_timeout(m_db, 10'000);
}

Disk::~Disk() {
    sqlite3_close(m_db);
}

const Book& Disk::now() {
    long version = 0;
    ask(m_db, "PRAGMA data_version",
        [&](const Row& row) { version = static_cast<long>(row.whole(0)); });
    if (version != m_version)
        m_book = read(m_db);
    m_version = version;
    return m_book;
}

const Book& Disk::anew() {
    m_book = read(m_db);
    return m_book;
}

std::string Disk::integrity() const {
    std::string said;
    ask(m_db, "PRAGMA integrity_check", [&](const Row& row) { said += row.text(0); });
    return said;
}

} // namespace slopebook::monkey
