// SPDX-License-Identifier: GPL-3.0-or-later
// A journal that no writer of the log can have left is not played back, whoever opens the log and
// however: every file stays as it was. One that a killed writer left is.
#include "core/log/backups.h"
#include "core/log/history.h"
#include "tests/log/builders.h"
#include "tests/log/child.h"
#include "tests/log/craftedjournal.h"

#include <sqlite3.h>

#include <map>
#include <tuple>

using namespace slopebook;
using namespace slopebook::test;
using log::Access;
using log::Log;

namespace {
namespace fs = std::filesystem;
using Kind = LogError::Kind;

/// A log in a folder of its own, and beside that a file that is none of its business.
struct Scene {
    Folder folder;
    fs::path log = folder.path("desk/season.slopebook");
    fs::path victim = folder.path("thesis.txt");
    Scene() {
        fs::create_directory(log.parent_path());
        Log made = Log::create(log);
        fillSeason(made);
        // Its first byte is 0: SQLite takes it for the journal of a writer that is done.
        writeBytes(victim, std::string(1, '\0') + "years of work");
    }
    std::map<fs::path, std::string> files() const {
        std::map<fs::path, std::string> all;
        for (const auto& entry : fs::recursive_directory_iterator(folder.path().parent_path()))
            if (entry.is_regular_file() && fs::file_size(entry.path()) < 100'000'000)
                all[entry.path()] = readBytes(entry.path());
        return all;
    }
    /// SQLite alone, as every program has it that opens the file.
    void readBySqliteAlone() const {
        sqlite3* db = nullptr;
        sqlite3_open(log.c_str(), &db);
        sqlite3_exec(db, "SELECT count(*) FROM sets", nullptr, nullptr, nullptr);
        sqlite3_close(db);
    }
};

const std::vector<Attack>& allAttacks() {
    static const std::vector<Attack> all = attacks();
    return all;
}

void rows() {
    QTest::addColumn<int>("attack");
    for (std::size_t i = 0; i < allAttacks().size(); ++i)
        QTest::newRow(allAttacks()[i].name) << static_cast<int>(i);
}

/// Dies with its journal still there, when everything else of the work is done.
int dieLeavingTheJournal(const fs::path& file, const char* sql) {
    sqlite3* db = nullptr;
    sqlite3_vfs* const system = sqlite3_vfs_find(nullptr);
    const auto die = +[](const char*) -> int {
        std::raise(SIGKILL);
        return -1;
    };
    if (sqlite3_open(file.c_str(), &db) != SQLITE_OK ||
        sqlite3_exec(db, "PRAGMA temp_store = MEMORY", nullptr, nullptr, nullptr) != SQLITE_OK ||
        system->xSetSystemCall(system, "unlink", reinterpret_cast<sqlite3_syscall_ptr>(die)) !=
            SQLITE_OK)
        return 1;
    sqlite3_exec(db, sql, nullptr, nullptr, nullptr);
    return 2;
}
} // namespace

class TestJournals : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void sqliteAloneDoesTheHarm_data() { rows(); }
    void sqliteAloneDoesTheHarm();
    void openingRefuses_data() { rows(); }
    void openingRefuses();
    void anOpenLogRefuses_data() { rows(); }
    void anOpenLogRefuses();
    void aBackupsJournalIsRefusedToo_data() { rows(); }
    void aBackupsJournalIsRefusedToo();
    void whatAKilledWriterLeftIsTakenBack_data();
    void whatAKilledWriterLeftIsTakenBack();
    void nothingIsKeptOfWhatWasTakenBack();
    void aLogGrowsAndShrinks();
};

// The control: without it the tests below could pass for another reason.
void TestJournals::sqliteAloneDoesTheHarm() {
    QFETCH(int, attack);
    const Attack& one = allAttacks()[static_cast<std::size_t>(attack)];
    const Scene scene;
    const std::string log = readBytes(scene.log);
    const std::string victim = readBytes(scene.victim);
    one.plant(scene.log, scene.victim);
    scene.readBySqliteAlone();
    if (one.harm == Attack::Harm::ByWriting) {
        QCOMPARE(rowsChangedBy(scene.log, "UPDATE sets SET note = 'x' WHERE id = 1"), 1);
        QVERIFY(readBytes(scene.victim) != victim);
        return;
    }
    if (one.harm == Attack::Harm::None) // SQLite itself follows no link
        return;
    QVERIFY(!fs::exists(scene.victim) || fs::file_size(scene.log) != log.size() ||
            readBytes(scene.log) != log || !fs::exists(scene.log.string() + "-journal"));
}

void TestJournals::openingRefuses() {
    QFETCH(int, attack);
    const Scene scene;
    allAttacks()[static_cast<std::size_t>(attack)].plant(scene.log, scene.victim);
    const auto before = scene.files();
    for (const Access access : {Access::ReadOnly, Access::Salvage, Access::ReadWrite}) {
        QString message;
        try {
            const Log log = Log::open(scene.log, access);
            log.check();
        } catch (const LogError& error) {
            QCOMPARE(error.kind(), Kind::Damaged);
            message = QString::fromUtf8(error.what());
        }
        QVERIFY2(message.startsWith("'season.slopebook' is not read: 'season.slopebook-journal' "
                                    "beside it is no journal that Slopebook left ("),
                 qPrintable(message));
        QVERIFY(scene.files() == before);
    }
}

