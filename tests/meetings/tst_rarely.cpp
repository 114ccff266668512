// SPDX-License-Identifier: GPL-3.0-or-later
// What seldom happens where desks meet a store, each at real logs and a real PostgreSQL: who comes
// back where the name was given anew, who went and came back before a desk heard of it, a name that
// is taken by what may not stand in a log.
#include "core/meetings/going.h"
#include "core/meetings/marks.h"
#include "tests/meetings/twodesks.h"

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;

namespace {
AthleteId called(const log::Log& log, const std::string& name) {
    for (const auto& one : log.athletes())
        if (one.value.name == name)
            return one.id;
    throw std::runtime_error("nobody is called " + name);
}
StationId aStation(const log::Log& log, const std::string& name) {
    for (const auto& one : log.stations())
        if (one.value.name == name)
            return one.id;
    throw std::runtime_error("no station is called " + name);
}
StationId addStation(log::Log& log, const std::string& name, const std::string& note = {}) {
    return log.add(Station{.name = name, .lift = log.lifts().front().id, .note = note});
}
Sixteen uuidOf(const log::Log& log, AthleteId athlete) {
    return log::atomOf(log::connectionOf(log), {.kind = "athlete", .one = raw(athlete)})->uuid;
}
std::size_t setsOf(const log::Log& log, const std::string& name) {
    std::size_t sets = 0;
    for (const auto& session : log.sessions(called(log, name)))
        sets += log.session(session.id).sets.size();
    return sets;
}
} // namespace

class TestRarely : public TwoDesks {
    Q_OBJECT

    void move(const Sixteen& athlete, const Sixteen& squad) const {
        Connection admin = m_world->as("admin");
        admin.ask("SELECT slopebook.move_athlete($1, $2)",
                  {store::uuidText(athlete), store::uuidText(squad)});
    }
    static Sixteen idAt(const MeetingDesk& desk, const std::string& name) {
        const log::Log log = desk.open();
        return uuidOf(log, called(log, name));
    }
    /// With a session, at the rack.
    void addAda() const {
        log::Log log = m_rack->open();
        const AthleteId ada = log.add(Athlete{.name = "Ada"});
        log.add(SessionHead{.athlete = ada, .date = day(2026, 4, 2)});
    }
    static void changeAda(const MeetingDesk& desk, bool herself, bool set) {
        log::Log log = desk.open();
        const AthleteId ada = called(log, "Ada");
        if (herself)
            log.change(ada, Athlete{.name = "Ada", .note = "tall"});
        if (set)
            log.add(log.sessions(ada).front().id, log.lifts().front().id, ladderSet(60, {0.8}));
    }
    /// Bo is entered at another squad's desk; the rack may write in both from now on, and has him.
    void bringBo(const MeetingDesk& judo) const {
        judo.create();
        judo.join();
        addAthlete(judo, "Bo");
        judo.meet();
        store::grant(store::Address::read(m_world->server.address("admin")), "cora", "Judo",
                     store::May::Write);
        m_rack->meet();
    }
    void requireAsSeenBy(const MeetingDesk& desk, const std::string& login) const {
        Connection store = m_world->as(login);
        const std::string where = difference(saidBy(desk.file()), saidByStore(store));
        QVERIFY2(where.empty(), (login + ": " + where).c_str());
        const std::string found = findingsIn(desk.file());
        QVERIFY2(found.empty(), found.c_str());
    }

private Q_SLOTS:
    void initTestCase() { startServer(); }
    void init() { beginTwoDesks(); }

