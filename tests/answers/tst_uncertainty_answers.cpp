// SPDX-License-Identifier: GPL-3.0-or-later
// What an answer makes of day-to-day noise and bent lines, against figures worked out in R.
#include "core/answers/comparison.h"
#include "core/answers/noise.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;
using Points = std::vector<std::pair<double, double>>;

namespace {

const Points full{{40, 1.105}, {52, .915}, {64, .742}, {76, .548}, {88, .362}};
const Points light{{30, 1.292}, {40, 1.131}, {50, .989}, {60, .838}};

Lift benchPress() {
    Lift lift;
    lift.name = "Bench press";
    lift.kind = VelocityKind::Propulsive;
    return lift;
}

ComparisonSettings worldSettings(const Bend& bend) {
    ComparisonSettings settings;
    settings.checkLoads = {massFromKilograms(40), massFromKilograms(60)};
    settings.dayNoise = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    settings.bend = bend;
    settings.smallestVelocity = Smallest{0.06};
    settings.smallestOneRm = Smallest{4};
    return settings;
}

Comparison pressed(const Bend& bend, const Points& from = full, const Points& to = light) {
    const double mvt = velocityAt(*publishedRelation("Bench press", VelocityKind::Propulsive), 100);
    return *compare(benchPress(), tests::coachMvt(mvt), tests::session(1, from),
                    tests::session(2, to), worldSettings(bend));
}

const ReadChange& at(const Comparison& c, double load) {
    return std::ranges::find(c.at, massFromKilograms(load), &ChangeAt::load)->read;
}

/// An athlete who bends by kappa of the published curve, on perfect days.
Points bentLadder(const PublishedRelation& relation, double kappa, double max,
                  const std::vector<double>& percents) {
    const double a = velocityAt(relation, 30), b = velocityAt(relation, 100);
    Points points;
    for (const double p : percents) {
        const double chord = a + (b - a) * (p - 30) / 70;
        points.emplace_back(p * max / 100, chord + kappa * (velocityAt(relation, p) - chord));
    }
    return points;
}

} // namespace

class TestUncertaintyAnswers : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void workedNumbers();
    void sameLoadsBendAlike();
    void lightOnlyOfABentAthlete_data();
    void lightOnlyOfABentAthlete();
    void bendOfOneSessionIsWhereTheStepsStandStill();
    void envelopeHoldsEveryRelation();
    void ladderNarrowsKappa();
    void kappaAgreesWithR();
    void widerScatterIsNotPooledAway();
    void noMaximum();
    void relationIsFound();
    void lineThroughTheCurveIsExact();
    void planIntervalHoldsItsParts();
};

// trials/worlds/ex.out of the design, worked out there in R: press 40..88 against 30..60.
void TestUncertaintyAnswers::workedNumbers() {
    const Comparison c = pressed(bendOf(benchPress()));
    CHECK_NEAR(c.from.oneRm->estimate, 100.4784479, 5e-8);
    CHECK_NEAR(c.to.oneRm->estimate, 104.2678214, 5e-8);
    CHECK_NEAR(at(c, 40).change, 0.0327, 1e-12);
    CHECK_NEAR(at(c, 60).change, 0.04073333333, 1e-11);
    CHECK_NEAR(at(c, 40).straight->low, -0.0546521484, 5e-11);
    CHECK_NEAR(at(c, 40).straight->high, 0.1200521484, 5e-11);
    CHECK_NEAR(at(c, 60).straight->low, -0.04286731236, 5e-12);
    CHECK_NEAR(at(c, 60).straight->high, 0.124333979, 5e-10);
    const ReadChange& max = c.oneRm->read;
    CHECK_NEAR(max.change, 3.789373443, 5e-10);
    CHECK_NEAR(max.straight->low, -3.146427317, 5e-10);
    CHECK_NEAR(max.straight->high, 10.93166736, 5e-9);
    // The straight interval and all of the error: "union" there.
    CHECK_NEAR(at(c, 40).straight->low - at(c, 40).bend.high, -0.07020565291, 5e-12);
    CHECK_NEAR(at(c, 60).straight->high - at(c, 60).bend.low, 0.1389499941, 5e-11);
    CHECK_NEAR(max.straight->low - max.bend.high, -3.146427317, 5e-10);
    CHECK_NEAR(max.straight->high - max.bend.low, 15.24563656, 5e-9);
    CHECK_NEAR(at(c, 40).interval.low, -0.06374286258, 5e-11);
    CHECK_NEAR(at(c, 40).interval.high, 0.1135893581, 5e-11);
    CHECK_NEAR(at(c, 60).interval.low, -0.03677223685, 5e-11);
    CHECK_NEAR(at(c, 60).interval.high, 0.1328549186, 5e-11);
    CHECK_NEAR(max.interval.low, -2.08822444, 1e-8);
    CHECK_NEAR(max.interval.high, 14.18743369, 1e-8);
    // Each end of the equivalence interval is one-sided at its own level.
    QVERIFY(at(c, 40).equivalence.low > at(c, 40).straight->low - at(c, 40).bend.high);
    QVERIFY(at(c, 40).at80->low > at(c, 40).interval.low);
}

