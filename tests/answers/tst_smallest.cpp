// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/smallest.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"

#include <QtTest>

#include <random>
#include <span>

using namespace slopebook;
using namespace slopebook::answers;

namespace {
LiftSession of(int athlete, int id, const std::vector<std::pair<double, double>>& points) {
    auto s = tests::session(id, points);
    s.athlete = AthleteId{athlete};
    return s;
}
} // namespace

class TestSmallest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void order();
    void eightAthletes();
    void latestOfEach();
    void latestOneRms();
    void ofALift();
    void emptyBarIsNoSpread();
    void robustSpreadIsAnSd();
    void robustSpreadIsTheListedDistance();
    void forgetsAnAthlete();
};

void TestSmallest::order() {
    // Of 2 4 4 4 5 5 7 9 by hand: of the 28 distances 4 are 0 and 6 are 1, so the tenth, C(5, 2),
    // is 1; Qn is that times 2.21914 x 0.669 (n = 8; Croux and Rousseeuw 1992, from memory).
    const std::vector<double> eight{2, 4, 4, 4, 5, 5, 7, 9};
    const std::pair published{0.06, std::string("a paper")};
    const auto squad = chooseSmallest(eight, 0.05, published);
    QVERIFY(squad->origin == Smallest::Origin::Squad);
    CHECK_NEAR(squad->value, 0.2 * 2.21914 * 0.669, 1e-15);
    QCOMPARE(squad->source, std::string("0.2 x robust SD of 8 athletes"));
    QCOMPARE(squad->athletes, 8);
    QVERIFY(squad->interval->low < squad->value && squad->interval->high > squad->value);
    const auto coach = chooseSmallest({}, 0.05, published);
    QVERIFY(coach->origin == Smallest::Origin::Coach);
    QCOMPARE(coach->value, 0.05);
    const auto last = chooseSmallest({}, {}, published);
    QVERIFY(last->origin == Smallest::Origin::Published);
    QCOMPARE(last->source, std::string("a paper"));
    QVERIFY(!chooseSmallest({}, {}, {}));
}

void TestSmallest::eightAthletes() {
    const std::vector<double> seven{2, 4, 4, 4, 5, 5, 7};
    QVERIFY(chooseSmallest(seven, 0.05, {})->origin == Smallest::Origin::Coach);
    // A squad without any spread says nothing.
    const std::vector<double> alike(8, 0.5);
    QVERIFY(chooseSmallest(alike, 0.05, {})->origin == Smallest::Origin::Coach);
}

void TestSmallest::latestOfEach() {
    SquadLatest squad;
    squad.add(of(1, 5, {{60, 1.0}, {60, 1.1}, {80, 0.8}}));
    squad.add(of(1, 3, {{60, 0.9}, {70, 0.85}})); // earlier, though it comes later
    squad.add(of(2, 1, {{60, 0.7}}));
    const auto at60 = squad.atLoad(massFromKilograms(60));
    QCOMPARE(at60.size(), std::size_t(2));
    CHECK_NEAR(at60[0], 1.05, 1e-15);
    QCOMPARE(at60[1], 0.7);
    QCOMPARE(squad.atLoad(massFromKilograms(70)), std::vector<double>{0.85});
    QVERIFY(squad.atLoad(massFromKilograms(75)).empty());
    QCOMPARE(squad.loads().size(), std::size_t(3));
}

void TestSmallest::latestOneRms() {
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.65);
    SquadLatest squad;
    squad.add(of(1, 1, {{32, 1.0}, {64, 0.75}, {96, 0.5}}));
    squad.add(of(1, 2, {{32, 1.25}, {64, 1.0}, {96, 0.75}}));
    squad.add(of(1, 3, {{32, 1.25}}));                       // no line: the one before stands
    squad.add(of(2, 1, {{32, 0.5}, {64, 0.75}, {96, 1.0}})); // rises: no 1RM
    squad.add(of(3, 1, {{32, 1.0}, {64, 0.75}, {96, 0.5}}));
    auto own = of(3, 2, {});
    own.maxima = {{100, 0.35, 1}}; // athlete 3 has an MVT of their own: half of 0.35 and 0.65
    squad.add(own);
    const auto values = squad.oneRms(lift);
    QCOMPARE(values.size(), std::size_t(2));
    CHECK_NEAR(values[0], 108.8, 1e-10); // v = 1.5 - L/128 at 0.65
    CHECK_NEAR(values[1], 96, 1e-10);
    lift.ballistic = true;
    QVERIFY(squad.oneRms(lift).empty());
}

