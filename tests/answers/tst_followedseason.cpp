// SPDX-License-Identifier: GPL-3.0-or-later
// A load followed with its blocks: their means and readings are those of a comparison of blocks and
// of the whole season's matrix, a block can be the baseline, and a trend within one is R's.
#include "core/answers/datedspeeds.h"
#include "core/answers/followsummary.h"
#include "core/answers/seasonsource.h"
#include "core/stats/daytrend.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

const auto threshold = tests::coachMvt(0.45);
const Mass atSixty{60'000};

/// v = 1.6 - 0.0115 L moved by gain, with a scatter that leaves the line where it is, alike in all.
LiftSession test(int id, double gain) {
    std::vector<std::pair<double, double>> points;
    const double scatter[]{0.008, -0.016, 0.008, 0.008, -0.016, 0.008};
    for (int i = 0; i < 6; ++i)
        points.emplace_back(40 + 10 * i, 1.6 - 0.0115 * (40 + 10 * i) + gain + scatter[i]);
    return tests::session(id, points);
}

BlockSettings settings() {
    BlockSettings made;
    made.dayNoise = [](std::span<const stats::DaySpread> spreads, std::span<const LiftSession>) {
        return chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")}, spreads);
    };
    made.with.dayNoise = chooseDayNoise({}, {}, std::pair{0.025, std::string("a paper")});
    made.with.smallestVelocity = Smallest{0.06};
    return made;
}

BlockSettings always(const LiftSession& /*from*/, const LiftSession& /*to*/) {
    return settings();
}

SeasonSource seasonOfBlocks(const std::vector<std::vector<LiftSession>>& blocks) {
    SeasonSource source{.athlete = AthleteId{1}};
    SeasonLift lift{.lift = {LiftId{1}, tests::benchPull()},
                    .mvt = threshold,
                    .checkLoads = {atSixty},
                    .settings = always};
    for (std::size_t b = 0; b < blocks.size(); ++b) {
        const std::string name = "B" + std::to_string(b + 1);
        source.blocks.push_back(
            {.id = BlockId{static_cast<long long>(b) + 1}, .block = {.name = name}});
        lift.blocks.push_back({name, blocks[b]});
    }
    lift.efforts.resize(blocks.size());
    source.batteries.resize(blocks.size());
    source.lifts.push_back(std::move(lift));
    return source;
}

SpeedRow rowOf(const SeasonSource& source) {
    return speedRow(source, source.lifts[0], atSixty, std::make_shared<FamilyTables>());
}

std::vector<std::vector<LiftSession>> threeBlocks() {
    return {{test(1, 0), test(2, 0.01), test(3, -0.01)},
            {test(4, 0.02), test(5, 0.03)},
            {test(6, 0.09), test(7, 0.10), test(8, 0.12), test(9, 0.13)}};
}

std::vector<LiftSession> all(const std::vector<std::vector<LiftSession>>& blocks) {
    std::vector<LiftSession> sessions;
    for (const auto& block : blocks)
        sessions.insert(sessions.end(), block.begin(), block.end());
    return sessions;
}

} // namespace

