// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/twolines.h"
#include "tests/stats/checking.h"
#include "tests/stats/datasets.h"

#include <cmath>
#include <limits>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

TwoLines both(const Points& first, const Points& second, Variances variances = Variances::Pooled) {
    return {lineOf(first), lineOf(second), variances};
}

double dSe(const TwoLines& lines) {
    return std::sqrt(lines.s2() * (1 / lines.first().sxx + 1 / lines.second().sxx));
}

/// Whether x lies in a stretch, and on which side.
int signAt(const std::vector<Stretch>& stretches, double x) {
    for (const Stretch& stretch : stretches)
        if (x > stretch.from && x < stretch.to)
            return stretch.sign;
    return 0;
}

/// Every statement of differs() must be the statement of the interval at that x.
bool statementsAgree(const TwoLines& lines, bool simultaneous) {
    const std::vector<Stretch> stretches = lines.differs(0.95, simultaneous);
    double end = -infinity;
    for (const Stretch& stretch : stretches) {
        if (!(stretch.from >= end) || !(stretch.to > stretch.from) || std::abs(stretch.sign) != 1)
            return false;
        end = stretch.to;
    }
    for (double x = -900; x <= 1000; x += 7.3) {
        const Interval i = simultaneous ? lines.band(x, 0.95) : lines.interval(x, 0.95);
        const int expected = i.low > 0 ? 1 : i.high < 0 ? -1 : 0;
        if (signAt(stretches, x) != expected)
            return false;
    }
    return true;
}

} // namespace

class TstTwoLines : public QObject {
    Q_OBJECT

private slots:
    void soap();
    void toothGrowth();
    void motorCars();
    void inventedSessions();
    void agreesWithR();
    void statementsAreThoseOfTheIntervals();
    void crossingIsFiellers();
    void outsideTheRoots();
    void betweenTheRoots();
    void nowhere();
    void everywhereWithoutScatter();
    void sameLineWithoutScatter();
    void crossingWithoutScatter();
    void slopesAtTheEdge();
    void parallelLines();
    void farFromZero();
    void sumOfVariances();
    void dayNoiseWidens();
    void perfectLinesTests();
    void oneLineOfTwoPoints();
    void separateNeedsNoPooling();
    void ratioOfVariances();
    void clipped();
};

// Kutner et al., ch. 8: F 22.65 and 1.88 in the book, more digits by R (published-values.md 10.4).
void TstTwoLines::soap() {
    const TwoLines lines = both(soapLine1(), soapLine2());
    CHECK_WITHIN(lines.second().intercept, 7.574465, 5.1e-7);
    CHECK_WITHIN(lines.second().slope, 1.322049, 5.1e-7);
    CHECK_WITHIN(-lines.c(), 90.390863, 5.1e-7);
    CHECK_WITHIN(-lines.d(), -0.176661, 5.1e-7);
    QCOMPARE(lines.df(), 23.0);
    CHECK_WITHIN(lines.s2(), 430.611171, 5.1e-7);
    CHECK_WITHIN(lines.first().s2(), 492.522380, 5.1e-7);
    CHECK_WITHIN(lines.second().s2(), 350.126598, 5.1e-7);
    const FTest parallel = lines.parallel(), coincident = lines.coincident();
    CHECK_WITHIN(parallel.f, 1.88017, 5.1e-6);
    CHECK_WITHIN(parallel.p, 0.18355, 5.1e-6);
    CHECK_WITHIN(coincident.f, 22.64653, 5.1e-6);
    CHECK_WITHIN(coincident.p, 3.67e-06, 5.1e-9);
    QCOMPARE(coincident.df1, 2.0);
    QCOMPARE(coincident.df2, 23.0);
    CHECK_WITHIN(lines.varianceRatio()->f, 1.4067, 5.1e-5);
}

