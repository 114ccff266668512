// SPDX-License-Identifier: GPL-3.0-or-later
// One desk after another meets the store: what is entered at one is there at the others, what was
// changed twice waits for a choice, and a squad's athletes are its own.
#include "core/desks/conflictsides.h"
#include "core/store/thingjson.h"
#include "tests/meetings/twodesks.h"

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;

class TestMeet : public TwoDesks {
    Q_OBJECT
    std::unique_ptr<MeetingDesk> m_judo;
    Season m_season;

    void fill(const MeetingDesk& desk) {
        log::Log log = log::Log::create(desk.file());
        m_season = fillSeason(log);
        addTestDay(log, m_season, addOtherThings(log, m_season));
    }
    static LiftId liftCalled(const log::Log& log, const std::string& name) {
        for (const auto& lift : log.lifts())
            if (lift.value.name == name)
                return lift.id;
        throw std::runtime_error("no lift is called " + name);
    }
    void bothJoined() {
        fill(*m_rack);
        m_rack->join();
        m_rack->meet();
        m_office->create();
        m_office->join();
        m_office->meet();
    }

    /// A choice about what both wrote, which the store has as another squad's, is settled here.
    void settleWhatAnotherSquadHas() {
        m_rack->meet();
        QCOMPARE(m_office->meet().taken.listed.size(), std::size_t(1));
        Connection admin = m_world->as("admin");
        admin.ask("UPDATE slopebook.atoms SET squad = $1 WHERE kind = 'conflict'",
                  {store::uuidText(m_world->judo)});
        {
            log::Log log = m_office->open();
            desks::settle(log, desks::openConflicts(log).front().uuid, desks::Choice::WhatLost);
        }
    }

private Q_SLOTS:
    void initTestCase() { startStore(); }
    void init() {
        beginEmpty();
        m_judo = std::make_unique<MeetingDesk>(*m_folder, "judo.slopebook",
                                               m_world->server.address("dora"));
    }

    void whatIsEnteredAtOneIsThereAtTheOther() {
        fill(*m_rack);
        m_rack->join();
        const auto held = saidBy(m_rack->file());
        QCOMPARE(m_rack->waiting(), std::int64_t(held.size()));
        MeetingReport report = m_rack->meet();
        QCOMPARE(report.went, std::int64_t(held.size()));
        QCOMPARE(report.came, 0);
        QCOMPARE(report.waiting, 0);

        m_office->create();
        m_office->join("Rowing");
        report = m_office->meet();
        QCOMPARE(report.came, std::int64_t(held.size()));
        QVERIFY(report.taken.listed.empty() && report.taken.renamed.empty());
        requireSame();

        {
            log::Log log = m_office->open();
            const auto session = log.sessions(log.athletes().front().id).front();
            log.add(session.id, log.lifts().front().id, ladderSet(55, {0.91, 0.9}));
        }
        QCOMPARE(m_office->waiting(), 1);
        QCOMPARE(m_office->meet().went, 1);
        report = m_rack->meet();
        QCOMPARE(report.came, 1);
        QCOMPARE(report.taken.added, std::size_t(1));
        requireSame();
    }

    void nothingNewWritesNothing() {
        bothJoined();
        meetAll();
        for (const MeetingDesk* desk : {m_rack.get(), m_office.get()}) {
            log::Log watching = desk->open();
            const long before = watching.dataVersion();
            const MeetingReport report = desk->meet();
            QCOMPARE(watching.dataVersion(), before);
            QCOMPARE(report.came, 0);
            QCOMPARE(report.went, 0);
        }
        QCOMPARE(m_world->count("slopebook.ticks"), std::int64_t(2)); // of the beginning, and one
    }

