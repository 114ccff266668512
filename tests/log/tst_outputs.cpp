// SPDX-License-Identifier: GPL-3.0-or-later
// How a file of the program's comes to stand on disk: over nothing that was not to be replaced,
// never over a log or what belongs to one, whole or not at all; and what killed programs left.
#include "core/log/backups.h"
#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/newfolder.h"
#include "core/log/strays.h"
#include "tests/log/builders.h"
#include "tests/log/child.h"
#include "tests/log/rawfile.h"

#include <fcntl.h>
#include <fstream>
#include <set>
#include <sys/stat.h>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::log;

namespace {
namespace fs = std::filesystem;
using Kind = LogError::Kind;

void write(const fs::path& file, const std::string& text) {
    std::ofstream(file, std::ios::binary) << text;
}

void age(const fs::path& file, int seconds) {
    fs::last_write_time(file, fs::file_time_type::clock::now() - std::chrono::seconds(seconds));
}

std::set<std::string> names(const fs::path& folder) {
    std::set<std::string> all;
    for (const auto& entry : fs::directory_iterator(folder))
        all.insert(entry.path().filename().string());
    return all;
}

/// The number of a process that has ended and been waited for.
pid_t goneProcess() {
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(0);
    ::waitpid(child, nullptr, 0);
    return child;
}
} // namespace

class TestOutputs : public QObject {
    Q_OBJECT
    Folder m_folder;
    fs::path in(const std::string& name) const { return m_folder.path("") / name; }

private Q_SLOTS:
    void initTestCase() {
        Log log = Log::create(in("a.slopebook"));
        fillSeason(log);
        backUpWhenDue(log, std::chrono::sys_days{day(2026, 3, 14)});
        fs::copy_file(in("a.slopebook"), in("renamed.txt"));
        fs::create_symlink(in("a.slopebook"), in("link"));
        fs::create_hard_link(in("a.slopebook"), in("second name"));
        fs::create_symlink(fs::path(m_folder.path("")), in("folder link"));
        // Cut short in its first page, its journal still there.
        write(in("torn"), "half a page");
        write(in("torn-journal"), "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7 and so on");
    }

    void neverALog_data() {
        QTest::addColumn<QString>("name");
        for (const char* name :
             {"a.slopebook", "renamed.txt", "link", "second name", "folder link/a.slopebook",
              "./a.slopebook.backups/../a.slopebook", "a.slopebook-journal", "a.slopebook-wal",
              "link-journal", "a.slopebook.backups/2026-03-14T00:00:00Z.slopebook", "torn",
              "torn-journal"})
            QTest::newRow(name) << QString::fromUtf8(name);
    }
    void neverALog() {
        QFETCH(QString, name);
        fs::path file = in(name.toStdString());
        if (name.contains(u"backups/2026"))
            file = backups(in("a.slopebook")).front().file;
        const bool there = fs::exists(file);
        const std::string before = there ? readBytes(file) : std::string();
        const auto around = names(in(""));
        for (const bool open : {false, true}) { // by a program that has the log open, too
            std::optional<Log> log;
            if (open)
                log.emplace(Log::open(in("a.slopebook")));
            for (const auto existing : {Existing::Refuse, Existing::Replace}) {
                QCOMPARE(errorOf([&] { writeWhole({file, existing}, "%PDF"); }), Kind::Conflict);
                QCOMPARE(errorOf([&] { requireWritable(file, existing); }), Kind::Conflict);
                QCOMPARE(errorOf([&] { NewFolder(file, existing).giveName(); }), Kind::Conflict);
            }
        }
        QCOMPARE(fs::exists(file), there);
        QVERIFY(!there || readBytes(file) == before);
        QCOMPARE(names(in("")), around);
    }

    // Closing a file drops the locks that the process holds on it: looking whether it is a log must
    // not (POSIX, fcntl). SQLite's shared lock lies at 0x40000002 (sqlite.org/src, os_unix.c).
    void lookingLeavesTheLocksOfAnOpenLog() {
        Log log = Log::open(in("a.slopebook"));
        const auto locked = [&] {
            return inChild([&] {
                const int file = ::open(in("a.slopebook").c_str(), O_RDWR);
                struct flock lock {};
                lock.l_type = F_WRLCK;
                lock.l_whence = SEEK_SET;
                lock.l_start = 0x40000002;
                lock.l_len = 510;
                ::fcntl(file, F_GETLK, &lock);
                return lock.l_type == F_UNLCK ? 0 : 1;
            });
        };
        QCOMPARE(locked(), 0);
        log.together([&] {
            log.add(Athlete{.name = "Cox"});
            QCOMPARE(locked(), 1);
            QVERIFY(holdsLog(in("a.slopebook")));
            QVERIFY(holdsLog(in("second name")));
            QCOMPARE(locked(), 1);
        });
    }

