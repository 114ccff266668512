// SPDX-License-Identifier: GPL-3.0-or-later
// Athletes, lifts, devices and blocks: one way to read, add, change and remove them.
#include "core/log/impl.h"
#include "core/log/tables.h"
#include "core/log/testtable.h"
#include "core/log/validity.h"
#include "core/model/names.h"
#include "core/model/phrases/log.h"

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

/// Every row in order; wrong is told of each that is not as it was written, which is left out.
template <class Id, class Wrong>
std::vector<Stored<Id, typename Table<Id>::Value>> list(Log::Impl& impl, const Wrong& wrong) {
    std::vector<Stored<Id, typename Table<Id>::Value>> all;
    Query rows(impl.db, sqlOf<Id>().inOrder.c_str());
    const auto take = [&] {
        const auto id = rows.id<Id>(0);
        auto value = readValue<Id>(rows);
        if (checksum(id, value) == rows.integer(1))
            all.push_back({id, std::move(value)});
        else
            wrong(notAsWritten<Id>(value));
    };
    while (impl.next(rows))
        impl.salvaging(take);
    return all;
}

template <class Id>
std::vector<Stored<Id, typename Table<Id>::Value>> list(Log::Impl& impl) {
    return list<Id>(impl, [&](const Words& what) { impl.leaveOut(what); });
}

/// One row by its key; throws where it is not there or not as it was written.
template <class Id>
Stored<Id, typename Table<Id>::Value> oneOf(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().one.c_str(), id);
    if (!row.next())
        throw LogError(Kind::Conflict, say(Table<Id>::says.gone));
    auto value = readValue<Id>(row);
    if (checksum(id, value) != row.integer(1))
        impl.damaged(notAsWritten<Id>(value));
    return {id, std::move(value)};
}

/// Throws where it is gone; gives what it weighs in its tally.
template <class Id>
std::uint64_t requireThere(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().weighed.c_str(), id);
    if (!row.next())
        throw LogError(Kind::Conflict, say(Table<Id>::says.goneUnchanged));
    if constexpr (std::is_same_v<Id, AthleteId>)
        return weight(row.integer(1), row.integer(2));
    else
        return weight(row.integer(1));
}

template <class Id>
Words nameOf(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().weighed.c_str(), id);
    return row.next() ? asIs(row.text(0)) : say(Table<Id>::says.numbered, raw(id));
}

template <class Id>
void requireFreeName(Log::Impl& impl, std::optional<Id> id,
                     const typename Table<Id>::Value& value) {
    Query same(impl.db, sqlOf<Id>().taken.c_str(), id.value_or(Id{}), value.name);
    if constexpr (std::is_same_v<Id, BlockId>)
        same.bind(3, value.first);
    if (same.next())
        throw BadInput(say("'%1' a second time", value.name), say(Table<Id>::says.freeName));
}

/// The day that a name is taken from, where the same name may stand for several.
template <class Value>
std::optional<Date> dayOf(const Value& value) {
    if constexpr (std::is_same_v<Value, Block>)
        return value.first;
    else
        return std::nullopt;
}

/// A name that is new here: brought to its one spelling by whoever took it from the coach, and no
/// other spelling of one that is there.
template <class Id>
void requireNewName(Log::Impl& impl, std::optional<Id> id, const typename Table<Id>::Value& value) {
    requireTidy(value.name);
    const std::string key = nameKey(value.name);
    const char* const every = sqlOf<Id>().inOrder.c_str();
    for (const auto row : impl.names[Table<Id>::one].withKey(impl.db, every, key)) {
        if (row == static_cast<std::int64_t>(id.value_or(Id{})))
            continue;
        for (Query other(impl.db, every); other.next();)
            if (other.integer(0) == row && nameKey(other.text(2)) == key &&
                dayOf(readValue<Id>(other)) == dayOf(value))
                throw BadInput(say("'%1', the same name as '%2'", value.name, other.text(2)),
                               say(Table<Id>::says.freeName));
    }
}

template <class Id>
Id add(Log::Impl& impl, const typename Table<Id>::Value& value, std::optional<Id> id) {
    requireValid(value);
    return impl.write([&] {
        if (id && Query(impl.db, sqlOf<Id>().weighed.c_str(), *id).next())
            throw LogError(Kind::Conflict, say(Table<Id>::says.there));
        requireFreeName(impl, id, value);
        if (!id) // what is put back stands as it stood
            requireNewName(impl, id, value);
        const Id given = impl.key(Table<Id>::one, id);
        Query insert(impl.db, sqlOf<Id>().insert.c_str());
        bindValue(insert, given, value);
        insert.run();
        Tally change;
        change.add(requireThere(impl, given));
        impl.tally(Table<Id>::one, 0, change);
        impl.names[Table<Id>::one].note(value.name, raw(given));
        return given;
    });
}

