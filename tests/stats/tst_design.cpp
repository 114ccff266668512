// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/design.h"
#include "core/stats/inverse.h"
#include "tests/support/rscript.h"

#include <QElapsedTimer>
#include <QTest>

#include <cmath>
#include <limits>
#include <random>

using namespace slopebook;
using namespace slopebook::stats;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The line of the R script: 1.6 - 0.011 x, reached at y = 0.17.
constexpr double intercept = 1.6, slope = -0.011, y = 0.17, x0 = (y - intercept) / slope;

std::vector<std::int64_t> grams(const std::vector<double>& kg) {
    std::vector<std::int64_t> result;
    for (const double x : kg)
        result.push_back(std::llround(x * 1000));
    return result;
}

struct Case {
    const char* name;
    std::vector<double> x;
};
const std::vector<Case>& cases() {
    static const std::vector<Case> all{{"gym", {40, 50, 60, 70, 80, 90, 100}},
                                       {"odd", {20, 22.5, 31, 47, 60.8, 61, 88}},
                                       {"light", {20, 22.5, 25}}};
    return all;
}

DesignCriterion inverseCriterion(double s, double u, double knownDf, int n) {
    const auto scatter = expectedScatter(s, knownDf, n - 2, 0.95);
    return [=](const Spread& x) { return inverseHalfWidth(slope, x0, u * u, x, *scatter); };
}

} // namespace

class TestDesign : public QObject {
    Q_OBJECT
private slots:
    void the_best_design_is_the_best_of_all();
    void mixed_plates_come_within_a_thousandth();
    void the_formula_is_the_interval_of_the_expected_line();
    void expected_half_width_agrees_with_simulation();
    void expected_change_agrees_with_simulation();
    void scatter_known_and_own();
    void two_points_with_an_outside_error();
    void two_extremes_are_the_best_for_a_far_target();
    void nothing_where_nothing_can_be();
    void eight_steps_are_quick();
};

void TestDesign::the_best_design_is_the_best_of_all() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: designs are not compared with trying every one");
    const auto r = tests::runR(QStringLiteral("design.R"));
    const std::vector<double> earlierX{40, 50, 60, 70, 80}, earlierY{1.16, 1.05, .94, .83, .72};
    const Line earlier = *fitLine(earlierX, earlierY);
    int compared = 0;
    for (const Case& c : cases())
        for (int n = 2; n <= 6; ++n) {
            const auto check = [&](const char* what, const DesignCriterion& criterion) {
                const auto key = QStringLiteral("%1 %2 %3")
                                     .arg(QLatin1String(c.name), QLatin1String(what))
                                     .arg(n);
                QVERIFY2(r.contains(key), qPrintable(key));
                // 200 g is the step of the odd loads, so the grid stays exact
                const auto best = bestDesign(grams(c.x), 0.001, n, criterion);
                const double found = best ? best->criterion : infinite;
                if (std::isinf(r[key]))
                    QVERIFY2(std::isinf(found), qPrintable(key));
                else
                    QVERIFY2(tests::digitsAgreed(found, r[key]) > 10, qPrintable(key));
                ++compared;
            };
            check("known", inverseCriterion(0.02, 0, infinite, n));
            if (n > 2)
                check("own", inverseCriterion(0.01, 0.02, 0, n));
            const auto scatter = expectedScatter(0.02, infinite, n - 2, 0.95);
            check("change", [&](const Spread& x) {
                return scatter->t * std::max(differenceSe(45, earlier, x, *scatter),
                                             differenceSe(70, earlier, x, *scatter));
            });
        }
    QCOMPARE(compared, 3 * (5 + 4 + 5));
}

void TestDesign::mixed_plates_come_within_a_thousandth() {
    // Irregular loads on a coarse grid against every set of five, tried one by one.
    std::mt19937 random(5);
    for (int round = 0; round < 20; ++round) {
        std::vector<std::int64_t> x;
        for (int i = 0; i < 12; ++i)
            x.push_back(std::uniform_int_distribution<std::int64_t>(20'000, 110'000)(random));
        std::sort(x.begin(), x.end());
        const auto scatter = expectedScatter(0.02, infinite, 3, 0.95);
        for (const double target : {130.0, 70.0}) {
            const DesignCriterion criterion = [&](const Spread& s) {
                return inverseHalfWidth(slope, target, 0, s, *scatter);
            };
            double least = infinite;
            for (std::size_t a = 0; a < x.size(); ++a)
                for (std::size_t b = a; b < x.size(); ++b)
                    for (std::size_t c = b; c < x.size(); ++c)
                        for (std::size_t d = c; d < x.size(); ++d)
                            for (std::size_t e = d; e < x.size(); ++e) {
                                std::vector<double> kg;
                                for (const std::size_t i : {a, b, c, d, e})
                                    kg.push_back(static_cast<double>(x[i]) / 1000);
                                least = std::min(least, criterion(spread(kg)));
                            }
            const auto best = bestDesign(x, 0.001, 5, criterion, 2000);
            QVERIFY(best->criterion >= least * (1 - 1e-12));
            QVERIFY2(best->criterion <= least * 1.001,
                     qPrintable(QString::number(best->criterion / least)));
        }
    }
}

