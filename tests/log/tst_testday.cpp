// SPDX-License-Identifier: GPL-3.0-or-later
// What a test day holds: how it is kept, what a line is made of, how an older log is led here, and
// by which names other logs know it.
#include "core/log/atoms.h"
#include "core/log/backups.h"
#include "core/log/connection.h"
#include "core/log/query.h"
#include "core/log/splitdays.h"
#include "tests/log/builders.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"

#include <algorithm>
#include <map>

using namespace slopebook;
using namespace slopebook::test;
using log::Access;
using log::Log;

namespace {
namespace fs = std::filesystem;

/// A test in metres.
TestKind testCalled(const char* name) {
    TestKind kind;
    kind.name = name;
    kind.unit = "m";
    return kind;
}

/// Every name among other logs: "set 3" -> its UUID and hash.
std::map<std::string, std::string> namesOf(const fs::path& file) {
    std::map<std::string, std::string> all;
    for (const std::string& row :
         rowsOf(file, "SELECT kind || ' ' || one || ' ' || two || ' ' || three || '=' || "
                      "hex(uuid) || hex(hash) FROM atoms"))
        all.emplace(row.substr(0, row.find('=')), row.substr(row.find('=') + 1));
    return all;
}

/// A log as layout 4 wrote it, in which each session says device and place, and its battery where.
fs::path fourth(const Folder& folder) {
    const fs::path file = folder.path("fourth.slopebook");
    {
        Log log = Log::create(folder.path("new.slopebook"));
        const Season s = fillSeason(log);
        addOtherThings(log, s);
        // Nothing but a head; nothing but a battery; sets and where the battery was, without tests.
        log.add(SessionHead{.athlete = s.lane3, .date = day(2026, 4, 1), .note = "dry"});
        const SessionId tests = log.add(SessionHead{.athlete = s.lane3, .date = day(2026, 4, 2)});
        log.setBattery(tests, log.battery(s.autumn));
        const SessionId sets = log.add(SessionHead{.athlete = s.lane3, .date = day(2026, 4, 3)});
        log.add(sets, s.pull, ladderSet(40, {1.1}));
    }
    writeAsOlder(folder.path("new.slopebook"), file, 4);
    runSql(file, "UPDATE sessions SET device = 1, place = 'shed' WHERE day >= '2026-04-01'; "
                 "DELETE FROM gaps WHERE session = 5; "
                 "UPDATE contexts SET device = 'BOATHOUSE  encoder' WHERE session = 1; "
                 "UPDATE contexts SET device = 'Mat ', footwear = 'spikes' WHERE session = 5; "
                 "INSERT INTO contexts VALUES (6, 'grass', '', '', 'arms free')");
    sealAsOlder(file, 4);
    return file;
}
} // namespace

class TestTestDay : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLoadNotLiftedBoundsTheDay();
    void theLoadOfALiftThatMovesTheBody();
    void whatMayNotStandIsRefused_data();
    void whatMayNotStandIsRefused();
    void stationsAndRostersAreKept();
    void conditionsStandAlone();
    void anOlderLogComesInUnchangedInMeaning();
    void whatWasDamagedStaysSo();
    void twoCopiesMeetAsOne();
    void whatComesBackHasItsName();
    void contentsLeaveOutWhatIsDefault();
    void anOlderProgramRefusesInWords();
    void aDaySplitByDevicesIsJoined();
};

