// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/changedata.h"

#include "core/answers/readingwords.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <algorithm>

namespace slopebook::ui::charts {

namespace {

constexpr int steps = 60;

/// Of blocks of all their sessions, as the readings are; the lines are those of two days.
ChangePoint pointAt(const answers::Comparison& c, double load) {
    if (c.ofSeveral())
        return {.load = load,
                .change = c.uncertainty.change(load),
                .interval = c.uncertainty.alone(load, c.settings.level),
                .band = c.uncertainty.aloneBand(load, c.settings.level)};
    return {.load = load,
            .change = c.lines.difference(load),
            .interval = c.lines.interval(load, c.settings.level),
            .band = c.lines.band(load, c.settings.level)};
}

} // namespace

ChangeData changeOf(const answers::Comparison& c, LoadUnit unit) {
    ChangeData data{.notComparable = !c.under.notComparable.empty(),
                    .allAtOnce = c.allAtOnce,
                    .level = c.settings.level,
                    .unit = unit};
    double low = std::min(c.from.lightest, c.to.lightest);
    double high = std::max(c.from.heaviest, c.to.heaviest);
    for (const answers::ChangeAt& at : c.at) {
        low = std::min(low, kilograms(at.load));
        high = std::max(high, kilograms(at.load));
        data.readings.push_back(
            {.load = kilograms(at.load),
             .change = at.read.change,
             .whisker = {.interval = at.read.interval,
                         .equivalence = at.read.equivalence,
                         .straight = at.read.straight.value_or(at.read.interval)},
             .reading = at.read.reading,
             .word = said(answers::shortReading(at.read)),
             .alone = said(answers::speedReading(at.read)),
             .checkLoad = at.checkLoad});
    }
    if (const auto common = answers::commonLoads(c.from, c.to))
        data.common = LoadRange{.from = common->low, .to = common->high};
    std::vector<double> loads;
    for (int i = 0; i <= steps; ++i)
        loads.push_back(low + (high - low) * i / steps);
    if (data.common) // so that the solid part ends where it ends
        for (const double end : {data.common->from, data.common->to})
            loads.push_back(end);
    std::ranges::sort(loads);
    loads.erase(std::unique(loads.begin(), loads.end()), loads.end());
    for (const double load : loads)
        data.along.push_back(pointAt(c, load));
    for (const answers::Differs& d : c.differs)
        data.differs.push_back({.from = d.stretch.from, .to = d.stretch.to});
    if (c.settings.smallestVelocity && c.settings.smallestAt.empty())
        data.smallest = c.settings.smallestVelocity->value;
    return data;
}

} // namespace slopebook::ui::charts
