// SPDX-License-Identifier: GPL-3.0-or-later
// Inverse prediction: the x at which a line reaches a given y, with Fieller's interval.
#pragma once

#include "core/stats/line.h"

namespace slopebook::stats {

struct Inverse {
    enum class Shape {
        Bounded,    ///< an ordinary interval: low .. high
        Complement, ///< g >= 1: everything outside low .. high; not to be shown as an interval
        Everything  ///< g >= 1: the whole line of numbers
    };
    double estimate = 0;
    double g = 0; ///< t^2 s^2 / (slope^2 sxx)
    Shape shape = Shape::Bounded;
    Interval interval; ///< meaningless when shape is Everything
};

/// Scatter that an inverse prediction uses in place of the line's own (a pooled one, say).
struct Scatter {
    double s2 = 0;
    double df = 0;
};

/// Where the line's mean reaches y. yVariance is the squared SD of y itself (0: y is exact).
/// interval: xMean + [ d -/+ (t/|b|) sqrt((1-g)(s2/n + yVariance) + s2 d^2/sxx) ] / (1-g), d = (y -
/// yMean)/b. Fieller 1954; Draper and Smith, Applied Regression Analysis (inverse prediction).
/// slope must not be zero, scatter.df > 0.
Inverse inversePrediction(const Line& line, double y, double yVariance, const Scatter& scatter,
                          double level);
/// The same for a given critical value t, for intervals whose df are not those of s2 alone.
Inverse inverseByCritical(const Line& line, double y, double yVariance, double s2, double t);
/// With the line's own scatter.
Inverse inversePrediction(const Line& line, double y, double yVariance, double level);

/// Interval of a difference second - first from the two intervals (method of variance estimates
/// recovery: Zou and Donner, Stat Med 2008;27:1693-1702).
Interval differenceInterval(double first, const Interval& firstInterval, double second,
                            const Interval& secondInterval);

} // namespace slopebook::stats
