// SPDX-License-Identifier: GPL-3.0-or-later
// A straight trend through days that are alike from one to the next: generalised least squares with
// their correlation known (daysalike.h), so that a run of good days is not read as a trend.
#pragma once

#include "core/stats/twolines.h"

#include <optional>
#include <span>

namespace slopebook::stats {

struct DayTrend {
    int n = 0;
    double slope = 0;
    double at0 = 0;     ///< its value at x = 0
    double slopeSe = 0; ///< NaN of two
    double df = 0;      ///< n - 2: the variance is that of these days alone
    double at(double x) const { return at0 + slope * x; }
    /// Of the slope; nothing without degrees of freedom.
    std::optional<Interval> interval(double level) const;
};

/// y at x, in the days' order, with errors of covariance s^2 sqrt(u_i u_j) phi^|i-j|; relative: u,
/// positive, one each; none: alike. s^2 = r' V^-1 r / (n - 2). As R's gls with corAR1(0.5, fixed)
/// and varFixed has it. Nothing of fewer than two, or where all x are the same.
std::optional<DayTrend> dayTrend(std::span<const double> x, std::span<const double> y,
                                 std::span<const double> relative = {});

} // namespace slopebook::stats
