// SPDX-License-Identifier: GPL-3.0-or-later
// The test day as CSV: what was not lifted or not possible, how it felt, conditions, stations and
// rosters, the fields of tests; in by hand, out and in again, and refused with file, line, column
// and what was expected, nothing written. (tst_roundtrip.cpp does the same by dice.)
#include "core/exchange/tidyexport.h"
#include "core/model/errors.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/toldlog.h"

#include <QTest>

#include <list>
#include <map>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using tests::otherwise;
using tests::tell;

namespace {
const std::string rows =
    "date,athlete,lift,set,load_kg,rep,velocity,outcome,reason,rpe,device,surface,footwear,"
    "technique,not_comparable\n";
const std::string lifts = "lift,point_rule,moves_body\nPull-up,fastest,1\nSquat,mean,0\n";
const std::string kinds =
    "test,unit,better,sides,rule,best_of,attempts,formula\n"
    "Hop,m,higher,two and both,mean,2,5,value\nSprint,s,lower,one,best,,3,value\n";
const std::string attempts =
    "date,athlete,test,value,session,lift,side,contact_s,not_possible,surface,test_device,footwear,"
    "technique,place,not_comparable,load_kg\n";
const std::string stations =
    "station,lift,test,ladder_kg,sets,rotates,device,place,surface,footwear,technique,"
    "not_comparable,station_note\n";
const std::string rosters = "station,date,turn,athlete\n";

constexpr Date may{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{4}};

/// A whole day by hand, a file a table.
std::vector<std::filesystem::path> dayFiles(const CsvFiles& files) {
    return {
        files.write("lifts.csv", lifts),
        files.write("tests.csv", kinds),
        files.write("reps.csv",
                    rows + "2026-05-04,Lane 3,Squat,1,60,1,0.92,,,8,Encoder,boards,barefoot,box,\n"
                           "2026-05-04,Lane 3,Squat,1,60,2,0.90,,,8,,,,,\n"
                           "2026-05-04,Lane 3,Squat,2,100,,,not lifted,out of the groove,10,,,,,\n"
                           "2026-05-04,Lane 3,Squat,,110,,,not possible,no plates,,,,,,\n"
                           "2026-05-04,Lane 3,Pull-up,,,,,not possible,elbow,,,,,,\n"
                           "2026-05-04,Stroke,Pull-up,1,10,1,0.8,,,,,,,,new bar\n"),
        files.write("attempts.csv",
                    attempts + "2026-05-04,Lane 3,Hop,1.84,,,left,,,turf,Tape,spikes,long,Hall,,\n"
                               "2026-05-04,Lane 3,Hop,1.91,,,both,,,,,,,,,\n"
                               "2026-05-04,Lane 3,Hop,,,,right,,knee,,,,,,,\n"
                               "2026-05-04,Lane 3,,,,Squat,left,,hip,,,,,,,\n"
                               "2026-05-04,Lane 3,Sprint,,,,,,rain,,,,,,,\n"),
        files.write("stations.csv",
                    stations + "Rack 1,Squat,,40 60.5 80,3,0,Encoder,Hall,boards,,,,by the door\n"
                               "Mat,,Hop,,,,,,,,,another tape,\nMat,,Sprint,,,,,,,,,,\n"),
        files.write("rosters.csv", rosters + "Rack 1,2026-05-04,1,Stroke\n"
                                             "Mat,2026-05-04,1,Lane 3\n"
                                             "Rack 1,2026-05-04,2,Lane 3\n")};
}
} // namespace

class TestTestDayCsv : public QObject {
    Q_OBJECT

    static void cells(const char* name, const char* file, const std::string& text, int line,
                      const char* column, const char* found, const char* expected) {
        QTest::newRow(name) << QByteArray(file) << QByteArray::fromStdString(text) << line
                            << QByteArray(column) << QByteArray(found) << QByteArray(expected);
    }

private Q_SLOTS:
    void aDayByHand();
    void itComesBackEqual();
    void refused_data();
    void refused();
    void halfAnImportLeavesNothing();
};

