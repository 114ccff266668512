// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/inverse.h"

#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

/// Roots of w q^2 - 2 d q + (d^2 - e^2) = 0, given root = sqrt of its quarter discriminant; the one
/// that would cancel is taken from their product.
Interval roots(double w, double d, double e, double root) {
    const double larger = d + std::copysign(root, d);
    if (larger == 0)
        return {0, 0};
    const double a = larger / w;
    const double b = (d - e) * (d + e) / larger;
    return {std::min(a, b), std::max(a, b)};
}

} // namespace

Inverse inverseByCritical(const Line& line, double y, double yVariance, double s2, double t) {
    const double d = (y - line.yMean) / line.slope;
    const double reach = t / std::abs(line.slope);
    const double perX = s2 / line.sxx;
    const double atMean = s2 / line.n + yVariance;
    Inverse inverse;
    inverse.estimate = line.xMean + d;
    inverse.g = reach * reach * perX;
    const double w = 1 - inverse.g;
    const double e = reach * std::sqrt(atMean);
    const double squared = w * atMean + perX * d * d;
    if (w > 0) {
        const Interval q = roots(w, d, e, reach * std::sqrt(squared));
        inverse.interval = {line.xMean + q.low, line.xMean + q.high};
    } else if (w < 0 && squared >= 0) {
        inverse.shape = Inverse::Shape::Complement;
        const Interval q = roots(w, d, e, reach * std::sqrt(squared));
        inverse.interval = {line.xMean + q.low, line.xMean + q.high};
    } else if (w == 0 && d != 0) {
        // One ray: all on the estimate's side of a single end.
        inverse.shape = Inverse::Shape::Complement;
        const double end = line.xMean + (d - e) * (d + e) / (2 * d);
        inverse.interval = d > 0 ? Interval{-infinity, end} : Interval{end, infinity};
    } else {
        inverse.shape = Inverse::Shape::Everything;
    }
    return inverse;
}

Inverse inversePrediction(const Line& line, double y, double yVariance, const Scatter& scatter,
                          double level) {
    return inverseByCritical(line, y, yVariance, scatter.s2, tCritical(level, scatter.df));
}

Inverse inversePrediction(const Line& line, double y, double yVariance, double level) {
    return inversePrediction(line, y, yVariance, {line.s2(), line.df()}, level);
}

Interval differenceInterval(double first, const Interval& firstInterval, double second,
                            const Interval& secondInterval) {
    const double difference = second - first;
    return {difference - std::hypot(second - secondInterval.low, firstInterval.high - first),
            difference + std::hypot(secondInterval.high - second, first - firstInterval.low)};
}

} // namespace slopebook::stats
