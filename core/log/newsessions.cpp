// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/newsessions.h"

#include "core/log/atoms.h"
#include "core/log/columns.h"
#include "core/log/comingrows.h"
#include "core/log/impl.h"
#include "core/log/ontrust.h"
#include "core/log/sessionrows.h"
#include "core/log/storerows.h"
#include "core/log/tables.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <deque>
#include <span>

namespace slopebook::log {

namespace {
/// Puts the fields of a value into a row, as ColumnBinder binds them.
struct CellWriter {
    ComingRows& rows;

    template <class Field>
    void operator()(const char* /*name*/, const Field& field) {
        if constexpr (std::is_enum_v<Field>)
            rows.text(word(field));
        else
            put(field);
    }
    void put(const std::string& text) { rows.text(text); }
    void put(bool value) { rows.integer(value ? 1 : 0); }
    void put(int value) { rows.integer(value); }
    void put(double value) { rows.real(value); }
    void put(Mass value) { rows.integer(value.grams); }
    void put(Effort value) { rows.real(value.value()); }
    template <class Id>
    requires std::is_enum_v<Id>
    void put(Id id) { rows.integer(raw(id)); }
    template <class Value>
    void put(const std::optional<Value>& value) {
        if (value)
            put(*value);
        else
            rows.null();
    }
};

/// "INSERT INTO reps (set_id, ordinal) SELECT c0, c1 FROM coming".
std::string comingInto(const std::string& table, const std::string& columns) {
    std::string cells = "c0";
    for (int i = 1; i <= std::ranges::count(columns, ','); ++i)
        cells += ", c" + std::to_string(i);
    return "INSERT INTO " + table + " (" + columns + ") SELECT " + cells + " FROM coming";
}

template <class Value, class Columns>
std::string namesOf(const Columns& columns) {
    ColumnNames names;
    const Value none{};
    columns(none, names);
    return names.list;
}

std::size_t width(const std::string& sql) {
    return static_cast<std::size_t>(std::ranges::count(sql.substr(0, sql.find(')')), ',')) + 1;
}

/// The statements, kept by their texts.
struct ComingSql {
    std::string sessions = comingInto("sessions", "athlete, day, ordinal, id, body_mass_g, "
                                                  "repeat_of, line_checksum, checksum, note");
    std::string conditions = comingInto(
        "lift_conditions", namesOf<Conditions>([](const Conditions& held, ColumnNames& names) {
                               conditionColumns(held, names);
                           }) + ", lift, session");
    std::string sets = comingInto("sets", namesOf<Set>([](const Set& set, ColumnNames& names) {
                                              setColumns(set, names);
                                          }) + ", point, counting, id, lift, ordinal, session");
    std::string reps = comingInto("reps", "set_id, ordinal, velocity, excluded");
    std::string atoms = comingInto("atoms", "kind, one, two, three, uuid, hash, trail");
};
const ComingSql& comingSql() {
    static const ComingSql made;
    return made;
}

/// One batch, within a transaction.
class Adder {
public:
    Adder(Log::Impl& impl, std::vector<NewSession> sessions)
        : m_impl(impl), m_sessions(std::move(sessions)) {}

    std::vector<SessionId> add() {
        count();
        m_uuids = rememberedUuidsIn(m_impl.db);
        std::vector<SessionId> ids;
        for (std::size_t i = 0; i < m_sessions.size(); ++i) {
            ids.push_back(SessionId{m_firstSession + static_cast<std::int64_t>(i)});
            addOne(m_sessions[i], ids.back());
        }
        write();
        return ids;
    }

private:
    // Nothing that rows point into may move any more.
    void count() {
        std::size_t sets = 0, conditions = 0, reps = 0;
        for (NewSession& session : m_sessions) {
            std::erase_if(session.conditions,
                          [](const LiftConditions& one) { return one.conditions == Conditions{}; });
            std::ranges::sort(session.conditions, {}, &LiftConditions::lift);
            std::ranges::sort(session.sets, {},
                              [](const NewSet& set) { return std::pair(set.lift, set.ordinal); });
            for (const NewSet& set : session.sets)
                reps += set.set.reps.size();
            sets += session.sets.size();
            conditions += session.conditions.size();
        }
        const std::size_t things = m_sessions.size() + sets + conditions;
        m_sets.reserve(sets);
        m_atoms.reserve(things);
        m_sessionRows.reserve(m_sessions.size());
        m_conditionRows.reserve(conditions);
        m_atomRows.reserve(things);
        m_setRows.reserve(sets);
        m_repRows.reserve(reps);
        m_days.reserve(m_sessions.size());
        m_fresh = randomUuids(things);
        m_firstSession =
            m_impl.reserveKeys("session", static_cast<std::int64_t>(m_sessions.size()));
        m_nextSet = m_impl.reserveKeys("set", static_cast<std::int64_t>(sets));
    }

