// SPDX-License-Identifier: GPL-3.0-or-later
// What is said where a line cannot say it: fair reps, shared loads, the log's own calibration.
#include "core/answers/calibration.h"
#include "core/answers/fairreps.h"
#include "core/answers/noise.h"
#include "core/answers/sharedloads.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {
Set set(double load, std::vector<double> reps) {
    Set made;
    made.load = massFromKilograms(load);
    for (const double v : reps)
        made.reps.push_back({v, {}});
    return made;
}

LiftSession of(int id, const std::vector<Set>& sets) {
    std::vector<std::pair<double, double>> points;
    for (const Set& each : sets)
        points.emplace_back(kilograms(each.load), *pointVelocity(each, PointRule::Fastest));
    return tests::session(id, points);
}
} // namespace

class TestTwoLoads : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void asManyRepsOnBothDays();
    void excludedRepsAreNotCounted();
    void nothingToMakeFair();
    void sharedLoads();
    void sharedLoadsRefused();
    void calibration();
    void calibrationPairs();
};

void TestTwoLoads::asManyRepsOnBothDays() {
    const std::vector<Set> one{set(40, {1.10}), set(60, {0.90}), set(80, {0.70})};
    const std::vector<Set> five{set(40, {1.12, 1.15, 1.13}), set(60, {0.91, 0.95}),
                                set(70, {0.80, 0.84}), set(80, {0.71, 0.69})};
    const auto fair = fairReps(tests::benchPull(), of(1, one), one, of(2, five), five);
    QVERIFY(fair);
    QVERIFY(fair->first.points == of(1, one).points);
    // The first rep of each, at 70 kg as at its nearest load.
    QCOMPARE(fair->second.points[0].velocity, 1.12);
    QCOMPARE(fair->second.points[1].velocity, 0.91);
    QCOMPARE(fair->second.points[2].velocity, 0.80);
    QCOMPARE(fair->second.points[3].velocity, 0.71);
    // Backwards the other session is made fair.
    const auto back = fairReps(tests::benchPull(), of(2, five), five, of(1, one), one);
    QVERIFY(back && back->first.points == fair->second.points);
}

void TestTwoLoads::excludedRepsAreNotCounted() {
    const std::vector<Set> two{set(40, {1.10, 1.11}), set(60, {0.9, 0.92})};
    std::vector<Set> three{set(40, {1.3, 1.12, 1.08, 1.2}), set(60, {0.91, 0.93, 0.95})};
    three[0].reps[0].excluded = "missed";
    const auto fair = fairReps(tests::benchPull(), of(1, two), two, of(2, three), three);
    QVERIFY(fair);
    QCOMPARE(fair->second.points[0].velocity, 1.12); // of 1.12 and 1.08
    QCOMPARE(fair->second.points[1].velocity, 0.93);
}

void TestTwoLoads::nothingToMakeFair() {
    const std::vector<Set> a{set(40, {1.10, 1.2}), set(60, {0.9, 0.8})};
    const std::vector<Set> b{set(40, {1.0, 1.1, 1.0}), set(60, {0.9, 0.8, 0.7})};
    QVERIFY(!fairReps(tests::benchPull(), of(1, a), a, of(2, a), a));
    QVERIFY(!fairReps(tests::benchPull(), of(1, a), a, of(2, b), b)); // the fastest were early
    QVERIFY(!fairReps(tests::benchPull(), of(1, a), a, tests::session(2, {}), {}));
    Lift mean = tests::benchPull();
    mean.rule = PointRule::Mean;
    const std::vector<Set> one{set(40, {1.10}), set(60, {0.9})};
    QVERIFY(!fairReps(mean, of(1, one), one, of(2, a), a));
}