    void onlyWhatIsNoPlainFileIsNeverReplaced_data() {
        QTest::addColumn<QString>("kind");
        for (const char* kind : {"pipe", "folder", "link to nothing", "link to a folder", "socket"})
            QTest::newRow(kind) << QString::fromUtf8(kind);
    }
    void onlyWhatIsNoPlainFileIsNeverReplaced() {
        QFETCH(QString, kind);
        const Folder folder;
        const auto file = folder.path("x");
        if (kind == u"pipe")
            QCOMPARE(::mkfifo(file.c_str(), 0666), 0);
        else if (kind == u"folder")
            fs::create_directory(file);
        else if (kind == u"socket")
            QCOMPARE(::mknod(file.c_str(), S_IFSOCK | 0666, 0), 0);
        else if (kind == u"link to nothing")
            fs::create_symlink(folder.path("nothing"), file);
        else
            fs::create_symlink(folder.path(""), file);
        const auto before = fs::symlink_status(file).type();
        for (const auto existing : {Existing::Refuse, Existing::Replace})
            QCOMPARE(errorOf([&] { writeWhole({file, existing}, "new"); }), Kind::Conflict);
        QCOMPARE(fs::symlink_status(file).type(), before);
        QCOMPARE(names(folder.path("")), std::set<std::string>{"x"});
    }

    void aPlainFileIsReplacedOnlyWhereThatIsAsked() {
        const Folder folder;
        const auto file = folder.path("x");
        write(file, "mine");
        fs::permissions(file, fs::perms(0640));
        fs::create_symlink("x", folder.path("to x"));
        QCOMPARE(errorOf([&] { writeWhole({file, Existing::Refuse}, "new"); }), Kind::Conflict);
        QVERIFY_THROWS_EXCEPTION(AlreadyThere, writeWhole({file, Existing::Refuse}, "new"));
        QVERIFY_THROWS_EXCEPTION(AlreadyThere, renameToFree(folder.path("to x"), file));
        QCOMPARE(readBytes(file), std::string("mine"));
        writeWhole({file, Existing::Replace}, "new");
        QCOMPARE(readBytes(file), std::string("new"));
        QVERIFY(fs::status(file).permissions() == fs::perms(0640));
        // A link is followed, and stays one.
        QCOMPARE(errorOf([&] { writeWhole(folder.path("to x"), "n"); }), Kind::Conflict);
        writeWhole({folder.path("to x"), Existing::Replace}, "newer");
        QVERIFY(fs::is_symlink(folder.path("to x")));
        QCOMPARE(readBytes(file), std::string("newer"));
        QCOMPARE(names(folder.path("")), (std::set<std::string>{"x", "to x"}));
        writeWhole({folder.path("y"), Existing::Replace}, "fresh");
        QCOMPARE(readBytes(folder.path("y")), std::string("fresh"));
        QCOMPARE(errorOf([&] { writeWhole(folder.path("none/z"), "new"); }), Kind::Unavailable);
    }

    // Whatever comes to stand under the name while the file is being made stays.
    void noRaceReplacesAnything() {
        const Folder folder;
        const auto file = folder.path("x");
        {
            NewFile made(file, Existing::Replace);
            write(file, "another's"); // was not there when it was looked at
            QCOMPARE(errorOf([&] { made.giveName(); }), Kind::Conflict);
        }
        QCOMPARE(readBytes(file), std::string("another's"));
        {
            NewFile made(file, Existing::Replace);
            fs::copy_file(in("a.slopebook"), folder.path("log"));
            fs::rename(folder.path("log"), file); // a log is put in the place of what was looked at
            QCOMPARE(errorOf([&] { made.giveName(); }), Kind::Conflict);
        }
        QVERIFY(readBytes(file) == readBytes(in("a.slopebook")));
        {
            NewFolder made(folder.path("out"), Existing::Refuse);
            write(made.path() / "a.csv", "a");
            fs::create_directory(folder.path("out"));
            write(folder.path("out") / "a.csv", "mine");
            QCOMPARE(errorOf([&] { made.giveName(); }), Kind::Conflict);
        }
        QCOMPARE(readBytes(folder.path("out") / "a.csv"), std::string("mine"));
        QCOMPARE(names(folder.path("")), (std::set<std::string>{"x", "out"}));
    }

