// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/history.h"

#include "core/log/impl.h"
#include "core/log/tables.h"
#include "core/model/names.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <algorithm>
#include <bit>
#include <set>
#include <utility>

namespace slopebook::log {

namespace {

/// fold(text): lower case as names are compared.
void fold(sqlite3_context* context, int /*count*/, sqlite3_value** values) {
    const void* bytes = sqlite3_value_text(values[0]);
    if (bytes == nullptr) {
        sqlite3_result_null(context);
        return;
    }
    const auto size = static_cast<std::size_t>(sqlite3_value_bytes(values[0]));
    const std::string folded = foldCase({static_cast<const char*>(bytes), size});
    sqlite3_result_text(context, folded.data(), static_cast<int>(folded.size()), SQLITE_TRANSIENT);
}

void teachToFold(const Connection& connection) {
    sqlite3_stmt* known = nullptr;
    const bool taught = sqlite3_prepare_v2(connection.database().getHandle(), "SELECT fold('')", -1,
                                           &known, nullptr) == SQLITE_OK;
    sqlite3_finalize(known);
    if (taught) // again would make SQLite prepare every statement anew
        return;
    sqlite3_create_function_v2(connection.database().getHandle(), "fold", 1,
                               SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY, nullptr,
                               fold, nullptr, nullptr, nullptr);
}

// The block that a day lies in: the latest begun, as blockOn() has it.
constexpr const char* blockOfDay =
    "(SELECT b.name FROM blocks AS b WHERE b.first_day <= s.day AND b.last_day >= s.day "
    "ORDER BY b.first_day DESC, b.last_day DESC, b.name COLLATE NOCASE DESC, b.name DESC LIMIT 1)";
constexpr const char* deviceName =
    "(SELECT name FROM devices WHERE id = (SELECT device FROM lift_conditions WHERE session = s.id "
    "AND lift = :lift))";
constexpr const char* athleteName = "(SELECT name FROM athletes WHERE id = s.athlete)";
// Twelve characters a month, blanks after the shorter ones.
constexpr const char* shownDay =
    "(ltrim(substr(s.day, 9, 2), '0') || ' ' || rtrim(substr(:months, "
    "12 * CAST(substr(s.day, 6, 2) AS INTEGER) - 11, 12)) || ' ' || substr(s.day, 1, 4))";
constexpr int monthWidth = 12;

std::string ofSets(const std::string& figure) {
    return "(SELECT " + figure +
           " FROM sets WHERE session = s.id AND lift = :lift AND point IS NOT NULL)";
}

std::string columnOf(HistoryColumn column) {
    switch (column) {
    case HistoryColumn::Athlete:
        return std::string(athleteName) + " COLLATE NOCASE";
    case HistoryColumn::Block:
        return std::string(blockOfDay) + " COLLATE NOCASE";
    case HistoryColumn::Device:
        return std::string(deviceName) + " COLLATE NOCASE";
    case HistoryColumn::Points:
        return ofSets("count(*)");
    case HistoryColumn::Loads:
        return ofSets("max(load_g)");
    case HistoryColumn::Measured:
        // Most sessions have no maximum: the index says so, where SQLite would read their sets.
        return "(SELECT max(load_g) FROM sets INDEXED BY maxima_by_lift WHERE session = s.id AND "
               "lift = :lift AND maximum = 1 AND point IS NOT NULL)";
    case HistoryColumn::Note:
        return "nullif(s.note, '') COLLATE NOCASE";
    case HistoryColumn::Day:
        break;
    }
    return "s.day";
}

} // namespace

std::string historySql(const HistoryQuestion& question) {
    std::string sql = "SELECT s.id FROM sessions AS s WHERE EXISTS (SELECT 1 FROM sets WHERE "
                      "session = s.id AND lift = :lift)";
    if (question.athlete)
        sql += " AND s.athlete = :athlete";
    if (!question.find.empty()) {
        sql += " AND (instr(s.day, :find)";
        for (const char* text : {shownDay, blockOfDay, deviceName, athleteName, "s.note"})
            sql += " OR instr(fold(" + std::string(text) + "), :find)";
        sql += ")";
    }
    const std::string way = question.descending ? " DESC" : "";
    sql += " ORDER BY " + columnOf(question.column) + way;
    const std::string who = std::string(athleteName) + " COLLATE NOCASE, s.athlete";
    if (question.column == HistoryColumn::Day)
        return sql + ", " + who + ", s.ordinal" + way;
    return sql + ", s.day DESC, " + who + ", s.ordinal DESC";
}

namespace {
/// Pads by characters, as SQLite counts them.
std::string padded(std::string text) {
    const auto characters = std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
    if (characters < monthWidth)
        text.append(static_cast<std::size_t>(monthWidth - characters), ' ');
    return text;
}

} // namespace

std::vector<SessionId> historyOrder(const Log& log, const HistoryQuestion& question) {
    Connection& db = log.impl().db;
    log.impl().settle();
    const ReadScope moment(db);
    std::vector<SessionId> order;
    try {
        teachToFold(db);
        SQLite::Statement rows(db.database(), historySql(question));
        rows.bind(":lift", raw(question.lift));
        if (question.athlete)
            rows.bind(":athlete", raw(*question.athlete));
        if (!question.find.empty()) {
            std::string months;
            for (const std::string& month : question.months)
                months += padded(month);
            rows.bind(":months", months);
            rows.bind(":find", foldCase(question.find));
        }
        while (rows.executeStep())
            order.push_back(SessionId{rows.getColumn(0).getInt64()});
    } catch (...) {
        db.fail();
    }
    return order;
}

std::vector<std::string> sessionNotes(const Log& log, std::span<const SessionId> sessions) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    std::vector<std::string> notes;
    notes.reserve(sessions.size());
    for (const SessionId session : sessions) {
        Query row(impl.db, "SELECT note FROM sessions WHERE id = ?", session);
        notes.push_back(impl.next(row) ? row.text(0) : std::string());
    }
    return notes;
}

