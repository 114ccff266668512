// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squad.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"

#include <QtTest>

using namespace slopebook;
using namespace slopebook::answers;
using Why = NoAnswer::Why;

namespace {

const Mass sixty = massFromKilograms(60);

/// v = 1.6 - L/100 moved by, with a scatter that leaves the line where it is: s2 = 0.0002.
LiftSession of(int athlete, int day, double by) {
    auto s = tests::session(1, {{40, 1.2 + by + 0.01},
                                {60, 1.0 + by - 0.01},
                                {80, 0.8 + by - 0.01},
                                {100, 0.6 + by + 0.01}});
    s.session = SessionId{100 * athlete + day};
    s.athlete = AthleteId{athlete};
    s.date = tests::dayNumber(day);
    return s;
}

SquadMember member(int athlete, const std::vector<LiftSession>& sessions) {
    return {.athlete = AthleteId{athlete},
            .name = "Lane " + std::to_string(athlete),
            .sessions = sessions,
            .mvt = tests::coachMvt(0.3),
            .checkLoads = {sixty}};
}

/// From day 10 to day 60 the line moved by so much.
SquadMember moved(int athlete, double by) {
    return member(athlete, {of(athlete, 10, 0), of(athlete, 60, by)});
}

ComparisonSettings plain(const SquadMember& /*member*/, const LiftSession& /*from*/,
                         const LiftSession& /*to*/) {
    return {.smallestVelocity = Smallest{0.04}, .smallestOneRm = Smallest{4.0}};
}

const Period before{.first = tests::dayNumber(0), .last = tests::dayNumber(30), .name = "Autumn"};
const Period after{.first = tests::dayNumber(31), .last = tests::dayNumber(90), .name = "Flood"};

Squad asked(const std::vector<SquadMember>& members, const std::vector<Mass>& loads = {}) {
    return *squadChange(tests::benchPull(), members, before, after, loads, plain);
}

std::vector<std::string> names(const SquadPart& part) {
    std::vector<std::string> names;
    for (const SquadRow& row : part.rows)
        names.push_back(row.name);
    return names;
}

} // namespace

class TestSquad : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void figures();
    void order();
    void withoutAFigure();
    void whichLoads();
    void beyondTheLoads();
    void whichSession();
    void farEstimates();
    void devices();
    void byChance();
    void refusals();
};

void TestSquad::figures() {
    const auto squad = asked({moved(1, 0.05)});
    QCOMPARE(squad.parts.size(), std::size_t(2));
    QVERIFY(squad.parts[0].load == sixty && !squad.parts[1].load);
    const SquadRow& row = squad.parts[0].rows[0];
    QVERIFY(row.from->date == tests::dayNumber(10) && row.to->date == tests::dayNumber(60));
    CHECK_NEAR(row.read->change, 0.05, 1e-12);
    // By hand: s2 0.0008 / 4, at 60 kg 1/4 + 100/2000 = 0.3 a line; t(0.975, 4) = 2.776445.
    CHECK_NEAR(row.read->interval.low, 0.05 - 2.776445 * std::sqrt(0.0002 * 0.6), 1e-8);
    CHECK_NEAR(row.read->interval.high, 0.05 + 2.776445 * std::sqrt(0.0002 * 0.6), 1e-8);
    QVERIFY(row.read->reading == Reading::Better);
    // 1RM: 130 kg, and 0.05 m/s over 0.01 m/s a kilogram more.
    CHECK_NEAR(squad.parts[1].rows[0].read->change, 5, 1e-9);
    // The same figures as compare's own.
    const auto c = compare(tests::benchPull(), tests::coachMvt(0.3), of(1, 10, 0), of(1, 60, 0.05),
                           plain({}, {}, {}));
    QVERIFY(squad.parts[1].rows[0].read->interval == c->oneRm->read.interval);
}

