// SPDX-License-Identifier: GPL-3.0-or-later
// Today beside last time in one sentence: counted, sized and read anew here, load by load, from the
// comparison's own readings.
#include "core/answers/againstlast.h"
#include "tests/answers/builders.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;
using namespace Qt::Literals::StringLiterals;

namespace {

Comparison compared(const std::vector<std::pair<double, double>>& last,
                    const std::vector<std::pair<double, double>>& today,
                    const ComparisonSettings& settings = {}) {
    return *compare(tests::benchPull(), tests::coachMvt(0.3), tests::session(1, last),
                    tests::session(2, today), settings);
}

QString told(const Comparison& c) {
    return QString::fromStdString(english(againstLastWords(c)));
}

} // namespace

class TestAgainstLast : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void allOneWay();
    void eachLoadHasItsOwnReading();
    void fewLoadsSayNothing();
    void whatMayNotBeComparedSaysSo();
};

/// Both lines are exact but for a scatter that moves neither: v = 1.6 - L/100, then lower by 0.04
/// at every load.
void TestAgainstLast::allOneWay() {
    const double e = 0.01; // s2 = 4 e^2 / 2
    const auto moved = [e](double by) {
        return std::vector<std::pair<double, double>>{
            {40, 1.2 + by + e}, {60, 1.0 + by - e}, {80, 0.8 + by - e}, {100, 0.6 + by + e}};
    };
    const QString slower = told(compared(moved(0), moved(-0.04)));
    QVERIFY2(
        slower.startsWith(u"Against 2026-01-08, each change alone: by the lines slower at all 4 "
                          u"loads, by 0.04 m/s; "_s),
        qPrintable(slower));
    // At 60 and 80 kg by hand (tst_squad): half-width 2.776445 sqrt(0.0002 x 0.6) = 0.0304: clear.
    // At the ends sqrt(0.0002 x 2 (1/4 + 900/2000)): 0.0465, said as 0.05.
    QVERIFY2(slower.contains(u"clear at 60, 80 kg"_s), qPrintable(slower));
    QVERIFY2(slower.endsWith(u"unclear at 40, 100 kg (clear from 0.05 m/s)."_s),
             qPrintable(slower));
    const QString faster = told(compared(moved(0), moved(0.2)));
    QVERIFY2(faster.contains(u"faster at all 4 loads, by 0.20 m/s; clear at all of them."_s),
             qPrintable(faster));
    const QString none = told(compared(moved(0), moved(0.001)));
    QVERIFY2(none.contains(u"but clear beyond the noise at none of them (clear from 0.05 m/s)."_s),
             qPrintable(none));
    ComparisonSettings matters;
    matters.smallestVelocity = Smallest{0.2};
    const QString held = told(compared(moved(0), moved(0.001), matters));
    QVERIFY2(held.contains(u"held at all of them."_s), qPrintable(held));
}

/// Whatever the days: how many loads go up and which are clear is what the comparison reads there.
void TestAgainstLast::eachLoadHasItsOwnReading() {
    std::mt19937 dice(5);
    std::normal_distribution<double> noise(0, 0.03);
    int mixed = 0, clear = 0;
    for (int i = 0; i < 60; ++i) {
        std::vector<std::pair<double, double>> last, today;
        const double tilt = noise(dice) / 30;
        for (const double load : {40.0, 55.0, 70.0, 85.0}) {
            last.emplace_back(load, 1.6 - load / 100 + noise(dice) / 3);
            today.emplace_back(load, 1.6 - load / 100 + tilt * (load - 60) + noise(dice) / 3);
        }
        const Comparison c = compared(last, today);
        const QString said = told(c);
        int up = 0, loads = 0;
        QStringList clearAt;
        for (const ChangeAt& at : c.at) {
            if (!at.seenFrom || !at.seenTo)
                continue;
            ++loads;
            up += at.read.change > 0 ? 1 : 0;
            if (at.read.reading == Reading::Better || at.read.reading == Reading::Worse)
                clearAt << QString::number(kilograms(at.load));
        }
        QCOMPARE(loads, 4);
        const QString ways = up == 4   ? u"by the lines faster at all 4 loads"_s
                             : up == 0 ? u"by the lines slower at all 4 loads"_s
                                       : u"by the lines faster at %1 of 4 loads"_s.arg(up);
        QVERIFY2(said.contains(ways), qPrintable(said));
        QCOMPARE(said.contains(u"; clear at "_s), !clearAt.isEmpty());
        if (!clearAt.isEmpty() && clearAt.size() < 4)
            QVERIFY2(said.contains(u"; clear at "_s + clearAt.join(u", "_s) + u" kg"_s),
                     qPrintable(said));
        mixed += up > 0 && up < 4 ? 1 : 0;
        clear += clearAt.isEmpty() ? 0 : 1;
    }
    QVERIFY(mixed > 5 && clear > 5);
}

void TestAgainstLast::fewLoadsSayNothing() {
    QVERIFY(told(compared({{40, 1.2}, {60, 1.01}, {80, 0.8}}, {{42, 1.2}, {60, 1.0}, {82, 0.81}}))
                .isEmpty());
}

void TestAgainstLast::whatMayNotBeComparedSaysSo() {
    Comparison c = compared({{40, 1.2}, {60, 1.01}, {80, 0.8}}, {{40, 1.1}, {60, 0.9}, {80, 0.72}});
    c.under.notComparable = asIs("the bar was bent");
    QCOMPARE(told(c), u"Not comparable with 2026-01-08: the bar was bent."_s);
    c.under = {.changes = {{ConditionChange::Of::Surface, "turf", "boards"}}};
    QVERIFY(told(c).endsWith(u"; tested on another surface."_s));
}

QTEST_APPLESS_MAIN(TestAgainstLast)
#include "tst_againstlast.moc"
