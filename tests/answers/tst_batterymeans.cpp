// SPDX-License-Identifier: GPL-3.0-or-later
// A battery's sides that are blocks: the mean of their sessions and its interval. Figures by hand
// from method.md 12: the mean of K days has C / K of a day's variance, C = 1 + 2 sum (1 - i/K)
// 0.5^i, so C = 1, 1.5, 11/6 for K = 1, 2, 3; half-width t sqrt(2) TE of single days (Hopkins
// 2000).
#include "core/answers/batterycomparison.h"
#include "core/answers/seasonsource.h"
#include "core/stats/quantiles.h"
#include "tests/answers/checking.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

Stored<TestKindId, TestKind> hop(std::optional<TestNoise> noise) {
    Stored<TestKindId, TestKind> kind{.id = TestKindId{1}};
    kind.value.name = "Hop";
    kind.value.unit = "cm";
    kind.value.twoSided = true;
    kind.value.decimals = 1;
    kind.value.noise = std::move(noise);
    kind.value.smallest = 9.0;
    return kind;
}

Date dayOf(int number) {
    return Date{std::chrono::sys_days{std::chrono::year{2026} / 1 / 1} + std::chrono::days{number}};
}

BatterySession hopped(int id, int day, std::vector<double> left, std::vector<double> right) {
    BatterySession made;
    made.session = SessionId{id};
    made.athlete = AthleteId{1};
    made.date = dayOf(day);
    TestAttempts test;
    test.kind = TestKindId{1};
    for (const auto& [side, values] : {std::pair{BodySide::Left, left}, {BodySide::Right, right}})
        for (const double value : values) {
            Attempt attempt;
            attempt.side = side;
            attempt.value = value;
            test.attempts.push_back(attempt);
        }
    made.battery.tests.push_back(test);
    return made;
}

BatteryComparison compared(const Stored<TestKindId, TestKind>& kind,
                           std::vector<BatterySession> from, std::vector<BatterySession> to,
                           bool means) {
    const std::vector kinds{kind};
    const SquadTests squad(kinds);
    return compareBattery(kinds, AthleteId{1}, {"a", std::move(from), means},
                          {"b", std::move(to), means}, squad, {});
}

bool same(const ReadChange& a, const ReadChange& b) {
    const auto ends = [](const stats::Interval& i, const stats::Interval& j) {
        return i.low == j.low && i.high == j.high;
    };
    return a.change == b.change && ends(a.interval, b.interval) &&
           ends(a.equivalence, b.equivalence) && a.reading == b.reading &&
           a.beyondSmallest == b.beyondSmallest && a.withinSmallest == b.withinSmallest &&
           a.under == b.under && a.notComparable == b.notComparable &&
           a.at80.has_value() == b.at80.has_value() && (!a.at80 || ends(*a.at80, *b.at80));
}

} // namespace

