// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/agreement.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <random>

using namespace slopebook;
using namespace slopebook::answers;
using Points = std::vector<std::pair<double, double>>;

namespace {

const DeviceId left{1}, right{2};

/// Both devices' sessions of one athlete's day.
DevicePair pairOf(int athlete, const Points& first, const Points& second) {
    DevicePair pair{.first = tests::session(2 * athlete, first),
                    .second = tests::session(2 * athlete + 1, second)};
    for (LiftSession* s : {&pair.first, &pair.second})
        s->athlete = AthleteId{athlete};
    pair.second.date = pair.first.date;
    pair.second.ordinal = 2;
    pair.second.conditions.device = right;
    return pair;
}

std::vector<LiftSession> both(const std::vector<DevicePair>& pairs) {
    std::vector<LiftSession> sessions;
    for (const DevicePair& pair : pairs) {
        sessions.push_back(pair.first);
        sessions.push_back(pair.second);
    }
    return sessions;
}

} // namespace

class TestAgreement : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void blandAndAltman();
    void setsOfOneSession();
    void setsOfOneAthlete();
    void limitsHoldWhereSetsAreAlike();
    void againstR();
    void proportional();
    void whichSessions();
    void whichSets();
    void biasEitherWay();
    void refusals();
};

// Bland and Altman 1986, Lancet 1:307-310: peak flow by two meters, first readings, here a
// thousandth of it; results as printed there (published-values: rounded, limits of 2 SD) and worked
// out from the data: mean -2.1176470588, SD 38.7651298736, SE 9.401925.
void TestAgreement::blandAndAltman() {
    const std::vector<double> wright{494, 395, 516, 434, 476, 557, 413, 442, 650,
                                     433, 417, 656, 267, 478, 178, 423, 427};
    const std::vector<double> mini{512, 430, 520, 428, 500, 600, 364, 380, 658,
                                   445, 432, 626, 260, 477, 259, 350, 451};
    std::vector<DevicePair> pairs;
    for (std::size_t i = 0; i < wright.size(); ++i)
        pairs.push_back(
            pairOf(static_cast<int>(i) + 1, {{60, wright[i] / 1000}}, {{60, mini[i] / 1000}}));
    const auto found = devicePairs(both(pairs), left, right);
    QCOMPARE(found.size(), std::size_t(17));
    const auto study = agreementStudy(left, right, found);
    QVERIFY(study);
    QCOMPARE(study->athletes, 17);
    QCOMPARE(study->unpaired, 0);
    const auto& f = study->figures;
    CHECK_NEAR(1000 * f.bias, -2.1176470588, 1e-9);
    CHECK_NEAR(1000 * f.sd, 38.7651298736, 1e-9);
    CHECK_NEAR(1000 * f.biasInterval.low, -22.0, 0.06);
    CHECK_NEAR(1000 * f.biasInterval.high, 17.8, 0.06);
    CHECK_NEAR(1000 * f.limits.low, -78.097302, 1e-6);
    CHECK_NEAR(1000 * f.limits.high, 73.862007, 1e-6);
    CHECK_NEAR(1000 * f.lowerLimitInterval.low, -114.3 + 0.04 * 38.8, 0.2);
    CHECK_NEAR(1000 * f.upperLimitInterval.high, 110.1 - 0.04 * 38.8, 0.2);
    // One set each: counting athletes and counting sets is the same.
    CHECK_NEAR(1000 * std::sqrt(study->biasVariance.value), 9.401925, 1e-6);
    QCOMPARE(study->biasVariance.df, 16.0);
    QVERIFY(study->notes.empty());
}

