// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/builders.h"
#include "tests/log/child.h"
#include "tests/log/rawfile.h"

#include <sys/stat.h>
#include <tuple>
#include <unistd.h>

using namespace slopebook;
using namespace slopebook::test;
using log::Access;
using log::Log;

namespace {
using Kind = LogError::Kind;
namespace fs = std::filesystem;

void makeLog(const fs::path& file) {
    Log log = Log::create(file);
    fillSeason(log);
}
} // namespace

class TestOpening : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aNewLogIsThereWholeOrNotAtAll();
    void whatIsNoLogIsRefused_data();
    void whatIsNoLogIsRefused();
    void aTruncatedLogIsNoticed();
    void aLogInAnOddPlaceIsOpened();
    void whatSqliteKeepsForItselfIsTaken();
    void readOnlyTakesNoWrites();
    void aReadOnlyFileIsOpenedForReading();
    void aReadOnlyFolderTakesNoWrites();
    void aLogThatVanishesIsNotWritten();
    void aJournalLeftBehindIsTakenBack_data();
    void aJournalLeftBehindIsTakenBack();
    void aStrangeJournalDoesNoHarm();
    void anOversizedValueIsDamage();
};

void TestOpening::aNewLogIsThereWholeOrNotAtAll() {
    const Folder folder;
    {
        const Log log = Log::create(folder.path());
        QVERIFY(log.athletes().empty() && log.liftSessions({}).empty());
        QCOMPARE(log.file(), folder.path());
        VERIFY_SOUND(log);
    }
    const std::vector<std::string> alone{"season.slopebook"};
    QCOMPARE(namesIn(folder.path().parent_path()), alone);
    const std::string bytes = readBytes(folder.path());
    QCOMPARE(errorOf([&] { Log::create(folder.path()); }), Kind::Conflict);
    QCOMPARE(readBytes(folder.path()), bytes);
    QCOMPARE(errorOf([&] { Log::create(folder.path("nowhere/x.slopebook")); }), Kind::Unavailable);
    for (int i = 0; i < 3; ++i)
        Log::open(folder.path());
    QCOMPARE(readBytes(folder.path()), bytes);
}

void TestOpening::whatIsNoLogIsRefused_data() {
    QTest::addColumn<std::function<void(const fs::path&)>>("make");
    QTest::addColumn<int>("kind");
    const auto row = [](const char* name, Kind kind, std::function<void(const fs::path&)> make) {
        QTest::newRow(name) << std::move(make) << static_cast<int>(kind);
    };
    const auto altered = [&](const char* name, Kind kind, const char* sql) {
        row(name, kind, [sql](const fs::path& file) {
            makeLog(file);
            runSql(file, sql);
        });
    };
    row("no file", Kind::Unavailable, [](const fs::path&) {});
    row("a folder", Kind::NotALog, [](const fs::path& file) { fs::create_directory(file); });
    row("a pipe", Kind::NotALog, [](const fs::path& file) { ::mkfifo(file.c_str(), 0600); });
    row("an empty file", Kind::NotALog, [](const fs::path& file) { writeBytes(file, ""); });
    row("a text", Kind::NotALog, [](const fs::path& file) {
        writeBytes(file, std::string(300, 'a') + "date,athlete,lift\n");
    });
    row("the beginning of a log", Kind::NotALog, [](const fs::path& file) {
        makeLog(file);
        writeBytes(file, readBytes(file).substr(0, 99));
    });
    row("a database of something else", Kind::NotALog,
        [](const fs::path& file) { runSql(file, "CREATE TABLE athletes (id INTEGER)"); });
    altered("another program's mark", Kind::NotALog, "PRAGMA application_id = 7");
    altered("a newer layout", Kind::Newer, "PRAGMA user_version = 99");
    altered("no layout", Kind::Damaged, "PRAGMA user_version = 0");
    altered("a layout below zero", Kind::Damaged, "PRAGMA user_version = -1");
    altered("a trigger", Kind::Damaged,
            "CREATE TRIGGER t AFTER INSERT ON sets BEGIN DELETE FROM reps; END");
    altered("a view", Kind::Damaged, "CREATE VIEW v AS SELECT * FROM sets");
    altered("a table more", Kind::Damaged, "CREATE TABLE more (x)");
    altered("a virtual table", Kind::Damaged, "CREATE VIRTUAL TABLE v USING fts5(x)");
    altered("an index that calls a function", Kind::Damaged,
            "CREATE INDEX i ON athletes (hex(name))");
    altered("a table less", Kind::Damaged, "DROP TABLE check_loads");
    altered("a column more", Kind::Damaged, "ALTER TABLE sets ADD COLUMN x TEXT");
    altered("a view in a table's place", Kind::Damaged,
            "DROP TABLE check_loads; CREATE VIEW check_loads AS SELECT 1 AS athlete");
    altered("another way of writing", Kind::Damaged, "PRAGMA journal_mode = WAL");
    altered("a table's text changed", Kind::Damaged,
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, "
            "'velocity < 10', 'velocity < 99')");
    row("another text encoding", Kind::Damaged, [](const fs::path& file) {
        runSql(file, "PRAGMA encoding = 'UTF-16'; CREATE TABLE a (b); "
                     "PRAGMA application_id = 1397506640; PRAGMA user_version = 1");
    });
}

