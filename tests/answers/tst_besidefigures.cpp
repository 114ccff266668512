// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside a figure: unclear is never a bare word, the max is told with and without the
// bend, and what two tests can show is told before they are done. Expected words by hand from
// method.md, sections 7 and 10.
#include "core/answers/bendwords.h"
#include "core/answers/maxwords.h"
#include "core/answers/nexttestwords.h"
#include "core/answers/readingwords.h"
#include "tests/answers/builders.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

const Smallest five{.value = 0.05, .origin = Smallest::Origin::Coach};

ReadChange unclear(double change, stats::Interval interval, stats::Interval at80) {
    ReadChange r = read(change, interval, interval, five);
    r.at80 = at80;
    return r;
}

/// A heavy day, and one whose ladder ends at 60 % of the max: the bend of the pull differs.
Comparison lightAfterHeavy(bool withBend) {
    const Lift lift = tests::benchPull();
    const auto from =
        tests::session(1, {{30, 1.18}, {40, 1.06}, {50, 0.93}, {60, 0.81}, {70, 0.68}, {80, 0.57}});
    const auto to = tests::session(2, {{20, 1.31}, {30, 1.19}, {40, 1.05}, {50, 0.94}});
    const ComparisonSettings settings{
        .checkLoads = {Mass{40'000}},
        .dayNoise = {.variance = {0.01 * 0.01, 20}, .origin = DayNoise::Origin::LogLift},
        .bend = withBend ? bendOf(lift) : Bend{},
        .smallestVelocity = five,
        .smallestOneRm = Smallest{.value = 4, .origin = Smallest::Origin::Coach}};
    return *compare(lift, tests::coachMvt(0.5), from, to, settings);
}

Profile withOneRm(const OneRm& oneRm, const Bend& bend) {
    const auto session =
        tests::session(1, {{30, 1.2}, {45, 1.0}, {60, 0.79}, {75, 0.61}, {80, 0.55}});
    Profile p = *profile(tests::benchPull(), tests::coachMvt(0.5), session);
    p.oneRm = oneRm;
    p.beyond.bend = bend;
    return p;
}

} // namespace

class TestBesideFigures : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void unclearIsNeverABareWord() {
        // Half of -0.01 to 0.10 is 0.055; rounded up, so that what is said is always enough.
        QCOMPARE(english(speedReading(unclear(0.045, {-0.01, 0.10}, {-0.02, 0.09}))),
                 std::string("unclear: a change is clear from 0.06 m/s up"));
        QCOMPARE(english(speedReading(unclear(0.045, {-0.01, 0.10}, {0.01, 0.08}))),
                 std::string("unclear, leaning to better: a change is clear from 0.06 m/s up"));
        QCOMPARE(english(maxReading(unclear(-2.5, {-6, 1}, {-5, -0.1}))),
                 std::string("unclear, leaning to worse: a change is clear from 3.5 kg up"));
    }
    /// At every size: never less than what it takes, and less than a step more.
    void whatIsSaidIsEnough() {
        for (const int decimals : {0, 1, 2, 3})
            for (int i = 1; i < 2000; ++i) {
                const double shows = i * 0.00037, step = std::pow(10, -decimals);
                const double said = std::stod(english(clearFrom(shows, decimals)));
                QVERIFY2(said > shows - 1e-8 && said < shows + step,
                         english(figure(shows, 6)).c_str());
            }
        QCOMPARE(english(clearFrom(0.07, 2)), std::string("0.07"));
        QCOMPARE(english(clearFrom(0.1 + 0.2, 1)), std::string("0.3")); // 0.30000000000000004
        QCOMPARE(english(saidSpeed(0.1572)), std::string("+0.16"));
        QCOMPARE(english(saidSpeed(-0.004)), std::string("-0.004"));
    }
    /// Read with others it takes more: what is better by itself says so.
    void whatIsClearAloneSaysSo() {
        ReadChange together = unclear(0.05, {-0.01, 0.11}, {0.01, 0.09});
        together.byItself = Reading::Better;
        QCOMPARE(english(speedCell(together)),
                 std::string("unclear, better alone; clear from 0.06"));
        together.byItself = Reading::Unclear;
        QCOMPARE(english(speedCell(together)),
                 std::string("unclear, leaning to better; clear from 0.06"));
        together.byItself = Reading::Worse;
        QCOMPARE(english(leaningReading(together)), std::string("unclear, worse alone"));
        ReadChange better = read(0.08, {0.06, 0.10}, {0.06, 0.10}, five);
        better.byItself = Reading::Better;
        QVERIFY(better.clearAlone() == 0);
    }
    void aCellSaysItShorter() {
        QCOMPARE(english(speedCell(unclear(0.045, {-0.01, 0.10}, {0.01, 0.08}))),
                 std::string("unclear, leaning to better; clear from 0.06"));
        QCOMPARE(english(maxCell(unclear(-2.5, {-6, 1}, {-5, 0.1}))),
                 std::string("unclear; clear from 3.5 kg"));
        // A figure of its own unit: half of -6 to 1, with one decimal and none.
        QCOMPARE(english(sizedCell(unclear(-2.5, {-6, 1}, {-5, -0.1}), 1)),
                 std::string("unclear, leaning to worse; clear from 3.5"));
        QCOMPARE(english(sizedCell(unclear(-2, {-6, 2}, {-5, 0.1}), 0)),
                 std::string("unclear; clear from 4"));
        QCOMPARE(english(sizedCell(read(0.08, {0.06, 0.10}, {0.06, 0.10}, five), 3)),
                 std::string("better, by more than matters"));
        QCOMPARE(english(maxCell(read(0, {-0.06, 0.06}, {-0.04, 0.04}, five))),
                 std::string("held"));
    }
    void aClearReadingStandsAlone() {
        QCOMPARE(english(speedReading(read(0.08, {0.06, 0.10}, {0.06, 0.10}, five))),
                 std::string("better, by over 0.050"));
        QCOMPARE(english(maxReading(read(0, {-0.06, 0.06}, {-0.04, 0.04}, five))),
                 std::string("held"));
        QCOMPARE(english(maxReading(ReadChange{})), std::string("no figure"));
    }
    void theMaxAsIfStraightStandsBesideIt() {
        const Comparison bent = lightAfterHeavy(true), unbent = lightAfterHeavy(false);
        const auto straight = maxIfStraight(bent);
        QVERIFY(straight);
        // The same comparison asked without any bend says the same.
        const ReadChange& same = unbent.oneRm->read;
        QCOMPARE(straight->change, same.change);
        QCOMPARE(straight->interval.low, same.interval.low);
        QCOMPARE(straight->interval.high, same.interval.high);
        QCOMPARE(straight->equivalence.low, same.equivalence.low);
        QCOMPARE(straight->reading, same.reading);
        QVERIFY(bent.oneRm->read.interval.high - bent.oneRm->read.interval.low >
                straight->interval.high - straight->interval.low);
        const auto alone = maxIfStraight(unbent);
        QVERIFY(alone);
        QCOMPARE(alone->interval.low, same.interval.low);
    }
    void theBendOfAChangeIsSaid() {
        Comparison c = lightAfterHeavy(true);
        const std::string told = english(bendWords(c));
        QVERIFY2(told.starts_with("lines bend a little: the change of the max may look up to "),
                 told.c_str());
        // The later ladder ends under 80 %.
        QVERIFY2(told.ends_with("; the same loads each time, or one load near 80 % of the max, end "
                                "that doubt in a change"),
                 told.c_str());
        c.oneRm->read.bend = {-0.3, 1.9};
        QVERIFY(english(bendWords(c)).find("up to 1.9 kg better or 0.3 kg worse than it is;") !=
                std::string::npos);
        c.oneRm->read.bend = {0, 1.9};
        QVERIFY(english(bendWords(c)).find("up to 1.9 kg better than it is;") != std::string::npos);
        c.oneRm->read.bend = {-2.04, 0.04};
        QVERIFY(english(bendWords(c)).find("up to 2.0 kg worse than it is;") != std::string::npos);
        c.oneRm->read.bend = {-0.04, 0.04}; // 0.0 as it is shown
        QVERIFY(english(bendWords(c)).find("cancels") != std::string::npos);
        c.oneRm->read.reading = Reading::NoFigure;
        QVERIFY(bendWords(c).empty());
        QVERIFY(bendWords(lightAfterHeavy(false)).empty());
    }
    void theBendOfASessionIsSaid() {
        const Bend any{.relations = {PublishedRelation{}}, .envelope = true};
        QCOMPARE(english(bendWords(
                     withOneRm({.estimate = 82, .bend = {-1.9, 1.1}, .reach = 0.98}, any))),
                 std::string("lifts bend a little: a straight line through these loads may read "
                             "the max -1.9 to +1.1 kg off; the same loads each time end that "
                             "doubt in a change"));
        const Bend own{.relations = {PublishedRelation{}}};
        QVERIFY(english(bendWords(withOneRm({.estimate = 120, .bend = {0, 6}, .reach = 0.67}, own)))
                    .ends_with("; the same loads each time, or one load near 80 % of the max, end "
                               "that doubt in a change; 3 own full ladders narrow it"));
        QVERIFY(bendWords(withOneRm({.estimate = 82, .bend = {0, 0.04}, .reach = 1}, any)).empty());
    }
    void whereTheAllowanceComesFrom() {
        Bend bend{.relations = {PublishedRelation{}}, .kappa = {0.25, 0.75}, .ladders = 4};
        QVERIFY(english(bendSource(bend))
                    .starts_with(
                        "bend allowance: 0.25 to 0.75 times the published curve of the lift ("));
        QVERIFY(english(bendSource(bend)).ends_with("by 4 own full ladders"));
        bend.ladders = 0;
        QVERIFY(english(bendSource(bend)).starts_with("bend allowance: none up to all of the "));
        bend.envelope = true;
        QVERIFY(english(bendSource(bend)).starts_with("bend allowance: any of the shipped curves"));
        QVERIFY(english(bendSource({})).starts_with("no bend allowance is made"));
        // Days as noisy as published tilt by 2.5 % (method.md section 10), without a figure
        // nothing.
        QVERIFY(english(tiltWords({.variance = {0.0004, 9}, .published = 0.02}))
                    .find("its slope by 2.5 % (SD)") != std::string::npos);
        QVERIFY(tiltWords({.variance = {0.0004, 9}}).empty());
    }
    void whatIsPlannedWith() {
        OneRm oneRm{.estimate = 81.54, .reach = 0.98};
        QVERIFY(english(planWithWords(withOneRm(oneRm, {}))).find("not bounded") !=
                std::string::npos);
        oneRm.toPlan = stats::Interval{74.4, 89.8};
        oneRm.straight = stats::Interval{74.5, 88.9};
        QCOMPARE(english(planWithWords(withOneRm(oneRm, {}))),
                 std::string("estimated 1RM 81.5 kg; to plan with 74.4 to 89.8 kg (as if straight "
                             "74.5 to 88.9 kg)"));
        oneRm.calibrated = 79.2;
        oneRm.calibratedToPlan = stats::Interval{70, 88};
        QCOMPARE(english(planWithWords(withOneRm(oneRm, {}))),
                 std::string("estimated 1RM by the log's own maxima 79.2 kg; to plan with 70.0 to "
                             "88.0 kg"));
        // A calibrated estimate without a bounded interval is not planned with: the pair is the
        // line's, in words as in toPlanWith().
        OneRm loose{.estimate = 100, .interval = stats::Interval{90, 112}, .calibrated = 85};
        QCOMPARE(english(planWithWords(withOneRm(loose, {}))),
                 std::string("estimated 1RM 100.0 kg; to plan with 90.0 to 112.0 kg, by the line "
                             "alone: days and bend leave it unbounded"));
        loose.withMvt = stats::Interval{88, 115};
        QCOMPARE(english(planWithWords(withOneRm(loose, {}))),
                 std::string("estimated 1RM 100.0 kg; to plan with 88.0 to 115.0 kg, by the line "
                             "and the MVT's own SD alone: days and bend leave it unbounded"));
        // The line knows of speeds alone: where its interval begins under what was lifted, the
        // words say which of the two holds.
        QCOMPARE(english(liftedWords(withOneRm(oneRm, {}))),
                 std::string("80 kg was lifted that day: its max is no less, though the interval "
                             "begins under it"));
        oneRm.calibratedToPlan = stats::Interval{80, 88};
        QCOMPARE(english(liftedWords(withOneRm(oneRm, {}))),
                 std::string("80 kg was lifted that day: its max is no less"));
    }
    void whatTwoTestsCanShow() {
        LadderForecast ladder{.oneRmChange = 6.4, .bendChange = {-1, 3.4}};
        ladder.changes = {{.load = Mass{40'000}, .reading = 0.065, .bend = {-0.002, 0.036}},
                          {.load = Mass{60'000}, .reading = 0.055}};
        QCOMPARE(english(canShowWords(ladder, true)),
                 std::string(
                     "this test and one by the first ladder can show: at 40 kg changes from 0.07 "
                     "m/s up, of which the bend takes 0.019; at 60 kg changes from 0.06 m/s up; "
                     "of the estimated 1RM changes from 6.4 kg up, of which the bend takes 2.2 kg "
                     "(the same loads both times: none); smaller changes will stay unclear, "
                     "whatever the athlete did"));
        ladder.oneRmChange.reset();
        QVERIFY(english(canShowWords(ladder, true)).find("1RM none: it cannot be bounded") !=
                std::string::npos);
        ladder.changes.clear();
        QVERIFY(canShowWords(ladder, false).empty());
    }
};

QTEST_APPLESS_MAIN(TestBesideFigures)
#include "tst_besidefigures.moc"