    // Ada is removed at the office, and another Ada entered there, while the rack writes something
    // of hers that is all that comes: she is back with it, under another name, though nothing that
    // came speaks of her.
    void whoComesBackFindsHerNameGiven_data() {
        QTest::addColumn<QString>("comes");
        for (const char* what : {"a set", "a session", "an attempt", "conditions", "a repeat test",
                                 "a check load", "a turn"})
            QTest::newRow(what) << QString::fromLatin1(what);
    }
    void whoComesBackFindsHerNameGiven() {
        QFETCH(QString, comes);
        {
            log::Log log = m_rack->open();
            const AthleteId ada = log.add(Athlete{.name = "Ada"});
            const SessionId session = log.add(SessionHead{.athlete = ada, .date = day(2026, 4, 2)});
            log.add(session, log.lifts().front().id, ladderSet(60, {0.8}));
            addStation(log, "Erg");
        }
        meetAll();
        {
            log::Log log = m_office->open();
            const AthleteId ada = called(log, "Ada");
            log.remove(log.sessions(ada).front().id);
            log.remove(ada);
            log.add(Athlete{.name = "Ada", .note = "another one"});
        }
        {
            log::Log log = m_rack->open();
            const AthleteId ada = called(log, "Ada");
            const SessionId session = log.sessions(ada).front().id;
            const LiftId lift = log.lifts().front().id;
            const TestKindId test = log.testKinds().front().id;
            if (comes == QStringLiteral("a set"))
                log.add(session, lift, ladderSet(70, {0.7}));
            else if (comes == QStringLiteral("a session"))
                log.add(SessionHead{.athlete = ada, .date = day(2026, 4, 3)});
            else if (comes == QStringLiteral("an attempt"))
                log.setBattery(session, {.tests = {{.kind = test,
                                                    .attempts = {{BodySide::Left, 1.8, {}, {}, {}}},
                                                    .conditions = {}}},
                                         .gaps = {}});
            else if (comes == QStringLiteral("conditions"))
                log.setConditions(session, lift, {.surface = "mat"});
            else if (comes == QStringLiteral("a repeat test"))
                log.add(SessionHead{.athlete = ada, .date = day(2026, 4, 3), .repeatOf = session});
            else if (comes == QStringLiteral("a check load"))
                log.setCheckLoads(ada, lift, {massFromKilograms(60)});
            else
                log.setRoster(
                    {.station = aStation(log, "Erg"), .day = day(2026, 4, 3), .athletes = {ada}});
        }
        m_rack->meet();
        const MeetingReport report = m_office->meet();
        for (const Words& why : report.leftOut)
            QFAIL(english(why).c_str());
        QVERIFY(!report.taken.revived.empty());
        QCOMPARE(report.taken.renamed.size(), std::size_t(1));
        meetAll();
        for (const MeetingDesk* desk : {m_rack.get(), m_office.get()})
            QVERIFY(hasAthlete(*desk, "Ada") && hasAthlete(*desk, "Ada (2)"));
        requireSame();
    }

    // The same of a station, which a turn comes for.
    void aStationComesBackWhereItsNameIsGiven() {
        {
            log::Log log = m_rack->open();
            addStation(log, "Erg");
            log.setRoster({.station = aStation(log, "Erg"),
                           .day = day(2026, 4, 2),
                           .athletes = {anAthlete(log)}});
        }
        meetAll();
        {
            log::Log log = m_office->open();
            log.remove(aStation(log, "Erg"));
            addStation(log, "Erg", "another one");
        }
        {
            log::Log log = m_rack->open();
            log.setRoster({.station = aStation(log, "Erg"),
                           .day = day(2026, 4, 3),
                           .athletes = {anAthlete(log)}});
        }
        m_rack->meet();
        const MeetingReport report = m_office->meet();
        QVERIFY(report.leftOut.empty());
        QCOMPARE(report.taken.renamed.size(), std::size_t(1));
        meetAll();
        const log::Log log = m_office->open();
        QVERIFY(aStation(log, "Erg") != aStation(log, "Erg (2)"));
        requireSame();
    }

