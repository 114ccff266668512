// SPDX-License-Identifier: GPL-3.0-or-later
// What readings are made of beside two lines: movement from day to day, an error that no test
// lessens, many looks at one baseline, chances before a test, a published SD as a prior.
#include "core/stats/allowance.h"
#include "core/stats/dunnett.h"
#include "core/stats/moderation.h"
#include "core/stats/moving.h"
#include "core/stats/power.h"
#include "tests/stats/checking.h"

#include <limits>
#include <random>
#include <stdexcept>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

struct MovingCase {
    std::vector<double> x, v;
    double y = 0;
    Scatter scatter;
    Moving moving;
    Variance ofY;
    double level = 0.95;
};

std::vector<MovingCase> movingCases() {
    std::mt19937_64 engine(7);
    std::normal_distribution<double> normal;
    std::vector<MovingCase> all;
    for (int i = 0; i < 24; ++i) {
        MovingCase c;
        for (int k = 0; k < 3 + i % 4; ++k) {
            c.x.push_back(30 + 12 * k);
            c.v.push_back(1.6 - 0.013 * c.x.back() + 0.015 * normal(engine));
        }
        c.y = 0.15 + 0.01 * i;
        c.scatter = {i % 5 == 4 ? 0 : 0.015 * 0.015, static_cast<double>(i % 3 == 0 ? 2 : 7)};
        c.moving = {.level = i % 4 == 3 ? 0 : 0.021 * 0.021,
                    .tilt = i % 6 == 5 ? 0 : 7e-8,
                    .pivot = 60,
                    .df = i % 2 == 0 ? 4 : 6.5};
        c.ofY = {i % 3 == 1 ? 0.04 * 0.04 : 0, i % 2 == 0 ? infinity : 8};
        c.level = i % 7 == 6 ? 0.90 : 0.95;
        all.push_back(c);
    }
    return all;
}

QByteArray row(const char* kind, const QByteArray& id, const std::vector<double>& values) {
    QByteArray text = QByteArray(kind) + " " + id;
    for (const double v : values)
        text += " " + (std::isinf(v) ? QByteArray("Inf") : QByteArray::number(v, 'g', 17));
    return text + "\n";
}

ChanceQuestion chance(const std::vector<double>& v) {
    return {.effect = v[0],
            .scatter = v[1],
            .scatterDf = v[2],
            .prior = v[3],
            .priorDf = v[4],
            .expected = v[5],
            .span = v[6]};
}

} // namespace

class TstUncertainty : public QObject {
    Q_OBJECT
private slots:
    void movingWithoutMovementIsFieller();
    void perfectLine();
    void unbounded();
    void factorIsTheRoot();
    void workedNumbers();
    void dunnettOfOneIsStudents();
    void manyLooksOnTheGrid();
    void allowanceWithoutSpan();
    void priorOfPublishedAlone();
    void ownRepeatsLeaveThePriorBehind();
    void othersTakenOut();
    void agreesWithR();
};

void TstUncertainty::movingWithoutMovementIsFieller() {
    for (const auto& c : movingCases()) {
        const auto line = *fitLine(c.x, c.v);
        const auto plain = inversePrediction(line, c.y, 0, c.scatter, c.level);
        const auto moved = inverseMoving(line, c.y, c.scatter, {}, {}, tOf(c.level));
        QCOMPARE(moved.shape, plain.shape);
        CHECK_DIGITS(moved.g, plain.g, 13);
        CHECK_DIGITS(moved.interval.low, plain.interval.low, 11);
        CHECK_DIGITS(moved.interval.high, plain.interval.high, 11);
    }
}

void TstUncertainty::perfectLine() {
    const std::vector<double> x{32, 64, 96}, v{1.25, 1.0, 0.75};
    const auto inverse = inverseMoving(*fitLine(x, v), 0.25, {0, 1}, {}, {}, tOf(0.95));
    QVERIFY((inverse.interval == Interval{160, 160}));
}

void TstUncertainty::unbounded() {
    // Tilt alone takes the slope: t^2 tilt >= slope^2.
    const std::vector<double> x{32, 64, 96}, v{1.25, 1.0, 0.75};
    const auto line = *fitLine(x, v);
    const Moving tilts{.level = 1e-4, .tilt = 1.0 / 128 / 128, .pivot = 60, .df = 4};
    QVERIFY(inverseMoving(line, 0.25, {0, 1}, tilts, {}, tOf(0.95)).shape !=
            Inverse::Shape::Bounded);
    // With a smaller t it is bounded again.
    QVERIFY(inverseMoving(line, 0.25, {0, 1}, tilts, {}, [](double) { return 0.9; }).shape ==
            Inverse::Shape::Bounded);
}

