// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/allowance.h"

#include "core/stats/infinity.h"
#include "core/stats/normal.h"

#include <cmath>
#include <numbers>

namespace slopebook::stats {

namespace {

constexpr double millsOffset = 0.75;  // a tail is nearly its density over (z + 0.75)
constexpr double seriesReach = 0.006; // a step so short leaves under 3e-11

/// What depends on the level alone.
struct Quantiles {
    double level = 0;
    double two = 0; ///< the normal quantile, two-sided
    double one = 0; ///< one-sided
};

const Quantiles& quantilesOf(double level) {
    thread_local Quantiles kept;
    if (level != kept.level)
        kept = {level, tCritical(level, infinity), tQuantile(level, infinity)};
    return kept;
}

/// The root u of tails(a + u) + tails(b + u) = 1 - level near 0, by the series of the inverse
/// to its fourth power: what is left goes with the fifth.
double stepToRoot(double a, double b, double level) {
    const double ofA = normalDensity(a), ofB = normalDensity(b);
    const double first = ofA + ofB;
    const double e = (normalBelow(-a) + normalBelow(-b) - (1 - level)) / first;
    const double c2 = -(a * ofA + b * ofB) / (2 * first);
    const double c3 = ((a * a - 1) * ofA + (b * b - 1) * ofB) / (6 * first);
    const double c4 = -(a * (a * a - 3) * ofA + b * (b * b - 3) * ofB) / (24 * first);
    return e *
           (1 + e * (-c2 + e * ((2 * c2 * c2 - c3) + e * (5 * c2 * c3 - c4 - 5 * c2 * c2 * c2))));
}

} // namespace

double imbensManski(double span, double level) {
    if (!(span > 0))
        return 1;
    const Quantiles& quantiles = quantilesOf(level);
    const double z = quantiles.two, least = quantiles.one;
    const double apart = z * span;
    if (span > 4) // Phi(z (f + span)) is 1 to 1e-16 at the levels that are asked
        if (normalBelow(-least - apart) < 1e-17)
            return least / z;
    // The nearer tail holds 1 / (1 + share) of what both do, and a quantile goes nearly with the
    // logarithm of its tail: the start is within 0.007 of the root at 95 %.
    const double middle = (z + least) / 2;
    const double share = std::exp(-apart * (middle + apart / 2)) * (middle + millsOffset) /
                         (middle + apart + millsOffset);
    double root = least + (z - least) * std::log1p(share) / std::numbers::ln2;
    for (int i = 0; i < 50; ++i) {
        const double step = stepToRoot(root + apart, root, level);
        root += step;
        if (std::abs(step) < seriesReach)
            break;
    }
    return root / z;
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
