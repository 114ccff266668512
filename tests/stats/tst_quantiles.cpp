// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/quantiles.h"
#include "tests/stats/checking.h"

#include <cmath>
#include <limits>
#include <stdexcept>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {
constexpr double infinity = std::numeric_limits<double>::infinity();
}

class TstQuantiles : public QObject {
    Q_OBJECT

private slots:
    void publishedTable_data();
    void publishedTable();
    void agreesWithR();
    void symmetric();
    void infiniteDfIsTheNormalLimit();
    void tailsUndoQuantiles();
    void infiniteStatisticLeavesNothing();
    void refusesWhatHasNoAnswer();
};

// Student's t at 0.975, as in any printed table (published-values.md 10.1).
void TstQuantiles::publishedTable_data() {
    QTest::addColumn<double>("df");
    QTest::addColumn<double>("expected");
    const double table[] = {12.706205, 4.302653, 3.182446, 2.776445, 2.570582,
                            2.446912,  2.364624, 2.306004, 2.262157, 2.228139};
    for (int df = 1; df <= 10; ++df)
        QTest::addRow("df %d", df) << double(df) << table[df - 1];
    QTest::addRow("the normal limit") << infinity << 1.959964;
}

void TstQuantiles::publishedTable() {
    QFETCH(double, df);
    QFETCH(double, expected);
    CHECK_WITHIN(tQuantile(0.975, df), expected, 5.1e-7);
    CHECK_WITHIN(tCritical(0.95, df), expected, 5.1e-7);
}

void TstQuantiles::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: the quantiles were not compared with qt, qf and qchisq");
    const QMap<QString, double> r = runR("quantiles.R");
    QVERIFY(r.size() > 600);
    for (auto it = r.begin(); it != r.end(); ++it) {
        const QStringList key = it.key().split(' ');
        const double p = key[1].toDouble();
        const double df = key[2] == "Inf" ? infinity : key[2].toDouble();
        double found = 0;
        if (key[0] == "f2.plain") {
            CHECK_DIGITS(fQuantile(p, 2, df), it.value(), 5); // qf() as it is, see the script
            continue;
        }
        if (key[0] == "t")
            found = tQuantile(p, df);
        else if (key[0] == "f1")
            found = fQuantile(p, 1, df);
        else if (key[0] == "f2")
            found = fQuantile(p, 2, df);
        else if (key[0] == "chi")
            found = chiSquareQuantile(p, df);
        else if (key[0] == "pt")
            found = tTwoSidedP(p, df);
        else
            found = fTail(p, 2, df);
        // Tails below 1e-300 are nothing; R's median of t is rounding.
        if (std::abs(it.value()) > 1e-300 && !(key[0] == "t" && p == 0.5))
            QVERIFY2(alike(found, it.value(), 10),
                     (it.key().toUtf8() + ": " + unlike(found, it.value())).constData());
    }
}

void TstQuantiles::symmetric() {
    for (const double df : {1.0, 2.5, 30.0, infinity}) {
        CHECK_DIGITS(tQuantile(0.025, df), -tQuantile(0.975, df), 14);
        QCOMPARE(tQuantile(0.5, df), 0.0);
        QCOMPARE(tTwoSidedP(-1.3, df), tTwoSidedP(1.3, df));
        QCOMPARE(tTwoSidedP(0, df), 1.0);
    }
}

void TstQuantiles::infiniteDfIsTheNormalLimit() {
    // F(0.95; 1, inf) = 1.959963984540054^2 = 3.841458820694124, the chi-square point (any table).
    CHECK_DIGITS(fQuantile(0.95, 1, infinity), 3.841458820694124, 13);
    CHECK_DIGITS(tCritical(0.95, infinity), 1.959963984540054, 14);
    CHECK_DIGITS(tCritical(0.95, 1e12), tCritical(0.95, infinity), 10);
    CHECK_DIGITS(fQuantile(0.95, 2, 1e12), fQuantile(0.95, 2, infinity), 9);
}

void TstQuantiles::tailsUndoQuantiles() {
    for (const double df : {1.0, 2.0, 5.5, 40.0, infinity}) {
        CHECK_DIGITS(tTwoSidedP(tCritical(0.95, df), df), 0.05, 12);
        CHECK_DIGITS(fTail(fQuantile(0.95, 2, df), 2, df), 0.05, 12);
        const double t = tCritical(0.95, df);
        CHECK_DIGITS(fQuantile(0.95, 1, df), t * t, 12);
    }
}

void TstQuantiles::infiniteStatisticLeavesNothing() {
    QCOMPARE(tTwoSidedP(infinity, 3), 0.0);
    QCOMPARE(tTwoSidedP(-infinity, infinity), 0.0);
    QCOMPARE(fTail(infinity, 2, 3), 0.0);
}

void TstQuantiles::refusesWhatHasNoAnswer() {
    QVERIFY_THROWS_EXCEPTION(std::domain_error, tQuantile(0.9, 0));
    QVERIFY_THROWS_EXCEPTION(std::domain_error, tQuantile(1.5, 4));
    QVERIFY_THROWS_EXCEPTION(std::domain_error, fQuantile(0.9, 2, -1));
    QVERIFY_THROWS_EXCEPTION(std::domain_error, chiSquareQuantile(0.9, 0));
}

QTEST_APPLESS_MAIN(TstQuantiles)
#include "tst_quantiles.moc"