void TestOpening::whatIsNoLogIsRefused() {
    QFETCH(std::function<void(const fs::path&)>, make);
    QFETCH(int, kind);
    const Folder folder;
    make(folder.path());
    const bool regular = fs::is_regular_file(folder.path());
    const std::string bytes = regular ? readBytes(folder.path()) : "";
    const auto names = namesIn(folder.path().parent_path());
    for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
        const auto found = errorOf([&] { Log::open(folder.path(), access); });
        QVERIFY(found);
        QCOMPARE(static_cast<int>(*found), kind);
        QCOMPARE(regular ? readBytes(folder.path()) : "", bytes);
        QCOMPARE(namesIn(folder.path().parent_path()), names);
    }
}

void TestOpening::aTruncatedLogIsNoticed() {
    const Folder folder;
    makeLog(folder.path());
    const std::string bytes = readBytes(folder.path());
    for (std::size_t pages = 1; pages < bytes.size() / 4096; ++pages) {
        writeBytes(folder.path(), bytes.substr(0, pages * 4096));
        const auto found = errorOf([&] {
            const Log log = Log::open(folder.path());
            if (!log.check().empty())
                throw LogError(Kind::Damaged, asIs("found by check"));
        });
        QCOMPARE(found, Kind::Damaged);
    }
}

void TestOpening::aLogInAnOddPlaceIsOpened() {
    const Folder folder;
    for (const char* name : {"file:odd?mode=ro", "a b'\"%20;.slopebook", "ünï 日本.slopebook",
                             ":memory:", "no-extension"}) {
        makeLog(folder.path(name));
        QVERIFY(fs::exists(folder.path(name)));
        QCOMPARE(Log::open(folder.path(name)).athletes().size(), 2U);
    }
    // By a relative path, whatever it looks like, and through a link.
    const auto before = fs::current_path();
    fs::current_path(folder.path().parent_path());
    QCOMPARE(Log::open("file:odd?mode=ro").athletes().size(), 2U);
    Log::create("relative.slopebook");
    fs::current_path(before);
    QVERIFY(fs::exists(folder.path("relative.slopebook")));
    fs::create_symlink("no-extension", folder.path("link"));
    Log::open(folder.path("link")).add(Athlete{.name = "Cox"});
    QCOMPARE(Log::open(folder.path("no-extension")).athletes().size(), 3U);
    QCOMPARE(errorOf([&] { Log::create(folder.path("link")); }), Kind::Conflict);
}

void TestOpening::whatSqliteKeepsForItselfIsTaken() {
    const Folder folder;
    makeLog(folder.path());
    runSql(folder.path(), "ANALYZE"); // as tools do on leaving
    const Log log = Log::open(folder.path());
    QCOMPARE(log.liftSessions({}).size(), 6U);
    VERIFY_SOUND(log);
}

void TestOpening::readOnlyTakesNoWrites() {
    const Folder folder;
    makeLog(folder.path());
    const std::string bytes = readBytes(folder.path());
    Log log = Log::open(folder.path(), Access::ReadOnly);
    QCOMPARE(log.access(), Access::ReadOnly);
    QCOMPARE(log.liftSessions({}).size(), 6U);
    QCOMPARE(errorOf([&] { log.add(Athlete{.name = "Cox"}); }), Kind::ReadOnly);
    QCOMPARE(errorOf([&] { log.together([] {}); }), Kind::ReadOnly);
    VERIFY_SOUND(log);
    QCOMPARE(readBytes(folder.path()), bytes);
}

void TestOpening::aReadOnlyFileIsOpenedForReading() {
    const Folder folder;
    makeLog(folder.path());
    fs::permissions(folder.path().parent_path(), fs::perms(0755));
    fs::permissions(folder.path(), fs::perms(0444));
    const int result = inChild([&] {
        dropRights();
        Log log = Log::open(folder.path());
        if (log.access() != Access::ReadOnly || log.liftSessions({}).size() != 6)
            return 1;
        return errorOf([&] { log.add(Athlete{.name = "Cox"}); }) == Kind::ReadOnly ? 0 : 2;
    });
    QCOMPARE(result, 0);
    fs::permissions(folder.path(), fs::perms(0));
    QCOMPARE(inChild([&] {
                 dropRights();
                 return errorOf([&] { Log::open(folder.path()); }) == Kind::Unavailable ? 0 : 1;
             }),
             0);
}