    // An athlete goes to another squad and comes back before either desk hears of it. The store
    // has none of the turns any more: a desk that may write tells them again, one that may not
    // waits for that, and has all of them in the end, whoever hears of it first.
    void goneAndBackUnheard_data() {
        QTest::addColumn<bool>("writerFirst");
        QTest::newRow("who writes is the first to hear of it") << true;
        QTest::newRow("who reads is the first to hear of it") << false;
    }
    void goneAndBackUnheard() {
        QFETCH(bool, writerFirst);
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::grant(admin, "dora", "Rowing", store::May::Read);
        const MeetingDesk reader(*m_folder, "reader.slopebook", m_world->server.address("dora"));
        reader.create();
        reader.join();
        Sixteen who{};
        {
            log::Log log = m_rack->open();
            const AthleteId ada = log.add(Athlete{.name = "Ada"});
            const AthleteId other = anAthlete(log);
            who = uuidOf(log, ada);
            addStation(log, "Erg");
            const StationId erg = aStation(log, "Erg");
            log.setRoster({.station = erg, .day = day(2026, 4, 2), .athletes = {other, ada}});
            log.setRoster({.station = erg, .day = day(2026, 4, 3), .athletes = {other, ada}});
            log.setRoster({.station = erg, .day = day(2026, 4, 3), .athletes = {other}});
            log.setRoster({.station = erg, .day = day(2026, 4, 4), .athletes = {ada}});
            log.setRoster({.station = erg, .day = day(2026, 4, 5), .athletes = {ada, other}});
        }
        meetAll();
        reader.meet();
        requireAsSeenBy(reader, "dora");
        move(who, m_world->judo);
        move(who, m_world->rowing);
        QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'roster' AND about = '" +
                                store::uuidText(who) + "'"),
                 0);
        if (!writerFirst)
            QVERIFY(reader.meet().departed.empty());
        QVERIFY(m_rack->meet().departed.empty());
        QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'roster' AND alive AND about = '" +
                                store::uuidText(who) + "'"),
                 3);
        reader.meet();
        meetAll();
        reader.meet();
        QCOMPARE(reader.waiting(), 0); // who came behind her was numbered anew here meanwhile
        for (const MeetingDesk* desk : {static_cast<const MeetingDesk*>(m_rack.get()),
                                        static_cast<const MeetingDesk*>(m_office.get()), &reader}) {
            const log::Log log = desk->open();
            std::size_t turns = 0;
            for (const Roster& roster : log.rosters())
                turns += static_cast<std::size_t>(
                    std::ranges::count(roster.athletes, called(log, "Ada")));
            QCOMPARE(turns, std::size_t(3));
        }
        requireSame();
        requireAsSeenBy(reader, "dora");
    }

    // Who leaves is gone before what is new comes, and another may have his name by then.
    void whoLeavesLeavesHisName() {
        addAthlete(*m_rack, "Ada");
        meetAll();
        move(idAt(*m_rack, "Ada"), m_world->judo);
        m_office->meet();
        addAthlete(*m_office, "Ada");
        m_office->meet();
        const MeetingReport report = m_rack->meet();
        QCOMPARE(report.departed.size(), std::size_t(1));
        QVERIFY(!report.departed.front().stayed);
        QVERIFY(report.taken.renamed.empty() && report.taken.listed.empty());
        QVERIFY(hasAthlete(*m_rack, "Ada"));
        meetAll();
        requireSame();
    }

    // Who left is in her squad again in a store that went back: also where she was let go.
    void aStoreGoesBackToBeforeSheLeft() {
        addAda();
        meetAll();
        dump();
        move(idAt(*m_rack, "Ada"), m_world->judo);
        QCOMPARE(m_rack->meet().departed.size(), std::size_t(1));
        restore();
        m_rack->meet();
        QVERIFY(hasAthlete(*m_rack, "Ada"));
        meetAll();
        requireSame();
    }

    // A store that went back has lost what was written of somebody, who leaves before it is told
    // again: she stays here with it, it goes nowhere, and is not offered again and again.
    void whoLeavesAStoreThatWentBackStays_data() {
        QTest::addColumn<bool>("herself"); // what was lost is hers, or a set
        QTest::newRow("a set was lost") << false;
        QTest::newRow("what she says was lost") << true;
    }
    void whoLeavesAStoreThatWentBackStays() {
        QFETCH(bool, herself);
        addAda();
        meetAll();
        dump();
        changeAda(*m_rack, herself, !herself);
        m_rack->meet();
        restore();
        move(idAt(*m_rack, "Ada"), m_world->judo);
        for (int i = 0; i < 2; ++i) {
            const MeetingReport report = m_rack->meet();
            QCOMPARE(report.departed.size(), std::size_t(i == 0 ? 1 : 0));
            QVERIFY(i > 0 || report.departed.front().stayed);
            QVERIFY(report.notTaken.empty());
            QCOMPARE(report.held, 1);
            QCOMPARE(report.waiting, 1);
        }
        QVERIFY(hasAthlete(*m_rack, "Ada"));
        move(idAt(*m_rack, "Ada"), m_world->rowing);
        meetAll();
        requireSame();
    }

    // The same at a desk that writes in both squads: it is told again where she is now.
    void toldAgainWhereSheIsNow() {
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::grant(admin, "dora", "Rowing", store::May::Write);
        const MeetingDesk both(*m_folder, "both.slopebook", m_world->server.address("dora"));
        both.create();
        both.join("Judo");
        addAda();
        meetAll();
        both.meet();
        dump();
        changeAda(both, true, true);
        both.meet();
        restore();
        move(idAt(*m_rack, "Ada"), m_world->judo);
        const MeetingReport report = both.meet();
        QVERIFY(report.wentBack && report.notTaken.empty());
        QCOMPARE(report.waiting, 0);
        both.meet();
        requireAsSeenBy(both, "dora");
        meetAll();
        requireSame();
    }

    // What was found to be of no use to the store, and is there again when that is noted.
    void whatComesBackMeanwhileWaits() {
        const MeetingDesk judo(*m_folder, "judo.slopebook", m_world->server.address("dora"));
        bringBo(judo);
        log::Log log = m_rack->open();
        Roster roster{.station = addStation(log, "Erg"),
                      .day = day(2026, 4, 2),
                      .athletes = {called(log, "Bo")}};
        log.setRoster(roster);
        log.setRoster({.station = roster.station, .day = roster.day});
        const auto untold = meetings::whatGoes(log).untold;
        QCOMPARE(untold.size(), std::size_t(1));
        log.setRoster(roster);
        const meetings::Footing footing(meetings::storeOf(log).id);
        meetings::forgetUntold(log, footing, untold);
        QVERIFY(log::isUnsent(log::connectionOf(log), untold.front()));
        log.setRoster({.station = roster.station, .day = roster.day});
        meetings::forgetUntold(log, footing, untold);
        QVERIFY(!log::isUnsent(log::connectionOf(log), untold.front()));
    }

    // A log that has met often does not keep every moment of its store that it saw: those that it
    // keeps are enough to know what a store lost that went back, and little more.
    void momentsAreForgotten() {
        log::Log log = m_rack->open();
        log::Connection& db = log::connectionOf(log);
        const std::int64_t first = log::highestMark(db)->n + 1, last = first + 1200;
        log.together([&] {
            for (std::int64_t n = first; n <= last; ++n)
                meetings::noteMark(db, {.n = n, .tag = log::randomUuid()});
        });
        const std::vector<log::Mark> kept = log::marksIn(db);
        QVERIFY2(kept.size() <= 500, std::to_string(kept.size()).c_str());
        QCOMPARE(kept.back().n, last);
        for (std::size_t i = 1; i < kept.size(); ++i) {
            const std::int64_t lost = kept[i].n - kept[i - 1].n;
            QVERIFY2(lost == 1 || lost <= (last - kept[i].n) / 16,
                     std::to_string(kept[i].n).c_str());
        }
        QCOMPARE(findingsIn(m_rack->file()), std::string());
        QVERIFY(m_rack->meet().wentBack); // this store never had them
        requireSame();
    }

    // Who leaves while he stands on the roster of a station that the store has not yet leaves that
    // as well.
    void goneFromANewRoster() {
        Sixteen who{};
        {
            log::Log log = m_rack->open();
            who = uuidOf(log, log.add(Athlete{.name = "Ada"}));
        }
        meetAll();
        {
            log::Log log = m_rack->open();
            const AthleteId other = anAthlete(log), ada = called(log, "Ada");
            log.setRoster({.station = addStation(log, "Erg"),
                           .day = day(2026, 4, 2),
                           .athletes = {ada, other}});
        }
        move(who, m_world->judo);
        const MeetingReport report = m_rack->meet();
        QCOMPARE(report.departed.size(), std::size_t(1));
        QVERIFY(!report.departed.front().stayed && !hasAthlete(*m_rack, "Ada"));
        meetAll();
        const log::Log log = m_office->open();
        QCOMPARE(log.rosters().size(), std::size_t(1));
        QCOMPARE(log.rosters().front().athletes.size(), std::size_t(1));
        requireSame();
    }

    // Who stands on another squad's roster, which was written here and could not be sent, stays
    // with it when he leaves the squads that are seen.
    void goneFromARosterOfTwoSquads() {
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::initialise(admin, {"Sailing"});
        const MeetingDesk judo(*m_folder, "judo.slopebook", m_world->server.address("dora"));
        bringBo(judo);
        Sixteen who{};
        {
            log::Log log = m_rack->open();
            who = uuidOf(log, called(log, "Bo"));
            log.setRoster({.station = addStation(log, "Erg"),
                           .day = day(2026, 4, 2),
                           .athletes = {called(log, "Bo")}});
        }
        QCOMPARE(m_rack->meet().held, 1);
        Connection asAdmin = m_world->as("admin");
        move(who, asAdmin.ask("SELECT id FROM slopebook.squads WHERE name = 'Sailing'").uuid(0, 0));
        const MeetingReport report = m_rack->meet();
        QCOMPARE(report.departed.size(), std::size_t(1));
        QVERIFY(report.departed.front().stayed && hasAthlete(*m_rack, "Bo"));
        QCOMPARE(report.held, 1);
        QCOMPARE(findingsIn(m_rack->file()), std::string());
        judo.meet();
        QVERIFY(!hasAthlete(judo, "Bo"));
    }

    // Somebody at psql has given a name to what may not stand in a log. It stays out of each, so
    // that the same name entered at a desk is refused by the store for what the desk cannot see:
    // that waits with what belongs to it, all else comes and goes, and the mended one lets it go.
    void aNameTakenByWhatStaysOut() {
        store::Atom right;
        {
            const MeetingDesk other(*m_folder, "other.slopebook", m_rack->address());
            log::Log log = log::Log::create(other.file());
            log.add(Athlete{.name = "Eve"});
            for (const auto& [uuid, one] : heldBy(log))
                right = store::atomOf(one, m_world->rowing);
        }
        store::Atom forged = right;
        forged.trail.back().hash = numbered(7); // of something else
        Connection cora = m_world->as("cora");
        QCOMPARE(store::push(cora, StoreWorld::markOf(cora), std::vector<Atom>{forged}).answer,
                 Pushed::Answer::Ok);
        addAthlete(*m_office, "Came beside it");
        m_office->meet();
        {
            log::Log log = m_rack->open();
            const AthleteId eve = log.add(Athlete{.name = "Eve"});
            const SessionId session = log.add(SessionHead{.athlete = eve, .date = day(2026, 4, 2)});
            log.add(session, log.lifts().front().id, ladderSet(60, {0.8}));
            log.add(Athlete{.name = "Went beside it"});
        }
        for (int i = 0; i < 2; ++i) { // each time, until it is mended
            const MeetingReport report = m_rack->meet();
            QCOMPARE(report.leftOut.size(), std::size_t(1));
            QCOMPARE(report.notTaken.size(), std::size_t(3));
            QVERIFY(english(report.notTaken.front()).find("its name or number is taken") !=
                    std::string::npos);
            QCOMPARE(report.went, i == 0 ? 1 : 0);
            QCOMPARE(report.waiting, 3);
        }
        QVERIFY(hasAthlete(*m_rack, "Came beside it"));
        m_office->meet();
        QVERIFY(hasAthlete(*m_office, "Went beside it"));
        m_world->server.sql("UPDATE slopebook.atoms SET hashes = ARRAY['" +
                            store::uuidText(right.trail.back().hash) + "']::uuid[] WHERE id = '" +
                            store::uuidText(right.uuid) + "'");
        const MeetingReport report = m_rack->meet();
        QVERIFY(report.leftOut.empty() && report.notTaken.empty());
        QCOMPARE(report.waiting, 0);
        QCOMPARE(report.taken.renamed.size(), std::size_t(1));
        meetAll();
        {
            const log::Log log = m_office->open();
            QCOMPARE(setsOf(log, "Eve"), std::size_t(0));
            QCOMPARE(setsOf(log, "Eve (2)"), std::size_t(1));
        }
        requireSame();
    }
};

QTEST_GUILESS_MAIN(TestRarely)
#include "tst_rarely.moc"
