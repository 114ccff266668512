// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/builders.h"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace slopebook;
using namespace slopebook::test;
using log::Log;

namespace {
template <class Id, class Value>
Value valueOf(const std::vector<Stored<Id, Value>>& all, Id id) {
    const auto found = std::ranges::find(all, id, &Stored<Id, Value>::id);
    return found == all.end() ? Value{} : found->value;
}
} // namespace

class TestLog : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyValueIsThereAfterReopening();
    void emptyOptionalsStayEmpty();
    void listsAreInTheOrderACoachExpects();
    void sessionsOfALiftCarryTheirPoints();
    void aSecondSessionOfTheDayIsNumberedByLift();
    void aSessionWhoseSetsAreAllExcludedHasNoPoints();
    void scanGoesByAthleteAndDayWhateverTheOrderOfEntry();
    void checkLoadsAreSortedAndReplaced();
};

void TestLog::everyValueIsThereAfterReopening() {
    const Folder folder;
    Season s;
    std::vector<log::SessionRecord> before;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
        for (const SessionId id : {s.autumn, s.repeat, s.winter})
            before.push_back(log.session(id));
    }
    const Log log = Log::open(folder.path());
    QCOMPARE(log.access(), log::Access::ReadWrite);
    QCOMPARE(valueOf(log.athletes(), s.lane3),
             (Athlete{.name = "Lane 3", .note = "left-handed; café"}));
    const Lift pull = valueOf(log.lifts(), s.pull);
    QCOMPARE(pull.name, "Bench pull");
    QCOMPARE(pull.kind, VelocityKind::Mean);
    QCOMPARE(pull.rule, PointRule::Fastest);
    QVERIFY(!pull.ballistic);
    QCOMPARE(
        pull.mvt,
        (Mvt{.value = 0.51, .sd = 0.04, .origin = Mvt::Origin::Published, .source = "a table"}));
    QCOMPARE(pull.smallestVelocity, 0.05);
    QCOMPARE(pull.smallestOneRm, 2.5);
    QCOMPARE(pull.note, "pads under the bench");
    QCOMPARE(valueOf(log.devices(), s.encoder),
             (Device{.name = "Boathouse encoder", .note = "new cable"}));
    QCOMPARE(valueOf(log.blocks(), s.flood), (Block{.name = "Flood winter",
                                                    .first = day(2026, 1, 5),
                                                    .last = day(2026, 2, 27),
                                                    .ceiling = Mass{60'000},
                                                    .note = "heavy plates lost"}));
    std::size_t i = 0;
    for (const SessionId id : {s.autumn, s.repeat, s.winter})
        QCOMPARE(log.session(id), before[i++]);
    const SessionHead autumn = log.session(s.autumn).head.value;
    QCOMPARE(log.conditions(s.autumn, s.pull),
             (Conditions{.device = s.encoder, .place = "boathouse"}));
    QCOMPARE(autumn.bodyMass, Mass{81'500});
    QCOMPARE(autumn.note, "fresh");
    const auto sets = log.sets(s.autumn, s.pull);
    QCOMPARE(sets.size(), 4U);
    QCOMPARE(sets[0].set, ladderSet(40, {1.10, 1.12, 1.09}));
    QCOMPARE(sets[2].set.excluded, "missed the groove");
    QVERIFY(sets[3].set.trueMaximum);
    QCOMPARE(sets[3].set.note, "held");
    QCOMPARE(log.sets(s.autumn, s.throwing).at(0).set.reps.at(2).excluded, "slipped");
    QCOMPARE(log.set(sets[1].id), sets[1]);
    VERIFY_SOUND(log);
}

void TestLog::emptyOptionalsStayEmpty() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Lift plain{.name = "Squat"};
    const LiftId lift = log.add(plain);
    const Block open{.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 3, 1)};
    const BlockId block = log.add(open);
    const AthleteId athlete = log.add(Athlete{.name = "Bow"});
    const SessionHead head{.athlete = athlete, .date = day(2026, 3, 1)};
    const SessionId session = log.add(head);
    const Set empty{.load = Mass{0}};
    const SetId set = log.add(session, lift, empty);
    QCOMPARE(valueOf(log.lifts(), lift), plain);
    QCOMPARE(valueOf(log.blocks(), block), open);
    QCOMPARE(log.session(session).head.value, head);
    QCOMPARE(log.set(set).set, empty);
    const auto lines = log.liftSessions({});
    QCOMPARE(lines.size(), 1U);
    QVERIFY(lines[0].points.empty() && !lines[0].measuredOneRm &&
            lines[0].conditions == Conditions{});
    VERIFY_SOUND(log);
}

