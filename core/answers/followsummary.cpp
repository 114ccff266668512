// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/followsummary.h"

#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "core/answers/testsneeded.h"
#include "core/answers/toldreadings.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

constexpr int followDecimals = 3;
constexpr double weeksOfAMonth = 365.25 / 12 / 7;

Words dayOfSession(const Followed& each) {
    return sessionWords(each.session.date, each.session.ordinal);
}

const Measure speedAtLoad{.unit = "m/s"};

/// The blocks that are read against the baseline.
std::vector<const FollowedBlock*> blocksRead(const FollowedSeason& season) {
    std::vector<const FollowedBlock*> read;
    for (const FollowedBlock& block : season.blocks)
        if (block.cell.against && block.cell.against->read.reading != Reading::NoFigure)
            read.push_back(&block);
    return read;
}

const ReadChange* changeOf(const Followed& session) {
    return session.change       ? &session.change->read
           : session.seenChange ? &*session.seenChange
                                : nullptr;
}

/// "the block Autumn", "the day 22 Sep 2025": the two are read apart.
Words baselineOfItsKind(const FollowedSeason& season) {
    return season.block ? say("the block %1", baselineWords(season))
                        : say("the day %1", baselineWords(season));
}

Words ofTheSessions(const FollowedSeason& season) {
    int all = 0;
    const auto count = [&](Reading reading) {
        return std::ranges::count_if(season.follow.sessions, [&](const Followed& each) {
            const auto* change = changeOf(each);
            return change && change->reading == reading;
        });
    };
    for (const Reading reading : {Reading::Better, Reading::Worse, Reading::Held, Reading::Unclear})
        all += static_cast<int>(count(reading));
    if (all == 0)
        return say("at %1 nothing is read against %2", season.follow.load,
                   baselineOfItsKind(season));
    if (all == 1)
        return {};
    return say("at %1, of %2 sessions read against %3, %4 better, %5 worse, %6 held, %7 unclear",
               season.follow.load, all, baselineOfItsKind(season), count(Reading::Better),
               count(Reading::Worse), count(Reading::Held), count(Reading::Unclear));
}

Words trendFigures(const Trend& trend, double level) {
    const auto week = signedFigure(trend.perWeek, followDecimals);
    if (!trend.interval)
        return say("%1 m/s per week", week);
    return say("%1 m/s per week (%2 % %3 to %4)", week, figure(loadText(100 * level)),
               signedFigure(trend.interval->low, followDecimals),
               signedFigure(trend.interval->high, followDecimals));
}

} // namespace

Words baselineWords(const FollowedSeason& season) {
    if (season.block)
        return inWords(season.block->name);
    return dayOfSession(season.follow.sessions[season.follow.baseline]);
}

Words followSentence(const FollowedSeason& season) {
    const auto read = blocksRead(season);
    if (read.empty()) {
        const Words counts = ofTheSessions(season);
        return counts.empty() ? latestWords(season) : asSentence(counts);
    }
    std::vector<NamedReading> named;
    for (const FollowedBlock* each : read)
        named.push_back(
            namedReading(periodWords(each->block.name), speedAtLoad, each->cell.against->read));
    return asSentence(say("at %1 against %2 (%3), %4", season.follow.load,
                          baselineOfItsKind(season), heldAgainst(read.size() > 1),
                          clauses(toldReadings(named))));
}

std::vector<Note> blockNotes(const FollowedSeason& season, double level) {
    std::vector<Note> notes;
    if (blocksRead(season).size() > 1)
        notes.push_back(
            {Note::Kind::ByChance, say("the blocks' readings hold together over the season at %1 % "
                                       "(Dunnett); so do those of the sessions before the newest",
                                       figure(loadText(100 * level)))});
    if (std::ranges::any_of(season.blocks,
                            [](const FollowedBlock& block) { return block.cell.sessions > 1; }))
        notes.push_back({Note::Kind::OfSeveral, daysAlike()});
    return notes;
}

Words blockTrendWords(const FollowedBlock& block, double level) {
    if (!block.trend)
        return asSentence(
            say("no trend within %1: %2", periodWords(block.block.name), block.trend.why().reason));
    return asSentence(say("trend within %1 over %2 sessions: %3", periodWords(block.block.name),
                          block.trend->sessions, trendFigures(*block.trend, level)));
}

Words blockLabel(const FollowedBlock& block) {
    if (!block.cell.against || !block.cell.value)
        return {};
    const ReadChange& read = block.cell.against->read;
    if (!block.cell.against->comparable())
        return shortReading(read);
    if (read.reading == Reading::NoFigure)
        return {};
    const Words by = saidSpeed(read.besideInterval());
    if (const int alone = read.clearAlone(); alone != 0)
        return alone > 0 ? say("%1 unclear, better alone", by) : say("%1 unclear, worse alone", by);
    return read.leans() > 0   ? say("%1 unclear, leaning to better", by)
           : read.leans() < 0 ? say("%1 unclear, leaning to worse", by)
                              : say("%1 %2", by, readingWords(read.reading));
}

