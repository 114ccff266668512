// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/neighbours.h"

#include "core/log/atoms.h"
#include "core/log/comingrows.h"
#include "core/log/contentreader.h"
#include "core/log/query.h"

namespace slopebook::log {

namespace {
void take(std::vector<Sixteen>& all, Query&& rows) {
    while (rows.next())
        all.push_back(rows.sixteen(0));
}

constexpr char livingAt[] = "SELECT uuid FROM atoms WHERE kind = ? AND one = ?";
constexpr char removedAt[] = "SELECT uuid FROM removed_atoms WHERE kind = ? AND one = ?";

void takeAt(Connection& db, std::vector<Sixteen>& all, const char* kind, std::int64_t one) {
    take(all, Query(db, livingAt, std::string(kind), one));
    take(all, Query(db, removedAt, std::string(kind), one));
}

std::vector<Sixteen> uuidsFrom(Query&& rows) {
    std::vector<Sixteen> all;
    take(all, std::move(rows));
    return all;
}
} // namespace

namespace {
void takeSession(Connection& db, std::vector<Sixteen>& all, std::int64_t session) {
    take(all, Query(db, livingAt, std::string("session"), session));
    take(all, Query(db,
                    "SELECT a.uuid FROM sets AS s JOIN atoms AS a ON a.kind = 'set' AND "
                    "a.one = s.id AND a.two = 0 AND a.three = 0 WHERE s.session = ?",
                    session));
    for (const char* kind : {"lift conditions", "test conditions", "attempt", "gap"})
        takeAt(db, all, kind, session);
}
} // namespace

std::vector<Sixteen> uuidsOfDay(Connection& db, AthleteId athlete, Date day) {
    std::vector<Sixteen> all;
    std::vector<std::int64_t> sessions;
    for (Query rows(db, "SELECT id FROM sessions WHERE athlete = ? AND day = ?", athlete, day);
         rows.next();)
        sessions.push_back(rows.integer(0));
    for (const std::int64_t session : sessions)
        takeSession(db, all, session);
    return all;
}

std::vector<Sixteen> uuidsOfSession(Connection& db, SessionId session) {
    std::vector<Sixteen> all;
    takeSession(db, all, static_cast<std::int64_t>(session));
    return all;
}

std::vector<SessionId> sessionsOf(Connection& db, AthleteId athlete) {
    std::vector<SessionId> all;
    for (Query rows(db, "SELECT id FROM sessions WHERE athlete = ? ORDER BY id", athlete);
         rows.next();)
        all.push_back(rows.id<SessionId>(0));
    return all;
}

std::vector<Sixteen> uuidsOfCheckLoads(Connection& db, AthleteId athlete) {
    std::vector<Sixteen> all;
    takeAt(db, all, "check load", static_cast<std::int64_t>(athlete));
    return all;
}

std::vector<Sixteen> uuidsOfRoster(Connection& db, StationId station, Date day) {
    std::vector<Sixteen> all;
    const std::int64_t number = dayNumber(day);
    take(all, Query(db, "SELECT uuid FROM atoms WHERE kind = 'roster' AND one = ? AND two = ?",
                    station, number));
    const auto removed = uuidsRemovedAt(db, "roster", static_cast<std::int64_t>(station), number);
    all.insert(all.end(), removed.begin(), removed.end());
    return all;
}

std::vector<Sixteen> uuidsOfKind(Connection& db, const std::string& kind) {
    return uuidsFrom(Query(db, "SELECT uuid FROM atoms WHERE kind = ?", kind));
}

std::vector<Sixteen> uuidsOfRepeats(Connection& db, SessionId session) {
    return uuidsFrom(
        Query(db,
              "SELECT a.uuid FROM sessions AS s JOIN atoms AS a ON a.kind = 'session' AND "
              "a.one = s.id AND a.two = 0 AND a.three = 0 WHERE s.repeat_of = ?",
              session));
}

std::vector<Sixteen> uuidsOfRemovedSessions(Connection& db, const Sixteen& session) {
    return uuidsFrom(Query(db,
                           "SELECT uuid FROM removed_atoms WHERE kind = 'session' AND "
                           "instr(content, ?) > 0",
                           session));
}

std::vector<Sixteen> uuidsRemovedFrom(Connection& db, const std::set<Sixteen>& sessions) {
    std::vector<Sixteen> all;
    for (const char* kind : {"set", "attempt", "gap"})
        visitRemoved(db, kind, [&](const RemovedAtom& removed) {
            const auto of = removed.content ? parentOf(*removed.content) : std::nullopt;
            if (of && sessions.contains(of->uuid))
                all.push_back(removed.atom.uuid);
        });
    return all;
}

std::vector<Sixteen> uuidsRemovedAt(Connection& db, const std::string& kind, std::int64_t one) {
    return uuidsFrom(Query(db, removedAt, kind, one));
}

std::vector<Sixteen> uuidsRemovedAt(Connection& db, const std::string& kind, std::int64_t one,
                                    std::int64_t two) {
    return uuidsFrom(Query(db,
                           "SELECT uuid FROM removed_atoms WHERE kind = ? AND one = ? AND two = ?",
                           kind, one, two));
}

bool knowsAny(Connection& db, std::span<const Sixteen> uuids) {
    ComingRows rows(1);
    rows.reserve(uuids.size());
    for (const Sixteen& uuid : uuids)
        rows.blob(viewOf(uuid));
    db.setComing(&rows);
    const bool any = Query(db, "SELECT 1 FROM coming WHERE "
                               "EXISTS (SELECT 1 FROM atoms WHERE uuid = c0) OR "
                               "EXISTS (SELECT 1 FROM removed_atoms WHERE uuid = c0) OR "
                               "EXISTS (SELECT 1 FROM sent WHERE uuid = c0) OR "
                               "EXISTS (SELECT 1 FROM unsent WHERE uuid = c0) LIMIT 1")
                         .next();
    db.setComing(nullptr);
    return any;
}

bool hasSession(Connection& db, AthleteId athlete, Date day, int ordinal) {
    return Query(db, "SELECT 1 FROM sessions WHERE athlete = ? AND day = ? AND ordinal = ?",
                 athlete, day, ordinal)
        .next();
}

std::optional<Sixteen> uuidOfSession(Connection& db, AthleteId athlete, Date day, int ordinal) {
    Query row(db,
              "SELECT a.uuid FROM sessions AS s JOIN atoms AS a ON a.kind = 'session' AND "
              "a.one = s.id AND a.two = 0 AND a.three = 0 "
              "WHERE s.athlete = ? AND s.day = ? AND s.ordinal = ?",
              athlete, day, ordinal);
    return row.next() ? std::optional(row.sixteen(0)) : std::nullopt;
}

std::optional<AthleteId> athleteOf(Connection& db, SessionId session) {
    Query row(db, "SELECT athlete FROM sessions WHERE id = ?", session);
    return row.next() ? std::optional(row.id<AthleteId>(0)) : std::nullopt;
}

} // namespace slopebook::log
