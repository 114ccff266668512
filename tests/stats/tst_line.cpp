// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stats/checking.h"
#include "tests/stats/datasets.h"

#include <array>
#include <limits>

using namespace slopebook::stats;
using namespace slopebook::tests;

class TstLine : public QObject {
    Q_OBJECT

private slots:
    void norrisCertified();
    void norrisMeasured();
    void pontiusQuadraticTerm();
    void wamplerStraight();
    void textbookLines_data();
    void textbookLines();
    void tolucaIntervals();
    void steamSums();
    void carsIntervals();
    void farFromZeroKeepsDigits_data();
    void farFromZeroKeepsDigits();
    void knownTruthComesBack();
    void agreesWithR();
    void bendsAreSeen();
    void bandHoldsTheMeanInterval();
    void twoPointsHaveALineAndNoInference();
    void noLine_data();
    void noLine();
    void threePoints();
    void perfectLineHasNoScatter();
    void constantSpeed();
    void loneFarPoint();
    void perfectParabola();
};

// Certified values of NIST StRD Norris; digits asserted are those found, rounded down.
void TstLine::norrisCertified() {
    const Line line = lineOf(norris());
    QCOMPARE(line.n, 36);
    QCOMPARE(line.df(), 34.0);
    CHECK_DIGITS(line.slope, 1.00211681802045, 14);
    CHECK_DIGITS(line.intercept, -0.262323073774029, 12);
    CHECK_DIGITS(line.slopeSe(), 0.429796848199937e-03, 13);
    CHECK_DIGITS(line.interceptSe(), 0.232818234301152, 13);
    CHECK_DIGITS(line.s(), 0.884796396144373, 13);
    CHECK_DIGITS(line.r2, 0.999993745883712, 14);
    CHECK_DIGITS(line.rss, 26.6173985294224, 13);
    CHECK_DIGITS(line.s2(), 0.782864662630069, 13);
    const double ssr = line.syy - line.rss;
    CHECK_DIGITS(ssr, 4255954.13232369, 13);
    CHECK_DIGITS(ssr / line.s2(), 5436385.54079785, 13);
}

void TstLine::norrisMeasured() {
    // cov(b0, b1) of Norris, computed by a third party (published-values.md 10.2).
    const Line line = lineOf(norris());
    CHECK_DIGITS(-line.xMean * line.s2() / line.sxx, -7.74327536339570e-05, 10);
}

// NIST StRD Pontius: B2, its SD and with them t; the residual SD of the parabola by t.
void TstLine::pontiusQuadraticTerm() {
    const Points p = pontius();
    const auto bend = curvature(p.x, p.y);
    QVERIFY(bend);
    QCOMPARE(bend->df, 37.0);
    CHECK_DIGITS(bend->coefficient, -0.316081871345029e-14, 12);
    CHECK_DIGITS(bend->coefficient / bend->t, 0.486652849992036e-16, 12);
    QVERIFY(bend->p < 1e-30);
}

// NIST StRD Wampler 1 to 5 certify a polynomial of degree five, which this line is not. Their data
// are fitted straight here: x = 0..20, y = 1 + x + .. + x^5, whose straight line has an exact
// rational answer from power sums.
void TstLine::wamplerStraight() {
    Points p;
    for (int i = 0; i <= 20; ++i) {
        p.x.push_back(i);
        p.y.push_back(1 + i * (1 + i * (1 + i * (1.0 + i * (1 + double(i))))));
    }
    // Sxy = sum (x - 10) y and sum y in whole numbers, exactly held by long long.
    long long sumY = 0, sxy = 0;
    for (long long i = 0; i <= 20; ++i) {
        const long long y = 1 + i * (1 + i * (1 + i * (1 + i * (1 + i))));
        sumY += y;
        sxy += (i - 10) * y;
    }
    const Line line = lineOf(p);
    CHECK_DIGITS(line.sxx, 770.0, 15);
    CHECK_DIGITS(line.slope, static_cast<double>(sxy) / 770.0, 15);
    CHECK_DIGITS(line.yMean, static_cast<double>(sumY) / 21.0, 15);
}

