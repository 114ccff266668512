// SPDX-License-Identifier: GPL-3.0-or-later
// Loads in whole grams. Pound figures: the international pound of 1959 is 0.45359237 kg exactly.
#include "core/model/mass.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::literals;

class TstMass : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void literalsAreExact() {
        static_assert(72.5_kg == Mass{72500});
        static_assert(20_kg == Mass{20000});
        static_assert(1.25_kg == Mass{1250});
        QVERIFY(massFromKilograms(0.1 + 0.2) == 0.3_kg);
    }
    void kilogramsReadBack_data() {
        QTest::addColumn<double>("kg");
        for (const double kg : {0.0, 0.5, 1.25, 2.5, 20.0, 72.5, 102.25, 260.0})
            QTest::addRow("%g kg", kg) << kg;
    }
    void kilogramsReadBack() {
        QFETCH(double, kg);
        QCOMPARE(kilograms(massFromKilograms(kg)), kg);
    }
    void poundsAreWithinHalfAGram_data() {
        QTest::addColumn<double>("lb");
        QTest::addColumn<qint64>("grams");
        // 45 lb = 20411.65665 g, 2.5 lb = 1133.980925 g, 100 lb = 45359.237 g
        QTest::newRow("a 45 lb plate") << 45.0 << qint64{20412};
        QTest::newRow("a 2.5 lb plate") << 2.5 << qint64{1134};
        QTest::newRow("100 lb") << 100.0 << qint64{45359};
    }
    void poundsAreWithinHalfAGram() {
        QFETCH(double, lb);
        QFETCH(qint64, grams);
        QCOMPARE(massFromPounds(lb).grams, grams);
        QVERIFY(std::abs(pounds(massFromPounds(lb)) - lb) <= 0.5 / gramsPerPound);
    }
    void ordersByWeight() {
        QVERIFY(40_kg < 42.5_kg);
        QVERIFY(!(40_kg < 40_kg));
    }
};

QTEST_APPLESS_MAIN(TstMass)
#include "tst_mass.moc"