void TestDesign::the_formula_is_the_interval_of_the_expected_line() {
    // A line whose points lie on the expected line up to residuals of exactly s: the interval that
    // inverse.h makes of it has the half-width of the formula with that s.
    const std::vector<double> x{40, 50, 60, 70, 80};
    std::vector<double> v;
    const double e[] = {1, -2, 0, 2, -1}; // orthogonal to 1 and to x
    for (std::size_t i = 0; i < x.size(); ++i)
        v.push_back(intercept + slope * x[i] + 0.01 * e[i]);
    const Line line = *fitLine(x, v);
    QVERIFY(std::abs(line.slope - slope) < 1e-12);
    const Inverse inverse = inversePrediction(line, y, 0.0016, 0.95);
    const ExpectedScatter scatter{tCritical(0.95, 3), line.s(), 3};
    const double half = inverseHalfWidth(slope, x0, 0.0016, spread(x), scatter);
    QVERIFY(tests::digitsAgreed(half, (inverse.interval.high - inverse.interval.low) / 2) > 10);
}

void TestDesign::expected_half_width_agrees_with_simulation() {
    std::mt19937_64 random(17);
    std::normal_distribution<double> z;
    for (const std::vector<double>& x : {std::vector<double>{30, 45, 60, 75, 90, 100},
                                         {40, 40, 40, 100, 100, 100},
                                         {30, 60, 80, 95}}) {
        const int rounds = 20'000;
        const double s = 0.008;
        const int n = static_cast<int>(x.size());
        double sum = 0;
        int finite = 0;
        std::vector<double> v(x.size());
        for (int round = 0; round < rounds; ++round) {
            for (std::size_t i = 0; i < x.size(); ++i)
                v[i] = intercept + slope * x[i] + s * z(random);
            const Inverse inverse = inversePrediction(*fitLine(x, v), y, 0, 0.95);
            if (inverse.shape != Inverse::Shape::Bounded)
                continue;
            sum += (inverse.interval.high - inverse.interval.low) / 2;
            ++finite;
        }
        const double expected =
            inverseHalfWidth(slope, x0, 0, spread(x), *expectedScatter(s, 0, n - 2, 0.95));
        QCOMPARE(finite, rounds);
        QVERIFY2(std::abs(sum / finite / expected - 1) < 0.02,
                 qPrintable(QString::number(sum / finite / expected)));
    }
}

void TestDesign::expected_change_agrees_with_simulation() {
    std::mt19937_64 random(23);
    std::normal_distribution<double> z;
    const std::vector<double> earlierX{40, 60, 80, 100}, x{40, 55, 70, 85, 100};
    std::vector<double> v1(4), v2(5);
    const double s = 0.03;
    double sum = 0;
    const int rounds = 20'000;
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t i = 0; i < 4; ++i)
            v1[i] = intercept + slope * earlierX[i] + s * z(random);
        for (std::size_t i = 0; i < 5; ++i)
            v2[i] = intercept + 0.05 + slope * x[i] + s * z(random);
        const Line first = *fitLine(earlierX, v1), second = *fitLine(x, v2);
        const double s2 = (first.rss + second.rss) / 5;
        const double se = std::sqrt(s2 * (1.0 / 4 + std::pow(65 - first.xMean, 2) / first.sxx +
                                          1.0 / 5 + std::pow(65 - second.xMean, 2) / second.sxx));
        sum += tCritical(0.95, 5) * se;
    }
    // Both scatters still to come: all 5 df are new here.
    const auto scatter = expectedScatter(s, 0, 5, 0.95);
    const double expected =
        scatter->t * differenceSe(65, *fitLine(earlierX, v1), spread(x), *scatter);
    QVERIFY(std::abs(sum / rounds / expected - 1) < 0.01);
}

