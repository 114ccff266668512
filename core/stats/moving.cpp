// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/moving.h"

#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

double squaredPart(const Variance& part, const Critical& critical) {
    if (part.value == 0)
        return 0;
    const double t = critical(part.df);
    return t * t * part.value;
}

} // namespace

Critical tOf(double level) {
    return [level](double df) { return tCritical(level, df); };
}

double squaredHalfWidth(std::span<const Variance> parts, const Critical& critical) {
    double squared = 0;
    for (const Variance& part : parts)
        squared += squaredPart(part, critical);
    return squared;
}

Inverse inverseMoving(const Line& line, double y, const Scatter& scatter, const Moving& moving,
                      std::span<const Variance> ofY, const Critical& critical) {
    // With w = x - estimate: slope^2 w^2 <= k0 + 2 k1 w + k2 w^2, and k0 >= 0: where the set is
    // bounded, the estimate lies in it and neither root is lost to cancelling.
    const double d = (y - line.yMean) / line.slope;
    const double off = line.xMean + d - moving.pivot;
    const double points = squaredPart({scatter.s2, scatter.df}, critical);
    const bool moves = moving.level > 0 || moving.tilt > 0;
    const double days = moves ? squaredPart({1, moving.df}, critical) : 0;
    const double k0 = points * (1.0 / line.n + d * d / line.sxx) +
                      days * (moving.level + moving.tilt * off * off) +
                      squaredHalfWidth(ofY, critical);
    const double k1 = points * d / line.sxx + days * moving.tilt * off;
    const double k2 = points / line.sxx + days * moving.tilt;
    const double squaredSlope = line.slope * line.slope;
    Inverse inverse;
    inverse.estimate = line.xMean + d;
    inverse.g = k2 / squaredSlope;
    const double a = squaredSlope - k2;
    const double discriminant = k1 * k1 + a * k0;
    if (a < 0 && discriminant < 0) {
        inverse.shape = Inverse::Shape::Everything;
        return inverse;
    }
    if (a == 0) {
        inverse.shape = k1 == 0 ? Inverse::Shape::Everything : Inverse::Shape::Complement;
        const double end = k1 == 0 ? 0 : inverse.estimate - k0 / (2 * k1);
        inverse.interval = k1 > 0 ? Interval{-infinity, end} : Interval{end, infinity};
        return inverse;
    }
    const double larger = k1 + std::copysign(std::sqrt(discriminant), k1);
    const double one = larger / a, other = larger == 0 ? 0 : -k0 / larger;
    inverse.shape = a > 0 ? Inverse::Shape::Bounded : Inverse::Shape::Complement;
    inverse.interval = {inverse.estimate + std::min(one, other),
                        inverse.estimate + std::max(one, other)};
    return inverse;
}

} // namespace slopebook::stats
