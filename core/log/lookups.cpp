// SPDX-License-Identifier: GPL-3.0-or-later
// Athletes, lifts, devices, blocks and tests: what is their own beside core/log/named.h.
#include "core/log/named.h"
#include "core/log/sessionrows.h"

namespace slopebook::log {

namespace {
using named::list;
using named::requireThere;
using named::requireUnused;
using named::Use;

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
constexpr Use conditionsOfOne{"'%1' still has conditions in 1 session. Nothing was removed.",
                              "'%1' still has conditions in %2 sessions. Nothing was removed."};
constexpr Use stationsOf{"'%1' still has 1 station in the log. Nothing was removed.",
                         "'%1' still has %2 stations in the log. Nothing was removed."};
constexpr Use rostersOf{"'%1' still stands on 1 roster. Nothing was removed.",
                        "'%1' still stands on %2 rosters. Nothing was removed."};

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
        placed.set.reps = readReps(impl.db, placed.id);
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
    return named::oneOf(*m_impl, id);
}
Stored<LiftId, Lift> Log::lift(LiftId id) const {
    return named::oneOf(*m_impl, id);
}

std::vector<Stored<TestKindId, TestKind>> Log::testKinds() const {
    return list<TestKindId>(*m_impl);
}

AthleteId Log::add(const Athlete& athlete, std::optional<AthleteId> id) {
    return m_impl->write([&] {
        const AthleteId given = named::add(*m_impl, athlete, id);
        m_impl->sealCheckLoads(given);
        Query(m_impl->db,
              "INSERT INTO tallies (owner, kind, things, sum) VALUES (?, 'session', 0, 0)", given)
            .run();
        return given;
    });
}
LiftId Log::add(const Lift& lift, std::optional<LiftId> id) {
    return named::add(*m_impl, lift, id);
}
DeviceId Log::add(const Device& device, std::optional<DeviceId> id) {
    return named::add(*m_impl, device, id);
}
BlockId Log::add(const Block& block, std::optional<BlockId> id) {
    return named::add(*m_impl, block, id);
}

TestKindId Log::add(const TestKind& kind, std::optional<TestKindId> id) {
    return named::add(*m_impl, kind, id);
}

void Log::change(AthleteId id, const Athlete& athlete) {
    requireValid(athlete);
    m_impl->write([&] { named::change(*m_impl, id, athlete); });
}
void Log::change(LiftId id, const Lift& lift) {
    requireValid(lift);
    m_impl->write([&] {
        requireThere(*m_impl, id);
        const PointRule before = m_impl->rule(id);
        named::change(*m_impl, id, lift);
        if (before != lift.rule)
            rewritePoints(*m_impl, id, lift.rule);
    });
}
void Log::change(DeviceId id, const Device& device) {
    requireValid(device);
    m_impl->write([&] { named::change(*m_impl, id, device); });
}
void Log::change(BlockId id, const Block& block) {
    requireValid(block);
    m_impl->write([&] { named::change(*m_impl, id, block); });
}

void Log::change(TestKindId id, const TestKind& kind) {
    requireValid(kind);
    m_impl->write([&] {
        requireThere(*m_impl, id);
        for (const auto& held : list<TestKindId>(*m_impl))
            if (held.id == id &&
                (held.value.formula != kind.formula || held.value.twoSided != kind.twoSided ||
                 (held.value.bothToo && !kind.bothToo)))
                requireUnused(*m_impl, id, "SELECT count(*) FROM attempts WHERE test = ?",
                              attemptsOf);
        named::change(*m_impl, id, kind);
    });
}

void Log::remove(AthleteId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM sessions WHERE athlete = ?", sessionsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM check_loads WHERE athlete = ?",
                      checkLoadsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM roster_athletes WHERE athlete = ?",
                      rostersOf);
        // Lest the last trace of sessions go that the file has lost.
        m_impl->settle();
        if (const auto written = m_impl->sessionsWritten(id); written != 0)
            m_impl->damaged(say("sessions of %1: %2 were written, %3 are there",
                                m_impl->athleteName(id), written, 0));
        named::erase(*m_impl, id);
        Query(m_impl->db, "DELETE FROM tallies WHERE owner = ?", id).run();
    });
}
void Log::remove(LiftId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM sets WHERE lift = ?", setsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM check_loads WHERE lift = ?", checkLoadsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM gaps WHERE lift = ?", gapsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM lift_conditions WHERE lift = ?",
                      conditionsOfOne);
        requireUnused(*m_impl, id, "SELECT count(*) FROM stations WHERE lift = ?", stationsOf);
        named::erase(*m_impl, id);
    });
}
void Log::remove(DeviceId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id,
                      "SELECT count(DISTINCT session) FROM (SELECT session FROM lift_conditions "
                      "WHERE device = ?1 UNION ALL SELECT session FROM test_conditions "
                      "WHERE device = ?1)",
                      sessionsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM stations WHERE device = ?", stationsOf);
        named::erase(*m_impl, id);
    });
}
void Log::remove(BlockId id) {
    m_impl->write([&] { named::erase(*m_impl, id); });
}

void Log::remove(TestKindId id) {
    m_impl->write([&] {
        requireUnused(*m_impl, id, "SELECT count(*) FROM attempts WHERE test = ?", attemptsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM gaps WHERE test = ?", gapsOf);
        requireUnused(*m_impl, id, "SELECT count(*) FROM test_conditions WHERE test = ?",
                      conditionsOfOne);
        requireUnused(*m_impl, id, "SELECT count(*) FROM station_tests WHERE test = ?", stationsOf);
        named::erase(*m_impl, id);
    });
}

Words Log::Impl::athleteName(AthleteId id) {
    return named::nameOf(*this, id);
}
Words Log::Impl::liftName(LiftId id) {
    return named::nameOf(*this, id);
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
    list<EquipmentId>(*this, wrong);
    list<StationId>(*this, wrong);
}

} // namespace slopebook::log
