// SPDX-License-Identifier: GPL-3.0-or-later
// Who of a squad is due for what. What is expected is counted by hand from the rules that the
// program tells (dueMethod): not in the running block, over so many weeks ago, over a week before
// most of the others, never where most of the others were lately.
#include "core/answers/squaddue.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

const Date today{std::chrono::year{2026} / 5 / 11};

Date ago(int days) {
    return Date{std::chrono::sys_days{today} - std::chrono::days{days}};
}

std::vector<Stored<AthleteId, Athlete>> squadOf(std::initializer_list<const char*> names) {
    std::vector<Stored<AthleteId, Athlete>> all;
    for (const char* name : names)
        all.push_back({AthleteId{static_cast<std::int64_t>(all.size()) + 1}, {.name = name}});
    return all;
}

/// Days ago of each athlete, in their order; none: never.
TestedMeasure measure(const char* name, std::vector<std::optional<int>> days, int id = 1) {
    TestedMeasure made{.lift = LiftId{id}, .name = name};
    for (std::size_t i = 0; i < days.size(); ++i)
        if (days[i])
            made.last.push_back({AthleteId{static_cast<std::int64_t>(i) + 1}, ago(*days[i])});
    return made;
}

} // namespace

class TestSquadDue : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void byTheBlockTheOthersAndTheWeeks() {
        const auto squad = squadOf({"Ada", "Ben", "Cora", "Dov"});
        const std::vector measures{measure("Bench pull", {3, 4, 20, 50})};
        const Block spring{.name = "Spring", .first = ago(30), .last = ago(-30)};
        const auto due = squadDue(squad, measures, {.today = today, .running = spring});
        QCOMPARE(due.rows.size(), std::size_t(2));
        QCOMPARE(due.rows[0].name, std::string("Dov")); // the longest ago first
        QVERIFY(due.rows[0].notInBlock && due.rows[0].longAgo && due.rows[0].behind());
        QCOMPARE(due.rows[0].days, 50);
        QCOMPARE(QByteArray(english(dueWhy(due.rows[0], due.question)).c_str()),
                 QByteArray("not in Spring yet; 3 of 3 others since; over 6 weeks ago"));
        QCOMPARE(due.rows[1].name, std::string("Cora")); // in the block, and two of three later
        QVERIFY(!due.rows[1].notInBlock && !due.rows[1].longAgo && due.rows[1].behind());
        QCOMPARE(due.rows[1].othersSince, 2);
        QCOMPARE(due.athletesDue(), 2);
        QCOMPARE(QByteArray(english(dueWords(due)).c_str()),
                 QByteArray("2 athletes are due for 2 tests."));
    }

    void aWeekOrHalfOfTheOthersIsNotBehind() {
        const auto squad = squadOf({"Ada", "Ben", "Cora"});
        // 7 days before the others is no more than a week; with one of two later it is not most.
        for (const auto& days : {std::vector<std::optional<int>>{3, 3, 10},
                                 std::vector<std::optional<int>>{3, 20, 20}})
            QVERIFY(squadDue(squad, std::vector{measure("Squat", days)}, {.today = today})
                        .rows.empty());
        QCOMPARE(squadDue(squad, std::vector{measure("Squat", {3, 3, 11})}, {.today = today})
                     .rows.size(),
                 std::size_t(1));
    }

    void weeksAreAsked() {
        const auto squad = squadOf({"Ada"});
        const std::vector measures{measure("Squat", {43})};
        QCOMPARE(squadDue(squad, measures, {.today = today}).rows.size(), std::size_t(1));
        QVERIFY(squadDue(squad, measures, {.today = today, .weeks = 7}).rows.empty());
        QVERIFY(
            squadDue(squad, std::vector{measure("Squat", {42})}, {.today = today}).rows.empty());
        // A day that is still to come is not ago.
        QVERIFY(
            squadDue(squad, std::vector{measure("Squat", {-400})}, {.today = today}).rows.empty());
    }

    void neverWhereMostOfTheOthersWere() {
        const auto squad = squadOf({"Ada", "Ben", "Cora", "New"});
        const std::vector measures{measure("Squat", {3, 3, std::nullopt, std::nullopt}, 1),
                                   measure("Pull", {3, 3, 3, 3}, 2)};
        const auto due = squadDue(squad, measures, {.today = today});
        QCOMPARE(due.rows.size(), std::size_t(2)); // two of three others, lately
        for (const DueRow& row : due.rows) {
            QVERIFY(!row.last && row.measure == "Squat");
            QCOMPARE(QByteArray(english(dueWhy(row, due.question)).c_str()),
                     QByteArray("never; 2 of 3 others were lately"));
        }
        // Of nobody who was never tested in anything: that is not the squad's yet.
        QVERIFY(squadDue(squadOf({"Ada", "Ben", "Cora", "New"}),
                         std::vector{measure("Squat", {3, 3, 3, std::nullopt})}, {.today = today})
                    .rows.empty());
    }

    void whoIsAwayIsToldAndNotListed() {
        const auto squad = squadOf({"Ada", "Gone"});
        const auto due = squadDue(squad, std::vector{measure("Squat", {3, 183})}, {.today = today});
        QVERIFY(due.rows.empty());
        QCOMPARE(due.away, std::vector<std::string>{"Gone"});
        QVERIFY(english(awayWords(due)).find("Gone") != std::string::npos);
        QCOMPARE(
            squadDue(squad, std::vector{measure("Squat", {3, 182})}, {.today = today}).away.size(),
            std::size_t(0)); // 26 weeks
        QVERIFY(awayWords(squadDue({}, {}, {.today = today})).empty());
        QCOMPARE(QByteArray(english(dueWords(squadDue({}, {}, {.today = today}))).c_str()),
                 QByteArray("Nobody is due for anything."));
    }

    /// Against the rules written out again, row by row.
    void byDice() {
        std::mt19937 dice(17);
        const auto squad = squadOf({"A", "B", "C", "D", "E", "F"});
        for (int round = 0; round < 400; ++round) {
            std::vector<TestedMeasure> measures;
            for (int m = 0; m < 3; ++m) {
                std::vector<std::optional<int>> days;
                for (std::size_t i = 0; i < squad.size(); ++i)
                    days.push_back(dice() % 4 == 0 ? std::nullopt
                                                   : std::optional(static_cast<int>(dice() % 90)));
                measures.push_back(measure(("m" + std::to_string(m)).c_str(), days, m + 1));
            }
            DueQuestion question{.today = today, .weeks = static_cast<int>(1 + dice() % 10)};
            if (dice() % 2 == 0)
                question.running =
                    Block{.name = "Now", .first = ago(int(dice() % 60)), .last = today};
            const auto due = squadDue(squad, measures, question);
            QVERIFY(std::ranges::is_sorted(
                due.rows, {}, [](const DueRow& row) { return row.last ? -row.days : -100000; }));
            std::size_t expected = 0;
            for (const TestedMeasure& each : measures)
                for (const auto& [who, day] : each.last) {
                    int others = 0, later = 0;
                    for (const auto& [other, its] : each.last)
                        if (other != who) {
                            ++others;
                            later += daysBetween(day, its) > 7 ? 1 : 0;
                        }
                    expected += (question.running && day < question.running->first) ||
                                        daysBetween(day, today) > 7 * question.weeks ||
                                        (others >= 2 && 2 * later > others)
                                    ? 1U
                                    : 0U;
                }
            QCOMPARE(static_cast<std::size_t>(std::ranges::count_if(
                         due.rows, [](const DueRow& row) { return row.last.has_value(); })),
                     expected);
        }
    }
};

QTEST_APPLESS_MAIN(TestSquadDue)
#include "tst_squaddue.moc"
