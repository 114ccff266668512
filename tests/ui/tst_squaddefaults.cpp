// SPDX-License-Identifier: GPL-3.0-or-later
// What the squad page opens on, from made seasons: never days that hardly anybody shares where
// there are some that most do.
#include "tests/log/builders.h"
#include "ui/squad/changes/periodchooser.h"
#include "ui/squad/changes/squaddefaults.h"
#include "ui/squad/changes/squadpage.h"

#include <QTest>

#include <algorithm>
#include <random>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;

namespace {

Date after(Date date, int days) {
    return Date{std::chrono::sys_days{date} + std::chrono::days{days}};
}

/// Athletes with a test within so many days of both, counted one by one.
int inBoth(const std::vector<TestDay>& days, Date a, Date b, int within) {
    std::set<AthleteId> first, second;
    for (const TestDay& day : days) {
        if (std::abs(daysBetween(a, day.date)) <= within)
            first.insert(day.athlete);
        if (std::abs(daysBetween(b, day.date)) <= within)
            second.insert(day.athlete);
    }
    return static_cast<int>(std::ranges::count_if(
        first, [&](const AthleteId& athlete) { return second.contains(athlete); }));
}

Stored<BlockId, Block> block(int id, Date first, Date last) {
    return {BlockId{id}, {.name = std::to_string(id), .first = first, .last = last}};
}

} // namespace