void TestLog::listsAreInTheOrderACoachExpects() {
    const Folder folder;
    Log log = Log::create(folder.path());
    for (const char* name : {"bow", "Stroke", "cox", "Anchor"})
        log.add(Athlete{.name = name});
    QStringList names;
    for (const auto& athlete : log.athletes())
        names << QString::fromStdString(athlete.value.name);
    QCOMPARE(names, QStringList({"Anchor", "bow", "cox", "Stroke"}));
    const AthleteId bow = log.athletes()[1].id;
    for (const unsigned of : {9U, 3U, 27U})
        log.add(SessionHead{.athlete = bow, .date = day(2026, 2, of)});
    log.add(SessionHead{.athlete = bow, .date = day(2026, 2, 9), .ordinal = 2});
    QStringList days;
    for (const auto& session : log.sessions(bow))
        days << QString::fromStdString(dateKey(session.value.date, session.value.ordinal));
    QCOMPARE(days, QStringList({"2026-02-03", "2026-02-09", "2026-02-09#2", "2026-02-27"}));
    log.add(Block{.name = "A", .first = day(2026, 5, 1), .last = day(2026, 6, 1)});
    log.add(Block{.name = "B", .first = day(2026, 1, 1), .last = day(2026, 2, 1)});
    QCOMPARE(log.blocks().front().value.name, "B");
    const LiftId squat = log.add(Lift{.name = "squat"});
    const LiftId pull = log.add(Lift{.name = "Pull"});
    const SessionId first = log.sessions(bow).front().id;
    log.add(first, squat, ladderSet(100, {0.5}));
    QCOMPARE(log.liftsOf(bow), std::vector<LiftId>{squat});
    log.add(first, pull, ladderSet(60, {0.7}));
    QCOMPARE(log.liftsOf(bow), (std::vector<LiftId>{pull, squat}));
    QVERIFY(log.liftsOf(AthleteId{99}).empty() && log.sessions(AthleteId{99}).empty());
}

