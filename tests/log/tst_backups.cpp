// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/backups.h"
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"

#include <tuple>

using namespace slopebook;
using namespace slopebook::test;
using namespace std::chrono_literals;
using log::Log;

namespace {
using Kind = LogError::Kind;
constexpr std::chrono::sys_seconds noon = std::chrono::sys_days{day(2026, 3, 14)} + 12h;
} // namespace

class TestBackups : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        m_log.emplace(Log::create(m_folder->path()));
        m_s = fillSeason(*m_log);
    }
    void aBackupHoldsTheSame();
    void aBackupOverwritesNothing();
    void aBackupIsNotMadeInsideATransaction();
    void oneADayIsMadeAndTenAreKept();
    void aClockThatWentWrongDoesNotStopThem();
    void otherFilesInTheFolderAreLeftAlone();
    void aDamagedLogPushesNoGoodBackupOut();
    void aBackupIsRestoredAsANewFile();

private:
    std::unique_ptr<Folder> m_folder;
    std::optional<Log> m_log;
    Season m_s;
};

void TestBackups::aBackupHoldsTheSame() {
    const auto copy = m_folder->path("copy.slopebook");
    QVERIFY(m_log->backup(copy).empty());
    QCOMPARE(allRows(copy, ""), allRows(m_folder->path(), ""));
    Log opened = Log::open(copy);
    VERIFY_SOUND(opened);
    opened.add(Athlete{.name = "Cox"}); // a log like any other
    QCOMPARE(m_log->athletes().size(), 2U);
    const std::vector<std::string> both{"copy.slopebook", "season.slopebook"};
    QCOMPARE(namesIn(m_folder->path().parent_path()), both);
}

void TestBackups::aBackupOverwritesNothing() {
    const auto target = m_folder->path("precious.txt");
    writeBytes(target, "precious");
    QCOMPARE(errorOf([&] { std::ignore = m_log->backup(target); }), Kind::Conflict);
    QCOMPARE(errorOf([&] { std::ignore = m_log->backup(m_folder->path()); }), Kind::Conflict);
    QCOMPARE(readBytes(target), "precious");
    QCOMPARE(errorOf([&] { std::ignore = m_log->backup(m_folder->path("nowhere/copy")); }),
             Kind::Unavailable);
    QCOMPARE(namesIn(m_folder->path().parent_path()).size(), 2U);
}

void TestBackups::aBackupIsNotMadeInsideATransaction() {
    m_log->together([&] {
        m_log->add(Athlete{.name = "Cox"});
        QCOMPARE(errorOf([&] { std::ignore = m_log->backup(m_folder->path("copy")); }),
                 Kind::Conflict);
    });
    QVERIFY(!std::filesystem::exists(m_folder->path("copy")));
}

void TestBackups::oneADayIsMadeAndTenAreKept() {
    QVERIFY(log::backups(m_log->file()).empty());
    const auto first = log::backUpWhenDue(*m_log, noon);
    QVERIFY(first);
    QCOMPARE(first->file.filename().string(), "2026-03-14T120000Z.slopebook");
    QCOMPARE(first->file.parent_path(), log::backupFolder(m_log->file()));
    QVERIFY(!log::backUpWhenDue(*m_log, noon));
    QVERIFY(!log::backUpWhenDue(*m_log, noon + 24h));
    QVERIFY(log::backUpWhenDue(*m_log, noon + 24h + 1s));
    for (int days = 2; days < 14; ++days)
        QVERIFY(log::backUpWhenDue(*m_log, noon + days * 25h));
    const auto kept = log::backups(m_log->file());
    QCOMPARE(kept.size(), log::backupsKept);
    QCOMPARE(kept.front().made, noon + 13 * 25h);
    QCOMPARE(kept.back().made, noon + 4 * 25h);
    for (const auto& one : kept)
        VERIFY_SOUND(Log::open(one.file, log::Access::ReadOnly));
}

void TestBackups::aClockThatWentWrongDoesNotStopThem() {
    QVERIFY(log::backUpWhenDue(*m_log, noon + 24h * 365));
    QVERIFY(log::backUpWhenDue(*m_log, noon));
    QVERIFY(log::backups(m_log->file()).size() == 2);
}

void TestBackups::otherFilesInTheFolderAreLeftAlone() {
    const auto folder = log::backupFolder(m_log->file());
    std::filesystem::create_directory(folder);
    for (const char* name : {"2026-03-01T250000Z.slopebook", "2026-02-30T120000Z.slopebook",
                             "keep.slopebook", "2026-03-01T120000Z.txt", "x"})
        writeBytes(folder / name, "mine");
    for (int days = 0; days < 12; ++days)
        log::backUpWhenDue(*m_log, noon + days * 25h);
    QCOMPARE(log::backups(m_log->file()).size(), log::backupsKept);
    QCOMPARE(namesIn(folder).size(), log::backupsKept + 5);
}

void TestBackups::aDamagedLogPushesNoGoodBackupOut() {
    for (int days = 0; days < 10; ++days)
        QVERIFY(log::backUpWhenDue(*m_log, noon + days * 25h));
    const auto good = log::backups(m_log->file());
    runSql(m_log->file(), "UPDATE reps SET velocity = 0.123");
    QCOMPARE(errorOf([&] { log::backUpWhenDue(*m_log, noon + 11 * 25h); }), Kind::Damaged);
    QCOMPARE(log::backups(m_log->file()), good);
    QCOMPARE(namesIn(log::backupFolder(m_log->file())).size(), 10U);
}

void TestBackups::aBackupIsRestoredAsANewFile() {
    const auto made = log::backUpWhenDue(*m_log, noon);
    const auto rows = allRows(m_log->file(), "");
    m_log->remove(m_s.winter);
    QCOMPARE(errorOf([&] { log::restore(made->file, m_log->file()); }), Kind::Conflict);
    const auto target = m_folder->path("restored.slopebook");
    log::restore(made->file, target);
    QCOMPARE(allRows(target, ""), rows);
    QVERIFY(std::filesystem::exists(made->file));
    VERIFY_SOUND(Log::open(target));
    runSql(made->file, "UPDATE reps SET velocity = 0.123");
    QCOMPARE(errorOf([&] { log::restore(made->file, m_folder->path("bad")); }), Kind::Damaged);
    QVERIFY(!std::filesystem::exists(m_folder->path("bad")));
}

QTEST_APPLESS_MAIN(TestBackups)
#include "tst_backups.moc"
