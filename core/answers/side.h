// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions that a side of a change stands on, made one: a test, or all of a training block, the
// light sets of its ordinary days among them.
#pragma once

#include "core/model/session.h"
#include "core/stats/moderation.h"
#include "core/stats/moving.h"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// How several sessions are made one figure.
enum class ReadAs {
    Mean, ///< the weighted mean
    End   ///< of three or more: where a straight trend through them ends, at the last of them
};

/// One athlete's sessions of one lift, by date.
struct SideSessions {
    /// One a session; a day that held one load only has that load's mean, level, and counts there
    /// alone.
    std::vector<stats::Line> lines = {};
    std::vector<double> days = {}; ///< when they were, in days from any day on
    std::size_t lead = 0;          ///< of those, the one that stands for the side's ladder
    stats::Scatter scatter = {};   ///< pooled; a session's own where that is more
    ReadAs readAs = ReadAs::Mean;

    stats::Scatter scatterOf(const stats::Line& line) const {
        return {std::max(scatter.s2, line.s2()), scatter.df};
    }
};

/// What a session says to a side: its line, or what was seen at its one load. Nothing without
/// points.
std::optional<stats::Line> sideLine(const LiftSession& session);
/// Whether it is a day of one load.
bool isOneLoad(const stats::Line& line);

/// A side as it is asked at one load.
struct Mixed {
    std::vector<double> shares = {}; ///< one a session, together 1; 0: takes no part
    double days = 0;                 ///< variance of its days over that of one
    int sessions = 0;                ///< that take part
    bool extrapolated = false;       ///< the load lies outside the loads of all of them
    double at(const SideSessions& side, double x) const;
    double slope(const SideSessions& side) const;
    /// The load at which the mean of the lines reaches y; of one line its own.
    double root(const SideSessions& side, double y) const;
    /// Of the scatter alone, (m/s)^2.
    double ofScatter(const SideSessions& side, double x) const;
    /// Were each session's points as far from their line as all are together.
    double ofPooledScatter(const SideSessions& side, double x) const;
};

/// The sessions that cover the load, or where none does those that come within a tenth of it as
/// near as the nearest, each with weight 1 / (s^2 h(x) + C V_day(x)), C by their number.
Mixed mixedAt(const SideSessions& side, double x, const stats::Moving& day);
/// The same at the load at which their mean reaches y, by lines alone; nothing where that does not
/// fall, or never was above y.
std::optional<Mixed> mixedAtMax(const SideSessions& side, double y, const stats::Moving& day);

/// A side's figure with what it varies by.
struct SideFigure {
    double value = 0;
    stats::Variance scatter = {}, day = {};
    int sessions = 0;
    bool extrapolated = false;
    double variance() const { return scatter.value + day.value; }
};
/// Speed at a load, m/s; nothing where no session says anything of it.
std::optional<SideFigure> figureAt(const SideSessions& side, double x, const stats::Moving& day);
/// The load at which the side reaches y, kg, by the delta method.
std::optional<SideFigure> figureOfMax(const SideSessions& side, double y, const stats::Moving& day);

/// What the side's own sessions say of how days vary, by their figures where those are known best;
/// nothing of fewer than two lines.
std::optional<stats::DaySpread> spreadOf(const SideSessions& side);

/// Variance of a line's mean at x over its residual variance; of a day of one load at that load.
double leverageAt(const stats::Line& line, double x);

} // namespace slopebook::answers
