// SPDX-License-Identifier: GPL-3.0-or-later
// What logs tell one another of what they hold: trails that each edit makes one step longer, and
// what was removed.
#include "core/log/conflicts.h"
#include "core/log/newsessions.h"
#include "tests/log/editdice.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"

#include <algorithm>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using log::Carried;
using log::Log;
using log::Sixteen;

namespace fs = std::filesystem;

class TestTrails : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void stepsByHand();
    void eachEditIsOneStep();
    void whatChangesNothingIsNoStep();
    void anUndoIsAStepToo();
    void whatWasRemovedIsKept();
    void anImportIsOneStep();
    void olderLogsKnowEachOthersTrails();
    void whatWasRemovedBeforeTravelsByItsHash();
    void whatAnotherLogCarriedIsTaken();
    void conflictsTravel();
    void aLogThatMeetsAStoreNotesWhatIsUnsent();
};

void TestTrails::stepsByHand() {
    const Sixteen a = log::hashOf("a"), b = log::hashOf("b");
    const auto joined = [](std::initializer_list<Sixteen> parts) {
        std::string bytes;
        for (const Sixteen& part : parts)
            bytes.append(reinterpret_cast<const char*>(part.data()), part.size());
        return log::hashOf(bytes);
    };
    log::Trail trail;
    log::extend(trail, log::stepHash(a, true));
    QVERIFY(trail.at(0).hash == a && trail[0].revision == joined({a}));
    log::extend(trail, log::stepHash(b, true));
    QVERIFY(trail.at(1).revision == joined({b, trail[0].revision}));
    log::extend(trail, log::stepHash(b, false));
    QVERIFY(trail.at(2).hash != b); // a removal is a step of its own
    log::Trail back = trail;
    log::extend(back, log::stepHash(a, true));
    QVERIFY(back.at(3).hash == a && back[3].revision != trail[0].revision);
    QVERIFY(log::shortTrail(a, true) == log::Trail(trail.begin(), trail.begin() + 1));
    QCOMPARE(log::shortTrail(a, false).size(), 2U);
    QVERIFY(log::holds(back, log::revisionOf(trail)) && !log::holds(trail, log::revisionOf(back)));
    QVERIFY(*log::lastCommon(back, trail) == trail[2] && *log::lastCommon(trail, back) == trail[2]);
    QVERIFY(log::lastCommon(trail, log::shortTrail(b, true)) == nullptr);
    QVERIFY(log::revisionOfBoth(a, b, a) == log::revisionOfBoth(b, a, a));
    QVERIFY(log::revisionOfBoth(a, b, a) != log::revisionOfBoth(a, b, b));
    QVERIFY(log::readTrail(log::bytesOf(back)) == back);
    QVERIFY(refuses([] { log::readTrail(""); }));
    QVERIFY(refuses([&] { log::readTrail(log::bytesOf(back).substr(32)); }));
    QVERIFY(refuses([&] { log::readTrail(log::bytesOf(back).substr(1)); }));
}

/// SLOPEBOOK_DICE=10000 in the long run.
void TestTrails::eachEditIsOneStep() {
    const int edits = std::max(60, qEnvironmentVariableIntValue("SLOPEBOOK_DICE"));
    int steps = 0, removals = 0, returns = 0;
    for (unsigned seed = 1; seed <= 4; ++seed) {
        const Folder folder;
        Log log = diceLog(folder.path(), seed);
        Dice dice(log, seed);
        for (int i = 0; i < edits; ++i)
            dice.go();
        QCOMPARE(dice.wrong, QString());
        VERIFY_SOUND(log);
        steps += dice.steps;
        removals += dice.removals;
        returns += dice.returns;
    }
    QVERIFY2(steps > 150 && removals > 40 && returns > 3,
             qPrintable(QString("%1 %2 %3").arg(steps).arg(removals).arg(returns)));
}

