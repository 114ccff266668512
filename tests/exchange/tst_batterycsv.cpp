// SPDX-License-Identifier: GPL-3.0-or-later
// Attempts and tests as CSV: read, refused with line and column, brought into a log once.
#include "core/exchange/batterycsv.h"
#include "core/exchange/tracecsv.h"
#include "core/model/errors.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using log::Log;

namespace {

class Folder {
public:
    std::filesystem::path write(const char* name, const QByteArray& text) const {
        QFile file(m_dir.filePath(QString::fromUtf8(name)));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            qFatal("cannot write");
        return file.fileName().toStdString();
    }
    std::filesystem::path path(const char* name) const {
        return m_dir.filePath(QString::fromUtf8(name)).toStdString();
    }

private:
    QTemporaryDir m_dir;
};

const char* const tests = "test,unit,better,sides,formula,typical_error,typical_error_in,"
                          "typical_error_source\n"
                          "Hop,m,higher,two,,0.05,unit,ours\n"
                          "Drop,m/s,higher,,flight rsi,,,\n";
const char* const attempts =
    "date,athlete,test,value,side,contact_s,not_possible,lift,excluded,attempt_note,surface\n"
    "2026-03-14,Lane 3,Hop,1.82,left,,,,,first,boards\n"
    "2026-03-14,Lane 3,Hop,1.9,right,,,,stepped,,\n"
    "2026-03-14,Lane 3,Drop,0.5,,0.2,,,,,boards\n"
    "2026-03-14,Lane 3,,,,,plates lost,Bench pull,,,\n"
    "2026-03-15,Lane 4,Drop,,,,sore knee,,,,\n";

BatteryTables read(const Folder& folder, const QByteArray& attemptsText) {
    BatteryTables tables;
    tables.readTests(folder.write("tests.csv", tests));
    tables.readAttempts(folder.write("attempts.csv", attemptsText));
    return tables;
}

} // namespace

