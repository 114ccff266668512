// SPDX-License-Identifier: GPL-3.0-or-later
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
    void oneMaximumHasNoSd();
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
    QVERIFY(std::abs(mvt->value - 0.21) < 1e-15);
    // By hand: deviations -0.01, 0.05, -0.04; squares sum to 0.0042; / 2 = 0.0021.
    QVERIFY(std::abs(*mvt->sd - std::sqrt(0.0021)) < 1e-15);
    QCOMPARE(describe(*mvt), std::string("athlete: mean of 3 true maxima"));
}

void TestThreshold::oneMaximumHasNoSd() {
    const std::vector<Point> maxima{{100, 0.20, 5}};
    const auto mvt = chooseMvt(tests::benchPull(), maxima);
    QVERIFY(mvt);
    QCOMPARE(mvt->value, 0.20);
    QVERIFY(!mvt->sd);
    QCOMPARE(describe(*mvt), std::string("athlete: 1 true maximum"));
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
                                      << "coach: own tests";
    QTest::newRow("coach without words") << int(Mvt::Origin::Coach) << ""
                                         << "coach";
    QTest::newRow("published") << int(Mvt::Origin::Published) << "A 2010"
                               << "published: A 2010";
    QTest::newRow("athlete") << int(Mvt::Origin::Athlete) << "1 true maximum"
                             << "athlete: 1 true maximum";
}

void TestThreshold::sources() {
    QFETCH(int, origin);
    QFETCH(QString, source);
    QFETCH(QString, shown);
    const Mvt mvt{.value = 0.2,
                  .sd = {},
                  .origin = static_cast<Mvt::Origin>(origin),
                  .source = source.toStdString()};
    QCOMPARE(QString::fromStdString(describe(mvt)), shown);
}

QTEST_APPLESS_MAIN(TestThreshold)
#include "tst_threshold.moc"