    /// How far the desk has taken each of its squads.
    static std::set<std::int64_t> taken(const MeetingDesk& desk) {
        const log::Log log = desk.open();
        std::set<std::int64_t> all;
        for (const log::JoinedSquad& squad : log::joinedSquads(log::connectionOf(log)))
            all.insert(squad.taken);
        return all;
    }
    // A whole log would be sent back to who gave it: what it gave alone counts as taken.
    void whatALogGaveDoesNotComeBackToIt() {
        fill(*m_rack);
        m_rack->join();
        m_rack->meet();
        QCOMPARE(taken(*m_rack), std::set{countInStore()});
        m_office->create();
        m_office->join();
        m_office->meet();
        addSet(*m_office, 61);
        m_office->meet();
        QCOMPARE(taken(*m_office), std::set{countInStore()});
        QCOMPARE(m_rack->meet().came, 1);
        requireSame();
    }
    // Both have looked before either gives: the later one has not taken what the other gave.
    void whatCameBetweenIsTakenLater() {
        bothJoined();
        meetAll();
        addAthlete(*m_rack, "Rack's");
        addAthlete(*m_office, "Office's");
        Connection holder = m_world->as("cora");
        holder.run("BEGIN");
        holder.run("SELECT slopebook.hold()");
        std::atomic<int> failed = 0;
        const auto meet = [&](const MeetingDesk& desk) {
            return std::thread([&] {
                try {
                    desk.meet();
                } catch (const std::exception&) {
                    ++failed;
                }
            });
        };
        std::thread one = meet(*m_rack);
        waitForLocks(1);
        std::thread other = meet(*m_office);
        waitForLocks(2);
        holder.run("COMMIT");
        one.join();
        other.join();
        QCOMPARE(failed.load(), 0);
        meetAll();
        for (const MeetingDesk* desk : {m_rack.get(), m_office.get()})
            QVERIFY(hasAthlete(*desk, "Rack's") && hasAthlete(*desk, "Office's"));
        requireSame();
    }

    void changedTwiceWaitsForAChoice() {
        bothJoined();
        const auto rename = [](const MeetingDesk& desk, const char* note) {
            log::Log log = desk.open();
            const auto session = log.sessions(log.athletes().front().id).front();
            SessionHead head = session.value;
            head.note = note;
            log.change(session.id, head);
        };
        rename(*m_rack, "slept badly");
        rename(*m_office, "slept well");
        m_rack->meet();
        const MeetingReport report = m_office->meet();
        QCOMPARE(report.taken.listed.size(), std::size_t(1));
        meetAll();
        requireSame();
        for (const MeetingDesk* desk : {m_rack.get(), m_office.get()})
            QCOMPARE(desks::openConflictCount(desk->open()), std::size_t(1));
        {
            log::Log log = m_rack->open();
            desks::settle(log, desks::openConflicts(log).front().uuid, desks::Choice::WhatLost);
        }
        meetAll();
        requireSame();
        QCOMPARE(desks::openConflictCount(m_office->open()), std::size_t(0));
    }

    // Each desk had entered the day by itself: one session, with the sets of both.
    void aDayEnteredAtBothIsOne() {
        bothJoined();
        const auto enter = [](const MeetingDesk& desk, double kg) {
            log::Log log = desk.open();
            const auto session =
                log.add(SessionHead{.athlete = log.athletes().front().id, .date = day(2026, 4, 2)});
            log.add(session, log.lifts().front().id, ladderSet(kg, {0.8}));
        };
        enter(*m_rack, 60);
        enter(*m_office, 70);
        m_rack->meet();
        const MeetingReport report = m_office->meet();
        QCOMPARE(report.taken.joined.size(), std::size_t(1));
        QVERIFY(report.taken.listed.empty());
        meetAll();
        requireSame();
        const log::Log log = m_rack->open();
        int sessions = 0;
        std::size_t sets = 0;
        for (const auto& one : log.sessions(log.athletes().front().id))
            if (one.value.date == day(2026, 4, 2)) {
                ++sessions;
                sets += log.session(one.id).sets.size();
            }
        QCOMPARE(sessions, 1);
        QCOMPARE(sets, std::size_t(2));
    }

    // Of what is everybody's the same choice may come up in two squads; the store has the other's.
    void aChoiceThatAnotherSquadHasIsMadeHere() {
        bothJoined();
        const auto note = [](const MeetingDesk& desk, const char* text) {
            log::Log log = desk.open();
            auto lift = log.lifts().front();
            lift.value.note = text;
            log.change(lift.id, lift.value);
        };
        note(*m_rack, "from the floor");
        note(*m_office, "from blocks");
        settleWhatAnotherSquadHas();
        MeetingReport report = m_office->meet();
        QCOMPARE(report.went, 1); // the lift
        QVERIFY(report.notTaken.empty());
        report = m_office->meet();
        QCOMPARE(report.went, 0);
        QVERIFY(report.notTaken.empty());
        QCOMPARE(report.held, 1);
        QCOMPARE(desks::openConflictCount(m_office->open()), std::size_t(0));
    }

