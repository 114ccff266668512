// SPDX-License-Identifier: GPL-3.0-or-later
// report, run as a program: a squad page for each lift with enough athletes and a page for each
// athlete, in a folder that is whole or is not there; names of any kind; stopped and killed.
#include "core/log/log.h"
#include "tests/log/builders.h"
#include "tests/system/program.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonArray>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>
#include <memory>

using namespace slopebook;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;
using namespace Qt::Literals::StringLiterals;

namespace {

const QStringList seasons{u"--from"_s, u"Winter flood"_s, u"--to"_s, u"Spring"_s};

QString paperOf(const QString& file) {
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-layout"_s, file, u"-"_s});
    reader.waitForFinished();
    return QString::fromUtf8(reader.readAllStandardOutput());
}

} // namespace

class TestReportCommand : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString& name) const { return m_folder->filePath(name); }
    /// All names in a folder, hidden ones too.
    static QStringList allIn(const QString& folder) {
        return QDir(folder).entryList(
            QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
    }
    QStringList report(const QString& log, const QString& into,
                       const QStringList& more = {}) const {
        return QStringList{u"report"_s, log} + seasons + QStringList{u"--into"_s, into} + more;
    }
    static QString sample() { return QStringLiteral(SLOPEBOOK_SAMPLE_LOG); }
    /// What the index lists.
    static QStringList listed(const QString& folder) {
        QFile index(QDir(folder).filePath(u"index.csv"_s));
        if (!index.open(QIODevice::ReadOnly))
            return {};
        QStringList files;
        const auto lines = index.readAll().split('\n');
        for (const QByteArray& line : lines.mid(1))
            if (const QString file = QString::fromUtf8(line.left(line.indexOf(',')));
                file.endsWith(u".pdf"_s))
                files << file;
        return files;
    }
    static void isWhole(const QString& folder) {
        QStringList files = listed(folder) + QStringList{u"index.csv"_s};
        files.sort();
        QCOMPARE(allIn(folder), files);
        for (const QString& file : files)
            if (file.endsWith(u".pdf"_s)) {
                QFile pdf(QDir(folder).filePath(file));
                QVERIFY(pdf.open(QIODevice::ReadOnly));
                const QByteArray bytes = pdf.readAll();
                QVERIFY2(bytes.startsWith("%PDF-") && bytes.trimmed().endsWith("%%EOF"),
                         qPrintable(file));
            }
    }

private Q_SLOTS:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    void aPageEachAndAnIndex() {
        const Ran ran = runProgram(report(sample(), path(u"out"_s)));
        QVERIFY2(ran.exit == 0, ran.err + ran.out);
        QVERIFY2(ran.err.isEmpty(), ran.err); // no terminal, nothing wrong
        isWhole(path(u"out"_s));
        const QStringList files = listed(path(u"out"_s));
        QVERIFY(files.contains(u"squad Bench pull.pdf"_s));
        QVERIFY(files.contains(u"athlete Cora.pdf"_s));
        for (const QString& file : files)
            QVERIFY2(ran.out.contains(file.toUtf8()), qPrintable(file));
        QCOMPARE(allIn(m_folder->path()), QStringList{u"out"_s}); // nothing beside it
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: the pages are not read back (poppler-utils)");
        const QString squad = paperOf(path(u"out/squad Bench pull.pdf"_s));
        for (const QString& part : {u"Winter flood"_s, u"Mean change of"_s, u"Drawn to all"_s,
                                    u"Better or worse in something"_s, u"Cora"_s})
            QVERIFY2(squad.contains(part), qPrintable(part));
        const QString cora = paperOf(path(u"out/athlete Cora.pdf"_s));
        for (const QString& part : {u"Cora"_s, u"Bench pull"_s, u"Spring"_s})
            QVERIFY2(cora.contains(part), qPrintable(part));
    }

    void jsonListsWhatWasWritten() {
        const Ran ran = runProgram(report(sample(), path(u"out"_s), {u"--json"_s}));
        QVERIFY2(ran.exit == 0 && ran.err.isEmpty(), ran.err);
        QStringList files;
        for (const auto& each : ran.json()[u"files"_s].toArray()) {
            files << each.toObject()[u"file"_s].toString();
            QVERIFY(!each.toObject()[u"says"_s].toString().isEmpty());
        }
        QCOMPARE(files, listed(path(u"out"_s)));
        for (const auto& each : ran.json()[u"left_out"_s].toArray())
            QVERIFY(!each.toObject()[u"reason"_s].toString().isEmpty());
    }

    /// The squad page says what the command squad says.
    void theSquadPageHasTheCommandsFigures() {
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
        QCOMPARE(runProgram(report(sample(), path(u"out"_s))).exit, 0);
        const Ran squad = runProgram(QStringList{u"squad"_s, sample(), u"--lift"_s, u"Bench pull"_s,
                                                 u"--due"_s, u"2026-05-11"_s} +
                                     seasons);
        QVERIFY2(squad.exit == 0, squad.err);
        const QString paper =
            paperOf(path(u"out/squad Bench pull.pdf"_s)).simplified().replace(u"\u2212"_s, u"-"_s);
        int told = 0;
        for (const QByteArray& line : squad.out.split('\n'))
            if (line.startsWith("Mean change of") ||
                line.startsWith("Better or worse in something")) {
                ++told;
                QVERIFY2(paper.contains(QString::fromUtf8(line).simplified()),
                         line + paper.toUtf8());
            }
        QVERIFY(told >= 3);
    }

    void refusesWhatIsThere() {
        QVERIFY(QDir().mkpath(path(u"out"_s)));
        QFile mine(path(u"out/mine.txt"_s));
        QVERIFY(mine.open(QIODevice::WriteOnly) && mine.write("mine") == 4);
        mine.close();
        const Ran ran = runProgram(report(sample(), path(u"out"_s)));
        QCOMPARE(ran.exit, 2);
        QVERIFY2(ran.err.contains("--replace"), ran.err);
        QCOMPARE(allIn(path(u"out"_s)), QStringList{u"mine.txt"_s});
        QCOMPARE(runProgram(report(sample(), path(u"out"_s), {u"--replace"_s})).exit, 0);
        QVERIFY(allIn(path(u"out"_s)).contains(u"mine.txt"_s)); // what else it holds stays
        QVERIFY(allIn(path(u"out"_s)).contains(u"athlete Cora.pdf"_s));
        QCOMPARE(runProgram(report(sample(), path(u"out"_s), {u"--replace"_s})).exit, 0);
        QCOMPARE(runProgram(report(sample(), u"-"_s)).exit, 2);
        QCOMPARE(allIn(m_folder->path()), QStringList{u"out"_s});
    }

    void refusesDaysOnBothSidesAndNoAnswer() {
        const auto run = [&](const char* from, const char* to) {
            return runProgram({u"report"_s, sample(), u"--from"_s, QString::fromLatin1(from),
                               u"--to"_s, QString::fromLatin1(to), u"--into"_s, path(u"out"_s)});
        };
        QCOMPARE(run("Spring", "2026-03-14..2026-03-20").exit, 2);
        QCOMPARE(run("Spring", "Summer").exit, 2);
        const Ran none = run("2020-01-01", "2020-02-01..2020-02-20");
        QCOMPARE(none.exit, 1);
        QVERIFY2(none.out.startsWith("No answer"), none.out);
        QVERIFY(allIn(m_folder->path()).isEmpty());
    }

    /// Names that file systems refuse, that differ by case alone, and that lead out of the folder.
    void anyName() {
        const std::vector<std::string> names{"../../evil", "Ann",  "ann b", "A-B", "a/b",
                                             "a:b",        "=1+1", "..x.",  "Jörg"};
        {
            test::Folder folder;
            log::Log log = log::Log::create(path(u"names.slopebook"_s).toStdString());
            const LiftId lift = log.add(Lift{.name = "Bench/pull",
                                             .mvt = Mvt{.value = 0.5, .source = "own tests"},
                                             .smallestVelocity = 0.04});
            int i = 0;
            for (const std::string& name : names) {
                const AthleteId athlete = log.add(Athlete{.name = name});
                log.setCheckLoads(athlete, lift, {Mass{60'000}});
                for (const Date date : {test::day(2025, 10, 1), test::day(2026, 1, 20)}) {
                    const SessionId session =
                        log.add(SessionHead{.athlete = athlete, .date = date});
                    for (int set = 0; set < 5; ++set)
                        log.add(session, lift,
                                test::ladderSet(40 + 10 * set, {1.5 + 0.002 * ++i / 10 - 0.1 * set +
                                                                (set % 2 == 0 ? 0.01 : -0.01)}));
                }
            }
        }
        const Ran ran =
            runProgram({u"report"_s, path(u"names.slopebook"_s), u"--from"_s, u"2025-10-01"_s,
                        u"--to"_s, u"2026-01-20"_s, u"--into"_s, path(u"out"_s)});
        QVERIFY2(ran.exit == 0 && ran.err.isEmpty(), ran.err);
        isWhole(path(u"out"_s));
        const QStringList files = listed(path(u"out"_s));
        QCOMPARE(files.size(), qsizetype(names.size()) + 1);
        QSet<QString> lower;
        for (const QString& file : files)
            lower << file.toLower();
        QCOMPARE(lower.size(), files.size());
        QCOMPARE(allIn(m_folder->path()), (QStringList{u"names.slopebook"_s, u"out"_s}));
        QFile index(path(u"out/index.csv"_s));
        QVERIFY(index.open(QIODevice::ReadOnly));
        QVERIFY(index.readAll().contains(",'=1+1,")); // no spreadsheet takes a name for a formula
    }

    /// Ctrl+C, a polite kill and one that nothing can catch, at any moment: the folder is whole or
    /// not there; after a polite one nothing else is either.
    void stoppedItLeavesNothing_data() {
        QTest::addColumn<int>("signal");
        QTest::newRow("Ctrl+C") << SIGINT;
        QTest::newRow("a polite kill") << SIGTERM;
        QTest::newRow("killed") << SIGKILL;
    }
    void stoppedItLeavesNothing() {
        QFETCH(int, signal);
        QElapsedTimer whole;
        whole.start();
        QCOMPARE(runProgram(report(sample(), path(u"whole"_s))).exit, 0);
        const auto lasts = whole.elapsed();
        QVERIFY(QDir(path(u"whole"_s)).removeRecursively());
        constexpr int moments = 5;
        int stopped = 0;
        for (int i = 1; i <= moments; ++i) {
            QProcess program;
            program.start(QStringLiteral(SLOPEBOOK_PROGRAM), report(sample(), path(u"out"_s)));
            program.closeWriteChannel();
            QVERIFY(program.waitForStarted());
            QTest::qSleep(static_cast<int>(lasts * i / (moments + 1)));
            ::kill(static_cast<pid_t>(program.processId()), signal);
            QVERIFY(program.waitForFinished(60'000));
            const QByteArray said = program.readAllStandardError();
            const bool done =
                program.exitStatus() == QProcess::NormalExit && program.exitCode() == 0;
            if (!done) {
                ++stopped;
                QCOMPARE(program.exitStatus(), QProcess::CrashExit); // ended by the signal
                QVERIFY2(said.isEmpty() || said.contains("Stopped. Nothing was changed."), said);
            }
            if (QFile::exists(path(u"out"_s)))
                isWhole(path(u"out"_s));
            else
                QVERIFY(!done);
            QStringList left = allIn(m_folder->path());
            left.removeAll(u"out"_s);
            if (signal == SIGKILL) // what is left is swept by the next
                for (const QString& name : left)
                    QVERIFY2(name.contains(u"out"_s) && name != u"out"_s, qPrintable(name));
            else
                QVERIFY2(left.isEmpty(), qPrintable(left.join(u' ')));
            QDir(path(u"out"_s)).removeRecursively();
        }
        QVERIFY(stopped > 0);
    }
};

QTEST_GUILESS_MAIN(TestReportCommand)
#include "tst_reportcommand.moc"