void TestTrails::whatChangesNothingIsNoStep() {
    const Folder folder;
    Log log = diceLog(folder.path(), 5);
    const auto before = rowsOf(folder.path(), "SELECT kind, one, two, three, hex(uuid), hex(hash), "
                                              "hex(trail) FROM atoms");
    const auto removed = rowsOf(folder.path(), "SELECT * FROM removed_atoms").size();
    for (const auto& one : log.athletes())
        log.change(one.id, one.value);
    for (const auto& one : log.lifts())
        log.change(one.id, one.value);
    for (const auto& one : log.stations()) {
        log.change(one.id, one.value);
        log.setRoster(log.roster(one.id, day(2026, 3, 14)));
    }
    for (const auto& one : log.equipment())
        log.change(one.id, one.value);
    for (const auto& athlete : log.athletes())
        for (const auto& head : log.sessions(athlete.id)) {
            const auto record = log.session(head.id);
            log.change(head.id, head.value);
            log.setBattery(head.id, record.battery);
            for (const auto& placed : record.sets)
                log.change(placed.id, placed.set);
            for (const auto& one : record.conditions)
                log.setConditions(head.id, one.lift, one.conditions);
            for (const auto& lift : log.lifts())
                log.setCheckLoads(athlete.id, lift.id, log.checkLoads(athlete.id, lift.id));
        }
    QCOMPARE(rowsOf(folder.path(), "SELECT kind, one, two, three, hex(uuid), hex(hash), "
                                   "hex(trail) FROM atoms"),
             before);
    QCOMPARE(rowsOf(folder.path(), "SELECT * FROM removed_atoms").size(), removed);
}

void TestTrails::anUndoIsAStepToo() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const log::PlacedSet set = log.sets(s.winter, s.pull).at(0);
    const auto trailOfSet = [&] {
        const auto atom = log::atomOf(log::connectionOf(log), {.kind = "set", .one = raw(set.id)});
        return log::carried(log, atom->uuid)->trail;
    };
    const log::Trail first = trailOfSet();
    QCOMPARE(first.size(), 1U);
    log.change(set.id, ladderSet(45, {1.0}));
    log.change(set.id, set.set);
    const log::Trail third = trailOfSet();
    QCOMPARE(third.size(), 3U);
    QVERIFY(third[0] == first[0] && third[2].hash == first[0].hash);
    QVERIFY(third[2].revision != first[0].revision);
    log.remove(set.id);
    log.add(s.winter, s.pull, set.set, set.ordinal, set.id);
    QCOMPARE(trailOfSet().size(), 5U);
    // What is taken back with its transaction was no step.
    struct TakenBack {};
    try {
        log.together([&] {
            log.change(set.id, ladderSet(45, {1.0}));
            throw TakenBack{};
        });
    } catch (const TakenBack&) { // NOLINT(bugprone-empty-catch): that is what it is for
    }
    QCOMPARE(trailOfSet().size(), 5U);
    VERIFY_SOUND(log);
}

void TestTrails::whatWasRemovedIsKept() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const TestKindId hop = addOtherThings(log, s);
    addTestDay(log, s, hop);
    const Held before = heldBy(log);
    log.remove(s.repeat);
    log.setBattery(s.autumn, {});
    log.setCheckLoads(s.lane3, s.pull, {});
    for (const auto& station : log.stations())
        log.remove(station.id);
    log.remove(s.autumn);
    log.remove(s.lane3);
    log.remove(log.equipment().at(0).id);
    log.remove(s.flood);
    log.remove(hop);
    std::set<std::string> kinds;
    for (const auto& [uuid, one] : heldBy(log)) {
        const Carried& was = before.at(uuid);
        QVERIFY(one.content == was.content);
        if (one.alive)
            continue;
        kinds.insert(one.kind);
        QVERIFY(one.parent == was.parent);
        log::referencesOf(one.content); // may be read
    }
    // Lifts and devices are in use still.
    QCOMPARE(kinds, (std::set<std::string>{"athlete", "attempt", "block", "check load", "equipment",
                                           "gap", "lift conditions", "roster", "session", "set",
                                           "station", "test", "test conditions"}));
    VERIFY_SOUND(log);
}

