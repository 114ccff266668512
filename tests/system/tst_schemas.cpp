// SPDX-License-Identifier: GPL-3.0-or-later
// What commands print as JSON fits the schemas that the program prints for them, and mangled it
// does not; the log's file is as the program says, and is read without it.
#include "tests/support/postgres.h"
#include "tests/system/python.h"

#include <QFile>
#include <QJsonArray>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>
#include <optional>

using slopebook::tests::haveModule;
using slopebook::tests::haveTool;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using slopebook::tests::runPython;
using namespace Qt::Literals::StringLiterals;

namespace {

/// What is asked, one a line: the name of the output, the exit status, the command. SAMPLE, LOG,
/// OUT and STORE are put in; --json is added.
const char* const asked = R"(
import-dry 0 import OUT/dry.slopebook OUT/reps.csv --dry-run
import-new 0 import LOG OUT/reps.csv OUT/attempts.csv OUT/stations.csv OUT/rosters.csv OUT/equipment.csv OUT/blocks.csv --mvt Pull=0.3
import-again 0 import LOG OUT/reps.csv OUT/attempts.csv
export-all 0 export SAMPLE --into OUT/all
list-all 0 list SAMPLE --athlete Cora
list-few 0 list LOG
table-all 0 table SAMPLE --athlete Cora
table-few 0 table LOG
profile-cora 0 profile SAMPLE --athlete Cora --lift "Bench pull"
profile-two 0 profile LOG --athlete Bo --lift "Odd lift" --session 2026-03-14
profile-rising 0 profile LOG --athlete Ada --lift Rising
profile-one-load 1 profile LOG --athlete Bo --lift "Odd lift" --session 2026-04-01
profile-none 1 profile SAMPLE --athlete Cora --lift "Bench pull" --session 2020-01-01
compare-days 0 compare SAMPLE --athlete Cora --lift "Bench pull" --from 2025-12-01 --to 2026-05-04
compare-unclear 0 compare SAMPLE --athlete Ada --lift "Bench pull" --from 2025-12-01 --to 2026-05-04
compare-blocks 0 compare SAMPLE --athlete Cora --lift "Bench pull" --from Autumn --to Spring
compare-shared 0 compare LOG --athlete Bo --lift "Odd lift" --from 2026-03-14 --to 2026-03-21
compare-none 1 compare SAMPLE --athlete Cora --lift "Bench pull" --from 2020-01-01 --to 2026-05-04
follow-day 0 follow SAMPLE --athlete Cora --lift "Bench pull" --load 40
follow-block 0 follow SAMPLE --athlete Cora --lift "Bench pull" --load 40 --baseline Autumn
follow-none 1 follow SAMPLE --athlete Cora --lift "Bench pull" --load 40 --baseline 2020-01-01
season-all 0 season SAMPLE --athlete Cora
season-two 0 season SAMPLE --athlete Ada --block Autumn --block Spring
season-none 1 season LOG --athlete Bo --block 2020-01-01
squad-blocks 0 squad SAMPLE --lift "Bench pull" --from "Winter flood" --to Spring --due 2026-06-01
squad-due 0 squad SAMPLE --lift "Back squat" --from Autumn --to Spring --due 2027-06-01
squad-nobody 0 squad LOG --lift Rising --from 2020-01-01 --to 2020-02-01
report-all 0 report SAMPLE --from "Winter flood" --to Spring --into OUT/pages
report-none 1 report LOG --from 2020-01-01 --to 2020-02-01 --into OUT/nothing
noise-all 0 noise SAMPLE
noise-none 1 noise LOG
plan-percent 0 plan SAMPLE --athlete Cora --lift "Bench pull" --percent 70 --bar 20 --plates 20x2,10x2,5x1,2.5x1 --next-test 4 --history --restricted-flow --relation squad
plan-velocity 0 plan SAMPLE --athlete Cora --lift "Bench pull" --velocity 0.7-0.6 --bar 20 --plates 20x2,10x2,5x1 --relation published --loss 20
plan-few 0 plan LOG --athlete Ada --lift Pull --percent 70 --bar 20 --plates 20x2,10x2,5x1 --next-test 4 --history --relation squad
plan-none 1 plan SAMPLE --athlete Cora --lift "Bench pull" --session 2020-01-01 --bar 20
battery-blocks 0 battery SAMPLE --athlete Cora --from "Winter flood" --to Spring
battery-days 0 battery LOG --athlete Ada --from 2026-03-14 --to 2026-03-21
battery-shared 0 battery LOG --athlete Bo --from 2026-03-14 --to 2026-03-21
battery-none 1 battery SAMPLE --athlete Cora --from 2020-01-01 --to Spring
check-sound 0 check SAMPLE
backup-sound 0 backup SAMPLE OUT/copy.slopebook
merge-nothing 0 merge OUT/copy.slopebook SAMPLE
merge-two 0 merge OUT/copy.slopebook LOG
backup-more 0 backup SAMPLE OUT/changed.slopebook
change-here 0 change athlete OUT/copy.slopebook --athlete Cora --note here
change-there 0 change athlete OUT/changed.slopebook --athlete Cora --note there
merge-conflict-dry 0 merge OUT/copy.slopebook OUT/changed.slopebook --dry-run
merge-conflict 0 merge OUT/copy.slopebook OUT/changed.slopebook
trace-jump 0 trace OUT/jump.csv --kind jump
trace-lift 0 trace OUT/lift.csv --kind lift
trace-none 1 trace OUT/flat.csv --kind jump
add-athlete 0 add athlete LOG --athlete Zoe --note new
add-device 0 add device LOG --device "Encoder Z"
add-block 0 add block LOG --block Summer --first 2026-07-01 --last 2026-07-31 --a-week 2-3 --ceiling 60
add-lift 0 add lift LOG --lift "Bench press"
add-mvt 0 add mvt LOG --lift "Odd lift" --value 0.3 --sd 0.04
add-load 0 add check-load LOG --athlete Ada --lift Rising --load 60
change-athlete 0 change athlete LOG --athlete Zoe --rename Zoa
change-nothing 0 change athlete LOG --athlete Zoa
change-block 0 change block LOG --block Summer --ceiling none
change-lift 0 change lift LOG --lift "Bench press" --smallest-velocity 0.05
change-mvt 0 change mvt LOG --lift "Odd lift" --value 0.35
change-load 0 change check-load LOG --athlete Ada --lift Rising --load 60 --to 62.5
remove-load 0 remove check-load LOG --athlete Ada --lift Rising --load 62.5
remove-mvt 0 remove mvt LOG --lift "Odd lift"
remove-athlete 0 remove athlete LOG --athlete Zoa
remove-block 0 remove block LOG --block Summer
exclude-set 0 exclude LOG --athlete Ada --lift Rising --session 2026-03-14 --set 1 --reason "bar hit"
exclude-rep 0 exclude LOG --athlete Ada --lift Rising --session 2026-03-14 --set 2 --rep 1 --reason early
store-init 0 store init STORE --squad Rowing --squad Judo
store-again 0 store init STORE
store-grant 0 store grant STORE --login cora --squad Rowing --may write
store-status 0 store status STORE
backup-desk 0 backup SAMPLE OUT/desk.slopebook
backup-other 0 backup SAMPLE OUT/otherdesk.slopebook
sync-first 0 sync OUT/desk.slopebook --store CORA
sync-nothing 0 sync OUT/desk.slopebook
change-other 0 change athlete OUT/otherdesk.slopebook --athlete Cora --note there
change-desk 0 change athlete OUT/desk.slopebook --athlete Cora --note here
sync-desk 0 sync OUT/desk.slopebook
sync-conflict 0 sync OUT/otherdesk.slopebook --store CORA --squad Rowing
sync-leave 0 sync OUT/desk.slopebook --leave
include-set 0 include LOG --athlete Ada --lift Rising --session 2026-03-14 --set 1
)";

