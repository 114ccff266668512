// SPDX-License-Identifier: GPL-3.0-or-later
// The program killed at any moment (SIGKILL), as by the system when memory runs out: while sets are
// entered, while CSV is imported, while it backs up, brings a log up to date, exports.
#include "core/exchange/tidyexport.h"
#include "tests/crash/acts.h"
#include "tests/crash/killer.h"
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"

#include <set>
#include <sys/mount.h>
#include <sys/resource.h>

using namespace slopebook;
using namespace slopebook::test;
using ui::Logbook;

namespace {
namespace fs = std::filesystem;
using Kind = LogError::Kind;
} // namespace

class TestKills : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    fs::path file() const { return m_folder->path(); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(file());
        m_season = fillSeason(log);
    }
    void whileSetsAreEntered();
    void whileCsvIsImported();
    void whileItIsBackedUp();
    void whileItIsBroughtUpToDate();
    void whileItIsExported();
    void whileItGoesBackToABackup();
    void theDiskFillsUp();
    void theFolderIsReadOnly();
    void theMountVanishes();
};

void TestKills::whileSetsAreEntered() {
    Killer killer(20260316);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000);
    std::size_t acknowledged = 0;
    std::size_t unasked = 0;
    for (int round = 0; round < all; ++round) {
        const SessionId session = log::Log::open(file()).add(SessionHead{
            .athlete = m_season.lane3,
            .date = Date{std::chrono::sys_days{day(2027, 1, 1)} + std::chrono::days{round}}});
        killer.kill([&](const auto& tell) {
            Logbook book(log::Log::open(file()));
            for (int i = 0; i < 12; ++i)
                tell(raw(
                    book.addSets(session, m_season.pull, {ladderSet(40 + 2.5 * i, {1.0, 0.9, 0.8})})
                        .front()));
        });
        const log::Log log = log::Log::open(file());
        VERIFY_SOUND(log);
        std::set<std::int64_t> there;
        for (const auto& placed : log.session(session).sets) {
            QCOMPARE(placed.set.reps.size(), 3U);
            there.insert(raw(placed.id));
        }
        for (const std::int64_t id : killer.told())
            QVERIFY2(there.contains(id), "an acknowledged set is lost");
        QVERIFY(there.size() <= killer.told().size() + 1); // the one that was under way
        acknowledged += killer.told().size();
        unasked += there.size() - killer.told().size();
    }
    qInfo("%d kills in %d rounds: %zu sets acknowledged, all there; %zu more on disk when the kill "
          "came",
          killer.killed(), all, acknowledged, unasked);
    QVERIFY(killer.killed() > all / 2 && acknowledged > 0);
}

void TestKills::whileCsvIsImported() {
    constexpr int sessions = 30;
    Killer killer(20260317);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000);
    int whole = 0;
    const fs::path pristine = m_folder->path("pristine");
    fs::copy_file(file(), pristine);
    const Folder elsewhere;
    writeCsv(elsewhere.path("rows.csv"), day(2026, 5, 1), sessions);
    for (int round = 0; round < all; ++round) {
        fs::remove(file().string() + "-journal");
        fs::copy_file(pristine, file(), fs::copy_options::overwrite_existing);
        killer.kill([&](const auto& tell) {
            Logbook book(log::Log::open(file()));
            importInto(book, elsewhere.path("rows.csv"));
            tell(1);
        });
        const log::Log log = log::Log::open(file());
        VERIFY_SOUND(log);
        const auto added = log.sessions(m_season.lane3).size() - 2;
        QVERIFY2(added == 0 || added == sessions, "half an import");
        QVERIFY2(killer.told().empty() || added == sessions, "an acknowledged import is lost");
        whole += added == 0 ? 0 : 1;
    }
    qInfo("%d kills in %d rounds: %d imports were whole, the others not begun", killer.killed(),
          all, whole);
    QVERIFY(killer.killed() > all / 2);
}

