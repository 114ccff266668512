// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/allowance.h"

#include "core/stats/infinity.h"
#include "core/stats/normal.h"

#include <cmath>

namespace slopebook::stats {

namespace {

/// The factor where the span is wide: the one-sided quantile's share of the two-sided one.
double leastFactor(double level) {
    thread_local double last = 0, least = 0;
    if (level != last) {
        least = tQuantile(level, infinity) / tCritical(level, infinity);
        last = level;
    }
    return least;
}

} // namespace

double imbensManski(double span, double level) {
    if (!(span > 0))
        return 1;
    const double z = tCritical(level, infinity), least = leastFactor(level);
    if (span > 4) // Phi(z (f + span)) is 1 to 1e-16 at the levels that are asked
        if (normalBelow(-z * (least + span)) < 1e-17)
            return least;
    // Concave and rising in f: after the first, Newton's steps rise to the root from below. The
    // start is within 0.006 of it at 95 %.
    double f = least + (1 - least) * std::exp(-span * (3.15 + 2.1 * span));
    for (int i = 0; i < 50; ++i) {
        const double value = normalBelow(z * (f + span)) - normalBelow(-z * f) - level;
        const double rise = z * (normalDensity(z * (f + span)) + normalDensity(z * f));
        const double step = -value / rise;
        f += step;
        if (std::abs(step) < 1e-11) // the next would be its square: below what a double holds
            break;
    }
    return f;
}

Interval allowing(const Interval& straight, const Interval& error, double level) {
    const double span = error.high - error.low;
    const double half = (straight.high - straight.low) / 2;
    if (!(span > 0))
        return {straight.low - error.high, straight.high - error.low};
    if (!(half > 0))
        return {straight.low - error.high, straight.high - error.low};
    const double middle = (straight.low + straight.high) / 2 - (error.low + error.high) / 2;
    const double reach = half * imbensManski(span / half, level) + span / 2;
    return {middle - reach, middle + reach};
}

Interval allowingFully(const Interval& straight, const Interval& error) {
    return {straight.low - error.high, straight.high - error.low};
}

} // namespace slopebook::stats
