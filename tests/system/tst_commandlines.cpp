// SPDX-License-Identifier: GPL-3.0-or-later
// Random command lines over a folder of files: logs under several names, tables, pages, links, a
// pipe, folders. Only files that were named as outputs may differ afterwards, and of those that
// were there only plain ones under --replace that are no log; a log named to be written to stays
// sound and loses nothing. And commands stopped by Ctrl+C, which leave all as it was or are done.
#include "core/log/log.h"
#include "tests/support/bytes.h"
#include "tests/support/longrun.h"
#include "tests/system/program.h"
#include "tests/system/randomlines.h"

#include <QCryptographicHash>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

#include <array>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <set>
#include <sys/stat.h>

using namespace slopebook;
using namespace slopebook::tests;
using namespace slopebook::test;

namespace {
namespace fs = std::filesystem;

void put(const fs::path& file, const std::string& bytes) {
    std::ofstream(file, std::ios::binary) << bytes;
}

/// What one name is: its kind, rights, and content or where it leads.
struct Thing {
    mode_t mode = 0;
    std::string content;
    friend bool operator==(const Thing&, const Thing&) = default;
};

std::map<std::string, Thing> stateOf(const fs::path& folder) {
    std::map<std::string, Thing> state;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        struct stat is {};
        ::lstat(entry.path().c_str(), &is);
        Thing thing{.mode = is.st_mode, .content = {}};
        if (S_ISLNK(is.st_mode))
            thing.content = fs::read_symlink(entry.path()).string();
        else if (S_ISREG(is.st_mode))
            thing.content = readBytes(entry.path());
        state[fs::relative(entry.path(), folder).string()] = thing;
    }
    return state;
}

const char* const table = "date,athlete,lift,set,load_kg,rep,velocity\n";

std::string ladders(int month) {
    std::string text = table;
    for (int day = 10; day < 12; ++day)
        for (int i = 0; i < 5; ++i)
            text += "2026-0" + std::to_string(month) + "-" + std::to_string(day) +
                    ",Lane 3,Bench pull," + std::to_string(i + 1) + "," +
                    std::to_string(40 + 10 * i) + ",1," +
                    std::to_string(1.1 - 0.1 * i + 0.01 * (i % 2)) + "\n";
    return text;
}

std::string jumps() {
    std::string text = "date,athlete,test,value\n";
    for (const char* date : {"2026-03-10", "2026-04-10"})
        for (const char* value : {"31.5", "32.1", "31.9"})
            text += std::string(date) + ",Lane 3,Countermovement jump," + value + "\n";
    return text;
}

} // namespace

class TestCommandLines : public QObject {
    Q_OBJECT
    QTemporaryDir m_place{fs::exists("/dev/shm") ? QStringLiteral("/dev/shm/slopebook-test-XXXXXX")
                                                 : QDir::tempPath() + QStringLiteral("/x-XXXXXX")};
    std::string m_log, m_other;

    fs::path folder() const { return fs::path(m_place.path().toStdString()) / "folder"; }
    fs::path at(const std::string& name) const { return folder() / name; }

    void build() {
        if (fs::exists(folder())) // its inside alone: somebody may stand in it
            for (const auto& entry : fs::directory_iterator(folder()))
                fs::remove_all(entry.path());
        fs::create_directories(at("sub"));
        for (const char* name : {"empty", "tables", "a.slopebook.backups"})
            fs::create_directory(at(name));
        put(at("a.slopebook"), m_log);
        put(at("b.slopebook"), m_other);
        put(at("log without ending"), m_log);
        put(at("a.slopebook.backups/2026-03-14T00:00:00Z.slopebook"), m_log);
        fs::create_hard_link(at("a.slopebook"), at("hard.slopebook"));
        fs::create_symlink("b.slopebook", at("link.slopebook"));
        fs::create_symlink("note.txt", at("to note"));
        fs::create_symlink("nothing there", at("dangling"));
        fs::create_directory_symlink(".", at("to folder"));
        ::mkfifo(at("pipe").c_str(), 0666);
        put(at("good.csv"), ladders(3));
        put(at("more.csv"), ladders(5));
        put(at("jumps.csv"), jumps());
        put(at("bad.csv"), ladders(6) + "2026-06-20,Lane 3,Bench pull,1,40,1,92\n");
        for (const char* name : {"note.txt", "sub/inner.txt", "read only.txt", "tables/reps.csv",
                                 "tables/mine.txt", "new.slopebook-journal", ".note.part1-0.txt"})
            put(at(name), std::string("mine: ") + name);
        put(at("page.pdf"), "%PDF-1.4 mine");
        fs::permissions(at("read only.txt"), fs::perms(0444));
    }