void TestAgreement::setsOfOneSession() {
    // Differences 0.01 0.03, 0.05 0.07, -0.03 -0.01 about a mean of 0.02: sums of what is left by
    // session 0, 0.08, -0.08. By hand: 0.0128 / 36 x 3/2 on 2 df; of the sets 0.0014 / 6 on 5.
    const auto study =
        agreementStudy(left, right,
                       std::vector{pairOf(1, {{40, 1.01}, {60, 0.83}}, {{40, 1.0}, {60, 0.8}}),
                                   pairOf(2, {{40, 1.15}, {60, 0.97}}, {{40, 1.1}, {60, 0.9}}),
                                   pairOf(3, {{40, 0.97}, {60, 0.69}}, {{40, 1.0}, {60, 0.7}})});
    QVERIFY(study);
    CHECK_NEAR(study->figures.bias, 0.02, 1e-15);
    CHECK_NEAR(study->figures.biasSe * study->figures.biasSe, 0.0014 / 6, 1e-15);
    CHECK_NEAR(study->biasVariance.value, 0.0128 / 36 * 1.5, 1e-15);
    QCOMPARE(study->biasVariance.df, 2.0);
    QVERIFY(hasNote(study->notes, Note::Kind::Other));
}

void TestAgreement::setsOfOneAthlete() {
    // The same differences 0.01 0.03, 0.05 0.07, -0.03 -0.01. By hand: between athletes 0.0064 on 2
    // df, MSB 0.0032; within 0.0006 on 3, MSW 0.0002; m0 = 2: between (0.0032 - 0.0002) / 2.
    const std::vector pairs{pairOf(1, {{40, 1.01}, {60, 0.83}}, {{40, 1.0}, {60, 0.8}}),
                            pairOf(2, {{40, 1.15}, {60, 0.97}}, {{40, 1.1}, {60, 0.9}}),
                            pairOf(3, {{40, 0.97}, {60, 0.69}}, {{40, 1.0}, {60, 0.7}})};
    const auto study = agreementStudy(left, right, pairs);
    QVERIFY(study && study->groups);
    QVERIFY(study->grouped == AgreementStudy::Grouped::ByAthlete);
    CHECK_NEAR(study->groups->within, 0.0002, 1e-15);
    CHECK_NEAR(study->groups->between, 0.0015, 1e-15);
    CHECK_NEAR(study->figures.limits.high, 0.02 + 1.96 * std::sqrt(0.0017), 1e-14);
    // One athlete's three days: sessions are counted, and it is said for whom that holds.
    auto one = pairs;
    for (std::size_t i = 0; i < one.size(); ++i)
        for (LiftSession* s : {&one[i].first, &one[i].second}) {
            s->athlete = AthleteId{1};
            s->date = tests::dayNumber(static_cast<int>(i));
        }
    const auto alone = agreementStudy(left, right, one);
    QVERIFY(alone && alone->grouped == AgreementStudy::Grouped::BySession);
    CHECK_NEAR(alone->figures.limits.high, study->figures.limits.high, 1e-14);
    QVERIFY(english(alone->notes.back().words).ends_with("hold for these athletes alone"));
    // Two sessions are no groups: 1986, each set for itself.
    one.pop_back();
    const auto two = agreementStudy(left, right, one);
    QVERIFY(two && two->grouped == AgreementStudy::Grouped::No && !two->groups);
}

void TestAgreement::limitsHoldWhereSetsAreAlike() {
    // Truth: between athletes 0.02, within 0.01 m/s, no bias; 8 athletes with 2 to 6 sets. The
    // intervals of a limit hold it in 95 %; those that count sets hold it far more seldom.
    std::mt19937_64 engine(3);
    std::normal_distribution<double> between(0, 0.02), within(0, 0.01);
    const double limit = 1.96 * std::hypot(0.02, 0.01);
    constexpr int studies = 1200;
    int grouped = 0, counted = 0;
    for (int i = 0; i < studies; ++i) {
        std::vector<std::vector<double>> groups(8);
        std::vector<double> all, zero;
        for (std::size_t k = 0; k < groups.size(); ++k) {
            const double own = between(engine);
            for (std::size_t m = 0; m < 2 + k % 5; ++m) {
                groups[k].push_back(own + within(engine));
                all.push_back(groups[k].back());
            }
        }
        zero.resize(all.size());
        const auto g = stats::groupedLimits(groups);
        const auto a = stats::agreement(all, zero);
        QVERIFY(g && a);
        const auto holds = [&](const stats::Interval& x) {
            return x.low <= limit && limit <= x.high;
        };
        grouped += holds(g->upperLimitInterval) ? 1 : 0;
        counted += holds(a->upperLimitInterval) ? 1 : 0;
    }
    QVERIFY2(grouped > 0.93 * studies && grouped < 0.985 * studies,
             QByteArray::number(grouped).constData());
    QVERIFY2(counted < 0.85 * studies, QByteArray::number(counted).constData());
    QVERIFY(!stats::groupedLimits(std::vector<std::vector<double>>{{1, 2}, {2, 3}}));
    QVERIFY(!stats::groupedLimits(std::vector<std::vector<double>>{{1}, {2}, {3}}));
}

