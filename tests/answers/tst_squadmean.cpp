// SPDX-License-Identifier: GPL-3.0-or-later
// A squad's mean change by the formula of tests/README.md ('Seasons'), worked by hand.
#include "core/answers/squadmean.h"
#include "tests/answers/madelog.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;
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
    void whatMattersOfTheMeanIsNoOnesOwn();
    void fewAthletesHaveNoMean();
    void athletesAreCountedOnce();
    void chanceGivesNoMoreAthletesThanTheBound();
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

/// A published share of each one's own max: 6.0, 5.0, 4.0, in whatever order the rows go.
void TestSquadMean::whatMattersOfTheMeanIsNoOnesOwn() {
    SquadPart squad = part({4.0, 5.0, 6.0}, 0.00002, 0.0004);
    for (std::size_t i = 0; i < 3; ++i)
        squad.rows[i].read->smallest = Smallest{6.0 - static_cast<double>(i)};
    for (int turn = 0; turn < 3; ++turn) {
        const auto mean = squadMean(squad);
        QVERIFY(mean && mean->read->smallest);
        QCOMPARE(mean->read->smallest->value, 5.0);
        std::rotate(squad.rows.begin(), squad.rows.begin() + 1, squad.rows.end());
    }
    // Of those it is known of; the same for all stays to the last bit what it is.
    squad.rows[0].read->smallest.reset();
    QCOMPARE(squadMean(squad)->read->smallest->value, 4.5);
    for (SquadRow& row : squad.rows)
        row.read->smallest.reset();
    QVERIFY(!squadMean(squad)->read->smallest);
    QCOMPARE(squadMean(part({0.1, 0.2, 0.3}, 0.00002, 0.0004))->read->smallest->value, 0.06);
    // Nothing changed, known to 0.003: held, whatever matters to who comes first.
    SquadPart still = part({0.0, 0.001, -0.001}, 1e-6, 1e-6);
    still.rows[0].read->smallest = Smallest{0.001};
    QVERIFY(squadMean(still)->read->reading == Reading::Held);
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

/// What is found in three questions of one athlete is one athlete's.
void TestSquadMean::athletesAreCountedOnce() {
    const SquadPart one = part({0.3, 0.0, 0.0, 0.0}, 0.00002, 0.0004);
    SquadPart other = part({-0.3, 0.0, 0.0, 0.3}, 0.00002, 0.0004);
    other.rows.pop_back(); // the fourth was asked in one part alone
    Squad squad{.parts = {one, one, other}};
    SquadAthletes all = athletesOf(squad);
    QCOMPARE(all.asked, 4);
    QCOMPARE(all.changed, 1);
    const QString told = QString::fromStdString(english(squadChanceWords(squad)));
    QVERIFY2(told.contains(u"1 of 4 athletes (3 of 11 readings"_s), qPrintable(told));
    // Every row is as likely to be read so of nothing: the bound is their sum, and of thirty
    // questions of one athlete never more than the athlete.
    QVERIFY(std::abs(all.byChanceAtMost - squadByChance(squad)) < 1e-12);
    const Squad many{.parts = std::vector<SquadPart>(60, one)};
    QVERIFY(squadByChance(many) > 4);
    all = athletesOf(many);
    QCOMPARE(all.byChanceAtMost, 4.0);
}

namespace {

/// Of so many squads in which nothing changes, how many of their athletes are read better or worse
/// somewhere, what is told of it, and the same of single readings: a squad.
struct OfNothing {
    double athletes = 0, bound = 0, readings = 0, expected = 0;
};

OfNothing playNothing(int squads, double daySd) {
    constexpr int athletes = 6;
    tests::MadeLog made(daySd, 31);
    const tests::TrueSession truth{.loads = {30, 45, 60, 75, 90}};
    const DayNoise noise = made.dayNoise(0, truth);
    OfNothing sum;
    for (int i = 0; i < squads; ++i) {
        std::vector<SquadMember> members;
        for (int id = 1; id <= athletes; ++id) {
            SquadMember member{.athlete = AthleteId{id}, .name = std::to_string(id)};
            member.mvt = tests::coachMvt(0.3);
            for (const double load : {40.0, 55.0, 70.0, 85.0})
                member.checkLoads.push_back(massFromKilograms(load));
            for (const int day : {1, 2}) {
                LiftSession session = made.draw(10 * id + day, truth);
                session.athlete = member.athlete;
                session.date = tests::dayNumber(30 * day);
                member.sessions.push_back(session);
            }
            members.push_back(std::move(member));
        }
        const auto squad = squadChange(
            tests::benchPull(), members, onDate(tests::dayNumber(30)), onDate(tests::dayNumber(60)),
            {}, [&](const SquadMember&, const LiftSession&, const LiftSession&) {
                return ComparisonSettings{.dayNoise = noise,
                                          .smallestVelocity = Smallest{0.04},
                                          .smallestOneRm = Smallest{4.0}};
            });
        const SquadAthletes all = athletesOf(*squad);
        sum.athletes += all.changed / double(squads);
        sum.bound += all.byChanceAtMost / squads;
        for (const SquadPart& part : squad->parts)
            sum.readings +=
                (part.read(Reading::Better) + part.read(Reading::Worse)) / double(squads);
        sum.expected += squadByChance(*squad) / squads;
    }
    return sum;
}

} // namespace

/// A world of known truth, nothing changed in anybody: five questions of each of six athletes.
void TestSquadMean::chanceGivesNoMoreAthletesThanTheBound() {
#ifdef NDEBUG
    constexpr int squads = 400;
#else
    constexpr int squads = 80;
#endif
    for (const double daySd : {0.0, 0.025}) {
        const OfNothing of = playNothing(squads, daySd);
        // the SE of a mean of counts of six athletes, of whom one in ten is read so
        const double se = std::sqrt(6 * 0.1 / squads);
        const QByteArray told = QByteArray::number(of.athletes) + " of " +
                                QByteArray::number(of.bound) + ", readings " +
                                QByteArray::number(of.readings) + " of " +
                                QByteArray::number(of.expected);
        QVERIFY2(of.athletes <= of.bound + 3 * se, told);
        // and it is a bound that tells something: readings go together, but not wholly
        QVERIFY2(of.athletes > of.bound / 6, told);
        QVERIFY2(of.readings > of.athletes, told);
    }
}

QTEST_APPLESS_MAIN(TestSquadMean)
#include "tst_squadmean.moc"