void TestSquad::order() {
    // Half-widths at 60 kg: 0.0304, for equivalence t(0.95, 4) = 2.131847 makes 0.0234; m = 0.04:
    // 0.01 is held, 0.02 unclear.
    const auto squad = asked({moved(1, 0.02), moved(2, -0.05), moved(3, 0.05), moved(4, 0.01),
                              moved(5, 0.09), moved(6, -0.08), member(7, {})});
    QCOMPARE(names(squad.parts[0]),
             (std::vector<std::string>{"Lane 5", "Lane 3", "Lane 6", "Lane 2", "Lane 4", "Lane 1",
                                       "Lane 7"}));
    QCOMPARE(squad.parts[0].read(Reading::Better), 2);
    QCOMPARE(squad.parts[0].read(Reading::Worse), 2);
    QCOMPARE(squad.parts[0].read(Reading::Held), 1);
    QCOMPARE(squad.parts[0].read(Reading::Unclear), 1);
    QCOMPARE(squad.parts[0].read(Reading::NoFigure), 1);
    QCOMPARE(squad.parts[0].figures(), 6);
}

void TestSquad::withoutAFigure() {
    auto two = moved(3, 0);
    two.sessions[1].points.erase(two.sessions[1].points.begin() + 1,
                                 two.sessions[1].points.end() - 1);
    auto noMvt = moved(4, 0.05);
    noMvt.mvt = NoAnswer{Why::NoThreshold, asIs("no MVT is known")};
    const auto squad = asked({member(1, {of(1, 10, 0)}), member(2, {of(2, 60, 0)}), two, noMvt});
    const auto& rows = squad.parts[0].rows;
    QCOMPARE(names(squad.parts[0]).front(), std::string("Lane 4"));
    QCOMPARE(english(rows[1].read.why().reason), std::string("no session of this lift in Flood"));
    QVERIFY(rows[1].from && !rows[1].to);
    QCOMPARE(english(rows[2].read.why().reason), std::string("no session of this lift in Autumn"));
    // 40 and 100 kg make no line to judge by: nothing of 60 kg, and 40 kg told as it was seen.
    QVERIFY(rows[3].read.why().why == Why::NeedsThirdLoad && !rows[3].asSeen);
    two.checkLoads = {massFromKilograms(40)};
    const auto seen = asked({two});
    QVERIFY(seen.parts[0].rows[0].asSeen && seen.parts[0].rows[0].read);
    CHECK_NEAR(seen.parts[0].rows[0].read->change, 0, 1e-12);
    QVERIFY(std::ranges::find(seen.notes, Note::Kind::AsSeen, &Note::kind) != seen.notes.end());
    QVERIFY(squad.parts[1].rows[0].read.why().why == Why::NoSuchSession ||
            squad.parts[1].figures() == 0);
}

void TestSquad::whichLoads() {
    auto other = moved(2, 0.05);
    other.checkLoads = {massFromKilograms(80), massFromKilograms(50)};
    const auto all = asked({moved(1, 0.05), other});
    QCOMPARE(all.parts.size(), std::size_t(4));
    QVERIFY(all.parts[0].load == massFromKilograms(50) &&
            all.parts[2].load == massFromKilograms(80));
    QCOMPARE(all.parts[0].figures(), 2); // both lifted on either side of it
    const auto one = asked({moved(1, 0.05), other}, {massFromKilograms(70)});
    QCOMPARE(one.parts.size(), std::size_t(2));
    CHECK_NEAR(one.parts[0].rows[0].read->change, 0.05, 1e-12);
    Lift thrown = tests::benchPull();
    thrown.ballistic = true;
    QCOMPARE(squadChange(thrown, std::vector{moved(1, 0)}, before, after, {}, plain)->parts.size(),
             std::size_t(1));
}

void TestSquad::beyondTheLoads() {
    auto own = moved(1, 0.05);
    own.checkLoads = {massFromKilograms(120)};
    const auto squad = asked({own, moved(2, 0.05)}, {massFromKilograms(120)});
    const auto& rows = squad.parts[0].rows;
    QVERIFY(rows[0].read && rows[0].extrapolated); // followed by choice, and marked
    QVERIFY(!rows[1].read && rows[1].extrapolated);
    QCOMPARE(rows[1].name, std::string("Lane 2"));
}

