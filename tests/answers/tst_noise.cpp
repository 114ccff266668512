// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/noise.h"
#include "core/model/errors.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <algorithm>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;
using Points = std::vector<std::pair<double, double>>;

namespace {

RepeatPair pairOf(int id, const Points& first, const Points& second) {
    RepeatPair pair{.first = tests::session(2 * id, first),
                    .second = tests::session(2 * id + 1, second)};
    pair.second.repeatOf = pair.first.session;
    return pair;
}

/// Repeat tests of lines that move as a whole by daySd and whose points scatter by pointSd.
std::vector<RepeatPair> simulated(int count, double daySd, double pointSd, unsigned seed) {
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> day(0, daySd);
    std::normal_distribution<double> scatter(0, pointSd);
    std::vector<RepeatPair> pairs;
    for (int i = 0; i < count; ++i) {
        std::vector<Points> both;
        for (int s = 0; s < 2; ++s) {
            const double shift = daySd > 0 ? day(engine) : 0;
            Points points;
            for (int k = 0; k < 4 + (i + s) % 3; ++k) {
                const double load = 40 + 10 * k + (i % 2 == 1 && s == 1 ? 10 : 0);
                points.emplace_back(load, 1.6 - 0.01 * load + shift + scatter(engine));
            }
            both.push_back(points);
        }
        pairs.push_back(pairOf(i, both[0], both[1]));
    }
    return pairs;
}

LiftNoise noiseOf(const std::vector<RepeatPair>& pairs) {
    return *liftNoise(tests::benchPull(), tests::coachMvt(0.3, 0.04), pairs);
}

} // namespace

class TestNoise : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void hopkinsExample();
    void dayShiftsOfPerfectLines();
    void scatterAloneIsNoDayNoise();
    void againstR();
    void findsWhatWasPutIn_data();
    void findsWhatWasPutIn();
    void oneRm();
    void whichPairs();
    void tooFew();
    void alikeIsNoErrorOfZero();
    void linesThatTellNothing();
    void mixedUp();
    void choice();
    void whatThePriorDoes_data();
    void whatThePriorDoes();
};

/// Differences that are all the same have an SD of zero: at the resolution that is shown that is no
/// typical error. A difference of 0.01 more in one of two: SD 0.01 / sqrt(2), error 0.005.
void TestNoise::alikeIsNoErrorOfZero() {
    const LiftNoise alike = noiseOf({pairOf(1, {{60, 0.62}, {80, 0.4}}, {{60, 0.64}, {80, 0.4}}),
                                     pairOf(2, {{60, 0.78}, {80, 0.4}}, {{60, 0.80}, {80, 0.4}})});
    for (const auto& at : alike.atLoads)
        QVERIFY(!spreads(at.error, 4));
    const LiftNoise other = noiseOf({pairOf(1, {{60, 0.62}, {80, 0.4}}, {{60, 0.64}, {80, 0.4}}),
                                     pairOf(2, {{60, 0.78}, {80, 0.4}}, {{60, 0.81}, {80, 0.4}})});
    CHECK_NEAR(other.atLoads[0].error.value, 0.005, 1e-12);
    QVERIFY(spreads(other.atLoads[0].error, 4));
    QVERIFY(!spreads(other.atLoads[1].error, 4));
    stats::TypicalError least;
    least.value = 0.00005;
    QVERIFY(spreads(least, 4));
    least.value = 0.00004999;
    QVERIFY(!spreads(least, 4));
}

