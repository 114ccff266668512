// SPDX-License-Identifier: GPL-3.0-or-later
// What is said where a line cannot say it: fair reps, shared loads, the log's own calibration.
#include "core/answers/agreement.h"
#include "core/answers/calibration.h"
#include "core/answers/checkloads.h"
#include "core/answers/fairreps.h"
#include "core/answers/noise.h"
#include "core/answers/plan.h"
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
    void aDevicesBiasIsTakenOffOnce();
    void sharedLoads();
    void sharedLoadsRefused();
    void calibration();
    void calibrationPairs();
    void plansTakeTheCalibratedEstimate();
    void whatWasLiftedIsNotTakenBack();
    void followedWithoutALine();
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

// An unchanged athlete on a device that reads 0.03 m/s more: taken off once, nothing has changed;
// not at all, or twice, 0.03 m/s is left over, one way or the other.
void TestTwoLoads::aDevicesBiasIsTakenOffOnce() {
    constexpr double reads = 0.03;
    const std::vector<Set> sets{set(40, {1.10}), set(55, {0.95}), set(70, {0.79}), set(85, {0.62})};
    std::vector<Set> higher = sets;
    for (Set& each : higher) {
        each.reps[0].velocity += reads;
        each.reps.push_back({each.reps[0].velocity + 0.02, {}}); // made fair before it is compared
    }
    const auto from = of(1, sets);
    auto to = of(2, higher), again = of(3, higher);
    to.conditions.device = again.conditions.device = DeviceId{2};
    // The bias is what a study of both at once says, not of these days.
    LiftSession left = of(10, sets), right = of(11, sets);
    for (Point& p : right.points)
        p.velocity += reads;
    right.conditions.device = DeviceId{2};
    right.date = left.date;
    right.ordinal = 2;
    const auto study = agreementStudy(
        DeviceId{1}, DeviceId{2}, devicePairs(std::vector{left, right}, DeviceId{1}, DeviceId{2}));
    QVERIFY(study);
    CHECK_NEAR(study->figures.bias, -reads, 1e-12); // first less second, nothing taken off
    ComparisonSettings settings;
    settings.deviceBias = biasOf(*study, DeviceId{1}, DeviceId{2});
    CHECK_NEAR(settings.deviceBias->first, reads, 1e-12);
    settings.checkLoads = {massFromKilograms(50), massFromKilograms(70)};
    settings.bend = bendOf(tests::benchPull());
    settings.asManyReps = [&](const LiftSession& a, const LiftSession& b) {
        return fairReps(tests::benchPull(), a, a.conditions.device == DeviceId{1} ? sets : higher,
                        b, b.conditions.device == DeviceId{1} ? sets : higher);
    };
    const Mvt mvt = tests::coachMvt(0.3);
    const auto c = compare(tests::benchPull(), mvt, from, to, settings);
    QVERIFY(c && c->oneRm);
    QVERIFY(std::ranges::find(c->notes, Note::Kind::AsManyReps, &Note::kind) != c->notes.end());
    QCOMPARE(c->at.size(), std::size_t(5));
    for (const ChangeAt& at : c->at) {
        CHECK_NEAR(at.read.change, 0, 1e-12);
        CHECK_NEAR(at.read.interval.low, -at.read.interval.high, 1e-12);
        CHECK_NEAR(at.interval.low, -at.interval.high, 1e-12);
        if (at.seenFrom)
            CHECK_NEAR(*at.seenTo, *at.seenFrom, 1e-12);
    }
    CHECK_NEAR(c->oneRm->estimate, 0, 1e-9);
    CHECK_NEAR(c->to.oneRm->estimate, c->from.oneRm->estimate, 1e-9);
    CHECK_NEAR(c->to.line.intercept, c->from.line.intercept, 1e-12);
    QVERIFY(c->differs.empty());
    const auto shared = sharedLoadChanges(from, to, settings, pointNoise({}, std::nullopt));
    QVERIFY(shared && shared->size() == 4);
    for (const SharedLoadChange& each : *shared)
        CHECK_NEAR(each.read.change, 0, 1e-12);
    const auto f =
        follow(tests::benchPull(), mvt, std::vector{from, to, again}, massFromKilograms(55), 0,
               settings, Mass{2500}, {{to.session, *settings.deviceBias}});
    QVERIFY(f && f->sessions[1].change && f->sessions[2].change);
    CHECK_NEAR(f->sessions[1].change->read.change, 0, 1e-12);
    CHECK_NEAR(f->sessions[2].change->read.change, 0, 1e-12);
}