void TestUncertaintyAnswers::sameLoadsBendAlike() {
    const Points again{{40, 1.12}, {52, .93}, {64, .75}, {76, .55}, {88, .37}};
    for (const Bend& bend : {bendOf(benchPress()), bendOf(tests::benchPull())}) {
        const Comparison c = pressed(bend, full, again);
        for (const ChangeAt& each : c.at)
            QVERIFY(each.read.bend.high - each.read.bend.low < 1e-15 &&
                    std::abs(each.read.bend.low) < 1e-15);
        QVERIFY(c.oneRm->read.interval == *c.oneRm->read.straight);
    }
}

void TestUncertaintyAnswers::lightOnlyOfABentAthlete_data() {
    QTest::addColumn<int>("relation");
    QTest::addColumn<double>("kappa");
    for (int r = 0; r < static_cast<int>(publishedRelations().size()); ++r)
        for (const double kappa : {0.0, 0.5, 1.0})
            QTest::addRow("relation %d, kappa %.1f", r, kappa) << r << kappa;
}

void TestUncertaintyAnswers::lightOnlyOfABentAthlete() {
    QFETCH(int, relation);
    QFETCH(double, kappa);
    // Nothing changed, no noise in the figures: the error lies within the allowance, and the
    // interval holds no change at every load and for the 1RM.
    const auto& curve = publishedRelations()[static_cast<std::size_t>(relation)];
    Lift lift = benchPress();
    lift.name = std::string(curve.lift);
    lift.kind = curve.kind;
    const double mvt = velocityAt(curve, 100);
    const auto from = bentLadder(curve, kappa, 100, {30, 40, 50, 60, 70, 80, 90});
    const auto to = bentLadder(curve, kappa, 100, {20, 26, 32, 38, 44, 50});
    const auto settings = worldSettings(bendOf(lift));
    const auto c = compare(lift, tests::coachMvt(mvt), tests::session(1, from),
                           tests::session(2, to), settings);
    QVERIFY(c && c->oneRm);
    for (const ChangeAt& each : c->at) {
        QVERIFY(each.read.change >= each.read.bend.low - 2e-3 &&
                each.read.change <= each.read.bend.high + 2e-3);
        QVERIFY(each.read.reading == Reading::Unclear);
    }
    const ReadChange& max = c->oneRm->read;
    QVERIFY2(max.change >= max.bend.low - 0.6 && max.change <= max.bend.high + 0.6,
             QByteArray::number(max.change).constData());
    QVERIFY(max.reading == Reading::Unclear);
}