const std::pair<const char*, const char*> tables[]{
    {"reps",
     "date,athlete,lift,set,load_kg,rep,velocity,device,place,surface,outcome,reason,rpe,maximum,"
     "body_mass_kg,set_note\n"
     "2026-03-14,Ada,Rising,1,40,1,0.9,Encoder A,Hall,rubber,,,7.5,,61.2,\n"
     "2026-03-14,Ada,Rising,2,50,1,1.0,Encoder A,Hall,rubber,,,8,,61.2,n\xC3\xB6te\n"
     "2026-03-14,Ada,Rising,3,60,1,1.2,Encoder A,Hall,rubber,,,,1,61.2,\n"
     "2026-03-14,Ada,Rising,4,70,,,Encoder A,Hall,rubber,not lifted,slipped,,,61.2,\n"
     "2026-03-14,Ada,Pull,1,40,1,1.1,,,,,,,,61.2,\n"
     "2026-03-14,Ada,Pull,2,50,1,0.95,,,,,,,,61.2,\n"
     "2026-03-14,Ada,Pull,3,60,1,0.83,,,,,,,,61.2,\n"
     "2026-03-14,Ada,Pull,4,70,1,0.66,,,,,,,,61.2,\n"
     "2026-03-14,Bo,Odd lift,1,40,1,1.1,,,,,,,,,\n"
     "2026-03-14,Bo,Odd lift,2,60,1,0.9,,,,,,,,,\n"
     "2026-03-21,Bo,Odd lift,1,40,1,1.0,,,,,,,,,\n"
     "2026-03-21,Bo,Odd lift,2,60,1,0.85,,,,,,,,,\n"
     "2026-04-01,Bo,Odd lift,1,40,1,1.0,,,,,,,,,\n"},
    {"attempts",
     "date,athlete,test,value,session,side,contact_s,not_possible,surface,load_kg,lift\n"
     "2026-03-14,Ada,Countermovement jump,0.51,1,,,,turf,,\n"
     "2026-03-14,Ada,Countermovement jump,0.52,1,,,,turf,,\n"
     "2026-03-21,Ada,Countermovement jump,0.53,1,,,,turf,,\n"
     "2026-03-21,Ada,,,1,,,sore back,,100,Rising\n"},
    {"stations", "station,lift,test,ladder_kg,sets,rotates,device\n"
                 "Rack 1,Rising,,40 50 60,3,1,Encoder A\n"
                 "Mat,,Countermovement jump,,,0,\n"},
    {"rosters", "station,date,turn,athlete\nRack 1,2026-03-14,1,Ada\nRack 1,2026-03-14,2,Bo\n"},
    {"equipment", "equipment,piece,mass,unit,pairs,piece_name,equipment_note\n"
                  "Boathouse,bar,20,kg,,long bar,in the hall\nBoathouse,plate,45,lb,2,,\n"
                  "Boathouse,alone,26,kg,,bell,\nBoathouse,added,0.5,kg,,collar,\n"
                  "Boathouse,ceiling,150,kg,,,\n"},
    {"blocks", "block,first_day,last_day,ceiling_kg,trained,sessions_a_week_fewest,"
               "sessions_a_week_most,block_note\n"
               "Autumn,2026-03-01,2026-03-31,80,light and fast,2,2.5,a note\n"}};

} // namespace