// R's ToothGrowth, orange juice less ascorbic acid (published-values.md 10.5).
void TstTwoLines::toothGrowth() {
    const TwoLines lines = both(toothVc(), toothOj());
    CHECK_WITHIN(lines.c(), 8.255, 5.1e-9);
    CHECK_WITHIN(lines.d(), -3.90428571, 5.1e-9);
    CHECK_WITHIN(dSe(lines), 1.69058159, 5.1e-9);
    CHECK_WITHIN(std::sqrt(lines.variance(0).value), 2.23642923, 5.1e-9);
    CHECK_WITHIN(lines.s2(), 16.67205230, 5.1e-9);
    QCOMPARE(lines.df(), 56.0);
    CHECK_WITHIN(lines.difference(0.5), 6.302857143, 5.1e-10);
    CHECK_WITHIN(std::sqrt(lines.variance(0.5).value), 1.543282786, 5.1e-10);
    CHECK_WITHIN(lines.difference(1), 4.350714286, 5.1e-10);
    CHECK_WITHIN(std::sqrt(lines.variance(1).value), 1.091265723, 5.1e-10);
    CHECK_WITHIN(lines.difference(2), 0.446428571, 5.1e-10);
    CHECK_WITHIN(std::sqrt(lines.variance(2).value), 1.759613106, 5.1e-10);
    CHECK_WITHIN(lines.parallel().f, 5.33348, 5.1e-6);
    CHECK_WITHIN(lines.parallel().p, 0.024631, 5.1e-7);
    CHECK_WITHIN(lines.coincident().f, 8.82525, 5.1e-6);
    CHECK_WITHIN(lines.coincident().p, 0.00046596, 5.1e-9);
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(2));
    QCOMPARE(apart[0].from, -infinity);
    CHECK_WITHIN(apart[0].to, 1.50070046, 5.1e-9);
    QCOMPARE(apart[0].sign, 1);
    CHECK_WITHIN(apart[1].from, 8.48788464, 5.1e-9);
    QCOMPARE(apart[1].sign, -1);
    const auto crossing = lines.crossing(0.95);
    CHECK_WITHIN(crossing->x, 2.11434321, 5.1e-9);
    CHECK_WITHIN(crossing->interval->low, 1.50070046, 5.1e-9);
    CHECK_WITHIN(crossing->interval->high, 8.48788464, 5.1e-9);
    // Seen only up to a dose of 2: more growth by juice below 1.5, nothing shown above.
    const auto seen = clip(apart, 0.5, 2);
    QCOMPARE(seen.size(), std::size_t(1));
    QCOMPARE(seen[0].from, 0.5);
}

// R's mtcars, manual less automatic (published-values.md 10.5).
void TstTwoLines::motorCars() {
    const TwoLines lines = both(carsAutomatic(), carsManual());
    CHECK_WITHIN(lines.c(), 14.87842250, 5.1e-9);
    CHECK_WITHIN(lines.d(), -5.29836049, 5.1e-9);
    CHECK_WITHIN(dSe(lines), 1.44469930, 5.1e-9);
    CHECK_WITHIN(lines.s2(), 6.71455950, 5.1e-9);
    CHECK_WITHIN(lines.parallel().f, 13.45018, 5.1e-6);
    CHECK_WITHIN(lines.parallel().p, 0.0010171, 5.1e-8);
    CHECK_WITHIN(lines.coincident().f, 6.72526, 5.1e-6);
    CHECK_WITHIN(lines.coincident().p, 0.004119, 5.1e-7);
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(2));
    CHECK_WITHIN(apart[0].to, 2.20350627, 5.1e-9);
    CHECK_WITHIN(apart[1].from, 3.40868833, 5.1e-9);
    QVERIFY(apart[0].sign == 1 && apart[1].sign == -1);
    CHECK_WITHIN(lines.crossing(0.95)->x, 2.80811820, 5.1e-9);
}

