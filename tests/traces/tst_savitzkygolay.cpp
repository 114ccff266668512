// SPDX-License-Identifier: GPL-3.0-or-later
// The published convolution weights: Savitzky and Golay, Anal Chem 1964;36:1627-1639, tables I to
// V, with the corrections of Steinier et al. 1972 (from memory; each row is confirmed by R, which
// solves the normal equations in tests/reference/savitzkygolay.R).
#include "core/traces/savitzkygolay.h"
#include "tests/support/rscript.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::traces;

using Weights = QList<double>;

class TestSavitzkyGolay : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void published_data() {
        QTest::addColumn<int>("order");
        QTest::addColumn<int>("derivative");
        QTest::addColumn<double>("norm");
        QTest::addColumn<Weights>("weights");
        QTest::newRow("smoothing, 5 points, cubic")
            << 3 << 0 << 35.0 << Weights{-3, 12, 17, 12, -3};
        QTest::newRow("smoothing, 7 points, quadratic")
            << 2 << 0 << 21.0 << Weights{-2, 3, 6, 7, 6, 3, -2};
        QTest::newRow("smoothing, 9 points, cubic")
            << 3 << 0 << 231.0 << Weights{-21, 14, 39, 54, 59, 54, 39, 14, -21};
        QTest::newRow("first derivative, 5 points, quadratic")
            << 2 << 1 << 10.0 << Weights{-2, -1, 0, 1, 2};
        QTest::newRow("first derivative, 5 points, cubic")
            << 3 << 1 << 12.0 << Weights{1, -8, 0, 8, -1};
        QTest::newRow("first derivative, 7 points, cubic")
            << 3 << 1 << 252.0 << Weights{22, -67, -58, 0, 58, 67, -22};
        QTest::newRow("first derivative, 9 points, cubic")
            << 3 << 1 << 1188.0 << Weights{86, -142, -193, -126, 0, 126, 193, 142, -86};
        QTest::newRow("second derivative, 5 points, cubic")
            << 3 << 2 << 7.0 << Weights{2, -1, -2, -1, 2};
        QTest::newRow("second derivative, 7 points, quadratic")
            << 2 << 2 << 42.0 << Weights{5, 0, -3, -4, -3, 0, 5};
        QTest::newRow("second derivative, 9 points, cubic")
            << 3 << 2 << 462.0 << Weights{28, 7, -8, -17, -20, -17, -8, 7, 28};
    }
    void published() {
        QFETCH(int, order);
        QFETCH(int, derivative);
        QFETCH(double, norm);
        QFETCH(Weights, weights);
        const auto found =
            savitzkyGolayWeights(static_cast<int>(weights.size()), order, derivative);
        for (qsizetype i = 0; i < weights.size(); ++i)
            QVERIFY(std::abs(found[static_cast<std::size_t>(i)] - weights[i] / norm) < 1e-12);
    }

    void asInR() {
        if (!tests::haveR())
            QSKIP("R IS NOT INSTALLED: weights not compared with it");
        for (const int points : {5, 11, 21, 101})
            for (const int derivative : {0, 1, 2})
                for (const int position : {0, -points / 2, points / 4}) {
                    const auto r =
                        tests::runR(QStringLiteral("savitzkygolay.R"),
                                    {QString::number(points), QStringLiteral("3"),
                                     QString::number(derivative), QString::number(position)});
                    const auto found = savitzkyGolayWeights(points, 3, derivative, position);
                    for (int i = 0; i < points; ++i)
                        QVERIFY(std::abs(found[static_cast<std::size_t>(i)] -
                                         r.value(QStringLiteral("w%1").arg(i + 1))) < 1e-9);
                }
    }

    /// A cubic comes back exactly, at the ends too, even far from zero.
    void cubicIsExact() {
        const double rate = 250;
        std::vector<double> x;
        for (int i = 0; i < 200; ++i) {
            const double t = i / rate;
            x.push_back(1000 + t * (2 + t * (-3 + t * 4)));
        }
        const auto p = savitzkyGolay(x, rate, 25, 3, 0);
        const auto v = savitzkyGolay(x, rate, 25, 3, 1);
        const auto a = savitzkyGolay(x, rate, 25, 3, 2);
        for (int i = 0; i < 200; ++i) {
            const double t = i / rate;
            const auto k = static_cast<std::size_t>(i);
            QVERIFY(std::abs(p[k] - x[k]) < 1e-9);
            QVERIFY(std::abs(v[k] - (2 + t * (-6 + t * 12))) < 1e-8);
            QVERIFY(std::abs(a[k] - (-6 + t * 24)) < 1e-6);
        }
    }

    /// White noise comes through with the SD that the sum of squared weights says.
    void noiseGain() {
        std::mt19937 random(7);
        std::normal_distribution<double> error(0, 1);
        std::vector<double> x(20'000);
        for (double& value : x)
            value = error(random);
        const auto v = savitzkyGolay(x, 1, 11, 3, 1);
        double sum = 0;
        for (const double value : v)
            sum += value * value;
        // The cubic's first derivative: 75/N^3 for long windows, a little more for short ones.
        double gain = 0;
        for (const double w : savitzkyGolayWeights(11, 3, 1))
            gain += w * w;
        // Neighbours share 10 of 11 samples, so some 20000/11 values are free: 4 SD of their mean.
        QVERIFY(std::abs(sum / 20'000 / gain - 1) < 4 * std::sqrt(2 * 11 / 20'000.0) + 0.02);
        QVERIFY(std::abs(gain * 1331 / 75 - 1) < 0.15);
    }
};
QTEST_APPLESS_MAIN(TestSavitzkyGolay)
#include "tst_savitzkygolay.moc"