    void aFolderThatIsThereKeepsWhatElseItHolds() {
        const Folder folder;
        const auto out = folder.path("out");
        fs::create_directory(out);
        write(out / "a.csv", "old");
        write(out / "note.txt", "mine");
        const auto make = [&](Existing existing, const char* name) {
            NewFolder made(out, existing);
            write(made.path() / name, "new");
            made.giveName();
        };
        QCOMPARE(errorOf([&] { make(Existing::Refuse, "a.csv"); }), Kind::Conflict);
        make(Existing::Replace, "a.csv");
        QCOMPARE(readBytes(out / "a.csv"), std::string("new"));
        QCOMPARE(readBytes(out / "note.txt"), std::string("mine"));
        fs::copy_file(in("a.slopebook"), out / "b.csv"); // a log under a table's name
        QCOMPARE(errorOf([&] { make(Existing::Replace, "b.csv"); }), Kind::Conflict);
        QVERIFY(readBytes(out / "b.csv") == readBytes(in("a.slopebook")));
        QCOMPARE(errorOf([&] { NewFolder(in("a.slopebook.backups"), Existing::Replace); }),
                 Kind::Conflict);
        { NewFolder untouched(folder.path("p/q/r"), Existing::Refuse); } // its parents go with it
        QCOMPARE(names(folder.path("")), (std::set<std::string>{"out"}));
    }

    void anyNameCanBeWritten() {
        const Folder folder;
        const std::string longest(255, 'n');
        std::string umlauts;
        for (int i = 0; i < 127; ++i)
            umlauts += "ü";
        for (const std::string& name : {longest, umlauts, std::string("-x"), std::string("a\nb")}) {
            writeWhole(folder.path("") / name, "x");
            QCOMPARE(readBytes(folder.path("") / name), std::string("x"));
        }
    }

    // A file of that name would be taken for the journal of the log that is made there.
    void noLogIsMadeBesideSomebodysJournal() {
        const Folder folder;
        write(folder.path("new.slopebook-journal"), "my journal");
        QCOMPARE(errorOf([&] { Log::create(folder.path("new.slopebook")); }), Kind::Conflict);
        QCOMPARE(errorOf([&] {
                     std::ignore =
                         Log::open(in("a.slopebook")).backup(folder.path("new.slopebook"));
                 }),
                 Kind::Conflict);
        QCOMPARE(readBytes(folder.path("new.slopebook-journal")), std::string("my journal"));
    }

    void strays_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<bool>("folder");
        QTest::addColumn<int>("seconds");
        QTest::addColumn<bool>("goes");
        const QString gone = QString::number(goneProcess());
        const QString here = QString::number(::getpid());
        const QString plain = QStringLiteral(".page.pdf.part%1-0");
        QTest::newRow("a file") << plain.arg(gone) << false << 120 << true;
        QTest::newRow("its journal")
            << plain.arg(gone) + QStringLiteral("-journal") << false << 120 << true;
        QTest::newRow("a folder") << QStringLiteral(".out.part%1-3").arg(gone) << true << 120
                                  << true;
        QTest::newRow("just made") << plain.arg(gone) << false << 5 << false;
        QTest::newRow("under way") << plain.arg(here) << false << 120 << false;
        QTest::newRow("seen by all") << plain.arg(gone).mid(1) << false << 120 << false;
        QTest::newRow("more behind")
            << plain.arg(gone) + QStringLiteral(".txt") << false << 120 << false;
        QTest::newRow("no number")
            << QStringLiteral(".page.part%1").arg(gone) << false << 120 << false;
        QTest::newRow("no process") << QStringLiteral(".page.part-0") << false << 120 << false;
        QTest::newRow("no name") << QStringLiteral(".part%1-0").arg(gone) << false << 120 << false;
    }
    void strays() {
        QFETCH(QString, name);
        QFETCH(bool, folder);
        QFETCH(int, seconds);
        QFETCH(bool, goes);
        const Folder there;
        const auto stray = there.path("") / name.toStdString();
        if (folder) {
            fs::create_directory(stray);
            for (const char* file : {"reps.csv", "log.xlsx"}) {
                write(stray / file, "half");
                age(stray / file, seconds);
            }
        } else {
            write(stray, "half");
        }
        age(stray, seconds);
        writeWhole(there.path("page.pdf"), "new"); // the next run
        QCOMPARE(fs::exists(stray), !goes);
    }

    void aStrayFolderWithSomethingElseInItStays() {
        const Folder there;
        const auto stray = there.path("") / (".out.part" + std::to_string(goneProcess()) + "-0");
        fs::create_directory(stray);
        for (const char* file : {"reps.csv", "note.txt"}) {
            write(stray / file, "half");
            age(stray / file, 120);
        }
        age(stray, 120);
        sweepStrays(there.path(""));
        QCOMPARE(names(stray), (std::set<std::string>{"reps.csv", "note.txt"}));
    }
};

QTEST_APPLESS_MAIN(TestOutputs)
#include "tst_outputs.moc"
