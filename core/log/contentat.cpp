// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/contentat.h"

#include "core/log/batteryatoms.h"
#include "core/log/conflicts.h"
#include "core/log/impl.h"
#include "core/log/named.h"
#include "core/log/sessionrows.h"

namespace slopebook::log {

namespace {
using Found = std::optional<Content>;

template <class Id>
Found rowAt(Connection& db, std::int64_t key) {
    Query row(db, sqlOf<Id>().one.c_str(), key);
    if (!row.next())
        return std::nullopt;
    Stored<Id, typename Table<Id>::Value> one;
    named::readRow(db, row, one);
    return contentOf(uuidsIn(db), one.value);
}

template <class Id>
bool rowOf(Connection& db, const AtomKey& key, Found& found) {
    if (key.kind != Table<Id>::one)
        return false;
    found = rowAt<Id>(db, key.one);
    return true;
}

Found headAt(Connection& db, std::int64_t key) {
    static constexpr auto byId = joined(headColumns, "WHERE id = ?");
    Query row(db, byId.data(), key);
    return row.next() ? Found(contentOf(uuidsIn(db), readHead(row).value)) : std::nullopt;
}

Found setAt(Connection& db, std::int64_t key) {
    const auto stored = readSet(db, SetId{key});
    return stored ? Found(contentOf(uuidsIn(db), stored->placed)) : std::nullopt;
}

Found conditionsAt(Connection& db, SessionId session, LiftId lift) {
    for (const LiftConditions& held : readConditions(db, session))
        if (held.lift == lift)
            return contentOf(uuidsIn(db), session, lift, held.conditions);
    return std::nullopt;
}

Found inBattery(Connection& db, const AtomKey& key) {
    const SessionId session{key.one};
    const Battery battery = readBattery(db, session);
    const auto at = static_cast<std::size_t>(key.two - 1);
    const int number = static_cast<int>(key.two);
    if (key.kind == "gap")
        return at < battery.gaps.size()
                   ? Found(contentOf(uuidsIn(db), session, number, battery.gaps[at]))
                   : std::nullopt;
    if (key.kind == "attempt") {
        const auto attempts = attemptsOf(battery);
        return at < attempts.size() ? Found(contentOf(uuidsIn(db), session, attempts[at].test,
                                                      number, attempts[at].attempt))
                                    : std::nullopt;
    }
    const TestAttempts* test = battery.test(TestKindId{key.two});
    return test == nullptr || test->conditions == Conditions{}
               ? std::nullopt
               : Found(contentOf(uuidsIn(db), session, test->kind, test->conditions));
}

Found checkLoadAt(Connection& db, const AtomKey& key) {
    Query row(db, "SELECT 1 FROM check_loads WHERE athlete = ? AND lift = ? AND load_g = ?",
              key.one, key.two, key.three);
    return row.next()
               ? Found(contentOf(uuidsIn(db), AthleteId{key.one}, LiftId{key.two}, Mass{key.three}))
               : std::nullopt;
}

Found rosterAt(Connection& db, const AtomKey& key) {
    Query row(db,
              "SELECT day, ordinal FROM roster_athletes WHERE station = ? AND athlete = ? AND "
              "replace(day, '-', '') = ?",
              key.one, key.three, std::to_string(key.two));
    return row.next() ? Found(contentOf(uuidsIn(db), RosterThing{.station = StationId{key.one},
                                                                 .day = row.date(0),
                                                                 .ordinal = row.small(1),
                                                                 .athlete = AthleteId{key.three}}))
                      : std::nullopt;
}

Found standing(Connection& db, const AtomKey& key) {
    Found found;
    if (rowOf<AthleteId>(db, key, found) || rowOf<DeviceId>(db, key, found) ||
        rowOf<LiftId>(db, key, found) || rowOf<TestKindId>(db, key, found) ||
        rowOf<BlockId>(db, key, found) || rowOf<EquipmentId>(db, key, found) ||
        rowOf<StationId>(db, key, found))
        return found;
    if (key.kind == "session")
        return headAt(db, key.one);
    if (key.kind == "set")
        return setAt(db, key.one);
    if (key.kind == "lift conditions")
        return conditionsAt(db, SessionId{key.one}, LiftId{key.two});
    if (key.kind == "check load")
        return checkLoadAt(db, key);
    if (key.kind == "roster")
        return rosterAt(db, key);
    if (key.kind == "conflict")
        return conflictAt(db, ConflictId{key.one});
    return inBattery(db, key);
}
} // namespace

std::optional<Content> contentAt(Connection& db, const AtomKey& key) {
    try {
        return standing(db, key);
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Damaged)
            throw;
        return std::nullopt;
    }
}

} // namespace slopebook::log
