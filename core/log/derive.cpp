// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/derive.h"

#include "core/log/batteryatoms.h"
#include "core/log/conflicts.h"
#include "core/log/impl.h"
#include "core/log/named.h"
#include "core/log/sessionrows.h"

#include <bit>
#include <list>
#include <unordered_map>

namespace slopebook::log {

namespace {
using Visit = std::function<void(const AtomKey&, const Content&, const std::function<Sixteen()>&)>;

/// Parts of a name, none of which runs into the next.
class DerivedName {
public:
    explicit DerivedName(const std::string& kind) : m_name(kind) {}
    DerivedName& add(std::int64_t number) { return add(std::to_string(number)); }
    DerivedName& add(const std::string& text) {
        m_name += '\0';
        m_name += text;
        return *this;
    }
    DerivedName& add(const Sixteen& uuid) {
        return add(std::string(reinterpret_cast<const char*>(uuid.data()), uuid.size()));
    }
    Sixteen within(const Sixteen& of) const { return derivedUuid(of, m_name); }

private:
    std::string m_name;
};

/// What each kind's keys are called so far.
class KnownUuids {
public:
    std::unordered_map<std::int64_t, Sixteen>& of(std::string_view kind) {
        for (auto& [name, uuids] : m_kinds)
            if (name == kind)
                return uuids;
        return m_kinds.emplace_back(std::string(kind), std::unordered_map<std::int64_t, Sixteen>{})
            .second;
    }

private:
    std::list<std::pair<std::string, std::unordered_map<std::int64_t, Sixteen>>> m_kinds;
};

template <class Id>
void visitNamed(Connection& db, const UuidOf& uuids, const Visit& visit) {
    for (Query rows(db, sqlOf<Id>().inOrder.c_str()); rows.next();) {
        Stored<Id, typename Table<Id>::Value> one;
        named::readRow(db, rows, one);
        visit({.kind = Table<Id>::one, .one = raw(one.id)}, contentOf(uuids, one.value), [&] {
            DerivedName name(Table<Id>::one);
            name.add(raw(one.id)).add(one.value.name);
            if constexpr (std::is_same_v<Id, BlockId>)
                name.add(isoDate(one.value.first));
            return name.within(ofSlopebook);
        });
    }
}

} // namespace

void visitSession(Connection& db, const UuidOf& uuids, SessionId id, const Visit& visit) {
    const Sixteen session = uuids("session", raw(id));
    for (const auto& [lift, held] : readConditions(db, id))
        visit({.kind = "lift conditions", .one = raw(id), .two = raw(lift)},
              contentOf(uuids, id, lift, held), [&, of = lift] {
                  return DerivedName("lift conditions").add(uuids("lift", raw(of))).within(session);
              });
    for (const StoredSet& stored : readSets(db, id)) {
        const PlacedSet& placed = stored.placed;
        visit({.kind = "set", .one = raw(placed.id)}, contentOf(uuids, placed), [&] {
            return DerivedName("set")
                .add(raw(placed.id))
                .add(uuids("lift", raw(placed.lift)))
                .add(placed.ordinal)
                .within(session);
        });
    }
    const Battery battery = readBattery(db, id);
    for (const TestAttempts& test : battery.tests)
        if (test.conditions != Conditions{})
            visit({.kind = "test conditions", .one = raw(id), .two = raw(test.kind)},
                  contentOf(uuids, id, test.kind, test.conditions), [&] {
                      return DerivedName("test conditions")
                          .add(uuids("test", raw(test.kind)))
                          .within(session);
                  });
    int number = 0;
    for (const PlacedAttempt& one : attemptsOf(battery)) {
        ++number;
        visit({.kind = "attempt", .one = raw(id), .two = number},
              contentOf(uuids, id, one.test, number, one.attempt), [&] {
                  return DerivedName("attempt")
                      .add(number)
                      .add(uuids("test", raw(one.test)))
                      .within(session);
              });
    }
    number = 0;
    for (const Gap& gap : battery.gaps) {
        ++number;
        visit({.kind = "gap", .one = raw(id), .two = number}, contentOf(uuids, id, number, gap),
              [&] { return DerivedName("gap").add(number).within(session); });
    }
}

namespace {
void visitCheckLoads(Connection& db, const UuidOf& uuids, const Visit& visit) {
    for (Query rows(db, "SELECT athlete, lift, load_g FROM check_loads "
                        "ORDER BY athlete, lift, load_g");
         rows.next();) {
        const auto athlete = rows.id<AthleteId>(0);
        const auto lift = rows.id<LiftId>(1);
        const Mass load = rows.mass(2);
        visit({.kind = "check load", .one = raw(athlete), .two = raw(lift), .three = load.grams},
              contentOf(uuids, athlete, lift, load), [&] {
                  return DerivedName("check load")
                      .add(uuids("lift", raw(lift)))
                      .add(load.grams)
                      .within(uuids("athlete", raw(athlete)));
              });
    }
}

void visitRosters(Connection& db, const UuidOf& uuids, const Visit& visit) {
    Roster roster;
    for (Query rows(db, "SELECT station, day, athlete FROM roster_athletes "
                        "ORDER BY station, day, ordinal");
         rows.next();) {
        const auto station = rows.id<StationId>(0);
        const Date day = rows.date(1);
        if (station != roster.station || day != roster.day)
            roster = {.station = station, .day = day, .athletes = {}};
        roster.athletes.push_back(rows.id<AthleteId>(2));
        visit({.kind = "roster",
               .one = raw(station),
               .two = dayNumber(day),
               .three = raw(roster.athletes.back())},
              contentOf(uuids, roster, static_cast<int>(roster.athletes.size())), [&] {
                  return DerivedName("roster")
                      .add(isoDate(day))
                      .add(uuids("athlete", raw(roster.athletes.back())))
                      .within(uuids("station", raw(station)));
              });
    }
}
} // namespace

void visitThings(Connection& db, const UuidOf& uuids, const Visit& visit) {
    visitNamed<AthleteId>(db, uuids, visit);
    visitNamed<DeviceId>(db, uuids, visit);
    visitNamed<LiftId>(db, uuids, visit);
    visitNamed<TestKindId>(db, uuids, visit);
    visitNamed<BlockId>(db, uuids, visit);
    visitNamed<EquipmentId>(db, uuids, visit);
    visitNamed<StationId>(db, uuids, visit);
    std::vector<SessionId> sessions;
    static constexpr auto all = joined(headColumns, "ORDER BY id");
    for (Query rows(db, all.data()); rows.next();) {
        const Stored<SessionId, SessionHead> head = readHead(rows);
        sessions.push_back(head.id);
        visit({.kind = "session", .one = raw(head.id)}, contentOf(uuids, head.value), [&] {
            return DerivedName("session")
                .add(raw(head.id))
                .add(isoDate(head.value.date))
                .add(head.value.ordinal)
                .within(uuids("athlete", raw(head.value.athlete)));
        });
    }
    for (const SessionId session : sessions)
        visitSession(db, uuids, session, visit);
    visitCheckLoads(db, uuids, visit);
    visitRosters(db, uuids, visit);
    visitConflicts(db, [&](ConflictId id, const ConflictThing& conflict) {
        visit({.kind = "conflict", .one = raw(id)}, contentOf(uuids, Thing(conflict)),
              [&] { return conflictUuid(conflict.about, conflict.revision); });
    });
}

void deriveAtoms(Connection& db) {
    KnownUuids known;
    // Of a repeat test before what it repeats, the other's name is asked for early: it is derived
    // likewise, and its athlete's is known.
    const UuidOf uuids = [&](const char* kind, std::int64_t key) {
        Sixteen& uuid = known.of(kind)[key];
        if (uuid != Sixteen{})
            return uuid;
        if (const auto atom = atomOf(db, {.kind = kind, .one = key}))
            return uuid = atom->uuid;
        Query row(db, "SELECT day, ordinal, athlete FROM sessions WHERE id = ?", key);
        if (std::string_view(kind) == "session" && row.next())
            uuid = DerivedName("session")
                       .add(key)
                       .add(row.text(0))
                       .add(row.integer(1))
                       .within(known.of("athlete")[row.integer(2)]);
        return uuid;
    };
    const bool someThere = Query(db, "SELECT 1 FROM atoms LIMIT 1").next();
    Tally came;
    visitThings(db, uuids, [&](const AtomKey& key, const Content& said, const auto& derived) {
        if (someThere && atomOf(db, key))
            return;
        const Atom atom{.key = key, .uuid = derived(), .hash = said.hash()};
        if (key.two == 0 && key.kind != "set")
            known.of(key.kind)[key.one] = atom.uuid;
        insertAtom(db, atom);
        came.add(weightOf(atom));
    });
    Query(db,
          "UPDATE tallies SET things = things + ?, sum = plus(sum, ?) WHERE owner = 0 AND "
          "kind = 'atom'",
          came.things, std::bit_cast<std::int64_t>(came.sum))
        .run();
}

} // namespace slopebook::log
