// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/repeats.h"
#include "tests/stats/checking.h"

#include <cmath>
#include <limits>
#include <random>
#include <vector>

using namespace slopebook::stats;
using namespace slopebook::tests;

namespace {

using Values = std::vector<double>;
using Table = std::vector<Values>;
constexpr double infinity = std::numeric_limits<double>::infinity();

// Bland and Altman 1986, Lancet 1:307-310: peak flow, l/min.
const Values wright1{494, 395, 516, 434, 476, 557, 413, 442, 650,
                     433, 417, 656, 267, 478, 178, 423, 427};
const Values wright2{490, 397, 512, 401, 470, 611, 415, 431, 638,
                     429, 420, 633, 275, 492, 165, 372, 421};
const Values mini1{512, 430, 520, 428, 500, 600, 364, 380, 658,
                   445, 432, 626, 260, 477, 259, 350, 451};
const Values mini2{525, 415, 508, 444, 500, 625, 460, 390, 642,
                   432, 420, 605, 227, 467, 268, 370, 443};

Table made(std::mt19937_64& random, int people, int trials, double sd) {
    std::normal_distribution<double> person(0.8, 0.1), noise(0, sd), trial(0, 0.03);
    Values shift;
    for (int j = 0; j < trials; ++j)
        shift.push_back(trial(random));
    Table table;
    for (int i = 0; i < people; ++i) {
        const double level = person(random);
        Values row;
        for (int j = 0; j < trials; ++j)
            row.push_back(level + shift[std::size_t(j)] + noise(random));
        table.push_back(row);
    }
    return table;
}

} // namespace

class TstRepeats : public QObject {
    Q_OBJECT

private slots:
    void hopkins();
    void repeatabilityOfBlandAndAltman();
    void agreementOfBlandAndAltman();
    void agreesWithR();
    void pairsAndTableAreOne();
    void trialEffectIsTakenOut();
    void smallestDetectable();
    void logsNeedPositive();
    void meanOfZero();
    void noError_data();
    void noError();
    void identicalRepeats();
    void proportionalPart();
    void perfectProportion();
    void fallingRelation();
    void constantDevice();
    void noAgreement();
};

// Hopkins 2000, Sports Med 30:1-15, the worked example: 2.9, 1.2 and 4.1 printed there.
void TstRepeats::hopkins() {
    const Values first{62, 78, 81, 55, 66}, second{67, 76, 87, 55, 63};
    const auto te = typicalError(first, second);
    QVERIFY(te);
    CHECK_WITHIN(te->value, 2.889637, 5.1e-7);
    QCOMPARE(te->df, 4.0);
    CHECK_WITHIN(te->meanDifference, 1.2, 1e-12);
    CHECK_WITHIN(te->grandMean, 69.0, 1e-12);
    CHECK_WITHIN(te->cvPercent, 4.187879, 5.1e-7);
    CHECK_WITHIN(*te->cvLogPercent, 4.079351, 5.1e-7);
    CHECK_WITHIN(te->interval.low, 1.731277, 5.1e-7);
    CHECK_WITHIN(te->interval.high, 8.303532, 5.1e-7);
    CHECK_WITHIN(te->value * std::sqrt(2.0), 4.086563, 5.1e-7);
    CHECK_WITHIN(te->smallestDetectable(), 8.009664, 5.1e-7);
}

// SD of the differences over sqrt 2 (published-values.md section 8).
void TstRepeats::repeatabilityOfBlandAndAltman() {
    CHECK_WITHIN(typicalError(wright1, wright2)->value, 15.361215, 5.1e-7);
    CHECK_WITHIN(typicalError(mini1, mini2)->value, 20.415806, 5.1e-7);
}

// Printed in the paper: -2.1, SD 38.8, SE 9.4, CI -22.0 to 17.8, SE of the limits 16.3, lower limit
// CI -114.3 to -45.1 and upper 40.9 to 110.1 (from 2 SD of rounded figures), r 0.94.
void TstRepeats::agreementOfBlandAndAltman() {
    const auto a = agreement(wright1, mini1);
    QVERIFY(a);
    QCOMPARE(a->n, 17);
    CHECK_WITHIN(a->bias, -2.1176470588, 5.1e-11);
    CHECK_WITHIN(a->sd, 38.7651298736, 5.1e-11);
    CHECK_WITHIN(a->biasSe, 9.401925, 5.1e-7);
    CHECK_WITHIN(a->limits.low, -78.097302, 5.1e-7);
    CHECK_WITHIN(a->limits.high, 73.862007, 5.1e-7);
    CHECK_WITHIN(a->biasInterval.low, -22.0, 0.06);
    CHECK_WITHIN(a->biasInterval.high, 17.8, 0.06);
    const double half = 2.119905 * 16.284612; // t(0.975, 16) and sqrt(3 s^2 / n)
    CHECK_WITHIN(a->lowerLimitInterval.low, a->limits.low - half, 5e-5);
    CHECK_WITHIN(a->lowerLimitInterval.high, a->limits.low + half, 5e-5);
    CHECK_WITHIN(a->upperLimitInterval.high, a->limits.high + half, 5e-5);
    // The paper's own limits are 2 SD wide: its intervals are ours but for 0.04 SD.
    CHECK_WITHIN(a->lowerLimitInterval.low, -114.3 + 0.04 * 38.8, 0.2);
    CHECK_WITHIN(a->upperLimitInterval.high, 110.1 - 0.04 * 38.8, 0.2);
    CHECK_WITHIN(a->correlation, 0.9432794469, 5.1e-11);
}

