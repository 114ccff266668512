// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/inverse.h"
#include "tests/stats/checking.h"
#include "tests/stats/datasets.h"

#include <cmath>
#include <limits>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {
constexpr double infinity = std::numeric_limits<double>::infinity();
}

class TstInverse : public QObject {
    Q_OBJECT

private slots:
    void checkTable_data();
    void checkTable();
    void kutnerGalactose();
    void slopeUncertainTwoRays();
    void slopeUncertainEverything();
    void slopeAtTheEdge();
    void uncertainThreshold();
    void smallGIsTheDeltaMethod();
    void endsAreWhereTheBandMeetsTheLevel();
    void agreesWithR();
    void pooledScatter();
    void infiniteDf();
    void perfectLine();
    void thresholdAtTheMean();
    void differenceOfTwo();
    void differenceWithPerfectPart();
};

// Fieller's interval, computed with base R from the stated data (published-values.md 10.3).
void TstInverse::checkTable_data() {
    QTest::addColumn<Points>("points");
    QTest::addColumn<double>("y");
    QTest::addColumn<int>("readings");           // 0: the mean line; 1: y is one new reading
    QTest::addColumn<QList<double>>("expected"); // x0, g, low, high
    QTest::addColumn<double>("digits");
    const auto row = [](const char* name, const Points& p, double y, int m,
                        const QList<double>& expected, double digits) {
        QTest::newRow(name) << p << y << m << expected << digits;
    };
    row("steam, mean", steam(), 10, 0, {45.384549313, 0.0743680310, 39.559723022, 50.049953980}, 9);
    row("steam, single", steam(), 10, 1, {45.384549313, 0.0743680310, 20.262657238, 69.347019764},
        9);
    row("cars, mean", cars(), 60, 0, {19.728136021, 0.0451354552, 18.441916240, 21.423528790}, 9);
    row("cars, single", cars(), 60, 1, {19.728136021, 0.0451354552, 11.748531634, 28.116913396}, 9);
    row("Anscombe 1, mean", anscombe(1), 9, 0,
        {11.997636793, 0.2844564343, 10.194702279, 16.183926044}, 9);
    row("orange tree 1, mean", orangeTree1(), 130, 0,
        {1295.60421856, 0.0392654039, 1186.21404374, 1435.52126571}, 8.9);
    row("crystal, mean", crystal(), 8, 0,
        {15.8881952327, 0.0232049768, 14.6589587043, 17.1596321189}, 8.9);
    row("crystal, single", crystal(), 8, 1, {15.8881952327, 0.0232049768, 11.0945763, 20.7240145},
        8.2);
    row("session A at 0.17", sessionA(), 0.17, 0,
        {137.160493827, 0.000324648834, 136.109281236, 138.245585104}, 9);
    row("session A at 0.17, single", sessionA(), 0.17, 1,
        {137.160493827, 0.000324648834, 135.539284424, 138.815581916}, 9);
    row("session B at 0.17", sessionB(), 0.17, 0,
        {143.845391477, 0.00114333315, 141.704954269, 146.120542481}, 8.9);
    row("session B at 0.17, single", sessionB(), 0.17, 1,
        {143.845391477, 0.00114333315, 140.701610936, 147.123885814}, 8.9);
    row("session A at 0.30", sessionA(), 0.30, 0,
        {125.123456790, 0.000324648834, 124.253262203, 126.019711905}, 9);
    row("session B at 0.30", sessionB(), 0.30, 0,
        {131.605550050, 0.00114333315, 129.816270525, 133.501522902}, 8.9);
    row("session A, load at no speed", sessionA(), 0, 0, {152.90123457, 0.000324648834}, 9);
    row("session B, load at no speed", sessionB(), 0, 0, {159.85133796, 0.00114333315}, 8.9);
}

