// SPDX-License-Identifier: GPL-3.0-or-later
// Where the marks of the season's chart stand: those of the maxima, of which none lies on another,
// its lines, and what no word may lie on.
#pragma once

#include "ui/athlete/season/seasonlayout.h"

#include <QLineF>

#include <optional>
#include <vector>

namespace slopebook::ui {

/// The interval drawn around a session's 1RM: to plan with, or where there is none the line's.
std::optional<stats::Interval> shownInterval(const SeasonPoint& point);

/// Estimates at their values, every one of them. What was measured stands beside its day's whisker
/// where it would lie on something; what is planned with by the log's maxima has a mark only where
/// that is told from the estimate's.
std::vector<MaxMark> placeMaxima(const charts::PlotFrame& oneRm, const SeasonData& data);

/// A whisker in that frame: its shaft, and its stops or arrows. Empty where it lies outside.
std::vector<QRectF> whiskerBoxes(const charts::PlotFrame& frame, double day,
                                 const stats::Interval& shown);

/// The lines around the baseline from which the newest day alone is clear.
struct AloneLines {
    double from = 0, to = 0;    ///< along x
    double top = 0, bottom = 0; ///< y
};
std::optional<AloneLines> aloneLines(const charts::PlotFrame& velocity, const SeasonData& data);
QLineF trendLine(const charts::PlotFrame& velocity, const SeasonTrend& trend);

bool liesOnNone(const QRectF& box, const std::vector<QRectF>& taken);
/// What no word may lie on: points, what was seen, whiskers, the blocks' segments, the edges of
/// their intervals, which say how far they reach, and the lines of the newest day.
std::vector<QRectF> speedObstacles(const SeasonLayout& layout, const SeasonData& data);
/// The same among the maxima.
std::vector<QRectF> maxObstacles(const SeasonLayout& layout, const SeasonData& data);

} // namespace slopebook::ui