class TestSchemas : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString path(const QString& name) const { return m_folder.filePath(name); }
    void write(const QString& name, const QByteArray& bytes) const {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly))
            qFatal("cannot write");
        file.write(bytes);
    }
    /// A jump on a force plate, by the impulse of a made-up push: standing, a push, in the air, and
    /// landing; 1000 Hz.
    static QByteArray jump(char cut, char mark) {
        QByteArray text = QByteArray("time_s") + cut + "force_N\n";
        for (int i = 0; i < 3000; ++i) {
            const double t = i / 1000.0;
            double force = 700;
            if (i >= 1200 && i < 1350)
                force = 700 - 350 * std::sin(3.14159265 * (i - 1200) / 150);
            else if (i >= 1350 && i < 1650)
                force = 700 + 1150 * std::sin(3.14159265 * (i - 1350) / 300);
            else if (i >= 1650 && i < 2150)
                force = 0;
            else if (i >= 2150 && i < 2350)
                force = 700 + 1500 * std::sin(3.14159265 * (i - 2150) / 200);
            QByteArray row =
                QByteArray::number(t, 'f', 3) + cut + QByteArray::number(force, 'f', 2);
            if (mark != '.')
                row.replace('.', mark);
            text += row + '\n';
        }
        return text;
    }

