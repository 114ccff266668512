// SPDX-License-Identifier: GPL-3.0-or-later
// How a change is drawn wherever it stands: thin with caps at its level, thick over the part that
// decides "held", dashed where only bent lines may take it.
#pragma once

#include "core/stats/quantiles.h"
#include "ui/charts/look.h"

#include <QPainter>

#include <functional>

namespace slopebook::ui::charts {

struct Whisker {
    stats::Interval interval{};    ///< of the reading
    stats::Interval equivalence{}; ///< its thick part
    stats::Interval straight{};    ///< as if lines were straight: what is beyond is dashed
    friend bool operator==(const Whisker&, const Whisker&) = default;
};

/// Whether the dashes are seen beside an interval of that width.
bool bends(const Whisker& whisker);

/// at: where a value stands; across: half a cap, at right angles to the whisker.
void paintWhisker(QPainter& painter, const Whisker& whisker,
                  const std::function<QPointF(double)>& at, const QPointF& across,
                  const look::Ground& ground);

/// One end of a whisker, in the painter's pen: a stop where it ends, an arrow where a frame cuts it
/// and it runs on. outward: the unit along the whisker, away from its middle; cap: half a stop.
void paintWhiskerEnd(QPainter& painter, const QPointF& end, const QPointF& outward, double cap,
                     bool runsOn);

} // namespace slopebook::ui::charts
