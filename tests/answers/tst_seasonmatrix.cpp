// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix: what stands in its cells, what is said of it, and that nothing is found of
// nothing (the long form: slopebook_seasons).
#include "core/answers/batterycomparison.h"
#include "core/answers/seasonsource.h"
#include "core/stats/dunnett.h"
#include "core/stats/infinity.h"
#include "core/stats/nothing.h"
#include "tests/answers/builders.h"
#include "tests/answers/seasonworlds.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <boost/math/distributions/binomial.hpp>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

Stored<TestKindId, TestKind> hopKind() {
    Stored<TestKindId, TestKind> kind{.id = TestKindId{1}};
    kind.value.name = "Hop";
    kind.value.unit = "cm";
    kind.value.twoSided = true;
    kind.value.noise = TestNoise{4.6, false, "a paper"};
    kind.value.smallest = 9.0;
    return kind;
}
const auto hop = hopKind();

BatterySession madeDay(int id, int day) {
    BatterySession made;
    made.session = SessionId{id};
    made.athlete = AthleteId{1};
    made.date = tests::dayNumber(day);
    return made;
}

BatterySession hopped(int id, int day, double left, double right) {
    BatterySession made = madeDay(id, day);
    TestAttempts test;
    test.kind = hop.id;
    for (const auto& [side, value] : {std::pair{BodySide::Left, left}, {BodySide::Right, right}}) {
        Attempt attempt;
        attempt.side = side;
        attempt.value = value;
        test.attempts.push_back(attempt);
    }
    made.battery.tests.push_back(test);
    return made;
}

SeasonSource source(int blocks) {
    SeasonSource made{.athlete = AthleteId{1}};
    for (int b = 0; b < blocks; ++b)
        made.blocks.push_back(
            {.id = BlockId{b + 1}, .block = {.name = "B" + std::to_string(b + 1)}});
    made.batteries.resize(std::size_t(blocks));
    return made;
}

BlockSettings plain() {
    BlockSettings settings;
    settings.with.dayNoise = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    settings.with.smallestVelocity = Smallest{0.06};
    settings.with.smallestOneRm = Smallest{4};
    return settings;
}

LiftSession ladder(int id, double gain) {
    std::vector<std::pair<double, double>> points;
    for (int i = 0; i < 5; ++i)
        points.emplace_back(40 + 12 * i,
                            1.6 - 0.0115 * (40 + 12 * i) + gain + 0.008 * ((i * 2 + id) % 3 - 1));
    return tests::session(id, points);
}

const MatrixRow& row(const SeasonMatrix& matrix, Measure::Kind kind) {
    for (const MatrixRow& each : matrix.rows)
        if (each.measure.kind == kind)
            return each;
    throw std::runtime_error("no such row");
}

} // namespace

class TestSeasonMatrix : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void twoBlocksOfOneSessionReadAsTwoSessions();
    void aTestOfOneSessionReadsAsTheBatteryDoes();
    void emptyCellsSayWhy();
    void massAndEffort();
    void anotherChosenBlock();
    void tablesAgreeWithDunnett();
    void chanceNamesTheBlocks();
    void whatEachIsByItself();
    void holmIsRs();
    void nothingIsFoundOfNothing();
    void moreSessionsSeeMore();
};