    // Whether a name may differ after that line, by how things stood before it.
    bool mayDiffer(const std::string& name, const Line& line,
                   const std::map<std::string, Thing>& before) const {
        const auto meant = [&](const std::string& output) {
            std::error_code error;
            return fs::weakly_canonical((at(output) / "").parent_path(), error);
        };
        const fs::path here = at(name);
        for (const auto& output : line.outputs) {
            const fs::path to = meant(output.name);
            const bool inIt = here.parent_path() == to && output.folder;
            const bool above = output.folder && to.native().starts_with(here.native() + "/");
            const auto old = before.find(name);
            if (above && old == before.end())
                return true; // a folder made for it
            if (here != to && !inIt)
                continue;
            if (old == before.end())
                return true;
            if (line.replace && S_ISREG(old->second.mode) &&
                !old->second.content.starts_with("SQLite format 3") && (!output.folder || inIt))
                return true;
        }
        if (line.writesTo.empty())
            return false;
        std::error_code error;
        const fs::path log = meant(line.writesTo);
        return here == log || (fs::exists(here) && fs::equivalent(here, log, error) && !error);
    }

    static qsizetype sets(const log::Log& log) {
        qsizetype all = 0;
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                all += static_cast<qsizetype>(log.session(session.id).sets.size());
        return all;
    }

private Q_SLOTS:
    void initTestCase() {
        fs::create_directories(folder());
        put(at("ladders.csv"), ladders(3));
        put(at("later.csv"), ladders(4));
        put(at("jumps.csv"), jumps());
        const auto in = [&](const char* name) { return QString::fromStdString(at(name).string()); };
        for (const char* log : {"one", "two"}) {
            const Ran ran = runProgram({QStringLiteral("import"), in(log), in("ladders.csv"),
                                        in("later.csv"), in("jumps.csv")});
            QVERIFY2(ran.exit == 0, ran.err);
        }
        m_log = readBytes(at("one"));
        m_other = readBytes(at("two"));
    }

    void onlyWhatWasNamedDiffers() {
        const int all = rounds("SLOPEBOOK_COMMANDS", 80, 20000);
        const std::uint64_t first = qEnvironmentVariableIsSet("SLOPEBOOK_SEED")
                                        ? qEnvironmentVariable("SLOPEBOOK_SEED").toULongLong()
                                        : 20260401;
        build();
        auto before = stateOf(folder());
        int wrote = 0, replaced = 0, refused = 0, answered = 0;
        const fs::path home = fs::current_path();
        fs::current_path(folder());
        for (int round = 0; round < all; ++round) {
            const std::uint64_t seed = first + static_cast<std::uint64_t>(round);
            const Line line = LineMonkey(seed).line();
            const QByteArray what =
                "SLOPEBOOK_COMMANDS=1 SLOPEBOOK_SEED=" + QByteArray::number(seed) + ": " +
                line.words.join(u'|').toUtf8();
            const qsizetype had = [&] {
                try {
                    return line.writesTo.empty()
                               ? 0
                               : sets(log::Log::open(at(line.writesTo), log::Access::ReadOnly));
                } catch (const std::exception&) {
                    return qsizetype(0);
                }
            }();
            const Ran ran = runProgram(line.words);
            const auto after = stateOf(folder());
            QVERIFY2(ran.exit >= 0 && ran.exit <= 2,
                     what + " ended with " + QByteArray::number(ran.exit) + ran.err);
            QVERIFY2((ran.exit == 2) == !ran.err.isEmpty(), what + "\n" + ran.err);
            bool changed = false;
            std::set<std::string> names;
            for (const auto& state : {before, after})
                for (const auto& [name, thing] : state)
                    names.insert(name);
            for (const std::string& name : names) {
                if (before.contains(name) && after.contains(name) &&
                    before.at(name) == after.at(name))
                    continue;
                changed = true;
                QVERIFY2(mayDiffer(name, line, before),
                         what + " changed " + QByteArray::fromStdString(name));
                QVERIFY2(after.contains(name),
                         what + " removed " + QByteArray::fromStdString(name));
                replaced += before.contains(name) && line.writesTo.empty() ? 1 : 0;
            }
            QVERIFY2(!changed || ran.exit == 0, what + " was refused, and changed something");
            if (ran.exit == 0 && !line.writesTo.empty() && changed) {
                const auto log = log::Log::open(at(line.writesTo), log::Access::ReadOnly);
                QVERIFY2(log.check().empty() && sets(log) >= had, what);
            }
            wrote += changed ? 1 : 0;
            refused += ran.exit == 2 ? 1 : 0;
            answered += ran.exit == 0 ? 1 : 0;
            if (changed) {
                build();
                before = stateOf(folder());
            }
        }
        fs::current_path(home);
        qInfo(
            "%d command lines from seed %llu: %d wrote (%d replaced a plain file), %d refused, %d "
            "done",
            all, static_cast<unsigned long long>(first), wrote, replaced, refused, answered);
        if (all >= 100)
            QVERIFY(wrote > all / 7 && replaced > 1 && refused > all / 7);
    }