// By halving, over spans from none to wide, at the levels that are asked.
void TstUncertainty::factorIsTheRoot() {
    const auto below = [](double x) { return std::erfc(-x / std::sqrt(2.0)) / 2; };
    for (const double level : {0.80, 0.90, 0.95, 0.99}) {
        const double z = tCritical(level, infinity);
        for (double span = 0.001; span < 6; span *= 1.2) {
            double low = 0.3, high = 1.1;
            for (int i = 0; i < 60; ++i) {
                const double f = (low + high) / 2;
                (below(z * (f + span)) - below(-z * f) < level ? low : high) = f;
            }
            CHECK_WITHIN(imbensManski(span, level), (low + high) / 2, 1e-10);
        }
    }
}

// trials/worlds/ex.out of the design, worked out there in R.
void TstUncertainty::workedNumbers() {
    const double spans[]{0, 0.25, 0.5, 1, 2};
    const double factors[]{1, 0.9043055558, 0.8589726348, 0.8399955905, 0.8392265202};
    for (int i = 0; i < 5; ++i)
        CHECK_WITHIN(imbensManski(spans[i], 0.95), factors[i], 2e-10);
    const std::vector<double> three(3, std::sqrt(0.5));
    CHECK_WITHIN(dunnettCritical(three, 4, 0.95), 3.617655283, 2e-7);
    CHECK_WITHIN(dunnettCritical(three, 30, 0.95), 2.473694403, 2e-7);
    CHECK_WITHIN(dunnettCritical(three, infinity, 0.95), 2.34897059, 2e-7);
    const std::vector<double> unequal{std::sqrt(0.3), std::sqrt(0.5), std::sqrt(0.7)};
    CHECK_WITHIN(dunnettCritical(unequal, 10, 0.95), 2.761435392, 2e-7);
}

void TstUncertainty::dunnettOfOneIsStudents() {
    CHECK_DIGITS(dunnettCritical(std::vector{0.6}, 7, 0.95), tCritical(0.95, 7), 15);
    // Uncorrelated and df infinite: Sidak's, exactly.
    const std::vector<double> apart(5, 0.0);
    CHECK_DIGITS(dunnettCritical(apart, infinity, 0.95), tCritical(std::pow(0.95, 0.2), infinity),
                 9);
    QVERIFY_THROWS_EXCEPTION(std::domain_error, dunnettCritical(std::vector{0.2, 1.0}, 5, 0.95));
}

void TstUncertainty::manyLooksOnTheGrid() {
    // Just beyond the number that is worked out exactly: wider by less than 0.1 %, never narrower.
    std::vector<double> loads;
    for (int i = 0; i < 24; ++i)
        loads.push_back(0.6 + 0.01 * i);
    const double exact = dunnettCritical(loads, 6, 0.95);
    loads.push_back(0.005); // on the grid: 0, and hardly anything to a maximum of 24
    const double grid = dunnettCritical(loads, 6, 0.95);
    QVERIFY(grid > exact);
    QVERIFY(grid < 1.02 * exact);
    // Alike loads near 1, where a step of the grid is widest: one look more is one look more.
    for (const double load : {0.9, 0.98, 0.999})
        for (const double df : {6.0, infinity}) {
            const double at24 = dunnettCritical(std::vector(24, load), df, 0.95);
            const double at25 = dunnettCritical(std::vector(25, load), df, 0.95);
            QVERIFY(at25 > at24);
            QVERIFY(at25 < 1.004 * at24);
        }
}

void TstUncertainty::allowanceWithoutSpan() {
    const Interval straight{-1, 3};
    QVERIFY((allowing(straight, {0, 0}, 0.95) == straight));
    QVERIFY((allowing(straight, {0.5, 0.5}, 0.95) == Interval{-1.5, 2.5}));
    // A certain estimate: the span alone.
    QVERIFY((allowing({2, 2}, {-1, 3}, 0.95) == Interval{-1, 3}));
    QVERIFY((allowingFully(straight, {-1, 2}) == Interval{-3, 4}));
    const Interval wide = allowing(straight, {-1, 2}, 0.95);
    QVERIFY(wide.low > -3 && wide.high < 4 && wide.low < -2 && wide.high > 3);
}

void TstUncertainty::priorOfPublishedAlone() {
    const auto m = moderated(0.025, {}, {});
    CHECK_DIGITS(std::sqrt(m.variance.value), 0.021, 14);
    QCOMPARE(m.variance.df, 4.0);
    CHECK_DIGITS(m.expected, 0.025 * 0.025, 14);
    QCOMPARE(m.ownShare + m.othersShare, 0.0);
    // As wide as t on 8 df with the published figure, within 1.2 % (trials/worlds/README.md: t8/t4
    // = 0.8306 against 0.84).
    CHECK_WITHIN(tCritical(0.95, 4) * 0.84 / tCritical(0.95, 8), 1.0, 0.012);
}