void TestNoise::hopkinsExample() {
    // Hopkins 2000 (published-values.md section 8): 62 78 81 55 66, then 67 76 87 55 63.
    const std::vector<double> first{0.62, 0.78, 0.81, 0.55, 0.66};
    const std::vector<double> second{0.67, 0.76, 0.87, 0.55, 0.63};
    std::vector<RepeatPair> pairs;
    for (std::size_t i = 0; i < first.size(); ++i)
        pairs.push_back(
            pairOf(static_cast<int>(i), {{60, first[i]}, {80, 0.4}}, {{60, second[i]}, {70, 0.5}}));
    const LiftNoise noise = noiseOf(pairs);
    QCOMPARE(noise.atLoads.size(), std::size_t(1));
    QVERIFY(noise.atLoads[0].load == massFromKilograms(60));
    const auto& error = noise.atLoads[0].error;
    CHECK_NEAR(error.value, 0.02889637, 5e-9);
    CHECK_NEAR(error.interval.low, 0.01731277, 5e-9);
    CHECK_NEAR(error.interval.high, 0.08303532, 5e-9);
    CHECK_NEAR(error.cvPercent, 4.187879, 5e-7);
    CHECK_NEAR(*error.cvLogPercent, 4.079351, 5e-7);
    CHECK_NEAR(error.meanDifference, 0.012, 1e-15);
    QCOMPARE(error.df, 4.0);
    CHECK_NEAR(error.smallestDetectable(), 2.771859 * 0.02889637, 1e-6);
}

void TestNoise::dayShiftsOfPerfectLines() {
    // Lines without scatter, v = 1.5 - L/128, moved by 1/32, -1/16 and 1/64 as a whole: by hand the
    // variance is half the mean square, (1/1024 + 1/256 + 1/4096) / 6 = 21/24576, on 3 df.
    const auto moved = [](double by) {
        return Points{{32, 1.25 + by}, {64, 1.0 + by}, {96, 0.75 + by}};
    };
    const auto noise =
        noiseOf({pairOf(0, moved(0), moved(1.0 / 32)), pairOf(1, moved(0), moved(-1.0 / 16)),
                 pairOf(2, moved(0), moved(1.0 / 64))});
    CHECK_NEAR(noise.day.variance.value, 21.0 / 24576, 1e-17);
    CHECK_NEAR(noise.day.variance.df, 3 * std::pow(21.0, 2) / std::pow(21.0, 2), 1e-12);
    QCOMPARE(noise.day.pairs, 3);
    QVERIFY(noise.day.origin == DayNoise::Origin::LogLift);
}

void TestNoise::scatterAloneIsNoDayNoise() {
    // The same days twice, one point off: d is well inside what the scatter explains.
    const Points one{{40, 1.2}, {60, 1.02}, {80, 0.78}, {100, 0.61}};
    const Points two{{40, 1.21}, {60, 1.0}, {80, 0.8}, {100, 0.6}};
    const auto noise = noiseOf({pairOf(0, one, two), pairOf(1, two, one)});
    QCOMPARE(noise.day.variance.value, 0.0);
    QVERIFY(noise.day.variance.df > 0);
}

void TestNoise::againstR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: day-to-day noise is not checked against it");
    for (const auto& [count, daySd] : {std::pair{2, 0.04}, {5, 0.03}, {12, 0.02}, {7, 0.0}}) {
        const auto pairs = simulated(count, daySd, 0.02, 7);
        QByteArray input;
        for (std::size_t i = 0; i < pairs.size(); ++i)
            for (const auto& [session, which] :
                 {std::pair{&pairs[i].first, 1}, {&pairs[i].second, 2}})
                for (const Point& p : session->points)
                    input += QByteArray::number(i) + " " + QByteArray::number(which) + " " +
                             QByteArray::number(p.load, 'g', 17) + " " +
                             QByteArray::number(p.velocity, 'g', 17) + "\n";
        const auto r = tests::runR(QStringLiteral("day_noise.R"), {}, input);
        const LiftNoise ours = noiseOf(pairs);
        const auto agrees = [&](const QString& name, double found) {
            QVERIFY2(r.contains(name), qPrintable(name));
            const double digits = tests::digitsAgreed(found, r[name]);
            QVERIFY2(digits >= 8, qPrintable(name + QStringLiteral(": %1 digits").arg(digits)));
        };
        agrees("variance", ours.day.variance.value);
        agrees("df", ours.day.variance.df);
        QCOMPARE(r.size(), qsizetype(2 + 5 * ours.atLoads.size()));
        for (const auto& [load, error] : ours.atLoads) {
            const QString at = QStringLiteral("at%1.").arg(kilograms(load));
            agrees(at + "te", error.value);
            agrees(at + "df", error.df);
            agrees(at + "low", error.interval.low);
            agrees(at + "high", error.interval.high);
            agrees(at + "cv", error.cvPercent);
        }
    }
}