void TestKills::whileItIsBackedUp() {
    const std::string bytes = readBytes(file());
    Killer killer(20260318);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000) / 2;
    int whole = 0;
    for (int round = 0; round < all; ++round) {
        const auto when = noon + round * std::chrono::hours{25};
        killer.kill([&](const auto& tell) {
            if (log::backUpWhenDue(log::Log::open(file()), when))
                tell(1);
        });
        QCOMPARE(readBytes(file()), bytes);
        const auto copies = log::backups(file());
        for (const auto& copy : copies)
            VERIFY_SOUND(log::Log::open(copy.file, log::Access::ReadOnly));
        const bool there = !copies.empty() && copies.front().made == when;
        QVERIFY(there || killer.told().empty());
        whole += there ? 1 : 0;
    }
    qInfo("%d kills in %d rounds: %d copies were there, each whole", killer.killed(), all, whole);
    QVERIFY(killer.killed() > all / 4);
}

void TestKills::whileItIsBroughtUpToDate() {
    const auto rows = allRows(file());
    const fs::path pristine = m_folder->path("pristine");
    fs::copy_file(file(), pristine);
    const log::Layout layout = layoutToCome();
    Killer killer(20260319);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000) / 2;
    int done = 0;
    for (int round = 0; round < all; ++round) {
        fs::remove(file().string() + "-journal");
        fs::copy_file(pristine, file(), fs::copy_options::overwrite_existing);
        fs::remove_all(log::backupFolder(file()));
        killer.kill([&](const auto& tell) {
            log::Log::open(file(), log::Access::ReadWrite, layout);
            tell(1);
        });
        bool newer = false;
        try {
            VERIFY_SOUND(log::Log::open(file()));
            QVERIFY(killer.told().empty());
            QCOMPARE(allRows(file()), rows);
        } catch (const LogError& error) {
            QCOMPARE(error.kind(), Kind::Newer);
            newer = true;
        }
        done += newer ? 1 : 0;
        const auto copies = log::keptCopies(file());
        QVERIFY(!newer || copies.size() == 1);
        for (const auto& copy : copies)
            QVERIFY2(copy.problem.empty(), english(copy.problem).c_str());
        VERIFY_SOUND(log::Log::open(file(), log::Access::ReadWrite, layout));
    }
    qInfo("%d kills in %d rounds: %d were brought up to date, the others as before",
          killer.killed(), all, done);
    QVERIFY(killer.killed() > all / 4);
}

void TestKills::whileItIsExported() {
    const std::string bytes = readBytes(file());
    Killer killer(20260320);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000) / 2;
    std::size_t files = 0;
    int whole = 0;
    for (int round = 0; round < all; ++round) {
        const fs::path target = m_folder->path(("out" + std::to_string(round)).c_str());
        killer.kill([&](const auto& tell) {
            tell(static_cast<std::int64_t>(
                exchange::exportTables(log::Log::open(file(), log::Access::ReadOnly), target)
                    .size()));
        });
        QCOMPARE(readBytes(file()), bytes);
        if (round == 0)
            files = namesIn(target).size();
        QVERIFY(fs::exists(target) || killer.told().empty());
        if (!fs::exists(target))
            continue;
        ++whole;
        QCOMPARE(namesIn(target).size(), files);
    }
    qInfo("%d kills in %d rounds: %d exports were there, each whole", killer.killed(), all, whole);
    QVERIFY(killer.killed() > all / 4 && files > 5);
}

void TestKills::whileItGoesBackToABackup() {
    const auto rows = allRows(file());
    const auto backup = *log::backUpWhenDue(log::Log::open(file()), noon);
    Killer killer(20260321);
    const int all = rounds("SLOPEBOOK_KILLS", 50, 1000) / 2;
    int back = 0;
    for (int round = 0; round < all; ++round) {
        {
            log::Log log = log::Log::open(file());
            log.add(Athlete{.name = "Cox " + std::to_string(round)});
        }
        const auto present = allRows(file());
        killer.kill([&](const auto& tell) {
            log::goBackTo(backup.file, file());
            tell(1);
        });
        VERIFY_SOUND(log::Log::open(file()));
        const auto now = allRows(file());
        QVERIFY(now == rows || (now == present && killer.told().empty()));
        if (now != rows)
            continue;
        ++back;
        // What stood there is kept beside it.
        bool kept = false;
        for (const auto& entry : fs::directory_iterator(file().parent_path()))
            kept = kept || (entry.path().filename().string().find("before going back") !=
                                std::string::npos &&
                            allRows(entry.path()) == present);
        QVERIFY(kept);
    }
    qInfo("%d kills in %d rounds: %d went back, the log there at every moment", killer.killed(),
          all, back);
    QVERIFY(killer.killed() > all / 4);
}