/// The bend's lines take the curve by one root a load: the same to 1e-10 as lines through
/// velocityAt.
void TestUncertaintyAnswers::lineThroughTheCurveIsExact() {
    const std::vector<double> heavyLoads{30, 42.5, 55, 67.5, 80, 90},
        lightLoads{20, 27.5, 35, 42.5, 50};
    for (const auto& relation : publishedRelations()) {
        const auto through = [&](const std::vector<double>& loads, double max) {
            std::vector<double> speeds;
            for (const double load : loads)
                speeds.push_back(velocityAt(relation, 100 * load / max));
            return *stats::fitLine(loads, speeds);
        };
        const auto root = [](const stats::Line& line, double y) {
            return line.xMean + (y - line.yMean) / line.slope;
        };
        const double atMax = velocityAt(relation, 100);
        double max = 101; // the same three steps
        for (int i = 0; i < 3; ++i)
            max = 101 / (1 + (root(through(heavyLoads, max), atMax) / max - 1));
        const Ladder before{.loads = heavyLoads, .slope = -0.012, .max = 101, .heaviest = 90};
        const Ladder after{.loads = lightLoads, .slope = -0.012, .max = 108, .heaviest = 50};
        const BendErrors errors({.relations = {relation}}, before, after);
        for (const double load : {25.0, 40.0, 60.0}) {
            const double error =
                through(lightLoads, max).at(load) - through(heavyLoads, max).at(load);
            const stats::Interval found = errors.at(load);
            CHECK_NEAR(found.low, std::min(0.0, error), 1e-10);
            CHECK_NEAR(found.high, std::max(0.0, error), 1e-10);
        }
        const double ofMax =
            root(through(lightLoads, max), atMax) - root(through(heavyLoads, max), atMax);
        CHECK_NEAR(errors.ofMax().low, std::min(0.0, ofMax), 1e-9); // kg
        CHECK_NEAR(errors.ofMax().high, std::max(0.0, ofMax), 1e-9);
    }
}

/// The 1RM that a line through the loads would read too high or low, by halving: the athlete's own
/// 1RM R is where max = R (1 + kappa (reach / R - 1)), reach what the straight line says of all of
/// the bend.
void TestUncertaintyAnswers::bendOfOneSessionIsWhereTheStepsStandStill() {
    for (const std::vector<double>& loads : {std::vector<double>{30, 42.5, 55, 67.5, 80, 90},
                                             std::vector<double>{20, 27.5, 35, 42.5, 50}})
        for (const auto& relation : publishedRelations())
            for (const stats::Interval kappa :
                 {stats::Interval{0, 1}, stats::Interval{0.25, 0.6}, stats::Interval{0, 0.02}}) {
                const auto reach = [&](double max) {
                    std::vector<double> speeds;
                    for (const double load : loads)
                        speeds.push_back(velocityAt(relation, 100 * load / max));
                    const auto line = *stats::fitLine(loads, speeds);
                    return line.xMean + (velocityAt(relation, 100) - line.yMean) / line.slope;
                };
                double low = 60, high = 160;
                for (int i = 0; i < 60; ++i) {
                    const double middle = (low + high) / 2;
                    const double says = middle + kappa.high * (reach(middle) - middle);
                    (says < 101 ? low : high) = middle;
                }
                const double error = reach(low) - low;
                const stats::Interval found =
                    bendOfMax({.relations = {relation}, .kappa = kappa}, loads, 101);
                const double near = (loads.back() > 80 ? 0.005 : 0.04) * std::abs(error);
                CHECK_NEAR(found.low, std::min(kappa.low * error, kappa.high * error), near);
                CHECK_NEAR(found.high, std::max(kappa.low * error, kappa.high * error), near);
            }
    // No bend at all moves nothing, nor does a ladder of no extent.
    const std::vector<double> once{60, 60};
    const Bend pull{.relations = {publishedRelations().front()}};
    QVERIFY(bendOfMax({.relations = pull.relations, .kappa = {0, 0}}, once, 101) ==
            stats::Interval{});
    QVERIFY(bendOfMax(pull, once, 101) == stats::Interval{});
    QVERIFY(bendOfMax(pull, once, 0) == stats::Interval{});
}