    // One about a squad's own is that squad's: where the store refuses it, that is told.
    void aChoiceOfASquadsOwnIsNotKeptInSilence() {
        bothJoined();
        setNote(*m_rack, "from the floor");
        setNote(*m_office, "from blocks");
        settleWhatAnotherSquadHas();
        for (int i = 0; i < 2; ++i) {
            const MeetingReport report = m_office->meet();
            QCOMPARE(report.notTaken.size(), std::size_t(1));
            QCOMPARE(report.held, 0);
            QCOMPARE(report.waiting, 1);
        }
    }

    // A session that the store had under that number keeps it; this desk's own of the same number,
    // which the store had as well under another, gets the next.
    void movedOntoOneAnother() {
        bothJoined();
        SessionId first{}, second{};
        {
            log::Log log = m_rack->open();
            const AthleteId who = log.athletes().front().id;
            first = log.add(SessionHead{.athlete = who, .date = day(2026, 4, 2)});
            second = log.add(SessionHead{.athlete = who, .date = day(2026, 4, 3)});
            log.add(first, log.lifts().front().id, ladderSet(60, {0.8}));
            log.add(second, log.lifts().front().id, ladderSet(70, {0.7}));
        }
        meetAll();
        const auto move = [](const MeetingDesk& desk, Date from, Date to) {
            log::Log log = desk.open();
            for (const auto& one : log.sessions(log.athletes().front().id))
                if (one.value.date == from) {
                    SessionHead head = one.value;
                    head.date = to;
                    log.change(one.id, head);
                    return;
                }
        };
        move(*m_rack, day(2026, 4, 2), day(2026, 4, 5));
        move(*m_office, day(2026, 4, 3), day(2026, 4, 5));
        meetAll();
        requireSame();
        const log::Log log = m_office->open();
        std::set<int> numbers;
        for (const auto& one : log.sessions(log.athletes().front().id))
            if (one.value.date == day(2026, 4, 5))
                numbers.insert(one.value.ordinal);
        QCOMPARE(numbers, (std::set<int>{1, 2}));
    }

    void whatIsRemovedIsGoneAndWhatIsUsedComesBack() {
        bothJoined();
        {
            log::Log log = m_rack->open();
            const auto session = log.sessions(log.athletes().front().id).back();
            log.remove(session.id);
        }
        {
            log::Log log = m_office->open();
            const auto session = log.sessions(log.athletes().front().id).back();
            log.add(session.id, log.lifts().front().id, ladderSet(66, {0.66}));
        }
        m_rack->meet();
        const MeetingReport report = m_office->meet();
        QCOMPARE(report.taken.revived.size(), std::size_t(1));
        meetAll();
        requireSame();
        const log::Log log = m_rack->open();
        bool there = false;
        for (const auto& set : log.session(log.sessions(log.athletes().front().id).back().id).sets)
            there = there || set.set.load == massFromKilograms(66);
        QVERIFY(there);
    }

    void aStoreThatWentBackIsToldAgain() {
        bothJoined();
        const std::string dump = m_folder->path("dump").string();
        m_world->server.run("pg_dump", "-Fc -f " + dump + " squad");
        {
            log::Log log = m_rack->open();
            log.add(Athlete{.name = "Came later"});
        }
        meetAll();
        m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        m_world->server.sql("CREATE DATABASE squad", "postgres");
        m_world->server.run("pg_restore", "-d squad " + dump);
        { // it grows again, otherwise
            log::Log log = m_office->open();
            log.add(Athlete{.name = "Came last"});
        }
        const MeetingReport report = m_office->meet();
        QVERIFY(report.wentBack);
        QVERIFY(report.went >= 2);
        QVERIFY(m_rack->meet().wentBack);
        meetAll();
        requireSame();
        const log::Log log = m_rack->open();
        QCOMPARE(std::ranges::count_if(
                     log.athletes(),
                     [](const auto& one) { return one.value.name.starts_with("Came "); }),
                 2);
    }

