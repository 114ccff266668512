// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules by which desks and a store meet are there for, one after the other, at real logs
// and a real PostgreSQL. The rules on values alone: tst_taking; in the database alone:
// tst_storerules.
#include "core/desks/conflictsides.h"
#include "core/desks/merge.h"
#include "tests/meetings/twodesks.h"

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;
namespace fs = std::filesystem;

class TestTraps : public TwoDesks {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { startServer(); }
    void init() { beginTwoDesks(); }

    // The mark: a store that went back and grew as far again by other writings is not the one that
    // was met; the number alone says nothing.
    void theMark() {
        dump();
        addSet(*m_rack, 61);
        m_rack->meet(); // the store's next writing
        m_rack->meet(); // and it has taken as far
        const auto grown = countInStore();
        restore();
        addSet(*m_office, 62);
        m_office->meet(); // another one under the same number
        QCOMPARE(countInStore(), grown);
        QVERIFY(m_rack->meet().wentBack);
        meetAll();
        QVERIFY(hasSet(*m_office, 61) && hasSet(*m_rack, 62));
        requireSame();
    }

    // Acknowledgements in the mark: who has pushed and was never told anything since notices as
    // well that the store lost it.
    void acknowledgementsAreMarks() {
        dump();
        addSet(*m_rack, 61);
        QCOMPARE(m_rack->meet().went, 1);
        restore();
        QVERIFY(m_rack->meet().wentBack);
        m_office->meet();
        QVERIFY(hasSet(*m_office, 61));
        requireSame();
    }

    // Only pulls move the cursor: what another desk pushed between this one's pull and its push.
    void onlyPullsMoveTheCursor() {
        addSet(*m_rack, 61);
        m_rack->meet(); // for the office to take
        addAthlete(*m_office, "Came from the office");
        log::Log log = m_office->open();
        Connection store = m_world->as("cora");
        bool once = false;
        meetings::meet(log, store, "2026-03-14T09:30:00Z", [&](std::int64_t, std::int64_t of) {
            if (of > 0 && !once) { // it has pulled, and is about to take
                once = true;
                addAthlete(*m_rack, "Came from the rack");
                m_rack->meet();
            }
            return true;
        });
        QVERIFY(once);
        m_office->meet();
        QVERIFY(hasAthlete(*m_office, "Came from the rack"));
        m_rack->meet();
        requireSame();
    }

    // Trails, not contents: what was changed and changed back is new, though it was said before.
    void whatWasSaidBeforeIsNew() {
        const std::string first = noteAt(*m_rack);
        setNote(*m_rack, "slept badly");
        meetAll();
        setNote(*m_office, first);
        QCOMPARE(m_office->meet().went, 1);
        m_rack->meet();
        QCOMPARE(noteAt(*m_rack), first);
        requireSame();
    }

    // No desk's identity: a copied file goes on twice, and both are desks.
    void aCopiedDesk() {
        const MeetingDesk copy(*m_folder, "copy.slopebook", m_rack->address());
        fs::copy_file(m_rack->file(), copy.file());
        addSet(*m_rack, 61);
        addSet(copy, 62);
        m_rack->meet();
        copy.meet();
        m_rack->meet();
        for (const MeetingDesk* desk : {static_cast<const MeetingDesk*>(m_rack.get()), &copy})
            QVERIFY(hasSet(*desk, 61) && hasSet(*desk, 62));
        m_office->meet();
        requireSame();
    }