void TstUncertainty::ownRepeatsLeaveThePriorBehind() {
    // The athlete's days vary 0.3, 1 and 1.6 times as published. With 20 pairs nothing is left of
    // the published figure, whichever of the three it is; with 1 most is.
    for (const double times : {0.3, 1.0, 1.6}) {
        const double truth = std::pow(times * 0.025, 2), within = std::pow(0.005, 2);
        double before = std::abs(std::sqrt(moderated(0.025, {}, {}).variance.value / truth) - 1);
        for (const double k : {1.0, 6.0, 20.0}) {
            const auto m = moderated(0.025, {}, {k, k * (truth + within), k * within});
            const double off = std::abs(std::sqrt(m.variance.value / truth) - 1);
            QVERIFY(off <= before + 1e-12 || times == 1.0);
            before = off;
            QVERIFY(k > 1 || m.ownShare < 0.2);
            if (k == 20) {
                CHECK_DIGITS(m.variance.value, truth, 12);
                QCOMPARE(m.ownShare, 1.0);
                QVERIFY(m.variance.df > 16);
            }
        }
    }
    // It goes bit by bit: no further pair takes away certainty.
    for (double k = 1, df = 4; k < 30; ++k) {
        const auto m = moderated(0.025, {}, {k, k * 0.0006, k * 0.0001});
        QVERIFY(m.variance.df > df);
        df = m.variance.df;
    }
    // Days that seem to move less than not at all keep a floor.
    QVERIFY(moderated(0.025, {}, {20, 20 * 1e-6, 20 * 1e-4}).variance.value > 0);
    // Others' tests move the centre and bring no certainty.
    const auto others = moderated(0.025, {60, 60 * 0.05 * 0.05, 0}, {});
    QCOMPARE(others.variance.df, 4.0);
    QVERIFY(others.variance.value > 1.5 * std::pow(0.021, 2));
}

void TstUncertainty::othersTakenOut() {
    RepeatSums all{5, 0.004, 0.001};
    const RepeatSums own{2, 0.001, 0.0004};
    const RepeatSums rest = all.without(own);
    QCOMPARE(rest.pairs, 3.0);
    CHECK_DIGITS(rest.halfSquares, 0.003, 12);
    QCOMPARE(own.without(own).pairs, 0.0);
    QCOMPARE(own.without(all).pairs, 0.0);
    RepeatSums back = rest;
    back += own;
    CHECK_DIGITS(back.within, all.within, 12);
    QVERIFY(RepeatSums({2, 0.001, 0.004}).excess() < 0);
}