std::vector<Stored<AthleteId, Athlete>> athletes(const Log& log, const AthletesQuestion& question) {
    Log::Impl& impl = log.impl();
    const ReadScope moment(impl.db);
    teachToFold(impl.db);
    static const std::string sql = sqlOf<AthleteId>().rows +
                                   " WHERE (?1 = '' OR instr(fold(name), ?1)) "
                                   "AND (?2 IS NULL OR name > ?2 COLLATE NOCASE "
                                   "OR (name = ?2 COLLATE NOCASE AND name > ?2)) "
                                   "ORDER BY name COLLATE NOCASE, name LIMIT ?3";
    Query rows(impl.db, sql.c_str(), foldCase(question.find), question.after, question.most);
    std::vector<Stored<AthleteId, Athlete>> page;
    while (impl.next(rows))
        impl.salvaging([&] {
            const auto id = rows.id<AthleteId>(0);
            auto value = readValue<AthleteId>(rows);
            if (checksum(id, value) != rows.integer(1))
                impl.damaged(notAsWritten<AthleteId>(value));
            page.push_back({id, std::move(value)});
        });
    return page;
}

bool isRepeated(const Log& log, SessionId session) {
    Log::Impl& impl = log.impl();
    impl.settle();
    return Query(impl.db, "SELECT 1 FROM sessions WHERE repeat_of = ? LIMIT 1", session).next();
}

namespace {
std::vector<AthleteTally> talliesOf(const Log& log, const char* sql) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    std::vector<AthleteTally> all;
    Query rows(impl.db, sql);
    while (impl.next(rows))
        all.push_back({.athlete = rows.id<AthleteId>(0),
                       .sessions = {.things = rows.integer(1),
                                    .sum = std::bit_cast<std::uint64_t>(rows.integer(2))}});
    return all;
}
} // namespace

std::vector<AthleteTally> athleteTallies(const Log& log) {
    return talliesOf(log, "SELECT owner, things, sum FROM tallies WHERE kind = 'session' AND "
                          "things > 0 ORDER BY owner");
}

std::vector<AthleteTally> repeatingAthletes(const Log& log) {
    return talliesOf(log, "SELECT owner, things, sum FROM tallies WHERE kind = 'session' AND owner "
                          "IN (SELECT athlete FROM sessions WHERE repeat_of > 0) ORDER BY owner");
}