void TestTrails::anImportIsOneStep() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const Held before = heldBy(log);
    log::addSessions(log, {{.head = {.athlete = s.lane3, .date = day(2026, 6, 1)},
                            .conditions = {{s.pull, {.place = "hall"}}},
                            .sets = {{s.pull, 1, ladderSet(40, {1.0})}}}});
    int came = 0;
    for (const auto& [uuid, one] : heldBy(log))
        if (!before.contains(uuid)) {
            QCOMPARE(one.trail.size(), 1U);
            ++came;
        }
    QCOMPARE(came, 3);
    VERIFY_SOUND(log);
}

void TestTrails::olderLogsKnowEachOthersTrails() {
    for (const int version : {4, 5, 6}) {
        const Folder folder;
        const fs::path file = folder.path("older.slopebook"), copy = folder.path("copy.slopebook");
        {
            Log log = Log::create(folder.path("new.slopebook"));
            const Season s = fillSeason(log);
            addOtherThings(log, s);
            log.change(s.winter, log.session(s.winter).head.value);
        }
        writeAsOlder(folder.path("new.slopebook"), file, version);
        fs::copy_file(file, copy);
        Log here = Log::open(file), there = Log::open(copy);
        VERIFY_SOUND(here);
        const Held both = heldBy(here);
        QVERIFY(both.size() > 30);
        // One goes on with it, and the other's revision is in its trail.
        const SetId set = here.sets(SessionId{3}, LiftId{1}).at(0).id;
        there.change(set, ladderSet(42.5, {1.2}));
        there.remove(there.sets(SessionId{3}, LiftId{1}).at(1).id);
        int ahead = 0;
        for (const auto& [uuid, one] : heldBy(there)) {
            const Carried& mine = both.at(uuid);
            QVERIFY(log::holds(one.trail, log::revisionOf(mine.trail)));
            ahead += one.trail == mine.trail ? 0 : 1;
        }
        QCOMPARE(ahead, 2);
        VERIFY_SOUND(there);
    }
}

// A log of layout 6 that removed a set, and a copy from before that was brought up to date: the
// removal is known to come after.
void TestTrails::whatWasRemovedBeforeTravelsByItsHash() {
    const Folder folder;
    const fs::path file = folder.path("older.slopebook"), copy = folder.path("copy.slopebook");
    {
        Log log = Log::create(folder.path("new.slopebook"));
        fillSeason(log);
    }
    writeAsOlder(folder.path("new.slopebook"), file, 6);
    fs::copy_file(file, copy);
    // As layout 6 removed: the row goes over with its UUID and its hash.
    SetId gone{};
    {
        Log log = Log::open(folder.path("new.slopebook"));
        gone = log.sets(SessionId{3}, LiftId{1}).at(1).id;
        log.remove(gone);
    }
    fs::remove(file);
    writeAsOlder(folder.path("new.slopebook"), file, 6);
    const Log here = Log::open(file), there = Log::open(copy);
    // Weighed with what layout 6 did not keep: only the removed one's tally tells of it.
    const Held mine = heldBy(here), theirs = heldBy(there);
    int removed = 0;
    for (const auto& [uuid, one] : mine)
        if (!one.alive) {
            ++removed;
            QVERIFY(one.content.empty());
            QCOMPARE(one.trail.size(), 2U);
            QVERIFY(theirs.at(uuid).alive && theirs.at(uuid).hash == one.hash);
            QVERIFY(log::holds(one.trail, log::revisionOf(theirs.at(uuid).trail)));
        }
    QCOMPARE(removed, 1);
}

