// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the store and is not seen at a desk, each at real logs and a real PostgreSQL: what
// another squad uses, and what may not stand in a log.
#include "core/desks/merge.h"
#include "tests/meetings/twodesks.h"

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;

namespace {
Sixteen uuidOf(const log::Log& log, const char* kind, std::int64_t key) {
    return log::atomOf(log::connectionOf(log), {.kind = kind, .one = key})->uuid;
}
template <class All>
auto called(const All& all, const std::string& name) {
    for (const auto& one : all)
        if (one.value.name == name)
            return one.id;
    throw std::runtime_error("nothing is called " + name);
}
LiftId aLift(const log::Log& log, const std::string& name) {
    return called(log.lifts(), name);
}
Sixteen uuidOfLift(const log::Log& log, const std::string& name) {
    return uuidOf(log, "lift", raw(aLift(log, name)));
}
Sixteen uuidOfAthlete(const log::Log& log, const std::string& name) {
    return uuidOf(log, "athlete", raw(called(log.athletes(), name)));
}
/// Of identities that are as good as random, one that will do.
LiftId addLift(log::Log& log, const std::string& name,
               const std::function<bool(const Sixteen&)>& willDo) {
    for (;;) {
        const LiftId id = log.add(Lift{.name = name});
        if (willDo(uuidOf(log, "lift", raw(id))))
            return id;
        log.remove(id);
    }
}
void addSetOf(log::Log& log, const std::string& who, LiftId lift) {
    const AthleteId athlete = log.add(Athlete{.name = who});
    const SessionId session = log.add(SessionHead{.athlete = athlete, .date = day(2026, 4, 2)});
    log.add(session, lift, ladderSet(60, {0.8}));
}
void rename(log::Log& log, const std::string& name, const std::string& now) {
    for (const auto& one : log.athletes())
        if (one.value.name == name) {
            Athlete athlete = one.value;
            athlete.name = now;
            log.change(one.id, athlete);
            return;
        }
}
/// A note that the store takes and no log does, under a past that fits it.
Atom forgedAthlete(unsigned number, const Sixteen& squad) {
    Atom forged = atom("athlete", numbered(number), squad, {},
                       R"({"name":"Eve","note":")" + std::string(150'000, 'x') + R"("})");
    const std::string bytes = store::contentOfJson("athlete", std::nullopt, *forged.content);
    forged.trail.back().hash = log::stepHash(log::hashOf(bytes), true);
    return forged;
}
} // namespace

class TestElsewhere : public TwoDesks {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { startServer(); }
    void init() { beginTwoDesks(); }

    // A lift that judo uses became one with another at the rack, by a log that was merged there.
    // Nobody at the rack sees judo's sets, and the store keeps the lift: it stands there as well,
    // and the other becomes one with it, whatever was said before.
    void aLiftThatAnotherSquadUsesStands() {
        Sixteen used{};
        {
            log::Log log = m_rack->open();
            addLift(log, "Sled", [](const Sixteen& uuid) { return uuid[0] >= 0x40; });
            used = uuidOfLift(log, "Sled");
        }
        meetAll();
        const MeetingDesk judo(*m_folder, "judo.slopebook", m_world->server.address("dora"));
        judo.create();
        judo.join();
        judo.meet();
        {
            log::Log log = judo.open();
            addSetOf(log, "Bo", aLift(log, "Sled"));
        }
        judo.meet();
        const std::filesystem::path other = m_folder->path("other.slopebook");
        Sixteen lesser{};
        {
            log::Log log = log::Log::create(other);
            addSetOf(log, "Cy",
                     addLift(log, "Sled", [&](const Sixteen& uuid) { return uuid < used; }));
            lesser = uuidOfLift(log, "Sled");
        }
        {
            log::Log log = m_rack->open();
            desks::mergeInto(log, other);
            QCOMPARE(uuidOfLift(log, "Sled"), lesser); // of two logs' the lesser stands
        }
        const MeetingReport report = m_rack->meet();
        QVERIFY(report.notTaken.empty() && report.leftOut.empty());
        QCOMPARE(report.waiting, 0);
        {
            const log::Log log = m_rack->open();
            QCOMPARE(uuidOfLift(log, "Sled"), used);
            QVERIFY(!log::atomOf(log::connectionOf(log), lesser));
            const SessionId his = log.sessions(called(log.athletes(), "Cy")).front().id;
            QCOMPARE(log.session(his).sets.front().lift, aLift(log, "Sled"));
        }
        meetAll();
        judo.meet();
        requireSame();
        const log::Log log = judo.open();
        QCOMPARE(uuidOfLift(log, "Sled"), used);
        QVERIFY(findingsIn(judo.file()).empty());
    }

    // Two change their names, and beside them came what may not stand in a log: that stays out,
    // wherever it stands among them, and both have their names.
    void twoThatChangeNamesBesideWhatStaysOut_data() {
        QTest::addColumn<bool>("before");
        QTest::newRow("before them") << true;
        QTest::newRow("behind them") << false;
    }
    void twoThatChangeNamesBesideWhatStaysOut() {
        QFETCH(bool, before);
        addAthlete(*m_rack, "Ada");
        addAthlete(*m_rack, "Bo");
        meetAll();
        Connection cora = m_world->as("cora");
        const auto forge = [&] {
            QCOMPARE(store::push(cora, StoreWorld::markOf(cora),
                                 std::vector<Atom>{forgedAthlete(7, m_world->rowing)})
                         .answer,
                     Pushed::Answer::Ok);
        };
        if (before)
            forge();
        Sixteen ada{}, bo{};
        {
            log::Log log = m_rack->open();
            ada = uuidOfAthlete(log, "Ada");
            bo = uuidOfAthlete(log, "Bo");
            rename(log, "Ada", "parked");
            rename(log, "Bo", "Ada");
            rename(log, "parked", "Bo");
        }
        m_rack->meet();
        if (!before)
            forge();
        addAthlete(*m_rack, "Behind them");
        m_rack->meet();
        for (int i = 0; i < 2; ++i) {
            const MeetingReport report = m_office->meet();
            QCOMPARE(report.leftOut.size(), std::size_t(1));
            QVERIFY(report.taken.renamed.empty() && report.taken.listed.empty());
            QCOMPARE(report.waiting, 0);
        }
        const log::Log log = m_office->open();
        QCOMPARE(uuidOfAthlete(log, "Ada"), bo);
        QCOMPARE(uuidOfAthlete(log, "Bo"), ada);
        QVERIFY(hasAthlete(*m_office, "Behind them"));
        QVERIFY(findingsIn(m_office->file()).empty());
    }
};

QTEST_GUILESS_MAIN(TestElsewhere)
#include "tst_elsewhere.moc"
