// SPDX-License-Identifier: GPL-3.0-or-later
// Which reps and sets count, and what point a set makes (method.md section 1).
#include "core/model/session.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::literals;

namespace {
Set setOf(std::initializer_list<Rep> reps) {
    return Set{.load = 60_kg, .trueMaximum = false, .excluded = {}, .note = {}, .reps = reps};
}
} // namespace

class TstSession : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void fastestRepMakesThePoint() {
        QCOMPARE(*pointVelocity(setOf({{0.90, {}}, {0.94, {}}, {0.88, {}}}), PointRule::Fastest),
                 0.94);
    }
    void meanOfRepsMakesThePoint() {
        QCOMPARE(*pointVelocity(setOf({{0.75, {}}, {0.5, {}}}), PointRule::Mean), 0.625);
    }
    void excludedRepsTakeNoPart() {
        const Set set = setOf({{0.5, {}}, {1.4, "missed the groove"}, {0.75, {}}});
        QCOMPARE(*pointVelocity(set, PointRule::Fastest), 0.75);
        QCOMPARE(*pointVelocity(set, PointRule::Mean), 0.625);
    }
    void excludedSetMakesNoPoint() {
        Set set = setOf({{0.9, {}}});
        set.excluded = "wrong load on the bar";
        QVERIFY(!pointVelocity(set, PointRule::Fastest));
    }
    void setWithoutCountingRepsMakesNoPoint() {
        QVERIFY(!pointVelocity(setOf({}), PointRule::Mean));
        QVERIFY(!pointVelocity(setOf({{0.9, "slipped"}}), PointRule::Fastest));
    }
    void namesTheSecondSessionOfADay() {
        const Date day = *parseIsoDate("2026-03-14");
        QCOMPARE(dateKey(day, 1), std::string("2026-03-14"));
        QCOMPARE(dateKey(day, 2), std::string("2026-03-14#2"));
    }
    void wordsOfKindsAndRulesReadBack() {
        for (const auto kind : {VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak})
            QCOMPARE(velocityKindFromWord(word(kind)), std::optional(kind));
        for (const auto rule : {PointRule::Fastest, PointRule::Mean})
            QCOMPARE(pointRuleFromWord(word(rule)), std::optional(rule));
        QVERIFY(!velocityKindFromWord("Mean"));
        QVERIFY(!pointRuleFromWord(""));
    }
};

QTEST_APPLESS_MAIN(TstSession)
#include "tst_session.moc"
