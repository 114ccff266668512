// SPDX-License-Identifier: GPL-3.0-or-later
// Shrunken lines over all that the data leave open: against brute force in R, against the limit of
// many groups, and held to their level by simulation.
#include "core/stats/groupsums.h"
#include "core/stats/openlines.h"
#include "tests/support/rscript.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::stats;

namespace {

struct World {
    double a = 1.60, b = -0.0105, sdA = 0.03, sdB = 0.0003, scatter = 0.02;
};

/// Ladders of five loads from 25 kg; the last group stops at lastTop.
std::vector<GroupPoints> made(int groups, const World& world, double lastTop,
                              std::mt19937_64& random, double* lastA = nullptr,
                              double* lastB = nullptr) {
    std::normal_distribution<double> z;
    std::vector<GroupPoints> all;
    for (int i = 0; i < groups; ++i) {
        const double a = world.a + world.sdA * z(random);
        const double b = world.b + world.sdB * z(random);
        const double top = i + 1 == groups ? lastTop : 110;
        GroupPoints group;
        for (int step = 0; step < 5; ++step) {
            group.x.push_back(25 + (top - 25) * step / 4);
            group.y.push_back(a + b * group.x.back() + world.scatter * z(random));
        }
        all.push_back(group);
        if (lastA)
            *lastA = a;
        if (lastB)
            *lastB = b;
    }
    return all;
}

} // namespace

class TestOpenLines : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void agreesWithBruteForce() {
        if (!tests::haveR())
            QSKIP("R IS NOT INSTALLED: open lines were not compared with brute force");
        std::mt19937_64 random(5);
        const auto groups = made(5, {}, 60, random);
        const std::pair<double, double> asked[] = {
            {40, 1.18}, {60, 0.96}, {110, 0.44}, {124, 0.30}, {130, 0.30}};
        QByteArray input;
        for (std::size_t g = 0; g < groups.size(); ++g)
            for (std::size_t i = 0; i < groups[g].x.size(); ++i)
                input += QByteArray::number(qulonglong(g)) + ' ' +
                         QByteArray::number(groups[g].x[i], 'g', 17) + ' ' +
                         QByteArray::number(groups[g].y[i], 'g', 17) + '\n';
        for (const auto& [x, y] : asked)
            input += "at " + QByteArray::number(x) + ' ' + QByteArray::number(y) + '\n';
        const auto r = tests::runR(QStringLiteral("openlines.R"),
                                   {QStringLiteral("4"), QStringLiteral("22")}, input);
        const auto open = openLines(groups, 4);
        QVERIFY(open);
        for (std::size_t i = 0; i < std::size(asked); ++i) {
            const double brute = r.value(QStringLiteral("p.%1").arg(i + 1), -1);
            const double ours = open->chanceUnder(asked[i].first, asked[i].second, 0);
            QVERIFY2(std::abs(ours - brute) < 0.015, // both are grids
                     qPrintable(
                         QStringLiteral("%1: %2, by brute force %3").arg(i).arg(ours).arg(brute)));
        }
    }

    void theValueIsTheWholesOwn() {
        std::mt19937_64 random(6);
        const auto groups = groupsOf(made(4, {}, 60, random));
        const RemlDeviance deviance(groups->sums, groups->points);
        for (const Eigen::Vector3d& theta :
             {Eigen::Vector3d(1, 0, 1), Eigen::Vector3d(0.2, -0.4, 0.7),
              Eigen::Vector3d(3, 2, 0)}) {
            Eigen::Matrix2d lambda;
            lambda << theta(0), 0, theta(1), theta(2);
            QVERIFY(std::abs(deviance.value(lambda * lambda.transpose()) -
                             deviance.at(theta).value) < 1e-9);
        }
    }

    /// With many groups nothing is left open: the interval is that of the REML line.
    void manyGroupsLeaveNothingOpen() {
        std::mt19937_64 random(7);
        const auto groups = made(150, {}, 60, random);
        const auto fit = fitMixedLine(groups);
        const auto open = openLines(groups, 149);
        QVERIFY(fit && open);
        const UncertainLine& line = fit->lines[149];
        const double estimate = (0.30 - line.intercept) / line.slope;
        const auto known = inversePrediction(line, 0.30, 0, open->df, 0.95);
        const auto ours = inverseInterval(*open, 0.30, 0, estimate, 10 * estimate, 0.95);
        QVERIFY(ours);
        const double half = (known.interval.high - known.interval.low) / 2;
        QVERIFY2(std::abs(ours->low - known.interval.low) < 0.06 * half,
                 qPrintable(QString::number(ours->low - known.interval.low)));
        QVERIFY2(std::abs(ours->high - known.interval.high) < 0.06 * half,
                 qPrintable(QString::number(ours->high - known.interval.high)));
    }

    /// Four groups, a light last one: the case where the REML spread taken as known fails most.
    void fewGroupsHoldTheirLevel() {
        std::mt19937_64 random(8);
        int held = 0, rounds = 0;
        for (int round = 0; round < 300; ++round) {
            double a = 0, b = 0;
            const auto groups = made(4, {}, 60, random, &a, &b);
            const auto open = openLines(groups, 3);
            const auto fit = fitMixedLine(groups);
            if (!open || !fit)
                continue;
            const UncertainLine& line = fit->lines[3];
            const double estimate = (0.30 - line.intercept) / line.slope;
            const auto interval = inverseInterval(*open, 0.30, 0, estimate, 10 * estimate, 0.95);
            if (!interval)
                continue;
            ++rounds;
            const double truth = (0.30 - a) / b;
            held += truth >= interval->low && truth <= interval->high ? 1 : 0;
        }
        QVERIFY(rounds > 280);
        // 95 % with three standard errors of 300 cases
        QVERIFY2(held > 0.912 * rounds,
                 qPrintable(QStringLiteral("%1 of %2").arg(held).arg(rounds)));
    }

    void nothingWhereNothingCanBe() {
        QVERIFY(!openLines({}, 0));
        std::mt19937_64 random(9);
        const auto groups = made(4, {}, 60, random);
        QVERIFY(!openLines(groups, 4));
        const auto open = openLines(groups, 3);
        QVERIFY(open);
        // a speed that no such line falls to within reach
        QVERIFY(!inverseInterval(*open, -50, 0, 124, 200, 0.95));
        double sum = 0;
        for (const WeightedLine& each : open->lines)
            sum += each.weight;
        QVERIFY(std::abs(sum - 1) < 1e-12);
    }
};

QTEST_APPLESS_MAIN(TestOpenLines)
#include "tst_openlines.moc"