void TestAgreement::againstR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: agreement studies are not checked against it");
    std::mt19937_64 engine(9);
    std::normal_distribution<double> noise(0, 0.01), ofPerson(0, 0.015);
    std::vector<DevicePair> pairs;
    QByteArray input;
    for (int i = 1; i <= 6; ++i) {
        Points first, second;
        const double own = ofPerson(engine);
        for (int k = 0; k < 3 + i % 3; ++k) {
            const double load = 30 + 15 * k;
            const double truth = 1.6 - 0.012 * load;
            first.emplace_back(load, truth + 0.02 + own + noise(engine));
            second.emplace_back(load, truth + noise(engine));
            input += QByteArray::number(i) + " " +
                     QByteArray::number(first.back().second, 'g', 17) + " " +
                     QByteArray::number(second.back().second, 'g', 17) + "\n";
        }
        pairs.push_back(pairOf(i, first, second));
    }
    const auto study = agreementStudy(left, right, pairs);
    QVERIFY(study);
    const auto r = tests::runR(QStringLiteral("agreement.R"), {}, input);
    const auto& f = study->figures;
    const auto& b = study->biasVariance;
    const std::vector<std::pair<const char*, double>> ours{
        {"bias", f.bias},
        {"bias.low", f.biasInterval.low},
        {"bias.high", f.biasInterval.high},
        {"limit.low", f.limits.low},
        {"limit.high", f.limits.high},
        {"sd", f.sd},
        {"between", study->groups->between},
        {"within", study->groups->within},
        {"limit.low.low", f.lowerLimitInterval.low},
        {"limit.low.high", f.lowerLimitInterval.high},
        {"limit.high.low", f.upperLimitInterval.low},
        {"limit.high.high", f.upperLimitInterval.high},
        {"slope", f.slope},
        {"slope.low", f.slopeInterval.low},
        {"slope.high", f.slopeInterval.high},
        {"intercept", f.intercept},
        {"used.variance", b.value},
        {"used.df", b.df}};
    for (const auto& [name, value] : ours) {
        QVERIFY2(r.contains(name), name);
        QVERIFY2(tests::digitsAgreed(value, r[name]) > 9, name);
    }
    QCOMPARE(b.df, 5.0); // the case is one that counts athletes
}

void TestAgreement::proportional() {
    // One device reads a tenth more, but for half a millimetre a second.
    std::vector<DevicePair> pairs;
    for (int i = 1; i <= 4; ++i) {
        Points first, second;
        for (int k = 0; k < 5; ++k) {
            const double v = 1.5 - 0.25 * k + 0.01 * i;
            first.emplace_back(30 + 15 * k, 1.1 * v + (k % 2 == 0 ? 0.0005 : -0.0005));
            second.emplace_back(30 + 15 * k, v);
        }
        pairs.push_back(pairOf(i, first, second));
    }
    const auto study = agreementStudy(left, right, pairs);
    QVERIFY(study && study->figures.proportional());
    CHECK_NEAR(study->figures.slope, 1.1, 1e-3);
    QVERIFY(english(study->notes.front().words).find("proportion") != std::string::npos);
}