void TstLine::textbookLines_data() {
    QTest::addColumn<Points>("points");
    QTest::addColumn<QList<double>>("expected"); // intercept, slope, s, R2
    QTest::addColumn<double>("half");            // half a unit of the last printed place
    // Anscombe 1973, as R gives them (published-values.md 10.2).
    QTest::newRow("Anscombe 1") << anscombe(1)
                                << QList<double>{3.0000909, 0.5000909, 1.2366033, 0.6665425}
                                << 5.1e-8;
    QTest::newRow("Anscombe 2") << anscombe(2)
                                << QList<double>{3.0009091, 0.5000000, 1.2372142, 0.6662420}
                                << 5.1e-8;
    QTest::newRow("Anscombe 3") << anscombe(3)
                                << QList<double>{3.0024545, 0.4997273, 1.2363114, 0.6663240}
                                << 5.1e-8;
    QTest::newRow("Anscombe 4") << anscombe(4)
                                << QList<double>{3.0017273, 0.4999091, 1.2356955, 0.6667073}
                                << 5.1e-8;
    // R's cars, the standard published output.
    QTest::newRow("cars") << cars()
                          << QList<double>{-17.5790948905, 3.9324087591, 15.37958675, 0.6510793808}
                          << 5.1e-9;
    // Kutner et al.; MSE 2383.7156 (the book: 2384).
    QTest::newRow("Toluca") << toluca()
                            << QList<double>{62.36585859, 3.57020202, std::sqrt(2383.7156),
                                             0.821533}
                            << 6e-7;
    // Draper and Smith; s^2 0.792322.
    QTest::newRow("steam") << steam()
                           << QList<double>{13.62298927, -0.0798286933, std::sqrt(0.792322),
                                            0.714438}
                           << 6e-7;
    // R's ChickWeight, chick 1; s and R2 left to the comparison with R.
    QTest::newRow("chick 1") << chick1() << QList<double>{24.46543639, 7.98789896} << 5.1e-9;
    QTest::newRow("session A, invented")
        << sessionA() << QList<double>{1.651333333333, -0.0108, 0.0048304589, 0.9998315688}
        << 5.1e-11;
    QTest::newRow("session B, invented")
        << sessionB() << QList<double>{1.697789473684, -0.010621052632, 0.0089148014, 0.9994070787}
        << 5.1e-11;
}

void TstLine::textbookLines() {
    QFETCH(Points, points);
    QFETCH(QList<double>, expected);
    QFETCH(double, half);
    const Line line = lineOf(points);
    CHECK_WITHIN(line.intercept, expected[0], half);
    CHECK_WITHIN(line.slope, expected[1], half);
    if (expected.size() > 2) {
        CHECK_WITHIN(line.s(), expected[2], half);
        CHECK_WITHIN(line.r2, expected[3], half);
    }
}

// Kutner et al., ch. 2, all but the first as printed in the book.
void TstLine::tolucaIntervals() {
    const Line line = lineOf(toluca());
    CHECK_WITHIN(line.interceptSe(), 26.17743389, 5.1e-9);
    CHECK_WITHIN(line.slopeSe(), 0.34697216, 5.1e-9);
    const Interval slope = slopeInterval(line, 0.95);
    CHECK_WITHIN(slope.low, 2.85243543, 5.1e-9);
    CHECK_WITHIN(slope.high, 4.28796861, 5.1e-9);
    const Interval at65 = meanInterval(line, 65, 0.90);
    CHECK_WITHIN(at65.low, 277.4315, 5.1e-5);
    CHECK_WITHIN(at65.high, 311.4264, 5.1e-5);
    const Interval at100 = meanInterval(line, 100, 0.90);
    CHECK_WITHIN(at100.low, 394.9251, 5.1e-5);
    CHECK_WITHIN(at100.high, 443.8470, 5.1e-5);
    const Interval next = predictionInterval(line, 100, 0.90);
    CHECK_WITHIN(next.low, 332.2072, 5.1e-5);
    CHECK_WITHIN(next.high, 506.5649, 5.1e-5);
}

