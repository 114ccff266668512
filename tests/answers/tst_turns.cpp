// SPDX-License-Identifier: GPL-3.0-or-later
// A station: what is due, the next load, whose turn. What is expected stands here by hand, from the
// rules in core/answers/turns.h.
#include "core/answers/turns.h"
#include "core/answers/turnwords.h"
#include "core/questions/stationday.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;
using namespace slopebook::literals;

namespace {

Station squat(std::vector<Mass> ladder, int sets = 0) {
    Station station;
    station.name = "Rack 1";
    station.lift = LiftId{1};
    station.ladder = std::move(ladder);
    station.sets = sets;
    return station;
}
Tried up(Mass load) {
    return {load, true};
}
Tried down(Mass load) {
    return {load, false};
}
const std::vector<Mass> ladder{40_kg, 60_kg, 80_kg, 90_kg};

Battery batteryOf(std::vector<Attempt> attempts, std::vector<Gap> gaps = {}) {
    Battery battery;
    battery.tests.push_back({TestKindId{1}, std::move(attempts)});
    battery.gaps = std::move(gaps);
    return battery;
}
Attempt attempt(BodySide side, const char* excluded = "") {
    Attempt a;
    a.side = side;
    a.value = 1.8;
    a.excluded = excluded;
    return a;
}
Stored<TestKindId, TestKind> hop(bool twoSided, bool both = false, int attempts = 3) {
    TestKind kind;
    kind.name = "Hop";
    kind.unit = "m";
    kind.twoSided = twoSided;
    kind.bothToo = both;
    kind.attempts = attempts;
    return {TestKindId{1}, kind};
}

} // namespace

