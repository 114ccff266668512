// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that are at work beside those of tst_traps, each at real logs and a real PostgreSQL, by
// what breaks without it: what is one moment, which of two states stands unasked, what comes of
// older copies, and how much goes at once.
#include "core/desks/conflictsides.h"
#include "tests/log/olderlog.h"
#include "tests/meetings/twodesks.h"

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;
namespace fs = std::filesystem;

class TestRules : public TwoDesks {
    Q_OBJECT

    std::size_t choices() const { return desks::openConflictCount(m_office->open()); }

    static void removeSet(const MeetingDesk& desk, double kg) {
        log::Log log = desk.open();
        for (const auto& session : log.sessions(anAthlete(log)))
            for (const auto& placed : log.session(session.id).sets)
                if (placed.set.load == massFromKilograms(kg)) {
                    log.remove(placed.id);
                    return;
                }
        throw std::runtime_error("no such set");
    }
    static std::size_t setsIn(const fs::path& file) {
        const log::Log log = log::Log::open(file, log::Access::ReadOnly);
        std::size_t sets = 0;
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                sets += log.session(session.id).sets.size();
        return sets;
    }

private Q_SLOTS:
    void initTestCase() { startServer(); }
    void init() { beginTwoDesks(); }

    // A pull is one moment (REPEATABLE READ): what is written while it waits is not read beside a
    // mark of before. Otherwise it would be held for sent under a number that the desk does not
    // know, and a store that went back to before it would go unnoticed.
    void aPullIsOneMoment() {
        dump();
        Connection admin = m_world->as("admin");
        admin.run("BEGIN");
        admin.run("LOCK TABLE slopebook.atoms IN ACCESS EXCLUSIVE MODE");
        std::string failed;
        std::thread meeting([&] {
            try {
                m_office->meet();
            } catch (const std::exception& error) {
                failed = error.what();
            }
        });
        waitForLocks(1); // it knows the store's number, and has read nothing yet
        log::Carried came;
        {
            const MeetingDesk other(*m_folder, "other.slopebook", m_rack->address());
            log::Log log = log::Log::create(other.file());
            log.add(Athlete{.name = "Came meanwhile"});
            for (const auto& [uuid, one] : heldBy(log))
                if (one.kind == "athlete")
                    came = one;
        }
        const std::vector batch{store::atomOf(came, m_world->rowing)};
        QCOMPARE(store::push(admin, StoreWorld::markOf(admin), batch).answer, Pushed::Answer::Ok);
        admin.run("COMMIT");
        meeting.join();
        QVERIFY2(failed.empty(), failed.c_str());
        restore();
        meetAll();
        requireSame();
    }

    // Numbers are in the order in which they are committed: who waits in the middle of a push
    // is waited for, and nobody's cursor passes him.
    void whoIsSlowIsNotPassed() {
        addSet(*m_rack, 61);
        addAthlete(*m_office, "Came from the office");
        // the rack's set has its number when it meets this one, which is not committed
        Connection admin = m_world->as("admin");
        Sixteen set{};
        {
            const log::Log log = m_rack->open();
            for (const auto& [uuid, one] : heldBy(log))
                if (log::isUnsent(log::connectionOf(log), uuid))
                    set = uuid;
        }
        admin.run("BEGIN");
        admin.run("SET LOCAL session_replication_role = replica"); // past our triggers
        admin.ask("INSERT INTO slopebook.atoms (id, squad, kind, parent, version, author, alive, "
                  "trail, hashes) VALUES ($1, $2, 'set', $1, 0, 'admin', false, ARRAY[$1::uuid], "
                  "ARRAY[$1::uuid])",
                  {store::uuidText(set), store::uuidText(m_world->rowing)});
        std::atomic<int> failed = 0;
        std::atomic<bool> done = false;
        std::thread slow([&] {
            try {
                m_rack->meet();
            } catch (const std::exception&) {
                ++failed;
            }
        });
        waitForLocks(1);
        std::thread quick([&] {
            try {
                m_office->meet();
                m_office->meet(); // how far it took the store
            } catch (const std::exception&) {
                ++failed;
            }
            done = true;
        });
        waitForLocks(2, &done);
        admin.run("ROLLBACK");
        slow.join();
        quick.join();
        QCOMPARE(failed.load(), 0);
        meetAll();
        QVERIFY(hasSet(*m_office, 61));
        requireSame();
    }

    // What came between a pull and a push is not written over: it is taken first, and listed. (Who
    // comes later finds it, though the desk that wrote it should never meet again.)
    void whatCameMeanwhileIsTakenFirst() {
        addAthlete(*m_office, "Something to take");
        m_office->meet();
        setNote(*m_rack, "slept badly");
        {
            log::Log log = m_rack->open();
            Connection store = m_world->as("cora");
            bool once = false;
            meetings::meet(log, store, "2026-03-14T09:30:00Z", [&](std::int64_t, std::int64_t of) {
                if (of > 0 && !once) { // it has pulled
                    once = true;
                    setNote(*m_office, "slept well");
                    m_office->meet();
                }
                return true;
            });
            QVERIFY(once);
        }
        const MeetingDesk later(*m_folder, "later.slopebook", m_rack->address());
        later.create();
        later.join();
        later.meet();
        QCOMPARE(desks::openConflictCount(later.open()), std::size_t(1));
        meetAll();
        requireSame();
    }

