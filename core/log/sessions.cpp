// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions as heads and whole, and their checksums.
#include "core/log/atoms.h"
#include "core/log/derive.h"
#include "core/log/impl.h"
#include "core/log/sessionrows.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

LogError gone(Phrase what) {
    return {Kind::Conflict, say(what)};
}
constexpr auto headById = joined(headColumns, "WHERE id = ?");
constexpr auto headsOfAthlete = joined(headColumns, "WHERE athlete = ? ORDER BY day, ordinal");

constexpr Phrase goneAthlete = "That athlete is not in the log any more. Nothing was changed.";
constexpr Phrase goneSession = "That session is not in the log any more. Nothing was changed.";

void requireReferences(Log::Impl& impl, const SessionHead& session, std::optional<SessionId> id) {
    if (!Query(impl.db, "SELECT 1 FROM athletes WHERE id = ?", session.athlete).next())
        throw gone(goneAthlete);
    impl.requireRepeat(session, id);
}

void requireFreeOrdinal(Log::Impl& impl, const SessionHead& session, std::optional<SessionId> id) {
    if (!Query(impl.db,
               "SELECT 1 FROM sessions WHERE athlete = ? AND day = ? AND ordinal = ? AND id <> ?",
               session.athlete, session.date, session.ordinal, id.value_or(SessionId{}))
             .next())
        return;
    Query free(impl.db, "SELECT max(ordinal) + 1 FROM sessions WHERE athlete = ? AND day = ?",
               session.athlete, session.date);
    free.next();
    throw LogError(Kind::Conflict,
                   say("There is a session %1 of %2 on %3 already; %4 is free.", session.ordinal,
                       impl.athleteName(session.athlete), session.date, free.integer(0)));
}

void keep(Connection& db, SessionId id, const SessionHead& session) {
    keepAtom(db, {.kind = "session", .one = raw(id)}, contentHash(uuidsIn(db), session));
}

/// Of a session that is about to go, with all that it holds.
void dropAtoms(Connection& db, SessionId id) {
    visitSession(db, rememberedUuidsIn(db), id,
                 [&](const AtomKey& key, const Content& said, const auto& /*derived*/) {
                     dropAtom(db, key, said);
                 });
    dropAtom(db, {.kind = "session", .one = raw(id)});
}

void bindHead(Query& query, const SessionHead& session, SessionId id) {
    int index = 0;
    const auto bind = [&](const auto& value) { query.bind(++index, value); };
    bind(session.athlete);
    bind(session.date);
    bind(session.ordinal);
    bind(session.bodyMass);
    bind(session.repeatOf);
    bind(session.note);
    bind(id);
}
} // namespace

void Log::Impl::requireRepeat(const SessionHead& session, std::optional<SessionId> id) {
    if (!session.repeatOf)
        return;
    const SessionHead first = head(*session.repeatOf).value;
    if (first.athlete != session.athlete)
        throw BadInput(say("a repeat of %1", called(first)), say("a session of the same athlete"));
    if (id && (session.repeatOf == id || first.repeatOf == id))
        throw BadInput(say("a repeat of itself"), say("another session of the same athlete"));
}

Stored<SessionId, SessionHead> readHead(const Query& row) {
    return {row.id<SessionId>(3),
            {.athlete = row.id<AthleteId>(0),
             .date = row.date(1),
             .ordinal = row.small(2),
             .bodyMass = row.optionalMass(4),
             .repeatOf = row.optionalId<SessionId>(5),
             .note = row.text(8)}};
}

Words Log::Impl::called(const SessionHead& session) {
    return say("the session of %1 on %2", athleteName(session.athlete),
               sayDay(session.date, session.ordinal));
}

Stored<SessionId, SessionHead> Log::Impl::head(SessionId id) {
    Query row(db, headById.data(), id);
    if (!row.next())
        throw gone(goneSession);
    return readHead(row);
}

SessionRecord Log::Impl::verified(const Stored<SessionId, SessionHead>& head,
                                  std::int64_t written) {
    std::vector<StoredSet> sets = readSets(db, head.id);
    SessionRecord record{.head = head, .conditions = readConditions(db, head.id)};
    if (checksum(head, record.conditions, sets) != written)
        damaged(say("%1 is not as it was written", called(head.value)));
    record.sets.reserve(sets.size());
    for (StoredSet& stored : sets)
        record.sets.push_back(std::move(stored.placed));
    return record;
}

void Log::Impl::touch(SessionId session) {
    if (const auto known = touched.find(session); known != touched.end() && known->second.rewritten)
        return;
    Query row(db, "SELECT checksum FROM sessions WHERE id = ?", session);
    if (!row.next())
        throw gone(goneSession);
    verified(head(session), row.integer(0));
    mark(session).rewritten = true;
}

Log::Impl::Mark& Log::Impl::mark(SessionId session) {
    if (const auto known = touched.find(session); known != touched.end())
        return known->second;
    Query row(db, "SELECT athlete, checksum, battery_checksum FROM sessions WHERE id = ?", session);
    if (!row.next())
        throw gone(goneSession);
    const Counted counted{.athlete = row.id<AthleteId>(0),
                          .weighs = weight(row.integer(1), row.optionalInteger(2))};
    return touched.emplace(session, Mark{.counted = counted}).first->second;
}