// Draper and Smith, ch. 1: the sums printed there.
void TstLine::steamSums() {
    const Line line = lineOf(steam());
    CHECK_WITHIN(line.xMean, 52.60, 1e-12);
    CHECK_WITHIN(line.yMean, 9.424, 1e-12);
    CHECK_WITHIN(line.sxx, 7154.42, 1e-9);
    CHECK_WITHIN(line.slopeSe(), 0.0105235810, 5.1e-11);
}

void TstLine::carsIntervals() {
    const Line line = lineOf(cars());
    CHECK_WITHIN(line.interceptSe(), 6.7584401694, 5.1e-11);
    CHECK_WITHIN(line.slopeSe(), 0.4155127767, 5.1e-11);
    const double t = line.slope / line.slopeSe();
    CHECK_WITHIN(t * t, 89.56710654, 5.1e-9);
    CHECK_DIGITS(tTwoSidedP(t, line.df()), 1.489836e-12, 6);
    const Interval slope = slopeInterval(line, 0.95);
    CHECK_WITHIN(slope.low, 3.096964328, 5.1e-10);
    CHECK_WITHIN(slope.high, 4.767853190, 5.1e-10);
}

// Loads moved by a shift that double holds exactly: nothing but the intercept may change.
void TstLine::farFromZeroKeepsDigits_data() {
    QTest::addColumn<double>("shift");
    QTest::newRow("by a hundred") << 100.0;
    QTest::newRow("by a million") << 1e6;
    QTest::newRow("by a thousand million") << 1e9;
}

void TstLine::farFromZeroKeepsDigits() {
    QFETCH(double, shift);
    Points near = sessionB(), far = near;
    for (double& x : far.x)
        x += shift;
    const Line a = lineOf(near), b = lineOf(far);
    CHECK_DIGITS(b.slope, a.slope, 14);
    CHECK_DIGITS(b.sxx, a.sxx, 15);
    CHECK_DIGITS(b.rss, a.rss, 12);
    CHECK_DIGITS(b.at(70 + shift), a.at(70), 14);
    CHECK_DIGITS(b.seAt(70 + shift), a.seAt(70), 12);
    CHECK_DIGITS(b.root() - shift, a.root(), 15 - std::log10(shift));
}

// Points on a line of simple binary numbers give that line back to the last bits.
void TstLine::knownTruthComesBack() {
    for (int points = 3; points <= 40; ++points)
        for (const double slope : {-0.0078125, -0.5, 3.0})
            for (const double intercept : {1.5, -2048.0, 0.0}) {
                Points p;
                for (int i = 0; i < points; ++i) {
                    p.x.push_back(20 + 2.5 * i * (1 + i % 3));
                    p.y.push_back(intercept + slope * p.x.back());
                }
                const Line line = lineOf(p);
                CHECK_DIGITS(line.slope, slope, 14);
                CHECK_WITHIN(line.intercept, intercept,
                             1e-14 * (std::abs(intercept) + std::abs(slope) * 500));
                QCOMPARE(line.s(), 0.0);
            }
}