void TestLog::sessionsOfALiftCarryTheirPoints() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const auto pulls = log.liftSessions({.athlete = s.lane3, .lift = s.pull});
    QCOMPARE(pulls.size(), 2U);
    const LiftSession& autumn = pulls[0];
    QCOMPARE(autumn.session, s.autumn);
    QCOMPARE(autumn.conditions, (Conditions{.device = s.encoder, .place = "boathouse"}));
    QCOMPARE(autumn.bodyMass, Mass{81'500});
    QCOMPARE(autumn.points, (std::vector<Point>{{40, 1.12, 1}, {60, 0.88, 2}, {82.5, 0.52, 4}}));
    QCOMPARE(autumn.maxima, (std::vector<Point>{{82.5, 0.52, 4}}));
    QCOMPARE(autumn.measuredOneRm, Mass{82'500});
    QCOMPARE(pulls[1].repeatOf, s.autumn);
    const auto thrown = log.liftSessions({.lift = s.throwing});
    QCOMPARE(thrown.size(), 3U);
    QCOMPARE(thrown[2].athlete, s.stroke);
    QCOMPARE(thrown[0].points, (std::vector<Point>{{20, 2.5, 1}}));
    QCOMPARE(log.liftSessions({}).size(), 6U);
    QVERIFY(log.liftSessions({.athlete = AthleteId{77}}).empty());
}

void TestLog::aSecondSessionOfTheDayIsNumberedByLift() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const AthleteId bow = log.add(Athlete{.name = "Bow"});
    const LiftId squat = log.add(Lift{.name = "Squat"});
    const LiftId pull = log.add(Lift{.name = "Pull"});
    const auto session = [&](int ordinal) {
        return log.add(SessionHead{.athlete = bow, .date = day(2026, 3, 2), .ordinal = ordinal});
    };
    const SessionId morning = session(1);
    const SessionId noon = session(2);
    const SessionId evening = session(3);
    log.add(morning, squat, ladderSet(80, {0.7}));
    log.add(noon, pull, ladderSet(50, {0.9}));
    log.add(evening, squat, ladderSet(80, {0.6}));
    log.add(evening, pull, ladderSet(50, {0.8}));
    const auto squats = log.liftSessions({.lift = squat});
    QCOMPARE(squats.size(), 2U);
    QCOMPARE(squats[0].ordinal, 1);
    QCOMPARE(squats[1].ordinal, 2);
    QCOMPARE(squats[1].session, evening);
    const auto all = log.liftSessions({.athlete = bow});
    QCOMPARE(all.size(), 4U);
    QCOMPARE(all[1].ordinal, 1); // the noon's pull
    QCOMPARE(all[2].ordinal + all[3].ordinal, 4);
}

void TestLog::aSessionWhoseSetsAreAllExcludedHasNoPoints() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const AthleteId bow = log.add(Athlete{.name = "Bow"});
    const LiftId squat = log.add(Lift{.name = "Squat"});
    const SessionId session = log.add(SessionHead{.athlete = bow, .date = day(2026, 3, 2)});
    Set set = ladderSet(100, {0.4, 0.41});
    set.trueMaximum = true;
    const SetId id = log.add(session, squat, set);
    // Flagged as a maximum, but made of two reps: a measured 1RM, no point for the MVT.
    QVERIFY(log.liftSessions({})[0].maxima.empty());
    QCOMPARE(log.liftSessions({})[0].measuredOneRm, set.load);
    set.excluded = "belt slipped";
    log.change(id, set);
    const auto lines = log.liftSessions({});
    QCOMPARE(lines.size(), 1U);
    QVERIFY(lines[0].points.empty() && lines[0].maxima.empty() && !lines[0].measuredOneRm);
    set.excluded.clear();
    set.reps[0].excluded = "early";
    log.change(id, set);
    QCOMPARE(log.liftSessions({})[0].points, (std::vector<Point>{{100, 0.41, 1}}));
    QCOMPARE(log.liftSessions({})[0].maxima.size(), 1U);
    VERIFY_SOUND(log);
}

void TestLog::scanGoesByAthleteAndDayWhateverTheOrderOfEntry() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const AthleteId first = log.add(Athlete{.name = "Zoe's seat"});
    const AthleteId second = log.add(Athlete{.name = "Bow"});
    const LiftId squat = log.add(Lift{.name = "Squat"});
    const auto enter = [&](AthleteId athlete, unsigned of, double kg) {
        const SessionId id = log.add(SessionHead{.athlete = athlete, .date = day(2026, 4, of)});
        if (kg > 0)
            log.add(id, squat, ladderSet(kg, {0.5}));
    };
    enter(second, 9, 90);
    enter(first, 20, 120);
    enter(second, 2, 20);
    enter(first, 5, 0); // nothing lifted
    enter(first, 1, 10);
    std::vector<double> loads;
    log.scan({}, [&](const LiftSession& line) { loads.push_back(line.points.at(0).load); });
    QCOMPARE(loads, (std::vector<double>{10, 120, 20, 90}));
}

void TestLog::checkLoadsAreSortedAndReplaced() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    QCOMPARE(log.checkLoads(s.lane3, s.pull), (std::vector<Mass>{{40'000}, {60'000}}));
    log.setCheckLoads(s.lane3, s.throwing, {Mass{20'000}, Mass{20'000}});
    log.setCheckLoads(s.lane3, s.pull, {Mass{50'000}});
    QCOMPARE(log.checkLoads(s.lane3, s.pull), std::vector<Mass>{{50'000}});
    QCOMPARE(log.checkLoads(s.lane3, s.throwing), std::vector<Mass>{{20'000}});
    QVERIFY(log.checkLoads(s.stroke, s.pull).empty());
    log.setCheckLoads(s.lane3, s.pull, {});
    QVERIFY(log.checkLoads(s.lane3, s.pull).empty());
    QVERIFY(refuses([&] { log.setCheckLoads(s.lane3, s.pull, {Mass{-1}}); }));
    QCOMPARE(errorOf([&] { log.setCheckLoads(AthleteId{9}, s.pull, {}); }),
             LogError::Kind::Conflict);
    VERIFY_SOUND(log);
}

QTEST_APPLESS_MAIN(TestLog)
#include "tst_log.moc"