// The invented ladders (published-values.md 10.4 and 10.5).
void TstTwoLines::inventedSessions() {
    const TwoLines lines = both(sessionA(), sessionB());
    CHECK_WITHIN(lines.c(), 0.046456140, 5.1e-10);
    CHECK_WITHIN(lines.d(), 0.000178947368, 5.1e-13);
    CHECK_WITHIN(std::sqrt(lines.variance(0).value), 0.013172296, 5.1e-10);
    CHECK_WITHIN(dSe(lines), 0.000147117581, 5.1e-13);
    CHECK_WITHIN(lines.s2(), 5.14035088e-05, 5.1e-14);
    CHECK_WITHIN(lines.parallel().f, 1.47952, 5.1e-6);
    CHECK_WITHIN(lines.parallel().p, 0.25852, 5.1e-6);
    CHECK_WITHIN(lines.coincident().f, 111.70819, 5.1e-6);
    CHECK_WITHIN(lines.coincident().p, 1.4282e-06, 5.1e-11);
    const double rows[3][5] = {{60, 0.057192982, 0.005537305, 0.044423935, 0.069962030},
                               {80, 0.060771930, 0.004204235, 0.051076946, 0.070466913},
                               {100, 0.064350877, 0.004690875, 0.053533700, 0.075168055}};
    for (const auto& row : rows) {
        CHECK_WITHIN(lines.difference(row[0]), row[1], 5.1e-10);
        CHECK_WITHIN(std::sqrt(lines.variance(row[0]).value), row[2], 5.1e-10);
        CHECK_WITHIN(lines.interval(row[0], 0.95).low, row[3], 5.1e-10);
        CHECK_WITHIN(lines.interval(row[0], 0.95).high, row[4], 5.1e-10);
    }
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(1));
    CHECK_WITHIN(apart[0].from, -31.81427603, 5.1e-9);
    CHECK_WITHIN(apart[0].to, 467.49290873, 5.1e-9);
    QCOMPARE(apart[0].sign, 1);
    const auto crossing = lines.crossing(0.95);
    CHECK_WITHIN(crossing->x, -259.60784314, 5.1e-9);
    QVERIFY(!crossing->interval); // the slopes are not told apart
}

void TstTwoLines::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: no pair of lines was compared with lm, anova and uniroot");
    std::vector<std::pair<Points, Points>> pairs = madePairs();
    pairs.emplace_back(soapLine1(), soapLine2());
    pairs.emplace_back(toothVc(), toothOj());
    pairs.emplace_back(carsAutomatic(), carsManual());
    pairs.emplace_back(sessionA(), sessionB());
    QByteArray input;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const QByteArray id = "s" + QByteArray::number(qulonglong(i));
        appendPoints(input, id + " 1", pairs[i].first.x, pairs[i].first.y);
        appendPoints(input, id + " 2", pairs[i].second.x, pairs[i].second.y);
    }
    const QMap<QString, double> r = runR("twolines.R", {}, input);
    int outside = 0, between = 0, none = 0, welchRoots = 0;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const TwoLines lines = both(pairs[i].first, pairs[i].second);
        const TwoLines welch = both(pairs[i].first, pairs[i].second, Variances::Separate);
        const QString id = "s" + QString::number(i) + ".";
        const auto same = [&](const QString& figure, double found, double digits = 9,
                              double scale = 0) {
            QVERIFY2(r.contains(id + figure), qPrintable("R gave no " + id + figure));
            const double expected = r.value(id + figure);
            const bool near = std::abs(found - expected) <= scale * std::pow(10, -digits);
            QVERIFY2(near || alike(found, expected, digits),
                     (id + figure).toUtf8() + ": " + unlike(found, expected));
        };
        same("c", lines.c());
        same("d", lines.d());
        same("dSe", dSe(lines));
        same("cSe", std::sqrt(lines.variance(0).value));
        same("s2", lines.s2());
        same("df", lines.df());
        same("parallelF", lines.parallel().f);
        same("parallelP", lines.parallel().p);
        same("coincidentF", lines.coincident().f);
        same("coincidentP", lines.coincident().p);
        same("ratioF", lines.varianceRatio()->f);
        same("ratioP", lines.varianceRatio()->p);
        const Variance noise{2 * 0.015 * 0.015, 7};
        for (const QString k : {"1", "2", "3", "4"}) {
            const double x = r.value(id + "at" + k);
            const double size = std::sqrt(lines.variance(x).value);
            same("D" + k, lines.difference(x), 9, size);
            same("var" + k, lines.variance(x).value);
            same("low" + k, lines.interval(x, 0.95).low, 9, size);
            same("high" + k, lines.interval(x, 0.95).high, 9, size);
            same("bandHigh" + k, lines.band(x, 0.95).high, 9, size);
            same("welchVar" + k, welch.variance(x).value);
            same("welchDf" + k, welch.variance(x).df);
            same("welchLow" + k, welch.interval(x, 0.95).low, 9, size);
            same("welchBandLow" + k, welch.band(x, 0.95).low, 8, size);
            same("noisyDf" + k, lines.variance(x, noise).df);
            same("noisyWelchDf" + k, welch.variance(x, noise).df);
            same("noisyHigh" + k, lines.interval(x, 0.95, noise).high, 9, size);
            same("noisyBandHigh" + k, lines.band(x, 0.95, noise).high, 8, size);
            same("noisyWelchHigh" + k, welch.interval(x, 0.95, noise).high, 9, size);
        }
        for (const bool simultaneous : {false, true}) {
            const QString kind = simultaneous ? "band" : "point";
            const auto apart = lines.differs(0.95, simultaneous);
            const bool wide = r.value(id + kind + "A") > 0;
            if (r.value(id + kind + "Disc") <= 0) {
                QVERIFY(!wide && apart.empty());
                ++none;
            } else if (wide) {
                QCOMPARE(apart.size(), std::size_t(2));
                same(kind + "Root1", apart[0].to, 8, 100);
                same(kind + "Root2", apart[1].from, 8, 100);
                ++outside;
            } else {
                QCOMPARE(apart.size(), std::size_t(1));
                same(kind + "Root1", apart[0].from, 8, 100);
                same(kind + "Root2", apart[0].to, 8, 100);
                ++between;
            }
        }
        const auto crossing = lines.crossing(0.95);
        same("crossing", crossing->x, 8, 100);
        QCOMPARE(crossing->interval.has_value(), r.value(id + "crossingG") < 1);
        // The finite ends of ours that lie in R's window are the roots that R found there.
        std::vector<double> ends;
        const double middle =
            (lines.first().xMean * lines.first().n + lines.second().xMean * lines.second().n) /
            (lines.first().n + lines.second().n);
        for (const Stretch& stretch : welch.differs(0.95))
            for (const double end : {stretch.from, stretch.to})
                if (std::abs(end - middle) < 400)
                    ends.push_back(end);
        QCOMPARE(double(ends.size()), r.value(id + "welchRoots"));
        for (std::size_t k = 0; k < ends.size(); ++k, ++welchRoots)
            same("welchRoot" + QString::number(k + 1), ends[k], 8, 100);
    }
    QVERIFY(outside > 10 && between > 5 && none > 5 && welchRoots > 30);
}