void TestDesign::scatter_known_and_own() {
    QVERIFY(!expectedScatter(0.02, 0, 0, 0.95)); // two points and nothing known: no interval
    const auto known = expectedScatter(0.02, infinite, 3, 0.95);
    QCOMPARE(known->s, 0.02);
    QVERIFY(std::abs(known->t - 1.959963985) < 1e-8);
    // c4 of control charts: 0.7979 for 1 df, 0.9213 for 3, 0.9400 for 4 (standard tables, c4(n), n
    // = df + 1)
    QVERIFY(std::abs(expectedScatter(1, 0, 1, 0.95)->s - 0.7979) < 5e-5);
    QVERIFY(std::abs(expectedScatter(1, 0, 3, 0.95)->s - 0.9213) < 5e-5);
    QVERIFY(std::abs(expectedScatter(1, 0, 4, 0.95)->s - 0.9400) < 5e-5);
    QVERIFY(std::abs(expectedScatter(1, 0, 3, 0.95)->t - 3.182446) < 1e-6);
    QCOMPARE(expectedScatter(1, 7, 0, 0.95)->s, 1.0);
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: pooled scatter is not compared with integrate()");
    const auto r = tests::runR(QStringLiteral("design.R"));
    for (const int before : {3, 12})
        for (const int fresh : {1, 4}) {
            const double expected = r[QStringLiteral("ratio %1 %2").arg(before).arg(fresh)];
            QVERIFY(tests::digitsAgreed(expectedScatter(1, before, fresh, 0.95)->s, expected) > 6);
        }
}

void TestDesign::two_points_with_an_outside_error() {
    // Published-values section 3: 40 kg at 1.00, 80 kg at 0.50, MVT 0.17, each speed with SD 0.03:
    // 1RM 106.4 kg, SE 4.2873 kg (delta method, which Fieller's becomes as t goes to 0).
    const std::vector<double> loads{40, 80};
    const ExpectedScatter scatter{1e-6, 0.03, infinite};
    const double se = inverseHalfWidth(-0.0125, 106.4, 0, spread(loads), scatter) / scatter.t;
    QVERIFY(std::abs(se - 4.2873) < 5e-5);
}

void TestDesign::two_extremes_are_the_best_for_a_far_target() {
    // Extrapolation beyond both ends with known scatter: points at the two ends only, the share of
    // the far end about (x0 - low) / (2 x0 - low - high) (Hoel and Levine 1964, from memory).
    std::vector<std::int64_t> x;
    for (std::int64_t load = 40; load <= 100; ++load)
        x.push_back(load);
    const auto scatter = expectedScatter(0.001, infinite, 6, 0.95);
    const auto best = bestDesign(
        x, 1, 8, [&](const Spread& s) { return inverseHalfWidth(slope, 110, 0, s, *scatter); });
    QCOMPARE(best->x, (std::vector<std::int64_t>{40, 100, 100, 100, 100, 100, 100, 100}));
    QCOMPARE(twoExtremes(x, 5), (std::vector<std::int64_t>{40, 40, 100, 100, 100}));
}

void TestDesign::nothing_where_nothing_can_be() {
    const std::vector<std::int64_t> one{40};
    QVERIFY(!bestDesign(one, 1, 4, inverseCriterion(0.02, 0, infinite, 4)));
    const std::vector<std::int64_t> near{40, 41};
    QVERIFY(!bestDesign(near, 1, 3, inverseCriterion(0.05, 0, 0, 3))); // g >= 1 for every set
}

void TestDesign::eight_steps_are_quick() {
    std::vector<std::int64_t> fine, mixed;
    for (int i = 0; i < 400; ++i) {
        fine.push_back(20'000 + 500 * i);
        mixed.push_back(20'000 + 500 * i + (i * i) % 487);
    }
    std::sort(mixed.begin(), mixed.end());
    QElapsedTimer clock;
    clock.start();
    QVERIFY(bestDesign(fine, 0.001, 8, inverseCriterion(0.02, 0, 0, 8)));
    QVERIFY(bestDesign(mixed, 0.001, 8, inverseCriterion(0.02, 0, 0, 8)));
    // Debug builds under sanitizers take several times a release's 0.1 s.
    QVERIFY2(clock.elapsed() < 20'000, qPrintable(QString::number(clock.elapsed())));
}

QTEST_APPLESS_MAIN(TestDesign)
#include "tst_design.moc"