void TestNoise::findsWhatWasPutIn_data() {
    QTest::addColumn<double>("daySd");
    QTest::addColumn<double>("pointSd");
    QTest::newRow("day over points") << 0.03 << 0.01;
    QTest::newRow("points over day") << 0.015 << 0.03;
}

void TestNoise::findsWhatWasPutIn() {
    QFETCH(double, daySd);
    QFETCH(double, pointSd);
    // 4000 pairs: the SD of a variance estimate is about sqrt(2/4000) = 2 to 5 % of it.
    const auto noise = noiseOf(simulated(4000, daySd, pointSd, 20260314));
    CHECK_NEAR(std::sqrt(noise.day.variance.value), daySd, 0.08 * daySd);
    QVERIFY(noise.day.variance.df > 100);
}

void TestNoise::oneRm() {
    // v = 1.5 - L/128 and 1/32 m/s higher: at an MVT of 0.3 the 1RM moves by 4 kg; 1/16 lower, 8
    // kg.
    const auto moved = [](double by) {
        return Points{{32, 1.25 + by}, {64, 1.0 + by}, {96, 0.75 + by}};
    };
    const std::vector pairs{pairOf(0, moved(0), moved(1.0 / 32)),
                            pairOf(1, moved(0), moved(-1.0 / 16))};
    const auto noise = noiseOf(pairs);
    // Differences 4 and -8: SD 8.485281, / sqrt(2) = 6.
    CHECK_NEAR(noise.oneRm->value, 6, 1e-9);
    const auto without =
        liftNoise(tests::benchPull(), NoAnswer{NoAnswer::Why::NoThreshold, asIs("none")}, pairs);
    QVERIFY(without && !without->oneRm);
}

void TestNoise::whichPairs() {
    const Points points{{40, 1.2}, {60, 1.0}, {80, 0.8}};
    std::vector<LiftSession> sessions;
    for (int id = 1; id <= 6; ++id)
        sessions.push_back(tests::session(id, points));
    sessions[1].repeatOf = SessionId{1};
    sessions[3].repeatOf = SessionId{3};
    sessions[3].conditions.device = DeviceId{9}; // another device: no repeat test of the first
    sessions[4].repeatOf = SessionId{99};
    sessions[5].repeatOf = SessionId{6};
    QCOMPARE(repeatPairs(sessions).size(), std::size_t(1));
    QVERIFY(repeatPairs(sessions)[0].first.session == SessionId{1});
    QVERIFY(repeatPairs(sessions)[0].second.session == SessionId{2});
    // Oldest first, whatever the order of the list; nobody else's session is repeated.
    sessions[5].repeatOf = SessionId{5};
    std::ranges::reverse(sessions);
    QCOMPARE(repeatPairs(sessions).size(), std::size_t(2));
    QVERIFY(repeatPairs(sessions)[0].first.session == SessionId{1});
    sessions[0].athlete = AthleteId{2};
    QCOMPARE(repeatPairs(sessions).size(), std::size_t(1));
    for (LiftSession& s : sessions)
        s.points.clear();
    QVERIFY(repeatPairs(sessions).empty());
}

void TestNoise::tooFew() {
    const Points points{{40, 1.2}, {60, 1.0}, {80, 0.8}};
    const auto none = liftNoise(tests::benchPull(), tests::coachMvt(0.3), {});
    QVERIFY(!none && none.why().why == NoAnswer::Why::NoRepeatTests);
    const std::vector one{pairOf(0, points, points)};
    QVERIFY(!liftNoise(tests::benchPull(), tests::coachMvt(0.3), one));
}