void TestUncertaintyAnswers::envelopeHoldsEveryRelation() {
    const Comparison any = pressed(bendOf(tests::benchPull()));
    QVERIFY(any.settings.bend.envelope);
    QCOMPARE(any.settings.bend.relations.size(), publishedRelations().size());
    for (const auto& relation : publishedRelations()) {
        const Comparison own = pressed({.relations = {relation}});
        QVERIFY(any.oneRm->read.bend.low <= own.oneRm->read.bend.low);
        QVERIFY(any.oneRm->read.bend.high >= own.oneRm->read.bend.high);
    }
    // The published lifts bend both ways.
    QVERIFY(any.oneRm->read.bend.low < -1 && any.oneRm->read.bend.high > 1);
}

void TestUncertaintyAnswers::ladderNarrowsKappa() {
    Lift pull = benchPress();
    pull.name = "Bench pull";
    const auto curve = *publishedRelation(pull.name, pull.kind);
    const Mvt mvt = tests::coachMvt(velocityAt(curve, 100));
    std::vector<LiftSession> sessions;
    for (int i = 0; i < 3; ++i) {
        QCOMPARE(bendOf(pull, mvt, sessions).ladders, 0);
        sessions.push_back(
            tests::session(i, bentLadder(curve, 0.4, 90 + 5 * i, {30, 40, 50, 60, 70, 80, 90})));
    }
    // Five loads that do not come near the maximum are no full ladder; nor are four that do.
    sessions.push_back(tests::session(7, bentLadder(curve, 0.4, 90, {20, 30, 40, 45, 50})));
    sessions.push_back(tests::session(8, bentLadder(curve, 0.4, 90, {30, 50, 70, 90})));
    const Bend bend = bendOf(pull, mvt, sessions);
    QCOMPARE(bend.ladders, 3);
    // Perfect days: kappa itself, but that the estimate of the 1RM is off by the bend too.
    QVERIFY(bend.kappa.high - bend.kappa.low < 0.05);
    CHECK_NEAR(bend.kappa.low, 0.4, 0.06);
    // Without a curve of its own nothing is narrowed.
    QCOMPARE(bendOf(tests::benchPull(), mvt, sessions).ladders, 0);
    const Bend whole = bendOf(pull);
    const auto width = [&](const Bend& b) {
        const auto c =
            compare(pull, mvt, tests::session(1, full), tests::session(2, light), worldSettings(b));
        return c->oneRm->read.bend.high - c->oneRm->read.bend.low;
    };
    QVERIFY(width(bend) < 0.1 * width(whole));
}

void TestUncertaintyAnswers::kappaAgreesWithR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: the bend from own ladders is not checked against it");
    Lift pull = benchPress();
    pull.name = "Bench pull";
    const auto curve = *publishedRelation(pull.name, pull.kind);
    const Mvt mvt = tests::coachMvt(velocityAt(curve, 100));
    std::mt19937_64 engine(11);
    std::normal_distribution<double> noise(0, 0.012);
    std::vector<LiftSession> sessions;
    QByteArray input = "mvt 0 " + QByteArray::number(mvt.value, 'g', 17) + "\n";
    for (int i = 0; i < 5; ++i) {
        Points points = bentLadder(curve, 0.5, 95 + i, {30, 42, 55, 68, 80, 91});
        points.pop_back();
        points.emplace_back(0.88 * (95 + i), velocityAt(curve, 88));
        for (auto& [load, speed] : points) {
            speed += noise(engine);
            input += QByteArray::number(i) + " " + QByteArray::number(load, 'g', 17) + " " +
                     QByteArray::number(speed, 'g', 17) + "\n";
        }
        sessions.push_back(tests::session(i, points));
    }
    const Bend bend = bendOf(pull, mvt, sessions);
    QCOMPARE(bend.ladders, 5);
    const auto r = tests::runR(QStringLiteral("bend.R"), {}, input);
    CHECK_NEAR(bend.kappa.low, r["low"], 1e-8);
    CHECK_NEAR(bend.kappa.high, r["high"], 1e-8);
    QVERIFY(bend.kappa.low > 0 && bend.kappa.high < 1);
}