void TestSquad::whichSession() {
    std::vector sessions{of(1, 10, 0), of(1, 20, 0), of(1, 24, 0), of(1, 28, 0)};
    sessions[3].points.resize(2);
    // A block's last session that makes a line with intervals; failing that, its last.
    QVERIFY(sessionFor(sessions, before)->date == tests::dayNumber(24));
    QVERIFY(sessionFor(std::vector{sessions[3]}, before)->date == tests::dayNumber(28));
    QVERIFY(!sessionFor(sessions, after));
    QVERIFY(sessionFor(sessions, onDate(tests::dayNumber(20)))->date == tests::dayNumber(20));
    QVERIFY(!sessionFor(sessions, onDate(tests::dayNumber(21))));
    QVERIFY(sessionFor(sessions, onDate(tests::dayNumber(21), 3))->date == tests::dayNumber(20));
    // As near on either side: the later one.
    QVERIFY(sessionFor(sessions, onDate(tests::dayNumber(22), 3))->date == tests::dayNumber(24));
    sessions[2].date = sessions[1].date;
    sessions[2].ordinal = 2;
    QCOMPARE(sessionFor(sessions, onDate(tests::dayNumber(20)))->ordinal, 2);
    sessions[0].points.clear();
    QVERIFY(!sessionFor(sessions, onDate(tests::dayNumber(10))));
    const Block block{.name = "Flood", .first = tests::dayNumber(1), .last = tests::dayNumber(9)};
    QVERIFY(inBlock(block).first == block.first && inBlock(block).name == "Flood");
    // One session cannot be before and after.
    const auto same = squadChange(tests::benchPull(), std::vector{member(1, {of(1, 10, 0)})},
                                  before, before, {}, plain);
    QVERIFY(same && !same->parts[0].rows[0].read);
}

void TestSquad::farEstimates() {
    // 100 kg of 130: a reach of 0.77.
    QVERIFY(asked({moved(1, 0.05)}).parts[1].rows[0].extrapolated);
    auto near = moved(1, 0.05);
    near.mvt = tests::coachMvt(0.5);
    QVERIFY(!asked({near}).parts[1].rows[0].extrapolated);
}

void TestSquad::devices() {
    auto one = moved(1, 0.05);
    one.sessions[1].conditions.device = DeviceId{2};
    const auto warned = asked({one});
    QVERIFY(warned.parts[0].rows[0].otherDevice && !warned.parts[0].rows[0].correctedDevice);
    QCOMPARE(warned.parts[0].rows[0].read.why().why, NoAnswer::Why::NotComparable);
    const auto corrected =
        squadChange(tests::benchPull(), std::vector{one}, before, after, {},
                    [](const SquadMember& m, const LiftSession& from, const LiftSession& to) {
                        auto settings = plain(m, from, to);
                        settings.deviceBias = {{0.03, {0.0001, 10}}};
                        return settings;
                    });
    QVERIFY(corrected->parts[0].rows[0].correctedDevice);
    CHECK_NEAR(corrected->parts[0].rows[0].read->change, 0.02, 1e-12);
    QVERIFY(hasNote(corrected->notes, Note::Kind::DeviceCorrected));
    QVERIFY(!hasNote(corrected->notes, Note::Kind::DifferentDevices));
}

void TestSquad::byChance() {
    std::vector<SquadMember> many;
    for (int i = 1; i <= 20; ++i)
        many.push_back(moved(i, 0));
    const auto squad = asked(many);
    QVERIFY(english(squad.notes.front().words).starts_with("of 20 athletes about 1.0"));
    QVERIFY(asked({moved(1, 0)}).notes.empty());
}

void TestSquad::refusals() {
    const auto none = squadChange(tests::benchPull(), {}, before, after, {}, plain);
    QVERIFY(!none && none.why().why == Why::TooFewSessions);
}

QTEST_APPLESS_MAIN(TestSquad)
#include "tst_squad.moc"