void TstLine::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: no line was compared with lm, predict, rstudent, hatvalues and "
              "cooks.distance");
    std::vector<Points> sets = madeLadders();
    for (const Points& p : {norris(), toluca(), steam(), cars(), anscombe(1), anscombe(2),
                            anscombe(3), anscombe(4), crystal(), chick1(), sessionA()})
        sets.push_back(p);
    QByteArray input;
    for (std::size_t i = 0; i < sets.size(); ++i)
        appendPoints(input, "s" + QByteArray::number(qulonglong(i)), sets[i].x, sets[i].y);
    const QMap<QString, double> r = runR("line.R", {}, input);
    for (std::size_t k = 0; k < sets.size(); ++k) {
        const Points& p = sets[k];
        const Line line = lineOf(p);
        const QString id = "s" + QString::number(k) + ".";
        // R's QR of raw loads of a million leaves about ten digits of these.
        const double digits = p.x[0] > 1e5 ? 8 : 10;
        const auto same = [&](const QString& figure, double found, double scale = 0) {
            QVERIFY2(r.contains(id + figure), qPrintable("R gave no " + id + figure));
            const double expected = r.value(id + figure);
            const bool near = std::abs(found - expected) <= scale * std::pow(10, -digits);
            QVERIFY2(near || alike(found, expected, digits),
                     (id + figure).toUtf8() + ": " + unlike(found, expected));
        };
        same("slope", line.slope);
        same("slopeSe", line.slopeSe());
        same("intercept", line.intercept);
        same("interceptSe", line.interceptSe());
        same("s", line.s());
        same("rss", line.rss);
        same("r2", line.r2);
        same("slopeLow", slopeInterval(line, 0.95).low, std::abs(line.slope));
        same("slopeHigh", slopeInterval(line, 0.95).high, std::abs(line.slope));
        same("interceptLow", interceptInterval(line, 0.95).low, std::abs(line.intercept));
        same("interceptHigh", interceptInterval(line, 0.95).high, std::abs(line.intercept));
        for (const QString at : {"1", "2", "3"}) {
            const double x = r.value(id + "at" + at);
            const double size = std::abs(line.yMean);
            same("meanLow" + at, meanInterval(line, x, 0.95).low, size);
            same("meanHigh" + at, meanInterval(line, x, 0.95).high, size);
            same("predictionLow" + at, predictionInterval(line, x, 0.95).low, size);
            same("predictionHigh" + at, predictionInterval(line, x, 0.95).high, size);
            same("mean4High" + at, predictionInterval(line, x, 0.95, 4).high, size);
            same("bandHigh" + at, workingHotelling(line, x, 0.95).high, size);
        }
        const auto points = diagnose(line, p.x, p.y);
        QCOMPARE(points.size(), p.x.size());
        for (std::size_t i = 0; i < points.size(); ++i) {
            const QString at = QString::number(i + 1);
            same("residual" + at, points[i].residual, line.s());
            same("leverage" + at, points[i].leverage);
            // R answers NaN or a number made of rounding where nothing can be judged.
            if (points[i].studentised)
                same("student" + at, *points[i].studentised, 1e3);
            else
                QVERIFY(line.n == 3 || points[i].leverage > 1 - 1e-12);
            if (points[i].cook)
                same("cook" + at, *points[i].cook);
            else
                QVERIFY(points[i].leverage > 1 - 1e-12);
        }
        const auto bend = curvature(p.x, p.y);
        QCOMPARE(bend.has_value(), line.distinct > 3);
        if (bend) {
            same("bend", bend->coefficient);
            same("bendT", bend->t, 1);
            same("bendP", bend->p);
        }
    }
}

void TstLine::bendsAreSeen() {
    const Points bent = chick1();
    QVERIFY(curvature(bent.x, bent.y)->p < 1e-4);
    QVERIFY(lineOf(bent).r2 > 0.95);
    const Points straight = sessionA();
    QVERIFY(curvature(straight.x, straight.y)->p > 0.05);
}

void TstLine::bandHoldsTheMeanInterval() {
    const Line line = lineOf(steam());
    for (double x = 0; x < 100; x += 7) {
        const Interval mean = meanInterval(line, x, 0.95), band = workingHotelling(line, x, 0.95);
        const Interval one = predictionInterval(line, x, 0.95);
        QVERIFY(band.low < mean.low && mean.low < line.at(x));
        QVERIFY(band.high > mean.high && one.high > mean.high);
        QVERIFY(predictionInterval(line, x, 0.95, 9).high < one.high);
    }
}

// Published-values.md section 3: 40 kg at 1.00, 80 kg at 0.50.
void TstLine::twoPointsHaveALineAndNoInference() {
    const Points p{{40, 80}, {1.00, 0.50}};
    const Line line = lineOf(p);
    CHECK_DIGITS(line.slope, -0.0125, 15);
    CHECK_DIGITS(line.intercept, 1.5, 15);
    CHECK_DIGITS(line.root(), 120.0, 15);
    QCOMPARE(line.df(), 0.0);
    QVERIFY(!line.hasInference());
    QCOMPARE(line.s(), 0.0);
    QCOMPARE(line.slopeSe(), 0.0);
    QCOMPARE(line.r2, 1.0);
    for (const PointDiagnostics& point : diagnose(line, p.x, p.y)) {
        CHECK_DIGITS(point.leverage, 1.0, 14);
        QVERIFY(!point.studentised && !point.cook);
    }
    QVERIFY(!curvature(p.x, p.y));
}