void TestSeasonMatrix::twoBlocksOfOneSessionReadAsTwoSessions() {
    const auto a = ladder(1, 0), b = ladder(2, 0.05);
    SeasonSource from = source(2);
    from.lifts.push_back({.lift = {LiftId{1}, tests::benchPull()},
                          .mvt = tests::coachMvt(0.45),
                          .checkLoads = {Mass{60'000}},
                          .blocks = {{"B1", {a}}, {"B2", {b}}},
                          .settings = [](const auto&, const auto&) { return plain(); }});
    const SeasonMatrix matrix = seasonMatrix(from);
    QCOMPARE(matrix.rows.size(), std::size_t(2));
    ComparisonSettings two = plain().with;
    two.checkLoads = {Mass{60'000}};
    const auto expected = compare(tests::benchPull(), tests::coachMvt(0.45), a, b, two);
    const auto& read = matrix.rows[0].cells[1].against->read;
    const auto at = std::ranges::find(expected->at, Mass{60'000}, &ChangeAt::load);
    QCOMPARE(read.interval.low, at->read.interval.low);
    QCOMPARE(read.interval.high, at->read.interval.high);
    QVERIFY(read.reading == at->read.reading);
    QCOMPARE(matrix.rows[1].cells[1].against->read.interval.low,
             expected->oneRm->read.interval.low);
    QVERIFY(matrix.rows[0].cells[1].before->read.interval == read.interval);
    QVERIFY(!matrix.rows[0].cells[0].against && !matrix.rows[0].cells[0].before);
    // the change is that of the figures shown
    QVERIFY(std::abs(*matrix.rows[0].cells[1].value - *matrix.rows[0].cells[0].value -
                     read.change) < 1e-12);
    QVERIFY(!matrix.sentence.empty() && !matrix.chance.empty());
    QVERIFY(matrix.byChance() > 0 && matrix.byChance() < 0.11); // two readings at 5 %
    QCOMPARE(matrix.story.size(), matrix.blocks.size());
    QCOMPARE(matrix.design.size(), std::size_t(5)); // nothing is told of these blocks
}

void TestSeasonMatrix::aTestOfOneSessionReadsAsTheBatteryDoes() {
    SeasonSource from = source(2);
    from.kinds = {hop};
    from.batteries[0].push_back(hopped(1, 1, 180, 150));
    from.batteries[1].push_back(hopped(2, 60, 186, 171));
    const SquadTests squad(from.kinds);
    from.squad = &squad;
    const SeasonMatrix matrix = seasonMatrix(from);
    const auto battery = compareBattery(from.kinds, AthleteId{1}, {"a", from.batteries[0]},
                                        {"b", from.batteries[1]}, squad, {});
    QCOMPARE(matrix.rows.size(), std::size_t(3)); // left, right, asymmetry
    for (const std::size_t i : {0U, 1U}) {
        const ReadChange &found = matrix.rows[i].cells[1].against->read,
                         &expected = battery.tests[i].read;
        QVERIFY(std::abs(found.interval.low - expected.interval.low) < 1e-9);
        QVERIFY(std::abs(found.interval.high - expected.interval.high) < 1e-9);
        QVERIFY(found.reading == expected.reading);
        QCOMPARE(found.smallest->value, 9.0);
    }
    const ReadChange& uneven = matrix.rows[2].cells[1].against->read;
    QVERIFY(std::abs(uneven.interval.high - battery.leftRight[0].read.interval.high) < 1e-9);
    QVERIFY(matrix.rows[2].cells[0].better == BodySide::Left);
    // three days on the later side: narrower by sqrt((1 + C/3) / 2), C(3) = 1 + 2/3 + 1/6
    from.batteries[1].push_back(hopped(3, 70, 186, 171));
    from.batteries[1].push_back(hopped(4, 80, 186, 171));
    const auto more = seasonMatrix(from);
    const double ratio = std::sqrt((1 + (1 + 2.0 / 3 + 1.0 / 6) / 3) / 2);
    QVERIFY(std::abs(more.rows[0].cells[1].against->read.interval.width() /
                         matrix.rows[0].cells[1].against->read.interval.width() -
                     ratio) < 1e-9);
    QCOMPARE(more.rows[0].cells[1].sessions, 3);
}

void TestSeasonMatrix::emptyCellsSayWhy() {
    SeasonSource from = source(3);
    from.lifts.push_back({.lift = {LiftId{1}, tests::benchPull()},
                          .mvt = tests::coachMvt(0.45),
                          .checkLoads = {Mass{60'000}},
                          .blocks = {{"B1", {ladder(1, 0)}}, {"B2", {}}, {"B3", {ladder(3, 0)}}},
                          .settings = [](const auto&, const auto&) { return plain(); }});
    from.batteries[1].push_back(madeDay(9, 1));
    from.batteries[1][0].battery.gaps.push_back({.lift = LiftId{1}, .reason = "the rig was away"});
    const auto matrix = seasonMatrix(from);
    const MatrixCell& empty = matrix.rows[0].cells[1];
    QVERIFY(!empty.value && !empty.against && !empty.before);
    QCOMPARE(english(empty.value.why().reason), std::string("not possible: the rig was away"));
    QCOMPARE(matrix.rows[0].cells[2].before->from, std::size_t(0)); // the last that has a figure
    // not comparable: the figure stands, no reading
    auto apart = from;
    apart.lifts[0].blocks[2].sessions[0].conditions.device = DeviceId{5};
    const auto hatched = seasonMatrix(apart);
    const CellChange& change = *hatched.rows[0].cells[2].against;
    QVERIFY(!change.comparable() && !change.why.empty());
    QVERIFY(change.read.reading == Reading::NoFigure && change.byChance == 0);
    QVERIFY(english(hatched.sentence).find("not comparable") != std::string::npos);
}

/// A headline is of the last block: what is found in others is named by them.
void TestSeasonMatrix::chanceNamesTheBlocks() {
    SeasonSource from = source(3);
    from.lifts.push_back(
        {.lift = {LiftId{1}, tests::benchPull()},
         .mvt = tests::coachMvt(0.45),
         .checkLoads = {Mass{60'000}},
         .blocks = {{"B1", {ladder(1, 0)}}, {"B2", {ladder(2, 0.4)}}, {"B3", {ladder(3, 0)}}},
         .settings = [](const auto&, const auto&) { return plain(); }});
    const auto matrix = seasonMatrix(from);
    const auto foundIn = [&](std::size_t block) {
        return matrix.read(Reading::Better, block) + matrix.read(Reading::Worse, block);
    };
    QVERIFY(foundIn(1) > 0 && foundIn(2) == 0);
    const std::string chance = english(matrix.chance);
    const auto says = [&](const std::string& part) {
        return chance.find(part) != std::string::npos;
    };
    const auto name = [&](std::size_t block) { return matrix.blocks[block].block.name; };
    QVERIFY2(says(std::to_string(foundIn(1)) + " in " + name(1)), chance.c_str());
    QVERIFY2(says("none in " + name(2)), chance.c_str());
    QVERIFY2(says("against " + name(0)), chance.c_str());
    // which of them stand is said by name there, and first in the sentence
    std::vector<double> p;
    for (const MatrixRow& each : matrix.rows)
        for (const MatrixCell& cell : each.cells)
            if (cell.against)
                p.push_back(cell.against->p);
    const auto adjusted = stats::holm(p);
    std::size_t next = 0;
    for (const MatrixRow& each : matrix.rows)
        for (std::size_t block = 0; block < each.cells.size(); ++block) {
            const auto& change = each.cells[block].against;
            if (!change)
                continue;
            const bool stands = adjusted[next++] < 0.05 && change->read.reading == Reading::Better;
            QCOMPARE(change->stands, stands);
            if (stands)
                QVERIFY2(says(english(measureWords(each.measure)) + " in " + name(block)),
                         chance.c_str());
        }
    QVERIFY2(says("these stand: Bench pull at 60 kg in B2"), chance.c_str());
    auto last = from;
    std::swap(last.lifts[0].blocks[1], last.lifts[0].blocks[2]);
    const std::string told = english(seasonMatrix(last).sentence);
    QVERIFY2(told.find(" m/s, stands among all)") != std::string::npos, told.c_str());
}

/// Read with another block it takes more: what a pair says alone is what it says where the other
/// block is not there.
void TestSeasonMatrix::whatEachIsByItself() {
    int alone = 0;
    for (double gain = 5; gain < 25; gain += 0.5) {
        SeasonSource three = source(3), two = source(2);
        three.kinds = two.kinds = {hop};
        const SquadTests squad(three.kinds);
        three.squad = two.squad = &squad;
        three.batteries[0].push_back(hopped(1, 1, 180, 180));
        three.batteries[1].push_back(hopped(2, 40, 180, 180));
        three.batteries[2].push_back(hopped(3, 80, 180 + gain, 180 - gain));
        two.batteries[0] = three.batteries[0];
        two.batteries[1] = three.batteries[2];
        const auto together = seasonMatrix(three), apart = seasonMatrix(two);
        for (std::size_t i = 0; i < together.rows.size(); ++i) {
            const auto &one = together.rows[i].cells[2].against,
                       &pair = apart.rows[i].cells[1].against;
            if (!one || pair->read.reading == Reading::NoFigure)
                continue;
            QVERIFY(one->read.byItself == pair->read.reading);
            if (one->read.clearAlone() == 0)
                continue;
            ++alone;
            const std::string words = english(together.sentence);
            QVERIFY2(words.find(" alone: ") != std::string::npos, words.c_str());
        }
    }
    QVERIFY(alone >= 4); // both sides, at some of the gains
}

void TestSeasonMatrix::massAndEffort() {
    SeasonSource from = source(2);
    for (int b = 0; b < 2; ++b)
        for (int k = 0; k < 4; ++k) {
            BatterySession day = madeDay(10 * b + k + 1, 10 * b + k);
            day.bodyMass = Mass{70'000 + 500 * b + 100 * k};
            from.batteries[std::size_t(b)].push_back(day);
        }
    from.lifts.push_back(
        {.lift = {LiftId{1}, tests::benchPull()},
         .checkLoads = {Mass{60'000}},
         .blocks = {{"B1", {ladder(1, 0)}}, {"B2", {ladder(2, 0)}}},
         .efforts = {{{Mass{60'000}, {8, 8.5, 8, 8.5}}}, {{Mass{60'000}, {5, 5.5, 5, 5.5}}}},
         .settings = [](const auto&, const auto&) { return plain(); }});
    const auto matrix = seasonMatrix(from);
    const MatrixRow& mass = row(matrix, Measure::Kind::BodyMass);
    QVERIFY(std::abs(*mass.cells[1].value - 70.65) < 1e-9);
    QVERIFY(std::abs(mass.cells[1].against->read.change - 0.5) < 1e-9);
    QVERIFY(mass.cells[1].against->read.reading == Reading::NoFigure);
    QVERIFY(!mass.cells[1].against->why.empty() && !mass.measure.judged());
    const MatrixRow& effort = row(matrix, Measure::Kind::Effort);
    QVERIFY(effort.cells[1].against->read.reading == Reading::Better); // less of it
    // one day a block: nothing to read it by
    from.lifts[0].efforts = {{{Mass{60'000}, {8}}}, {{Mass{60'000}, {5}}}};
    const auto few = seasonMatrix(from);
    QVERIFY(row(few, Measure::Kind::Effort).cells[1].against->read.reading == Reading::NoFigure);
}

void TestSeasonMatrix::anotherChosenBlock() {
    SeasonSource from = source(3);
    from.lifts.push_back(
        {.lift = {LiftId{1}, tests::benchPull()},
         .mvt = tests::coachMvt(0.45),
         .checkLoads = {Mass{60'000}},
         .blocks = {{"B1", {ladder(1, 0)}}, {"B2", {ladder(2, 0)}}, {"B3", {ladder(3, 0.3)}}},
         .settings = [](const auto&, const auto&) { return plain(); }});
    from.chosen = 2;
    const auto matrix = seasonMatrix(from);
    const auto& cells = matrix.rows[0].cells;
    QVERIFY(cells[0].against->read.reading == Reading::Worse && !cells[2].against);
    QVERIFY(cells[2].before->read.reading == Reading::Better);
    // two looks: wider than one
    from.blocks.resize(2);
    from.batteries.resize(2);
    from.lifts[0].blocks.erase(from.lifts[0].blocks.begin() + 1);
    from.chosen = 0;
    const auto one = seasonMatrix(from);
    QVERIFY(one.rows[0].cells[1].against->read.interval.width() <
            1.1 * cells[0].against->read.interval.width());
}

void TestSeasonMatrix::tablesAgreeWithDunnett() {
    stats::DunnettTable table;
    for (const double df : {4.0, 9.3, 30.0, double(stats::infinity)})
        for (const double level : {0.80, 0.90, 0.95})
            for (const auto& loads : std::vector<std::vector<double>>{
                     {0.5, 0.75}, {0.25, 0.5, 0.71875}, {0.0, 0.0}, {0.96875, 0.5}}) {
                const double found = table.critical(loads, df, level);
                const double expected = stats::dunnettCritical(loads, df, level);
                QVERIFY2(std::abs(found / expected - 1) < 2e-6,
                         qPrintable(QStringLiteral("%1 %2: %3 %4")
                                        .arg(df)
                                        .arg(level)
                                        .arg(found, 0, 'g', 10)
                                        .arg(expected, 0, 'g', 10)));
            }
    // off the grid: downwards, and so never narrower
    const std::vector loads{0.70, 0.71};
    QVERIFY(table.critical(loads, 8, 0.95) >= stats::dunnettCritical(loads, 8, 0.95));
}

void TestSeasonMatrix::holmIsRs() {
    if (!tests::haveR())
        QSKIP("R is not on this machine: Holm is checked against nothing");
    const std::vector<double> p{0.012, 0.3, 0.0004, 0.049, 0.012, 0.8, 0.02};
    QStringList arguments{QStringLiteral("holm")};
    for (const double each : p)
        arguments << QString::number(each, 'g', 17);
    const auto r = tests::runR(QStringLiteral("blocks.R"), arguments, "0 1 1 1\n");
    const auto adjusted = stats::holm(p);
    for (std::size_t i = 0; i < p.size(); ++i)
        QVERIFY(std::abs(adjusted[i] - r[QStringLiteral("p%1").arg(i + 1)]) < 1e-12);
    // the law of two t parts together, and of days as they are likely to be, by R's integrate
    stats::Nothing nothing;
    std::vector<stats::UnsureVariance> parts{{{0.0004, 12}}, {{0.0009, 6}}};
    const double reach = std::sqrt(0.0004 * std::pow(stats::tCritical(0.95, 12), 2) +
                                   0.0009 * std::pow(stats::tCritical(0.95, 6), 2));
    QVERIFY(std::abs(nothing.beyond(parts, reach) / r[QStringLiteral("beyond")] - 1) < 1e-6);
    const std::vector<stats::UnsureVariance> lone{{{4, 4}}};
    QVERIFY(std::abs(nothing.beyond(lone, 5) / r[QStringLiteral("alone")] - 1) < 1e-6);
    parts[1].likely = stats::LogNormal{0.8, 0.9};
    QVERIFY(std::abs(nothing.beyond(parts, reach) / r[QStringLiteral("likely")] - 1) < 1e-6);
    QVERIFY(std::abs(nothing.beyond(parts, reach + 0.01, 0.03) / r[QStringLiteral("spanned")] - 1) <
            1e-6);
    QVERIFY(r[QStringLiteral("beyond")] > 0.03 && r[QStringLiteral("beyond")] < 0.05);
}

/// All worlds of the rule pooled: a lift's four measures may all be one, so lifts are what counts.
void TestSeasonMatrix::nothingIsFoundOfNothing() {
    constexpr long seasons = 2;
    constexpr double liftsASeason = 3, readingsOfALift = 8; // four measures, two blocks
    constexpr double surely = 1 - 1e-4;
    double worlds = 0, falseOnes = 0, found = 0, byChance = 0;
    std::uint64_t seed = 7;
    for (const auto& world : tests::seasonWorlds()) {
        if (!world.held)
            continue;
        const auto tally = tests::playSeasons(world, seasons, ++seed);
        worlds += 1;
        falseOnes += tally.falseMeasure.mean / 100;
        found += tally.found.mean * seasons;
        byChance += tally.byChance.mean * seasons;
    }
    const double lifts = worlds * seasons * liftsASeason;
    QVERIFY(worlds > 10);
    // 5 % of lifts at most, by the binomial limit of so many.
    const double share =
        boost::math::quantile(boost::math::binomial_distribution<double>(lifts, 0.05), surely) /
        lifts;
    QVERIFY2(falseOnes / worlds <= share, qPrintable(QString::number(falseOnes / worlds)));
    // What was found against what chance was said to give: all of a lift's readings, or none.
    const double perLift = byChance / lifts / readingsOfALift;
    QVERIFY2(perLift > 0.01 && perLift < 0.05, qPrintable(QString::number(perLift)));
    const double most =
        boost::math::quantile(boost::math::binomial_distribution<double>(lifts, perLift), surely);
    QVERIFY2(found <= readingsOfALift * most, qPrintable(QString::number(found)));
    // It bites: days that hardly differ within a block, and wander between blocks, are found.
    const auto alike = tests::playSeasons({.sessions = 6, .phi = 0.97}, 6, 5);
    QVERIFY2(alike.falseMeasure.mean / 100 > share,
             qPrintable(QString::number(alike.falseMeasure.mean)));
}

void TestSeasonMatrix::moreSessionsSeeMore() {
    const auto lone = tests::playSeasons({.sessions = 1, .gain = 0.06}, 6, 5);
    const auto many = tests::playSeasons({.sessions = 6, .gain = 0.06}, 6, 5);
    QVERIFY(many.power > lone.power + 10);
    QVERIFY(many.halfLoad < 0.8 * lone.halfLoad);
}

QTEST_APPLESS_MAIN(TestSeasonMatrix)
#include "tst_seasonmatrix.moc"