void TstInverse::checkTable() {
    QFETCH(Points, points);
    QFETCH(double, y);
    QFETCH(int, readings);
    QFETCH(QList<double>, expected);
    QFETCH(double, digits);
    const Line line = lineOf(points);
    // One new reading has the scatter of the line itself.
    const double yVariance = readings > 0 ? line.s2() / readings : 0;
    const Inverse inverse = inversePrediction(line, y, yVariance, 0.95);
    CHECK_DIGITS(inverse.estimate, expected[0], digits);
    CHECK_DIGITS(inverse.g, expected[1], 8);
    QVERIFY(inverse.shape == Inverse::Shape::Bounded);
    if (expected.size() > 2) {
        CHECK_DIGITS(inverse.interval.low, expected[2], digits);
        CHECK_DIGITS(inverse.interval.high, expected[3], digits);
    }
}

// Kutner et al., sec. 4.6, from the printed summary: x0 6.509, 6.17 to 6.85. The book's interval is
// by the delta method, which g = 0.0008 makes the same to its digits.
void TstInverse::kutnerGalactose() {
    Line line;
    line.n = 30;
    line.distinct = 30;
    line.xMean = 5.5;
    line.sxx = 135;
    line.slope = 1.017;
    line.intercept = -0.100;
    line.yMean = line.intercept + line.slope * line.xMean;
    line.rss = 0.0272 * 28;
    const Inverse inverse = inversePrediction(line, 6.52, line.s2(), 0.95);
    CHECK_WITHIN(inverse.estimate, 6.509, 5.1e-4);
    CHECK_WITHIN(inverse.g, 0.000817, 5.1e-7);
    CHECK_WITHIN(inverse.interval.low, 6.17, 5.1e-3);
    CHECK_WITHIN(inverse.interval.high, 6.85, 5.1e-3);
}

// g >= 1 check of published-values.md 10.3.
void TstInverse::slopeUncertainTwoRays() {
    const Line line = lineOf({{1, 2, 3, 4}, {1.0, 1.4, 0.9, 1.5}});
    const Inverse inverse = inversePrediction(line, 2, 0, 0.95);
    CHECK_DIGITS(inverse.estimate, 10.5, 12);
    CHECK_DIGITS(inverse.g, 38.8769230769, 11);
    QVERIFY(inverse.shape == Inverse::Shape::Complement);
    CHECK_DIGITS(inverse.interval.low, 1.61700735, 8.5);
    CHECK_DIGITS(inverse.interval.high, 2.96057185, 8.5);
}

void TstInverse::slopeUncertainEverything() {
    const Line line = lineOf({{1, 2, 3, 4}, {1.0, 1.4, 0.9, 1.5}});
    QVERIFY(inversePrediction(line, 1.2, 0, 0.95).shape == Inverse::Shape::Everything);
}

// g exactly one: a single ray, of which no end is made up.
void TstInverse::slopeAtTheEdge() {
    Line line;
    line.n = 4;
    line.xMean = 10;
    line.yMean = 1;
    line.slope = 1;
    line.sxx = 1;
    const double t = tCritical(0.95, 5);
    const Scatter scatter{1 / (t * t), 5};
    const Inverse up = inversePrediction(line, 3, 0, scatter, 0.95);
    if (up.g != 1)
        QSKIP("rounding keeps g from being one exactly on this machine");
    QVERIFY(up.shape == Inverse::Shape::Complement);
    QCOMPARE(up.interval.low, -infinity);
    // (Y^2 - t^2 s^2 / n) / (2 b Y) with Y = 2: (4 - 1/4) / 4.
    CHECK_DIGITS(up.interval.high, 10 + 3.75 / 4, 12);
    const Inverse down = inversePrediction(line, -1, 0, scatter, 0.95);
    QCOMPARE(down.interval.high, infinity);
    CHECK_DIGITS(down.interval.low, 10 - 3.75 / 4, 12);
    QVERIFY(inversePrediction(line, 1, 0, scatter, 0.95).shape == Inverse::Shape::Everything);
}

