// SPDX-License-Identifier: GPL-3.0-or-later
// What an import leaves behind when it fails, is interrupted, or meets another one; what it says of
// files that are empty, faulty, or full of names; and that no terminal obeys what files hold.
#include "core/log/log.h"
#include "tests/system/program.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>
#include <memory>

using namespace slopebook;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using slopebook::tests::startProgram;
using namespace Qt::Literals::StringLiterals;

namespace {

const QByteArray header = "date,athlete,lift,set,load_kg,rep,velocity\n";

/// Sets of one athlete, ten a day.
QByteArray manyRows(int rows, const QByteArray& athlete = "Ann") {
    QByteArray text = header;
    const QDate first(2000, 1, 1);
    for (int i = 0; i < rows; ++i)
        text += first.addDays(i / 10).toString(Qt::ISODate).toLatin1() + "," + athlete + ",Squat," +
                QByteArray::number(i % 10 + 1) + ",40,1,1.1\n";
    return text;
}

void obeysNothing(const QByteArray& text) {
    for (const QChar c : QString::fromUtf8(text))
        QVERIFY2(c == u'\n' || c == u'\t' ||
                     (c.category() != QChar::Other_Control && c.category() != QChar::Other_Format),
                 text.toHex());
    QVERIFY(QString::fromUtf8(text).toUtf8() == text); // and it is UTF-8
}

} // namespace

class TestImportCommand : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString& name) const { return m_folder->filePath(name); }
    QString write(const QString& name, const QByteArray& text) const {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            qFatal("cannot write");
        return file.fileName();
    }
    /// All names in the folder, hidden ones too.
    QStringList all() const {
        return QDir(m_folder->path())
            .entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot,
                       QDir::Name);
    }
    std::size_t sets(const QString& name) const {
        const auto log = log::Log::open(path(name).toStdString(), log::Access::ReadOnly);
        std::size_t count = 0;
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                count += log.session(session.id).sets.size();
        return count;
    }