void TstTwoLines::statementsAreThoseOfTheIntervals() {
    for (const auto& [first, second] : madePairs())
        for (const Variances variances : {Variances::Pooled, Variances::Separate})
            for (const bool simultaneous : {false, true})
                QVERIFY(statementsAgree(both(first, second, variances), simultaneous));
}

// Fieller 1954 for -c/d with Var c, Var d and their covariance, written out.
void TstTwoLines::crossingIsFiellers() {
    const TwoLines lines = both(carsAutomatic(), carsManual());
    const Line &a = lines.first(), &b = lines.second();
    const double vcc = lines.variance(0).value, vdd = dSe(lines) * dSe(lines);
    const double vcd = -lines.s2() * (a.xMean / a.sxx + b.xMean / b.sxx);
    const double t2 = std::pow(tCritical(0.95, lines.df()), 2);
    const double qa = lines.d() * lines.d() - t2 * vdd, qb = lines.c() * lines.d() - t2 * vcd;
    const double qc = lines.c() * lines.c() - t2 * vcc;
    const double root = std::sqrt(qb * qb - qa * qc);
    const auto interval = lines.crossing(0.95)->interval;
    CHECK_DIGITS(interval->low, (-qb - root) / qa, 10);
    CHECK_DIGITS(interval->high, (-qb + root) / qa, 10);
}

namespace {

/// A line by hand: its mean point, slope, spread of x and scatter.
Line handmade(int n, double xMean, double yMean, double slope, double sxx, double s2) {
    Line line;
    line.n = n;
    line.distinct = n;
    line.xMean = xMean;
    line.yMean = yMean;
    line.slope = slope;
    line.intercept = yMean - slope * xMean;
    line.sxx = sxx;
    line.rss = s2 * (n - 2);
    line.xMin = xMean - 30;
    line.xMax = xMean + 30;
    return line;
}

} // namespace

