// SPDX-License-Identifier: GPL-3.0-or-later
// The battery in the log: kept whole, verified, taken out with its session, damage noticed.
#include "tests/log/builders.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace slopebook;
using namespace slopebook::test;
using log::Log;

namespace {

TestKind hop() {
    return {.name = "Single hop",
            .unit = "m",
            .higherIsBetter = true,
            .twoSided = true,
            .rule = AttemptRule::Mean,
            .attempts = 4,
            .formula = TestFormula::Value,
            .decimals = 3,
            .noise = TestNoise{.value = 0.0461, .percent = false, .source = "a paper"},
            .smallest = 0.04,
            .smallestSource = "another",
            .note = "landing held"};
}

TestKind drop() {
    TestKind kind;
    kind.name = "Drop jump";
    kind.unit = "m/s";
    kind.formula = TestFormula::FlightRsi;
    return kind;
}

Attempt attempt(double value, BodySide side, std::optional<double> contact = {}) {
    return {.side = side, .value = value, .contact = contact, .note = {}, .excluded = {}};
}

struct Filled {
    Season season{};
    TestKindId hop{}, drop{};
    Battery battery{};
};

Filled fill(Log& log) {
    Filled f{.season = fillSeason(log)};
    f.hop = log.add(hop());
    f.drop = log.add(drop());
    f.battery.tests = {{f.hop,
                        {attempt(1.82, BodySide::Left), attempt(1.9, BodySide::Right),
                         attempt(1.88, BodySide::Left)}},
                       {f.drop, {attempt(0.5, BodySide::Both, 0.2)}}};
    f.battery.tests[0].conditions = {.device = f.season.encoder,
                                     .surface = "boards",
                                     .footwear = "court shoes",
                                     .technique = "arms free"};
    f.battery.tests[0].attempts[1].note = "wobbled";
    f.battery.tests[0].attempts[2].excluded = "stepped on the line";
    f.battery.gaps = {{.lift = f.season.pull, .load = Mass{90'000}, .reason = "plates lost"},
                      {.kind = f.drop, .side = BodySide::Left, .reason = "sore knee"}};
    log.setBattery(f.season.autumn, f.battery);
    return f;
}

} // namespace

class TestBatteryLog : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void isThereAfterReopening() {
        const Folder folder;
        Filled f;
        {
            Log log = Log::create(folder.path());
            f = fill(log);
        }
        const Log log = Log::open(folder.path());
        QCOMPARE(log.battery(f.season.autumn), f.battery);
        QCOMPARE(log.session(f.season.autumn).battery, f.battery);
        QVERIFY(log.battery(f.season.winter).empty());
        const auto kinds = log.testKinds();
        QCOMPARE(kinds.size(), std::size_t(2));
        QCOMPARE(kinds[1].value, hop());
        QCOMPARE(kinds[0].value, drop());
        const auto all = log.batteries(f.season.lane3);
        QCOMPARE(all.size(), std::size_t(2));
        QCOMPARE(all[0].battery, f.battery);
        QCOMPARE(all[0].bodyMass, Mass{81'500});
        QCOMPARE(all[1].repeatOf, f.season.autumn);
        int seen = 0;
        log.scanBatteries({}, [&](const BatterySession&) { ++seen; });
        QCOMPARE(seen, 3);
        VERIFY_SOUND(log);
    }

    void isReplacedWhole() {
        const Folder folder;
        Log log = Log::create(folder.path());
        Filled f = fill(log);
        f.battery.tests.erase(f.battery.tests.begin());
        f.battery.tests.push_back({f.hop, {}}); // a test without attempts is none
        log.setBattery(f.season.autumn, f.battery);
        f.battery.tests.pop_back();
        QCOMPARE(log.battery(f.season.autumn), f.battery);
        log.setBattery(f.season.autumn, {});
        QVERIFY(log.battery(f.season.autumn).empty());
        VERIFY_SOUND(log);
    }

    void goesWithItsSession() {
        const Folder folder;
        Log log = Log::create(folder.path());
        const Filled f = fill(log);
        log.remove(f.season.repeat);
        log.remove(f.season.autumn);
        VERIFY_SOUND(log);
        log.remove(f.hop); // nothing uses it any more
        QCOMPARE(log.testKinds().size(), std::size_t(1));
    }

    void whatIsInUseStays() {
        const Folder folder;
        Log log = Log::create(folder.path());
        const Filled f = fill(log);
        QCOMPARE(errorOf([&] { log.remove(f.hop); }), LogError::Kind::Conflict);
        TestKind kind = hop();
        kind.twoSided = false;
        QCOMPARE(errorOf([&] { log.change(f.hop, kind); }), LogError::Kind::Conflict);
        kind = hop();
        kind.decimals = 1;
        log.change(f.hop, kind);
        QCOMPARE(log.testKinds()[1].value.decimals, 1);
        QVERIFY(refuses([&] { log.add(hop()); })); // the name is taken
        VERIFY_SOUND(log);
    }

    void refusedAndNothingWritten() {
        const Folder folder;
        Log log = Log::create(folder.path());
        const Filled f = fill(log);
        Battery bad = f.battery;
        bad.tests[0].attempts[0].side = BodySide::Both;
        QVERIFY(refuses([&] { log.setBattery(f.season.autumn, bad); }));
        bad = f.battery;
        bad.tests[1].attempts[0].contact.reset();
        QVERIFY(refuses([&] { log.setBattery(f.season.autumn, bad); }));
        bad = f.battery;
        bad.tests[0].kind = TestKindId{99};
        QCOMPARE(errorOf([&] { log.setBattery(f.season.autumn, bad); }), LogError::Kind::Conflict);
        QCOMPARE(errorOf([&] { log.setBattery(SessionId{99}, f.battery); }),
                 LogError::Kind::Conflict);
        QCOMPARE(log.battery(f.season.autumn), f.battery);
    }

    void damageIsNoticed_data() {
        QTest::addColumn<QString>("sql");
        QTest::newRow("a value") << "UPDATE attempts SET value = 1.83 WHERE value = 1.82";
        QTest::newRow("a side") << "UPDATE attempts SET side = 'right' WHERE value = 1.82";
        QTest::newRow("an attempt gone") << "DELETE FROM attempts WHERE ordinal = 1";
        QTest::newRow("all attempts gone") << "DELETE FROM attempts";
        QTest::newRow("the conditions") << "UPDATE test_conditions SET surface = 'grass'";
        QTest::newRow("a reason") << "UPDATE gaps SET reason = 'none' WHERE ordinal = 2";
        QTest::newRow("the checksum") << "UPDATE sessions SET battery_checksum = NULL";
    }
    void damageIsNoticed() {
        QFETCH(QString, sql);
        const Folder folder;
        Filled f;
        {
            Log log = Log::create(folder.path());
            f = fill(log);
        }
        SQLite::Database(folder.path().string(), SQLite::OPEN_READWRITE).exec(sql.toStdString());
        Log log = Log::open(folder.path());
        QCOMPARE(errorOf([&] { log.battery(f.season.autumn); }), LogError::Kind::Damaged);
        QCOMPARE(errorOf([&] { log.setBattery(f.season.autumn, {}); }), LogError::Kind::Damaged);
        QVERIFY(!log.check().empty());
    }

    void aDamagedTestIsNoticed() {
        const Folder folder;
        {
            Log log = Log::create(folder.path());
            fill(log);
        }
        SQLite::Database(folder.path().string(), SQLite::OPEN_READWRITE)
            .exec("UPDATE tests SET noise = 0.05 WHERE noise IS NOT NULL");
        const Log log = Log::open(folder.path());
        QCOMPARE(errorOf([&] { log.testKinds(); }), LogError::Kind::Damaged);
        QVERIFY(!log.check().empty());
    }
};
QTEST_APPLESS_MAIN(TestBatteryLog)
#include "tst_batterylog.moc"