void TstRepeats::agreesWithR() {
    if (!haveR())
        QSKIP("R IS NOT INSTALLED: no repeat tests were compared with aov and t.test");
    std::mt19937_64 random(7);
    std::vector<Table> tables;
    for (int i = 0; i < 36; ++i)
        tables.push_back(
            made(random, 3 + i % 9, i % 2 == 0 ? 2 : 2 + i % 5, 0.01 + 0.01 * (i % 4)));
    QByteArray input;
    for (std::size_t k = 0; k < tables.size(); ++k)
        for (std::size_t i = 0; i < tables[k].size(); ++i)
            for (std::size_t j = 0; j < tables[k][i].size(); ++j)
                input += "s" + QByteArray::number(qulonglong(k)) + ' ' +
                         QByteArray::number(qulonglong(i + 1)) + ' ' +
                         QByteArray::number(qulonglong(j + 1)) + ' ' +
                         QByteArray::number(tables[k][i][j], 'g', 17) + '\n';
    const QMap<QString, double> r = runR("repeats.R", {}, input);
    int studies = 0;
    for (std::size_t k = 0; k < tables.size(); ++k) {
        const QString id = "s" + QString::number(k) + ".";
        const auto te = typicalError(tables[k]);
        const auto same = [&](const QString& figure, double found, double scale = 0) {
            QVERIFY2(r.contains(id + figure), qPrintable("R gave no " + id + figure));
            const double expected = r.value(id + figure);
            QVERIFY2(std::abs(found - expected) <= scale * 1e-10 || alike(found, expected, 10),
                     (id + figure).toUtf8() + ": " + unlike(found, expected));
        };
        same("te", te->value);
        same("df", te->df);
        same("low", te->interval.low);
        same("high", te->interval.high);
        same("cv", te->cvPercent);
        same("cvLog", *te->cvLogPercent);
        if (tables[k].front().size() != 2)
            continue;
        ++studies;
        Values first, second;
        for (const Values& row : tables[k]) {
            first.push_back(row[0]);
            second.push_back(row[1]);
        }
        const auto a = agreement(first, second);
        same("bias", a->bias, 1);
        same("sd", a->sd);
        same("biasLow", a->biasInterval.low, 1);
        same("biasHigh", a->biasInterval.high, 1);
        same("limitLow", a->limits.low, 1);
        same("limitLowHigh", a->lowerLimitInterval.high, 1);
        same("limitHighLow", a->upperLimitInterval.low, 1);
        same("r", a->correlation);
        same("slope", a->slope);
        same("intercept", a->intercept, 1);
        same("slopeLow", a->slopeInterval.low);
        same("slopeHigh", a->slopeInterval.high);
        same("interceptLow", a->interceptInterval.low, 1);
        same("interceptHigh", a->interceptInterval.high, 1);
    }
    QVERIFY(studies >= 18);
}

void TstRepeats::pairsAndTableAreOne() {
    const auto pairs = typicalError(wright1, wright2);
    Table table;
    for (std::size_t i = 0; i < wright1.size(); ++i)
        table.push_back({wright1[i], wright2[i]});
    const auto trials = typicalError(table);
    CHECK_DIGITS(trials->value, pairs->value, 15);
    QCOMPARE(trials->df, pairs->df);
    CHECK_DIGITS(trials->meanDifference, pairs->meanDifference, 14);
}

// All get better by the same step from trial to trial: that is no noise.
void TstRepeats::trialEffectIsTakenOut() {
    Table table{{1.0, 1.1, 1.15}, {0.8, 0.9, 0.95}, {0.6, 0.7, 0.75}};
    CHECK_WITHIN(typicalError(table)->value, 0.0, 1e-15);
    QCOMPARE(typicalError(table)->meanDifference, 0.0);
    table[1][1] += 0.06;
    QVERIFY(typicalError(table)->value > 0.01);
}