void TestKills::theDiskFillsUp() {
    // Room for a little more than the log, then none: a limit on the size of files.
    const Folder elsewhere;
    writeCsv(elsewhere.path("rows.csv"), day(2026, 5, 1), 400);
    const int result = inChild([&] {
        ::signal(SIGXFSZ, SIG_IGN);
        Logbook book(log::Log::open(file()));
        rlimit limit{};
        ::getrlimit(RLIMIT_FSIZE, &limit);
        limit.rlim_cur = fs::file_size(file()) + 8192;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        if (errorOf([&] { importInto(book, elsewhere.path("rows.csv")); }) != Kind::Full)
            return 1;
        if (book.log().sessions(m_season.lane3).size() != 2 || !book.log().check().empty())
            return 2;
        std::size_t acknowledged = 0;
        std::optional<Kind> kind;
        for (int i = 0; i < 2000 && !kind; ++i)
            kind = errorOf([&] {
                book.addSets(m_season.winter, m_season.pull, {ladderSet(40, {1.0, 0.9, 0.8})});
                ++acknowledged;
            });
        if (kind != Kind::Full)
            return 3;
        if (book.log().sets(m_season.winter, m_season.pull).size() != 4 + acknowledged ||
            !book.log().check().empty())
            return 4;
        limit.rlim_cur = 4096;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        if (errorOf([&] { log::backUpWhenDue(book.log(), noon); }) != Kind::Full ||
            !log::backups(file()).empty())
            return 5;
        limit.rlim_cur = limit.rlim_max;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        importInto(book, elsewhere.path("rows.csv")); // there is room again
        return book.log().check().empty() ? 0 : 6;
    });
    QCOMPARE(result, 0);
    const log::Log log = log::Log::open(file());
    VERIFY_SOUND(log);
    QCOMPARE(log.sessions(m_season.lane3).size(), 402U);
}

void TestKills::theFolderIsReadOnly() {
    fs::permissions(file(), fs::perms(0666));
    fs::permissions(file().parent_path(), fs::perms(0555));
    const std::string bytes = readBytes(file());
    const int result = inChild([&] {
        dropRights();
        Logbook book(log::Log::open(file()));
        if (errorOf([&] { book.addAthlete(Athlete{.name = "Cox"}); }) != Kind::ReadOnly)
            return 1;
        if (errorOf([&] { log::backUpWhenDue(book.log(), noon); }) != Kind::ReadOnly)
            return 2;
        if (book.undoStack()->count() != 0 || book.log().athletes().size() != 2)
            return 3;
        return 0;
    });
    fs::permissions(file().parent_path(), fs::perms(0755));
    QCOMPARE(result, 0);
    QCOMPARE(readBytes(file()), bytes);
}

void TestKills::theMountVanishes() {
    // A stick pulled out while its log is open: here a file system of its own, let go of.
    const fs::path place = m_folder->path("stick");
    fs::create_directory(place);
    if (::mount("tmpfs", place.c_str(), "tmpfs", 0, "size=4m") != 0)
        QSKIP("A FILE SYSTEM CANNOT BE MOUNTED HERE (not root): what a vanished one does is not "
              "tried");
    const fs::path log = place / "season.slopebook";
    fs::copy_file(file(), log);
    {
        Logbook book(log::Log::open(log));
        book.addAthlete(Athlete{.name = "Cox"});
        QCOMPARE(::umount2(place.c_str(), MNT_DETACH), 0);
        const auto kind = errorOf([&] { book.addAthlete(Athlete{.name = "Bow"}); });
        QCOMPARE(kind, Kind::Unavailable);
        QCOMPARE(book.undoStack()->count(), 1);
        QVERIFY(namesIn(place).empty()); // nothing is written into the empty folder either
    }
    QCOMPARE(errorOf([&] { log::Log::open(log); }), Kind::Unavailable);
}

QTEST_GUILESS_MAIN(TestKills)
#include "tst_kills.moc"