    void standardOutputHoldsOneThing() {
        build();
        const auto in = [&](const char* name) { return QString::fromStdString(at(name).string()); };
        const QStringList about{QStringLiteral("--athlete"), QStringLiteral("Lane 3"),
                                QStringLiteral("--from"),    QStringLiteral("2026-03-10"),
                                QStringLiteral("--to"),      QStringLiteral("2026-04-10")};
        const QStringList lift{QStringLiteral("--lift"), QStringLiteral("Bench pull")};
        const QString log = in("a.slopebook"), dash = QStringLiteral("-");
        const auto before = stateOf(folder());
        const Ran page = runProgram(QStringList{QStringLiteral("compare"), log} + about + lift +
                                    QStringList{QStringLiteral("--pdf"), dash});
        QVERIFY2(page.exit == 0 && page.out.startsWith("%PDF") &&
                     page.out.trimmed().endsWith("%%EOF"),
                 page.err);
        const Ran csv = runProgram(QStringList{QStringLiteral("battery"), log} + about +
                                   QStringList{QStringLiteral("--csv"), dash});
        QVERIFY2(csv.exit == 0 && csv.out.startsWith("test,side,unit"), csv.err);
        QVERIFY(!csv.out.contains("Caution"));
        const Ran copy = runProgram({QStringLiteral("backup"), log, dash});
        QVERIFY2(copy.exit == 0 && copy.out.startsWith("SQLite format 3"), copy.err);
        for (const QStringList& two :
             {QStringList{QStringLiteral("--csv"), dash, QStringLiteral("--pdf"), dash},
              QStringList{QStringLiteral("--csv"), dash, QStringLiteral("--json")}})
            QCOMPARE(runProgram(QStringList{QStringLiteral("battery"), log} + about + two).exit, 2);
        QVERIFY(stateOf(folder()) == before);
        put(at("copied.slopebook"), copy.out.toStdString());
        QCOMPARE(runProgram({QStringLiteral("check"), in("copied.slopebook")}).exit, 0);
        // Two outputs under two spellings of one name: neither is written.
        const Ran twice = runProgram(QStringList{QStringLiteral("battery"), log} + about +
                                     QStringList{QStringLiteral("--csv"), in("one"),
                                                 QStringLiteral("--pdf"), in("sub/../one")});
        QVERIFY2(twice.exit == 2 && twice.err.contains("twice"), twice.err);
        QVERIFY(!fs::exists(at("one")));
    }

    // What is there and no log: refused, and how it is replaced all the same is said.
    void whatIsThereSaysHowItIsReplaced() {
        build();
        const auto in = [&](const char* name) { return QString::fromStdString(at(name).string()); };
        const auto before = stateOf(folder());
        for (const QStringList& words :
             {QStringList{QStringLiteral("backup"), in("a.slopebook"), in("note.txt")},
              QStringList{QStringLiteral("export"), in("a.slopebook"), QStringLiteral("--into"),
                          in("tables")},
              QStringList{QStringLiteral("battery"), in("a.slopebook"), QStringLiteral("--athlete"),
                          QStringLiteral("Lane 3"), QStringLiteral("--from"),
                          QStringLiteral("2026-03-10"), QStringLiteral("--to"),
                          QStringLiteral("2026-04-10"), QStringLiteral("--csv"), in("page.pdf")}}) {
            const Ran ran = runProgram(words);
            QCOMPARE(ran.exit, 2);
            QVERIFY2(ran.err.contains("choose another name, or --replace where it is no log. "
                                      "Nothing was changed."),
                     ran.err);
        }
        // A log is never replaced: nobody is told to try.
        const Ran log = runProgram({QStringLiteral("backup"), in("a.slopebook"), in("b.slopebook"),
                                    QStringLiteral("--replace")});
        QVERIFY2(log.exit == 2 && !log.err.contains("or --replace"), log.err);
        QVERIFY(stateOf(folder()) == before);
    }

