// SPDX-License-Identifier: GPL-3.0-or-later
// The commands run as programs: exit status, standard output and error, and what they leave on disk
// (commands.md).
#include "tests/system/program.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

using slopebook::tests::Ran;
using slopebook::tests::runProgram;

namespace {

const QByteArray header = "date,athlete,lift,set,load_kg,rep,velocity\n";
// Two ladders of five loads; a line of -0.01 m/s per kg from 1.5 m/s, then from 1.6 m/s, a little
// off it in turns.
QByteArray ladders() {
    QByteArray text = header;
    const QByteArray first[] = {"1.11", "0.99", "0.91", "0.79", "0.71"};
    const QByteArray second[] = {"1.21", "1.09", "1.01", "0.89", "0.81"};
    for (int i = 0; i < 5; ++i) {
        const QByteArray set = QByteArray::number(i + 1) + "," + QByteArray::number(40 + 10 * i);
        text += "2026-03-14,Lane 3,Bench pull," + set + ",1," + first[i] + "\n";
        text += "2026-04-14,Lane 3,Bench pull," + set + ",1," + second[i] + "\n";
    }
    return text;
}

} // namespace

class TestCommands : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    QString write(const char* name, const QByteArray& text) const {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            qFatal("cannot write");
        return file.fileName();
    }
    QStringList about(const char* command) const {
        return {QString::fromUtf8(command), path("log.slopebook"),    QStringLiteral("--athlete"),
                QStringLiteral("lane 3"),   QStringLiteral("--lift"), QStringLiteral("BENCH pull")};
    }
    static QStringList list(std::initializer_list<const char*> words) {
        QStringList all;
        for (const char* word : words)
            all << QString::fromUtf8(word);
        return all;
    }