namespace {
/// Whose tally is another, by key as both lists are.
std::vector<AthleteId> changedBetween(std::span<const AthleteTally> before,
                                      std::span<const AthleteTally> now) {
    std::vector<AthleteId> changed;
    auto old = before.begin();
    auto fresh = now.begin();
    while (old != before.end() || fresh != now.end()) {
        if (fresh == now.end() || (old != before.end() && old->athlete < fresh->athlete)) {
            changed.push_back((old++)->athlete);
        } else if (old == before.end() || fresh->athlete < old->athlete) {
            changed.push_back((fresh++)->athlete);
        } else {
            if (old->sessions != fresh->sessions)
                changed.push_back(fresh->athlete);
            ++old;
            ++fresh;
        }
    }
    return changed;
}

/// Of one athlete, none where no sessions were ever counted.
Tally tallyOf(Log::Impl& impl, AthleteId athlete) {
    Query row(impl.db, "SELECT things, sum FROM tallies WHERE kind = 'session' AND owner = ?",
              athlete);
    if (!row.next())
        return {};
    return {.things = row.integer(0), .sum = std::bit_cast<std::uint64_t>(row.integer(1))};
}

/// Of those athletes, whose tally is another; puts the new one in its place.
std::vector<AthleteId> changedAmong(Log::Impl& impl, std::span<const AthleteId> athletes,
                                    std::vector<AthleteTally>& tallies) {
    std::vector<AthleteId> changed;
    for (const AthleteId athlete : athletes) {
        auto place = std::ranges::lower_bound(tallies, athlete, {}, &AthleteTally::athlete);
        if (place == tallies.end() || place->athlete != athlete)
            place = tallies.insert(place, {.athlete = athlete});
        const Tally now = tallyOf(impl, athlete);
        if (std::exchange(place->sessions, now) != now)
            changed.push_back(athlete);
    }
    return changed;
}
} // namespace

// Tallies say what has changed, whatever was told: a change may have been taken back.
std::optional<std::vector<AthleteId>> AthleteWatch::changed(const Log& log) {
    constexpr std::size_t few = 16; // more athletes than one of so many: an import
    Log::Impl& impl = log.impl();
    impl.settle();
    const bool known = std::exchange(m_known, false);
    Query version(impl.db, "PRAGMA data_version");
    version.next();
    const long others = static_cast<long>(version.integer(0));
    bool anybody = !known || m_others != others;
    std::set<AthleteId> named;
    for (std::size_t i = m_own; i < impl.changes.size() && !anybody; ++i) {
        anybody = !impl.changes[i];
        if (!anybody)
            named.insert(*impl.changes[i]);
    }
    std::vector<AthleteId> found;
    if (anybody) {
        auto now = athleteTallies(log);
        found = changedBetween(m_tallies, now);
        m_tallies = std::move(now);
    } else {
        found = changedAmong(impl, std::vector(named.begin(), named.end()), m_tallies);
    }
    m_own = impl.changes.size();
    m_others = others;
    m_known = true;
    if (!known || found.size() * few > m_tallies.size() + few)
        return std::nullopt;
    return found;
}

std::any& keptBeside(const Log& log) {
    return log.impl().kept;
}

// Each athlete's days stand together: one look for each of them, where a search by day alone would
// read every session.
std::vector<AthleteId> testedOn(const Log& log, Date day) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    std::vector<AthleteId> all;
    Query rows(impl.db,
               "SELECT id FROM athletes WHERE EXISTS (SELECT 1 FROM sessions WHERE "
               "athlete = athletes.id AND day = ?) ORDER BY id",
               day);
    while (impl.next(rows))
        all.push_back(rows.id<AthleteId>(0));
    return all;
}

std::optional<Date> lastDay(const Log& log) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    Query last(impl.db, "SELECT day FROM sessions ORDER BY day DESC LIMIT 1");
    return impl.next(last) ? std::optional(last.date(0)) : std::nullopt;
}

int freeOrdinal(const Log& log, AthleteId athlete, Date date) {
    Query last(log.impl().db,
               "SELECT ifnull(max(ordinal), 0) + 1 FROM sessions WHERE athlete = ? AND day = ?",
               athlete, date);
    last.next();
    return last.small(0);
}

} // namespace slopebook::log