class TestBatteryMeans : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// One session a block reads as that day does, to the last bit; and its interval is the old
    /// one.
    void oneSessionABlockIsTheDay() {
        std::mt19937 dice(4);
        std::uniform_real_distribution<double> value(150, 250);
        int read = 0;
        for (int round = 0; round < 500; ++round) {
            const auto kind = hop(
                dice() % 4 == 0
                    ? std::nullopt
                    : std::optional(TestNoise{1 + value(dice) / 50, dice() % 2 == 0, "a paper"}));
            const auto some = [&] {
                std::vector<double> all;
                for (auto left = dice() % 4; left > 0; --left)
                    all.push_back(value(dice));
                return all;
            };
            BatterySession one = hopped(1, 3, some(), some()), two = hopped(2, 60, some(), some());
            if (dice() % 3 == 0)
                two.battery.tests[0].conditions.surface = "turf";
            if (dice() % 2 == 0)
                one.battery.tests[0].conditions.surface = "boards";
            if (dice() % 8 == 0)
                two.battery.tests[0].conditions.notComparable = "a sore knee";
            const auto days = compared(kind, {one}, {two}, false);
            const auto blocks = compared(kind, {one}, {two}, true);
            QCOMPARE(blocks.tests.size(), days.tests.size());
            for (std::size_t i = 0; i < days.tests.size(); ++i) {
                const TestChange &a = days.tests[i], &b = blocks.tests[i];
                QVERIFY(a.before.value == b.before.value && a.after.value == b.after.value);
                QVERIFY(a.change == b.change && a.percent == b.percent);
                QVERIFY(a.attemptNoise == b.attemptNoise && a.noReading == b.noReading);
                QVERIFY(a.conditions == b.conditions && a.before.date == b.before.date);
                QVERIFY(same(a.read, b.read));
                if (!b.change || !b.noise)
                    continue;
                ++read;
                const auto before = changeInterval(*b.change, b.noise->te, b.noise->df, 0.95);
                QVERIFY(b.read.interval.low == before.low && b.read.interval.high == before.high);
            }
            for (std::size_t i = 0; i < days.leftRight.size(); ++i) {
                QVERIFY(days.leftRight[i].change == blocks.leftRight[i].change);
                QVERIFY(same(days.leftRight[i].read, blocks.leftRight[i].read));
            }
        }
        QVERIFY(read > 200);
    }

    void meansAndTheirIntervals() {
        const auto kind = hop(TestNoise{4.0, false, "a paper"});
        const auto made = compared(
            kind, {hopped(1, 1, {200}, {190}), hopped(2, 8, {206}, {})},
            {hopped(3, 60, {210}, {200}), hopped(4, 67, {213}, {201}), hopped(5, 74, {216}, {205})},
            true);
        const TestChange& left = made.tests[0];
        CHECK_NEAR(left.before.value->value, 203, 1e-12);
        CHECK_NEAR(left.after.value->value, 213, 1e-12);
        QCOMPARE(left.before.sessions, 2);
        QCOMPARE(left.after.sessions, 3);
        QVERIFY(left.before.first == dayOf(1) && left.before.date == dayOf(8));
        CHECK_NEAR(*left.change, 10, 1e-12);
        const double z = 1.959963984540054; // the 97.5 % point of the normal law (tables)
        const double half = z * 4.0 * std::sqrt(1.5 / 2 + 11.0 / 6 / 3);
        CHECK_NEAR(left.read.interval.low, 10 - half, 1e-9);
        CHECK_NEAR(left.read.interval.high, 10 + half, 1e-9);
        CHECK_NEAR(left.before.interval->low, 203 - z * 4.0 * std::sqrt(1.5 / 2), 1e-9);
        CHECK_NEAR(left.after.interval->high, 213 + z * 4.0 * std::sqrt(11.0 / 18), 1e-9);
        // The right was tested once before: so many days count for the difference of the sides.
        QCOMPARE(made.tests[1].before.sessions, 1);
        const LeftRight& sides = made.leftRight[0];
        const double l = (203 + 213) / 2.0, r = (190 + 202) / 2.0;
        const double te = 4.0 * std::sqrt((1 + 11.0 / 18) / 2);
        const double se = 100 * te * std::sqrt(2 * (1 + r * r / (l * l))) / l;
        CHECK_NEAR(sides.read.interval.width() / 2, 0.84 * 2.7764451051977987 * se,
                   1e-9); // t, 4 df
    }

    /// The season's matrix of the same two blocks is made by the same sum.
    void theSeasonSaysTheSame() {
        const auto kind = hop(TestNoise{4.0, false, "a paper"});
        const std::vector<BatterySession> from{hopped(1, 1, {200}, {190}),
                                               hopped(2, 8, {206}, {195})},
            to{hopped(3, 60, {210}, {200}), hopped(4, 67, {213}, {201})};
        const std::vector kinds{kind};
        const SquadTests squad(kinds);
        SeasonSource source{.athlete = AthleteId{1}};
        source.blocks = {{.id = BlockId{1}, .block = {.name = "a"}},
                         {.id = BlockId{2}, .block = {.name = "b"}}};
        source.kinds = kinds;
        source.squad = &squad;
        source.batteries = {from, to};
        const auto matrix = seasonMatrix(source);
        const auto made = compared(kind, from, to, true);
        int seen = 0;
        for (const MatrixRow& row : matrix.rows)
            for (const TestChange& test : made.tests)
                if (row.measure.kind == Measure::Kind::Test && row.measure.side == test.side) {
                    ++seen;
                    CHECK_NEAR(*row.cells[0].value, test.before.value->value, 1e-12);
                    CHECK_NEAR(row.cells[1].against->read.interval.low, test.read.interval.low,
                               1e-9);
                    CHECK_NEAR(row.cells[1].interval->high, test.after.interval->high, 1e-9);
                    QCOMPARE(row.cells[1].against->read.reading, test.read.reading);
                }
        QCOMPARE(seen, 2);
    }

    /// Without a typical error the days of both blocks say it themselves: var on df days, each
    /// block's sum of squares over (K - 1) sh, sh = (K - C)/(K - 1) = 0.5 of two and 7/12 of three.
    void noTypicalErrorButDays() {
        const auto kind = hop(std::nullopt);
        const auto made = compared(
            kind, {hopped(1, 1, {200}, {190}), hopped(2, 8, {206}, {196})},
            {hopped(3, 60, {210}, {200}), hopped(4, 67, {213}, {201}), hopped(5, 74, {216}, {205})},
            true);
        const TestChange& left = made.tests[0];
        QVERIFY(left.noise && left.noReading.empty());
        const double shares = 1 * 0.5 + 2 * (7.0 / 12);
        CHECK_NEAR(left.noise->te, std::sqrt((18.0 + 18.0) / shares),
                   1e-9); // 2 * 3^2 and 3^2 + 3^2
        // Satterthwaite: (sum of eigenvalues)^2 over the sum of their squares, of days that are
        // 0.5^|i-j| alike: 1/2 of two days; 3/4 and 5/12 of three (linear, quadratic).
        const double squares = 0.5 * 0.5 + 0.75 * 0.75 + (5.0 / 12) * (5.0 / 12);
        CHECK_NEAR(left.noise->df, shares * shares / squares, 1e-12);
        // One day a side says nothing of days.
        QVERIFY(!compared(kind, {hopped(1, 1, {200}, {190})}, {hopped(3, 60, {210}, {200})}, true)
                     .tests[0]
                     .noise);
    }

    void daysSetApartStandOnlyAlone() {
        const auto kind = hop(TestNoise{4.0, false, "a paper"});
        BatterySession apart = hopped(2, 8, {120}, {110});
        apart.battery.tests[0].conditions.notComparable = "in the rain";
        const auto made = compared(kind, {hopped(1, 1, {200}, {190}), apart},
                                   {hopped(3, 60, {210}, {200})}, true);
        CHECK_NEAR(made.tests[0].before.value->value, 200, 0);
        QCOMPARE(made.tests[0].before.sessions, 1);
        const auto alone = compared(kind, {apart}, {hopped(3, 60, {210}, {200})}, true);
        QVERIFY(!alone.tests[0].read.notComparable.empty());
    }
};

QTEST_APPLESS_MAIN(TestBatteryMeans)
#include "tst_batterymeans.moc"