void TestSmallest::ofALift() {
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.65);
    SquadLatest squad;
    // Seven people's lines and an eighth's point: 64 kg is lifted by eight.
    for (int i = 0; i < 7; ++i) {
        const double up = 0.01 * i;
        squad.add(of(i, 1, {{32, 1.25 + up}, {64, 1.0 + up}, {96, 0.75 + up}}));
    }
    squad.add(of(7, 1, {{64, 1.07}}));
    const auto changes = smallestChanges(lift, squad, 150.0);
    QCOMPARE(changes.at.size(), std::size_t(1));
    // 0.00 to 0.07 in steps of 0.01: seven distances are 0.01 and six 0.02, so the tenth is 0.02.
    CHECK_NEAR(changes.at.at(massFromKilograms(64)).value, 0.2 * 2.21914 * 0.669 * 0.02, 1e-14);
    QVERIFY(changes.velocity->origin == Smallest::Origin::Published);
    // Seven have a 1RM: published, 3.4 % of the earlier estimate (published-values.md A6, a lift
    // without a figure of its own: the median of the seven groups).
    QVERIFY(changes.oneRm->origin == Smallest::Origin::Published);
    CHECK_NEAR(changes.oneRm->value, 0.034 * 150, 1e-12);
    QVERIFY(!smallestChanges(lift, squad, {}).oneRm);
    lift.smallestVelocity = 0.04;
    lift.smallestOneRm = 2.5;
    const auto coach = smallestChanges(lift, squad, 150.0);
    QCOMPARE(coach.velocity->value, 0.04);
    QCOMPARE(coach.oneRm->value, 2.5);
    QVERIFY(coach.oneRm->origin == Smallest::Origin::Coach);
    // An eighth line: their spread, 128 kg per m/s times that of the speeds.
    squad.add(of(7, 2, {{32, 1.32}, {64, 1.07}, {96, 0.82}}));
    const auto all = smallestChanges(lift, squad, 150.0);
    QVERIFY(all.oneRm->origin == Smallest::Origin::Squad);
    CHECK_NEAR(all.oneRm->value, 0.2 * 2.21914 * 0.669 * 2.56, 1e-9);
}

void TestSmallest::emptyBarIsNoSpread() {
    // Eight athletes, and one who lifted 20 to 25 kg: an estimate far beyond what was lifted, with
    // no bounded interval. The squad's spread does not move by it.
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.65);
    SquadLatest squad;
    for (int i = 0; i < 8; ++i) {
        const double up = 0.01 * i;
        squad.add(of(i, 1, {{32, 1.25 + up}, {64, 1.0 + up}, {96, 0.75 + up}}));
    }
    const double before = smallestChanges(lift, squad, {}).oneRm->value;
    squad.add(of(8, 1, {{20, 1.30}, {22.5, 1.31}, {25, 1.29}}));
    QCOMPARE(smallestChanges(lift, squad, {}).oneRm->value, before);
    QCOMPARE(squad.oneRms(lift).size(), std::size_t(8));
    // And one far value that does count moves a robust spread little, a plain one tenfold.
    const std::vector<double> near{100, 101, 103, 104, 106, 107, 109, 110, 112};
    std::vector<double> far = near;
    far.back() = 549;
    QVERIFY(robustSd(far) < 1.7 * robustSd(near));
    QCOMPARE(robustSd(std::vector{3.0}), 0.0);
}