void TestOpening::aReadOnlyFolderTakesNoWrites() {
    const Folder folder;
    makeLog(folder.path());
    fs::permissions(folder.path(), fs::perms(0666));
    fs::permissions(folder.path().parent_path(), fs::perms(0555));
    const std::string bytes = readBytes(folder.path());
    const int result = inChild([&] {
        dropRights();
        Log log = Log::open(folder.path());
        if (errorOf([&] { log.add(Athlete{.name = "Cox"}); }) != Kind::ReadOnly)
            return 1;
        if (log.liftSessions({}).size() != 6 || log.athletes().size() != 2)
            return 2;
        if (errorOf([&] { std::ignore = log.backup(folder.path("copy")); }) != Kind::ReadOnly)
            return 3;
        return errorOf([&] { Log::create(folder.path("new")); }) == Kind::ReadOnly ? 0 : 4;
    });
    fs::permissions(folder.path().parent_path(), fs::perms(0755));
    QCOMPARE(result, 0);
    QCOMPARE(readBytes(folder.path()), bytes);
    QCOMPARE(namesIn(folder.path().parent_path()), std::vector<std::string>{"season.slopebook"});
}

void TestOpening::aLogThatVanishesIsNotWritten() {
    const Folder folder;
    makeLog(folder.path());
    Log log = Log::open(folder.path());
    fs::rename(folder.path(), folder.path("moved.slopebook"));
    const std::string bytes = readBytes(folder.path("moved.slopebook"));
    QCOMPARE(errorOf([&] { log.add(Athlete{.name = "Cox"}); }), Kind::Unavailable);
    QCOMPARE(readBytes(folder.path("moved.slopebook")), bytes);
    QVERIFY(!fs::exists(folder.path()));
    fs::rename(folder.path("moved.slopebook"), folder.path());
    log.add(Athlete{.name = "Cox"});
    VERIFY_SOUND(log);
}

void TestOpening::aJournalLeftBehindIsTakenBack_data() {
    QTest::addColumn<bool>("readOnly");
    QTest::newRow("opened for writing") << false;
    QTest::newRow("opened for reading") << true;
}

void TestOpening::aJournalLeftBehindIsTakenBack() {
    QFETCH(bool, readOnly);
    const Folder folder;
    makeLog(folder.path());
    const auto before = allRows(folder.path());
    const std::string bytes = readBytes(folder.path());
    // A writer that dies when its pages are on their way into the file.
    inChild([&] {
        dieInTransaction(folder.path(), "UPDATE sets SET note = hex(zeroblob(3000))");
        return 0;
    });
    const fs::path journal = folder.path().string() + "-journal";
    QVERIFY(fs::exists(journal));
    QVERIFY(readBytes(folder.path()) != bytes);
    const Log log = Log::open(folder.path(), readOnly ? Access::ReadOnly : Access::ReadWrite);
    VERIFY_SOUND(log);
    QCOMPARE(log.liftSessions({}).size(), 6U);
    QCOMPARE(allRows(folder.path()), before);
    QVERIFY(!fs::exists(journal));
}

void TestOpening::aStrangeJournalDoesNoHarm() {
    const Folder folder;
    makeLog(folder.path());
    const std::string bytes = readBytes(folder.path());
    writeBytes(folder.path().string() + "-journal", "this is no journal of SQLite's");
    {
        Log log = Log::open(folder.path());
        VERIFY_SOUND(log);
        QCOMPARE(readBytes(folder.path()), bytes);
        log.add(Athlete{.name = "Cox"});
    }
    QCOMPARE(Log::open(folder.path()).athletes().size(), 3U);
}

void TestOpening::anOversizedValueIsDamage() {
    const Folder folder;
    makeLog(folder.path());
    // Two megabytes where the log takes a hundred thousand bytes at most.
    runSql(folder.path(), "UPDATE athletes SET note = printf('%.*c', 2000000, 'x') "
                          "WHERE name = 'Stroke seat'");
    const std::string bytes = readBytes(folder.path());
    {
        const Log log = Log::open(folder.path());
        QCOMPARE(errorOf([&] { log.athletes(); }), Kind::Damaged);
        QVERIFY(!log.check().empty());
        const Log salvaged = Log::open(folder.path(), Access::Salvage);
        QCOMPARE(salvaged.lifts().size(), 2U);
    }
    QCOMPARE(readBytes(folder.path()), bytes);
}

QTEST_APPLESS_MAIN(TestOpening)
#include "tst_opening.moc"