// 106.7 kg by the line, taken down by a fifth, is less than the 90 kg that were lifted that day; by
// half, with all of its interval.
void TestTwoLoads::whatWasLiftedIsNotTakenBack() {
    const auto points = tests::session(1, {{40, 1.1}, {60, 0.862}, {80, 0.618}, {90, 0.50}});
    const std::vector<EstimatePair> pairs{
        {AthleteId{1}, 120, 100}, {AthleteId{2}, 132, 110}, {AthleteId{2}, 96, 80}};
    Beyond beyond;
    beyond.calibration = *calibrate(pairs, AthleteId{1});
    const auto made =
        profile(tests::benchPull(), tests::coachMvt(0.30, 0.03), points, 0.95, beyond);
    QVERIFY(made && made->oneRm && plansCalibrated(*made->oneRm));
    QVERIFY(beyond.calibration->calibrated(made->oneRm->estimate) < 90);
    QCOMPARE(estimateToPlanWith(*made->oneRm), 90.0);
    QCOMPARE(toPlanWith(*made->oneRm)->low, 90.0);
    QVERIFY(toPlanWith(*made->oneRm)->high > 91);

    const std::vector<EstimatePair> far{
        {AthleteId{1}, 200, 100}, {AthleteId{2}, 220, 110}, {AthleteId{2}, 160, 80}};
    beyond.calibration = *calibrate(far, AthleteId{1});
    const auto without =
        profile(tests::benchPull(), tests::coachMvt(0.30, 0.03), points, 0.95, beyond);
    QVERIFY(without && without->oneRm && !plansCalibrated(*without->oneRm));
    QCOMPARE(estimateToPlanWith(*without->oneRm), without->oneRm->estimate);
}

// A profile that holds a calibration shows both; plans take the calibrated one.
void TestTwoLoads::plansTakeTheCalibratedEstimate() {
    const auto points = tests::session(1, {{40, 1.1}, {60, 0.862}, {80, 0.618}, {90, 0.50}});
    const Mvt mvt = tests::coachMvt(0.30, 0.03);
    const std::vector<EstimatePair> pairs{
        {AthleteId{1}, 110, 100}, {AthleteId{2}, 121, 110}, {AthleteId{2}, 88, 80}};
    Beyond beyond;
    const auto raw = profile(tests::benchPull(), mvt, points, 0.95, beyond);
    beyond.calibration = *calibrate(pairs, AthleteId{1});
    const auto made = profile(tests::benchPull(), mvt, points, 0.95, beyond);
    QVERIFY(raw && made && made->oneRm);
    QCOMPARE(made->oneRm->estimate, raw->oneRm->estimate);
    QVERIFY(made->oneRm->toPlan == raw->oneRm->toPlan);
    CHECK_NEAR(*made->oneRm->calibrated, raw->oneRm->estimate / 1.1, 1e-9);
    CHECK_NEAR(estimateToPlanWith(*made->oneRm), raw->oneRm->estimate / 1.1, 1e-9);
    CHECK_NEAR(toPlanWith(*made->oneRm)->high, raw->oneRm->toPlan->high / 1.1, 1e-9);
    QVERIFY(std::ranges::find(made->notes, Note::Kind::Calibrated, &Note::kind) !=
            made->notes.end());
    PlanSettings settings{
        .equipment = {.name = "room",
                      .bars = {{.name = "bar", .mass = exactMass(Mass{20'000})}},
                      .plates = parsePlates("20x2,10x1,5x1,2.5x1", MassUnit::Kilogram)}};
    settings.target = Target{Target::Kind::Percent, 80, 80};
    const auto before = plan(tests::benchPull(), *raw, settings);
    const auto after = plan(tests::benchPull(), *made, settings);
    QVERIFY(before && after);
    CHECK_NEAR(after->aim->low, before->aim->low / 1.1, 1e-9);
    CHECK_NEAR(after->end.kg, before->end.kg / 1.1, 1e-9);
}

// Two loads a day: the season tells the load as it was seen.
void TestTwoLoads::followedWithoutALine() {
    const auto base = tests::session(1, {{40, 1.1}, {60, 0.86}, {80, 0.62}});
    const auto two = tests::session(2, {{40, 1.15}, {60, 0.95}});
    ComparisonSettings settings;
    settings.dayNoise = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    const auto f = follow(tests::benchPull(), tests::coachMvt(0.3), std::vector{base, two},
                          massFromKilograms(60), 0, settings, Mass{2500});
    QVERIFY(f && !f->sessions[1].change && f->sessions[1].seenChange);
    CHECK_NEAR(f->sessions[1].seenChange->change, 0.09, 1e-12);
    QVERIFY(std::ranges::find(f->notes, Note::Kind::AsSeen, &Note::kind) != f->notes.end());
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
