// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/allowance.h"

#include "core/stats/infinity.h"
#include "core/stats/normal.h"

#include <cmath>

namespace slopebook::stats {

double imbensManski(double span, double level) {
    if (!(span > 0))
        return 1;
    const double z = tCritical(level, infinity);
    // Concave and rising in f: Newton's steps from the one-sided factor rise to the root.
    double f = tQuantile(level, infinity) / z;
    for (int i = 0; i < 50; ++i) {
        const double value = normalBelow(z * (f + span)) - normalBelow(-z * f) - level;
        const double rise = z * (normalDensity(z * (f + span)) + normalDensity(z * f));
        const double step = -value / rise;
        f += step;
        if (std::abs(step) < 1e-15)
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