void Log::Impl::settle() {
    if (depth == 0 || touched.empty())
        return;
    std::map<AthleteId, Tally> sums;
    for (const auto& [id, mark] : touched) {
        if (mark.counted)
            sums[mark.counted->athlete].take(mark.counted->weighs);
        Query row(db, "SELECT athlete, checksum, battery_checksum FROM sessions WHERE id = ?", id);
        if (!row.next())
            continue; // removed since
        std::int64_t sum = row.integer(1);
        if (mark.rewritten) {
            const auto session = head(id);
            const auto conditions = readConditions(db, id);
            const auto sets = readSets(db, id);
            sum = checksum(session, conditions, sets);
            Query(db, "UPDATE sessions SET line_checksum = ?, checksum = ? WHERE id = ?",
                  lineChecksum(session, conditions, sets), sum, id)
                .run();
        }
        sums[row.id<AthleteId>(0)].add(weight(sum, row.optionalInteger(2)));
    }
    for (const auto& [athlete, change] : sums)
        if (change != Tally{}) {
            tally("session", raw(athlete), change);
            changes.emplace_back(athlete);
        }
    settled.back().merge(touched); // the earliest mark of a session stays
    touched.clear();
}

std::vector<Stored<SessionId, SessionHead>> Log::sessions(AthleteId athlete) const {
    m_impl->settle();
    const ReadScope moment(m_impl->db);
    std::vector<Stored<SessionId, SessionHead>> all;
    Query rows(m_impl->db, headsOfAthlete.data(), athlete);
    std::map<SessionId, Impl::SeenHead> seen;
    while (m_impl->next(rows))
        m_impl->salvaging([&] {
            Stored<SessionId, SessionHead> head = readHead(rows);
            const Impl::SeenHead now{head.value, rows.integer(7)};
            const auto before = m_impl->seenHeads.find(head.id);
            if (before == m_impl->seenHeads.end() || before->second != now)
                m_impl->verified(head, now.checksum);
            seen.emplace(head.id, now);
            all.push_back(std::move(head));
        });
    m_impl->seenHeads = std::move(seen);
    return all;
}

SessionRecord Log::session(SessionId session) const {
    m_impl->settle();
    const ReadScope moment(m_impl->db);
    Query row(m_impl->db, "SELECT checksum FROM sessions WHERE id = ?", session);
    if (!row.next())
        throw LogError(Kind::Conflict, say("That session is not in the log any more."));
    SessionRecord record = m_impl->verified(m_impl->head(session), row.integer(0));
    record.battery = m_impl->verifiedBattery(session);
    return record;
}

SessionId Log::add(const SessionHead& session, std::optional<SessionId> id) {
    requireValid(session);
    return m_impl->write([&] {
        Impl& impl = *m_impl;
        if (id && Query(impl.db, "SELECT 1 FROM sessions WHERE id = ?", *id).next())
            throw LogError(Kind::Conflict,
                           say("That session is in the log already. Nothing was changed."));
        requireReferences(impl, session, id);
        requireFreeOrdinal(impl, session, id);
        const SessionId given = impl.key("session", id);
        Query insert(impl.db, "INSERT INTO sessions (athlete, day, ordinal, body_mass_g, "
                              "repeat_of, note, id, line_checksum, checksum) "
                              "VALUES (?, ?, ?, ?, ?, ?, ?, 0, 0)");
        bindHead(insert, session, given);
        insert.run();
        keep(impl.db, given, session);
        impl.touched[given].rewritten = true; // counted still where it was removed just before
        return given;
    });
}

void Log::change(SessionId id, const SessionHead& session) {
    requireValid(session);
    m_impl->write([&] {
        Impl& impl = *m_impl;
        impl.touch(id);
        requireReferences(impl, session, id);
        requireFreeOrdinal(impl, session, id);
        Query other(impl.db, "SELECT 1 FROM sessions WHERE repeat_of = ? AND athlete <> ?", id,
                    session.athlete);
        if (other.next())
            throw LogError(Kind::Conflict,
                           say("Another session is a repeat of this one; both must be "
                               "of the same athlete. Nothing was changed."));
        Query update(impl.db, "UPDATE sessions SET athlete = ?, day = ?, ordinal = ?, "
                              "body_mass_g = ?, repeat_of = ?, note = ? WHERE id = ?");
        bindHead(update, session, id);
        update.run();
        keep(impl.db, id, session);
    });
}

void Log::remove(SessionId id) {
    m_impl->write([&] {
        Impl& impl = *m_impl;
        impl.mark(id);
        Query repeat(impl.db, "SELECT day, ordinal FROM sessions WHERE repeat_of = ?", id);
        if (repeat.next())
            throw LogError(Kind::Conflict, say("The session of %1 is a repeat of this one. Nothing "
                                               "was removed.",
                                               sayDay(repeat.date(0), repeat.small(1))));
        dropAtoms(impl.db, id);
        Query(impl.db, "DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = ?)",
              id)
            .run();
        Query(impl.db, "DELETE FROM sets WHERE session = ?", id).run();
        Query(impl.db, "DELETE FROM lift_conditions WHERE session = ?", id).run();
        impl.eraseBattery(id);
        Query(impl.db, "DELETE FROM sessions WHERE id = ?", id).run();
    });
}

} // namespace slopebook::log