void TestSmallest::robustSpreadIsAnSd() {
    // 4000 normal values of SD 7: Qn is as good as the SD to 2 %.
    std::mt19937_64 engine(5);
    std::normal_distribution<double> normal(100, 7);
    std::vector<double> values;
    for (int i = 0; i < 2000; ++i)
        values.push_back(normal(engine));
    CHECK_NEAR(robustSd(values), 7, 0.35);
    // Small squads: unbiased on average, to 3 %.
    for (const int n : {8, 9, 12, 15}) {
        double sum = 0;
        for (int i = 0; i < 2000; ++i)
            sum += robustSd(std::span(values).subspan(static_cast<std::size_t>(i * 7 % 1900),
                                                      static_cast<std::size_t>(n)));
        CHECK_NEAR(sum / 2000, 7, 0.5);
    }
}

// By its definition: all distances listed and sorted, the k-th of them, k = C(n/2 + 1, 2). The
// factor of n comes from the same n with distances that are all 1 but for 0 (values 0 and 1).
void TestSmallest::robustSpreadIsTheListedDistance() {
    std::mt19937 dice(11);
    for (int round = 0; round < 400; ++round) {
        const auto n = std::uniform_int_distribution<std::size_t>(2, 40)(dice);
        const bool coarse = round % 2 == 0; // many ties
        std::vector<double> values;
        std::vector<double> listed;
        for (std::size_t i = 0; i < n; ++i)
            values.push_back(coarse ? std::uniform_int_distribution(0, 5)(dice) * 0.1
                                    : std::normal_distribution(0.7, 0.2)(dice));
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t k = 0; k < i; ++k)
                listed.push_back(std::abs(values[i] - values[k]));
        std::ranges::sort(listed);
        const std::size_t h = n / 2 + 1;
        const double distance = listed[h * (h - 1) / 2 - 1];
        std::vector<double> far; // each at least 1 from the next, the nearest exactly
        for (std::size_t i = 0; i < n; ++i)
            far.push_back(static_cast<double>(i));
        std::vector<double> apart;
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t k = 0; k < i; ++k)
                apart.push_back(far[i] - far[k]);
        std::ranges::sort(apart);
        const double factor = robustSd(far) / apart[h * (h - 1) / 2 - 1];
        CHECK_NEAR(robustSd(values), factor * distance, 1e-12);
    }
}

void TestSmallest::forgetsAnAthlete() {
    Lift lift = tests::benchPull();
    lift.mvt = tests::coachMvt(0.65);
    SquadLatest with;
    SquadLatest without;
    for (int i = 0; i < 9; ++i) {
        const double up = 0.01 * i;
        const auto session = of(i, 1, {{32, 1.25 + up}, {64, 1.0 + up}, {96.0 + i, 0.75 + up}});
        with.add(session);
        if (i != 4)
            without.add(session);
    }
    QCOMPARE(with.oneRms(lift).size(), std::size_t(9));
    with.forget(AthleteId{4});
    with.forget(AthleteId{40});
    QCOMPARE(with.loads(), without.loads());
    for (const Mass load : without.loads())
        QCOMPARE(with.atLoad(load), without.atLoad(load));
    QCOMPARE(with.oneRms(lift), without.oneRms(lift));
    // A later session of one who is known already counts in the next answer, as another lift does.
    const auto later = of(2, 2, {{32, 1.5}, {64, 1.2}, {96, 0.9}});
    auto dated = later;
    dated.date = Date{std::chrono::year{2030}, std::chrono::month{1}, std::chrono::day{1}};
    with.add(dated);
    without.add(dated);
    QCOMPARE(with.oneRms(lift), without.oneRms(lift));
    Lift other = lift;
    other.mvt = tests::coachMvt(0.7);
    SquadLatest fresh = without;
    QCOMPARE(with.oneRms(other), fresh.oneRms(other));
    QVERIFY(with.oneRms(other) != with.oneRms(lift));
}

QTEST_APPLESS_MAIN(TestSmallest)
#include "tst_smallest.moc"