class TestTurns : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// An estimate is of the body's mass and what is added; a ladder is of what is added.
    void anEstimateThatMovesTheBodyIsLessItsMass() {
        const Lift pullUp{.name = "Pull-up", .movesBody = true}, press{.name = "Press"};
        LiftSession known;
        known.bodyMass = Mass{80'500};
        const std::optional estimate = Mass{120'000};
        QCOMPARE(questions::addedOf(estimate, pullUp, &known), std::optional(Mass{39'500}));
        QCOMPARE(questions::addedOf(Mass{70'000}, pullUp, &known), std::optional(Mass{}));
        QCOMPARE(questions::addedOf(estimate, press, &known), estimate);
        QCOMPARE(questions::addedOf(estimate, pullUp, nullptr), estimate);
        QVERIFY(!questions::addedOf({}, pullUp, &known));
    }

    void theNextLoadAndWhatIsDue_data() {
        QTest::addColumn<Station>("station");
        QTest::addColumn<AtLift>("athlete");
        QTest::addColumn<LiftDue>("expected");
        const auto row = [](const char* name, Station station, AtLift athlete, LiftDue due) {
            QTest::newRow(name) << std::move(station) << std::move(athlete) << due;
        };
        row("a planned ladder, not begun", squat(ladder), {}, {.done = 0, .due = 4, .next = 40_kg});
        row("in the middle of it", squat(ladder), {.today = {up(40_kg), up(60_kg)}},
            {.done = 2, .due = 2, .next = 80_kg});
        row("between its loads", squat(ladder), {.today = {up(62.5_kg)}},
            {.done = 1, .due = 2, .next = 80_kg});
        row("a lighter set after", squat(ladder), {.today = {up(80_kg), up(60_kg)}},
            {.done = 2, .due = 1, .next = 90_kg});
        row("its top", squat(ladder), {.today = {up(90_kg)}},
            {.done = 1, .due = 0, .why = NoLoad::Done});
        row("last time's ladder, as it was lifted", squat({}),
            {.today = {up(40_kg)}, .lastTime = {40_kg, 50_kg, 50_kg, 45_kg, 60_kg}},
            {.done = 1, .due = 3, .next = 45_kg});
        row("three sets of a longer ladder", squat(ladder, 3), {.today = {up(40_kg)}},
            {.done = 1, .due = 2, .next = 60_kg});
        row("three sets done", squat(ladder, 3), {.today = {up(40_kg), up(60_kg), down(80_kg)}},
            {.done = 3, .due = 0, .why = NoLoad::Done});
        row("more sets than the planned ladder has", squat({60_kg}, 3), {.today = {up(60_kg)}},
            {.done = 1, .due = 2, .next = 60_kg});
        row("more sets than last time's: the same rise", squat({}, 4),
            {.today = {up(40_kg), up(50_kg)}, .lastTime = {40_kg, 50_kg}},
            {.done = 2, .due = 2, .next = 60_kg});
        row("nothing planned and nothing known", squat({}), {},
            {.done = 0, .due = std::nullopt, .why = NoLoad::NoLadder});
        row("three sets, nothing known", squat({}, 3), {.today = {up(60_kg)}},
            {.done = 1, .due = 2, .why = NoLoad::NoLadder});
        row("today's own rise goes on", squat({}), {.today = {up(40_kg), up(50_kg)}},
            {.done = 2, .due = std::nullopt, .next = 60_kg});
        // 85 lifted, 95 not: halfway is 90 (looks/1-floor).
        row("under what was not lifted", squat({}),
            {.today = {up(85_kg), down(95_kg)}, .lastTime = {85_kg, 95_kg, 97.5_kg}},
            {.done = 2, .due = 1, .next = 90_kg, .retry = true});
        row("halfway is made of plates", squat(ladder), {.today = {up(80_kg), down(90_kg)}},
            {.done = 2, .due = 1, .next = 85_kg, .retry = true});
        row("the ladder's own load under it", squat(ladder), {.today = {up(40_kg), down(90_kg)}},
            {.done = 2, .due = 2, .next = 60_kg, .retry = true});
        row("tried once under it", squat(ladder), {.today = {up(80_kg), down(90_kg), up(85_kg)}},
            {.done = 3, .due = 0, .why = NoLoad::NotLifted});
        row("twice not lifted", squat(ladder), {.today = {up(60_kg), down(90_kg), down(80_kg)}},
            {.done = 3, .due = 0, .why = NoLoad::NotLifted});
        row("twice not lifted, sets planned", squat(ladder, 5),
            {.today = {up(60_kg), down(80_kg), down(80_kg)}},
            {.done = 3, .due = 0, .why = NoLoad::NotLifted});
        row("no step left under it", squat(ladder), {.today = {up(87.5_kg), down(90_kg)}},
            {.done = 2, .due = 0, .why = NoLoad::NotLifted});
        row("the first load not lifted", squat(ladder), {.today = {down(40_kg)}},
            {.done = 1, .due = 0, .why = NoLoad::NotLifted});
        row("not lifted, and then lifted", squat(ladder), {.today = {down(60_kg), up(60_kg)}},
            {.done = 2, .due = 2, .next = 80_kg});
        row("under the ceiling", squat(ladder), {.today = {up(60_kg)}, .ceiling = 80_kg},
            {.done = 1, .due = 1, .next = 80_kg});
        row("the ceiling reached", squat(ladder), {.today = {up(80_kg)}, .ceiling = 80_kg},
            {.done = 1, .due = 0, .why = NoLoad::AboveCeiling});
        row("above the estimate: due, not offered", squat(ladder),
            {.today = {up(80_kg)}, .estimate = 85_kg},
            {.done = 1, .due = 1, .why = NoLoad::AboveEstimate});
        row("above it, but a maximum last time", squat({}),
            {.today = {up(80_kg)},
             .lastTime = {80_kg, 90_kg},
             .lastMaxima = {90_kg},
             .estimate = 85_kg},
            {.done = 1, .due = 1, .next = 90_kg});
        row("a load not possible", squat(ladder), {.today = {up(40_kg)}, .notPossible = {60_kg}},
            {.done = 1, .due = 2, .next = 80_kg});
        row("not possible today", squat(ladder), {.today = {up(40_kg)}, .out = true},
            {.done = 1, .due = 0, .why = NoLoad::Out});
        // 185 and 205 lb are 83.915 and 92.986 kg; halfway, down to 5 lb, 195 lb: 88.451 kg.
        row("pounds", squat({}),
            {.today = {up(83.915_kg), down(92.986_kg)}, .unit = MassUnit::Pound},
            {.done = 2, .due = 1, .next = 88.451_kg, .retry = true});
    }
    void theNextLoadAndWhatIsDue() {
        QFETCH(Station, station);
        QFETCH(AtLift, athlete);
        QFETCH(LiftDue, expected);
        const LiftDue due = dueAt(station, athlete);
        QCOMPARE(due.done, expected.done);
        QCOMPARE(due.due, expected.due);
        QCOMPARE(due.next, expected.next);
        QCOMPARE(due.retry, expected.retry);
        QCOMPARE(int(due.why), int(expected.why));
    }

    void attemptsDue() {
        Station station;
        const std::vector one{hop(false)};
        QCOMPARE(dueAt(station, one, {}), (TestsDue{0, 3, DueAttempt{0, BodySide::Both}, false}));
        QCOMPARE(dueAt(station, one,
                       batteryOf({attempt(BodySide::Both), attempt(BodySide::Both, "line")})),
                 (TestsDue{1, 2, DueAttempt{0, BodySide::Both}, false}));
        station.sets = 1;
        QCOMPARE(dueAt(station, one, batteryOf({attempt(BodySide::Both)})),
                 (TestsDue{1, 0, {}, false}));
        station.sets = 0;
        const std::vector sides{hop(true)};
        QCOMPARE(dueAt(station, sides, {}), (TestsDue{0, 6, DueAttempt{0, BodySide::Left}, false}));
        QCOMPARE(dueAt(station, sides, batteryOf({attempt(BodySide::Left)})),
                 (TestsDue{1, 5, DueAttempt{0, BodySide::Right}, false}));
        const Gap knee{.kind = TestKindId{1}, .side = BodySide::Right, .reason = "knee"};
        QCOMPARE(dueAt(station, sides, batteryOf({attempt(BodySide::Left)}, {knee})),
                 (TestsDue{1, 2, DueAttempt{0, BodySide::Left}, false}));
        const Gap all{.kind = TestKindId{1}, .reason = "knee"};
        QCOMPARE(dueAt(station, sides, batteryOf({}, {all})), (TestsDue{0, 0, {}, true}));
        const std::vector both{hop(true, true)};
        QCOMPARE(dueAt(station, both, {}), (TestsDue{0, 9, DueAttempt{0, BodySide::Both}, false}));
        auto second = hop(false);
        second.id = TestKindId{2};
        const std::vector two{hop(false, false, 1), second};
        QCOMPARE(dueAt(station, two, batteryOf({attempt(BodySide::Both)})),
                 (TestsDue{1, 3, DueAttempt{1, BodySide::Both}, false}));
    }

    void roundAndRound() {
        using Due = std::vector<bool>;
        using At = std::optional<std::size_t>;
        QCOMPARE(nextTurn(Due{}, {}), At{});
        QCOMPARE(nextTurn(Due{true, true}, {}), At{0});
        QCOMPARE(nextTurn(Due{true, true}, 0), At{1});
        QCOMPARE(nextTurn(Due{true, true}, 1), At{0});
        QCOMPARE(nextTurn(Due{false, true, false}, 1), At{1});
        QCOMPARE(nextTurn(Due{true, false, false}, 1), At{0});
        QCOMPARE(nextTurn(Due{false, false}, 1), At{});
    }

    /// Twenty-four at one rack, ladders, ceilings, failures and gaps by chance: nobody is passed
    /// over, nobody lifts more than was planned, and no load is offered that must not be.
    void twentyFourTakeTheirTurns() {
        std::mt19937 dice(24);
        const auto chance = [&dice](unsigned of) { return dice() % of == 0; };
        for (int day = 0; day < 60; ++day) {
            constexpr std::size_t many = 24;
            const int sets = chance(2) ? 3 : 0;
            const Station station = squat(chance(3) ? std::vector<Mass>{} : ladder, sets);
            std::vector<AtLift> athletes(many);
            for (AtLift& one : athletes) {
                one.lastTime = {40_kg, 50_kg, 60_kg};
                if (chance(5))
                    one.ceiling = 60_kg;
                if (chance(9))
                    one.notPossible = {60_kg};
            }
            std::vector<int> turns(many, 0);
            std::optional<std::size_t> at;
            for (int step = 0; step < 500; ++step) {
                std::vector<bool> due;
                for (const AtLift& one : athletes)
                    due.push_back(dueAt(station, one).isDue());
                const auto next = nextTurn(due, at);
                QCOMPARE(next.has_value(), std::ranges::find(due, true) != due.end());
                if (!next)
                    break;
                // Round and round: nobody between the last and this one was due.
                for (std::size_t i = 1; at && (*at + i) % many != *next; ++i)
                    QVERIFY(!due[(*at + i) % many]);
                at = next;
                AtLift& one = athletes[*at];
                const LiftDue offered = dueAt(station, one);
                QVERIFY(due[*at] && ++turns[*at] <= (sets > 0 ? sets : 6));
                QVERIFY(offered.next);
                QVERIFY(!one.ceiling || *offered.next <= *one.ceiling);
                QVERIFY(std::ranges::find(one.notPossible, *offered.next) == one.notPossible.end());
                for (const Tried& before : one.today) {
                    QVERIFY(before.lifted || *offered.next < before.load);
                    const bool again = sets > 0; // at a planned ladder's top
                    QVERIFY(!before.lifted ||
                            (again ? *offered.next >= before.load : *offered.next > before.load));
                }
                if (chance(40))
                    one.out = true;
                else
                    one.today.push_back({*offered.next, !chance(6)});
            }
            for (const AtLift& one : athletes)
                QVERIFY(!dueAt(station, one).isDue());
        }
    }
    void threeSetsEachInOrder() {
        const Station station = squat({40_kg, 60_kg, 80_kg});
        std::vector<AtLift> athletes(24);
        std::vector<std::size_t> order;
        std::optional<std::size_t> at;
        for (;;) {
            std::vector<bool> due;
            for (const AtLift& one : athletes)
                due.push_back(dueAt(station, one).isDue());
            at = nextTurn(due, at);
            if (!at)
                break;
            order.push_back(*at);
            athletes[*at].today.push_back({*dueAt(station, athletes[*at]).next, true});
        }
        QCOMPARE(order.size(), std::size_t(72));
        for (std::size_t i = 0; i < order.size(); ++i)
            QCOMPARE(order[i], i % 24);
    }

    /// Every reason not to offer a load has its sentence, but those that speak for themselves; one
    /// of a load that was not lifted names it.
    void reasonsForNoLoadAreSaid() {
        const auto told = [](NoLoad why, std::optional<Mass> notLifted = {}) {
            return english(turnWords({.why = why}, notLifted, false));
        };
        QCOMPARE(told(NoLoad::NotLifted, 95_kg),
                 std::string("95 kg was not lifted, and no load is offered under it."));
        QCOMPARE(told(NoLoad::AboveCeiling),
                 std::string("The ladder goes on above the block's ceiling."));
        QVERIFY(told(NoLoad::AboveEstimate).find("estimated 1RM") != std::string::npos);
        QVERIFY(told(NoLoad::NoLadder).find("No ladder") != std::string::npos);
        for (const NoLoad clear : {NoLoad::None, NoLoad::Out, NoLoad::Done})
            QCOMPARE(told(clear), std::string());
        QCOMPARE(english(turnWords({.next = 80_kg, .retry = true}, 95_kg, true)),
                 std::string("95 kg was not lifted."));
        QCOMPARE(english(turnWords({.next = 80_kg}, {}, true)),
                 std::string("By the ladder of last time."));
        QVERIFY(turnWords({.next = 80_kg}, {}, false).empty());
        // At the line: the load, what holds it back to the decimal that is shown of it.
        QCOMPARE(english(ceilingHint(70_kg, 65_kg)), std::string("70 kg is above the block's "
                                                                 "ceiling of 65 kg: type it if it "
                                                                 "is meant."));
        QCOMPARE(english(estimateHint(70_kg, 68.04)),
                 std::string("70 kg is above the estimated 1RM of 68 kg: type it if it is meant."));
    }
};
QTEST_APPLESS_MAIN(TestTurns)
#include "tst_turns.moc"
