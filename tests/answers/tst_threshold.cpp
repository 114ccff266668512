// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/method.h"
#include "core/answers/sources.h"
#include "core/answers/threshold.h"
#include "tests/answers/builders.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

class TestThreshold : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void ownMaximaComeFirst();
    void oneMaximumNarrowsNothing();
    void theLiftsOwnComesNext();
    void refusals();
    void sources_data();
    void sources();
};

void TestThreshold::ownMaximaComeFirst() {
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.50, 0.05);
    const std::vector<Point> maxima{{100, 0.20, 5}, {102.5, 0.26, 6}, {105, 0.17, 7}};
    const auto mvt = chooseMvt(lift, maxima);
    QVERIFY(mvt);
    QVERIFY(mvt->origin == Mvt::Origin::Athlete);
    QCOMPARE(mvt->count, 3);
    // By hand: mean 0.21, moderated towards the lift's 0.50 by 3 x 0.5 / (1 + 2 x 0.5) = 0.75;
    // deviations -0.01, 0.05, -0.04, squares sum to 0.0042; u^2 = (8 x 0.58 x 0.05^2 + 0.0042) / 10
    // x (1 + 1/3) on 10 df.
    QVERIFY(std::abs(mvt->value - (0.75 * 0.21 + 0.25 * 0.50)) < 1e-15);
    QVERIFY(std::abs(*mvt->sd - std::sqrt((8 * 0.58 * 0.0025 + 0.0042) / 10 * 4 / 3)) < 1e-15);
    QCOMPARE(mvt->sdDf, 10.0);
    QCOMPARE(english(sourceOf(*mvt)),
             std::string("the athlete's own: mean of 3 true maxima, drawn towards the lift's "
                         "figure"));
    // A deadlift's repeat better (Ruf et al. 2018: ICC 0.63).
    lift.name = "Deadlift";
    QVERIFY(std::abs(chooseMvt(lift, maxima)->value -
                     (0.50 + 3 * 0.63 / (1 + 2 * 0.63) * (0.21 - 0.50))) < 1e-15);
}

void TestThreshold::oneMaximumNarrowsNothing() {
    // One draw: half moderated, and no surer than one published single.
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.50, 0.05);
    const std::vector<Point> maxima{{100, 0.20, 5}};
    const auto mvt = chooseMvt(lift, maxima);
    QVERIFY(mvt);
    QCOMPARE(mvt->value, 0.35);
    QVERIFY(std::abs(*mvt->sd - std::sqrt(8 * 0.58 * 0.0025 / 8 * 2)) < 1e-15);
    QVERIFY(*mvt->sd > 0.05);
    QCOMPARE(english(sourceOf(*mvt)),
             std::string("the athlete's own: one true maximum, drawn towards the lift's figure"));
    // A lift that nothing is known of: the maximum itself, with a general spread.
    Lift unknown = tests::benchPull();
    unknown.name = "Log press";
    QCOMPARE(chooseMvt(unknown, maxima)->value, 0.20);
    QVERIFY(*chooseMvt(unknown, maxima)->sd > 0.04);
    // The published default of a known one, where the coach set none: 0.52 for the bench pull.
    QVERIFY(std::abs(chooseMvt(tests::benchPull(), maxima)->value - 0.36) < 1e-15);
}

void TestThreshold::theLiftsOwnComesNext() {
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.50, 0.05);
    const auto mvt = chooseMvt(lift, {});
    QVERIFY(mvt);
    QVERIFY(*mvt == *lift.mvt);
}

void TestThreshold::refusals() {
    const auto none = chooseMvt(tests::benchPull(), {});
    QVERIFY(!none);
    QVERIFY(none.why().why == NoAnswer::Why::NoThreshold);
    QVERIFY(!none.why().reason.empty());

    Lift thrown = tests::benchPull();
    thrown.ballistic = true;
    thrown.mvt = tests::coachMvt(0.5);
    const std::vector<Point> maxima{{100, 0.20, 5}};
    QVERIFY(chooseMvt(thrown, maxima).why().why == NoAnswer::Why::BallisticLift);

    // A published MVT is of mean or propulsive velocity (published-values.md section 6).
    Lift peak = tests::benchPull();
    peak.kind = VelocityKind::Peak;
    peak.mvt = tests::coachMvt(0.5);
    QVERIFY(chooseMvt(peak, {}));
    peak.mvt->origin = Mvt::Origin::Published;
    QVERIFY(chooseMvt(peak, {}).why().why == NoAnswer::Why::NoThreshold);
}

void TestThreshold::sources_data() {
    QTest::addColumn<int>("origin");
    QTest::addColumn<QString>("source");
    QTest::addColumn<QString>("shown");
    QTest::newRow("coach with words") << int(Mvt::Origin::Coach) << "own tests"
                                      << "the coach's own: own tests";
    QTest::newRow("coach without words") << int(Mvt::Origin::Coach) << ""
                                         << "the coach's own";
    QTest::newRow("published") << int(Mvt::Origin::Published) << "A 2010"
                               << "published, not yours";
    QTest::newRow("published, from memory") << int(Mvt::Origin::Published) << "A 2010 (from memory)"
                                            << "published, not yours";
    QTest::newRow("athlete") << int(Mvt::Origin::Athlete) << ""
                             << "the athlete's own: one true maximum";
}

void TestThreshold::sources() {
    QFETCH(int, origin);
    QFETCH(QString, source);
    QFETCH(QString, shown);
    const Mvt mvt{.value = 0.2,
                  .sd = {},
                  .origin = static_cast<Mvt::Origin>(origin),
                  .source = source.toStdString(),
                  .count = 1};
    QCOMPARE(QString::fromStdString(english(sourceOf(mvt))), shown);
    // What is published is cited behind and not within; a field that holds the source alone has
    // both.
    const bool published = mvt.origin == Mvt::Origin::Published;
    QCOMPARE(QString::fromStdString(english(citationOf(mvt))),
             published ? "published MVT: " + source : QString());
    QCOMPARE(QString::fromStdString(english(wholeSourceOf(mvt))),
             published ? shown + ": " + source : shown);
    QCOMPARE(english(mvtWords(mvt)).find("A 2010"), std::string::npos);
}

QTEST_APPLESS_MAIN(TestThreshold)
#include "tst_threshold.moc"