void TestNoise::linesThatTellNothing() {
    // Two loads each: typical errors by load, and no day-to-day part.
    const Points a{{40, 1.2}, {60, 1.0}};
    const Points b{{40, 1.22}, {60, 1.03}};
    const auto noise = noiseOf({pairOf(0, a, b), pairOf(1, b, a)});
    QCOMPARE(noise.atLoads.size(), std::size_t(2));
    QCOMPARE(noise.day.pairs, 0);
    QVERIFY(noise.day.origin == DayNoise::Origin::None);
    const auto chosen =
        chooseDayNoise(repeatSums(noise.used), {}, std::pair{0.025, std::string("a paper")});
    QCOMPARE(chosen.ownPairs, 0);
    QVERIFY(chosen.origin == DayNoise::Origin::Published);
}

void TestNoise::mixedUp() {
    const Points points{{40, 1.2}, {60, 1.0}, {80, 0.8}};
    std::vector pairs{pairOf(0, points, points), pairOf(1, points, points)};
    pairs[1].first.lift = pairs[1].second.lift = LiftId{2};
    QVERIFY_THROWS_EXCEPTION(BadInput, liftNoise(tests::benchPull(), tests::coachMvt(0.3), pairs));
}

void TestNoise::choice() {
    const auto sums = [](const std::vector<RepeatPair>& pairs) { return repeatSums(pairs); };
    const auto own = sums(simulated(3, 0.03, 0.01, 1));
    const auto all = sums(simulated(9, 0.03, 0.01, 2));
    QCOMPARE(own.pairs, 3.0);
    const std::pair published{0.025, std::string("a paper")};
    // Alone the published figure is a prior on 4 df, as wide as itself on 8 (t8 / t4 = 0.83).
    const auto prior = chooseDayNoise({}, {}, published);
    QVERIFY(prior.origin == DayNoise::Origin::Published);
    CHECK_NEAR(std::sqrt(prior.variance.value), 0.021, 1e-15);
    QCOMPARE(prior.variance.df, 4.0);
    CHECK_NEAR(prior.expectedRatio(), 1 / 0.7056, 1e-12);
    CHECK_NEAR(prior.slopeCv(), 0.021, 1e-15);
    QCOMPARE(prior.source, std::string("a paper"));
    // Others' repeats move the centre and leave the df; what has the larger share is named.
    const auto others = chooseDayNoise({}, all, published);
    QVERIFY(others.origin == DayNoise::Origin::LogLift);
    QCOMPARE(others.pairs, 9);
    QCOMPARE(others.variance.df, 4.0);
    CHECK_NEAR(others.othersShare, 9.0 / 13, 1e-12);
    // One's own bring df, from the first pair on.
    const auto three = chooseDayNoise(own, {}, published);
    QVERIFY(three.variance.df > 5 && three.variance.df < 7);
    QVERIFY(three.ownShare > 0.2 && three.origin == DayNoise::Origin::Published);
    const auto twenty = chooseDayNoise(sums(simulated(20, 0.03, 0.01, 3)), all, published);
    QVERIFY(twenty.origin == DayNoise::Origin::Athlete);
    QCOMPARE(twenty.pairs, 20);
    // Without a published figure three pairs must stand behind it.
    QVERIFY(chooseDayNoise({}, {}, {}).origin == DayNoise::Origin::None);
    QVERIFY(chooseDayNoise(sums(simulated(2, 0.03, 0.01, 1)), {}, {}).origin ==
            DayNoise::Origin::None);
    const auto bare = chooseDayNoise(own, all, {});
    QVERIFY(bare.origin == DayNoise::Origin::Athlete);
    CHECK_NEAR(bare.variance.value, noiseOf(simulated(3, 0.03, 0.01, 1)).day.variance.value, 1e-15);
    QCOMPARE(bare.slopeCv(), 0.0);
    QVERIFY(chooseDayNoise({}, all, {}).origin == DayNoise::Origin::LogLift);
}