void TstUncertainty::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: the parts of the readings are not checked against it");
    QByteArray input;
    const auto cases = movingCases();
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const auto& c = cases[i];
        std::vector<double> v{c.y,           c.scatter.s2,   c.scatter.df, c.moving.level,
                              c.moving.tilt, c.moving.pivot, c.moving.df,  c.ofY.value,
                              c.ofY.df,      c.level};
        for (std::size_t k = 0; k < c.x.size(); ++k)
            v.insert(v.end(), {c.x[k], c.v[k]});
        input += row("moving", "m" + QByteArray::number(i), v);
    }
    const std::vector<std::vector<double>> spans{
        {0.01, 0.95}, {0.3, 0.95}, {1, 0.9}, {4, 0.99}, {0.7, 0.8}};
    const std::vector<std::vector<double>> looks{{4, 0.95, 0.7, 0.7},
                                                 {4, 0.90, 0.3, 0.5, 0.8, 0.9},
                                                 {17, 0.95, 0.71, 0.71, 0.71, 0.71, 0.71, 0.71},
                                                 {infinity, 0.95, 0.2, 0.6, 0.6},
                                                 {6.4, 0.99, 0.7, 0.5, 0.4},
                                                 {infinity, 0.95, 0.9, 0.9, 0.9, 0.9, 0.9},
                                                 {infinity, 0.95, 0.95, 0.95, 0.95, 0.95},
                                                 {infinity, 0.95, 0.98, 0.98, 0.98, 0.98},
                                                 {infinity, 0.95, 0.99, 0.99, 0.99, 0.99, 0.99},
                                                 {infinity, 0.95, 0.995, 0.995},
                                                 {infinity, 0.90, 0.999, 0.999, 0.999},
                                                 {infinity, 0.95, 0.3, 0.95, 0.999},
                                                 {8, 0.95, 0.98, 0.98},
                                                 {3, 0.95, 0.6, 0.999}};
    const std::vector<std::vector<double>> chances{
        {0.06, 1e-4, 6, 8.8e-4, 4, 12.5e-4, 0},   {0.06, 4e-4, 2, 8.8e-4, 4, 12.5e-4, 0},
        {0.12, 4e-4, 2, 8.8e-4, 9.5, 1e-3, 0.03}, {4, 1, infinity, 3, 6, 4, 2},
        {0.06, 2e-5, 12, 2e-5, 30, 3e-5, 0},      {0.06, 2e-5, 12, 2e-5, 30, 3e-5, 0.02}};
    const std::vector<std::vector<double>> days{{0.025, 0, 0, 0, 0, 0, 0},
                                                {0.025, 12, 0.01, 0.002, 0, 0, 0},
                                                {0.03, 12, 0.001, 0.002, 3, 0.004, 0.0002},
                                                {0.025, 0, 0, 0, 8, 0.0001, 0.0008},
                                                {0.048, 2, 0.004, 0.001, 20, 0.05, 0.004},
                                                {0.028, 0, 0, 0, 12, 0.008, 0.002},
                                                {0.028, 0, 0, 0, 20, 0.001, 0.002},
                                                {0.028, 4, 0.002, 0.0004, 30, 0.05, 0.004}};
    // mean; own pairs, half of their squares, within; days, square, within of each block
    const std::vector<std::vector<double>> likely{
        {0.025, 0, 0, 0},
        {0.025, 3, 0.0009, 0.0001},
        {0.03, 0, 0, 0, 4, 0.0002, 0.00003, 4, 0.0009, 0.00003},
        {0.025, 0, 0, 0, 8, 0.0012, 0.00006, 8, 0.0015, 0.00006, 8, 0.002, 0.00006},
        {0.025, 6, 0.0002, 0.0003, 2, 0.00001, 0.00005}};
    const auto add = [&](const char* kind, const std::vector<std::vector<double>>& rows) {
        for (std::size_t i = 0; i < rows.size(); ++i)
            input += row(kind, kind + QByteArray::number(i), rows[i]);
    };
    add("imbens", spans);
    add("dunnett", looks);
    add("chance", chances);
    add("day", days);
    add("likely", likely);
    const auto r = runR(QStringLiteral("uncertainty.R"), {}, input);
    int asked = 0;
    const auto agrees = [&](const QString& name, double found, double digits = 8) {
        QVERIFY2(r.contains(name), qPrintable(name));
        QVERIFY2(alike(found, r[name], digits), (name.toUtf8() + unlike(found, r[name])).data());
        ++asked;
    };
    int bounded = 0;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const auto& c = cases[i];
        const QString id = QStringLiteral("m%1.").arg(i);
        const auto inverse = inverseMoving(*fitLine(c.x, c.v), c.y, c.scatter, c.moving,
                                           std::vector{c.ofY}, tOf(c.level));
        QCOMPARE(inverse.shape == Inverse::Shape::Bounded, r[id + "a"] > 0);
        if (inverse.shape != Inverse::Shape::Bounded)
            continue;
        ++bounded;
        agrees(id + "low", inverse.interval.low);
        agrees(id + "high", inverse.interval.high);
    }
    QVERIFY(bounded > 15);
    const auto id = [](const char* kind, std::size_t i) {
        return QString::fromLatin1(kind) + QString::number(i) + QLatin1Char('.');
    };
    for (std::size_t i = 0; i < spans.size(); ++i)
        agrees(id("imbens", i) + "f", imbensManski(spans[i][0], spans[i][1]));
    for (std::size_t i = 0; i < looks.size(); ++i)
        agrees(id("dunnett", i) + "d",
               dunnettCritical(std::span(looks[i]).subspan(2), looks[i][0], looks[i][1]));
    for (std::size_t i = 0; i < chances.size(); ++i) {
        const Chances found = chancesOverScatter(chance(chances[i]));
        agrees(id("chance", i) + "change", found.change);
        agrees(id("chance", i) + "held", found.held);
    }
    for (std::size_t i = 0; i < days.size(); ++i) {
        const auto& v = days[i];
        const auto m = moderated(v[0], {v[1], v[2], v[3]}, {v[4], v[5], v[6]});
        agrees(id("day", i) + "variance", m.variance.value);
        agrees(id("day", i) + "df", m.variance.df);
        agrees(id("day", i) + "expected", m.expected);
    }
    for (std::size_t i = 0; i < likely.size(); ++i) {
        const auto& v = likely[i];
        std::vector<DaySpread> spreads;
        for (std::size_t j = 4; j < v.size(); j += 3)
            spreads.push_back({static_cast<int>(v[j]), v[j + 1], v[j + 2]});
        const LogNormal found = likelySd(v[0], {v[1], v[2], v[3]}, spreads);
        agrees(id("likely", i) + "median", found.median, 6);
        agrees(id("likely", i) + "sd", found.logSd, 6);
    }
    QVERIFY(asked > 70);
}

QTEST_APPLESS_MAIN(TstUncertainty)
#include "tst_uncertainty.moc"