    void addOne(NewSession& session, SessionId id) {
        m_impl.requireRepeat(session.head, std::nullopt);
        const Sixteen& own =
            keep("session", raw(id), 0, contentHash(uuids(), session.head), session.as);
        const UuidOf within = [&](const char* kind, std::int64_t key) {
            return std::string_view(kind) == kindOf<SessionId> && key == raw(id)
                       ? own
                       : m_uuids(kind, key);
        };
        for (const LiftConditions& one : session.conditions)
            addConditions(within, id, one, session.conditionsAs);
        const std::size_t first = m_sets.size();
        for (NewSet& set : session.sets)
            addSet(within, id, set);
        const std::span<const StoredSet> sets = std::span(m_sets).subspan(first);
        const Stored<SessionId, SessionHead> head{id, session.head};
        const std::int64_t sum = checksum(head, session.conditions, sets);
        m_tallies[session.head.athlete].add(weight(sum));
        m_days.push_back(isoDate(session.head.date));
        CellWriter cells{m_sessionRows};
        cells.put(session.head.athlete);
        cells.put(m_days.back());
        cells.put(session.head.ordinal);
        cells.put(id);
        cells.put(session.head.bodyMass);
        cells.put(session.head.repeatOf);
        m_sessionRows.integer(lineChecksum(head, session.conditions, sets));
        m_sessionRows.integer(sum);
        cells.put(session.head.note);
    }

    void addConditions(const UuidOf& within, SessionId session, const LiftConditions& one,
                       const std::map<LiftId, CameAs>& names) {
        CellWriter cells{m_conditionRows};
        conditionColumns(one.conditions, cells);
        cells.put(one.lift);
        cells.put(session);
        const auto as = names.find(one.lift);
        keep("lift conditions", raw(session), raw(one.lift),
             contentHash(within, session, one.lift, one.conditions),
             as == names.end() ? std::nullopt : std::optional(as->second));
    }

    void addSet(const UuidOf& within, SessionId session, NewSet& set) {
        m_sets.push_back(withPoint({.id = SetId{m_nextSet++},
                                    .session = session,
                                    .lift = set.lift,
                                    .ordinal = set.ordinal,
                                    .set = std::move(set.set)},
                                   ruleOf(set.lift)));
        const StoredSet& stored = m_sets.back();
        const PlacedSet& placed = stored.placed;
        CellWriter cells{m_setRows};
        setColumns(placed.set, cells);
        cells.put(stored.point);
        cells.put(stored.counting);
        cells.put(placed.id);
        cells.put(placed.lift);
        cells.put(placed.ordinal);
        cells.put(placed.session);
        CellWriter ofRep{m_repRows};
        int ordinal = 0;
        for (const Rep& rep : placed.set.reps) {
            ofRep.put(placed.id);
            ofRep.put(++ordinal);
            ofRep.put(rep.velocity);
            ofRep.put(rep.excluded);
        }
        keep("set", raw(placed.id), 0, contentHash(within, placed), set.as);
    }