void TestUncertaintyAnswers::widerScatterIsNotPooledAway() {
    // The light session scatters three times as much as the full one: its own s^2 stands.
    const Points wild{{30, 1.25}, {40, 1.18}, {50, .95}, {60, .86}};
    const Comparison c = pressed({}, full, wild);
    const auto& u = c.uncertainty;
    QVERIFY(c.to.line.s2() > c.lines.s2());
    QCOMPARE(u.scatter(c.lines.second()).s2, c.to.line.s2());
    QCOMPARE(u.scatter(c.lines.first()).s2, c.lines.s2());
    QCOMPARE(u.scatter(c.lines.first()).df, c.lines.df());
}

void TestUncertaintyAnswers::noMaximum() {
    // A thrown lift, a lift without a threshold: a maximum to take shares of is still had from the
    // line, so that days tilt and lines bend as in general.
    Lift thrown = benchPress();
    thrown.name = "Bench throw";
    thrown.ballistic = true;
    const auto c =
        compare(thrown, NoAnswer{NoAnswer::Why::BallisticLift, asIs("thrown")},
                tests::session(1, full), tests::session(2, light), worldSettings(bendOf(thrown)));
    QVERIFY(c && !c->oneRm);
    QVERIFY(at(*c, 40).bend.high > at(*c, 40).bend.low);
    CHECK_NEAR(c->uncertainty.day.pivot, 0.6 * 0.85 * c->from.line.root(), 1e-9);
    // A line that does not fall: the middle of what both cover, and no bend.
    const auto rising = compare(thrown, NoAnswer{NoAnswer::Why::BallisticLift, asIs("thrown")},
                                tests::session(1, {{40, .5}, {60, .62}, {80, .7}}),
                                tests::session(2, light), worldSettings(bendOf(thrown)));
    QVERIFY(rising);
    CHECK_NEAR(rising->uncertainty.day.pivot, 50, 1e-12);
    QVERIFY((at(*rising, 40).bend == stats::Interval{0, 0}));
}

void TestUncertaintyAnswers::relationIsFound() {
    QVERIFY(publishedRelation("Full squat (guided bar)", VelocityKind::Mean));
    QVERIFY(publishedRelation("full squat", VelocityKind::Propulsive));
    QVERIFY(!publishedRelation("Back squat", VelocityKind::Mean));
    QVERIFY(!publishedRelation("Full squat (free)", VelocityKind::Mean));
}

void TestUncertaintyAnswers::planIntervalHoldsItsParts() {
    const Lift lift = benchPress();
    const auto session = tests::session(1, full);
    const Mvt mvt = tests::coachMvt(0.17, 0.04);
    const auto width = [&](const Mvt& m, const Beyond& beyond) {
        const auto p = profile(lift, m, session, 0.95, beyond);
        return p->oneRm->toPlan->high - p->oneRm->toPlan->low;
    };
    const DayNoise day = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    const double alone = width(tests::coachMvt(0.17), {});
    const auto own = profile(lift, mvt, session)->oneRm;
    CHECK_NEAR(alone, own->interval->high - own->interval->low, 1e-9);
    QVERIFY(width(mvt, {}) > alone);
    // The MVT's SD is known: with the normal quantile, not the line's t on 3 df.
    QVERIFY(width(mvt, {}) < own->withMvt->high - own->withMvt->low);
    QVERIFY(width(mvt, {.day = day}) > width(mvt, {}));
    QVERIFY(width(mvt, {day, bendOf(lift)}) > width(mvt, {.day = day}));
    // Two loads: a line without inference has none.
    QVERIFY(!profile(lift, mvt, tests::session(2, {{40, 1.1}, {80, .5}}), 0.95, {day, bendOf(lift)})
                 ->oneRm->toPlan);
}

QTEST_APPLESS_MAIN(TestUncertaintyAnswers)
#include "tst_uncertainty_answers.moc"