void TestAgreement::whichSessions() {
    const Points ladder{{40, 1.2}, {60, 1.0}, {80, 0.8}};
    std::vector sessions = both({pairOf(1, ladder, ladder), pairOf(2, ladder, ladder)});
    QCOMPARE(devicePairs(sessions, left, right).size(), std::size_t(2));
    QCOMPARE(devicePairs(sessions, right, left).front().first.conditions.device,
             std::optional(right));
    QVERIFY(devicePairs(sessions, left, left).empty());
    QVERIFY(devicePairs(sessions, left, DeviceId{3}).empty());
    auto repeated = sessions;
    repeated[1].repeatOf = repeated[0].session; // two tests, not one test seen twice
    QCOMPARE(devicePairs(repeated, left, right).size(), std::size_t(1));
    auto nextDay = sessions;
    nextDay[3].date = tests::dayNumber(300);
    QCOMPARE(devicePairs(nextDay, left, right).size(), std::size_t(1));
    auto otherLoads = sessions;
    for (Point& p : otherLoads[1].points)
        p.load += 2.5;
    QCOMPARE(devicePairs(otherLoads, left, right).size(), std::size_t(1));
    auto otherPerson = sessions;
    otherPerson[1].athlete = AthleteId{9};
    QCOMPARE(devicePairs(otherPerson, left, right).size(), std::size_t(1));
    auto nothing = sessions;
    nothing[0].points.clear();
    QCOMPARE(devicePairs(nothing, left, right).size(), std::size_t(1));
}

void TestAgreement::whichSets() {
    // The second device missed the first set at 60 and has another order number at 40.
    auto pair = pairOf(1, {{40, 1.2}, {60, 1.0}, {60, 1.01}, {80, 0.8}, {90, 0.7}},
                       {{40, 1.22}, {60, 1.03}, {80, 0.81}});
    pair.second.points[0].set = 2;
    pair.second.points[1].set = 3;
    pair.second.points[2].set = 4;
    const auto sets = pairedSets(pair);
    QCOMPARE(sets.size(), std::size_t(3));
    QCOMPARE(sets[0].load, 40.0); // alone at its load
    QCOMPARE(sets[1].first, 1.01);
    QCOMPARE(sets[1].second, 1.03);
    CHECK_NEAR(sets[1].mean(), 1.02, 1e-15);
    CHECK_NEAR(sets[1].difference(), -0.02, 1e-15);
    const auto study = agreementStudy(left, right, std::vector{pair});
    QVERIFY(study);
    QCOMPARE(study->unpaired, 2);
    QVERIFY(hasNote(study->notes, Note::Kind::Unpaired));
    // Where neither order nor a load alone says which set is which, none is guessed.
    pair.second.points[1].set = 7;
    QCOMPARE(pairedSets(pair).size(), std::size_t(2));
}

void TestAgreement::biasEitherWay() {
    const auto study = agreementStudy(left, right,
                                      std::vector{pairOf(1, {{40, 1.22}, {60, 1.03}, {80, 0.81}},
                                                         {{40, 1.2}, {60, 1}, {80, 0.8}})});
    QVERIFY(study);
    CHECK_NEAR(biasOf(*study, left, right)->first, -0.02, 1e-12);
    CHECK_NEAR(biasOf(*study, right, left)->first, 0.02, 1e-12);
    QCOMPARE(biasOf(*study, left, right)->second.df, 2.0);
    QVERIFY(!biasOf(*study, left, DeviceId{3}));
    QVERIFY(!biasOf(*study, left, {}));
    QVERIFY(!biasOf(*study, left, left));
}

void TestAgreement::refusals() {
    const auto none = agreementStudy(left, right, {});
    QVERIFY(!none && none.why().why == NoAnswer::Why::TooFewSessions);
    const auto two = agreementStudy(
        left, right, std::vector{pairOf(1, {{40, 1.2}, {60, 1.0}}, {{40, 1.2}, {60, 1.0}})});
    QVERIFY(!two && english(two.why().reason).find("2 sets") == 0);
}

QTEST_APPLESS_MAIN(TestAgreement)
#include "tst_agreement.moc"
