// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasondata.h"

#include "core/answers/followsummary.h"
#include "core/answers/planbounds.h"
#include "core/answers/readingwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace slopebook::ui {

namespace {

struct Season {
    Q_DECLARE_TR_FUNCTIONS(Season)
};

SeasonPoint pointOf(const answers::Followed& f) {
    SeasonPoint p{.session = f.session.session,
                  .day = dayNumber(f.session.date),
                  .seen = f.seen,
                  .hollow = f.extrapolated,
                  .corrected = f.bias.has_value()};
    p.notComparable = (f.change && !f.change->read.notComparable.empty()) ||
                      (f.seenChange && !f.seenChange->notComparable.empty()) ||
                      !f.session.conditions.notComparable.empty();
    const double bias = f.bias.value_or(0);
    for (double& seen : p.seen)
        seen -= bias;
    if (f.line)
        p.line = *f.line - bias;
    if (f.interval)
        p.interval = stats::Interval{f.interval->low - bias, f.interval->high - bias};
    if (f.oneRm) {
        p.oneRm = f.oneRm->estimate;
        p.oneRmInterval = f.oneRm->interval;
        p.oneRmToPlan = answers::toPlanWith(*f.oneRm);
        p.oneRmPlanned = answers::estimateToPlanWith(*f.oneRm);
        p.far = f.oneRm->extrapolatedFar();
    }
    if (f.session.measuredOneRm)
        p.measured = kilograms(*f.session.measuredOneRm);
    return p;
}

/// The smallest change that matters, as the sessions are read by it.
std::optional<double> mattersFrom(const answers::Follow& follow) {
    for (const answers::Followed& f : follow.sessions) {
        const auto* read = f.change ? &f.change->read : f.seenChange ? &*f.seenChange : nullptr;
        if (read && read->smallest)
            return read->smallest->value;
    }
    return std::nullopt;
}

std::optional<SeasonMean> meanOf(const answers::FollowedSeason& season,
                                 const answers::FollowedBlock& block, LoadUnit unit) {
    using answers::Reading;
    const answers::MatrixCell& cell = block.cell;
    if (!cell.value)
        return std::nullopt;
    SeasonMean mean{.from = dayNumber(block.block.first),
                    .to = dayNumber(block.block.last) + 1,
                    .value = *cell.value,
                    .interval = cell.interval,
                    .label = said(answers::blockLabel(block), unit),
                    .hollow = cell.extrapolated};
    if (season.block && season.block->id == block.id)
        mean.label = Season::tr("baseline");
    if (cell.against) {
        const Reading reading = cell.against->read.reading;
        mean.strong = reading == Reading::Better || reading == Reading::Worse;
        mean.notComparable = !cell.against->comparable();
    }
    return mean;
}

/// What a session says at the load, to be read out.
QString sessionTold(const answers::FollowedSeason& season, const answers::Followed& f) {
    const QString day = sessionText(f.session);
    QStringList all;
    if (f.line)
        all << (f.interval ? Season::tr("%1: %2 m/s (%3)")
                                 .arg(day, number(*f.line, 3), rangeText(*f.interval, 3))
                           : Season::tr("%1: %2 m/s").arg(day, number(*f.line, 3)));
    else if (!f.seen.empty())
        all << Season::tr("%1: seen %2 m/s").arg(day, number(f.seen.front(), 3));
    else
        all << Season::tr("%1: no figure").arg(day);
    if (season.isBaseline(f))
        all << Season::tr("the baseline");
    if (const auto* read = f.change ? &f.change->read : f.seenChange ? &*f.seenChange : nullptr)
        all << Season::tr("change %1 m/s (%2), %3")
                   .arg(signedNumber(read->besideInterval(), 3), signedRangeText(read->interval, 3),
                        said(answers::speedReading(*read)));
    return all.join(QStringLiteral("; ")) + QLatin1Char('.');
}

QString itemTold(const answers::FollowedSeason& season, const SeasonItem& item, double level,
                 bool trends, LoadUnit unit) {
    if (item.kind == SeasonItem::Kind::Session)
        return sessionTold(season, season.follow.sessions[item.index]);
    if (item.kind == SeasonItem::Kind::NotLifted)
        return said(asSentence(answers::notLiftedWords(season.notLifted[item.index])), unit);
    const answers::FollowedBlock& block = season.blocks[item.index];
    const QString mean = said(answers::blockWords(season, block), unit);
    return trends ? mean + QLatin1Char(' ') + said(answers::blockTrendWords(block, level), unit)
                  : mean;
}

} // namespace