    // Reviving parents: who has a new set is there, though somebody removed him meanwhile, between
    // this desk's pull and its push; no store ever holds what lives under what does not.
    void whoIsUsedIsThere() {
        addAthlete(*m_rack, "Ada");
        meetAll();
        {
            log::Log log = m_office->open();
            for (const auto& one : log.athletes())
                if (one.value.name == "Ada")
                    log.add(SessionHead{.athlete = one.id, .date = day(2026, 4, 2)});
        }
        addSet(*m_rack, 61);
        m_rack->meet();
        log::Log log = m_office->open();
        Connection store = m_world->as("cora");
        bool once = false;
        meetings::meet(log, store, "2026-03-14T09:30:00Z", [&](std::int64_t, std::int64_t of) {
            if (of > 0 && !once) {
                once = true;
                {
                    log::Log other = m_rack->open();
                    for (const auto& one : other.athletes())
                        if (one.value.name == "Ada")
                            other.remove(one.id);
                }
                m_rack->meet();
            }
            return true;
        });
        QVERIFY(once);
        QCOMPARE(m_world->count("slopebook.atoms AS a JOIN slopebook.atoms AS p ON p.id = a.parent "
                                "WHERE a.alive AND NOT p.alive"),
                 0);
        meetAll();
        QVERIFY(hasAthlete(*m_rack, "Ada") && hasAthlete(*m_office, "Ada"));
        requireSame();
    }

    // Yielding keys: of two new ones of a name the one that the store had first keeps it, the other
    // gets another, and is listed.
    void oneOfAName() {
        for (int i = 0; i < 4; ++i) { // whosever UUID is the lesser
            const std::string name = "Ada " + std::string(1, static_cast<char>('A' + i));
            {
                log::Log log = m_rack->open();
                log.add(Athlete{.name = name, .note = "first"});
            }
            addAthlete(*m_office, name);
            m_rack->meet();
            const MeetingReport report = m_office->meet();
            QCOMPARE(report.taken.renamed.size(), std::size_t(1));
            QCOMPARE(report.taken.listed.size(), std::size_t(1));
            QVERIFY(report.notTaken.empty());
            m_rack->meet();
            QVERIFY(hasAthlete(*m_rack, name + " (2)"));
            const log::Log log = m_rack->open();
            for (const auto& one : log.athletes())
                if (one.value.name == name)
                    QCOMPARE(one.value.note, std::string("first"));
        }
        meetAll();
        requireSame();
    }

    // Listing losers, under a name that comes of what lost: two desks that settle the same at the
    // same time list it once.
    void aLoserIsListedOnce() {
        const MeetingDesk copy(*m_folder, "copy.slopebook", m_rack->address());
        setNote(*m_rack, "slept badly");
        fs::copy_file(m_rack->file(), copy.file());
        setNote(*m_office, "slept well");
        m_office->meet();
        // both have taken before either has given
        std::thread other;
        meetWith(*m_rack, [&] {
            other = std::thread([&] { copy.meet(); });
            waitForLocks(2);
        });
        other.join();
        copy.meet();
        meetAll();
        QCOMPARE(desks::openConflictCount(m_office->open()), std::size_t(1));
        QVERIFY(noteAt(*m_office) == "slept badly" || noteAt(*m_office) == "slept well");
        requireSame();
    }

    // Only the revisions that were sent are acknowledged: what was changed while they were on their
    // way waits on.
    void whatWasChangedMeanwhileWaits() {
        setNote(*m_rack, "slept badly");
        meetWith(*m_rack, [&] { setNote(*m_rack, "slept well after all"); });
        QCOMPARE(m_rack->waiting(), 1);
        meetAll();
        QCOMPARE(noteAt(*m_office), std::string("slept well after all"));
        requireSame();
    }

    // Of a store that went back what it lost counts as it is here, not as it was there.
    void whatTheStoreForgotIsNotTaken() {
        dump();
        setNote(*m_rack, "slept badly");
        meetAll();
        restore();
        meetAll();
        QCOMPARE(noteAt(*m_rack), std::string("slept badly"));
        QCOMPARE(noteAt(*m_office), std::string("slept badly"));
        requireSame();
    }

    // Keys are parked, and asked for at the end: two names change places.
    void namesChangePlaces() {
        addAthlete(*m_rack, "Ada");
        addAthlete(*m_rack, "Bela");
        meetAll();
        {
            log::Log log = m_rack->open();
            AthleteId ada{}, bela{};
            for (const auto& one : log.athletes()) {
                if (one.value.name == "Ada")
                    ada = one.id;
                if (one.value.name == "Bela")
                    bela = one.id;
            }
            log.change(ada, Athlete{.name = "Cyd", .note = "was Ada"});
            log.change(bela, Athlete{.name = "Ada", .note = "was Bela"});
            log.change(ada, Athlete{.name = "Bela", .note = "was Ada"});
        }
        QVERIFY(m_rack->meet().notTaken.empty());
        const MeetingReport report = m_office->meet();
        QVERIFY(report.taken.renamed.empty() && report.taken.listed.empty());
        const log::Log log = m_office->open();
        for (const auto& one : log.athletes())
            if (one.value.name == "Ada")
                QCOMPARE(one.value.note, std::string("was Bela"));
        requireSame();
    }

