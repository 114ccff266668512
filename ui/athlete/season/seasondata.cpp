// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasondata.h"

#include "ui/words/format.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

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
        p.far = f.oneRm->extrapolatedFar();
    }
    if (f.session.measuredOneRm)
        p.measured = kilograms(*f.session.measuredOneRm);
    return p;
}

} // namespace

double dayNumber(Date date) {
    return static_cast<double>(std::chrono::sys_days{date}.time_since_epoch().count());
}

SeasonData seasonData(const answers::Follow& follow, std::span<const Stored<BlockId, Block>> blocks,
                      VelocityKind kind, double level, LoadUnit unit) {
    SeasonData data{.baseline = static_cast<int>(follow.baseline),
                    .detectable = follow.smallestDetectable,
                    .velocityTitle = Season::tr("%1 at %2 (m/s)")
                                         .arg(asSentence(kindText(kind)),
                                              loadWithUnit(kilograms(follow.load), unit)),
                    .level = level,
                    .unit = unit};
    for (const answers::Followed& f : follow.sessions)
        data.points.push_back(pointOf(f));
    if (follow.trend && !data.points.empty())
        data.trend = SeasonTrend{.day = data.points.front().day,
                                 .value = follow.trend->start,
                                 .perWeek = follow.trend->perWeek};
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
