// SPDX-License-Identifier: GPL-3.0-or-later
// A squad's mean change by the formula of tests/README.md ('Seasons'), worked by hand.
#include "core/answers/squadmean.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

SquadPart part(const std::vector<double>& changes, double line, double day) {
    SquadPart made{.load = Mass{40'000}};
    int id = 0;
    for (const double change : changes) {
        SquadRow row;
        row.athlete = AthleteId{++id};
        // t(.975, 6) and t(.975, 4), each with its own part
        const double half =
            std::sqrt(2.446912 * 2.446912 * 2 * line + 2.776445 * 2.776445 * 2 * day);
        row.read = read(change, {change - half, change + half},
                        {change - 0.8 * half, change + 0.8 * half}, Smallest{0.06});
        row.parts = ChangeParts{.earlier = {line, 6}, .later = {line, 6}, .day = {day, 4}};
        made.rows.push_back(row);
    }
    return made;
}

} // namespace

class TestSquadMean : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theSharedDayIsNotLessenedByNumbers();
    void eachIsDrawnByItsShare();
    void fewAthletesHaveNoMean();
};

/// t(.975, 3) = 3.182446, t(.975, 4) = 2.776445 (tables of Student's t).
void TestSquadMean::theSharedDayIsNotLessenedByNumbers() {
    const auto mean = squadMean(part({0.02, 0.04, 0.06, 0.08}, 0.00002, 0.0004));
    QVERIFY(mean);
    QCOMPARE(mean->athletes, 4);
    QVERIFY(std::abs(mean->mean - 0.05) < 1e-12);
    const double square = 0.002 / 3; // of the four changes
    const double half =
        std::sqrt(3.182446 * 3.182446 * square / 4 + 2.776445 * 2.776445 * 2 * 0.5 * 0.0004);
    QVERIFY(std::abs(mean->interval.high - (0.05 + half)) < 1e-6);
    QVERIFY(mean->read->reading == Reading::Unclear);
    // A hundred who all did the same: the day stays, t(.975, 4) sqrt(V_day).
    const auto many = squadMean(part(std::vector<double>(100, 0.05), 0.00002, 0.0004));
    QVERIFY(std::abs(many->interval.width() / 2 - 2.776445 * 0.02) < 1e-6);
    QCOMPARE(many->trueSpread, 0.0);
}

/// S^2 = 0.01 / 3; of each own: 2 lines of 0.0001 and V_day (half of two days) 0.0004: 0.0006.
void TestSquadMean::eachIsDrawnByItsShare() {
    const auto mean = squadMean(part({-0.05, 0.05, 0.05, -0.05}, 0.0001, 0.0004));
    const double true2 = 0.01 / 3 - 0.0006, share = true2 / (0.01 / 3);
    QVERIFY(std::abs(mean->trueSpread - std::sqrt(true2)) < 1e-12);
    QCOMPARE(mean->each.size(), std::size_t(4));
    QVERIFY(std::abs(mean->each[1].drawn - 0.05 * share) < 1e-12);
    QCOMPARE(mean->each[1].raw, 0.05);
}

void TestSquadMean::fewAthletesHaveNoMean() {
    QVERIFY(!squadMean(part({0.01, 0.02}, 0.0001, 0.0004)));
    SquadPart none = part({0.01, 0.02, 0.03}, 0.0001, 0.0004);
    none.rows[0].read = NoAnswer{}; // no figure: not one of three
    QVERIFY(!squadMean(none));
    Squad squad{.parts = {part({0.01, 0.02, 0.03}, 0.0001, 0.0004)}};
    // at most 5 % of each
    QVERIFY(squadByChance(squad) > 0.05 && squadByChance(squad) < 0.15);
}

QTEST_APPLESS_MAIN(TestSquadMean)
#include "tst_squadmean.moc"
