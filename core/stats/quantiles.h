// SPDX-License-Identifier: GPL-3.0-or-later
// Quantiles and tails of the distributions in use, by Boost.Math. df may be infinite (the normal
// limit). Arguments outside their range throw std::domain_error.
#pragma once

#include <algorithm>

namespace slopebook::stats {

/// A confidence interval; low <= high.
struct Interval {
    double low = 0;
    double high = 0;
    double width() const { return high - low; }
    friend bool operator==(const Interval&, const Interval&) = default;
};

/// The least interval that holds both.
inline Interval hull(const Interval& a, const Interval& b) {
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

/// Quantile of Student's t; p in (0, 1), df > 0, df may be infinite.
double tQuantile(double p, double df);
/// The two-sided critical value of a level: tQuantile((1 + level) / 2, df).
double tCritical(double level, double df);
/// P(|T| > |t|).
double tTwoSidedP(double t, double df);
/// Quantile of Fisher's F; df2 may be infinite.
double fQuantile(double p, double df1, double df2);
/// P(F > f).
double fTail(double f, double df1, double df2);
/// Quantile of chi-square.
double chiSquareQuantile(double p, double df);

} // namespace slopebook::stats