void TstTwoLines::outsideTheRoots() {
    const TwoLines lines(handmade(6, 80, 0.8, -0.012, 4000, 1e-4),
                         handmade(6, 80, 0.8, -0.008, 4000, 1e-4));
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(2));
    QVERIFY(apart[0].sign == -1 && apart[1].sign == 1);
    CHECK_DIGITS(80 - apart[0].to, apart[1].from - 80, 12); // no difference at the mean: symmetric
    QVERIFY(statementsAgree(lines, false));
}

void TstTwoLines::betweenTheRoots() {
    const TwoLines lines(handmade(6, 80, 0.8, -0.0100, 4000, 1e-4),
                         handmade(6, 80, 0.7, -0.0101, 4000, 1e-4));
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(1));
    QCOMPARE(apart[0].sign, -1);
    QVERIFY(apart[0].from < 80 && apart[0].to > 80);
    QVERIFY(!lines.crossing(0.95)->interval);
    QVERIFY(statementsAgree(lines, true));
}

void TstTwoLines::nowhere() {
    const TwoLines lines(handmade(6, 80, 0.80, -0.0100, 4000, 1e-4),
                         handmade(6, 80, 0.801, -0.0101, 4000, 1e-4));
    QVERIFY(lines.differs(0.95).empty());
    QVERIFY(lines.differs(0.95, true).empty());
}

void TstTwoLines::everywhereWithoutScatter() {
    const Points a{{20, 40, 60}, {1.5, 1.0, 0.5}}, b{{20, 40, 60}, {1.75, 1.25, 0.75}};
    for (const Variances variances : {Variances::Pooled, Variances::Separate}) {
        const auto apart = both(a, b, variances).differs(0.95);
        QCOMPARE(apart.size(), std::size_t(1));
        QCOMPARE(apart[0].from, -infinity);
        QCOMPARE(apart[0].to, infinity);
        QCOMPARE(apart[0].sign, 1);
        QVERIFY(!both(a, b, variances).crossing(0.95));
        QCOMPARE(both(a, b, variances).interval(40, 0.95), (Interval{0.25, 0.25}));
        QCOMPARE(both(a, b, variances).band(40, 0.95), (Interval{0.25, 0.25}));
    }
}

void TstTwoLines::sameLineWithoutScatter() {
    const Points a{{20, 40, 60}, {1.3, 1.1, 0.9}}, b{{30, 50, 70, 90}, {1.2, 1.0, 0.8, 0.6}};
    QVERIFY(both(a, b).differs(0.95).empty());
    QVERIFY(both(a, b, Variances::Separate).differs(0.95).empty());
}

void TstTwoLines::crossingWithoutScatter() {
    const TwoLines lines = both({{0, 50, 100}, {1, 0.75, 0.5}}, {{0, 50, 100}, {1.5, 0.75, 0}});
    const auto apart = lines.differs(0.95);
    QCOMPARE(apart.size(), std::size_t(2));
    CHECK_DIGITS(apart[0].to, 50.0, 14);
    QVERIFY(apart[0].sign == 1 && apart[1].sign == -1);
    CHECK_DIGITS(lines.crossing(0.95)->interval->high, 50.0, 14);
}

// The leading coefficient A is (all but) zero: one root goes out to infinity, the other stays.
void TstTwoLines::slopesAtTheEdge() {
    const double t = tCritical(0.95, 8);
    const double edge = t * std::sqrt(2 * 1e-4 / 4000);
    for (const double factor : {1 - 1e-15, 1.0, 1 + 1e-15, 1 - 1e-9, 1 + 1e-9}) {
        const TwoLines lines(handmade(6, 80, 0.8, -0.010, 4000, 1e-4),
                             handmade(6, 80, 0.9, -0.010 + edge * factor, 4000, 1e-4));
        const auto apart = lines.differs(0.95);
        QVERIFY(!apart.empty());
        for (const Stretch& stretch : apart)
            QVERIFY(!std::isnan(stretch.from) && !std::isnan(stretch.to));
        // D = 0.1 + edge z: from z = -(0.01 - q0) / (0.2 edge) on, with q0 = t^2 s^2 (1/3).
        const double end = 80 - (0.01 - t * t * 1e-4 / 3) / (0.2 * edge);
        QVERIFY(signAt(apart, end + 1e-3) == 1);
        QVERIFY(signAt(apart, end - 1e-3) == 0);
        QVERIFY(signAt(apart, 1e4) == 1);
    }
    // Equal at the mean as well: told apart nowhere at the edge.
    const TwoLines meeting(handmade(6, 80, 0.8, -0.010, 4000, 1e-4),
                           handmade(6, 80, 0.8, -0.010 + edge * (1 - 1e-9), 4000, 1e-4));
    QVERIFY(meeting.differs(0.95).empty());
}