    void squadsAreTheirOwn() {
        bothJoined();
        m_judo->create();
        m_judo->join();
        MeetingReport report = m_judo->meet();
        {
            const log::Log log = m_judo->open();
            QVERIFY(log.athletes().empty());
            QVERIFY(!log.lifts().empty()); // everybody's
        }
        // granted later, all of it comes, in full
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::grant(admin, "dora", "Rowing", store::May::Read);
        report = m_judo->meet();
        QCOMPARE(report.squadsCame, std::vector<std::string>{"Rowing"});
        const std::size_t athletes = m_rack->open().athletes().size();
        QCOMPARE(m_judo->open().athletes().size(), athletes);
        // what is changed there waits here, and is told
        {
            log::Log log = m_judo->open();
            const auto one = log.athletes().front();
            Athlete changed = one.value;
            changed.note = "by a reader";
            log.change(one.id, changed);
        }
        report = m_judo->meet();
        QCOMPARE(report.held, 1);
        QCOMPARE(report.waiting, 1);
        // and goes once it may
        store::grant(admin, "dora", "Rowing", store::May::Write);
        report = m_judo->meet();
        QCOMPARE(report.went, 1);
        QCOMPARE(report.waiting, 0);
        // no longer let in: what is here stays
        store::grant(admin, "dora", "Rowing", store::May::Nothing);
        report = m_judo->meet();
        QCOMPARE(report.squadsWent, std::vector<std::string>{"Rowing"});
        QCOMPARE(m_judo->open().athletes().size(), athletes);
    }

    void anAthleteMoves_data() {
        QTest::addColumn<bool>("unsent");
        QTest::newRow("all was sent") << false;
        QTest::newRow("some was not") << true;
    }
    void anAthleteMoves() {
        QFETCH(bool, unsent);
        bothJoined();
        m_judo->create();
        m_judo->join();
        m_judo->meet();
        Sixteen who{};
        std::string name;
        std::size_t sessions = 0;
        {
            const log::Log log = m_rack->open();
            for (const auto& one : log.athletes())
                if (const auto his = log.sessions(one.id); his.size() > sessions) {
                    sessions = his.size();
                    name = one.value.name;
                    who =
                        log::atomOf(log::connectionOf(log), {.kind = "athlete", .one = raw(one.id)})
                            ->uuid;
                }
        }
        QVERIFY(sessions > 0);
        Connection admin = m_world->as("admin");
        admin.ask("SELECT slopebook.move_athlete($1, $2)",
                  {store::uuidText(who), store::uuidText(m_world->judo)});
        const auto here = [&](const MeetingDesk& desk) {
            const log::Log log = desk.open();
            return std::ranges::any_of(log.athletes(),
                                       [&](const auto& one) { return one.value.name == name; });
        };
        if (unsent) {
            log::Log log = m_rack->open();
            for (const auto& one : log.athletes())
                if (one.value.name == name)
                    log.add(log.sessions(one.id).front().id, log.lifts().front().id,
                            ladderSet(77, {0.7}));
        }
        const MeetingReport report = m_rack->meet();
        QCOMPARE(report.departed.size(), std::size_t(1));
        QCOMPARE(report.departed.front().name, name);
        QCOMPARE(report.departed.front().stayed, unsent);
        QCOMPARE(here(*m_rack), unsent);
        QCOMPARE(report.held, unsent ? 1 : 0);
        QVERIFY(findingsIn(m_rack->file()).empty());
        QCOMPARE(m_rack->meet().departed.size(), std::size_t(0));
        m_judo->meet();
        QVERIFY(here(*m_judo));
        {
            const log::Log log = m_judo->open();
            QCOMPARE(log.sessions(log.athletes().front().id).size(), sessions);
        }
        QVERIFY(findingsIn(m_judo->file()).empty());
        m_office->meet();
        QVERIFY(!here(*m_office));
        // nobody was told that he was removed
        QCOMPARE(m_world->count("slopebook.atoms WHERE NOT alive AND squad = '" +
                                store::uuidText(m_world->judo) + "'"),
                 0);
    }