// MVT 0.17 +/- 0.04: the SE becomes 3.723620 kg by the delta method (published-values.md 10.3);
// Fieller's interval with so small a g is centred on it to a percent.
void TstInverse::uncertainThreshold() {
    const Line line = lineOf(sessionA());
    const Inverse exact = inversePrediction(line, 0.17, 0, 0.95);
    const Inverse uncertain = inversePrediction(line, 0.17, 0.04 * 0.04, 0.95);
    QCOMPARE(uncertain.estimate, exact.estimate);
    QCOMPARE(uncertain.g, exact.g);
    const double half = (uncertain.interval.high - uncertain.interval.low) / 2;
    CHECK_DIGITS(half / tCritical(0.95, 4), 3.723620, 3);
    QVERIFY(half > 9 * (exact.interval.high - exact.interval.low) / 2);
}

void TstInverse::smallGIsTheDeltaMethod() {
    // Wald SE of the check table: 0.384608443 and 0.794362720.
    const Inverse a = inversePrediction(lineOf(sessionA()), 0.17, 0, 0.95);
    const Inverse b = inversePrediction(lineOf(sessionB()), 0.17, 0, 0.95);
    const double t = tCritical(0.95, 4);
    CHECK_DIGITS((a.interval.high - a.interval.low) / 2 / t, 0.384608443, 3);
    CHECK_DIGITS((b.interval.high - b.interval.low) / 2 / t, 0.794362720, 2.8);
}

// What Fieller's ends mean: there the line's mean is exactly t standard errors from y.
void TstInverse::endsAreWhereTheBandMeetsTheLevel() {
    for (const Points& p : madeLadders()) {
        const Line line = lineOf(p);
        const double y = line.at(line.xMax + 0.4 * (line.xMax - line.xMin));
        const double u2 = 0.0001;
        const Inverse inverse = inversePrediction(line, y, u2, 0.95);
        if (inverse.shape == Inverse::Shape::Everything)
            continue;
        const double t = tCritical(0.95, line.df());
        for (const double end : {inverse.interval.low, inverse.interval.high}) {
            const double se = std::hypot(line.seAt(end), std::sqrt(u2));
            CHECK_DIGITS(std::abs(line.at(end) - y), t * se, 8);
        }
    }
}

void TstInverse::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: no inverse prediction was compared with R");
    const std::vector<Points> sets = madeLadders();
    QByteArray input;
    for (std::size_t i = 0; i < sets.size(); ++i)
        appendPoints(input, "s" + QByteArray::number(qulonglong(i)), sets[i].x, sets[i].y);
    const QMap<QString, double> r = runR("inverse.R", {}, input);
    int bounded = 0, rays = 0, everything = 0;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const Line line = lineOf(sets[i]);
        const double digits = sets[i].x[0] > 1e5 ? 8 : 9;
        for (const QString row : {"mean", "single", "spread", "low"}) {
            const QString id = "s" + QString::number(i) + "." + row + ".";
            const double y = r.value(id + "y");
            const Inverse inverse = inversePrediction(line, y, r.value(id + "y2"), 0.95);
            CHECK_DIGITS(inverse.estimate - line.xMean, r.value(id + "d"), digits);
            CHECK_DIGITS(inverse.g, r.value(id + "g"), digits);
            QCOMPARE(int(inverse.shape), int(r.value(id + "shape")));
            bounded += inverse.shape == Inverse::Shape::Bounded;
            rays += inverse.shape == Inverse::Shape::Complement;
            everything += inverse.shape == Inverse::Shape::Everything;
            if (inverse.shape == Inverse::Shape::Everything)
                continue;
            const double scale = std::pow(10, -digits) * std::abs(line.xMax - line.xMin);
            CHECK_WITHIN(inverse.interval.low - line.xMean, r.value(id + "low"),
                         scale + 1e-8 * std::abs(r.value(id + "low")));
            CHECK_WITHIN(inverse.interval.high - line.xMean, r.value(id + "high"),
                         scale + 1e-8 * std::abs(r.value(id + "high")));
        }
    }
    QVERIFY(bounded > 60 && rays > 3 && everything > 3);
}