private Q_SLOTS:
    void initTestCase() {
        for (const auto& [name, rows] : tables)
            write(QLatin1String(name) + u".csv"_s, rows);
        write(u"jump.csv"_s, jump(',', '.'));
        write(u"jump semicolons.csv"_s, jump(';', ','));
        write(u"jump tabs.csv"_s, jump('\t', ','));
        QByteArray lift = "time_s,displacement_m\n"; // two reps up and down, half a metre
        for (int i = 0; i < 4000; ++i)
            lift += QByteArray::number(i / 500.0, 'f', 3) + ',' +
                    QByteArray::number(0.25 - 0.25 * std::cos(2 * 3.14159265 * i / 2000), 'f', 5) +
                    '\n';
        write(u"lift.csv"_s, lift);
        QByteArray flat = "time_s,force_N\n";
        for (int i = 0; i < 2000; ++i)
            flat += QByteArray::number(i / 1000.0, 'f', 3) + ",700\n";
        write(u"flat.csv"_s, flat);
        const QString log = path(u"log.slopebook"_s), out = m_folder.path();
        std::optional<slopebook::test::Postgres> server;
        try {
            server.emplace();
            server->sql("CREATE DATABASE squad", "postgres");
            server->addLogin("cora");
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        const QString store = QString::fromStdString(server->address("admin"));
        const QString cora = QString::fromStdString(server->address("cora"));
        for (const QString& line : QString::fromUtf8(asked).split(u'\n', Qt::SkipEmptyParts)) {
            QStringList words = QProcess::splitCommand(line);
            const QString name = words.takeFirst();
            const int exit = words.takeFirst().toInt();
            words.replaceInStrings(u"SAMPLE"_s, QStringLiteral(SLOPEBOOK_SAMPLE_LOG));
            words.replaceInStrings(u"LOG"_s, log);
            words.replaceInStrings(u"OUT"_s, out);
            words.replaceInStrings(u"STORE"_s, store);
            words.replaceInStrings(u"CORA"_s, cora);
            const Ran ran = runProgram(words + QStringList{u"--json"_s});
            QVERIFY2(ran.exit == exit,
                     qPrintable(name + u": "_s + QString::fromUtf8(ran.err + ran.out)));
            QVERIFY2(ran.err.isEmpty(), qPrintable(name + u": "_s + QString::fromUtf8(ran.err)));
            write(name + u".json"_s, ran.out);
        }
    }

    // Every command that takes --json has outputs here, and a schema.
    void everyCommandWithJsonHasASchema() {
        const QString help = QString::fromUtf8(runProgram({u"--help"_s}).out);
        static const QRegularExpression command(u"^  ([a-z]+) +[A-Z]"_s,
                                                QRegularExpression::MultilineOption);
        int commands = 0;
        for (auto it = command.globalMatch(help.section(u"Subcommands:"_s, 1)); it.hasNext();) {
            const QString name = it.next().captured(1);
            if (name == u"schema"_s)
                continue;
            ++commands;
            QVERIFY2(QString::fromUtf8(asked).contains(u'\n' + name + u'-'), qPrintable(name));
            const Ran ran = runProgram({u"schema"_s, u"--json"_s, name});
            QVERIFY2(ran.exit == 0 && ran.err.isEmpty(), ran.err);
            const QJsonObject schema = ran.json();
            QCOMPARE(schema[u"$schema"_s].toString(),
                     u"https://json-schema.org/draft/2020-12/schema"_s);
            write(name + u".schema.json"_s, ran.out);
        }
        QVERIFY(commands >= 20);
        const Ran none = runProgram({u"schema"_s, u"--json"_s, u"nothing"_s});
        QCOMPARE(none.exit, 2);
        QVERIFY2(none.err.contains("battery, "), none.err);
    }

    void everyOutputFitsItsSchema() {
        if (!haveModule(u"jsonschema"_s))
            QSKIP("PYTHON3-JSONSCHEMA IS NOT INSTALLED");
        const Ran ran = runPython(u"checkjson.py"_s, {m_folder.path()});
        QVERIFY2(ran.exit == 0, ran.out + ran.err);
    }

    // python3 and sqlite3 alone read the log by what schema says of it: every checksum comes out of
    // its recipe, and the first query gives the reps that an export has.
    void theFileIsWhatSchemaSays_data() {
        QTest::addColumn<QString>("log");
        QTest::newRow("the sample") << QStringLiteral(SLOPEBOOK_SAMPLE_LOG);
        QTest::newRow("a log with everything") << path(u"log.slopebook"_s);
    }
    void theFileIsWhatSchemaSays() {
        if (!haveTool(slopebook::tests::python))
            QSKIP("PYTHON3 IS NOT INSTALLED");
        QFETCH(QString, log);
        const Ran page = runProgram({u"schema"_s, log});
        QVERIFY2(page.exit == 0 && page.err.isEmpty(), page.err);
        write(u"page.md"_s, page.out);
        const Ran ran =
            runPython(u"readlog.py"_s, {log, path(u"page.md"_s), path(u"reps read.csv"_s)});
        QVERIFY2(ran.exit == 0, ran.out + ran.err);
        QCOMPARE(runProgram({u"schema"_s}).out, page.out); // a new log is laid out alike
        const QString folder = path(QString::fromUtf8(QTest::currentDataTag()));
        QCOMPARE(runProgram({u"export"_s, log, u"--into"_s, folder}).exit, 0);
        QFile reps(folder + u"/reps.csv"_s), read(path(u"reps read.csv"_s));
        QVERIFY(reps.open(QIODevice::ReadOnly) && read.open(QIODevice::ReadOnly));
        QSet<QByteArray> exported;
        for (const QByteArray& line : reps.readAll().split('\n')) {
            const auto cells = line.split(',');
            if (cells.size() > 7 && !cells[5].isEmpty() && cells[0] != "date")
                exported.insert(
                    cells[0] + cells[7] + cells[1] + cells[2] + cells[3] + ' ' + cells[5] + ' ' +
                    QByteArray::number(cells[4].toDouble() * 1000 + cells[6].toDouble(), 'f', 6));
        }
        QSet<QByteArray> found;
        const auto lines = read.readAll().trimmed().split('\n');
        for (const QByteArray& line : lines.mid(1)) {
            const auto cells = line.split(',');
            found.insert(
                cells[0] + cells[1] + cells[2] + cells[3] + cells[4] + ' ' + cells[6] + ' ' +
                QByteArray::number(cells[5].toDouble() * 1000 + cells[7].toDouble(), 'f', 6));
        }
        QVERIFY(!found.isEmpty());
        QCOMPARE(found, exported);
    }

    // The reader notices: one byte of a note, a column that the page does not tell.
    void theReaderNoticesWhatIsOtherwise() {
        if (!haveTool(slopebook::tests::python) || !haveTool(u"sqlite3"_s))
            QSKIP("PYTHON3 OR SQLITE3 IS NOT INSTALLED");
        const QString log = path(u"other.slopebook"_s);
        QVERIFY(QFile::copy(path(u"log.slopebook"_s), log));
        write(u"page.md"_s, runProgram({u"schema"_s, log}).out);
        for (const QString& change :
             {u"UPDATE athletes SET note = 'x'"_s, u"UPDATE reps SET velocity = velocity + 0.01"_s,
              u"UPDATE attempts SET value = value + 0.01"_s, u"UPDATE blocks SET trained = 'y'"_s,
              u"ALTER TABLE lifts ADD COLUMN colour TEXT"_s}) {
            QCOMPARE(slopebook::tests::runTool(u"sqlite3"_s, {log, change}).exit, 0);
            const Ran ran =
                runPython(u"readlog.py"_s, {log, path(u"page.md"_s), path(u"reps read.csv"_s)});
            QVERIFY2(ran.exit == 1 && !ran.out.startsWith("checksums"), ran.out + ran.err);
        }
        QVERIFY2(runPython(u"readlog.py"_s, {log, path(u"page.md"_s), path(u"reps read.csv"_s)})
                     .out.contains("the table lifts"),
                 "a column that the page does not tell");
    }

    // Devices write semicolons, tabs and decimal commas.
    void aTraceIsReadAlikeHoweverItIsWritten() {
        QByteArray first;
        for (const QString& name : {u"jump.csv"_s, u"jump semicolons.csv"_s, u"jump tabs.csv"_s}) {
            Ran ran = runProgram({u"trace"_s, path(name), u"--kind"_s, u"jump"_s, u"--json"_s});
            QVERIFY2(ran.exit == 0, ran.err);
            ran.out.replace(name.toUtf8(), "jump.csv");
            QVERIFY(ran.out.contains("\"samples\": 3000"));
            if (first.isEmpty())
                first = ran.out;
            QCOMPARE(ran.out, first);
        }
    }

    // Nothing is said where nothing is wrong, also where there is no folder of the user's own
    // (cron).
    void aPdfUnderCronSaysNothing() {
        QProcessEnvironment bare;
        bare.insert(u"PATH"_s, qEnvironmentVariable("PATH"));
        QProcess program;
        program.setProcessEnvironment(bare);
        program.start(QStringLiteral(SLOPEBOOK_PROGRAM),
                      {u"compare"_s, QStringLiteral(SLOPEBOOK_SAMPLE_LOG), u"--athlete"_s,
                       u"Cora"_s, u"--lift"_s, u"Bench pull"_s, u"--from"_s, u"2025-12-01"_s,
                       u"--to"_s, u"2026-05-04"_s, u"--pdf"_s, path(u"cron.pdf"_s)});
        QVERIFY(program.waitForFinished(120'000));
        QCOMPARE(program.exitCode(), 0);
        QCOMPARE(program.readAllStandardError(), QByteArray());
    }
};

QTEST_APPLESS_MAIN(TestSchemas)
#include "tst_schemas.moc"