    // Two coaches had begun apart, each with a lift of that name: there is one, whosever UUID is
    // the lesser, and nobody's sets lose it.
    void liftsMadeApartInTwoSquads() {
        const auto own = [](const MeetingDesk& desk, const char* who) {
            log::Log log = log::Log::create(desk.file());
            const LiftId lift = log.add(Lift{.name = "Squat"});
            const DeviceId device = log.add(Device{.name = "Encoder"});
            const AthleteId athlete = log.add(Athlete{.name = who});
            const SessionId session =
                log.add(SessionHead{.athlete = athlete, .date = day(2026, 4, 2)});
            log.setConditions(session, lift, {.device = device});
            log.add(session, lift, ladderSet(60, {0.8}));
        };
        for (int i = 0; i < 4; ++i) {
            init();
            own(*m_rack, "Ada");
            own(*m_judo, "Bo");
            m_rack->join();
            m_rack->meet();
            m_judo->join();
            for (const MeetingDesk* desk : {m_judo.get(), m_rack.get(), m_judo.get()}) {
                const MeetingReport report = desk->meet();
                QVERIFY(report.notTaken.empty());
                QCOMPARE(report.waiting, 0);
            }
            for (const MeetingDesk* desk : {m_rack.get(), m_judo.get()}) {
                const log::Log log = desk->open();
                QCOMPARE(log.lifts().size(), std::size_t(1));
                QCOMPARE(log.lifts().front().value.name, std::string("Squat"));
                QCOMPARE(log.devices().size(), std::size_t(1));
                QCOMPARE(log.liftsOf(log.athletes().front().id).size(), std::size_t(1));
                QVERIFY(findingsIn(desk->file()).empty());
            }
        }
    }

    // Another squad's sets, which this login does not see, need what is removed here: that waits,
    // and all else goes.
    void whatAnotherSquadNeedsHoldsNothingUp() {
        bothJoined();
        m_judo->create();
        m_judo->join();
        m_judo->meet();
        {
            log::Log log = m_rack->open();
            log.add(Lift{.name = "Needed elsewhere"});
            for (const char* name : {"One", "Two", "Three"})
                log.add(Lift{.name = name});
        }
        meetAll();
        m_judo->meet();
        {
            log::Log log = m_judo->open();
            const AthleteId who = log.add(Athlete{.name = "Bo"});
            const SessionId session = log.add(SessionHead{.athlete = who, .date = day(2026, 4, 2)});
            for (const auto& lift : log.lifts())
                if (lift.value.name == "Needed elsewhere")
                    log.add(session, lift.id, ladderSet(60, {0.8}));
        }
        QCOMPARE(m_judo->meet().waiting, 0);
        {
            log::Log log = m_rack->open();
            log.remove(liftCalled(log, "Needed elsewhere"));
            // three names change hands: whichever of the four are given together, none goes
            const auto one = liftCalled(log, "One"), two = liftCalled(log, "Two"),
                       three = liftCalled(log, "Three");
            log.change(one, Lift{.name = "Four"});
            log.change(two, Lift{.name = "One"});
            log.change(three, Lift{.name = "Two"});
            log.change(one, Lift{.name = "Three"});
        }
        MeetingReport report = m_rack->meet();
        QCOMPARE(report.notTaken.size(), std::size_t(1));
        QCOMPARE(report.waiting, 1);
        QCOMPARE(report.went, 3);
        {
            log::Log log = m_rack->open();
            log.add(Athlete{.name = "Came later"});
        }
        report = m_rack->meet();
        QCOMPARE(report.notTaken.size(), std::size_t(1));
        QCOMPARE(report.went, 1);
        // what is refused at every meeting is given twice in each (a sequence goes on where a push
        // is taken back)
        m_world->server.sql("CREATE SEQUENCE pushes; CREATE FUNCTION counted() RETURNS trigger "
                            "LANGUAGE plpgsql SECURITY DEFINER AS $$BEGIN PERFORM "
                            "nextval('public.pushes'); RETURN NULL; END$$; CREATE TRIGGER counted "
                            "AFTER UPDATE ON slopebook.store EXECUTE FUNCTION counted()");
        QCOMPARE(m_rack->meet().notTaken.size(), std::size_t(1));
        QCOMPARE(m_world->server.sql("SELECT last_value FROM pushes"), std::string("2"));
        m_office->meet();
        const log::Log log = m_office->open();
        QVERIFY(std::ranges::any_of(
            log.athletes(), [](const auto& one) { return one.value.name == "Came later"; }));

        // made anew under its name, here and with a set: it is that one again
        {
            log::Log rack = m_rack->open();
            const LiftId anew = rack.add(Lift{.name = "Needed elsewhere"});
            rack.add(aSession(rack), anew, ladderSet(60, {0.8}));
        }
        report = m_rack->meet();
        QVERIFY(report.notTaken.empty());
        QCOMPARE(report.waiting, 0);
        QCOMPARE(report.taken.joined.size(), std::size_t(1));
        meetAll();
        m_judo->meet();
        requireSame();
        const log::Log judo = m_judo->open();
        QCOMPARE(judo.liftsOf(judo.athletes().front().id),
                 std::vector{liftCalled(judo, "Needed elsewhere")});
    }

