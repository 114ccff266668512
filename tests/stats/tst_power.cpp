// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/power.h"
#include "core/stats/quantiles.h"
#include "tests/support/rscript.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <random>

using namespace slopebook;
using namespace slopebook::stats;

class TestPower : public QObject {
    Q_OBJECT
private slots:
    void agrees_with_R();
    void equivalence_agrees_with_R();
    void agrees_with_simulation();
    void the_known_scatter_is_the_limit();
    void repeats_are_the_fewest();
};

void TestPower::agrees_with_R() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: power is not compared with power.t.test");
    const auto r = tests::runR(QStringLiteral("power.R"));
    for (const int n : {2, 3, 5, 12, 40})
        for (const double delta : {0.2, 0.8, 1.5}) {
            const auto key = [&](const char* kind) {
                return QStringLiteral("%1 %2 %3")
                    .arg(QLatin1String(kind))
                    .arg(n)
                    .arg(delta, 0, 'f', 1);
            };
            const double paired = tTestPower(delta, 1 / std::sqrt(n), n - 1, 0.95);
            const double two = tTestPower(delta, std::sqrt(2.0 / n), 2 * n - 2, 0.90);
            QVERIFY2(std::abs(paired - r[key("paired")]) < 1e-7, qPrintable(key("paired")));
            QVERIFY2(std::abs(two - r[key("two")]) < 1e-7, qPrintable(key("two")));
        }
}

void TestPower::equivalence_agrees_with_R() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: equivalence power is not compared with integrate()");
    const auto r = tests::runR(QStringLiteral("power.R"));
    for (const int df : {2, 5, 30})
        for (const double margin : {1.5, 3.0, 5.0})
            for (const double truth : {0.0, 0.7}) {
                const auto key = QStringLiteral("tost %1 %2 %3")
                                     .arg(df)
                                     .arg(margin, 0, 'f', 1)
                                     .arg(truth, 0, 'f', 1);
                QVERIFY(r.contains(key));
                const double power = equivalencePower(truth, margin, 1, df, 0.90);
                QVERIFY2(std::abs(power - r[key]) < 1e-8, qPrintable(key));
            }
}

void TestPower::agrees_with_simulation() {
    std::mt19937_64 random(11);
    std::normal_distribution<double> z;
    const int rounds = 200'000, df = 4;
    const double effect = 2.5, margin = 3, se = 1;
    int found = 0, held = 0;
    for (int round = 0; round < rounds; ++round) {
        double chi = 0;
        for (int i = 0; i < df; ++i) {
            const double deviate = z(random);
            chi += deviate * deviate;
        }
        const double seen = se * std::sqrt(chi / df);
        const double noise = z(random);
        found += std::abs(effect + noise) > tCritical(0.95, df) * seen ? 1 : 0;
        held += std::abs(0.5 + noise) + tCritical(0.90, df) * seen < margin ? 1 : 0;
    }
    // three standard errors of a share of 200,000
    QVERIFY(std::abs(found / double(rounds) - tTestPower(effect, se, df, 0.95)) < 0.0034);
    QVERIFY(std::abs(held / double(rounds) - equivalencePower(0.5, margin, se, df, 0.90)) < 0.0034);
}

void TestPower::the_known_scatter_is_the_limit() {
    const double infinite = std::numeric_limits<double>::infinity();
    // 1.959964 + 0.841621 = 2.801585 standard errors give 80 % (textbook z values), the far tail
    // aside.
    QVERIFY(std::abs(tTestPower(2.801585, 1, infinite, 0.95) - 0.80) < 2e-6);
    QVERIFY(std::abs(tTestPower(2, 1, 1e6, 0.95) - tTestPower(2, 1, infinite, 0.95)) < 1e-5);
    QVERIFY(std::abs(equivalencePower(0, 3, 1, 1e5, 0.9) -
                     equivalencePower(0, 3, 1, infinite, 0.9)) < 1e-4);
    QVERIFY(std::abs(tTestPower(0, 1, 7, 0.95) - 0.05) < 1e-12);
    QCOMPARE(equivalencePower(0, 1, 1, infinite, 0.9), 0.0); // a margin under 1.645 se never holds
}

void TestPower::repeats_are_the_fewest() {
    // Power of a one-sample z test of effect 1, SD 2: n = (2 x 2.801585)^2 = 31.4, so 32.
    const auto power = [](int n) {
        return tTestPower(1, 2 / std::sqrt(n), std::numeric_limits<double>::infinity(), 0.95);
    };
    QCOMPARE(fewestRepeats(power, 0.8, 50), std::optional(32));
    QCOMPARE(fewestRepeats(power, 0.8, 31), std::nullopt);
}

QTEST_APPLESS_MAIN(TestPower)
#include "tst_power.moc"
