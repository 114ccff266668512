// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/reading.h"

#include <QtTest>

#include <limits>

using namespace slopebook::answers;

class TestReading : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void fiveWays_data();
    void fiveWays();
    void withoutASmallestChange();
    void noFigureWithoutAnInterval();
    void words();
    void levels();
    void leansByWhichWayIsBetter();
};

/// A time that went down leans to better, a speed to worse; what is no reading leans nowhere.
void TestReading::leansByWhichWayIsBetter() {
    for (const bool higherIsBetter : {true, false}) {
        ReadChange less = read(-0.05, {-0.12, 0.02}, {-0.11, 0.01}, {}, higherIsBetter);
        QCOMPARE(less.reading, Reading::Unclear);
        QCOMPARE(less.leans(), 0);
        less.at80 = slopebook::stats::Interval{-0.09, -0.01};
        QCOMPARE(less.leans(), higherIsBetter ? -1 : 1);
        QCOMPARE(slopebook::english(readingWords(less, 3)),
                 std::string(higherIsBetter ? "unclear, leaning to worse"
                                            : "unclear, leaning to better"));
    }
}

void TestReading::fiveWays_data() {
    QTest::addColumn<double>("change");
    QTest::addColumn<double>("low");
    QTest::addColumn<double>("high");
    QTest::addColumn<double>("narrowLow");
    QTest::addColumn<double>("narrowHigh");
    QTest::addColumn<bool>("higherIsBetter");
    QTest::addColumn<QString>("reading");
    QTest::addColumn<bool>("beyond");
    QTest::addColumn<bool>("within");
    // The rule: method.md section 7. m = 0.06 throughout.
    QTest::newRow("above zero and m")
        << 0.10 << 0.07 << 0.13 << 0.08 << 0.12 << true << "better" << true << false;
    QTest::newRow("above zero, m inside")
        << 0.06 << 0.01 << 0.11 << 0.02 << 0.10 << true << "better" << false << false;
    QTest::newRow("above zero, yet less than m")
        << 0.03 << 0.01 << 0.05 << 0.015 << 0.045 << true << "better" << false << true;
    QTest::newRow("below zero") << -0.04 << -0.07 << -0.01 << -0.065 << -0.015 << true << "worse"
                                << false << false;
    QTest::newRow("below -m") << -0.10 << -0.13 << -0.07 << -0.12 << -0.08 << true << "worse"
                              << true << false;
    QTest::newRow("a time went up")
        << 0.10 << 0.07 << 0.13 << 0.08 << 0.12 << false << "worse" << true << false;
    QTest::newRow("a time went down")
        << -0.10 << -0.13 << -0.07 << -0.12 << -0.08 << false << "better" << true << false;
    QTest::newRow("inside -m to m")
        << 0.01 << -0.03 << 0.05 << -0.02 << 0.04 << true << "held" << false << true;
    QTest::newRow("held by the narrower interval alone")
        << 0.02 << -0.03 << 0.07 << -0.015 << 0.055 << true << "held" << false << true;
    QTest::newRow("wide") << 0.02 << -0.10 << 0.14 << -0.08 << 0.12 << true << "unclear" << false
                          << false;
    QTest::newRow("touches zero") << 0.05 << 0.0 << 0.10 << 0.01 << 0.09 << true << "unclear"
                                  << false << false;
    QTest::newRow("touches m") << 0.02 << -0.04 << 0.08 << -0.02 << 0.06 << true << "unclear"
                               << false << false;
}

void TestReading::fiveWays() {
    QFETCH(double, change);
    QFETCH(double, low);
    QFETCH(double, high);
    QFETCH(double, narrowLow);
    QFETCH(double, narrowHigh);
    QFETCH(bool, higherIsBetter);
    QFETCH(QString, reading);
    QFETCH(bool, beyond);
    QFETCH(bool, within);
    const Smallest m{0.06, Smallest::Origin::Coach, "coach"};
    const auto r = read(change, {low, high}, {narrowLow, narrowHigh}, m, higherIsBetter);
    const auto said = word(r.reading);
    QCOMPARE(QString::fromUtf8(said.data(), static_cast<qsizetype>(said.size())), reading);
    QCOMPARE(r.beyondSmallest, beyond);
    QCOMPARE(r.withinSmallest, within);
    QCOMPARE(r.change, change);
    QCOMPARE(r.smallest->value, 0.06);
}

void TestReading::withoutASmallestChange() {
    QVERIFY(read(0.01, {-0.01, 0.03}, {0, 0.02}, {}).reading == Reading::Unclear);
    QVERIFY(read(0.02, {0.01, 0.03}, {0.01, 0.02}, {}).reading == Reading::Better);
    QVERIFY(!read(0.02, {0.01, 0.03}, {0.01, 0.02}, {}).beyondSmallest);
}

void TestReading::noFigureWithoutAnInterval() {
    const double inf = std::numeric_limits<double>::infinity();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    QVERIFY(read(0.02, {-inf, 0.03}, {0.01, 0.02}, {}).reading == Reading::NoFigure);
    QVERIFY(read(0.02, {0.01, 0.03}, {0.01, inf}, {}).reading == Reading::NoFigure);
    QVERIFY(read(nan, {0.01, 0.03}, {0.01, 0.02}, {}).reading == Reading::NoFigure);
    QVERIFY(ReadChange{}.reading == Reading::NoFigure);
}

void TestReading::words() {
    QCOMPARE(word(Reading::Better), std::string_view("better"));
    QCOMPARE(word(Reading::Worse), std::string_view("worse"));
    QCOMPARE(word(Reading::Held), std::string_view("held"));
    QCOMPARE(word(Reading::Unclear), std::string_view("unclear"));
    QCOMPARE(word(Reading::NoFigure), std::string_view("no figure"));
}

void TestReading::levels() {
    QVERIFY(qFuzzyCompare(equivalenceLevel(0.95), 0.90));
    QVERIFY(qFuzzyCompare(equivalenceLevel(0.90), 0.80));
}

QTEST_APPLESS_MAIN(TestReading)
#include "tst_reading.moc"