    // A store goes back, with two squads at one desk: what each had goes to each again.
    void squadsAreToldAgainApart() {
        m_judo->create();
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::grant(admin, "dora", "Rowing", store::May::Write);
        m_judo->join("Judo");
        m_judo->meet();
        const std::string dump = m_folder->path("dump").string();
        m_world->server.run("pg_dump", "-Fc -f " + dump + " squad");
        fill(*m_rack);
        m_rack->join();
        m_rack->meet();
        m_judo->meet();
        {
            log::Log log = m_judo->open();
            log.add(Athlete{.name = "Bo"});
        }
        m_judo->meet();
        m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        m_world->server.sql("CREATE DATABASE squad", "postgres");
        m_world->server.run("pg_restore", "-d squad " + dump);
        const MeetingReport report = m_judo->meet();
        QVERIFY(report.wentBack && report.notTaken.empty());
        QCOMPARE(report.waiting, 0);
        QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'athlete' AND squad = '" +
                                store::uuidText(m_world->judo) + "'"),
                 1);
        QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'athlete' AND squad = '" +
                                store::uuidText(m_world->rowing) + "'"),
                 std::int64_t(m_rack->open().athletes().size()));
    }

    void badContentStaysOut() {
        bothJoined();
        // a coach with psql: a session of a day that no calendar has, and a set in it; and a good
        // one
        Connection cora = m_world->as("cora");
        Sixteen who{};
        Said said = saidByStore(cora);
        for (const auto& [uuid, one] : said)
            if (log::kindOfContent(std::get<0>(one)) == "athlete" && std::get<1>(one))
                who = uuid;
        Sixteen lift{};
        for (const auto& [uuid, one] : said)
            if (log::kindOfContent(std::get<0>(one)) == "lift" && std::get<1>(one))
                lift = uuid;
        const Atom forged = atom("session", numbered(1), m_world->rowing, who,
                                 R"({"day":"2026-02-03","ordinal":7})"); // its trail is invented
        const Atom in = setOf(2, m_world->rowing, numbered(1), lift, 1, 50'000, "0.9");
        QCOMPARE(store::push(cora, StoreWorld::markOf(cora), std::vector<Atom>{forged, in}).answer,
                 Pushed::Answer::Ok);
        {
            log::Log log = m_rack->open();
            log.add(Athlete{.name = "Good news"});
        }
        m_rack->meet();
        MeetingReport report = m_office->meet();
        QCOMPARE(report.leftOut.size(), std::size_t(2));
        const log::Log log = m_office->open();
        QVERIFY(std::ranges::any_of(log.athletes(),
                                    [](const auto& one) { return one.value.name == "Good news"; }));
        QVERIFY(findingsIn(m_office->file()).empty());
        // told again until it is mended there
        QCOMPARE(m_office->meet().leftOut.size(), std::size_t(2));
        m_world->server.sql(
            "DELETE FROM slopebook.atoms WHERE id = '" + store::uuidText(numbered(2)) +
            "'; DELETE FROM slopebook.atoms WHERE id = '" + store::uuidText(numbered(1)) + "'");
        report = m_office->meet();
        QVERIFY(report.leftOut.empty());
    }

    void refusals() {
        m_rack->create();
        QVERIFY(refusal([&] { m_rack->meet(); }).find("meets no store") != std::string::npos);
        QVERIFY(refusal([&] { m_rack->join("Judo"); }).find("Rowing") != std::string::npos);
        m_rack->join();
        {
            log::Log log = m_rack->open();
            QCOMPARE(meetings::joined(log)->squad, std::string()); // known after the first meeting
        }
        m_rack->meet();
        {
            log::Log log = m_rack->open();
            QCOMPARE(meetings::joined(log)->squad, std::string("Rowing"));
            meetings::leaveStore(log);
            QVERIFY(!meetings::joined(log));
            QVERIFY(refusal([&] { meetings::leaveStore(log); }).find("meets no store") !=
                    std::string::npos);
        }
        // another store at the same place
        m_rack->join();
        m_world->server.sql("UPDATE slopebook.store SET id = gen_random_uuid()");
        QVERIFY(refusal([&] { m_rack->meet(); }).find("another one") != std::string::npos);
        QVERIFY(refusal([&] { m_rack->join(); }).find("meets already") != std::string::npos);
    }
};

QTEST_GUILESS_MAIN(TestMeet)
#include "tst_meet.moc"
