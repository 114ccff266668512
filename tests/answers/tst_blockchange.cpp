// SPDX-License-Identifier: GPL-3.0-or-later
// Block against block: of one session a side to the last digit what two sessions say, of several
// what R and nlme say of them.
#include "core/answers/blockchange.h"
#include "core/answers/fairreps.h"
#include "core/answers/sharedloads.h"
#include "core/answers/sidefigures.h"
#include "core/answers/smallest.h"
#include "core/stats/daysalike.h"
#include "tests/answers/builders.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <cmath>
#include <random>
#include <string>

using namespace slopebook;
using namespace slopebook::answers;
using tests::session;

namespace {

const auto mvt = tests::coachMvt(0.45);

class Maker {
public:
    explicit Maker(unsigned seed) : m_engine(seed) {}
    double uniform(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    double normal(double sd) { return std::normal_distribution<double>(0, sd)(m_engine); }
    LiftSession made(int id, const std::vector<double>& loads, double gain, double day,
                     double scatter) {
        std::vector<std::pair<double, double>> points;
        const double shift = gain + normal(day);
        for (const double load : loads)
            points.emplace_back(load, 1.6 - 0.0115 * load + shift + normal(scatter));
        return session(id, points);
    }

private:
    std::mt19937_64 m_engine;
};

DayNoise published() {
    return chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
}

void same(double a, double b, const char* what) {
    QVERIFY2(a == b || (std::isnan(a) && std::isnan(b)),
             qPrintable(
                 QStringLiteral("%1: %2 and %3").arg(what).arg(a, 0, 'g', 17).arg(b, 0, 'g', 17)));
}

void same(const stats::Interval& a, const stats::Interval& b, const char* what) {
    same(a.low, b.low, what);
    same(a.high, b.high, what);
}

void same(const ReadChange& a, const ReadChange& b, const char* what) {
    same(a.change, b.change, what);
    same(a.interval, b.interval, what);
    same(a.equivalence, b.equivalence, what);
    same(a.bend, b.bend, what);
    QCOMPARE(a.at80.has_value(), b.at80.has_value());
    if (a.at80)
        same(*a.at80, *b.at80, what);
    QCOMPARE(a.straight.has_value(), b.straight.has_value());
    if (a.straight)
        same(*a.straight, *b.straight, what);
    QVERIFY(a.reading == b.reading && a.under == b.under && a.notComparable == b.notComparable);
}

} // namespace

class TestBlockChange : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void oneSessionABlockIsTwoSessions();
    void twoLoadsASideIsRefusedAsTwoSessionsAre();
    void sidesStandAsFarApartAsTheChange();
    void agreesWithNlme();
    void agreesWithR();
    void lightDaysCount();
    void daysNearEachOtherAreAlike();
    void aBlocksOwnSpreadCountsAsRepeats();
    void whatMayNotStandBesideOthersIsLeftOut();
    void readAtItsEnd();
    void repsOfAll();
};

