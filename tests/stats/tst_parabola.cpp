// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/parabola.h"
#include "tests/support/rscript.h"

#include <QTest>

#include <cmath>
#include <vector>

using namespace slopebook;
using namespace slopebook::stats;

namespace {

// NIST StRD Pontius (public domain): published-values.md section 10.2.
std::vector<double> pontiusX() {
    std::vector<double> x;
    for (int run = 0; run < 2; ++run)
        for (int i = 1; i <= 20; ++i)
            x.push_back(150000.0 * i);
    return x;
}
const std::vector<double> pontiusY{
    .11019,  .21956,  .32949,  .43899,  .54803,  .65694,  .76562,  .87487,  .98292,  1.09146,
    1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844,
    .11052,  .22018,  .32939,  .43886,  .54798,  .65739,  .76596,  .87474,  .98300,  1.09150,
    1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829};

QByteArray asInput(const std::vector<double>& x, const std::vector<double>& y) {
    QByteArray input;
    for (std::size_t i = 0; i < x.size(); ++i)
        input += QByteArray::number(x[i], 'g', 17) + ' ' + QByteArray::number(y[i], 'g', 17) + '\n';
    return input;
}

} // namespace

class TestParabola : public QObject {
    Q_OBJECT
private slots:
    void pontiusIsCertified();
    void aParabolaIsFoundAgain();
    void predictionsAgreeWithR();
    void nothingWithTooFew();
};

void TestParabola::pontiusIsCertified() {
    const auto fit = fitParabola(pontiusX(), pontiusY, 2);
    QVERIFY(fit);
    QVERIFY(tests::digitsAgreed(fit->c[0], 0.673565789473684e-03) > 9);
    QVERIFY(tests::digitsAgreed(fit->c[1], 0.732059160401003e-06) > 12);
    QVERIFY(tests::digitsAgreed(fit->c[2], -0.316081871345029e-14) > 9);
    QVERIFY(tests::digitsAgreed(fit->s(), 0.205177424076185e-03) > 9);
    QVERIFY(tests::digitsAgreed(fit->r2, 0.999999900178537) > 13);
    QVERIFY(tests::digitsAgreed(fit->rss, 0.155761768796992e-05) > 9);
    QCOMPARE(fit->df, 37.0);
}

void TestParabola::aParabolaIsFoundAgain() {
    const std::vector<double> x{1, 2, 3, 4, 5, 7};
    std::vector<double> y;
    for (const double each : x)
        y.push_back(3 - 2 * each + 0.5 * each * each);
    const auto fit = fitParabola(x, y, 2);
    QVERIFY(std::abs(fit->c[0] - 3) < 1e-12);
    QVERIFY(std::abs(fit->c[1] + 2) < 1e-12);
    QVERIFY(std::abs(fit->c[2] - 0.5) < 1e-13);
    QVERIFY(std::abs(fit->at(10) - 33) < 1e-10);
    QCOMPARE(fitParabola(x, y, 1)->c[2], 0.0);
}

void TestParabola::predictionsAgreeWithR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: parabolas are not compared with lm");
    const std::vector<double> x{1.22, 1.00, 0.79, 0.57, 0.47, 0.35, 1.27, 1.07, 0.84, 0.64};
    const std::vector<double> y{29.2, 43.7, 58.3, 73, 80.2, 87.5, 27.8, 41.7, 55.6, 69.5};
    const std::vector<double> at{0.2, 0.5, 0.9, 1.6};
    const auto r = tests::runR(QStringLiteral("parabola.R"),
                               {QStringLiteral("0.2"), QStringLiteral("0.5"), QStringLiteral("0.9"),
                                QStringLiteral("1.6")},
                               asInput(x, y));
    for (const int degree : {1, 2}) {
        const auto fit = fitParabola(x, y, degree);
        const auto key = [&](const char* name) {
            return QStringLiteral("%1 %2").arg(degree).arg(QLatin1String(name));
        };
        QVERIFY(tests::digitsAgreed(fit->c[0], r[key("c0")]) > 11);
        QVERIFY(tests::digitsAgreed(fit->c[1], r[key("c1")]) > 11);
        QVERIFY(tests::digitsAgreed(fit->s(), r[key("s")]) > 11);
        QVERIFY(tests::digitsAgreed(fit->r2, r[key("r2")]) > 11);
        if (degree == 2)
            QVERIFY(tests::digitsAgreed(fit->c[2], r[key("c2")]) > 10);
        for (std::size_t i = 0; i < at.size(); ++i) {
            const Interval p = predictionInterval(*fit, at[i], 0.95);
            QVERIFY(tests::digitsAgreed(p.low, r[key("low") + QStringLiteral(" %1").arg(i + 1)]) >
                    9);
            QVERIFY(tests::digitsAgreed(p.high, r[key("high") + QStringLiteral(" %1").arg(i + 1)]) >
                    9);
        }
    }
}

void TestParabola::nothingWithTooFew() {
    const std::vector<double> x{1, 2, 2}, y{1, 2, 3};
    QVERIFY(fitParabola(x, y, 1));
    QVERIFY(!fitParabola(x, y, 2));                                         // two distinct x
    QVERIFY(!fitParabola(std::vector{1.0, 2.0}, std::vector{1.0, 2.0}, 1)); // no df
    QVERIFY(!fitParabola(std::vector{1.0, 1.0, 1.0}, std::vector{1.0, 2.0, 3.0}, 1));
    QVERIFY(!fitParabola({}, {}, 1));
}

QTEST_APPLESS_MAIN(TestParabola)
#include "tst_parabola.moc"