class TestBatteryCsv : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void goesIn() {
        const Folder folder;
        Log log = Log::create(folder.path("x.slopebook"));
        log.add(Lift{.name = "Bench pull"});
        const BatteryTables tables = read(folder, attempts);
        BatteryReport report;
        log.together([&] { report = mergeBattery(log, tables, {}); });
        QCOMPARE(report.attemptsAdded, 3);
        QCOMPARE(report.gapsAdded, 2);
        QCOMPARE(report.sessionsAdded, 2);
        QCOMPARE(report.testsMade.size(), std::size_t(2));
        const auto lane3 = log.athletes()[0];
        const Battery battery = log.batteries(lane3.id)[0].battery;
        QCOMPARE(battery.tests[0].conditions.surface, std::string("boards"));
        QCOMPARE(battery.tests.size(), std::size_t(2));
        QCOMPARE(battery.tests[0].attempts[0].note, std::string("first"));
        QCOMPARE(battery.tests[0].attempts[1].excluded, std::string("stepped"));
        QCOMPARE(battery.tests[1].attempts[0].contact, 0.2);
        QCOMPARE(battery.gaps.size(), std::size_t(1));
        QVERIFY(battery.gaps[0].lift.has_value());
        QVERIFY(log.check().empty());
        // A second time it adds nothing.
        log.together([&] { report = mergeBattery(log, tables, {}); });
        QCOMPARE(report.attemptsAdded + report.gapsAdded + report.sessionsAdded, 0);
        QCOMPARE(report.attemptsAlreadyThere, 3);
    }

    void refused_data() {
        QTest::addColumn<QByteArray>("row");
        QTest::addColumn<QString>("expects");
        QTest::newRow("no value") << QByteArray("2026-03-14,Lane 3,Hop,,left") << "above 0";
        QTest::newRow("zero") << QByteArray("2026-03-14,Lane 3,Hop,0,left") << "above 0";
        QTest::newRow("no such date") << QByteArray("2026-02-30,Lane 3,Hop,1.8,left") << "date";
        QTest::newRow("no such side") << QByteArray("2026-03-14,Lane 3,Hop,1.8,middle") << "left";
        QTest::newRow("a side is missing")
            << QByteArray("2026-03-14,Lane 3,Hop,1.8,") << "left or right";
        QTest::newRow("no contact time") << QByteArray("2026-03-14,Lane 3,Drop,0.5,") << "contact";
        QTest::newRow("an unknown test")
            << QByteArray("2026-03-14,Lane 3,Leap,1.8,") << "a test of the log";
    }
    void refused() {
        QFETCH(QByteArray, row);
        QFETCH(QString, expects);
        const Folder folder;
        Log log = Log::create(folder.path("x.slopebook"));
        try {
            const auto tables = read(folder, "date,athlete,test,value,side\n" + row + "\n");
            log.together([&] { mergeBattery(log, tables, {}); });
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QVERIFY2(QString::fromStdString(english(bad.expected())).contains(expects), bad.what());
            QCOMPARE(bad.where().line, 2L);
        }
        QVERIFY(log.athletes().empty());
        QVERIFY(log.testKinds().empty());
    }

    void contradictionIsRefused() {
        const Folder folder;
        Log log = Log::create(folder.path("x.slopebook"));
        log.add(Lift{.name = "Bench pull"});
        log.together([&] { mergeBattery(log, read(folder, attempts), {}); });
        QByteArray other = attempts;
        other.replace("1.82", "1.83");
        QVERIFY_THROWS_EXCEPTION(BadInput,
                                 log.together([&] { mergeBattery(log, read(folder, other), {}); }));
    }

    void knownTests() {
        const Folder folder;
        Log log = Log::create(folder.path("x.slopebook"));
        BatteryTables tables;
        tables.readAttempts(
            folder.write("a.csv", "date,athlete,test,value\n2026-03-14,Lane 3,throw,4.2\n"));
        const KnownTest known = [](const std::string& name) -> std::optional<TestKind> {
            if (name != "throw")
                return {};
            TestKind kind;
            kind.name = "Throw";
            kind.unit = "m";
            return kind;
        };
        log.together([&] { mergeBattery(log, tables, known); });
        QCOMPARE(log.testKinds()[0].value.name, std::string("Throw"));
    }

    void headersTell() {
        QVERIFY(isTestsHeader({"test", "unit", "better"}));
        QVERIFY(!isTestsHeader({"date", "athlete", "test", "value"}));
        QVERIFY(isAttemptsHeader({"date", "athlete", "test", "value", "side"}));
        QVERIFY(!isAttemptsHeader({"date", "athlete", "lift", "set"}));
    }

    void traceFiles_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("time");
        QTest::addColumn<QString>("value");
        QTest::addColumn<double>("second");
        QTest::newRow("comma with header") << QByteArray("time,force\n0,1\n0.001,2.5\n") << "time"
                                           << "force" << 2.5;
        QTest::newRow("value first")
            << QByteArray("Force (N),Time (s)\n1,0\n2.5,0.001\n") << "Time (s)"
            << "Force (N)" << 2.5;
        QTest::newRow("semicolon, decimal comma, remarks above")
            << QByteArray("made by a plate\n\nt;left;right\n0,000;1,0;7\n0,001;2,5;8\n") << "t"
            << "left" << 2.5;
        QTest::newRow("tab without a header") << QByteArray("0\t1\n0.001\t2.5\n") << "1"
                                              << "2" << 2.5;
    }
    void traceFiles() {
        QFETCH(QByteArray, text);
        QFETCH(QString, time);
        QFETCH(QString, value);
        QFETCH(double, second);
        const Folder folder;
        const auto file = folder.write("t.csv", text);
        const auto layout = traceFile(file);
        const auto likely = likelyColumns(layout);
        QCOMPARE(QString::fromStdString(likely.first), time);
        QCOMPARE(QString::fromStdString(likely.second), value);
        const auto columns = readTrace(file, layout, likely.first, likely.second);
        QCOMPARE(columns.times.size(), std::size_t(2));
        QCOMPARE(columns.times[1], 0.001);
        QCOMPARE(columns.values[1], second);
    }
    void badTraceFiles() {
        const Folder folder;
        QVERIFY_THROWS_EXCEPTION(BadInput, traceFile(folder.write("a.csv", "no numbers,here\n")));
        const auto file = folder.write("b.csv", "time,force\n0,1\n0.001,much\n");
        const auto layout = traceFile(file);
        try {
            readTrace(file, layout, "time", "force");
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QCOMPARE(bad.where().line, 3L);
            QCOMPARE(english(bad.where().column), std::string("force"));
        }
        QVERIFY_THROWS_EXCEPTION(BadInput, readTrace(file, layout, "time", "power"));
    }
};
QTEST_APPLESS_MAIN(TestBatteryCsv)
#include "tst_batterycsv.moc"
