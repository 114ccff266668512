// SPDX-License-Identifier: GPL-3.0-or-later
// Where a difference of two lines is told from zero: the inside of TwoLines::differs.
#pragma once

#include "core/stats/twolines.h"

#include <functional>
#include <vector>

namespace slopebook::stats {

/// D(x0 + z) = d0 + d z against a squared half-width q0 + qx z^2; q0 and qx are both positive, or
/// both zero where there is no scatter.
struct JohnsonNeyman {
    double x0 = 0;
    double d0 = 0, d = 0;
    double q0 = 0, qx = 0;
};

/// The stretches where D(x)^2 exceeds the squared half-width, by the roots of the quadratic.
std::vector<Stretch> stretchesOf(const JohnsonNeyman& problem);

/// Of two independent variances, with the square of the critical value that each goes with alone.
struct JudgedVariance {
    Variance variance;
    double critical2 = 0;
};
/// Squared half-width from both: critical2 at Satterthwaite's df of their sum, but no less than
/// either gives alone (TwoLines::interval says why).
double squaredTogether(const JudgedVariance& a, const JudgedVariance& b,
                       const std::function<double(double)>& critical2);

/// The same where the critical value moves with x, because the degrees of freedom do (separate
/// variances), as squaredTogether. critical2 gives the square of the critical value at a df. The
/// axis is mapped on
/// (-1, 1), the statistic searched on a grid that holds the crossing and its turning points, each
/// change of sign then solved by Alefeld, Potra and Shi's algorithm 748.
std::vector<Stretch> stretchesBySearch(const TwoLines& lines,
                                       const std::function<double(double)>& critical2);

} // namespace slopebook::stats