void TestBlockChange::oneSessionABlockIsTwoSessions() {
    Maker maker(11);
    const std::vector<std::vector<double>> ladders{
        {40, 52, 64, 76, 88}, {30, 40, 50, 60}, {20, 30, 40}, {30, 40, 40, 50, 60, 70, 80}};
    const std::vector<Lift> lifts{{.name = "Bench pull", .kind = VelocityKind::Propulsive},
                                  {.name = "Bench press"},
                                  {.name = "Something", .kind = VelocityKind::Propulsive},
                                  {.name = "Throw", .ballistic = true}};
    int readings = 0;
    for (int i = 0; i < 60; ++i) {
        const auto& lift = lifts[std::size_t(i) % lifts.size()];
        auto from = maker.made(1, ladders[std::size_t(i) % 4], 0, 0.02, 0.012);
        auto to = maker.made(2, ladders[std::size_t(i / 4) % 4], 0.05, 0.02, 0.012);
        ComparisonSettings two{.checkLoads = {Mass{45'000}, Mass{90'000}},
                               .dayNoise = published(),
                               .bend = bendOf(lift),
                               .smallestVelocity = Smallest{0.06},
                               .smallestOneRm = Smallest{4}};
        if (i % 5 == 1)
            two.level = 0.9;
        if (i % 7 == 2) {
            to.conditions.device = DeviceId{2};
            two.deviceBias = {{0.015, {0.004 * 0.004, 16}}};
        }
        if (i % 7 == 3)
            to.conditions.device = DeviceId{3}; // no study: not comparable
        if (i % 7 == 4)
            to.conditions.surface = "turf", from.conditions.surface = "boards";
        if (i % 7 == 5)
            from.conditions.notComparable = "the bar slipped";
        const BlockSettings blocks{
            .with = two,
            .biasOf = [&](const LiftSession&, const LiftSession&) { return two.deviceBias; }};
        const Answer<Mvt> threshold = lift.ballistic ? Answer<Mvt>(NoAnswer{}) : Answer<Mvt>(mvt);
        const auto expected = compare(lift, threshold, from, to, two);
        const auto found = compareBlocks(lift, threshold, {"A", {from}}, {"B", {to}}, blocks);
        QVERIFY(expected && found);
        QVERIFY(found->uncertainty.sides.has_value());
        QCOMPARE(found->at.size(), expected->at.size());
        for (std::size_t j = 0; j < found->at.size(); ++j) {
            const ChangeAt &a = found->at[j], &b = expected->at[j];
            QVERIFY(a.load == b.load);
            same(a.se, b.se, "SE");
            same(a.interval, b.interval, "lines alone");
            same(a.band, b.band, "band alone");
            same(a.readingBand, b.readingBand, "band");
            same(a.read, b.read, "reading");
            QCOMPARE(a.extrapolated, b.extrapolated);
            QVERIFY(a.seenFrom == b.seenFrom && a.seenTo == b.seenTo);
            QCOMPARE(a.unsettled.has_value(), b.unsettled.has_value());
            ++readings;
        }
        QCOMPARE(bool(found->oneRm), bool(expected->oneRm));
        if (found->oneRm) {
            same(found->oneRm->estimate, expected->oneRm->estimate, "1RM");
            QCOMPARE(found->oneRm->interval.has_value(), expected->oneRm->interval.has_value());
            if (found->oneRm->interval)
                same(*found->oneRm->interval, *expected->oneRm->interval, "1RM alone");
            same(found->oneRm->read, expected->oneRm->read, "1RM's reading");
        }
        // What is held against what is said first; all else is the same.
        std::string told = english(found->sentence);
        if (const std::string held = "Block against block"; told.starts_with(held))
            told.replace(0, held.size(), "Day against day");
        QCOMPARE(told, english(expected->sentence));
    }
    QVERIFY(readings > 200);
}

void TestBlockChange::twoLoadsASideIsRefusedAsTwoSessionsAre() {
    const auto a = session(1, {{40, 1.1}, {60, 0.9}}), b = session(2, {{40, 1.15}, {60, 0.95}});
    const auto found = compareBlocks(tests::benchPull(), mvt, {"A", {a}}, {"B", {b}}, {});
    QVERIFY(!found);
    QCOMPARE(int(found.why().why), int(NoAnswer::Why::NeedsThirdLoad));
    QVERIFY(!compareBlocks(tests::benchPull(), mvt, {"A", {}}, {"B", {b}}, {}));
    QVERIFY(!compareBlocks(tests::benchPull(), mvt, {"A", {b}}, {"B", {b}}, {}));
}