void TestTestDay::aLoadNotLiftedBoundsTheDay() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const auto failed = [&](double kg, bool maximum) {
        log.add(s.winter, s.pull,
                Set{.load = massFromKilograms(kg),
                    .trueMaximum = maximum,
                    .outcome = Outcome::NotLifted,
                    .reason = "stuck",
                    .effort = effort(10)});
    };
    const LiftSession before = log.liftSessions({.athlete = s.stroke, .lift = s.pull}).at(0);
    QCOMPARE(before.heaviestLifted, Mass{82'500});
    QVERIFY(!before.lightestNotLifted);
    failed(95, true);
    failed(90, false);
    Set lifted = ladderSet(85, {0.4});
    lifted.excluded = "the encoder slipped";
    log.add(s.winter, s.pull, lifted);
    const LiftSession day = log.liftSessions({.athlete = s.stroke, .lift = s.pull}).at(0);
    QCOMPARE(day.points, before.points);
    QCOMPARE(day.maxima, before.maxima);
    QCOMPARE(day.measuredOneRm, Mass{82'500});  // what was tried is none
    QCOMPARE(day.heaviestLifted, Mass{85'000}); // also where its velocity does not count
    QCOMPARE(day.lightestNotLifted, Mass{90'000});
    QCOMPARE(log.sets(s.winter, s.pull).at(4).set.effort->value(), 10.0);
    VERIFY_SOUND(log);
}

void TestTestDay::theLoadOfALiftThatMovesTheBody() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const LiftId pullUp = log.add(Lift{.name = "Pull-up", .movesBody = true});
    for (const SessionId session : {s.autumn, s.repeat}) { // 81.5 kg, and not noted
        log.add(session, pullUp, ladderSet(0, {1.0}));
        Set heaviest = ladderSet(40, {0.3});
        heaviest.trueMaximum = true;
        log.add(session, pullUp, heaviest);
        log.add(session, pullUp, Set{.load = Mass{45'000}, .outcome = Outcome::NotLifted});
    }
    const auto days = log.liftSessions({.lift = pullUp});
    QCOMPARE(days.size(), 2U);
    QCOMPARE(days[0].points, (std::vector<Point>{{81.5, 1.0, 1}, {121.5, 0.3, 2}}));
    QCOMPARE(days[0].measuredOneRm, Mass{121'500});
    QCOMPARE(days[0].heaviestLifted, Mass{121'500});
    QCOMPARE(days[0].lightestNotLifted, Mass{126'500});
    QVERIFY(!days[0].lacksBodyMass && days[1].lacksBodyMass);
    QVERIFY(days[1].points.empty() && !days[1].measuredOneRm && !days[1].lightestNotLifted);
    QCOMPARE(log.sets(s.autumn, pullUp).at(1).set.load, Mass{40'000}); // as it was typed
}

void TestTestDay::whatMayNotStandIsRefused_data() {
    using Work = std::function<void(Log&, const Season&)>;
    QTest::addColumn<Work>("work");
    const auto row = [](const char* name, Work work) { QTest::newRow(name) << work; };
    const auto set = [](const Set& made) {
        return [made](Log& log, const Season& s) { log.add(s.winter, s.pull, made); };
    };
    Set speeds = ladderSet(100, {0.3});
    speeds.outcome = Outcome::NotLifted;
    row("a speed of what was not lifted", set(speeds));
    Set reason = ladderSet(100, {0.3});
    reason.reason = "stuck";
    row("a reason of what was lifted", set(reason));
    row("an RPE above 10", set({.load = Mass{1000}, .effort = Effort{21}}));
    const auto station = [](const Station& made) {
        return [made](Log& log, const Season&) { log.add(made); };
    };
    row("a station without anything to do", station({.name = "Rack"}));
    row("a station without a name", station({.lift = LiftId{1}}));
    row("a lift and a test",
        station({.name = "Rack", .lift = LiftId{1}, .tests = {TestKindId{1}}}));
    row("a ladder that falls",
        station({.name = "Rack", .lift = LiftId{1}, .ladder = {Mass{2000}, Mass{1000}}}));
    row("an athlete twice on a roster", [](Log& log, const Season& s) {
        const StationId rack = log.add(Station{.name = "Rack", .lift = s.pull});
        log.setRoster({.station = rack, .day = day(2026, 1, 1), .athletes = {s.lane3, s.lane3}});
    });
    row("both at once of a test without sides", [](Log& log, const Season&) {
        TestKind kind = testCalled("Jump");
        kind.bothToo = true;
        log.add(kind);
    });
    row("the best two of which the best counts", [](Log& log, const Season&) {
        TestKind kind = testCalled("Jump");
        kind.bestOf = 2;
        log.add(kind);
    });
    row("a load of a test", [](Log& log, const Season& s) {
        const TestKindId jump = log.add(testCalled("Jump"));
        log.setBattery(s.winter,
                       {.tests = {}, .gaps = {{.kind = jump, .load = Mass{1}, .reason = "x"}}});
    });
}

void TestTestDay::whatMayNotStandIsRefused() {
    QFETCH(std::function<void(Log&, const Season&)>, work);
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    QVERIFY(refuses([&] { log.together([&] { work(log, s); }); }));
    VERIFY_SOUND(log);
}

void TestTestDay::stationsAndRostersAreKept() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const TestKindId hop = addOtherThings(log, s);
    Station rack{.name = "Rack 1",
                 .lift = s.pull,
                 .conditions = {.device = s.encoder, .place = "hall"},
                 .ladder = {Mass{40'000}, Mass{60'000}},
                 .sets = 4};
    const StationId id = log.add(rack);
    log.add(Station{.name = "Mat", .tests = {hop}});
    rack.rotates = false;
    rack.ladder.push_back(Mass{80'000});
    log.change(id, rack);
    QCOMPARE(log.stations().size(), 2U);
    QCOMPARE(log.stations().back().value, rack);
    const Roster roster{.station = id, .day = day(2026, 3, 14), .athletes = {s.stroke, s.lane3}};
    log.setRoster(roster);
    QCOMPARE(log.roster(id, roster.day), roster);
    QVERIFY(log.roster(id, day(2026, 3, 15)).athletes.empty());
    VERIFY_SOUND(log);
    // What a station speaks of stays for as long as it does.
    QCOMPARE(errorOf([&] { log.remove(hop); }), LogError::Kind::Conflict);
    QCOMPARE(errorOf([&] { log.remove(s.encoder); }), LogError::Kind::Conflict);
    log.remove(id);
    QVERIFY(log.rosters().empty());
    log.add(rack, id);
    VERIFY_SOUND(log);
}

void TestTestDay::conditionsStandAlone() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const TestKindId hop = addOtherThings(log, s);
    const auto record = log.session(s.autumn);
    const Conditions mat{.surface = "mat", .notComparable = "another floor"};
    log.setConditions(s.autumn, hop, mat);
    QCOMPARE(log.conditions(s.autumn, hop), mat);
    QCOMPARE(log.session(s.autumn).conditions, record.conditions); // the lifts' are as they were
    log.setConditions(s.winter, hop, mat);                         // before any attempt
    QCOMPARE(log.battery(s.winter).tests.at(0).conditions, mat);
    log.setConditions(s.winter, hop, {});
    QVERIFY(log.battery(s.winter).empty());
    log.setConditions(s.autumn, s.pull, mat);
    const auto days = log.liftSessions({.athlete = s.lane3});
    QCOMPARE(days[0].lift == s.pull ? days[0].conditions : days[1].conditions, mat);
    QCOMPARE((days[0].lift == s.pull ? days[1] : days[0]).conditions.device, s.encoder);
    VERIFY_SOUND(log);
}

void TestTestDay::anOlderLogComesInUnchangedInMeaning() {
    const Folder folder;
    const fs::path file = fourth(folder);
    const Log log = Log::open(file);
    VERIFY_SOUND(log);
    QVERIFY(fs::exists(log::backupFolder(file) / "layout-4.slopebook"));
    const auto lane3 = log.sessions(AthleteId{1});
    QCOMPARE(lane3.size(), 5U);
    const Conditions boathouse{.device = DeviceId{1}, .place = "boathouse"};
    const auto autumn = log.session(lane3[0].id);
    QCOMPARE(autumn.conditions.size(), 2U);
    QCOMPARE(autumn.conditions[0].conditions, boathouse);
    QCOMPARE(autumn.conditions[1].conditions, boathouse);
    // The context's device by the name that the log has for it.
    QCOMPARE(autumn.battery.tests.at(0).conditions,
             (Conditions{.device = DeviceId{1}, .place = "boathouse", .surface = "boards"}));
    QCOMPARE(autumn.head.value.note, "fresh");
    QVERIFY(log.session(lane3[1].id).conditions.empty());
    // Neither lift nor test: in words.
    QCOMPARE(log.session(lane3[2].id).head.value.note, "dry; Boathouse encoder, shed");
    // A device that was a name only has become one, and the session's own is not lost.
    const auto tests = log.session(lane3[3].id);
    QCOMPARE(log.devices().size(), 2U);
    QCOMPARE(log.devices().back().value.name, "Mat");
    QCOMPARE(tests.battery.tests.at(0).conditions, (Conditions{.device = log.devices().back().id,
                                                               .place = "shed",
                                                               .surface = "boards",
                                                               .footwear = "spikes"}));
    QCOMPARE(tests.head.value.note, "Boathouse encoder");
    // Sets take device and place; where jumps would have been is no word about them.
    const auto sets = log.session(lane3[4].id);
    QCOMPARE(sets.conditions.at(0).conditions,
             (Conditions{.device = DeviceId{1}, .place = "shed"}));
    QCOMPARE(sets.head.value.note, "grass, arms free");
    QCOMPARE(log.liftSessions({}).size(), 7U);
}

void TestTestDay::whatWasDamagedStaysSo() {
    const Folder folder;
    const fs::path file = fourth(folder);
    runSql(file, "UPDATE reps SET velocity = 0.87 WHERE set_id = 2 AND ordinal = 2; " // session 1
                 "UPDATE attempts SET value = 1.5 WHERE session = 5 AND ordinal = 1; "
                 "DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = 6); "
                 "DELETE FROM contexts WHERE session = 6; "
                 "DELETE FROM sets WHERE session = 6; DELETE FROM sessions WHERE id = 6");
    const Log log = Log::open(file);
    const QString found = texts(log.check()).join(QLatin1Char('\n'));
    QVERIFY2(found.contains("The session of Lane 3 on 2025-11-03 is not as it was written") ||
                 found.contains("the session of Lane 3 on 2025-11-03 is not as it was written"),
             qPrintable(found));
    QVERIFY2(found.contains("The battery of the session of Lane 3 on 2026-04-02"),
             qPrintable(found));
    QVERIFY2(found.contains("Sessions of Lane 3: 5 were written, 4 are there."), qPrintable(found));
    QCOMPARE(errorOf([&] { log.session(SessionId{1}); }), LogError::Kind::Damaged);
    QCOMPARE(errorOf([&] { log.battery(SessionId{5}); }), LogError::Kind::Damaged);
    log.session(SessionId{2});
}

void TestTestDay::twoCopiesMeetAsOne() {
    const Folder folder;
    const fs::path file = fourth(folder);
    const fs::path copy = folder.path("copy.slopebook");
    fs::copy_file(file, copy);
    runSql(copy, "UPDATE athletes SET note = note"); // as a copy that was opened
    Log::open(file);
    {
        Log other = Log::open(copy);
        other.change(SetId{1}, ladderSet(42.5, {1.2}));
        other.add(SessionId{1}, LiftId{1}, ladderSet(50, {1.0}));
        VERIFY_SOUND(other);
    }
    const auto here = namesOf(file), there = namesOf(copy);
    QVERIFY(here.size() > 40);
    int changed = 0;
    for (const auto& [place, name] : here) {
        QVERIFY2(there.contains(place), place.c_str());
        QCOMPARE(there.at(place).substr(0, 32), name.substr(0, 32)); // the UUID
        QCOMPARE(name.substr(12, 1), "5");                           // derived (RFC 9562, 4.2)
        changed += there.at(place) == name ? 0 : 1;
    }
    QCOMPARE(changed, 1); // the content of that set
    QCOMPARE(there.size(), here.size() + 1);
}

void TestTestDay::whatComesBackHasItsName() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const TestKindId hop = addOtherThings(log, s);
    addTestDay(log, s, hop);
    const auto before = namesOf(folder.path());
    for (const auto& [place, name] : before)
        QCOMPARE(name.substr(12, 1), "4"); // random
    const auto record = log.session(s.autumn);
    const auto stations = log.stations();
    const auto rosters = log.rosters();
    const auto loads = log.checkLoads(s.lane3, s.pull);
    // One after another is removed and put back, as undo does it.
    const log::PlacedSet set = log.sets(s.winter, s.pull).at(1);
    log.remove(set.id);
    log.add(s.winter, s.pull, set.set, set.ordinal, set.id);
    Battery fewer = record.battery;
    fewer.tests[0].attempts.erase(fewer.tests[0].attempts.begin());
    fewer.gaps.pop_back();
    log.setBattery(s.autumn, fewer);
    const auto meanwhile = namesOf(folder.path());
    // What stayed keeps its name where it stands now.
    QCOMPARE(meanwhile.at("attempt 1 1 0").substr(0, 32), before.at("attempt 1 2 0").substr(0, 32));
    log.setBattery(s.autumn, record.battery);
    log.setCheckLoads(s.lane3, s.pull, {});
    log.setCheckLoads(s.lane3, s.pull, loads);
    log.setConditions(s.autumn, s.pull, {});
    log.setConditions(s.autumn, s.pull, record.conditions[0].conditions);
    log.remove(stations[1].id);
    log.add(stations[1].value, stations[1].id);
    for (const Roster& roster : rosters)
        log.setRoster(roster);
    const auto repeat = log.session(s.repeat);
    log.remove(s.repeat);
    log.together([&] {
        log.add(repeat.head.value, s.repeat);
        for (const auto& one : repeat.conditions)
            log.setConditions(s.repeat, one.lift, one.conditions);
        for (const auto& placed : repeat.sets)
            log.add(s.repeat, placed.lift, placed.set, placed.ordinal, placed.id);
    });
    QCOMPARE(namesOf(folder.path()), before);
    VERIFY_SOUND(log);
}

// A column that comes later and holds what it holds by default changes no hash: by hand, without
// it.
void TestTestDay::contentsLeaveOutWhatIsDefault() {
    const log::UuidOf none = [](const char*, std::int64_t) { return log::Sixteen{}; };
    const Lift row{.name = "Row", .rule = PointRule::Mean};
    log::Content before(none, "lift");
    before("name", row.name);
    before("rule", row.rule);
    QVERIFY(log::contentHash(none, row) == before.hash());
    Lift moves = row;
    moves.movesBody = true;
    QVERIFY(log::contentHash(none, moves) != before.hash());
    // The SHA-256 of nothing and of "abc" (FIPS 180-4's examples), cut to 16 bytes.
    const auto hex = [](const log::Sixteen& bytes) {
        return QByteArray(reinterpret_cast<const char*>(bytes.data()), 16).toHex();
    };
    QCOMPARE(hex(log::hashOf("")), QByteArray("e3b0c44298fc1c149afbf4c8996fb924"));
    QCOMPARE(hex(log::hashOf("abc")), QByteArray("ba7816bf8f01cfea414140de5dae2223"));
    // RFC 9562, appendix A.4: "www.example.com" within the namespace of host names.
    const log::Sixteen dns{0x6b, 0xa7, 0xb8, 0x10, 0x9d, 0xad, 0x11, 0xd1,
                           0x80, 0xb4, 0x00, 0xc0, 0x4f, 0xd4, 0x30, 0xc8};
    QCOMPARE(hex(log::derivedUuid(dns, "www.example.com")),
             QByteArray("2ed6657de927568b95e12665a8aea6a2"));
}

void TestTestDay::anOlderProgramRefusesInWords() {
    const Folder folder;
    Log::create(folder.path());
    log::Layout older = log::Layout::ours();
    older.steps.resize(4);
    try {
        Log::open(folder.path(), Access::ReadWrite, older);
        QFAIL("opened");
    } catch (const LogError& error) {
        QCOMPARE(error.kind(), LogError::Kind::Newer);
        QVERIFY2(QString::fromStdString(english(error.words())).contains("newer"),
                 qPrintable(QString::fromStdString(english(error.words()))));
    }
}

void TestTestDay::aDaySplitByDevicesIsJoined() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const DeviceId camera = log.add(Device{.name = "Camera"});
    const LiftId squat = log.add(Lift{.name = "Jump squat", .ballistic = true});
    const auto made = [&](int ordinal, LiftId lift, DeviceId device, const char* note) {
        const SessionId id = addMeasured(
            log, {.athlete = s.lane3, .date = day(2026, 5, 4), .ordinal = ordinal, .note = note},
            {.device = device}, {lift});
        log.add(id, lift, ladderSet(40, {1.1}));
        return id;
    };
    const SessionId first = made(1, s.pull, s.encoder, "fresh");
    const SessionId second = made(2, squat, camera, "second device");
    const TestKindId hop = log.add(testCalled("Hop"));
    Attempt attempt;
    attempt.value = 1.8;
    log.setBattery(second, {.tests = {{hop, {attempt}, {.device = camera}}}, .gaps = {}});
    QCOMPARE(log::splitDays(log), (std::vector<log::SplitDay>{{first, second}}));
    const auto names = namesOf(folder.path());
    const auto into = log.session(first), from = log.session(second);
    log::joinSessions(log, {first, second});
    VERIFY_SOUND(log);
    const auto joined = log.session(first);
    QCOMPARE(joined.sets.size(), 2U);
    QCOMPARE(joined.head.value.note, "fresh; second device");
    QCOMPARE(log.conditions(first, squat).device, camera);
    QCOMPARE(log.conditions(first, s.pull).device, s.encoder);
    QCOMPARE(joined.battery, from.battery);
    QVERIFY(log::splitDays(log).empty());
    QCOMPARE(errorOf([&] { log::joinSessions(log, {first, second}); }), LogError::Kind::Conflict);
    log::partSessions(log, into, from);
    QCOMPARE(log.session(first), into);
    QCOMPARE(log.session(second), from);
    QCOMPARE(namesOf(folder.path()), names);
    VERIFY_SOUND(log);
    // The same lift on two devices is a study of them, and stays two.
    log.add(second, s.pull, ladderSet(40, {1.0}));
    QVERIFY(log::splitDays(log, s.lane3).empty());
}

QTEST_APPLESS_MAIN(TestTestDay)
#include "tst_testday.moc"