    void stoppedItLeavesNothing() {
        build();
        std::string many = table;
        for (int day = 0; day < 150; ++day)
            for (int set = 1; set <= 6; ++set)
                many += isoDate(Date{std::chrono::sys_days{std::chrono::year{2010} / 1 / 1} +
                                     std::chrono::days{day}}) +
                        ",Lane 4,Bench pull," + std::to_string(set) + ",40,1,1.0\n";
        put(at("many.csv"), many);
        const auto in = [&](const char* name) { return QString::fromStdString(at(name).string()); };
        QVERIFY(runProgram({QStringLiteral("import"), in("big.slopebook"), in("many.csv")}).exit ==
                0);
        const auto before = stateOf(folder());
        const auto lineOf = [&](int which) {
            return QList<QStringList>{
                {QStringLiteral("import"), in("a.slopebook"), in("many.csv")},
                {QStringLiteral("import"), in("fresh.slopebook"), in("many.csv")},
                {QStringLiteral("export"), in("big.slopebook"), QStringLiteral("--into"),
                 in("out")},
                {QStringLiteral("backup"), in("big.slopebook"), in("copy.slopebook")}}[which];
        };
        const auto asBefore = [&] {
            fs::remove_all(at("out"));
            fs::remove(at("copy.slopebook"));
            fs::remove(at("fresh.slopebook"));
            put(at("a.slopebook"), m_log);
            return stateOf(folder()) == before;
        };
        std::mt19937_64 random(20260402);
        std::array<std::uint64_t, 4> took{}; // microseconds, undisturbed
        std::ptrdiff_t whole = 0;            // files of an export that nobody stopped
        int told = 0, dead = 0, done = 0;
        const int all = rounds("SLOPEBOOK_STOPS", 8, 1500);
        // A machine that is quick or busy is hit seldom in the middle: then it is tried on.
        for (int round = -4; round < all || (told == 0 && round < 20 * all); ++round) {
            const auto which = static_cast<std::size_t>((round + 4) % 4);
            QElapsedTimer clock;
            clock.start();
            QProcess program;
            program.start(QStringLiteral(SLOPEBOOK_PROGRAM), lineOf(static_cast<int>(which)));
            QVERIFY(program.waitForStarted());
            if (round >= 0) {
                ::usleep(static_cast<unsigned>(random() % took[which]));
                ::kill(static_cast<pid_t>(program.processId()), round % 8 < 4 ? SIGINT : SIGTERM);
            }
            QVERIFY(program.waitForFinished(60'000));
            if (round < 0)
                took[which] = static_cast<std::uint64_t>(clock.nsecsElapsed() / 1000);
            if (program.exitStatus() == QProcess::NormalExit && program.exitCode() == 0) {
                done += round < 0 ? 0 : 1;
                if (fs::exists(at("out")))
                    whole = std::distance(fs::directory_iterator(at("out")), {});
                QVERIFY(asBefore());
                continue;
            }
            QVERIFY(round >= 0);
            // Ended before it had begun anything, or stopped by itself and said so.
            const QByteArray said = program.readAllStandardError();
            const bool stopped = said.contains("Stopped. Nothing was changed.");
            QVERIFY2(stopped || program.exitStatus() == QProcess::CrashExit, said);
            (stopped ? told : dead) += 1;
            // Stopped after its last act, before it could say that it was done: whole as well.
            for (const char* log : {"copy.slopebook", "fresh.slopebook", "a.slopebook"})
                if (fs::exists(at(log)))
                    QVERIFY2(log::Log::open(at(log), log::Access::ReadOnly).check().empty(), log);
            if (fs::exists(at("out")))
                QCOMPARE(std::distance(fs::directory_iterator(at("out")), {}), whole);
            QVERIFY2(!stopped || stateOf(folder()) == before, said);
            QVERIFY2(asBefore(), said);
        }
        qInfo("%d stops: %d stopped in the middle, %d had not begun, %d were done",
              told + dead + done, told, dead, done);
        QVERIFY(told > 0);
    }
};

QTEST_GUILESS_MAIN(TestCommandLines)
#include "tst_commandlines.moc"