void TstLine::noLine_data() {
    QTest::addColumn<Points>("points");
    QTest::newRow("no points") << Points{};
    QTest::newRow("one point") << Points{{40}, {1}};
    QTest::newRow("one load three times") << Points{{40, 40, 40}, {1, 1.1, 0.9}};
    QTest::newRow("one load a hundred times")
        << Points{std::vector<double>(100, 40), std::vector<double>(100, 1)};
}

void TstLine::noLine() {
    QFETCH(Points, points);
    QVERIFY(!fitLine(points.x, points.y));
    QVERIFY(!curvature(points.x, points.y));
}

void TstLine::threePoints() {
    const Points p{{40, 60, 80}, {1.0, 0.82, 0.6}};
    const Line line = lineOf(p);
    QCOMPARE(line.df(), 1.0);
    // t(0.975, 1) = 12.706205, any table.
    CHECK_WITHIN((slopeInterval(line, 0.95).high - line.slope) / line.slopeSe(), 12.706205, 5.1e-7);
    for (const PointDiagnostics& point : diagnose(line, p.x, p.y)) {
        QVERIFY(!point.studentised); // without the point no df is left
        QVERIFY(point.cook);
    }
    QVERIFY(!curvature(p.x, p.y));
}

void TstLine::perfectLineHasNoScatter() {
    // 0.1 and its like are not held exactly: what is left of them is not scatter.
    const Points p{{20, 40, 60, 80, 100}, {1.3, 1.1, 0.9, 0.7, 0.5}};
    const Line line = lineOf(p);
    QCOMPARE(line.rss, 0.0);
    QCOMPARE(line.r2, 1.0);
    CHECK_DIGITS(line.slope, -0.01, 14);
    const Interval interval = meanInterval(line, 70, 0.95);
    QCOMPARE(interval.low, interval.high);
    for (const PointDiagnostics& point : diagnose(line, p.x, p.y))
        QVERIFY(!point.studentised && !point.cook);
    const auto bend = curvature(p.x, p.y);
    QVERIFY(bend);
    QCOMPARE(bend->t, 0.0);
    QCOMPARE(bend->p, 1.0);
    QCOMPARE(bend->coefficient, 0.0);
}

void TstLine::constantSpeed() {
    const Line line = lineOf({{20, 40, 60}, {0.7, 0.7, 0.7}});
    QCOMPARE(line.slope, 0.0);
    CHECK_DIGITS(line.intercept, 0.7, 15);
    QCOMPARE(line.r2, 1.0);
    QCOMPARE(line.rss, 0.0);
}

// Anscombe 4: one point carries the whole slope, so nothing can be said about it (R: NaN).
void TstLine::loneFarPoint() {
    const Points p = anscombe(4);
    const auto points = diagnose(lineOf(p), p.x, p.y);
    CHECK_DIGITS(points[7].leverage, 1.0, 12);
    QVERIFY(!points[7].studentised && !points[7].cook);
    QVERIFY(points[0].studentised && points[0].cook);
}

void TstLine::perfectParabola() {
    Points p;
    for (int i = 0; i < 6; ++i) {
        p.x.push_back(20 + 10 * i);
        p.y.push_back(2 - 0.03125 * p.x.back() + 0.0001220703125 * p.x.back() * p.x.back());
    }
    const auto bend = curvature(p.x, p.y);
    QVERIFY(bend);
    CHECK_DIGITS(bend->coefficient, 0.0001220703125, 11);
    QCOMPARE(bend->t, std::numeric_limits<double>::infinity());
    QCOMPARE(bend->p, 0.0);
}

QTEST_APPLESS_MAIN(TstLine)
#include "tst_line.moc"