bool SeasonPoint::plannedApart() const {
    return oneRm && oneRmToPlan && oneRmPlanned &&
           std::abs(*oneRmPlanned - *oneRm) > plannedApartFrom;
}

double dayNumber(Date date) {
    return static_cast<double>(std::chrono::sys_days{date}.time_since_epoch().count());
}

std::vector<SeasonItem> seasonItems(const answers::FollowedSeason& season) {
    using Kind = SeasonItem::Kind;
    std::vector<std::pair<std::pair<double, int>, SeasonItem>> all;
    const auto& sessions = season.follow.sessions;
    for (std::size_t i = 0; i < sessions.size(); ++i)
        all.push_back({{dayNumber(sessions[i].session.date), 0}, {Kind::Session, i}});
    for (std::size_t i = 0; i < season.notLifted.size(); ++i)
        all.push_back({{dayNumber(season.notLifted[i].date), 1}, {Kind::NotLifted, i}});
    for (std::size_t i = 0; i < season.blocks.size(); ++i) {
        double last = dayNumber(season.blocks[i].block.first);
        for (const answers::Followed& each : sessions)
            if (season.blocks[i].block.holds(each.session.date))
                last = dayNumber(each.session.date);
        all.push_back({{last, 2}, {Kind::Block, i}});
    }
    std::ranges::stable_sort(all, {}, [](const auto& each) { return each.first; });
    std::vector<SeasonItem> items;
    for (const auto& each : all)
        items.push_back(each.second);
    return items;
}

SeasonData seasonData(const answers::FollowedSeason& season,
                      std::span<const Stored<BlockId, Block>> blocks, VelocityKind kind,
                      double level, LoadUnit unit, const SeasonTrends& trends) {
    const answers::Follow& follow = season.follow;
    SeasonData data{.baseline = season.block ? -1 : static_cast<int>(follow.baseline),
                    .baselineValue = season.baselineValue(),
                    .detectable = follow.smallestDetectable,
                    .matters = mattersFrom(follow),
                    .items = seasonItems(season),
                    .velocityTitle = Season::tr("%1 at %2 (m/s)")
                                         .arg(asSentence(kindText(kind)),
                                              loadWithUnit(kilograms(follow.load), unit)),
                    .level = level,
                    .unit = unit};
    for (const answers::Followed& f : follow.sessions)
        data.points.push_back(pointOf(f));
    if (trends.ofTheSeason && follow.trend && !data.points.empty())
        data.trend = SeasonTrend{.day = data.points.front().day,
                                 .value = follow.trend->start,
                                 .perWeek = follow.trend->perWeek,
                                 .last = data.points.back().day};
    for (const answers::FollowedBlock& block : season.blocks) {
        data.means.push_back(meanOf(season, block, unit));
        if (trends.withinBlocks && block.trend)
            data.blockTrends.push_back({.day = dayNumber(block.trend->first),
                                        .value = block.trend->start,
                                        .perWeek = block.trend->perWeek,
                                        .last = dayNumber(block.trend->last)});
    }
    for (const answers::NotLifted& day : season.notLifted)
        data.marks.push_back({.day = dayNumber(day.date), .tried = day.tried});
    for (const SeasonItem& item : data.items)
        data.told << itemTold(season, item, level, trends.withinBlocks, unit);
    for (const auto& [id, block] : blocks)
        data.spans.push_back(
            {.from = dayNumber(block.first),
             .to = dayNumber(block.last) + 1,
             .name = text(block.name),
             .ceiling =
                 block.ceiling
                     ? Season::tr("up to %1").arg(loadWithUnit(kilograms(*block.ceiling), unit))
                     : QString()});
    return data;
}

} // namespace slopebook::ui