void TestJournals::anOpenLogRefuses() {
    QFETCH(int, attack);
    const Scene scene;
    Log log = Log::open(scene.log);
    const AthleteId athlete = log.athletes().front().id;
    allAttacks()[static_cast<std::size_t>(attack)].plant(scene.log, scene.victim);
    const auto before = scene.files();
    int number = 0;
    for (const std::function<void()>& work : std::vector<std::function<void()>>{
             [&] { log.athletes(); }, [&] { log.liftSessions({}); }, [&] { log.sessions(athlete); },
             [&] { log.add(Athlete{.name = "Cox"}); },
             [&] { std::ignore = log.backup(scene.folder.path("copy.slopebook")); }}) {
        ++number;
        QVERIFY2(errorOf(work) == Kind::Damaged, qPrintable(QString::number(number)));
        QVERIFY(scene.files() == before);
    }
    // With the journal out of the way it goes on.
    fs::rename(scene.log.string() + "-journal", scene.folder.path("strange"));
    log.add(Athlete{.name = "Cox"});
    VERIFY_SOUND(log);
}

void TestJournals::aBackupsJournalIsRefusedToo() {
    QFETCH(int, attack);
    const Scene scene;
    {
        const Log log = Log::open(scene.log);
        log::backUpWhenDue(log, std::chrono::sys_days{day(2026, 3, 14)});
    }
    const fs::path backup = log::backups(scene.log).at(0).file;
    allAttacks()[static_cast<std::size_t>(attack)].plant(backup, scene.victim);
    const auto before = scene.files();
    QVERIFY(!log::keptCopies(scene.log).at(0).problem.empty());
    QVERIFY(errorOf([&] { log::restore(backup, scene.folder.path("back.slopebook")); }));
    QVERIFY(errorOf([&] { log::goBackTo(backup, scene.log); }));
    QVERIFY(scene.files() == before);
}

void TestJournals::whatAKilledWriterLeftIsTakenBack_data() {
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("sql");
    QTest::newRow("a change within the pages") << ""
                                               << "UPDATE sets SET load_g = load_g + 1";
    QTest::newRow("more pages") << ""
                                << "UPDATE sets SET note = hex(zeroblob(3000))";
    QTest::newRow("a page at the end")
        << ""
        << "INSERT INTO athletes VALUES (77, hex(zeroblob(4000)), '', 1, 1)";
    QTest::newRow("fewer pages, cut off already")
        << "UPDATE sets SET note = note || hex(zeroblob(9000)); "
           "UPDATE sets SET note = substr(note, 1, length(note) - 18000)"
        << "VACUUM";
    QTest::newRow("the first page alone") << ""
                                          << "PRAGMA user_version = 77";
}

void TestJournals::whatAKilledWriterLeftIsTakenBack() {
    QFETCH(QString, before);
    QFETCH(QString, sql);
    for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
        const Scene scene;
        runSql(scene.log, before.toStdString());
        const std::string bytes = readBytes(scene.log);
        const std::string work = sql.toStdString();
        QCOMPARE(inChild([&] { return dieLeavingTheJournal(scene.log, work.c_str()); }), -SIGKILL);
        QVERIFY(fs::exists(scene.log.string() + "-journal"));
        QVERIFY(readBytes(scene.log) != bytes);
        {
            const Log log = Log::open(scene.log, access);
            VERIFY_SOUND(log);
        }
        QVERIFY(readBytes(scene.log) == bytes);
        QCOMPARE(namesIn(scene.log.parent_path()), std::vector<std::string>{"season.slopebook"});
    }
}

// Copies are made before anything is taken back, and go again when it went well.
void TestJournals::nothingIsKeptOfWhatWasTakenBack() {
    const Scene scene;
    Log log = Log::open(scene.log);
    for (int round = 0; round < 3; ++round) {
        const auto rows = allRows(scene.log);
        // Nor of what a program had copied that was killed meanwhile.
        for (const char* name : {".season before recovery.slopebook.part77-0",
                                 ".season before recovery.slopebook.part77-0-journal"})
            writeBytes(scene.log.parent_path() / name, "half");
        inChild([&] {
            dieInTransaction(scene.log, "UPDATE sets SET note = hex(zeroblob(3000))");
            return 0;
        });
        QCOMPARE(log.liftSessions({}).size(), 6U); // a log that is open meets it too
        QCOMPARE(allRows(scene.log), rows);
        QCOMPARE(namesIn(scene.log.parent_path()), std::vector<std::string>{"season.slopebook"});
    }
    VERIFY_SOUND(log);
}

// What SQLite needs beside the log and its journal it keeps in memory, however much that is.
void TestJournals::aLogGrowsAndShrinks() {
    const Scene scene;
    Log log = Log::open(scene.log);
    const AthleteId athlete = log.athletes().front().id;
    const LiftId lift = log.lifts().front().id;
    log.together([&] {
        for (unsigned at = 1; at <= 28; ++at)
            log.together([&] {
                const SessionId session = log.add(SessionHead{.athlete = athlete,
                                                              .date = day(2027, 2, at),
                                                              .note = std::string(20'000, 'x')});
                for (int set = 0; set < 4; ++set)
                    log.add(session, lift, ladderSet(40 + set, {1.1, 1.2}));
                log.change(session, SessionHead{.athlete = athlete, .date = day(2027, 2, at)});
            });
    });
    VERIFY_SOUND(log);
    log::historyOrder(log, {.lift = lift});
    runSql(scene.log, "VACUUM");
    QCOMPARE(log.sessions(athlete).size(), 30U);
    VERIFY_SOUND(log);
}

QTEST_APPLESS_MAIN(TestJournals)
#include "tst_journals.moc"
