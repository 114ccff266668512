// SPDX-License-Identifier: GPL-3.0-or-later
// What must not be taken, or not now: each is said in words, and neither log is written to. And
// what is left where the program, or the disk, goes in the middle.
#include "core/desks/merge.h"
#include "core/desks/reading.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/backups.h"
#include "tests/crash/killer.h"
#include "tests/desks/randomedits.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"

#include <QTest>

#include <cmath>
#include <sys/resource.h>

using namespace slopebook;
using namespace slopebook::test;
using slopebook::tests::RandomEdits;
namespace fs = std::filesystem;
using Kind = LogError::Kind;

class TestRefused : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    fs::path a() const { return m_folder->path("a.slopebook"); }
    fs::path b() const { return m_folder->path("b.slopebook"); }

    static desks::MergeReport mergeFiles(const fs::path& mine, const fs::path& other) {
        log::Log log = log::Log::open(mine);
        return desks::mergeInto(log, other);
    }
    static bool soundFile(const fs::path& file) {
        return log::Log::open(file, log::Access::ReadOnly).check().empty();
    }
    /// Refused so, and neither file is another than before, nor is a backup made.
    void refusedAs(Kind kind, const fs::path& other) {
        const std::string mine = readBytes(a());
        const std::string theirs = readBytes(other);
        const auto got = errorOf([&] { mergeFiles(a(), other); });
        QVERIFY2(got == std::optional(kind),
                 qPrintable(QString::number(got ? static_cast<int>(*got) : -1)));
        QVERIFY(readBytes(a()) == mine);
        QVERIFY(readBytes(other) == theirs);
        QVERIFY(!fs::exists(log::backupFolder(a())));
    }
    void someEditsOfB(unsigned seed, int count = 25) {
        log::Log log = log::Log::open(b());
        RandomEdits edits(seed);
        for (int i = 0; i < count; ++i)
            edits.edit(log);
    }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(a());
            m_season = fillSeason(log);
            addTestDay(log, m_season, addOtherThings(log, m_season));
        }
        fs::copy_file(a(), b());
    }

    void itself() {
        refusedAs(Kind::Conflict, a());
        fs::create_symlink(a(), m_folder->path("link.slopebook"));
        refusedAs(Kind::Conflict, m_folder->path("link.slopebook"));
        fs::create_hard_link(a(), m_folder->path("hard.slopebook"));
        refusedAs(Kind::Conflict, m_folder->path("hard.slopebook"));
    }

    void noLog() {
        writeBytes(m_folder->path("note.txt"), "no log at all, and long enough to be looked at");
        refusedAs(Kind::NotALog, m_folder->path("note.txt"));
        writeBytes(m_folder->path("foreign.db"), "");
        runSql(m_folder->path("foreign.db"), "CREATE TABLE athletes (name TEXT)");
        refusedAs(Kind::NotALog, m_folder->path("foreign.db"));
        QCOMPARE(errorOf([&] { mergeFiles(a(), m_folder->path("none.slopebook")); }),
                 std::optional(Kind::Unavailable));
    }

    void damaged() {
        runSql(b(), "UPDATE athletes SET note = 'not as it was written'");
        refusedAs(Kind::Damaged, b());
    }

    // Its trails say what happened: one that was bent is damage too.
    void bentTrails() {
        someEditsOfB(3);
        runSql(b(),
               "UPDATE atoms SET trail = CAST(substr(trail, 33) || substr(trail, 1, 32) AS BLOB) "
               "WHERE length(trail) >= 64");
        refusedAs(Kind::Damaged, b());
    }

    void newer() {
        runSql(b(), "PRAGMA user_version = 900");
        refusedAs(Kind::Newer, b());
    }

    void beingWritten() {
        someEditsOfB(4);
        const LockHeld writer(a());
        const std::string mine = readBytes(a());
        QCOMPARE(errorOf([&] { mergeFiles(a(), b()); }), std::optional(Kind::Busy));
        QVERIFY(readBytes(a()) == mine);
    }

    void readOnly() {
        someEditsOfB(5);
        const std::string mine = readBytes(a());
        log::Log log = log::Log::open(a(), log::Access::ReadOnly);
        QCOMPARE(errorOf([&] { desks::mergeInto(log, b()); }), std::optional(Kind::ReadOnly));
        QVERIFY(!desks::previewMerge(log, b()).nothingNew); // to look is always allowed
        QVERIFY(readBytes(a()) == mine);
        QVERIFY(!fs::exists(log::backupFolder(a())));
    }

    // One of an older layout is read through a copy of it; what it holds is known by its derived
    // names to a log that was brought up to date elsewhere.
    void anOlderOther_data() {
        QTest::addColumn<int>("version");
        for (const int version : {4, 6})
            QTest::addRow("layout %d", version) << version;
    }
    void anOlderOther() {
        QFETCH(int, version);
        const fs::path base = m_folder->path("base.slopebook");
        {
            log::Log log = log::Log::create(base);
            const AthleteId ada = log.add(Athlete{.name = "Ada"});
            const LiftId row = log.add(Lift{.name = "Row"});
            const SessionId session =
                log.add(SessionHead{.athlete = ada, .date = day(2026, 3, 14)});
            log.add(session, row, ladderSet(40, {1.1, 1.0}));
        }
        const fs::path old = m_folder->path("old.slopebook");
        writeAsOlder(base, old, version);
        const fs::path elsewhere = m_folder->path("elsewhere.slopebook");
        fs::copy_file(old, elsewhere);
        log::Log::open(elsewhere); // brings it up to date
        const std::string bytes = readBytes(old);
        QVERIFY(mergeFiles(elsewhere, old).nothingNew);
        QVERIFY(!mergeFiles(a(), old).nothingNew);
        QVERIFY(readBytes(old) == bytes);
        QVERIFY(!fs::exists(log::backupFolder(old)));
        QVERIFY(soundFile(a()));
    }

    // What a log would not take from a CSV it does not take from another log either.
    void valuesThatMayNotStand_data() {
        QTest::addColumn<int>("which");
        for (const auto& [name, which] :
             {std::pair{"a speed above 10 m/s", 0}, std::pair{"no number", 1},
              std::pair{"a load of five tonnes", 2}, std::pair{"an empty name", 3},
              std::pair{"a body mass below nothing", 4}, std::pair{"not lifted, with reps", 5},
              std::pair{"a block that ends before it begins", 6},
              std::pair{"text that is none", 7}})
            QTest::newRow(name) << which;
    }
    void valuesThatMayNotStand() {
        QFETCH(int, which);
        log::Log log = log::Log::open(a());
        desks::Slots known;
        const desks::ReadDesk mine = desks::readDesk(known, log);
        desks::Desk theirs = mine.desk;
        for (auto& [slot, atom] : theirs) {
            if (!atom.alive)
                continue;
            desks::Thing now = *atom.thing;
            if (auto* set = std::get_if<log::SetThing>(&now); set && !set->set.reps.empty()) {
                if (which == 0)
                    set->set.reps[0].velocity = 11;
                if (which == 1)
                    set->set.reps[0].velocity = std::nan("");
                if (which == 2)
                    set->set.load = Mass{5'000'000};
                if (which == 5)
                    set->set.outcome = Outcome::NotLifted;
                if (which == 7)
                    set->set.note = "\xff\xfe";
            }
            if (auto* athlete = std::get_if<Athlete>(&now); athlete && which == 3)
                athlete->name.clear();
            if (auto* session = std::get_if<log::SessionThing>(&now); session && which == 4)
                session->head.bodyMass = Mass{-1};
            if (auto* block = std::get_if<Block>(&now); block && which == 6)
                block->last = day(2020, 1, 1);
            if (now == *atom.thing && which != 1)
                continue;
            atom.thing = now;
            desks::extend(known, atom);
        }
        const std::string before = readBytes(a());
        QVERIFY(refuses([&] {
            log.together([&] {
                desks::Desk after = mine.desk;
                const auto taken = desks::take(known, after, theirs);
                QVERIFY(!taken.touched.empty());
                desks::writeDesk(log, known, mine, after, taken.touched);
            });
        }));
        QVERIFY(readBytes(a()) == before);
        QVERIFY(log.check().empty());
    }

    void killedInTheMiddle() {
        someEditsOfB(6, 60);
        const std::string bytes = readBytes(a());
        const auto rows = allRows(a(), "");
        Killer killer(20261127);
        const int all = rounds("SLOPEBOOK_KILLS", 8, 500);
        int before = 0;
        for (int round = 0; round < all; ++round) {
            fs::remove_all(log::backupFolder(a()));
            fs::remove(a().string() + "-journal");
            writeBytes(a(), bytes);
            killer.kill([&](const auto& tell) {
                mergeFiles(a(), b());
                tell(1);
            });
            QVERIFY(soundFile(a()));
            const bool asBefore = allRows(a(), "") == rows;
            before += asBefore ? 1 : 0;
            if (!killer.told().empty() || !asBefore) // there whole, or not at all
                QVERIFY(mergeFiles(a(), b()).nothingNew);
            for (const auto& copy : log::keptCopies(a()))
                QVERIFY(copy.problem.empty() && copy.beforeMerge);
        }
        qInfo("%d kills in %d rounds: %d times as before", killer.killed(), all, before);
        QVERIFY(killer.killed() > 0);
    }

    void theDiskFillsUp() {
        someEditsOfB(7, 60);
        const auto rows = allRows(a(), "");
        const int result = inChild([&] {
            ::signal(SIGXFSZ, SIG_IGN);
            rlimit limit{};
            ::getrlimit(RLIMIT_FSIZE, &limit);
            limit.rlim_cur = fs::file_size(a()) + 4096; // the copy fits, what comes does not
            ::setrlimit(RLIMIT_FSIZE, &limit);
            if (errorOf([&] { mergeFiles(a(), b()); }) != Kind::Full)
                return 1;
            limit.rlim_cur = 8192; // not even the copy
            ::setrlimit(RLIMIT_FSIZE, &limit);
            if (errorOf([&] { mergeFiles(a(), b()); }) != Kind::Full)
                return 2;
            limit.rlim_cur = limit.rlim_max;
            ::setrlimit(RLIMIT_FSIZE, &limit);
            return 0;
        });
        QCOMPARE(result, 0);
        QVERIFY(soundFile(a()));
        QVERIFY(allRows(a(), "") == rows);
        QVERIFY(!mergeFiles(a(), b()).nothingNew); // there is room again
        QVERIFY(soundFile(a()));
    }

    // Each program takes the other's log at the same time, again and again: no lock is waited for
    // for ever, and both end with the same.
    void twoProgramsAtOnce() {
        someEditsOfB(8);
        {
            log::Log log = log::Log::open(a());
            RandomEdits edits(9);
            for (int i = 0; i < 25; ++i)
                edits.edit(log);
        }
        const pid_t child = ::fork();
        if (child == 0) {
            for (int i = 0; i < 20; ++i)
                errorOf([&] { mergeFiles(b(), a()); });
            ::_exit(0);
        }
        for (int i = 0; i < 20; ++i) {
            const auto kind = errorOf([&] { mergeFiles(a(), b()); });
            QVERIFY(!kind || kind == Kind::Busy);
        }
        ::waitpid(child, nullptr, 0);
        for (int i = 0; i < 2; ++i) {
            mergeFiles(a(), b());
            mergeFiles(b(), a());
        }
        QVERIFY(mergeFiles(a(), b()).nothingNew);
        QVERIFY(mergeFiles(b(), a()).nothingNew);
        QVERIFY(soundFile(a()) && soundFile(b()));
    }
};

QTEST_APPLESS_MAIN(TestRefused)
#include "tst_refused.moc"