void TstTwoLines::parallelLines() {
    const TwoLines lines(handmade(6, 80, 0.8, -0.01, 4000, 1e-4),
                         handmade(8, 90, 0.75, -0.01, 5000, 1e-4));
    QCOMPARE(lines.d(), 0.0);
    QVERIFY(!lines.crossing(0.95));
    QCOMPARE(lines.parallel().f, 0.0);
    QCOMPARE(lines.parallel().p, 1.0);
    QCOMPARE(lines.differs(0.95).size(), std::size_t(1));
    const TwoLines welch(lines.first(), lines.second(), Variances::Separate);
    QCOMPARE(welch.differs(0.95).size(), std::size_t(1));
    QVERIFY(!welch.crossing(0.95));
}

void TstTwoLines::farFromZero() {
    Points a = sessionA(), b = sessionB();
    const TwoLines near = both(a, b);
    for (double& x : a.x)
        x += 1e6;
    for (double& x : b.x)
        x += 1e6;
    const TwoLines far = both(a, b);
    CHECK_DIGITS(far.differs(0.95)[0].from - 1e6, near.differs(0.95)[0].from, 7);
    CHECK_DIGITS(far.variance(1e6 + 80).value, near.variance(80).value, 12);
    CHECK_DIGITS(far.coincident().f, near.coincident().f, 11);
    CHECK_DIGITS(far.interval(1e6 + 80, 0.95).low, near.interval(80, 0.95).low, 10);
}

// Satterthwaite 1946: (v1 + v2)^2 / (v1^2/f1 + v2^2/f2).
void TstTwoLines::sumOfVariances() {
    const Variance v = sum({3, 6}, {1, 4});
    QCOMPARE(v.value, 4.0);
    CHECK_DIGITS(v.df, 16 / (9.0 / 6 + 1.0 / 4), 14);
    const Variance known = sum({3, 6}, {1, infinity});
    CHECK_DIGITS(known.df, 16 / (9.0 / 6), 14);
    QCOMPARE(sum({3, infinity}, {1, infinity}).df, infinity);
    QCOMPARE(sum({3, 6}, {0, 0}).df, 6.0);
    QCOMPARE(sum({0, 0}, {3, 6}).df, 6.0);
    QCOMPARE(sum({0, 4}, {3, infinity}).df, infinity);
    QCOMPARE(sum({0, 4}, {0, 0}).df, 4.0);
    QCOMPARE(sum({0, 4}, {0, 0}).value, 0.0);
    const Variance left = sum(sum({3, 6}, {1, 4}), {2, 9});
    const Variance right = sum({3, 6}, sum({1, 4}, {2, 9}));
    CHECK_DIGITS(left.df, right.df, 14);
    CHECK_DIGITS(sum({1e-300, 3}, {1e-300, 3}).df, 6.0, 14);
}

