// SPDX-License-Identifier: GPL-3.0-or-later
// A line that moves and tilts from one day to the next beside the scatter of its points: its
// variance at x, and Fieller's set for where it reaches a y.
#pragma once

#include "core/stats/inverse.h"
#include "core/stats/lognormal.h"
#include "core/stats/twolines.h"

#include <functional>
#include <limits>
#include <optional>
#include <span>

namespace slopebook::stats {

/// Variance of a whole line's value at x: level + tilt (x - pivot)^2, with the degrees of freedom
/// on which its critical value is taken.
struct Moving {
    double level = 0;
    double tilt = 0; ///< per squared unit of x
    double pivot = 0;
    double df = std::numeric_limits<double>::infinity();
    /// What the variance of this athlete's days is likely to be, over the one that is taken here.
    std::optional<LogNormal> likely = {};
    double at(double x) const { return level + tilt * (x - pivot) * (x - pivot); }
};

/// The critical value for a number of degrees of freedom: tCritical of a level, or one for many
/// comparisons (dunnett.h).
using Critical = std::function<double(double df)>;
Critical tOf(double level);

/// Half-width^2 of independent parts, each with the critical value of its own df: sum of t_i^2 V_i.
/// Holds at least its level whatever the parts' ratio (Banerjee 1960, from memory). A part of zero
/// adds nothing; a positive one needs df > 0.
double squaredHalfWidth(std::span<const Variance> parts, const Critical& critical);

/// All x with (line(x) - y)^2 <= t1^2 s2 h(x) + t0^2 moving(x) + sum tu^2 u, h(x) = 1/n + (x -
/// xMean)^2 / sxx, each t by its part's own df: Fieller's set with every part of the variance in
/// it. ofY: variances of y itself and of the line's level that do not depend on x. Inverse::g is
/// the share of slope^2 that the x^2 terms take: not bounded from 1 on. slope must not be zero;
/// scatter.df > 0 where scatter.s2 > 0.
Inverse inverseMoving(const Line& line, double y, const Scatter& scatter, const Moving& moving,
                      std::span<const Variance> ofY, const Critical& critical);

/// The same of a weighted mean of lines, which is a line: (sum w_j line_j(x) - y)^2 <= sum w_j^2
/// t_j^2 s_j^2 h_j(x) + days t0^2 moving(x) + sum tu^2 u; days: varianceOfDays of the weights. One
/// line of weight 1 is inverseMoving. The mean line must not be level.
Inverse inverseOfMean(std::span<const Line> lines, std::span<const double> weights, double y,
                      std::span<const Scatter> scatter, const Moving& moving, double days,
                      std::span<const Variance> ofY, const Critical& critical);

} // namespace slopebook::stats