    /// Its UUID. A key that was never given out has none of before.
    const Sixteen& keep(const char* kind, std::int64_t one, std::int64_t two, const Sixteen& hash,
                        const std::optional<CameAs>& as) {
        if (as && as->hash != hash)
            throw damagedLog(
                m_impl.db.file(),
                say("%1 is not as its hash says", placeOf({.kind = kind, .one = one, .two = two})));
        m_atoms.push_back({.key = {.kind = kind, .one = one, .two = two},
                           .uuid = as ? as->uuid : m_fresh[m_atoms.size()],
                           .hash = hash,
                           .trail = as ? as->trail : std::string()});
        const Atom& atom = m_atoms.back();
        if (!as)
            m_unsent.push_back({.uuid = atom.uuid});
        m_atomTally.add(weightOf(atom));
        m_atomRows.text(atom.key.kind);
        m_atomRows.integer(one);
        m_atomRows.integer(two);
        m_atomRows.integer(0);
        m_atomRows.blob(viewOf(atom.uuid));
        m_atomRows.blob(viewOf(atom.hash));
        if (atom.trail.empty())
            m_atomRows.null();
        else
            m_atomRows.blob(atom.trail);
        return atom.uuid;
    }

    PointRule ruleOf(LiftId lift) {
        const auto [at, isNew] = m_rules.try_emplace(lift);
        if (isNew)
            at->second = m_impl.rule(lift);
        return at->second;
    }
    const UuidOf& uuids() const { return m_uuids; }

    void write() {
        insert(comingSql().sessions, m_sessionRows);
        insert(comingSql().conditions, m_conditionRows);
        // To look up what they refer to, and a word in the fifteen that a table allows, took a
        // third of SQLite's time. Their session and their set were written just now, their lift
        // was asked for its rule; their values passed requireValid(), and a kind and a UUID are
        // what they are by their types.
        onTrust(m_impl.db, [&] {
            insert(comingSql().sets, m_setRows);
            insert(comingSql().reps, m_repRows);
            insert(comingSql().atoms, m_atomRows);
        });
        for (const auto& [athlete, tally] : m_tallies) {
            m_impl.tally("session", raw(athlete), tally);
            m_impl.changes.emplace_back(athlete);
        }
        m_impl.tally("atom", 0, m_atomTally);
        noteUnsent(m_impl.db, m_unsent);
    }

    void insert(const std::string& sql, const ComingRows& rows) {
        if (rows.rows() == 0)
            return;
        m_impl.db.setComing(&rows);
        Query(m_impl.db, sql.c_str()).run();
        m_impl.db.setComing(nullptr);
    }

    Log::Impl& m_impl;
    std::vector<NewSession> m_sessions;
    std::vector<StoredSet> m_sets;
    std::vector<Atom> m_atoms;
    std::vector<Sixteen> m_fresh;
    std::vector<Unsent> m_unsent; ///< what is new to everybody
    std::vector<std::string> m_days;
    std::int64_t m_firstSession = 0, m_nextSet = 0;
    UuidOf m_uuids;
    std::map<LiftId, PointRule> m_rules;
    std::map<AthleteId, Tally> m_tallies;
    Tally m_atomTally;
    ComingRows m_sessionRows{width(comingSql().sessions)},
        m_conditionRows{width(comingSql().conditions)}, m_setRows{width(comingSql().sets)},
        m_repRows{width(comingSql().reps)}, m_atomRows{width(comingSql().atoms)};
};
/// By every rule that its table has.
void requireStorable(const NewSet& set) {
    if (set.ordinal < 1)
        throw BadInput(say("set number %1", set.ordinal), say("1 for the first set of a lift"));
    requireValid(set.set);
}
} // namespace

std::vector<SessionId> addSessions(const Log& log, std::vector<NewSession> sessions) {
    for (const NewSession& session : sessions) {
        requireValid(session.head);
        for (const NewSet& set : session.sets)
            requireStorable(set);
        for (const LiftConditions& one : session.conditions)
            requireValid(one.conditions);
    }
    if (sessions.empty())
        return {};
    Log::Impl& impl = log.impl();
    return impl.write([&] { return Adder(impl, std::move(sessions)).add(); });
}

BoundedCache::BoundedCache(const Log& log, int pages) : m_log(log) {
    log.impl().db.execute("PRAGMA cache_spill = " + std::to_string(pages));
}

BoundedCache::~BoundedCache() {
    try {
        m_log.impl().db.execute("PRAGMA cache_spill = OFF");
    } catch (...) { // NOLINT(bugprone-empty-catch): a cache that spills costs readers a wait
    }
}

} // namespace slopebook::log