template <class Id>
void change(Log::Impl& impl, Id id, const typename Table<Id>::Value& value) {
    Tally change;
    change.take(requireThere(impl, id));
    requireFreeName(impl, std::optional(id), value);
    if (Query held(impl.db, sqlOf<Id>().weighed.c_str(), id);
        held.next() && held.text(0) != value.name)
        requireNewName(impl, std::optional(id), value);
    Query update(impl.db, sqlOf<Id>().update.c_str());
    bindValue(update, id, value);
    update.run();
    change.add(requireThere(impl, id));
    impl.tally(Table<Id>::one, 0, change);
    impl.names[Table<Id>::one].note(value.name, raw(id));
}

/// What still refers to a thing, one of it and several.
struct Use {
    Phrase one, several;
};
constexpr Use sessionsOf{"'%1' still has 1 session in the log. Nothing was removed.",
                         "'%1' still has %2 sessions in the log. Nothing was removed."};
constexpr Use setsOf{"'%1' still has 1 set in the log. Nothing was removed.",
                     "'%1' still has %2 sets in the log. Nothing was removed."};
constexpr Use checkLoadsOf{"'%1' still has 1 check load in the log. Nothing was removed.",
                           "'%1' still has %2 check loads in the log. Nothing was removed."};
constexpr Use attemptsOf{"'%1' still has 1 attempt in the log. Nothing was removed.",
                         "'%1' still has %2 attempts in the log. Nothing was removed."};
constexpr Use gapsOf{"'%1' still has 1 gap in the log. Nothing was removed.",
                     "'%1' still has %2 gaps in the log. Nothing was removed."};

template <class Id>
void requireUnused(Log::Impl& impl, Id id, const char* countSql, const Use& use) {
    Query count(impl.db, countSql, id);
    count.next();
    const auto uses = count.integer(0);
    if (uses > 0)
        throw LogError(Kind::Conflict,
                       say(uses == 1 ? use.one : use.several, nameOf(impl, id), uses));
}

template <class Id>
void erase(Log::Impl& impl, Id id) {
    Tally change;
    change.take(requireThere(impl, id));
    Query(impl.db, sqlOf<Id>().erase.c_str(), id).run();
    impl.tally(Table<Id>::one, 0, change);
}

void rewritePoints(Log::Impl& impl, LiftId lift, PointRule rule) {
    std::vector<PlacedSet> sets;
    {
        Query rows(impl.db, "SELECT session, ordinal, id, excluded FROM sets WHERE lift = ?", lift);
        while (rows.next()) {
            PlacedSet placed{.id = rows.id<SetId>(2),
                             .session = rows.id<SessionId>(0),
                             .lift = lift,
                             .ordinal = rows.small(1)};
            placed.set.excluded = rows.text(3);
            sets.push_back(std::move(placed));
        }
    }
    for (PlacedSet& placed : sets) {
        impl.touch(placed.session);
        placed.set.reps = impl.reps(placed.id);
        const StoredSet stored = withPoint(std::move(placed), rule);
        Query(impl.db,
              "UPDATE sets SET point = ?, counting = ? WHERE session = ? AND lift = ? AND "
              "ordinal = ?",
              stored.point, stored.counting, stored.placed.session, lift, stored.placed.ordinal)
            .run();
    }
}
} // namespace

std::vector<Stored<AthleteId, Athlete>> Log::athletes() const {
    return list<AthleteId>(*m_impl);
}
std::vector<Stored<LiftId, Lift>> Log::lifts() const {
    return list<LiftId>(*m_impl);
}
std::vector<Stored<DeviceId, Device>> Log::devices() const {
    return list<DeviceId>(*m_impl);
}
std::vector<Stored<BlockId, Block>> Log::blocks() const {
    return list<BlockId>(*m_impl);
}

Stored<AthleteId, Athlete> Log::athlete(AthleteId id) const {
    return oneOf(*m_impl, id);
}
Stored<LiftId, Lift> Log::lift(LiftId id) const {
    return oneOf(*m_impl, id);
}

std::vector<Stored<TestKindId, TestKind>> Log::testKinds() const {
    return list<TestKindId>(*m_impl);
}