void TestTwoLoads::sharedLoads() {
    // Two loads each day, no line with inference: the load that both lifted. By hand: s_d 0.021 on
    // 4 df, points 0.015 on 8: half^2 = 2.776445^2 x 2 x 0.021^2 + 2.306004^2 x 0.015^2 (1 + 1/2).
    const auto from = tests::session(1, {{40, 1.10}, {60, 0.90}});
    const auto to = tests::session(2, {{40, 1.22}, {40, 1.24}, {80, 0.7}});
    ComparisonSettings settings;
    settings.dayNoise = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    settings.smallestVelocity = Smallest{0.06};
    const auto changes =
        sharedLoadChanges(from, to, settings, pointNoise(settings.dayNoise, std::nullopt));
    QVERIFY(changes);
    QCOMPARE(changes->size(), std::size_t(1));
    const SharedLoadChange& at = changes->front();
    CHECK_NEAR(at.read.change, 0.13, 1e-12);
    const double half =
        std::hypot(2.776445 * std::sqrt(2.0) * 0.021, 2.306004 * 0.015 * std::sqrt(1.5));
    CHECK_NEAR(at.read.interval.high, 0.13 + half, 1e-7);
    QCOMPARE(at.read.reading, Reading::Better);
    QCOMPARE(at.seenTo, 1.23);
    // The athlete's own scatter where lines show it; a device's bias is taken off.
    const auto own = pointNoise(settings.dayNoise, stats::Scatter{0.04 * 0.04, 12});
    QCOMPARE(own.scatter.df, 12.0);
    settings.deviceBias = DeviceBias{0.03, {0.0001, 10}};
    const auto biased = sharedLoadChanges(from, to, settings, own);
    CHECK_NEAR(biased->front().read.change, 0.10, 1e-12);
    QVERIFY(biased->front().read.interval.high - 0.10 > half);
}

void TestTwoLoads::sharedLoadsRefused() {
    const auto none = sharedLoadChanges(tests::session(1, {{40, 1.1}}),
                                        tests::session(2, {{50, 1.0}}), {}, pointNoise({}, {}));
    QVERIFY(!none && none.why().why == NoAnswer::Why::BeyondLoads);
}

void TestTwoLoads::calibration() {
    const AthleteId one{1}, two{2};
    // Estimates 10 % high in all: exp(bias) = 1.1 by hand, no spread.
    std::vector<EstimatePair> pairs{{one, 110, 100}, {two, 121, 110}};
    QVERIFY(!calibrate(pairs, one));
    pairs.push_back({two, 88, 80});
    const auto made = calibrate(pairs, one);
    QVERIFY(made);
    CHECK_NEAR(made->bias, std::log(1.1), 1e-12);
    CHECK_NEAR(made->calibrated(132), 120, 1e-9);
    QCOMPARE(made->ownPairs, 1);
    const auto interval = made->calibrated(stats::Interval{121, 143}, 132, 0.95);
    CHECK_NEAR(interval.low, 110, 1e-6);
    CHECK_NEAR(interval.high, 130, 1e-6);
    // An athlete who reads low among others who read high: half way with one pair.
    pairs[0] = {one, 90, 100};
    const auto mixed = calibrate(pairs, one);
    const double all = (std::log(0.9) + 2 * std::log(1.1)) / 3;
    CHECK_NEAR(mixed->bias, (std::log(0.9) + all) / 2, 1e-12);
    QVERIFY(mixed->spread > 0.05 && mixed->se > 0);
    QVERIFY(mixed->calibrated(stats::Interval{80, 100}, 90, 0.95).high -
                mixed->calibrated(stats::Interval{80, 100}, 90, 0.95).low >
            20);
    // Nobody's own: the log's.
    CHECK_NEAR(calibrate(pairs, AthleteId{9})->bias, all, 1e-12);
}

void TestTwoLoads::calibrationPairs() {
    const auto mvt = tests::coachMvt(0.30);
    auto near = tests::session(1, {{40, 1.1}, {60, 0.861}, {80, 0.62}, {90, 0.50}});
    auto measured = tests::session(2, {});
    measured.measuredOneRm = massFromKilograms(100);
    std::vector<LiftSession> sessions{near, measured};
    auto pairs = estimatePairs(tests::benchPull(), mvt, sessions); // 7 days apart
    QCOMPARE(pairs.size(), std::size_t(1));
    QCOMPARE(pairs[0].lifted, 100.0);
    QVERIFY(pairs[0].estimate > 100 && pairs[0].estimate < 110);
    // Further apart, far from the maximum, or holding that maximum itself: none.
    sessions[1] = tests::session(4, {});
    sessions[1].measuredOneRm = massFromKilograms(100);
    QVERIFY(estimatePairs(tests::benchPull(), mvt, sessions).empty());
    sessions = {tests::session(1, {{20, 1.34}, {30, 1.22}, {40, 1.1}}), measured};
    QVERIFY(estimatePairs(tests::benchPull(), mvt, sessions).empty());
    near.points.push_back({.load = 100, .velocity = 0.31, .set = 5});
    sessions = {near, measured};
    QVERIFY(estimatePairs(tests::benchPull(), mvt, sessions).empty());
}

QTEST_APPLESS_MAIN(TestTwoLoads)
#include "tst_twoloads.moc"