    // A day entered at two desks is one, and what belongs to the one follows: also what a third
    // desk, which knew the other alone, adds later.
    void whatBelongsFollows() {
        const MeetingDesk copy(*m_folder, "copy.slopebook", m_rack->address());
        const auto enter = [](const MeetingDesk& desk, double kg) {
            log::Log log = desk.open();
            for (const auto& one : log.sessions(anAthlete(log)))
                if (one.value.date == day(2026, 4, 2)) {
                    log.add(one.id, log.lifts().front().id, ladderSet(kg, {0.8}));
                    return;
                }
            const auto session =
                log.add(SessionHead{.athlete = anAthlete(log), .date = day(2026, 4, 2)});
            log.add(session, log.lifts().front().id, ladderSet(kg, {0.8}));
        };
        enter(*m_rack, 61);
        fs::copy_file(m_rack->file(), copy.file());
        enter(*m_office, 62);
        m_office->meet();
        QCOMPARE(m_rack->meet().taken.joined.size(), std::size_t(1));
        enter(copy, 63);
        copy.meet();
        meetAll();
        const log::Log log = m_office->open();
        std::size_t sessions = 0, sets = 0;
        for (const auto& one : log.sessions(anAthlete(log)))
            if (one.value.date == day(2026, 4, 2)) {
                ++sessions;
                sets += log.session(one.id).sets.size();
            }
        QCOMPARE(sessions, std::size_t(1));
        QCOMPARE(sets, std::size_t(3));
        requireSame();
    }

    // Simultaneous merges of two files both ways do not swap for ever.
    void filesBothWaysAtOnce() {
        setNote(*m_rack, "slept badly");
        setNote(*m_office, "slept well");
        for (int round = 0; round < 3; ++round) {
            const fs::path was = m_folder->path("rack as it was");
            fs::copy_file(m_rack->file(), was, fs::copy_options::overwrite_existing);
            for (const auto& [mine, theirs] :
                 {std::pair{m_rack->file(), m_office->file()}, std::pair{m_office->file(), was}}) {
                log::Log log = log::Log::open(mine);
                const bool nothing = desks::mergeInto(log, theirs).nothingNew;
                QVERIFY(round < 2 || nothing);
            }
        }
        QCOMPARE(noteAt(*m_rack), noteAt(*m_office));
    }

    // Two athletes of one name, in a squad that this login may only read and in its own: its own
    // yields, for another name of the other could never be told.
    void whatIsOnlyReadKeepsItsName() {
        const auto admin = store::Address::read(m_world->server.address("admin"));
        for (int i = 0; i < 4; ++i) { // whosever UUID is the lesser
            const std::string name = "Ada " + std::string(1, static_cast<char>('A' + i));
            const MeetingDesk judo(*m_folder, ("judo" + std::to_string(i)).c_str(),
                                   m_world->server.address("dora"));
            store::grant(admin, "dora", "Rowing", store::May::Nothing);
            judo.create();
            judo.join();
            judo.meet();
            addAthlete(judo, name);
            judo.meet();
            addAthlete(*m_rack, name);
            m_rack->meet();
            store::grant(admin, "dora", "Rowing", store::May::Read);
            const MeetingReport report = judo.meet();
            QCOMPARE(report.held, 0);
            QCOMPARE(report.waiting, 0);
            QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'athlete' AND squad = '" +
                                    store::uuidText(m_world->judo) +
                                    "' AND content ->> 'name' = '" + name + " (2)'"),
                     1);
            m_rack->meet();
            QVERIFY(hasAthlete(*m_rack, name));
        }
    }
};

QTEST_GUILESS_MAIN(TestTraps)
#include "tst_traps.moc"