namespace {

/// Logs of one athlete whose days vary so many times as published, with so many repeat tests.
struct PriorCase {
    double times = 1;
    int pairs = 0;
};
struct PriorTold {
    double inUse = 0;     ///< median SD in use over the true one
    double falsely = 0;   ///< share of changes of nothing at mid-load that leave out zero
    double width = 0;     ///< median half-width over that with the true SD known
    double published = 0; ///< mean share of the published figure
};

double middleOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

PriorTold playPrior(const PriorCase& c, int logs, unsigned seed) {
    constexpr double known = 0.028, scatter = 0.02, perLine = scatter * scatter / 5;
    const double truth = c.times * known;
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> nothing(0, std::sqrt(2 * (truth * truth + perLine)));
    std::vector<double> inUse, widths;
    PriorTold told;
    constexpr int draws = 20;
    const double z2 = 1.959964 * 1.959964;
    const double best = std::sqrt(z2 * 2 * (truth * truth + perLine));
    for (int i = 0; i < logs; ++i) {
        const auto own =
            repeatSums(simulated(c.pairs, truth, scatter, seed + static_cast<unsigned>(i)));
        const DayNoise noise = chooseDayNoise(own, {}, std::pair{known, std::string("a paper")});
        const double t = stats::tCritical(0.95, noise.variance.df);
        const double half = std::sqrt(z2 * 2 * perLine + t * t * 2 * noise.variance.value);
        inUse.push_back(std::sqrt(noise.variance.value) / truth);
        widths.push_back(half / best);
        told.published += (1 - noise.ownShare) / logs;
        for (int k = 0; k < draws; ++k)
            told.falsely += std::abs(nothing(engine)) > half ? 1.0 / draws / logs : 0;
    }
    told.inUse = middleOf(inUse);
    told.width = middleOf(widths);
    return told;
}

} // namespace

void TestNoise::whatThePriorDoes_data() {
    QTest::addColumn<double>("times");
    QTest::addColumn<int>("pairs");
    for (const double times : {0.3, 1.0, 1.6})
        for (const int pairs : {1, 6, 20})
            QTest::addRow("days %.1f times as published, %d pairs", times, pairs) << times << pairs;
}

/// The truth is known: days that vary 0.3, 1 and 1.6 times as published, scatter 0.02 m/s about
/// five points. The long form prints its row of tests/README.md: SLOPEBOOK_LONG=1.
void TestNoise::whatThePriorDoes() {
    QFETCH(double, times);
    QFETCH(int, pairs);
    const bool isLong = qEnvironmentVariableIsSet("SLOPEBOOK_LONG");
    const PriorTold told = playPrior({times, pairs}, isLong ? 4000 : 150, 11);
    if (isLong)
        qInfo("| %.1f | %d | %.2f | %.0f %% | %.1f %% | %.2f |", times, pairs, told.inUse,
              100 * told.published, 100 * told.falsely, told.width);
    if (pairs == 20) { // left behind, to either side
        QVERIFY(told.published < 0.2);
        QVERIFY2(std::abs(told.inUse - 1) < 0.25, QByteArray::number(told.inUse).constData());
        QVERIFY2(told.falsely < 0.065, QByteArray::number(told.falsely).constData());
        QVERIFY2(std::abs(told.width - 1) < 0.12, QByteArray::number(told.width).constData());
    } else if (pairs == 1) { // the published figure decides
        QVERIFY(told.published > 0.75);
        QVERIFY(times > 0.5 || told.inUse > 2);
        QVERIFY(times < 1.5 || told.inUse < 0.7);
    }
    if (times <= 1)
        QVERIFY2(told.falsely < 0.065, QByteArray::number(told.falsely).constData());
}

QTEST_APPLESS_MAIN(TestNoise)
#include "tst_noise.moc"