    // Who is where both last agreed has said nothing: the other's word stands, and nobody is asked.
    void changedBackIsNoWord() {
        const std::string first = noteAt(*m_rack);
        setNote(*m_rack, "slept badly");
        setNote(*m_rack, first);
        setNote(*m_office, "slept well");
        meetAll();
        QCOMPARE(noteAt(*m_rack), std::string("slept well"));
        QCOMPARE(choices(), std::size_t(0));
        requireSame();
    }

    void bothSayTheSame() {
        setNote(*m_rack, "slept");
        setNote(*m_rack, "slept badly"); // by another way
        setNote(*m_office, "slept badly");
        meetAll();
        QCOMPARE(noteAt(*m_office), std::string("slept badly"));
        QCOMPARE(choices(), std::size_t(0));
        requireSame();
    }

    // Alive beats removed, whoever comes first; the removal is listed, to be chosen.
    void whatIsChangedAndRemovedLives_data() {
        QTest::addColumn<bool>("removedFirst");
        QTest::newRow("the removal is in the store") << true;
        QTest::newRow("the change is in the store") << false;
    }
    void whatIsChangedAndRemovedLives() {
        QFETCH(bool, removedFirst);
        addSet(*m_rack, 61);
        meetAll();
        const MeetingDesk& removes = removedFirst ? *m_rack : *m_office;
        const MeetingDesk& changes = removedFirst ? *m_office : *m_rack;
        removeSet(removes, 61);
        {
            log::Log log = changes.open();
            for (const auto& placed : log.session(aSession(log)).sets)
                if (placed.set.load == massFromKilograms(61)) {
                    Set set = placed.set;
                    set.note = "in the belt";
                    log.change(placed.id, set);
                }
        }
        meetAll();
        QVERIFY(hasSet(*m_rack, 61) && hasSet(*m_office, 61));
        QCOMPARE(choices(), std::size_t(1));
        requireSame();
    }

    // A day that was entered twice is one day; of two body masses one is listed.
    void aDayOfTwoBodyMasses() {
        for (const auto& [desk, kg] : {std::pair{m_rack.get(), 71.0}, {m_office.get(), 72.0}}) {
            log::Log log = desk->open();
            log.add(SessionHead{.athlete = anAthlete(log),
                                .date = day(2026, 4, 2),
                                .bodyMass = massFromKilograms(kg)});
        }
        meetAll();
        QCOMPARE(choices(), std::size_t(1));
        requireSame();
    }

    // The key of what was removed is free: also in the store, which still has it.
    void aNameThatWasRemovedIsFree() {
        addAthlete(*m_rack, "Ada");
        meetAll();
        {
            log::Log log = m_rack->open();
            for (const auto& one : log.athletes())
                if (one.value.name == "Ada")
                    log.remove(one.id);
        }
        addAthlete(*m_rack, "Ada");
        const MeetingReport report = m_rack->meet();
        QVERIFY(report.notTaken.empty() && report.taken.renamed.empty());
        meetAll();
        QVERIFY(hasAthlete(*m_office, "Ada") && !hasAthlete(*m_office, "Ada (2)"));
        requireSame();
    }

    // Two copies of one older log, which were changed apart, and then brought up to date apart: the
    // same things, by names that come of what they are and not of what they say.
    void olderCopiesAreOne() {
        beginAnew(*m_world);
        const MeetingDesk whole(*m_folder, "whole.slopebook", m_rack->address());
        {
            log::Log log = log::Log::create(whole.file());
            fillSeason(log);
        }
        const std::size_t sets = setsIn(whole.file());
        for (const auto& [desk, note] :
             {std::pair{m_rack.get(), "slept badly"}, {m_office.get(), "slept well"}}) {
            setNote(whole, note);
            fs::remove(desk->file());
            writeAsOlder(whole.file(), desk->file(), 4); // without any names of things
            desk->open();
            desk->join();
        }
        meetAll();
        QCOMPARE(setsIn(m_rack->file()), sets);
        QCOMPARE(setsIn(m_office->file()), sets);
        QCOMPARE(choices(), std::size_t(1)); // the note, and nothing else
        requireSame();
    }

    // PostgreSQL copies nothing into a table with row-level security: more than goes in one
    // statement goes by way of a table of the connection's own.
    void muchGoesByCopy() {
        const auto bare = m_world->server.tryPsql(
            "cora", "COPY slopebook.atoms (id, squad, kind, parent, alive, trail, hashes, content) "
                    "FROM STDIN");
        QVERIFY2(bare.exit != 0 && bare.out.find("row-level security") != std::string::npos,
                 bare.out.c_str());
        {
            log::Log log = m_rack->open();
            log.together([&] {
                for (int i = 0; i < 600; ++i)
                    log.add(aSession(log), log.lifts().front().id, ladderSet(20 + i, {0.5}));
            });
        }
        QCOMPARE(m_rack->meet().went, 600);
        QCOMPARE(m_office->meet().came, 600);
        requireSame();
    }
};

QTEST_GUILESS_MAIN(TestRules)
#include "tst_rules.moc"