class TestSquadDefaults : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theLastTwoBlocksThatHoldTests() {
        const std::vector blocks{block(1, day(2025, 9, 1), day(2025, 11, 30)),
                                 block(2, day(2025, 12, 1), day(2026, 2, 28)),
                                 block(3, day(2026, 3, 1), day(2026, 5, 31)),
                                 block(4, day(2026, 6, 1), day(2026, 8, 31))};
        std::vector<TestDay> days{{AthleteId{1}, day(2025, 10, 1)},
                                  {AthleteId{1}, day(2026, 4, 1)}};
        // The second lies between the first and the last test, and holds none.
        QCOMPARE(lastTwoBlocks(blocks, days),
                 std::optional(std::pair(std::size_t{0}, std::size_t{2})));
        days.push_back({AthleteId{2}, day(2026, 2, 28)});
        QCOMPARE(lastTwoBlocks(blocks, days),
                 std::optional(std::pair(std::size_t{1}, std::size_t{2})));
        days.resize(1);
        QVERIFY(!lastTwoBlocks(blocks, days));
        QVERIFY(!lastTwoBlocks({}, days));
    }

    // 43 athletes, the first of them alone on the first day of the log and another on the last: the
    // page opened on these two days.
    void notTheFirstAndTheLastDay() {
        std::vector<TestDay> days;
        for (int athlete = 1; athlete <= 43; ++athlete)
            for (const Date round : {day(2025, 11, 1), day(2026, 2, 1)})
                days.push_back({AthleteId{athlete}, after(round, athlete % 5)});
        days.push_back({AthleteId{1}, day(2025, 8, 1)});
        days.push_back({AthleteId{2}, day(2026, 4, 1)});
        const auto two = lastTwoTestDays(days);
        QVERIFY(two);
        QCOMPARE(inBoth(days, two->earlier, two->later, two->within), 43);
        QCOMPARE(two->within, 14);
    }

    void theLatestOfThoseThatMostShare() {
        std::vector<TestDay> days;
        for (int athlete = 1; athlete <= 20; ++athlete)
            for (const Date round : {day(2024, 10, 1), day(2025, 1, 15), day(2025, 10, 1)})
                days.push_back({AthleteId{athlete}, round});
        for (int athlete = 1; athlete <= 17; ++athlete) // three were away
            days.push_back({AthleteId{athlete}, day(2026, 1, 15)});
        QCOMPARE(lastTwoTestDays(days),
                 std::optional(TwoTestDays{day(2025, 10, 1), day(2026, 1, 15), 14}));
        // Two rounds in one week: the days around each must not overlap.
        std::vector<TestDay> close;
        for (int athlete = 1; athlete <= 4; ++athlete)
            for (const Date round : {day(2026, 3, 2), day(2026, 3, 11)})
                close.push_back({AthleteId{athlete}, round});
        QCOMPARE(lastTwoTestDays(close),
                 std::optional(TwoTestDays{day(2026, 3, 2), day(2026, 3, 11), 3}));
        close.resize(1);
        QVERIFY(!lastTwoTestDays(close));
        QVERIFY(!lastTwoTestDays({}));
    }

    void inAnySeasonMostOfTheSquadIsThere() {
        std::mt19937 random(7);
        const auto whole = [&](int under) { return static_cast<int>(random() % unsigned(under)); };
        for (int season = 0; season < 30; ++season) {
            std::vector<TestDay> days;
            const int athletes = 1 + whole(30), spread = 1 + whole(20);
            for (int athlete = 1; athlete <= athletes; ++athlete) {
                Date date = after(day(2025, 9, 1), whole(spread));
                for (int test = whole(6); test >= 0; --test) {
                    days.push_back({AthleteId{athlete}, date});
                    date = after(date, 1 + whole(60));
                }
            }
            std::set<Date> dates;
            for (const TestDay& each : days)
                dates.insert(each.date);
            const auto two = lastTwoTestDays(days);
            const int within = two ? two->within : 0;
            int most = 0;
            for (const Date a : dates)
                for (const Date b : dates)
                    if (daysBetween(a, b) > 2 * within)
                        most = std::max(most, inBoth(days, a, b, within));
            if (!two) {
                QCOMPARE(most, 0);
                continue;
            }
            QVERIFY(daysBetween(two->earlier, two->later) > 2 * within); // nobody stands twice
            const int got = inBoth(days, two->earlier, two->later, within);
            QVERIFY(got > 0 && 4 * got >= 3 * most);
            for (const Date b : dates) // none later would do
                for (const Date a : dates)
                    if (b > two->later && daysBetween(a, b) > 2 * within)
                        QVERIFY(4 * inBoth(days, a, b, within) < 3 * most);
        }
    }

    // On the page, without blocks: everybody who was tested in both rounds has a figure.
    void thePageOpensThere() {
        Folder folder;
        Logbook book{log::Log::create(folder.path())};
        const LiftId lift = book.addLift({.name = "Bench pull",
                                          .mvt = Mvt{.value = 0.5, .source = "own tests"},
                                          .smallestVelocity = 0.04});
        const auto ladder = [&](AthleteId athlete, Date date, double v0) {
            const SessionId id = book.addSession({.athlete = athlete, .date = date});
            std::vector<Set> sets;
            for (int i = 0; i < 5; ++i)
                sets.push_back(ladderSet(
                    40 + 10 * i, {v0 - 0.01 * (40 + 10 * i) + (i % 2 == 0 ? 0.01 : -0.01)}));
            book.addSets(id, lift, sets);
        };
        std::vector<AthleteId> athletes;
        for (int i = 0; i < 6; ++i) {
            athletes.push_back(book.addAthlete({.name = "Lane " + std::to_string(i + 1)}));
            book.setCheckLoads(athletes.back(), lift, {Mass{60'000}});
            ladder(athletes.back(), day(2025, 11, 3), 1.5);
            ladder(athletes.back(), day(2026, 2, 3), 1.55);
        }
        ladder(athletes[0], day(2025, 8, 1), 1.4);
        ladder(athletes[1], day(2026, 5, 1), 1.6);
        SquadPage page(book);
        page.setAthleteAndLift({}, lift);
        QTRY_VERIFY(!page.working());
        QVERIFY(page.squad());
        QCOMPARE(page.squad()->parts.front().figures(), 6);
        QCOMPARE(page.squad()->parts.front().read(answers::Reading::NoFigure), 0);
    }
};

QTEST_MAIN(TestSquadDefaults)
#include "tst_squaddefaults.moc"