// Each against what stands in the text above.
void TestTestDayCsv::aDayByHand() {
    const CsvFiles files;
    log::Log log = files.newLog();
    importTidy(log, dayFiles(files), {});
    QVERIFY(log.check().empty());
    std::map<std::string, LiftId> lift;
    for (const auto& one : log.lifts()) {
        lift[one.value.name] = one.id;
        QCOMPARE(one.value.movesBody, one.value.name == "Pull-up");
    }
    const auto kind = log.testKinds();
    QCOMPARE(kind.size(), 2U);
    const TestKind& hop = kind[0].value;
    QVERIFY(hop.twoSided && hop.bothToo && hop.rule == AttemptRule::Mean);
    QCOMPARE(hop.bestOf, 2);
    QCOMPARE(hop.attempts, 5);
    const TestKind& sprint = kind[1].value;
    QVERIFY(!sprint.twoSided && !sprint.bothToo && sprint.bestOf == 0 && !sprint.higherIsBetter);

    const auto athletes = log.athletes();
    QCOMPARE(athletes.size(), 2U);
    const auto sessions = log.sessions(athletes[0].id);
    QCOMPARE(sessions.size(), 1U);
    const auto record = log.session(sessions[0].id);
    QCOMPARE(record.sets.size(), 2U);
    QCOMPARE(record.sets[0].set.effort, std::optional(Effort{16}));
    QCOMPARE(record.sets[0].set.reps.size(), 2U);
    const Set& back = record.sets[1].set;
    QVERIFY(back.outcome == Outcome::NotLifted && back.reps.empty());
    QCOMPARE(back.reason, "out of the groove");
    QCOMPARE(back.effort, std::optional(Effort{20}));
    const Conditions squat = log.conditions(sessions[0].id, lift["Squat"]);
    QCOMPARE(squat.surface + squat.footwear + squat.technique, "boardsbarefootbox");
    QVERIFY(log.conditions(sessions[0].id, lift["Pull-up"]) == Conditions{});
    const auto named = [&](const Conditions& under) {
        for (const auto& device : log.devices())
            if (under.device == device.id)
                return device.value.name;
        return std::string();
    };
    QCOMPARE(named(squat), "Encoder");
    const auto other = log.sessions(athletes[1].id);
    QCOMPARE(log.conditions(other.at(0).id, lift["Pull-up"]).notComparable, "new bar");

    QCOMPARE(record.battery.tests.size(), 1U);
    const TestAttempts& hops = record.battery.tests[0];
    QCOMPARE(hops.attempts.size(), 2U);
    QVERIFY(hops.attempts[1].side == BodySide::Both);
    QCOMPARE(named(hops.conditions), "Tape");
    QCOMPARE(hops.conditions.surface + hops.conditions.footwear + hops.conditions.technique +
                 hops.conditions.place,
             "turfspikeslongHall");
    // Those of attempts.csv first, in their order, then those of reps.csv.
    const std::vector<Gap> gaps{
        {.kind = kind[0].id, .side = BodySide::Right, .reason = "knee"},
        {.lift = lift["Squat"], .side = BodySide::Left, .reason = "hip"},
        {.kind = kind[1].id, .reason = "rain"},
        {.lift = lift["Squat"], .load = Mass{110'000}, .reason = "no plates"},
        {.lift = lift["Pull-up"], .reason = "elbow"}};
    QVERIFY(record.battery.gaps == gaps);

    const auto places = log.stations();
    QCOMPARE(places.size(), 2U);
    const Station& mat = places[0].value;
    QVERIFY(!mat.lift && mat.rotates && mat.sets == 0 && mat.ladder.empty());
    QCOMPARE(mat.tests, (std::vector<TestKindId>{kind[0].id, kind[1].id}));
    QCOMPARE(mat.conditions.notComparable, "another tape");
    const Station& rack = places[1].value;
    QCOMPARE(rack.lift, std::optional(lift["Squat"]));
    QCOMPARE(rack.ladder, (std::vector<Mass>{Mass{40'000}, Mass{60'500}, Mass{80'000}}));
    QVERIFY(rack.sets == 3 && !rack.rotates);
    QCOMPARE(named(rack.conditions) + rack.conditions.place + rack.conditions.surface + rack.note,
             "EncoderHallboardsby the door");
    QCOMPARE(log.roster(places[1].id, may).athletes,
             (std::vector<AthleteId>{athletes[1].id, athletes[0].id}));
    QCOMPARE(log.roster(places[0].id, may).athletes, std::vector<AthleteId>{athletes[0].id});
}

void TestTestDayCsv::itComesBackEqual() {
    const CsvFiles files;
    log::Log log = files.newLog();
    importTidy(log, dayFiles(files), {});
    std::vector<std::filesystem::path> csv;
    for (const auto& file : exportTables(log, files.path("out")))
        if (file.extension() == ".csv")
            csv.push_back(file);
    log::Log back = files.newLog("back.slopebook");
    const ImportReport report = importTidy(back, csv, {});
    QVERIFY(report.columnsNotUsed.empty());
    QCOMPARE(otherwise(tell(log), tell(back)), "");
    QVERIFY(back.check().empty());
    QVERIFY(importTidy(back, csv, {}).addedNothing());
    QVERIFY(importTidy(back, dayFiles(files), {}).addedNothing());
    QCOMPARE(otherwise(tell(log), tell(back)), "");
}

void TestTestDayCsv::refused_data() {
    for (const char* column : {"file", "text"})
        QTest::addColumn<QByteArray>(column);
    QTest::addColumn<int>("line");
    for (const char* column : {"column", "found", "expected"})
        QTest::addColumn<QByteArray>(column);
    const auto rep = [](const char* name, const char* row, const char* column, const char* found,
                        const char* expected) {
        cells(name, "r.csv",
              rows + "2026-05-04,Lane 3,Squat,1,60,1,0.9,,,8,Encoder,boards,barefoot,box,\n" + row +
                  "\n",
              3, column, found, expected);
    };
    const char* set = "2026-05-04,Lane 3,Squat,";
    const auto of = [&](const char* rest) {
        static std::list<std::string> kept;
        return kept.emplace_back(std::string(set) + rest).c_str();
    };
    rep("an outcome that is none", of("2,60,1,0.9,failed,,,,,,,"), "outcome", "failed",
        "lifted, not lifted");
    rep("speeds of what was not lifted", of("2,60,1,0.9,not lifted,,,,,,,"), "rep", "1",
        "nothing where the load was not lifted");
    rep("a reason of what was lifted", of("2,60,1,0.9,,tired,,,,,,"), "reason", "tired",
        "nothing where the load was lifted");
    rep("a set that was not possible", of("2,60,,,not possible,plates,,,,,,"), "set", "2",
        "nothing where the load or the lift was not possible");
    rep("not possible without a reason", of(",60,,,not possible,,,,,,,"), "reason", "nothing",
        "why it was not possible");
    rep("a load that is none, not possible", of(",heavy,,,not possible,plates,,,,,,"), "load_kg",
        "heavy", "kg from 0");
    // Whichever row says it first, both lines are named.
    cells("two outcomes of a set", "r.csv",
          rows + of("1,60,,,not lifted,,,,,,,\n") + of("1,60,,,lifted,,,,,,,\n"), 3, "outcome",
          "lifted", "\"not lifted\", as line 2");
    cells("speeds and not lifted, in two rows", "r.csv",
          rows + of("1,60,1,0.9,,,,,,,,\n") + of("1,60,,,not lifted,,,,,,,\n"), 2, "velocity",
          "0.9 m/s", "line 3 says that the set was not lifted");
    cells("conditions alone, otherwise than a set's row", "r.csv",
          rows + of("1,60,1,0.9,,,,,boards,,,\n") + of(",,,,,,,,turf,,,\n"), 3, "surface", "turf",
          "\"boards\", as line 2");
    rep("an RPE of 11", of("2,60,1,0.9,,,11,,,,,"), "rpe", "11", "1 to 10 in halves");
    rep("a quarter of an RPE", of("2,60,1,0.9,,,8.25,,,,,"), "rpe", "8.25", "in halves");
    rep("an RPE with a comma", of("2,60,1,0.9,,,\"8,5\",,,,,"), "rpe", "8,5", "in halves");
    rep("two RPEs of a set", of("1,60,2,0.9,,,9,,,,,"), "rpe", "9", "line 2");
    rep("two surfaces", of("2,60,1,0.9,,,,,turf,,,"), "surface", "turf", "\"boards\", as line 2");
    rep("two kinds of footwear", of("2,60,1,0.9,,,,,,shod,,"), "footwear", "shod", "\"barefoot\"");
    rep("two techniques", of("2,60,1,0.9,,,,,,,touch,"), "technique", "touch", "\"box\"");
    rep("two devices", of("2,60,1,0.9,,,,Camera,,,,"), "device", "Camera", "\"Encoder\"");
    cells("two reasons not to compare", "r.csv",
          rows + of("1,60,1,0.9,,,,,,,,bar\n") + of("2,60,1,0.9,,,,,,,,bench\n"), 3,
          "not_comparable", "bench", "\"bar\", as line 2");
    cells("moves_body in words", "l.csv", "lift,point_rule,moves_body\nRow,fastest,yes\n", 2,
          "moves_body", "yes", "1, 0 or nothing");
    cells("moves_body otherwise than the log", "l.csv",
          "lift,point_rule,moves_body\nPull-up,fastest,0\n", 2, "moves_body", "0",
          "as the log has");

    const auto test = [](const char* name, const char* row, const char* column, const char* found,
                         const char* expected) {
        cells(name, "t.csv", "test,unit,better,sides,rule,best_of\n" + std::string(row) + "\n", 2,
              column, found, expected);
    };
    test("sides that are none", "Reach,cm,higher,three,,", "sides", "three", "two or one");
    test("the best of none", "Reach,cm,higher,one,mean,none", "best_of", "none", "from 1 on");
    test("the best of too many", "Reach,cm,higher,one,mean,51", "", "51", "the best 1 to 50");
    test("the best of the best", "Reach,cm,higher,one,best,2", "", "the best 2", "mean");

    const auto attempt = [](const char* name, const char* row, const char* column,
                            const char* found, const char* expected) {
        cells(name, "a.csv",
              attempts + "2026-05-04,Lane 3,Hop,1.8,,,left,,,turf,Tape,spikes,long,Hall,old,\n" +
                  row + "\n",
              3, column, found, expected);
    };
    attempt("a gap about nothing", "2026-05-04,Lane 3,,,,,,,knee,,,,,,,", "not_possible", "knee",
            "a test or a lift");
    attempt("a gap about both", "2026-05-04,Lane 3,Hop,,,Squat,,,knee,,,,,,,", "not_possible",
            "knee", "one of them");
    attempt("a gap with a value", "2026-05-04,Lane 3,Hop,1.8,,,right,,knee,,,,,,,", "value", "1.8",
            "no value");
    attempt("a load of a test", "2026-05-04,Lane 3,Hop,,,,,,knee,,,,,,,60", "load_kg", "60",
            "no load of a test");
    attempt("a load that is none", "2026-05-04,Lane 3,,,,Squat,,,knee,,,,,,,much", "load_kg",
            "much", "a load in kg");
    attempt("a side that is none", "2026-05-04,Lane 3,Hop,,,,upper,,knee,,,,,,,", "side", "upper",
            "left, right, both");
    attempt("a gap of a lift that nobody knows", "2026-05-04,Lane 3,,,,Snatch,,,knee,,,,,,,", "",
            "Snatch", "lift");
    const char* hop = "2026-05-04,Lane 3,Hop,1.9,,,left,,,";
    const auto under = [&](const char* column, const char* rest, const char* found,
                           const char* expected) {
        static std::list<std::string> kept;
        const auto& row = kept.emplace_back(std::string(hop) + rest);
        attempt(kept.emplace_back("another " + std::string(column)).c_str(), row.c_str(), column,
                found, expected);
    };
    under("surface", "clay,,,,,,", "clay", "\"turf\"");
    under("test_device", ",Mat,,,,,", "Mat", "\"Tape\"");
    under("footwear", ",,socks,,,,", "socks", "\"spikes\"");
    under("technique", ",,,short,,,", "short", "\"long\"");
    under("place", ",,,,Shed,,", "Shed", "\"Hall\"");
    under("not_comparable", ",,,,,new,", "new", "\"old\"");

    const auto station = [](const char* name, const char* row, const char* column,
                            const char* found, const char* expected) {
        cells(name, "s.csv", stations + row + "\n", 2, column, found, expected);
    };
    station("no station's name", ",Squat,,,,,,,,,,,", "station", "nothing", "a name");
    station("no such lift", "Rack,Snatch,,,,,,,,,,,", "lift", "Snatch", "a lift of the log");
    station("no such test", "Rack,,Leap,,,,,,,,,,", "test", "Leap", "a test of the log");
    station("a lift and a test", "Rack,Squat,Hop,,,,,,,,,,", "", "a lift and tests", "");
    station("nothing to do", "Rack,,,,,,,,,,,,", "", "", "a lift");
    station("a ladder in words", "Rack,Squat,,40 heavy,,,,,,,,,", "ladder_kg", "40 heavy",
            "40 60 80");
    station("a ladder that falls", "Rack,Squat,,60 40,,,,,,,,,", "", "does not rise",
            "from light to heavy");
    station("a ladder past belief", "Rack,Squat,,2001,,,,,,,,,", "ladder_kg", "2001", "40 60 80");
    station("a ladder of a test", "Rack,,Hop,40,,,,,,,,,", "", "a ladder without a lift",
            "for a lift only");
    station("half a set", "Rack,Squat,,,1.5,,,,,,,,", "sets", "1.5", "from 1 on");
    station("too many sets", "Rack,Squat,,,51,,,,,,,,", "", "51", "1 to 50 sets");
    station("turns in words", "Rack,Squat,,,,always,,,,,,,", "rotates", "always", "1, 0");
    cells("a lift's station twice", "s.csv",
          stations + "Rack,Squat,,,,,,,,,,,\nrack,Squat,,,,,,,,,,,\n", 3, "test", "nothing",
          "one more test");
    cells("a test twice at a station", "s.csv",
          stations + "Rack,,Hop,,,,,,,,,,\nRack,,hop,,,,,,,,,,\n", 2, "", "a test twice",
          "each test once");
    cells("a test of a further row that nobody knows", "s.csv",
          stations + "Rack,,Hop,,,,,,,,,,\nRack,,Leap,,,,,,,,,,\n", 3, "test", "Leap",
          "a test of the log");
    station("a station told otherwise", "mat,,Hop,,,,,,,,,,", "", "told otherwise",
            "as the log has it");

    const auto roster = [](const char* name, const char* row, const char* column, const char* found,
                           const char* expected) {
        cells(name, "o.csv", rosters + "Mat,2026-05-05,1,Lane 3\n" + row + "\n", 3, column, found,
              expected);
    };
    roster("a station that nobody knows", "Shed,2026-05-05,1,Lane 3", "station", "Shed",
           "a station of the log");
    roster("a day that is none", "Mat,05.05.2026,2,Stroke", "date", "05.05.2026", "year-month-day");
    roster("a turn left out", "Mat,2026-05-05,3,Stroke", "turn", "3", "2, the turn after");
    roster("a turn twice", "Mat,2026-05-05,1,Stroke", "turn", "1", "2, the turn after");
    roster("no turn", "Mat,2026-05-05,,Stroke", "turn", "nothing", "the number of the turn");
    roster("nobody", "Mat,2026-05-05,2,", "athlete", "nothing", "a name");
    cells("an athlete twice", "o.csv",
          rosters + "Mat,2026-05-05,1,Lane 3\nMat,2026-05-05,2,lane 3\n", 2, "", "an athlete twice",
          "each athlete once");
    cells("another roster of the day", "o.csv", rosters + "Mat,2026-05-04,1,Stroke\n", 2, "",
          "another roster", "as the log has it");
}

void TestTestDayCsv::refused() {
    QFETCH(QByteArray, file);
    QFETCH(QByteArray, text);
    QFETCH(int, line);
    QFETCH(QByteArray, column);
    QFETCH(QByteArray, found);
    QFETCH(QByteArray, expected);
    const CsvFiles files;
    log::Log log = files.newLog();
    // A log that knows the names, with a squat of nobody's day.
    importTidy(
        log,
        {files.write("lifts.csv", lifts), files.write("tests.csv", kinds),
         files.write("stations.csv", stations + "Mat,,Hop,,,,,,,,,,\nMat,,Sprint,,,,,,,,,,\n"),
         files.write("athletes.csv", "athlete,athlete_note\nLane 3,\nStroke,\n"),
         files.write("rosters.csv", rosters + "Mat,2026-05-04,1,Lane 3\n")},
        {});
    const std::string before = tell(log);
    try {
        importTidy(log, {files.write(file.toStdString(), text.toStdString())}, {});
        QFAIL("taken");
    } catch (const BadInput& bad) {
        QVERIFY2(bad.where().file.ends_with(file.toStdString()), bad.what());
        QVERIFY2(bad.where().line == line, bad.what());
        QVERIFY2(QByteArray::fromStdString(english(bad.where().column)) == column, bad.what());
        QVERIFY2(QByteArray::fromStdString(english(bad.found())).contains(found), bad.what());
        QVERIFY2(!english(bad.expected()).empty(), bad.what());
        QVERIFY2(QByteArray::fromStdString(english(bad.expected())).contains(expected), bad.what());
    }
    QCOMPARE(otherwise(before, tell(log)), "");
    QVERIFY(log.check().empty());
}

// The last file is refused: nothing of those before it stays.
void TestTestDayCsv::halfAnImportLeavesNothing() {
    const CsvFiles files;
    log::Log log = files.newLog();
    const std::string before = tell(log);
    auto all = dayFiles(files);
    for (const std::string& bad :
         {rosters + "Mat,2026-05-04,2,Lane 3\n", stations + "Rack,Snatch,,,,,,,,,,,\n",
          attempts + "2026-05-04,Lane 3,Leap,1.8,,,,,,,,,,,,\n",
          rows + "2026-05-04,Lane 3,Squat,1,60,1,9999,,,,,,,,\n"}) {
        auto with = all;
        with.push_back(files.write("bad.csv", bad));
        QVERIFY_THROWS_EXCEPTION(BadInput, importTidy(log, with, {}));
        QCOMPARE(otherwise(before, tell(log)), "");
        QVERIFY(log.check().empty());
        QVERIFY(log.athletes().empty() && log.devices().empty());
    }
    importTidy(log, all, {});
    QVERIFY(log.check().empty());
}

QTEST_APPLESS_MAIN(TestTestDayCsv)
#include "tst_testdaycsv.moc"