Words blockWords(const FollowedSeason& season, const FollowedBlock& block) {
    const MatrixCell& cell = block.cell;
    if (!cell.value)
        return asSentence(
            say("%1: no figure, %2", periodWords(block.block.name), cell.value.why().reason));
    Words mean = cell.sessions == 1
                     ? say("%1: %2 m/s, 1 session", periodWords(block.block.name),
                           figure(*cell.value, followDecimals))
                     : say("%1: mean %2 m/s, %3 sessions", periodWords(block.block.name),
                           figure(*cell.value, followDecimals), cell.sessions);
    if (cell.interval)
        mean = say("%1 (%2 to %3)", mean, figure(cell.interval->low, followDecimals),
                   figure(cell.interval->high, followDecimals));
    if (!cell.against)
        return asSentence(block.holdsBaseline ? say("%1; the baseline", mean) : mean);
    const ReadChange& read = cell.against->read;
    if (!cell.against->why.empty())
        return asSentence(say("%1; no reading, %2", mean, cell.against->why));
    return asSentence(say("%1; against %2 (%7) %3 m/s (%4 to %5), %6", mean, baselineWords(season),
                          signedFigure(read.besideInterval(), followDecimals),
                          signedFigure(read.interval.low, followDecimals),
                          signedFigure(read.interval.high, followDecimals), speedReading(read),
                          heldAgainst(blocksRead(season).size() > 1)));
}

Words notLiftedWords(const NotLifted& day) {
    const Words what = day.load ? inWords(*day.load) : say("the lift");
    const Words told = day.tried ? say("%1 was not lifted on %2", what, day.date)
                                 : say("%1 was not possible on %2", what, day.date);
    return day.reason.empty() ? told : say("%1: %2", told, day.reason);
}

namespace {

Words latestAgainst(const Followed& last, bool isBaseline, const Words& base) {
    if (isBaseline)
        return say("%1 is the baseline: nothing later to compare with it.", base);
    if (!last.change)
        return say("%1 against %2: no figure.", dayOfSession(last), base);
    const ReadChange& read = last.change->read;
    return say("%1 against %2: %3 m/s (%4 to %5), %6.", dayOfSession(last), base,
               saidSpeed(read.besideInterval()), saidSpeed(read.interval.low),
               saidSpeed(read.interval.high), speedReading(read));
}

} // namespace

Words latestWords(const Follow& follow) {
    return latestAgainst(follow.sessions.back(), follow.baseline + 1 == follow.sessions.size(),
                         dayOfSession(follow.sessions[follow.baseline]));
}

Words latestWords(const FollowedSeason& season) {
    return latestAgainst(season.follow.sessions.back(),
                         season.isBaseline(season.follow.sessions.back()), baselineWords(season));
}

Words dayAloneWords(const FollowedSeason& season, const Followed& session) {
    if (blocksRead(season).empty() || !session.change || season.isBaseline(session))
        return {};
    const ReadChange& read = session.change->read;
    if (read.reading == Reading::NoFigure)
        return {};
    return asSentence(say("%1 alone: %2 m/s (%3 to %4), %5", dayOfSession(session),
                          saidSpeed(read.besideInterval()), saidSpeed(read.interval.low),
                          saidSpeed(read.interval.high), speedReading(read)));
}

Words trendWords(const Follow& follow, double level) {
    if (!follow.trend)
        return say("No trend: %1.", follow.trend.why().reason);
    const Trend& trend = *follow.trend;
    const auto change = [](double perWeek, double weeks) {
        return signedFigure(weeks * perWeek, followDecimals);
    };
    const Words week = change(trend.perWeek, 1), month = change(trend.perWeek, weeksOfAMonth);
    if (!trend.interval)
        return say("Trend over %1 sessions: %2 m/s per week, %3 m/s per month.", trend.sessions,
                   week, month);
    const auto& [low, high] = *trend.interval;
    return say("Trend over %1 sessions: %2 m/s per week (%4 % %5 to %6), %3 m/s per month (%4 % %7 "
               "to %8).",
               trend.sessions, week, month, figure(loadText(100 * level)), change(low, 1),
               change(high, 1), change(low, weeksOfAMonth), change(high, weeksOfAMonth));
}

Words settlingWords(const Followed& session) {
    if (!session.change || session.change->read.reading != Reading::Unclear)
        return {};
    if (!session.change->unsettled && session.change->read.smallest)
        return {}; // of a block how many more tests would settle it is not asked
    return settlingWords(unsettled({session.change->load}, session.change->unsettled));
}

Words beyondLoadsWords() {
    return say("extrapolated: the load lies beyond that session's loads");
}

Words biasWords(const Followed& session) {
    return session.bias ? say("the device's bias against the baseline's, %1 m/s, is taken off in "
                              "change, trend and chart",
                              signedFigure(*session.bias, followDecimals))
                        : Words();
}

} // namespace slopebook::answers