private Q_SLOTS:
    void initTestCase() {
        const Ran made = runProgram(
            {QStringLiteral("import"), path("log.slopebook"), write("ladders.csv", ladders())});
        QVERIFY2(made.exit == 0, made.err);
        QVERIFY2(made.out.contains("10 sets") && made.out.contains("2 new sessions"), made.out);
        QVERIFY(made.err.isEmpty());
    }

    void importTwiceSaysSo() {
        const Ran again =
            runProgram({QStringLiteral("import"), path("log.slopebook"), path("ladders.csv")});
        QCOMPARE(again.exit, 0);
        QVERIFY2(again.out.contains("Nothing new"), again.out);
    }

    void importRefusesAndLeavesNoLog() {
        const Ran ran =
            runProgram({QStringLiteral("import"), path("none.slopebook"),
                        write("bad.csv", header + "2026-03-14,Lane 3,Bench pull,1,40,1,92\n")});
        QCOMPARE(ran.exit, 2);
        QVERIFY(ran.out.isEmpty());
        for (const char* part : {"bad.csv", "line 2", "column velocity", "\"92\"", "expected"})
            QVERIFY2(ran.err.contains(part), ran.err);
        QVERIFY(!QFile::exists(path("none.slopebook")));
        QVERIFY(!QFile::exists(path("none.slopebook-journal")));
    }

    void dryRunLeavesNoLog() {
        const Ran ran = runProgram({QStringLiteral("import"), path("none.slopebook"),
                                    path("ladders.csv"), QStringLiteral("--dry-run")});
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.contains("Would add 10 sets"), ran.out);
        QCOMPARE(QDir(m_folder.path()).entryList({QStringLiteral("none*")}), QStringList());
    }

    void importTakesAnyTableUnderAMap() {
        const QString table = write("sheet.csv", "when;Name;Last;v1;v2\n"
                                                 "03/04/2026;Ada;1.500;112;109\n"
                                                 "03/05/2026;Ada;60;87;\n");
        const Ran proposed = runProgram({QStringLiteral("import"), path("sheet.slopebook"), table,
                                         QStringLiteral("--propose")});
        QVERIFY2(proposed.exit == 0, proposed.err);
        QVERIFY(proposed.out.contains("column athlete: Name"));
        QVERIFY(proposed.out.contains("# to be said: the lift"));
        QVERIFY(!QFile::exists(path("sheet.slopebook")));
        QString map = QString::fromUtf8(proposed.out);
        const QStringList base{QStringLiteral("import"), path("sheet.slopebook"), table,
                               QStringLiteral("--map")};
        const Ran open = runProgram(base + QStringList{write("open.map", map.toUtf8())});
        QCOMPARE(open.exit, 2);
        QVERIFY2(open.err.contains("leaves something open"), open.err);
        map += QStringLiteral("column date: when\ndates: day month year\nall lift: Pull\n");
        map.replace(QStringLiteral("column velocity: "),
                    QStringLiteral("column velocity, decimal point, cm/s: "));
        map.replace(QStringLiteral("column velocity, decimal point: "),
                    QStringLiteral("column velocity, decimal point, cm/s: "));
        map.replace(QStringLiteral("column load, kg: "),
                    QStringLiteral("column load, decimal point, kg: "));
        const QStringList whole = base + QStringList{write("whole.map", map.toUtf8())};
        const Ran done = runProgram(whole);
        QVERIFY2(done.exit == 0, done.err + map.toUtf8());
        QVERIFY2(done.out.contains("Added 2 sets with 3 reps in 2 new sessions."), done.out);
        QVERIFY(runProgram(whole).out.contains("Nothing new"));
        const QString bad = write("bad.csv", "when;Name;Last;v1;v2\n31/02/2026;Ada;60;87;\n"
                                             "03/04/2026;Ada;heavy;87;\n");
        const Ran refused = runProgram({QStringLiteral("import"), path("bad.slopebook"), bad,
                                        QStringLiteral("--map"), path("whole.map")});
        QCOMPARE(refused.exit, 2);
        QVERIFY2(refused.err.contains("line 2") && refused.err.contains("line 3"), refused.err);
        QVERIFY(refused.err.contains("2 rows of 2 refused"));
        QVERIFY(!QFile::exists(path("bad.slopebook")));
    }

    void importTakesColumnsAndThresholds() {
        const QString file = write("german.csv", "date,athlete,lift,set,Gewicht,rep,v\n"
                                                 "2026-03-14,Ada,Squat,1,40,1,1.2\n");
        const QStringList base{QStringLiteral("import"), path("german.slopebook"), file,
                               QStringLiteral("--columns"),
                               QStringLiteral("load_kg=Gewicht,velocity=v")};
        const Ran ran = runProgram(base + list({"--mvt", "Squat=0.3"}));
        QVERIFY2(ran.exit == 0, ran.err);
        QCOMPARE(runProgram(base + list({"--mvt", "Squat"})).exit, 2);
        QCOMPARE(runProgram(base + list({"--mvt", "Squat=0,3"})).exit, 2);
        QCOMPARE(runProgram({QStringLiteral("import"), path("german.slopebook"), file,
                             QStringLiteral("--columns"), QStringLiteral("speed=v")})
                     .exit,
                 2);
    }

    void profileAnswers() {
        const Ran latest = runProgram(about("profile"));
        QVERIFY2(latest.exit == 0, latest.err);
        for (const char* part : {"Lane 3, Bench pull, 2026-04-14", "the latest of 2", "5 points",
                                 "40 to 80 kg", "published", "Caution"})
            QVERIFY2(latest.out.contains(part), latest.out);
        const Ran first = runProgram(about("profile") + list({"--session", "2026-03-14"}));
        QVERIFY2(first.out.contains("2026-03-14") && !first.out.contains("latest"), first.out);
    }

    void compareAnswers() {
        const Ran ran =
            runProgram(about("compare") + list({"--from", "2026-03-14", "--to", "2026-04-14"}));
        QVERIFY2(ran.exit == 0, ran.err);
        for (const char* part : {"2026-03-14 against 2026-04-14", "faster from", "+0.100",
                                 "Parallel lines", "Change of the estimated 1RM", "better"})
            QVERIFY2(ran.out.contains(part), ran.out);
    }

    void compareWritesThePage() {
        const QString page = path("page.pdf");
        const Ran ran = runProgram(about("compare") + list({"--from", "2026-03-14", "--to",
                                                            "2026-04-14", "--json", "--pdf"})
                                   << page);
        QVERIFY2(ran.exit == 0, ran.err);
        QVERIFY(ran.json().contains(QLatin1String("sentence")));
        QFile file(page);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.read(5) == "%PDF-");
        const Ran unwritable =
            runProgram(about("compare") + list({"--from", "2026-03-14", "--to", "2026-04-14",
                                                "--pdf", "/proc/none.pdf"}));
        QCOMPARE(unwritable.exit, 2);
        QVERIFY(!unwritable.err.isEmpty() && unwritable.out.isEmpty());
    }

    /// Of two files the first is not written where the second cannot be.
    void aSecondFileThatCannotBeLeavesTheFirstAlone() {
        const QString csv = write("first.csv", "mine");
        const QStringList asked = list({"battery"})
                                  << path("log.slopebook")
                                  << list({"--athlete", "Lane 3", "--from", "2026-03-14", "--to",
                                           "2026-04-14", "--replace", "--csv"})
                                  << csv;
        const Ran ran = runProgram(asked + list({"--pdf"}) << path("absent/page.pdf"));
        QVERIFY2(ran.exit != 0 && ran.err.contains("page.pdf"), ran.err);
        QFile file(csv);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("mine"));
        QCOMPARE(runProgram(asked).exit, 0); // what it would have written
        QVERIFY(QFile(csv).size() > 4);
    }

    void followAnswers() {
        const Ran ran = runProgram(about("follow") + list({"--load", "60"}));
        QVERIFY2(ran.exit == 0, ran.err);
        for (const char* part : {"60 kg through the season", "0.910", "1.010", "baseline"})
            QVERIFY2(ran.out.contains(part), ran.out);
        const Ran json = runProgram(about("follow") +
                                    list({"--load", "60", "--baseline", "2026-04-14", "--json"}));
        QCOMPARE(json.json()[QLatin1String("baseline")].toString(), QStringLiteral("2026-04-14"));
        QCOMPARE(json.json()[QLatin1String("sessions")].toArray().size(), 2);
    }

    void listAnswers() {
        const Ran ran = runProgram({QStringLiteral("list"), path("log.slopebook")});
        QCOMPARE(ran.exit, 0);
        QCOMPARE(ran.out.count('\n'), 3); // a header and two sessions
        const Ran json =
            runProgram({QStringLiteral("list"), path("log.slopebook"), QStringLiteral("--json")});
        const auto sessions = json.json()[QLatin1String("sessions")].toArray();
        QCOMPARE(sessions.size(), 2);
        QCOMPARE(sessions[0].toObject()[QLatin1String("n")].toInt(), 5);
        QCOMPARE(runProgram({QStringLiteral("list"), path("log.slopebook"),
                             QStringLiteral("--athlete"), QStringLiteral("Nobody")})
                     .exit,
                 2);
    }

    void noiseWithoutRepeatTestsHasNoAnswer() {
        const Ran ran = runProgram({QStringLiteral("noise"), path("log.slopebook")});
        QCOMPARE(ran.exit, 1);
        QVERIFY2(ran.out.contains("published, not yours"), ran.out);
        QVERIFY(ran.err.isEmpty());
    }

    void checkAndBackup() {
        const Ran check = runProgram({QStringLiteral("check"), path("log.slopebook")});
        QCOMPARE(check.exit, 0);
        QVERIFY(check.out.startsWith("Whole and sound"));
        const QStringList backup{QStringLiteral("backup"), path("log.slopebook"),
                                 path("copy.slopebook")};
        QVERIFY2(runProgram(backup).exit == 0, runProgram(backup).err);
        QCOMPARE(runProgram({QStringLiteral("check"), path("copy.slopebook")}).exit, 0);
        QCOMPARE(runProgram(backup).exit, 2); // never over a file that is there
        write("nolog.slopebook", "not a log at all");
        QCOMPARE(runProgram({QStringLiteral("check"), path("nolog.slopebook")}).exit, 2);
    }

    void exportAndImportGiveTheSameAnswers() {
        const Ran out = runProgram(
            {QStringLiteral("export"), path("log.slopebook"), QStringLiteral("--to"), path("out")});
        QVERIFY2(out.exit == 0, out.err);
        QStringList import{QStringLiteral("import"), path("back.slopebook")};
        const QDir folder(path("out"));
        for (const QString& name : folder.entryList({QStringLiteral("*.csv")}))
            import << folder.filePath(name);
        QCOMPARE(import.size(), 2 + 16);
        QVERIFY(QFile::exists(folder.filePath(QStringLiteral("log.xlsx"))));
        QVERIFY2(runProgram(import).exit == 0, runProgram(import).err);
        const auto listed = [&](const char* log) {
            return runProgram({QStringLiteral("list"), path(log), QStringLiteral("--json")}).out;
        };
        QCOMPARE(listed("back.slopebook"), listed("log.slopebook"));
        QCOMPARE(runProgram({QStringLiteral("export"), path("log.slopebook"),
                             QStringLiteral("--to"), path("out")})
                     .exit,
                 2);
    }

    void noAnswerIsOne_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QByteArray>("reason");
        QTest::newRow("a day without a session")
            << about("profile") + list({"--session", "2026-03-15"})
            << QByteArray("2026-03-14, 2026-04-14");
        QTest::newRow("a second session that is none")
            << about("profile") + list({"--session", "2026-03-14#2"}) << QByteArray("no session");
        QTest::newRow("compared with itself")
            << about("compare") + list({"--from", "2026-03-14", "--to", "2026-03-14"})
            << QByteArray("itself");
        QTest::newRow("a baseline that is none")
            << about("follow") + list({"--load", "60", "--baseline", "2020-01-01"})
            << QByteArray("no session");
    }
    void noAnswerIsOne() {
        QFETCH(QStringList, arguments);
        QFETCH(QByteArray, reason);
        const Ran text = runProgram(arguments);
        QCOMPARE(text.exit, 1);
        QVERIFY2(text.out.contains(reason), text.out);
        QVERIFY2(text.err.isEmpty(), text.err);
        const Ran json = runProgram(arguments + list({"--json"}));
        QCOMPARE(json.exit, 1);
        QVERIFY2(json.json()[QLatin1String("reason")].toString().toUtf8().contains(reason),
                 json.out);
    }

    void badUseIsTwo_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QByteArray>("message");
        QTest::newRow("an athlete that is not there")
            << QStringList{QStringLiteral("profile"),   path("log.slopebook"),
                           QStringLiteral("--athlete"), QStringLiteral("Lane 4"),
                           QStringLiteral("--lift"),    QStringLiteral("Bench pull")}
            << QByteArray("one of: Lane 3");
        QTest::newRow("a date that is none")
            << about("profile") + list({"--session", "14.03.2026"}) << QByteArray("2026-03-14");
        QTest::newRow("a session number that is none")
            << about("profile") + list({"--session", "2026-03-14#0"}) << QByteArray("2026-03-14#2");
        QTest::newRow("an option missing") << about("compare") << QByteArray("--from");
        QTest::newRow("an option unknown")
            << about("profile") + list({"--frobnicate"}) << QByteArray("frobnicate");
        QTest::newRow("a load with a comma")
            << about("follow") + list({"--load", "62,5"}) << QByteArray("decimal point");
        QTest::newRow("a log that is not there")
            << QStringList{QStringLiteral("list"), path("absent.slopebook")}
            << QByteArray("absent.slopebook");
        QTest::newRow("a file that is not there")
            << QStringList{QStringLiteral("import"), path("log.slopebook"), path("absent.csv")}
            << QByteArray("absent.csv");
    }
    void badUseIsTwo() {
        QFETCH(QStringList, arguments);
        QFETCH(QByteArray, message);
        const Ran ran = runProgram(arguments);
        QCOMPARE(ran.exit, 2);
        QVERIFY2(ran.out.isEmpty(), ran.out);
        QVERIFY2(ran.err.contains(message), ran.err);
        QVERIFY(!QFile::exists(path("absent.slopebook")));
    }

    void helpAndVersionAreDone() {
        const Ran help = runProgram({QStringLiteral("--help")});
        QCOMPARE(help.exit, 0);
        for (const char* command : {"import", "export", "list", "profile", "compare", "follow",
                                    "noise", "check", "backup"})
            QVERIFY2(help.out.contains(command), command);
        QCOMPARE(runProgram({QStringLiteral("--version")}).exit, 0);
    }
};

QTEST_APPLESS_MAIN(TestCommands)
#include "tst_commands.moc"