void TstInverse::pooledScatter() {
    const Line line = lineOf(sessionA());
    const Inverse own = inversePrediction(line, 0.17, 0, 0.95);
    const Inverse same = inversePrediction(line, 0.17, 0, Scatter{line.s2(), line.df()}, 0.95);
    QCOMPARE(same.interval, own.interval);
    // Soap-like use: the pooled s^2 of A and B, 5.14035088e-05 on 8 df (published-values.md 10.5).
    const Inverse pooled = inversePrediction(line, 0.17, 0, Scatter{5.14035088e-05, 8}, 0.95);
    CHECK_DIGITS(pooled.g,
                 own.g * 5.14035088e-05 / line.s2() *
                     std::pow(tCritical(0.95, 8) / tCritical(0.95, 4), 2),
                 12);
    QCOMPARE(pooled.estimate, own.estimate);
}

void TstInverse::infiniteDf() {
    const Line line = lineOf(sessionA());
    const Inverse known = inversePrediction(line, 0.17, 0, Scatter{line.s2(), infinity}, 0.95);
    const Inverse many = inversePrediction(line, 0.17, 0, Scatter{line.s2(), 1e9}, 0.95);
    CHECK_DIGITS(known.interval.low, many.interval.low, 9);
    QVERIFY(known.interval.high < inversePrediction(line, 0.17, 0, 0.95).interval.high);
}

void TstInverse::perfectLine() {
    const Line line = lineOf({{20, 40, 60, 80}, {1.3, 1.1, 0.9, 0.7}});
    const Inverse inverse = inversePrediction(line, 0.3, 0, 0.95);
    QCOMPARE(inverse.g, 0.0);
    CHECK_DIGITS(inverse.estimate, 120.0, 13);
    CHECK_DIGITS(inverse.interval.low, 120.0, 13);
    CHECK_DIGITS(inverse.interval.high, 120.0, 13);
    const Inverse unsure = inversePrediction(line, 0.3, 0.01, 0.95);
    CHECK_DIGITS(unsure.interval.high, 120 + tCritical(0.95, 2) * 0.1 / 0.01, 12);
}

void TstInverse::thresholdAtTheMean() {
    const Line line = lineOf(sessionA());
    const Inverse inverse = inversePrediction(line, line.yMean, 0, 0.95);
    CHECK_DIGITS(inverse.estimate, line.xMean, 15);
    CHECK_DIGITS(inverse.interval.high - line.xMean, line.xMean - inverse.interval.low, 12);
    const Line perfect = lineOf({{20, 40, 60}, {1.5, 1.0, 0.5}});
    const Inverse point = inversePrediction(perfect, perfect.yMean, 0, 0.95);
    QCOMPARE(point.interval, (Interval{perfect.xMean, perfect.xMean}));
}

// Zou and Donner 2008: L = e2 - e1 - sqrt((e2 - l2)^2 + (u1 - e1)^2), U likewise. Symmetric
// intervals give the square root of the sum of squares (3-4-5 triangle).
void TstInverse::differenceOfTwo() {
    const Interval symmetric = differenceInterval(100, {97, 103}, 110, {106, 114});
    CHECK_DIGITS(symmetric.low, 5.0, 15);
    CHECK_DIGITS(symmetric.high, 15.0, 15);
    const Interval skewed = differenceInterval(100, {96, 112}, 110, {105, 113});
    CHECK_DIGITS(skewed.low, 10 - 13.0, 14);
    CHECK_DIGITS(skewed.high, 10 + 5.0, 14);
    const Interval open = differenceInterval(100, {96, infinity}, 110, {105, 113});
    QCOMPARE(open.low, -infinity);
    CHECK_DIGITS(open.high, 15.0, 14);
}

void TstInverse::differenceWithPerfectPart() {
    const Interval one = differenceInterval(100, {100, 100}, 110, {105, 113});
    CHECK_DIGITS(one.low, 5.0, 15);
    CHECK_DIGITS(one.high, 13.0, 15);
    QCOMPARE(differenceInterval(1, {1, 1}, 3, {3, 3}), (Interval{2, 2}));
}

QTEST_APPLESS_MAIN(TstInverse)
#include "tst_inverse.moc"