// What is shown before and after is of the same sessions as the change, whatever their ladders.
void TestBlockChange::sidesStandAsFarApartAsTheChange() {
    Maker maker(12);
    const std::vector<std::vector<double>> ladders{
        {40, 52, 64, 76, 88}, {30, 40, 50, 60}, {20, 30, 40}, {30, 40, 50, 60, 70, 80}};
    int loads = 0, maxima = 0, apart = 0;
    for (int i = 0; i < 40; ++i) {
        int id = 0;
        const auto side = [&](int days, double gain) {
            std::vector<LiftSession> all;
            for (int day = 0; day < days; ++day)
                all.push_back(
                    maker.made(++id, ladders[std::size_t(i + day) % 4], gain, 0.02, 0.012));
            return all;
        };
        const auto first = side(1 + i % 3, 0), second = side(2 + i % 2, 0.05);
        BlockSettings blocks{
            .with = {.checkLoads = {Mass{45'000}}, .dayNoise = published(), .bend = {}},
            .biasOf = [](const LiftSession&, const LiftSession&) {
                return std::optional<DeviceBias>();
            }};
        if (i % 4 == 3) // days of the later side on another device, whose bias is known
            blocks.biasOf = [](const LiftSession& from, const LiftSession& to) {
                return from.conditions.device == to.conditions.device
                           ? std::optional<DeviceBias>()
                           : std::optional<DeviceBias>({0.015, {0.004 * 0.004, 16}});
            };
        auto later = second;
        if (i % 4 == 3)
            for (LiftSession& each : later)
                each.conditions.device = DeviceId{2};
        const auto c = compareBlocks(tests::benchPull(), mvt, {"A", first}, {"B", later}, blocks);
        QVERIFY(c && c->ofSeveral());
        for (const ChangeAt& at : c->at) {
            const auto [before, after] = speedsOf(*c, kilograms(at.load));
            QVERIFY(std::abs(after - before - at.read.change) < 1e-12);
            apart += std::abs(before - c->from.line.at(kilograms(at.load))) > 1e-3;
            ++loads;
        }
        if (const auto both = maximaOf(*c); c->oneRm && both) {
            QVERIFY(std::abs(both->after - both->before - c->oneRm->read.change) < 1e-9);
            ++maxima;
        }
    }
    QVERIFY(loads > 60 && maxima > 20);
    QVERIFY(apart > 20); // a day alone would stand elsewhere
}

namespace {
QByteArray rows(const std::vector<LiftSession>& from, const std::vector<LiftSession>& to) {
    QByteArray text;
    int place = 0;
    for (const auto* side : {&from, &to})
        for (const LiftSession& each : *side) {
            ++place;
            for (const Point& p : each.points)
                text += QByteArray::number(side == &to) + ' ' + QByteArray::number(place) + ' ' +
                        QByteArray::number(p.load, 'g', 17) + ' ' +
                        QByteArray::number(p.velocity, 'g', 17) + '\n';
        }
    return text;
}

void agrees(const QMap<QString, double>& r, const QString& name, double found, double digits = 6) {
    QVERIFY2(r.contains(name), qPrintable(name));
    QVERIFY2(tests::digitsAgreed(found, r[name]) >= digits,
             qPrintable(QStringLiteral("%1: %2, R %3")
                            .arg(name)
                            .arg(found, 0, 'g', 12)
                            .arg(r[name], 0, 'g', 12)));
}
} // namespace

/// At the mean load of a ladder, days that differ in level alone and know nothing of each other:
/// the change and its SE of the mean of K days are those of a random intercept by REML.
void TestBlockChange::agreesWithNlme() {
    if (!tests::haveR())
        QSKIP("R is not on this machine: the block's figures are checked against nothing");
    Maker maker(2);
    // Scatter alike in all sessions, as the model has it: a mix of what is neither level nor slope.
    const auto made = [&](int id, double gain) {
        const double turn = maker.uniform(0, 6.28), day = maker.normal(0.025);
        std::vector<std::pair<double, double>> points;
        for (int i = -2; i <= 2; ++i) {
            const double bent = (i * i - 2) / std::sqrt(14), waved = (5 * i * i * i - 17 * i) / 6.0;
            points.emplace_back(70 + 15 * i, 0.8 - 0.17 * i + gain + day +
                                                 0.02 * (std::cos(turn) * bent +
                                                         std::sin(turn) * waved / std::sqrt(10)));
        }
        return session(id, points);
    };
    std::vector<LiftSession> from, to;
    for (int i = 0; i < 5; ++i) {
        from.push_back(made(i + 1, 0));
        to.push_back(made(i + 6, 0.03));
    }
    const auto r =
        tests::runR(QStringLiteral("blocks.R"), {QStringLiteral("nlme")}, rows(from, to));
    const Lift thrown{.name = "Throw", .ballistic = true};
    BlockSettings settings{.with = {.checkLoads = {Mass{70'000}}}};
    settings.with.dayNoise = {.variance = {r["tau2"], 8}, .origin = DayNoise::Origin::Athlete};
    const auto pair = blockPair(thrown, NoAnswer{}, {"A", from}, {"B", to}, settings);
    QVERIFY(pair);
    const auto& u = pair->uncertainty;
    agrees(r, QStringLiteral("change"), u.change(70));
    // At phi = 0 the K days' variance is V / K each: what clustering adds is taken off.
    const ChangeParts parts = u.at(70);
    const double alike = stats::clustering(5);
    const double perSide = r["s2"] / (5 * 5);
    agrees(r, QStringLiteral("se"),
           std::sqrt((parts.earlier.value + parts.later.value) * perSide /
                         (u.sides->earlier.scatter.s2 / 25) +
                     2 * parts.day.value / alike));
}

/// Unequal ladders and light days, all parts and the interval of the max, by a plain R of its own.
void TestBlockChange::agreesWithR() {
    if (!tests::haveR())
        QSKIP("R is not on this machine: the block's figures are checked against nothing");
    Maker maker(5);
    const std::vector<std::vector<double>> ladders{
        {40, 52, 64, 76, 88}, {30, 40, 50, 60, 70, 80, 90}, {45, 60, 75, 85}, {42, 55, 70, 82, 86}};
    for (int round = 0; round < 4; ++round) {
        std::vector<LiftSession> from, to;
        for (int i = 0; i < 2 + round; ++i)
            from.push_back(maker.made(i + 1, ladders[std::size_t(i + round) % 4], 0, 0.02, 0.012));
        for (int i = 0; i < 4; ++i)
            to.push_back(maker.made(i + 11, ladders[std::size_t(i) % 4], 0.05, 0.02, 0.012));
        const auto r =
            tests::runR(QStringLiteral("blocks.R"), {QStringLiteral("rule")}, rows(from, to));
        BlockSettings settings;
        settings.with.checkLoads = {Mass{60'000}};
        settings.dayNoise = [](std::span<const stats::DaySpread> spreads,
                               std::span<const LiftSession>) {
            return chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")}, spreads);
        };
        const auto pair = blockPair(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
        QVERIFY(pair);
        const auto& u = pair->uncertainty;
        agrees(r, QStringLiteral("s2"), u.sides->earlier.scatter.s2, 9);
        agrees(r, QStringLiteral("sd2"), pair->dayNoise.variance.value, 8);
        agrees(r, QStringLiteral("nu"), pair->dayNoise.variance.df, 8);
        agrees(r, QStringLiteral("change"), u.change(60), 8);
        agrees(r, QStringLiteral("low"), u.straight(60, 0.95).low, 7);
        agrees(r, QStringLiteral("high"), u.straight(60, 0.95).high, 7);
        const auto max = u.maxStraight(0.45, 0.95);
        QVERIFY(max);
        agrees(r, QStringLiteral("max"), *u.maxOfLater(0.45) - *u.maxOfEarlier(0.45), 7);
        agrees(r, QStringLiteral("max_low"), max->low, 6);
        agrees(r, QStringLiteral("max_high"), max->high, 6);
    }
}

/// Light sets of ordinary days, also of one load, tell of the loads they held and of no others.
void TestBlockChange::lightDaysCount() {
    Maker maker(3);
    std::vector<LiftSession> testDays, withDays;
    testDays.push_back(maker.made(1, {30, 45, 60, 75, 85}, 0, 0.02, 0.01));
    withDays = testDays;
    withDays.push_back(maker.made(2, {45}, 0, 0.02, 0.01));
    withDays.push_back(maker.made(3, {45, 45}, 0, 0.02, 0.01));
    withDays.push_back(maker.made(4, {30, 45}, 0, 0.02, 0.01));
    const auto later = maker.made(9, {30, 45, 60, 75, 85}, 0.05, 0.02, 0.01);
    BlockSettings settings;
    settings.with.dayNoise = published();
    settings.with.checkLoads = {Mass{45'000}};
    const auto lone = blockPair(tests::benchPull(), mvt, {"A", testDays}, {"B", {later}}, settings);
    const auto many = blockPair(tests::benchPull(), mvt, {"A", withDays}, {"B", {later}}, settings);
    QVERIFY(lone && many);
    const auto at = [](const BlockPair& pair, double x) {
        return mixedAt(pair.uncertainty.sides->earlier, x, pair.uncertainty.day);
    };
    QCOMPARE(at(*many, 45).sessions, 4);
    QCOMPARE(at(*many, 40).sessions, 2); // the two-load day covers it, the others do not
    QCOMPARE(at(*many, 75).sessions, 1);
    QVERIFY(many->uncertainty.straight(45, 0.95).width() <
            0.95 * lone->uncertainty.straight(45, 0.95).width());
    QCOMPARE(many->uncertainty.straight(75, 0.95).width(),
             lone->uncertainty.straight(75, 0.95).width());
    // Where nobody reaches, those that come as near: the test, and not the light days.
    QCOMPARE(at(*many, 110).sessions, 1);
    QVERIFY(at(*many, 110).extrapolated);
    double shares = 0;
    for (const double share : at(*many, 45).shares)
        shares += share;
    QCOMPARE(shares, 1.0);
    // Blocks of nothing but light days are read at the loads that they share.
    const std::vector<LiftSession> light{withDays[1], withDays[2]};
    const auto ofLight = blockPair(tests::benchPull(), mvt, {"A", light},
                                   {"B", {maker.made(12, {45}, 0.1, 0, 0)}}, settings);
    QVERIFY(ofLight);
    QVERIFY(ofLight->uncertainty.change(45) > 0);
    QCOMPARE(at(*ofLight, 60).sessions, 0);
    QVERIFY(!compareBlocks(tests::benchPull(), mvt, {"A", light}, {"B", {later}}, settings));
}

/// C by its definition (method section 12), and the sum over unequal weights by its own.
void TestBlockChange::daysNearEachOtherAreAlike() {
    QCOMPARE(stats::clustering(1), 1.0);
    QCOMPARE(stats::clustering(2), 1.5);                   // 1 + 2 (1 - 1/2) 0.5
    QCOMPARE(stats::clustering(3), 1 + 2.0 / 3 + 1.0 / 6); // 2 (2/3) .5 + 2 (1/3) .25
    for (const int k : {1, 2, 5, 8}) {
        const std::vector<double> equal(std::size_t(k), 1.0 / k);
        QVERIFY(std::abs(stats::varianceOfDays(equal) - stats::clustering(k) / k) < 1e-12);
    }
    const std::vector<double> w{0.5, 0.2, 0.3};
    double sum = 0;
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j)
            sum += w[std::size_t(i)] * w[std::size_t(j)] * std::pow(0.5, std::abs(i - j));
    QVERIFY(std::abs(stats::varianceOfDays(w) - sum) < 1e-15);
}

void TestBlockChange::aBlocksOwnSpreadCountsAsRepeats() {
    const stats::DaySpread still{.days = 5, .square = 0.0001, .within = 0.00005};
    const stats::DaySpread wild{.days = 5, .square = 0.01, .within = 0.00005};
    const auto prior = stats::moderated(0.025, {}, {});
    const auto calm = stats::moderated(0.025, {}, {}, std::array{still});
    const auto rough = stats::moderated(0.025, {}, {}, std::array{wild});
    QVERIFY(calm.variance.value < prior.variance.value);
    QVERIFY(rough.variance.value > 4 * prior.variance.value);
    // by hand: w = v / c2, C(5) = 2.225, tr A = 5 - C; tr A^2 = tr R^2 - 2 r'r / 5 + (sum r)^2 / 25
    // with r = 1.9375, 2.375, 2.5, 2.375, 1.9375 and tr R^2 = 5 + 2 (4/4 + 3/16 + 2/64 + 1/256)
    const double w = 0.00005 / (0.021 * 0.021), first = 5 - 2.225;
    const double rows = 2 * 1.9375 * 1.9375 + 2 * 2.375 * 2.375 + 2.5 * 2.5;
    const double second =
        5 + 2 * (1 + 3.0 / 16 + 2.0 / 64 + 1.0 / 256) - 2 * rows / 5 + 11.125 * 11.125 / 25;
    const double own = first * first / (second + 2 * w * first + 4 * w * w);
    QVERIFY(std::abs(calm.variance.df - (4 + own)) < 1e-9);
    // days that are not alike would give (K - 1) / (1 + w)^2: fewer than that are left of them
    QVERIFY(own < 4 / ((1 + w) * (1 + w)));
    // days of nothing but scatter: no day-to-day noise is made of it
    QVERIFY(calm.ownShare > 0.3 && prior.ownShare == 0);
}

void TestBlockChange::whatMayNotStandBesideOthersIsLeftOut() {
    Maker maker(8);
    std::vector<LiftSession> from, to;
    for (int i = 0; i < 3; ++i) {
        from.push_back(maker.made(i + 1, {40, 50, 60, 70}, 0, 0.02, 0.01));
        to.push_back(maker.made(i + 11, {40, 50, 60, 70}, 0.04, 0.02, 0.01));
    }
    from[1].conditions.notComparable = "sore shoulder";
    to[0].conditions.device = DeviceId{7};
    to[2].conditions.surface = "turf";
    for (auto& each : from)
        each.conditions.surface = "boards";
    BlockSettings settings;
    settings.with.dayNoise = published();
    const auto pair = blockPair(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
    QVERIFY(pair);
    QCOMPARE(pair->from.sessions.size(), std::size_t(2));
    QCOMPARE(pair->from.leftOut.size(), std::size_t(1));
    QCOMPARE(pair->to.leftOut.size(), std::size_t(1));
    QVERIFY(pair->under.notComparable.empty());
    QCOMPARE(pair->under.changes.size(), std::size_t(1)); // the surface, told once
    // A study of the two devices brings the session back, its bias off.
    settings.biasOf = [](const LiftSession&, const LiftSession&) {
        return std::optional<DeviceBias>({0.5, {1e-6, 20}});
    };
    const auto studied = blockPair(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
    QCOMPARE(studied->to.sessions.size(), std::size_t(3));
    QCOMPARE(studied->to.sessions[0].points[0].velocity, to[0].points[0].velocity - 0.5);
    // All of a block on another device: its figures stand, no reading is made.
    for (auto& each : to)
        each.conditions.device = DeviceId{7};
    settings.biasOf = {};
    const auto none = compareBlocks(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
    QVERIFY(none);
    QVERIFY(!none->under.notComparable.empty());
    QVERIFY(std::ranges::all_of(
        none->at, [](const ChangeAt& at) { return at.read.reading == Reading::NoFigure; }));
}

/// A trend within a block without noise is met exactly at its last day; its interval is wider than
/// that of the mean.
void TestBlockChange::readAtItsEnd() {
    std::vector<LiftSession> from, to;
    for (int i = 0; i < 5; ++i) {
        from.push_back(session(i + 1, {{40, 1.1}, {50, 1.0}, {60, 0.9}, {70, 0.81}}));
        const double up = 0.02 * i;
        to.push_back(
            session(i + 11, {{40, 1.1 + up}, {50, 1.0 + up}, {60, 0.9 + up}, {70, 0.81 + up}}));
    }
    BlockSettings settings;
    settings.with.dayNoise = published();
    const auto mean = blockPair(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
    settings.readAs = ReadAs::End;
    const auto end = blockPair(tests::benchPull(), mvt, {"A", from}, {"B", to}, settings);
    QVERIFY(std::abs(mean->uncertainty.change(55) - 0.04) < 1e-9);
    QVERIFY(std::abs(end->uncertainty.change(55) - 0.08) < 1e-9);
    QVERIFY(end->uncertainty.straight(55, 0.95).width() >
            mean->uncertainty.straight(55, 0.95).width());
}

void TestBlockChange::repsOfAll() {
    const auto set = [](double kg, std::vector<double> speeds) {
        Set made{.load = massFromKilograms(kg)};
        for (const double v : speeds)
            made.reps.push_back({.velocity = v});
        return made;
    };
    std::vector<std::vector<Set>> sets{
        {set(40, {1.0, 1.2, 1.3})}, {set(40, {1.1, 1.4})}, {set(40, {1.0, 1.0, 1.5})}};
    std::vector<LiftSession> sessions;
    for (int i = 0; i < 3; ++i)
        sessions.push_back(session(i + 1, {{40, 2}}));
    const auto all = fairRepsOfAll(tests::benchPull(), sessions, sets);
    QCOMPARE(all[0].points[0].velocity, 1.2); // of two
    QCOMPARE(all[1].points[0].velocity, 1.4);
    QCOMPARE(all[2].points[0].velocity, 1.0);
    // two of them: as fairReps has it
    const auto two = fairReps(tests::benchPull(), sessions[0], sets[0], sessions[2], sets[2]);
    const auto both = fairRepsOfAll(tests::benchPull(), {sessions[0], sessions[2]},
                                    std::vector{sets[0], sets[2]});
    QCOMPARE(two->first.points[0].velocity, both[0].points[0].velocity);
    QCOMPARE(two->second.points[0].velocity, both[1].points[0].velocity);
}

QTEST_APPLESS_MAIN(TestBlockChange)
#include "tst_blockchange.moc"