private Q_SLOTS:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    // Two programs make the same log: what either was told had been added is there, whether the
    // other fails or not.
    void whatAnotherAddedIsNeverRemoved_data() {
        QTest::addColumn<bool>("fails");
        QTest::newRow("the slow one fails at its last row") << true;
        QTest::newRow("both go well") << false;
    }
    void whatAnotherAddedIsNeverRemoved() {
        QFETCH(bool, fails);
        const QString slow = write(
            u"slow.csv"_s, manyRows(4000) + (fails ? "2026-03-14,Ann,Squat,1,40,1,99\n" : ""));
        const QString quick = write(u"quick.csv"_s, header + "2026-03-14,Bob,Squat,1,40,1,1.1\n");
        for (int wait = 0; wait < 60; wait += 20) {
            const QString log = path(u"race%1.slopebook"_s.arg(wait));
            const auto first = startProgram({u"import"_s, log, slow});
            QTest::qSleep(wait);
            const Ran second = runProgram({u"import"_s, log, quick});
            QVERIFY(first->waitForFinished(60'000));
            QVERIFY2(second.exit == 0, second.err);
            QCOMPARE(first->exitCode(), fails ? 2 : 0);
            QVERIFY2(second.out.contains("Added 1 set "), second.out);
            QCOMPARE(sets(QFileInfo(log).fileName()), std::size_t(fails ? 1 : 4001));
            QVERIFY2(runProgram({u"check"_s, log}).exit == 0, "not sound");
        }
        QStringList left{u"quick.csv"_s, u"slow.csv"_s};
        for (int wait = 0; wait < 60; wait += 20)
            left << u"race%1.slopebook"_s.arg(wait);
        left.sort();
        QCOMPARE(all(), left);
    }

    // Ctrl+C, or a polite kill, at any moment: a new log is there whole or not at all, and nothing
    // else is; a log that was there is as it was, or has all of it.
    void interruptedItLeavesNothing_data() {
        QTest::addColumn<int>("signal");
        QTest::addColumn<bool>("isThere");
        QTest::newRow("Ctrl+C, a new log") << SIGINT << false;
        QTest::newRow("a kill, a new log") << SIGTERM << false;
        QTest::newRow("Ctrl+C, a log that is there") << SIGINT << true;
    }
    void interruptedItLeavesNothing() {
        QFETCH(int, signal);
        QFETCH(bool, isThere);
        constexpr int rows = 4000;
        const QString csv = write(u"many.csv"_s, manyRows(rows));
        const QString before = write(u"before.csv"_s, header + "2026-03-14,Bob,Squat,1,40,1,1.1\n");
        const auto fresh = [&](const QString& name) {
            if (isThere && runProgram({u"import"_s, path(name), before}).exit != 0)
                qFatal("no log to begin with");
        };
        fresh(u"whole.slopebook"_s);
        QElapsedTimer whole;
        whole.start();
        QCOMPARE(runProgram({u"import"_s, path(u"whole.slopebook"_s), csv}).exit, 0);
        const auto lasts = static_cast<unsigned long>(whole.elapsed());
        QVERIFY(QFile::remove(path(u"whole.slopebook"_s)));
        constexpr unsigned long moments = 6;
        int stopped = 0;
        for (unsigned long i = 1; i <= moments; ++i) {
            const QString name = u"stopped.slopebook"_s;
            fresh(name);
            const auto program = startProgram({u"import"_s, path(name), csv});
            QTest::qSleep(static_cast<int>(lasts * i / (moments + 1)));
            ::kill(static_cast<pid_t>(program->processId()), signal);
            QVERIFY(program->waitForFinished(60'000));
            const QByteArray said = program->readAllStandardError();
            const bool done =
                program->exitStatus() == QProcess::NormalExit && program->exitCode() == 0;
            if (!done) {
                ++stopped;
                QCOMPARE(program->exitStatus(), QProcess::CrashExit); // ended by the signal
                QVERIFY2(said.isEmpty() || said.contains("Stopped. Nothing was changed."), said);
            }
            QStringList left{u"before.csv"_s, u"many.csv"_s};
            // A signal may come when all is done but the end of the program: then all is there.
            if (const bool exists = QFile::exists(path(name)); exists) {
                left << name;
                const std::size_t held = sets(name), first = isThere ? 1 : 0;
                QVERIFY(held == rows + first || (isThere && !done && held == first));
                QVERIFY(!said.contains("Stopped.") || held == first);
            } else
                QVERIFY(!done && !isThere);
            QCOMPARE(all(), left);
            QFile::remove(path(name));
        }
        QVERIFY(stopped > 0);
    }

    void aFailureLeavesNothing() {
        const QString csv = write(u"bad.csv"_s, manyRows(100) + "x\n");
        for (const QStringList& more :
             {QStringList{csv}, QStringList{csv, u"--dry-run"_s}, QStringList{path(u"none.csv"_s)},
              QStringList{write(u"empty.csv"_s, {})},
              QStringList{write(u"good.csv"_s, manyRows(3)), u"--mvt"_s, u"Nothing=0.2"_s},
              QStringList{path(u"good.csv"_s), u"--dry-run"_s}}) {
            runProgram(QStringList{u"import"_s, path(u"new.slopebook"_s)} + more);
            for (const QString& name : all())
                QVERIFY2(name.endsWith(u".csv"_s), qPrintable(name));
        }
    }

    void aFileWithoutRowsIsToldSo() {
        const Ran ran =
            runProgram({u"import"_s, path(u"new.slopebook"_s), write(u"empty.csv"_s, header)});
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.contains("holds no rows") && ran.out.contains("empty.csv"), ran.out);
        QVERIFY2(!ran.out.contains("already"), ran.out);
    }

    void tenAreNamedAndTheRestCounted() {
        QByteArray text = header;
        for (int i = 100; i < 1100; ++i)
            text += "2026-03-14,Athlete " + QByteArray::number(i) + ",Lift " +
                    QByteArray::number(i) + ",1,40,1,5.5\n";
        const Ran ran =
            runProgram({u"import"_s, path(u"new.slopebook"_s), write(u"many.csv"_s, text)});
        QVERIFY2(ran.exit == 0, ran.err);
        for (const char* const named : {"Athlete ", "Lift ", "Taken, but worth a look: "}) {
            const auto count = ran.out.count(named);
            QVERIFY2(count >= 10 && count <= 11, ran.out);
        }
        QCOMPARE(ran.out.count("990 more"), 3);
    }

    void allFaultsAreTold() {
        QByteArray text = header;
        for (int i = 0; i < 200; ++i)
            text += "2026-03-14,Ann,Squat,1,40,1,99\n";
        const Ran few =
            runProgram({u"import"_s, path(u"new.slopebook"_s),
                        write(u"few.csv"_s,
                              header + "14.3.2026,Ann,Squat,1,x,1,99\n,Ann,Squat,1,40,1,1.1\n")});
        QCOMPARE(few.exit, 2);
        QCOMPARE(few.err.count("few.csv, line 2"), 3);
        QCOMPARE(few.err.count("few.csv, line 3"), 1);
        QVERIFY2(few.err.contains("4 faults; nothing was written."), few.err);
        const Ran many =
            runProgram({u"import"_s, path(u"new.slopebook"_s), write(u"many.csv"_s, text)});
        QCOMPARE(many.err.count("many.csv, line "), 50);
        QVERIFY2(many.err.contains("and 150 more; 200 faults"), many.err);
    }

    void aNearNameIsToldWithTheWayToSayYes() {
        const QString log = path(u"log.slopebook"_s);
        const QString known =
            write(u"known.csv"_s, header + "2026-03-14,Jos\xC3\xA9,Squat,1,40,1,1.1\n");
        const QString near = write(u"near.csv"_s, header + "2026-03-15,Jose,Squat,1,40,1,1.1\n");
        QCOMPARE(runProgram({u"import"_s, log, known}).exit, 0);
        for (const QStringList& more : {QStringList{}, QStringList{u"--dry-run"_s}}) {
            const Ran open = runProgram(QStringList{u"import"_s, log, near} + more);
            QCOMPARE(open.exit, 2);
            for (const char* part :
                 {"\"Jose\"", "\"Jos\xC3\xA9\"", "--same \"Jose=Jos\xC3\xA9\"", "--new \"Jose\""})
                QVERIFY2(open.err.contains(part), open.err);
        }
        const QString copy = path(u"copy.slopebook"_s);
        QVERIFY(QFile::copy(log, copy));
        const Ran same = runProgram({u"import"_s, log, near, u"--same"_s, u"Jose=JOS\u00C9"_s});
        QVERIFY2(same.exit == 0 && !same.out.contains("New athletes"), same.out + same.err);
        const Ran fresh = runProgram({u"import"_s, copy, near, u"--new"_s, u"jose"_s});
        QVERIFY2(fresh.exit == 0 && fresh.out.contains("New athletes: Jose"),
                 fresh.out + fresh.err);
        QCOMPARE(runProgram({u"import"_s, log, near, u"--same"_s, u"Jose"_s}).exit, 2);
        // By any spelling of the name.
        const Ran asked = runProgram(
            {u"profile"_s, log, u"--athlete"_s, u" JOSE\u0301"_s, u"--lift"_s, u"squat\u00A0"_s});
        QVERIFY2(asked.exit != 2, asked.err);
    }

    // Logs from before may hold one athlete twice: told, never put together.
    void twoSpellingsInALogAreTold() {
        {
            auto log = log::Log::create(path(u"old.slopebook"_s).toStdString());
            log.add(Athlete{.name = "Jos\xC3\xA9"}, AthleteId{1});
            log.add(Athlete{.name = "Jose\xCC\x81"}, AthleteId{2}); // put back as it stood
        }
        const Ran ran = runProgram({u"check"_s, path(u"old.slopebook"_s)});
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.contains("Whole and sound") &&
                     ran.out.contains("2 athletes have one name in different spellings"),
                 ran.out);
        // A row for such a name is refused unless it is spelled as one of them.
        const Ran row =
            runProgram({u"import"_s, path(u"old.slopebook"_s),
                        write(u"row.csv"_s, header + "2026-03-14,JOS\xC3\x89,Squat,1,40,1,1.1\n")});
        QCOMPARE(row.exit, 2);
        QVERIFY2(row.err.contains("line 2") && row.err.contains("spelled as there"), row.err);
    }

    // Nor what a log from before holds; JSON gives it back whole.
    void noTerminalObeysAnOldLog() {
        const std::string name = "A\t\x1B[31m\xC2\x9B\xE2\x80\xAE\xF3\xA0\x80\xA1\x7F\"B\"";
        {
            auto log = log::Log::create(path(u"old.slopebook"_s).toStdString());
            const AthleteId who = log.add(Athlete{.name = name}, AthleteId{1});
            const LiftId lift = log.add(Lift{.name = "Squat"});
            SessionHead head;
            head.athlete = who;
            head.date = Date{std::chrono::year{2026} / 3 / 14};
            log.add(log.add(head), lift, Set{.load = Mass{40'000}, .reps = {{1.1, {}}}});
        }
        const Ran text = runProgram({u"list"_s, path(u"old.slopebook"_s)});
        const Ran json = runProgram({u"list"_s, path(u"old.slopebook"_s), u"--json"_s});
        obeysNothing(text.out);
        obeysNothing(json.out);
        QCOMPARE(json.json()[u"sessions"_s].toArray().at(0).toObject()[u"athlete"_s].toString(),
                 QString::fromStdString(name));
    }

    // Whatever files, names and arguments hold.
    void noTerminalObeysWhatFilesHold() {
        const QByteArray evil = "\x1B]0;x\x07\x1B[2J\xC2\x9B"
                                "31m\xE2\x80\xAE\x7F\x08";
        const QString log = path(u"log.slopebook"_s);
        const QString file =
            write(u"\u001B[31mevil.csv"_s, "date,athlete,lift,set,load_kg,rep,velocity,x" + evil +
                                               "\n2026-03-14,Ann" + evil + ",Squat" + evil +
                                               ",1,40,1,5.5\n");
        QList<QStringList> runs{
            {u"import"_s, log, file},
            {u"list"_s, log},
            {u"list"_s, log, u"--json"_s},
            {u"check"_s, log},
            {u"import"_s, log,
             write(u"bad.csv"_s, header + "2026-03-14,Ann,Squat,1," + evil + ",1,1\n")},
            {u"import"_s, log, write(u"head.csv"_s, evil + "," + header)},
            {u"import"_s, log, write(u"table.csv"_s, "a" + evil + ";b\n1;2\n"), u"--propose"_s},
            {u"profile"_s, log, u"--athlete"_s, QString::fromUtf8(evil), u"--lift"_s, u"x"_s},
            {u"profile"_s, path(QString::fromUtf8(evil)), u"--athlete"_s, u"x"_s, u"--lift"_s,
             u"x"_s},
            {QString::fromUtf8(evil), u"x"_s},
            {u"import"_s, log, file, u"--"_s + QString::fromUtf8(evil)}};
        for (const QStringList& arguments : runs) {
            const Ran ran = runProgram(arguments);
            QVERIFY(ran.exit >= 0);
            QVERIFY(!(ran.out + ran.err).isEmpty());
            obeysNothing(ran.out);
            obeysNothing(ran.err);
        }
    }
};

QTEST_GUILESS_MAIN(TestImportCommand)
#include "tst_importcommand.moc"
