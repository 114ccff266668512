// SPDX-License-Identifier: GPL-3.0-or-later
// Means that lose nothing to rounding on the way, and intervals about them.
#pragma once

#include "core/stats/quantiles.h"

#include <span>

namespace slopebook::stats {

/// A mean with what double could not hold of it.
struct Mean {
    double value = 0;
    double rest = 0;
};

/// Summed twice, the second time what the first had left; values is not empty.
inline Mean meanOf(std::span<const double> values) {
    double sum = 0;
    for (const double v : values)
        sum += v;
    const double n = static_cast<double>(values.size());
    const double rough = sum / n;
    double left = 0;
    for (const double v : values)
        left += v - rough;
    const double correction = left / n;
    const double value = rough + correction;
    return {value, correction - (value - rough)};
}

/// centre - half to centre + half.
inline Interval around(double centre, double half) {
    return {centre - half, centre + half};
}

} // namespace slopebook::stats
