// SPDX-License-Identifier: GPL-3.0-or-later
// Sets and their reps.
#include "core/log/atoms.h"
#include "core/log/impl.h"
#include "core/log/sessionrows.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

/// Where a set stands, without what is in it.
PlacedSet place(Log::Impl& impl, SetId id) {
    Query row(impl.db, "SELECT session, lift, ordinal FROM sets WHERE id = ?", id);
    if (!row.next())
        throw LogError(Kind::Conflict, say("That set is not in the log any more."));
    return {.id = id,
            .session = row.id<SessionId>(0),
            .lift = row.id<LiftId>(1),
            .ordinal = row.small(2)};
}

void requireFree(Log::Impl& impl, const PlacedSet& placed, std::optional<SetId> id) {
    if (!Query(impl.db, "SELECT 1 FROM lifts WHERE id = ?", placed.lift).next())
        throw LogError(Kind::Conflict,
                       say("That lift is not in the log any more. Nothing was changed."));
    if (placed.ordinal < 1)
        throw BadInput(say("set number %1", placed.ordinal), say("1 for the first set of a lift"));
    const bool taken =
        Query(impl.db, "SELECT 1 FROM sets WHERE session = ? AND lift = ? AND ordinal = ?",
              placed.session, placed.lift, placed.ordinal)
            .next() ||
        (id && Query(impl.db, "SELECT 1 FROM sets WHERE id = ?", *id).next());
    if (taken)
        throw LogError(Kind::Conflict,
                       say("Set %1 is in the log already. Nothing was changed.", placed.ordinal));
}

void keep(Connection& db, const PlacedSet& placed) {
    keepAtom(db, {.kind = "set", .one = raw(placed.id)}, contentHash(uuidsIn(db), placed));
}

int nextOrdinal(Log::Impl& impl, SessionId session, LiftId lift) {
    Query last(impl.db,
               "SELECT ifnull(max(ordinal), 0) + 1 FROM sets WHERE session = ? AND lift = ?",
               session, lift);
    last.next();
    return last.small(0);
}
} // namespace

std::vector<PlacedSet> Log::sets(SessionId session, LiftId lift) const {
    std::vector<PlacedSet> all = this->session(session).sets;
    std::erase_if(all, [&](const PlacedSet& placed) { return placed.lift != lift; });
    return all;
}

PlacedSet Log::set(SetId id) const {
    m_impl->settle();
    const ReadScope moment(m_impl->db);
    const auto record = session(place(*m_impl, id).session);
    const auto found = std::ranges::find(record.sets, id, &PlacedSet::id);
    if (found == record.sets.end())
        m_impl->damaged(say("%1 lacks one of its sets", m_impl->called(record.head.value)));
    return *found;
}

std::vector<LiftId> Log::liftsOf(AthleteId athlete) const {
    std::vector<LiftId> lifts;
    Query rows(
        m_impl->db,
        // By the sets: a lift that they speak of and that is not there is still one of theirs.
        "SELECT used.lift FROM (SELECT DISTINCT sets.lift AS lift FROM sessions JOIN sets ON "
        "sets.session = sessions.id WHERE sessions.athlete = ?) AS used "
        "LEFT JOIN lifts ON lifts.id = used.lift ORDER BY name COLLATE NOCASE, name",
        athlete);
    while (rows.next())
        lifts.push_back(rows.id<LiftId>(0));
    return lifts;
}

SetId Log::add(SessionId session, LiftId lift, const Set& set, std::optional<int> ordinal,
               std::optional<SetId> id) {
    requireValid(set);
    return m_impl->write([&] {
        m_impl->touch(session);
        PlacedSet placed{.session = session, .lift = lift, .set = set};
        placed.ordinal = ordinal ? *ordinal : nextOrdinal(*m_impl, session, lift);
        requireFree(*m_impl, placed, id);
        placed.id = m_impl->key("set", id);
        insertSet(m_impl->db, withPoint(placed, m_impl->rule(lift)));
        keep(m_impl->db, placed);
        return placed.id;
    });
}

void Log::change(SetId id, const Set& set) {
    requireValid(set);
    m_impl->write([&] {
        Impl& impl = *m_impl;
        PlacedSet placed = place(impl, id);
        impl.touch(placed.session);
        placed.set = set;
        updateSet(impl.db, withPoint(placed, impl.rule(placed.lift)));
        keep(impl.db, placed);
    });
}

void Log::remove(SetId id) {
    m_impl->write([&] {
        const PlacedSet placed = place(*m_impl, id);
        m_impl->touch(placed.session);
        dropAtom(m_impl->db, {.kind = "set", .one = raw(id)});
        Query(m_impl->db, "DELETE FROM reps WHERE set_id = ?", id).run();
        Query(m_impl->db, "DELETE FROM sets WHERE id = ?", id).run();
    });
}

} // namespace slopebook::log