void TstTwoLines::dayNoiseWidens() {
    const TwoLines lines = both(sessionA(), sessionB());
    const Variance known{2 * 0.02 * 0.02, infinity}, estimated{2 * 0.02 * 0.02, 5};
    const Interval bare = lines.interval(80, 0.95);
    const Interval withKnown = lines.interval(80, 0.95, known);
    const Interval withEstimated = lines.interval(80, 0.95, estimated);
    QVERIFY(withKnown.high > bare.high && withEstimated.high > withKnown.high);
    // Where the day is all of it, z and t of its own df: 1.959964 and t(0.975, 5) = 2.570582.
    const Variance big{1, infinity}, bigFew{1, 5};
    CHECK_WITHIN(lines.interval(80, 0.95, big).high - lines.difference(80), 1.959964, 5e-5);
    CHECK_WITHIN(lines.interval(80, 0.95, bigFew).high - lines.difference(80), 2.570582, 1e-4);
    QVERIFY(lines.band(80, 0.95, known).high > withKnown.high);
    QCOMPARE(lines.interval(80, 0.95, Variance{}), bare);
    // Two perfect lines still move from day to day.
    const TwoLines perfect =
        both({{20, 40, 60}, {1.5, 1, 0.5}}, {{20, 40, 60}, {1.75, 1.25, 0.75}});
    CHECK_DIGITS(perfect.interval(40, 0.95, big).high, 0.25 + tCritical(0.95, infinity), 13);
}

void TstTwoLines::perfectLinesTests() {
    const TwoLines apart = both({{20, 40, 60}, {1.5, 1, 0.5}}, {{20, 40, 60}, {1.75, 1.25, 0.75}});
    QCOMPARE(apart.parallel().f, 0.0);
    QCOMPARE(apart.parallel().p, 1.0);
    QCOMPARE(apart.coincident().f, infinity);
    QCOMPARE(apart.coincident().p, 0.0);
    QCOMPARE(apart.varianceRatio()->f, 1.0);
    QCOMPARE(apart.varianceRatio()->p, 1.0);
    const TwoLines one = both(sessionA(), {{20, 40, 60}, {1.75, 1.25, 0.75}});
    QCOMPARE(one.varianceRatio()->f, infinity);
    QCOMPARE(one.varianceRatio()->p, 0.0);
    QVERIFY(statementsAgree(one, false));
    const TwoLines oneWelch(one.first(), one.second(), Variances::Separate);
    QVERIFY(statementsAgree(oneWelch, false));
    CHECK_DIGITS(oneWelch.variance(50).df, one.first().df(), 14);
}

void TstTwoLines::oneLineOfTwoPoints() {
    const TwoLines lines = both(sessionA(), {{40, 100}, {1.3, 0.7}});
    QCOMPARE(lines.df(), 4.0);
    CHECK_DIGITS(lines.s2(), lines.first().s2(), 14);
    QVERIFY(!lines.varianceRatio());
    QVERIFY(statementsAgree(lines, false));
}

void TstTwoLines::separateNeedsNoPooling() {
    const TwoLines lines = both(sessionA(), sessionB(), Variances::Separate);
    const double v1 = std::pow(lines.first().seAt(80), 2),
                 v2 = std::pow(lines.second().seAt(80), 2);
    CHECK_DIGITS(lines.variance(80).value, v1 + v2, 13);
    CHECK_DIGITS(lines.variance(80).df, (v1 + v2) * (v1 + v2) / (v1 * v1 / 4 + v2 * v2 / 4), 13);
}

void TstTwoLines::ratioOfVariances() {
    const TwoLines lines = both(sessionB(), sessionA());
    const FTest test = *lines.varianceRatio();
    // s of B over s of A (published-values.md 10.3), squared.
    CHECK_DIGITS(test.f, std::pow(0.0089148014 / 0.0048304589, 2), 7);
    QVERIFY(test.p > 0 && test.p < 1);
    const FTest turned = *both(sessionA(), sessionB()).varianceRatio();
    QCOMPARE(turned.f, test.f);
    QCOMPARE(turned.p, test.p);
}

void TstTwoLines::clipped() {
    const std::vector<Stretch> all{{-infinity, 50, 1}, {90, infinity, -1}};
    const auto cut = clip(all, 40, 120);
    QCOMPARE(cut.size(), std::size_t(2));
    QCOMPARE(cut[0].from, 40.0);
    QCOMPARE(cut[1].to, 120.0);
    QCOMPARE(clip(all, 50, 90).size(), std::size_t(0));
    QCOMPARE(clip(all, 60, 100).size(), std::size_t(1));
    QCOMPARE(clip({}, 0, 1).size(), std::size_t(0));
}

QTEST_APPLESS_MAIN(TstTwoLines)
#include "tst_twolines.moc"
