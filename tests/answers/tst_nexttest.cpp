// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/nexttest.h"
#include "core/answers/plansummary.h"
#include "core/model/errors.h"
#include "core/stats/allowance.h"
#include "core/stats/design.h"
#include "core/stats/moving.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <set>

using namespace slopebook;
using namespace slopebook::answers;
using Kind = LadderForecast::Kind;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

constexpr double dayVariance = 0.0004, dayDf = infinite; // of settings()

// Sessions A and B of published-values.md section 10.3.
LiftSession sessionA() {
    return tests::session(
        1, {{40, 1.22}, {60, 1.00}, {80, 0.79}, {100, 0.57}, {110, 0.47}, {120, 0.35}});
}
LiftSession sessionB() {
    return tests::session(
        2, {{40, 1.27}, {60, 1.07}, {80, 0.84}, {100, 0.64}, {110, 0.52}, {120, 0.43}});
}

Profile profileA(std::optional<double> sd = {}) {
    return *profile(tests::benchPull(), tests::coachMvt(0.17, sd), sessionA());
}

Equipment gym() {
    return {.name = "gym",
            .bars = {{.name = "bar", .mass = exactMass(Mass{20'000})}},
            .plates = parsePlates("20x2,10x1,5x1,2.5x1,1.25x1", MassUnit::Kilogram)};
}

NextTestSettings settings() {
    return {.equipment = gym(),
            .checkLoads = {Mass{60'000}, Mass{100'000}},
            .scatter = {.s = 0.02, .df = 8, .sessions = 2},
            .dayNoise = {.variance = {dayVariance, dayDf}, .origin = DayNoise::Origin::Athlete}};
}

const LadderForecast& of(const NextTest& next, Kind kind) {
    return *std::find_if(next.ladders.begin(), next.ladders.end(),
                         [&](const LadderForecast& ladder) { return ladder.kind == kind; });
}

std::vector<double> kilogramsOf(const LadderForecast& ladder) {
    std::vector<double> kg;
    for (const BuiltLoad& load : ladder.loads)
        kg.push_back(kilograms(load.exact));
    return kg;
}

} // namespace

class TestNextTest : public QObject {
    Q_OBJECT
private slots:
    void scatterIsPooledOverSessions();
    void moreRepsSteadyThePoint();
    void laddersAreRankedByTheirInterval();
    void theBestLadderIsBestOfAllThatCanBeBuilt();
    void forecastsComeTrue();
    void whatTwoTestsCanShowHoldsTheBend();
    void aChangeIsForecastWithTheDay();
    void forecastsAskAsReadingsDo();
    void theCapIsKept();
    void aCeilingCosts();
    void twoExtremesAreCompared();
    void withoutAOneRmCheckLoadsJudge();
    void theSameLoadsAgain();
    void knownScatterNarrows();
    void manyLoadsAreQuick();
    void refusals();
    void badInput();
    void repeatsAgreeWithR();
    void repeatsOfAComparison();
    void whatSettlesItEitherWay();
    void unclearReadingsAskTheirQuestion();
    void whyThePlansFigureIsAnotherIsTrue_data();
    void whyThePlansFigureIsAnotherIsTrue();
};

void TestNextTest::scatterIsPooledOverSessions() {
    // Section 10.5: A and B pooled s^2 = 5.14035088e-05 on 8 df.
    const std::vector<LiftSession> both{sessionA(), sessionB(), tests::session(3, {{40, 1.2}})};
    const auto scatter = pooledScatter(both);
    CHECK_NEAR(scatter->s * scatter->s, 5.14035088e-05, 5e-14);
    CHECK_NEAR(scatter->df, 8.0, 0);
    QCOMPARE(scatter->sessions, 2);
    QVERIFY(!pooledScatter(std::vector{tests::session(3, {{40, 1.2}, {60, 1.0}})}));
}

void TestNextTest::moreRepsSteadyThePoint() {
    // Variances of the largest of n normal values: 0.681690, 0.559467, 0.447534 for n = 2, 3, 5
    // (Teichroew 1956, from memory; 1 - 1/pi for 2).
    const auto all = [](int now, int then) {
        return scatterForReps(1, 1, PointRule::Fastest, now, then);
    };
    CHECK_NEAR(std::pow(all(1, 2), 2), 1 - 1 / M_PI, 1e-9);
    CHECK_NEAR(std::pow(all(1, 3), 2), 0.559467, 5e-7);
    CHECK_NEAR(std::pow(all(1, 5), 2), 0.447534, 5e-7);
    CHECK_NEAR(scatterForReps(0.02, 0.02, PointRule::Mean, 1, 4), 0.01, 1e-12);
    // what is not of the reps stays: 0.0004 = 0.0003 beside + 0.0002/2
    CHECK_NEAR(scatterForReps(0.02, std::sqrt(0.0002), PointRule::Mean, 2, 4), std::sqrt(0.00035),
               1e-12);
    CHECK_NEAR(scatterForReps(0.02, 0, PointRule::Mean, 1, 8), 0.02, 1e-15);
    CHECK_NEAR(scatterForReps(0.02, 0.01, PointRule::Fastest, 3, 3), 0.02, 1e-12);
    QVERIFY_THROWS_EXCEPTION(BadInput, scatterForReps(0.02, 0.01, PointRule::Mean, 0, 3));
}

void TestNextTest::laddersAreRankedByTheirInterval() {
    const auto next = nextTest(profileA(), settings());
    QVERIFY(next && next->byOneRm);
    QVERIFY(next->ladders.size() >= 6);
    // Those without flaws first (tst_ladderrules), each by its interval.
    for (std::size_t i = 1; i < next->ladders.size(); ++i) {
        const auto key = [&](const LadderForecast& ladder) {
            return std::pair(ladder.flaws.any(), ladder.oneRm.value_or(infinite));
        };
        QVERIFY(key(next->ladders[i - 1]) <= key(next->ladders[i]));
    }
    QVERIFY(!next->ladders.front().flaws.any());
    QVERIFY(*of(*next, Kind::BestInSteps).oneRm <= *of(*next, Kind::Even).oneRm);
    QVERIFY(*of(*next, Kind::BestForOneRm).oneRm <= *next->ladders.front().oneRm);
    for (const LadderForecast& ladder : next->ladders) {
        const auto kg = kilogramsOf(ladder);
        QVERIFY(std::is_sorted(kg.begin(), kg.end()));
        QCOMPARE(int(std::set<double>(kg.begin(), kg.end()).size()), ladder.distinct);
        if (ladder.kind == Kind::Even)
            QCOMPARE(ladder.distinct, 5);
        const auto scatter = stats::expectedScatter(0.02, 0, int(kg.size()) - 2, 0.95);
        // The day's part with its own quantile, as a share of the scatter's.
        const double days = dayVariance * std::pow(stats::tCritical(0.95, dayDf) / scatter->t, 2);
        const double width = stats::inverseHalfWidth(-0.0108, (0.17 - 1.651333333333) / -0.0108,
                                                     days, stats::spread(kg), *scatter);
        CHECK_NEAR(*ladder.oneRm, width, width * 1e-9);
    }
    CHECK_NEAR(*next->oneRmNow, (138.245585104 - 136.109281236) / 2, 1e-8);
}

void TestNextTest::theBestLadderIsBestOfAllThatCanBeBuilt() {
    NextTestSettings s = settings();
    s.steps = 4;
    s.equipment.plates = parsePlates("20x1,10x1,7.5x1,4x1", MassUnit::Kilogram);
    const auto next = nextTest(profileA(), s);
    const auto loads = buildableLoads(s.equipment, nearestExactMass(next->cap, MassUnit::Kilogram));
    const auto own = stats::expectedScatter(0.02, 0, 2, 0.95);
    const double days = dayVariance * std::pow(stats::tCritical(0.95, dayDf) / own->t, 2);
    const auto both = stats::expectedScatter(0.02, 4, 2, 0.95);
    const auto line = profileA().line;
    double least = infinite, leastChange = infinite;
    for (std::size_t a = 0; a < loads.size(); ++a)
        for (std::size_t b = a; b < loads.size(); ++b)
            for (std::size_t c = b; c < loads.size(); ++c)
                for (std::size_t d = c; d < loads.size(); ++d) {
                    std::vector<double> kg;
                    for (const std::size_t i : {a, b, c, d})
                        kg.push_back(kilograms(loads[i].exact));
                    const auto x = stats::spread(kg);
                    if (!(x.sxx > 0))
                        continue;
                    least = std::min(
                        least, stats::inverseHalfWidth(-0.0108, 137.160493827, days, x, *own));
                    leastChange = std::min(
                        leastChange, both->t * std::max(stats::differenceSe(60, line, x, *both),
                                                        stats::differenceSe(100, line, x, *both)));
                }
    CHECK_NEAR(*of(*next, Kind::BestForOneRm).oneRm, least, least * 1e-8);
    CHECK_NEAR(of(*next, Kind::BestForChange).worstChange(), leastChange, leastChange * 1e-8);
}

void TestNextTest::whatTwoTestsCanShowHoldsTheBend() {
    NextTestSettings bent = settings();
    bent.bend = bendOf(tests::benchPull());
    QVERIFY(bent.bend.envelope || !bent.bend.relations.empty());
    const Profile p = profileA();
    const auto straight = nextTest(p, settings()), with = nextTest(p, bent);
    QVERIFY(straight && with);
    const auto halfOf = [](double half, const stats::Interval& off) {
        const stats::Interval made = stats::allowing({-half, half}, off, 0.95);
        return (made.high - made.low) / 2;
    };
    const Ladder before = ladderOf(p.session, p.line, p.oneRm->estimate);
    int bends = 0;
    for (const LadderForecast& ladder : with->ladders) {
        const auto plain = std::ranges::find_if(straight->ladders, [&](const auto& each) {
            return each.kind == ladder.kind && each.loads == ladder.loads;
        });
        if (plain == straight->ladders.end())
            continue;
        const auto kg = kilogramsOf(ladder);
        const BendErrors off(bent.bend, before,
                             Ladder{.loads = kg,
                                    .slope = p.line.slope,
                                    .max = p.oneRm->estimate,
                                    .heaviest = kg.back()});
        QVERIFY(plain->oneRmChange && ladder.oneRmChange);
        QVERIFY(plain->bendChange == stats::Interval{});
        CHECK_NEAR(*ladder.oneRmChange, halfOf(*plain->oneRmChange, off.ofMax()), 1e-9);
        for (std::size_t i = 0; i < ladder.changes.size(); ++i) {
            const double at = kilograms(ladder.changes[i].load);
            CHECK_NEAR(ladder.changes[i].reading, halfOf(plain->changes[i].reading, off.at(at)),
                       1e-9);
            bends += ladder.changes[i].reading > plain->changes[i].reading + 1e-6;
        }
        // The chances hold it as well.
        const auto question = repeatsQuestion(p, bent, ladder, Mass{60'000}, 0.06);
        QVERIFY(question);
        CHECK_NEAR(question->span, off.at(60).high - off.at(60).low, 1e-12);
        const auto ofMax = repeatsQuestionOfMax(p, bent, ladder, 4);
        QVERIFY(ofMax);
        CHECK_NEAR(ofMax->span, off.ofMax().high - off.ofMax().low, 1e-12);
    }
    QVERIFY(bends > 0);
    // The same ladder again bends alike: nothing is off.
    const auto same = std::ranges::find(with->ladders, Kind::SameAsLast, &LadderForecast::kind);
    if (same != with->ladders.end()) {
        CHECK_NEAR(same->bendChange.high - same->bendChange.low, 0, 1e-9);
        for (const ChangeForecast& change : same->changes)
            CHECK_NEAR(change.bend.high - change.bend.low, 0, 1e-12);
    }
}

void TestNextTest::forecastsComeTrue() {
    // 4,000 tests of each ladder made up on the line: the mean half-width of the intervals that a
    // profile gives against the forecast.
    NextTestSettings s = settings();
    s.scatter.s = 0.01;
    s.equipment.plates = parsePlates("20x2,15x1,10x1,5x1", MassUnit::Kilogram);
    const auto next = nextTest(profileA(), s);
    const auto line = profileA().line;
    std::mt19937_64 random(29);
    std::normal_distribution<double> noise(0, 0.01);
    int checked = 0;
    for (const LadderForecast& ladder : next->ladders) {
        if (ladder.kind != Kind::BestForOneRm && checked > 2)
            continue;
        double sum = 0;
        const int rounds = 4000;
        for (int round = 0; round < rounds; ++round) {
            std::vector<std::pair<double, double>> points;
            for (const double kg : kilogramsOf(ladder))
                points.emplace_back(kg, line.at(kg) + noise(random));
            const auto p = profile(tests::benchPull(), tests::coachMvt(0.17),
                                   tests::session(5, points), 0.95, {s.dayNoise, {}});
            QVERIFY(p && p->oneRm && p->oneRm->toPlan);
            sum += (p->oneRm->toPlan->high - p->oneRm->toPlan->low) / 2;
        }
        // 1.3 % standard error of the mean of 4,000 widths on 3 df; Fieller's skew adds about 1 %
        QVERIFY2(std::abs(sum / rounds / *ladder.oneRm - 1) < 0.05,
                 qPrintable(QString::number(sum / rounds / *ladder.oneRm)));
        ++checked;
    }
    QVERIFY(checked >= 3);
}

void TestNextTest::aChangeIsForecastWithTheDay() {
    const auto next = nextTest(profileA(), settings());
    const auto& ladder = next->ladders.front();
    QCOMPARE(ladder.changes.size(), std::size_t{2});
    QCOMPARE(ladder.changes[0].load, Mass{60'000});
    for (const ChangeForecast& change : ladder.changes) {
        QVERIFY(change.reading > change.halfWidth);
        // two days of SD 0.02 alone, known: 1.96 sqrt(2) 0.02 = 0.0554
        QVERIFY(change.reading > 1.959963985 * std::sqrt(2) * 0.02);
        QVERIFY(change.halfWidth <= ladder.worstChange());
    }
    NextTestSettings quiet = settings();
    quiet.dayNoise = {};
    const auto without = nextTest(profileA(), quiet);
    const auto& same = without->ladders.front();
    CHECK_NEAR(same.changes[0].reading, same.changes[0].halfWidth, 1e-12);
}

/// Days that tilt the line are in every figure of a change to come as they are in its reading:
/// Fieller's set of each side with all its parts, and variance recovery (core/stats agrees with R).
void TestNextTest::forecastsAskAsReadingsDo() {
    NextTestSettings s = settings();
    s.dayNoise.published = 0.02; // as noisy as published: the slope varies by 2.5 %
    const Profile p = profileA();
    const auto next = nextTest(p, s);
    QVERIFY(next);
    const double max = p.oneRm->estimate, t0 = stats::tCritical(0.95, dayDf);
    const stats::Moving day{.level = dayVariance,
                            .tilt = std::pow(0.025 * p.line.slope, 2),
                            .pivot = 0.6 * max,
                            .df = dayDf};
    int compared = 0;
    for (const LadderForecast& ladder : next->ladders) {
        const auto kg = kilogramsOf(ladder);
        std::vector<double> speeds;
        for (const double load : kg)
            speeds.push_back(p.line.at(load));
        const auto later = stats::fitLine(kg, speeds);
        const auto scatter =
            stats::expectedScatter(0.02, p.line.df(), static_cast<double>(kg.size()) - 2, 0.95);
        const auto side = [&](const stats::Line& line) {
            return stats::inverseMoving(line, 0.17, {scatter->s * scatter->s, scatter->df}, day, {},
                                        stats::tOf(0.95));
        };
        const auto before = side(p.line), after = side(*later);
        const auto change = stats::differenceInterval(before.estimate, before.interval,
                                                      after.estimate, after.interval);
        QVERIFY(ladder.oneRmChange);
        CHECK_NEAR(*ladder.oneRmChange, (change.high - change.low) / 2, 1e-8);
        for (const ChangeForecast& at : ladder.changes) {
            const double x = kilograms(at.load);
            CHECK_NEAR(at.reading, std::sqrt(at.halfWidth * at.halfWidth + 2 * t0 * t0 * day.at(x)),
                       1e-12);
        }
        const auto question = repeatsQuestionOfMax(p, s, ladder, 4);
        QVERIFY(question);
        CHECK_NEAR(question->day.value, day.at(max) / (p.line.slope * p.line.slope), 1e-10);
        const double off = max - later->xMean;
        CHECK_NEAR(question->later.value,
                   0.0004 * (1.0 / later->n + off * off / later->sxx) /
                       (p.line.slope * p.line.slope),
                   1e-9);
        ++compared;
    }
    QVERIFY(compared >= 6);
}

void TestNextTest::theCapIsKept() {
    // 90 % of 137.16 is 123.4 kg; the low end of the interval, 136.1, is over it
    NextTestSettings s = settings();
    s.equipment.plates = parsePlates("25x3,10x2,5x1,2.5x1", MassUnit::Kilogram);
    const auto next = nextTest(profileA(), s);
    CHECK_NEAR(next->cap, 0.9 * 137.160493827, 1e-8);
    for (const auto& ladder : next->ladders)
        QVERIFY(kilogramsOf(ladder).back() <= next->cap);
    s.heaviestPercent = 70;
    QVERIFY(kilogramsOf(nextTest(profileA(), s)->ladders.front()).back() <= 0.7 * 137.17);
    s.ceiling = exactMass(Mass{60'000});
    const auto under = nextTest(profileA(), s);
    for (const auto& ladder : under->ladders)
        QVERIFY(kilogramsOf(ladder).back() <= 60);
    // an uncertain estimate holds the loads at its low end, but never under what was lifted
    Profile wide = profileA();
    wide.heaviest = 70;
    wide.oneRm->interval = stats::Interval{80, 400};
    s = settings();
    CHECK_NEAR(nextTest(wide, s)->cap, 80.0, 1e-12);
    wide.oneRm->interval = stats::Interval{50, 400};
    CHECK_NEAR(nextTest(wide, s)->cap, 70.0, 1e-12);
}

void TestNextTest::aCeilingCosts() {
    NextTestSettings s = settings();
    s.equipment.ceiling = exactMass(Mass{60'000});
    const auto next = nextTest(profileA(), s);
    QVERIFY(next->curve.size() >= 10);
    double last = infinite;
    bool over = false;
    for (const CeilingPoint& point : next->curve) {
        const double best = point.best.value_or(infinite);
        QVERIFY(best <= last * (1 + 1e-12)); // more load to choose from is never worse
        if (point.even)
            QVERIFY(best <= *point.even * (1 + 1e-12));
        last = best;
        QCOMPARE(point.withinCeiling, kilograms(point.ceiling.exact) <= 60);
        over = over || !point.withinCeiling;
        CHECK_NEAR(point.percent, 100 * kilograms(point.ceiling.exact) / 137.160493827, 1e-6);
    }
    QVERIFY(over);
}

void TestNextTest::twoExtremesAreCompared() {
    const auto next = nextTest(profileA(), settings());
    QVERIFY(*next->twoExtremesRatio > 0);
    CHECK_NEAR(*next->twoExtremesRatio,
               *of(*next, Kind::TwoExtremes).oneRm / *next->ladders.front().oneRm, 1e-12);
    QCOMPARE(of(*next, Kind::TwoExtremes).distinct, 2);
}

void TestNextTest::withoutAOneRmCheckLoadsJudge() {
    Lift lift = tests::benchPull();
    lift.ballistic = true;
    const auto thrown = profile(lift, tests::coachMvt(0.17), sessionA());
    const auto next = nextTest(*thrown, settings());
    QVERIFY(next && !next->byOneRm);
    QVERIFY(!next->ladders.front().flaws.any());
    for (std::size_t i = 1; i < next->ladders.size(); ++i)
        QVERIFY(std::pair(next->ladders[i - 1].flaws.any(), next->ladders[i - 1].worstChange()) <=
                std::pair(next->ladders[i].flaws.any(), next->ladders[i].worstChange()));
    CHECK_NEAR(next->cap, 120.0, 0);
    NextTestSettings s = settings();
    s.checkLoads.clear();
    QVERIFY(!nextTest(*thrown, s));
}

void TestNextTest::theSameLoadsAgain() {
    NextTestSettings s = settings();
    s.heaviestPercent = 100;
    s.equipment.plates = parsePlates("20x2,10x1,5x1", MassUnit::Kilogram); // 20 to 130 kg
    const auto next = nextTest(profileA(), s);
    QCOMPARE(kilogramsOf(of(*next, Kind::SameAsLast)),
             (std::vector<double>{40, 60, 80, 100, 110, 120}));
    s.ceiling = exactMass(Mass{100'000}); // 110 and 120 cannot be repeated
    const auto under = nextTest(profileA(), s);
    QVERIFY(std::none_of(under->ladders.begin(), under->ladders.end(),
                         [](const auto& ladder) { return ladder.kind == Kind::SameAsLast; }));
}

void TestNextTest::knownScatterNarrows() {
    double last = infinite;
    for (const auto known : {ScatterKnown::Own, ScatterKnown::Pooled, ScatterKnown::Known}) {
        NextTestSettings s = settings();
        s.known = known;
        const double width = *nextTest(profileA(), s)->ladders.front().oneRm;
        QVERIFY(width < last);
        last = width;
    }
    NextTestSettings s = settings();
    s.withMvt = true;
    QVERIFY(*nextTest(profileA(0.04), s)->ladders.front().oneRm >
            *nextTest(profileA(), s)->ladders.front().oneRm);
}

void TestNextTest::manyLoadsAreQuick() {
    NextTestSettings s = settings();
    s.steps = 8;
    s.equipment.plates =
        parsePlates("20x2,10x2,5x2,2.5x2,1.25x2,0.5x1,0.25x1,45lbx1,2.5lbx1", MassUnit::Kilogram);
    QElapsedTimer clock;
    clock.start();
    QVERIFY(nextTest(profileA(), s));
    QVERIFY2(clock.elapsed() < 30'000, qPrintable(QString::number(clock.elapsed()))); // debug build
}

void TestNextTest::refusals() {
    NextTestSettings s = settings();
    s.scatter = {};
    QVERIFY(nextTest(profileA(), s).why().why == NoAnswer::Why::NeedsThirdLoad);
    s = settings();
    s.ceiling = exactMass(Mass{20'000}); // the bare bar alone
    QVERIFY(!nextTest(profileA(), s));
    const auto rising = profile(tests::benchPull(), tests::coachMvt(0.17),
                                tests::session(1, {{40, 1.0}, {60, 1.1}, {80, 1.3}}));
    QVERIFY(nextTest(*rising, settings()).why().why == NoAnswer::Why::SlopeNotNegative);
}

void TestNextTest::badInput() {
    NextTestSettings s = settings();
    for (const int steps : {0, 1, 9}) {
        s.steps = steps;
        QVERIFY_THROWS_EXCEPTION(BadInput, nextTest(profileA(), s));
    }
    s = settings();
    s.heaviestPercent = 101;
    QVERIFY_THROWS_EXCEPTION(BadInput, nextTest(profileA(), s));
}

void TestNextTest::repeatsAgreeWithR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: repeats are not compared with pt() and integrate()");
    const auto r = tests::runR(QStringLiteral("settle.R"));
    int compared = 0;
    for (const auto& noise : {std::pair{0.0, 5.0}, {0.0004, 5.0}, {0.0004, 1e9}, {0.002, 5.0}}) {
        const double day = noise.first; // clang 14 takes no structured binding into a lambda
        const double df = noise.second;
        const RepeatsQuestion question{
            .earlier = {0.00030, 8}, .later = {0.00024, 8}, .day = {day, df}, .smallest = 0.05};
        const Repeats repeats = repeatsToSettle(question);
        const auto check = [&](const char* kind, const char* how, std::optional<int> found) {
            const auto key = QStringLiteral("%1 %2 %3 %4")
                                 .arg(QLatin1String(kind), QLatin1String(how))
                                 .arg(day)
                                 .arg(df);
            QVERIFY2(r.contains(key), qPrintable(key));
            QVERIFY2(found ? *found == r[key] : std::isnan(r[key]), qPrintable(key));
            ++compared;
        };
        check("change", "0", repeats.changeLater);
        check("change", "1", repeats.changeBoth);
        check("held", "0", repeats.heldLater);
        check("held", "1", repeats.heldBoth);
        check("change", "sameday", repeats.changeSameDay);
        check("held", "sameday", repeats.heldSameDay);
        RepeatsQuestion biased = question;
        biased.standing = {0.0001, 12};
        check("change", "standing", repeatsToSettle(biased).changeLater);
        check("held", "standing", repeatsToSettle(biased).heldLater);
        RepeatsQuestion bent = question;
        bent.span = 0.02;
        const Repeats ofBent = repeatsToSettle(bent);
        check("change", "bent", ofBent.changeLater);
        check("held", "bent", ofBent.heldLater);
        const auto now = [&](const char* kind) {
            return r[QStringLiteral("%1 %2 %3").arg(QLatin1String(kind)).arg(day).arg(df)];
        };
        CHECK_NEAR(repeats.chanceNow, now("change now"), 1e-8);
        CHECK_NEAR(repeats.chanceHeldNow, now("held now"), 1e-8);
        CHECK_NEAR(ofBent.chanceNow, now("change bentnow"), 1e-8);
        CHECK_NEAR(ofBent.chanceHeldNow, now("held bentnow"), 1e-8);
    }
    QCOMPARE(compared, 40);
    QVERIFY_THROWS_EXCEPTION(BadInput, repeatsToSettle({}));
}

void TestNextTest::repeatsOfAComparison() {
    ComparisonSettings s{
        .checkLoads = {Mass{60'000}},
        .dayNoise = {.variance = {0.0004, 5}, .origin = DayNoise::Origin::Athlete}};
    const auto without =
        compare(tests::benchPull(), tests::coachMvt(0.17), sessionA(), sessionB(), s);
    QVERIFY(without);
    QVERIFY(!repeatsQuestion(*without, Mass{60'000})); // no smallest change
    s.smallestVelocity = Smallest{.value = 0.04, .origin = Smallest::Origin::Coach};
    const auto with = compare(tests::benchPull(), tests::coachMvt(0.17), sessionA(), sessionB(), s);
    const auto question = repeatsQuestion(*with, Mass{60'000});
    QVERIFY(question);
    // Section 10.4: SE of B - A at 60 kg 0.005537305 on 8 df, pooled; a session that scatters more
    // than the pool stands with its own scatter.
    const double pooled = with->lines.s2();
    const double asPooled =
        question->earlier.value * pooled / with->uncertainty.scatter(with->lines.first()).s2 +
        question->later.value * pooled / with->uncertainty.scatter(with->lines.second()).s2;
    CHECK_NEAR(std::sqrt(asPooled), 0.005537305, 5e-10);
    QVERIFY(std::sqrt(question->earlier.value + question->later.value) > 0.005537305);
    CHECK_NEAR(question->earlier.df, 8.0, 0);
    CHECK_NEAR(question->day.value, 0.0004, 0);
}

// What the window and the commands say of an unclear change: by hand from the least of both needs.
void TestNextTest::whatSettlesItEitherWay() {
    using By = Settling::By;
    QCOMPARE(settling({.changeLater = 1, .heldLater = 1}), (Settling{By::OneMore, 2}));
    QCOMPARE(settling({.changeLater = 1, .heldLater = 3}), (Settling{By::Later, 3}));
    QCOMPARE(settling({.changeLater = 4, .heldLater = 3, .changeSameDay = 2, .heldSameDay = 3}),
             (Settling{By::SameDay, 3}));
    QCOMPARE(settling({.changeLater = 4, .heldLater = 3, .changeSameDay = 2}),
             (Settling{By::Later, 4}));
    QCOMPARE(settling({.changeLater = 4, .changeBoth = 3, .heldBoth = 5}),
             (Settling{By::BothSides, 5}));
    QCOMPARE(settling({.changeLater = 4, .changeBoth = 3}), (Settling{By::Nothing, 0}));
}

void TestNextTest::unclearReadingsAskTheirQuestion() {
    // A against itself with a hair's difference and loud days: unclear everywhere.
    ComparisonSettings s{.checkLoads = {Mass{60'000}},
                         .dayNoise = {.variance = {0.0016, 5}, .origin = DayNoise::Origin::Athlete},
                         .smallestVelocity =
                             Smallest{.value = 0.04, .origin = Smallest::Origin::Coach},
                         .smallestAt = {{Mass{60'000}, Smallest{.value = 0.03}}},
                         .smallestOneRm = Smallest{.value = 4, .origin = Smallest::Origin::Coach},
                         .deviceBias = DeviceBias{0.001, {0.0001, 12}}};
    const auto c = compare(tests::benchPull(), tests::coachMvt(0.17), sessionA(), sessionB(), s);
    QVERIFY(c && c->oneRm);
    const ChangeAt at = changeAt(*c, Mass{60'000});
    QCOMPARE(at.read.reading, Reading::Unclear);
    QVERIFY(at.unsettled);
    CHECK_NEAR(at.unsettled->smallest, 0.03, 0); // the load's own
    CHECK_NEAR(at.unsettled->standing.value, 0.0001, 0);
    CHECK_NEAR(changeAt(*c, Mass{62'500}).unsettled->smallest, 0.04, 0);
    // The later ladder's own part at the 1RM by the delta method (section 10.3: b, n, s of B are
    // those of the line itself).
    QCOMPARE(c->oneRm->read.reading, Reading::Unclear);
    QVERIFY(c->oneRm->unsettled);
    const auto& question = *c->oneRm->unsettled;
    const auto& b = c->lines.second();
    const double d = (0.17 - b.yMean) / b.slope;
    CHECK_NEAR(question.later.value,
               std::max(c->lines.s2(), b.s2()) / (b.slope * b.slope) * (1.0 / b.n + d * d / b.sxx),
               1e-12);
    CHECK_NEAR(question.smallest, 4, 0);
    CHECK_NEAR(question.standing.value, 0.0001 / (b.slope * b.slope), 1e-12);
    const auto groups = unsettled(*c);
    QVERIFY(groups.size() >= 2);
    QVERIFY(groups.back().loads.empty());
    const std::string said = english(settlingWords(groups.back()));
    QVERIFY2(said.starts_with("estimated 1RM: a true change of 4.0 kg is seen with a chance of "),
             said.c_str());
    std::vector<Mass> told;
    for (const Unsettled& group : groups)
        told.insert(told.end(), group.loads.begin(), group.loads.end());
    QCOMPARE(std::ptrdiff_t(told.size()), std::ranges::count_if(c->at, [](const ChangeAt& each) {
                 return each.read.reading == Reading::Unclear;
             }));
    // Without a smallest change nothing can be held, and that is said.
    s.smallestVelocity.reset();
    s.smallestAt.clear();
    const auto without =
        compare(tests::benchPull(), tests::coachMvt(0.17), sessionA(), sessionB(), s);
    const std::string none = english(settlingWords(unsettled(*without).front()));
    QVERIFY2(none.find("no smallest change that matters is known") != std::string::npos,
             none.c_str());
    s.smallestVelocity = Smallest{.value = 0.04};
    // A clear reading asks nothing.
    s.dayNoise = {};
    s.deviceBias.reset();
    const auto clear =
        compare(tests::benchPull(), tests::coachMvt(0.17), sessionA(), sessionB(), s);
    QCOMPARE(changeAt(*clear, Mass{60'000}).read.reading, Reading::Better);
    QVERIFY(!changeAt(*clear, Mass{60'000}).unsettled);
}

void TestNextTest::whyThePlansFigureIsAnotherIsTrue_data() {
    QTest::addColumn<bool>("mvtSd");
    QTest::addColumn<bool>("withMvt");
    QTest::addColumn<bool>("bends");
    QTest::addColumn<bool>("calibrated");
    QTest::addColumn<bool>("planBounded");
    QTest::addColumn<bool>("ladderBounded");
    for (int bits = 0; bits < 64; ++bits) {
        const auto bit = [bits](int place) { return (bits >> place & 1) != 0; };
        QTest::addRow("%d", bits) << bit(0) << bit(1) << bit(2) << bit(3) << bit(4) << bit(5);
    }
}

// Two figures of one sentence and a third: what is said of why they differ is said only where they
// are of one estimate, all three are there, and only what one holds beside the others is named.
void TestNextTest::whyThePlansFigureIsAnotherIsTrue() {
    QFETCH(bool, mvtSd);
    QFETCH(bool, withMvt);
    QFETCH(bool, bends);
    QFETCH(bool, calibrated);
    QFETCH(bool, planBounded);
    QFETCH(bool, ladderBounded);
    NextTestSettings s = settings();
    s.withMvt = withMvt;
    if (bends)
        s.bend = bendOf(tests::benchPull());
    Beyond beyond{s.dayNoise, s.bend};
    if (calibrated)
        beyond.calibration = Calibration{
            .pairs = 3, .ownPairs = 3, .bias = 0.1, .spread = 0.001, .se = 0.0005, .df = 2};
    auto from = *profile(tests::benchPull(),
                         tests::coachMvt(0.17, mvtSd ? std::optional(0.04) : std::nullopt),
                         sessionA(), 0.95, beyond);
    if (!planBounded) { // with days in it unbounded, by the line alone not
        from.oneRm->toPlan.reset();
        from.oneRm->straight.reset();
        from.oneRm->calibratedToPlan.reset();
    }
    auto next = *nextTest(from, s);
    if (!ladderBounded)
        next.ladders.front().oneRm.reset();
    std::string told;
    for (const Words& words : nextTestWords(next))
        told += english(words) + ' ';
    const auto says = [&](const char* part) { return told.find(part) != std::string::npos; };
    const bool both = says("Both ");
    QCOMPARE(both, bends && planBounded && !calibrated && ladderBounded);
    QCOMPARE(says("what a bend may add"), both);
    QCOMPARE(says("MVT's own spread"), both && mvtSd && !withMvt);
    QCOMPARE(says("take the MVT as exact"), both && mvtSd && !withMvt);
    if (!both)
        return;
    QVERIFY(says(("± " + english(massWords(*next.oneRmNow, asEstimate)) + " now").c_str()));
    QVERIFY(*next.oneRmNow > *next.oneRmNowLike); // it holds more
    const OneRm& oneRm = *from.oneRm;
    // The one that is as if straight is the plan's without the bend, unless the MVT is left out.
    if (!mvtSd || withMvt)
        CHECK_NEAR(*next.oneRmNowLike, oneRm.straight->width() / 2, 1e-9);
    else
        QVERIFY(*next.oneRmNowLike < oneRm.straight->width() / 2);
}

QTEST_APPLESS_MAIN(TestNextTest)
#include "tst_nexttest.moc"