void TestTrails::whatAnotherLogCarriedIsTaken() {
    const Folder folder;
    Log from = Log::create(folder.path("from.slopebook"));
    Log to = Log::create(folder.path("to.slopebook"));
    const AthleteId ada = from.add(Athlete{.name = "Ada"});
    from.change(ada, {.name = "Ada", .note = "tall"});
    const AthleteId bo = from.add(Athlete{.name = "Bo"});
    from.remove(bo);
    const Held carried = heldBy(from);
    log::Connection& db = log::connectionOf(to);
    to.together([&] {
        std::int64_t free = 100;
        for (const auto& [uuid, one] : carried) {
            if (!one.alive) {
                Carried placed = one;
                placed.place.one = ++free;
                log::adoptRemoved(db, placed);
                continue;
            }
            const auto thing = log::readContent(one.content, keysOf({}));
            const AthleteId id = to.add(std::get<Athlete>(thing));
            QVERIFY(refuses([&, name = uuid] {
                log::adopt(db, {.kind = "athlete", .one = raw(id)}, name,
                           log::shortTrail(log::hashOf("other"), true));
            }));
            log::adopt(db, {.kind = "athlete", .one = raw(id)}, one.uuid, one.trail);
        }
    });
    const Held taken = heldBy(to);
    QCOMPARE(taken.size(), carried.size());
    for (const auto& [uuid, one] : carried) {
        QVERIFY(taken.at(uuid).trail == one.trail);
        QVERIFY(taken.at(uuid).content == one.content);
        QCOMPARE(taken.at(uuid).alive, one.alive);
    }
    VERIFY_SOUND(to);
    // It lives again here, under the same name and with what it was.
    const auto removed =
        std::ranges::find_if(carried, [](const auto& one) { return !one.second.alive; });
    const Carried back = *log::carried(to, removed->first);
    to.add(Athlete{.name = "Bo"}, AthleteId{back.place.one});
    QVERIFY(log::carried(to, removed->first)->alive);
    QCOMPARE(log::carried(to, removed->first)->trail.size(), 3U);
    VERIFY_SOUND(to);
}

void TestTrails::conflictsTravel() {
    const Folder folder;
    Log log = Log::create(folder.path());
    fillSeason(log);
    joinAStore(log);
    const auto open = log::conflictsIn(log);
    QCOMPARE(open.size(), 1U);
    const Sixteen uuid = log::conflictUuid(open[0].value.about, open[0].value.revision);
    QVERIFY(log::carried(log, uuid)->alive);
    QVERIFY(!log::noteConflict(log, open[0].value)); // once is enough
    log::settleConflict(log, open[0].id);
    QVERIFY(!log::carried(log, uuid)->alive);
    QVERIFY(!log::noteConflict(log, open[0].value));            // and once settled it is
    QVERIFY(log::noteConflict(log, open[0].value, open[0].id)); // undo
    QVERIFY(log::carried(log, uuid)->alive);
    QCOMPARE(log::carried(log, uuid)->trail.size(), 3U);
    QCOMPARE(log::conflictsIn(log), open);
    QCOMPARE(errorOf([&] { log::settleConflict(log, log::ConflictId{99}); }),
             LogError::Kind::Conflict);
    VERIFY_SOUND(log);
}

void TestTrails::aLogThatMeetsAStoreNotesWhatIsUnsent() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    log::Connection& db = log::connectionOf(log);
    QCOMPARE(log::countUnsent(db), 0);
    joinAStore(log);
    const auto before = log::countUnsent(db);
    log.add(s.winter, s.pull, ladderSet(50, {1.0}));
    log::addSessions(log, {{.head = {.athlete = s.lane3, .date = day(2026, 6, 1)},
                            .conditions = {},
                            .sets = {{s.pull, 1, ladderSet(40, {1.0})}}}});
    QCOMPARE(log::countUnsent(db), before + 3);
    log.remove(s.winter);
    const auto after = log::countUnsent(db);
    QVERIFY(after > before + 3);
    VERIFY_SOUND(log);
    log.together([&] {
        std::vector<Sixteen> sent;
        log::visitUnsent(db, [&](const log::Unsent& one) { sent.push_back(one.uuid); });
        log::eraseUnsent(db, sent);
    });
    QCOMPARE(log::countUnsent(db), 0);
    VERIFY_SOUND(log);
    log.together([&] { log::leaveStore(db); });
    log.add(s.autumn, s.pull, ladderSet(50, {1.0}));
    QCOMPARE(log::countUnsent(db), 0);
    VERIFY_SOUND(log);
}

QTEST_GUILESS_MAIN(TestTrails)
#include "tst_trails.moc"