AthleteId Log::add(const Athlete& athlete, std::optional<AthleteId> id) {
    return m_impl->write([&] {
        const AthleteId given = log::add(*m_impl, athlete, id);
        m_impl->sealCheckLoads(given);
        Query(m_impl->db,
              "INSERT INTO tallies (owner, kind, things, sum) VALUES (?, 'session', 0, 0)", given)
            .run();
        return given;
    });
}
LiftId Log::add(const Lift& lift, std::optional<LiftId> id) {
    return log::add(*m_impl, lift, id);
}
DeviceId Log::add(const Device& device, std::optional<DeviceId> id) {
    return log::add(*m_impl, device, id);
}
BlockId Log::add(const Block& block, std::optional<BlockId> id) {
    return log::add(*m_impl, block, id);
}

TestKindId Log::add(const TestKind& kind, std::optional<TestKindId> id) {
    return log::add(*m_impl, kind, id);
}

void Log::change(AthleteId id, const Athlete& athlete) {
    requireValid(athlete);
    m_impl->write([&] { log::change(*m_impl, id, athlete); });
}
void Log::change(LiftId id, const Lift& lift) {
    requireValid(lift);
    m_impl->write([&] {
        requireThere(*m_impl, id);
        const PointRule before = m_impl->rule(id);
        log::change(*m_impl, id, lift);
        if (before != lift.rule)
            rewritePoints(*m_impl, id, lift.rule);
    });
}
void Log::change(DeviceId id, const Device& device) {
    requireValid(device);
    m_impl->write([&] { log::change(*m_impl, id, device); });
}
void Log::change(BlockId id, const Block& block) {
    requireValid(block);
    m_impl->write([&] { log::change(*m_impl, id, block); });
}

void Log::change(TestKindId id, const TestKind& kind) {
    requireValid(kind);
    m_impl->write([&] {
        requireThere(*m_impl, id);
        for (const auto& held : list<TestKindId>(*m_impl))
            if (held.id == id &&
                (held.value.formula != kind.formula || held.value.twoSided != kind.twoSided))
                requireUnused(*m_impl, id, "SELECT count(*) FROM attempts WHERE test = ?",
                              attemptsOf);
        log::change(*m_impl, id, kind);
    });
}

void Log::remove(AthleteId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM sessions WHERE athlete = ?", sessionsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM check_loads WHERE athlete = ?",
                      checkLoadsOf);
        // Lest the last trace of sessions go that the file has lost.
        m_impl->settle();
        if (const auto written = m_impl->sessionsWritten(id); written != 0)
            m_impl->damaged(say("sessions of %1: %2 were written, %3 are there",
                                m_impl->athleteName(id), written, 0));
        erase(*m_impl, id);
        Query(m_impl->db, "DELETE FROM tallies WHERE owner = ?", id).run();
    });
}
void Log::remove(LiftId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM sets WHERE lift = ?", setsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM check_loads WHERE lift = ?", checkLoadsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM gaps WHERE lift = ?", gapsOf);
        erase(*m_impl, id);
    });
}
void Log::remove(DeviceId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM sessions WHERE device = ?", sessionsOf);
        erase(*m_impl, id);
    });
}
void Log::remove(BlockId id) {
    m_impl->write([&] { erase(*m_impl, id); });
}

void Log::remove(TestKindId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM attempts WHERE test = ?", attemptsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM gaps WHERE test = ?", gapsOf);
        erase(*m_impl, id);
    });
}

Words Log::Impl::athleteName(AthleteId id) {
    return nameOf(*this, id);
}
Words Log::Impl::liftName(LiftId id) {
    return nameOf(*this, id);
}

PointRule Log::Impl::rule(LiftId lift) {
    Query row(db, "SELECT rule FROM lifts WHERE id = ?", lift);
    if (row.next())
        if (const auto rule = pointRuleFromWord(row.text(0)))
            return *rule;
    damaged(say("the lift '%1' has no rule for its points", liftName(lift)));
}

void Log::Impl::checkLists(Findings& findings) {
    const auto wrong = [&](const Words& what) { findings.push_back(say("%1.", what)); };
    for (const auto& athlete : list<AthleteId>(*this, wrong))
        if (!checkLoadsSound(athlete.id))
            wrong(say("the check loads of '%1' are not as they were written", athlete.value.name));
    list<LiftId>(*this, wrong);
    list<DeviceId>(*this, wrong);
    list<BlockId>(*this, wrong);
    list<TestKindId>(*this, wrong);
}

} // namespace slopebook::log