class TestFollowedSeason : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// Of two blocks the reading is compare's own to the last digit, and R's rule says the same of
    /// the change (blocks.R, written from the formulas alone).
    void twoBlocksAreCompares() {
        const auto blocks = threeBlocks();
        const SpeedRow found = rowOf(seasonOfBlocks({blocks[0], blocks[2]}));
        BlockSettings asked = settings();
        asked.with.checkLoads = {atSixty};
        const auto compared = compareBlocks(tests::benchPull(), threshold, {"B1", blocks[0]},
                                            {"B2", blocks[2]}, asked);
        QVERIFY(compared);
        const auto at = std::ranges::find(compared->at, atSixty, &ChangeAt::load);
        const MatrixCell& cell = found.row.cells[1];
        QVERIFY(cell.against && cell.value);
        QCOMPARE(cell.against->read.change, at->read.change);
        QVERIFY(cell.against->read.interval == at->read.interval);
        QCOMPARE(int(cell.against->read.reading), int(at->read.reading));
        QCOMPARE(cell.sessions, 4);
        QVERIFY(std::abs(*cell.value - *found.row.cells[0].value - at->read.change) < 1e-12);
        if (!tests::haveR())
            QSKIP("R IS NOT INSTALLED: the block's change is checked against compare alone");
        QByteArray rows;
        int place = 0;
        for (const std::size_t b : {0U, 2U})
            for (const LiftSession& each : blocks[b]) {
                ++place;
                for (const Point& p : each.points)
                    rows += QByteArray::number(b == 2 ? 1 : 0) + ' ' + QByteArray::number(place) +
                            ' ' + QByteArray::number(p.load, 'g', 17) + ' ' +
                            QByteArray::number(p.velocity, 'g', 17) + '\n';
            }
        const auto r = tests::runR(QStringLiteral("blocks.R"), {QStringLiteral("rule")}, rows);
        QVERIFY(tests::digitsAgreed(cell.against->read.change, r[QStringLiteral("change")]) >= 7);
        const auto& straight = cell.against->read.straight;
        QVERIFY(tests::digitsAgreed(straight ? straight->low : cell.against->read.interval.low,
                                    r[QStringLiteral("low")]) >= 6);
    }

    /// Of three it is the matrix' row, family-wise: wider than one look, by less than Bonferroni.
    void threeBlocksAreTheMatrix() {
        const SeasonSource source = seasonOfBlocks(threeBlocks());
        const SpeedRow found = rowOf(source);
        const SeasonMatrix matrix = seasonMatrix(source);
        const MatrixRow& row = matrix.rows[0];
        for (std::size_t j = 0; j < 3; ++j) {
            QCOMPARE(*found.row.cells[j].value, *row.cells[j].value);
            QVERIFY(found.row.cells[j].interval == row.cells[j].interval);
            QCOMPARE(found.row.cells[j].against.has_value(), j > 0);
            if (j > 0)
                QVERIFY(found.row.cells[j].against->read.interval ==
                        row.cells[j].against->read.interval);
        }
    }

    /// A session that stands in a block as well is no second piece of evidence about the noise.
    void theBaselinesOwnColumnCountsOnce() {
        auto source = seasonOfBlocks(threeBlocks());
        const SpeedRow without = rowOf(source);
        source.blocks.push_back({.block = {.name = "day"}});
        source.batteries.resize(4);
        source.lifts[0].blocks.push_back({"day", {test(1, 0)}});
        source.lifts[0].efforts.resize(4);
        source.lifts[0].twice = 3;
        source.chosen = 3;
        const SpeedRow with = rowOf(source);
        QCOMPARE(*with.row.cells[2].value, *without.row.cells[2].value);
        QVERIFY(with.row.cells[0].value); // its own block has its figure all the same
        QVERIFY(with.row.cells[2].against &&
                with.row.cells[2].against->read.reading == Reading::Better);
        // Of two blocks and a session of the first, both blocks tell of the noise.
        auto two = seasonOfBlocks({threeBlocks()[0], threeBlocks()[2]});
        const double ofBlocks = rowOf(two).row.cells[1].se;
        two.blocks.push_back({.block = {.name = "day"}});
        two.batteries.resize(3);
        two.lifts[0].blocks.push_back({"day", {test(1, 0)}});
        two.lifts[0].efforts.resize(3);
        two.lifts[0].twice = 2;
        two.chosen = 2;
        // What a day tilts about is the session's own max now, and no more than that.
        QVERIFY(std::abs(rowOf(two).row.cells[1].se / ofBlocks - 1) < 1e-4);
    }

    /// Four tests of one ladder with one scatter: their variances are alike, so gls on the bare
    /// figures has it.
    void theTrendWithinABlockIsRs() {
        const auto blocks = threeBlocks();
        const SpeedRow found = rowOf(seasonOfBlocks(blocks));
        QVERIFY(!found.trends[0] && !found.trends[1] && found.trends[2]);
        QCOMPARE(english(found.trends[1].why().reason),
                 std::string("a trend within a block needs four days that cover the load"));
        const BlockTrend& trend = *found.trends[2];
        QCOMPARE(trend.sessions, 4);
        QVERIFY(trend.first == blocks[2].front().date && trend.last == blocks[2].back().date);
        if (!tests::haveR())
            QSKIP("R IS NOT INSTALLED: the trend is checked against nothing");
        QByteArray rows;
        const double gains[]{0.09, 0.10, 0.12, 0.13};
        for (int week = 0; week < 4; ++week)
            rows += "c " + QByteArray::number(week) + ' ' +
                    QByteArray::number(1.6 - 0.0115 * 60 + gains[week], 'g', 17) + " 1\n";
        const auto r = tests::runR(QStringLiteral("daytrend.R"), {}, rows);
        const auto agrees = [&](const char* name, double value) {
            QVERIFY2(tests::digitsAgreed(value, r[QLatin1String(name)]) >= 6,
                     qPrintable(QStringLiteral("%1: %2, R %3")
                                    .arg(QLatin1String(name))
                                    .arg(value, 0, 'g', 12)
                                    .arg(r[QLatin1String(name)], 0, 'g', 12)));
        };
        agrees("c_gls_slope", trend.perWeek);
        agrees("c_low", trend.interval->low);
        // The line through equal scatter leaves no trace of it at 60 kg: start is the value itself.
        agrees("c_gls_at0", trend.start);
    }

    /// Days on which the block did not reach the load say nothing of a trend at it.
    void aTrendNeedsDaysThatCoverTheLoad() {
        auto blocks = threeBlocks();
        for (LiftSession& session : blocks[2])
            std::erase_if(session.points, [](const Point& p) { return p.load > 55; });
        const SpeedRow found = rowOf(seasonOfBlocks(blocks));
        QVERIFY(found.row.cells[2].extrapolated && !found.trends[2]);
        auto oneDay = threeBlocks();
        for (LiftSession& session : oneDay[2])
            session.date = oneDay[2].front().date;
        QVERIFY(!rowOf(seasonOfBlocks(oneDay)).trends[2]);
    }

    /// Counted from a block, the newest session is what compare says of block and day; those before
    /// it are family-wise; those of the block are not read against themselves.
    void aBlockAsTheBaseline() {
        const auto blocks = threeBlocks();
        const auto sessions = all(blocks);
        // Sets are asked of sessions that there are, never of the test that is only thought of.
        const auto askedOfTheLog = [&](const LiftSession& from, const LiftSession& to) {
            BlockSettings made = always(from, to);
            made.asManyReps = [&](std::vector<LiftSession> asked) {
                for (const LiftSession& each : asked)
                    if (std::ranges::find(sessions, each.session, &LiftSession::session) ==
                        sessions.end())
                        qFatal("a session that no log has");
                return asked;
            };
            return made;
        };
        const auto season = followFrom(tests::benchPull(), threshold, sessions, atSixty, BlockId{1},
                                       {"B1", blocks[0]}, askedOfTheLog, Mass{2'500});
        QVERIFY(season && season->block);
        QCOMPARE(season->block->sessions.size(), std::size_t(3));
        QVERIFY(std::abs(*season->baselineValue() - (1.6 - 0.0115 * 60)) < 1e-9);
        const auto& followed = season->follow.sessions;
        for (std::size_t i = 0; i < followed.size(); ++i) {
            QCOMPARE(followed[i].change.has_value(), i > 2);
            QCOMPARE(season->isBaseline(followed[i]), i < 3);
        }
        BlockSettings asked = settings();
        asked.with.checkLoads = {atSixty};
        const auto compare = [&](std::size_t i) {
            const auto c = compareBlocks(tests::benchPull(), threshold, {"B1", blocks[0]},
                                         {"day", {sessions[i]}}, asked);
            return std::ranges::find(c->at, atSixty, &ChangeAt::load)->read;
        };
        QVERIFY(followed[8].change->read.interval == compare(8).interval);
        QCOMPARE(followed[4].change->read.change, compare(4).change);
        QVERIFY(followed[4].change->read.interval.width() > 1.05 * compare(4).interval.width());
        // One more test like them: as wide as the newest session's reading is.
        QVERIFY(season->follow.smallestDetectable);
        QVERIFY(std::abs(*season->follow.smallestDetectable / compare(8).shows() - 1) < 0.01);
        QVERIFY(english(latestWords(*season)).find(" against B1: ") != std::string::npos);
    }

    /// A day of that load alone makes no line, and is read against a block all the same.
    void aLightDayIsReadAgainstABlock() {
        const auto blocks = threeBlocks();
        auto sessions = all(blocks);
        sessions.push_back(tests::session(10, {{60, 1.02}}));
        const auto season = followFrom(tests::benchPull(), threshold, sessions, atSixty, BlockId{1},
                                       {"B1", blocks[0]}, always, Mass{2'500});
        QVERIFY(season);
        const Followed& light = season->follow.sessions.back();
        QVERIFY(!light.change && light.seenChange);
        QVERIFY(std::abs(light.seenChange->change - (1.02 - (1.6 - 0.0115 * 60))) < 1e-9);
        // Nothing to count from: the reason.
        const auto none = followFrom(tests::benchPull(), threshold, sessions, atSixty, BlockId{4},
                                     {"B4", {}}, always, Mass{2'500});
        QVERIFY(!none);
        QCOMPARE(english(none.why().reason), std::string("no session of this lift in B4"));
    }

    /// The sentence, the label and what is read out name each block's reading; unclear never bare.
    void whatIsSaid() {
        const auto blocks = threeBlocks();
        const auto sessions = all(blocks);
        auto season = followFrom(tests::benchPull(), threshold, sessions, atSixty, BlockId{1},
                                 {"B1", blocks[0]}, always, Mass{2'500});
        const SpeedRow found = rowOf(seasonOfBlocks(blocks));
        for (std::size_t j = 0; j < 3; ++j)
            season->blocks.push_back({.id = BlockId{static_cast<long long>(j) + 1},
                                      .block = {.name = "B" + std::to_string(j + 1)},
                                      .cell = found.row.cells[j],
                                      .trend = found.trends[j],
                                      .holdsBaseline = j == 0});
        const std::string told = english(followSentence(*season));
        QVERIFY2(told.starts_with(
                     "At 60 kg against the block B1 (all blocks at once), better: B3 (+0.1"),
                 told.c_str());
        QVERIFY2(told.find("unclear: B2 (") != std::string::npos &&
                     told.find("clear from") != std::string::npos,
                 told.c_str());
        // A day is another question, and told as one; of the baseline's own days nothing is.
        int days = 0;
        for (const Followed& session : season->follow.sessions) {
            const std::string alone = english(dayAloneWords(*season, session));
            QCOMPARE(alone.empty(), season->isBaseline(session) || !session.change);
            if (alone.empty())
                continue;
            ++days;
            QVERIFY2(alone.find(" alone: ") != std::string::npos, alone.c_str());
            QVERIFY2(alone.find("a change is clear from") != std::string::npos ||
                         alone.find("unclear") == std::string::npos,
                     alone.c_str());
        }
        QVERIFY(days > 0);
        const std::string label = english(blockLabel(season->blocks[2]));
        QVERIFY2(label.starts_with("+0.1") && label.ends_with(" better"), label.c_str());
        QVERIFY(english(blockLabel(season->blocks[0])).empty());
        const std::string read = english(blockWords(*season, season->blocks[2]));
        QVERIFY2(read.starts_with("B3: mean 1.02") &&
                     read.find("4 sessions") != std::string::npos &&
                     read.find("against B1 (all blocks at once) +0.1") != std::string::npos,
                 read.c_str());
        QVERIFY(english(blockWords(*season, season->blocks[0])).ends_with("; the baseline."));
        QVERIFY(english(blockTrendWords(season->blocks[2], 0.95))
                    .starts_with("Trend within B3 over 4 sessions: +0.01"));
        QCOMPARE(
            english(blockTrendWords(season->blocks[1], 0.95)),
            std::string("No trend within B2: a trend within a block needs four days that cover "
                        "the load."));
        QCOMPARE(english(notLiftedWords(
                     {.date = tests::dayNumber(3), .load = atSixty, .reason = "grip"})),
                 std::string("60 kg was not lifted on 2026-01-04: grip"));
        QCOMPARE(english(notLiftedWords({.date = tests::dayNumber(3), .tried = false})),
                 std::string("the lift was not possible on 2026-01-04"));
    }
};

QTEST_GUILESS_MAIN(TestFollowedSeason)
#include "tst_followedseason.moc"