// 1.96 sqrt 2 = 2.771859 (published-values.md section 8).
void TstRepeats::smallestDetectable() {
    TypicalError te;
    te.value = 1;
    CHECK_WITHIN(te.smallestDetectable(), 2.771859, 5.1e-7);
}

void TstRepeats::logsNeedPositive() {
    QVERIFY(!typicalError(Values{1, 2, 0}, Values{1, 2, 1})->cvLogPercent);
    QVERIFY(!typicalError(Values{1, 2, 3}, Values{1, 2, -1})->cvLogPercent);
    QVERIFY(typicalError(Values{1, 2, 3}, Values{1, 2, 1})->cvLogPercent);
}

void TstRepeats::meanOfZero() {
    QCOMPARE(typicalError(Values{-1, 1}, Values{1, -1})->cvPercent, 0.0);
}

void TstRepeats::noError_data() {
    QTest::addColumn<Table>("table");
    QTest::newRow("nobody") << Table{};
    QTest::newRow("one person") << Table{{1, 2}};
    QTest::newRow("one trial") << Table{{1}, {2}, {3}};
    QTest::newRow("a trial missing") << Table{{1, 2}, {2}};
}

void TstRepeats::noError() {
    QFETCH(Table, table);
    QVERIFY(!typicalError(table));
    QVERIFY(!typicalError(Values{1}, Values{2}));
    QVERIFY(!typicalError(Values{1, 2}, Values{2}));
}

void TstRepeats::identicalRepeats() {
    const auto te = typicalError(Values{1, 2, 3}, Values{1, 2, 3});
    QCOMPARE(te->value, 0.0);
    QCOMPARE(te->interval, (Interval{0, 0}));
    QCOMPARE(*te->cvLogPercent, 0.0);
}

void TstRepeats::proportionalPart() {
    std::mt19937_64 random(11);
    std::normal_distribution<double> noise(0, 0.005);
    Values truth, stretched;
    for (int i = 0; i < 20; ++i) {
        truth.push_back(0.3 + 0.05 * i + noise(random));
        stretched.push_back(1.1 * (0.3 + 0.05 * i) + noise(random));
    }
    const auto a = agreement(stretched, truth);
    QVERIFY(a->proportional());
    CHECK_WITHIN(a->slope, 1.1, 0.02);
    QVERIFY(a->slopeInterval.low < 1.1 && a->slopeInterval.high > 1.1);
    // Turned round, slope and interval turn with it.
    const auto back = agreement(truth, stretched);
    CHECK_DIGITS(back->slope, 1 / a->slope, 12);
    CHECK_DIGITS(back->slopeInterval.low, 1 / a->slopeInterval.high, 12);
}

void TstRepeats::perfectProportion() {
    const auto a = agreement(Values{1, 2, 3, 4}, Values{0.5, 1, 1.5, 2});
    CHECK_DIGITS(a->slope, 2.0, 15);
    CHECK_DIGITS(a->correlation, 1.0, 15);
    CHECK_DIGITS(a->slopeInterval.low, 2.0, 15);
    CHECK_DIGITS(a->slopeInterval.high, 2.0, 15);
    QVERIFY(a->proportional());
}

void TstRepeats::fallingRelation() {
    const auto a = agreement(Values{1, 2, 3, 4.1}, Values{4, 3.1, 2, 1});
    QVERIFY(a->slope < 0 && a->correlation < 0);
    QVERIFY(a->slopeInterval.low <= a->slope && a->slope <= a->slopeInterval.high);
    QVERIFY(a->interceptInterval.low <= a->intercept && a->intercept <= a->interceptInterval.high);
}

void TstRepeats::constantDevice() {
    for (const auto& a : {agreement(Values{1, 2, 3}, Values{2, 2, 2}),
                          agreement(Values{2, 2, 2}, Values{1, 2, 3})}) {
        QCOMPARE(a->correlation, 0.0);
        QCOMPARE(a->slope, 1.0);
        QCOMPARE(a->slopeInterval, (Interval{-infinity, infinity}));
        QVERIFY(!a->proportional());
        QVERIFY(std::isfinite(a->limits.low) && std::isfinite(a->intercept));
    }
}

void TstRepeats::noAgreement() {
    QVERIFY(!agreement(Values{1, 2}, Values{1, 2}));
    QVERIFY(!agreement(Values{1, 2, 3}, Values{1, 2}));
}

QTEST_APPLESS_MAIN(TstRepeats)
#include "tst_repeats.moc"
