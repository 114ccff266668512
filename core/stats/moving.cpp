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

/// All x with slope^2 w^2 <= k0 + 2 k1 w + k2 w^2, w = x - estimate, and k0 >= 0: where the set is
/// bounded, the estimate lies in it and neither root is lost to cancelling.
Inverse solved(double estimate, double squaredSlope, double k0, double k1, double k2) {
    Inverse inverse;
    inverse.estimate = estimate;
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
    return solved(line.xMean + d, line.slope * line.slope, k0, k1, k2);
}

Inverse inverseOfMean(std::span<const Line> lines, std::span<const double> weights, double y,
                      std::span<const Scatter> scatter, const Moving& moving, double days,
                      std::span<const Variance> ofY, const Critical& critical) {
    if (lines.size() == 1)
        return inverseMoving(lines[0], y, scatter[0], moving, ofY, critical);
    double xMean = 0, slope = 0, yMean = 0;
    for (std::size_t j = 0; j < lines.size(); ++j) {
        xMean += weights[j] * lines[j].xMean;
        slope += weights[j] * lines[j].slope;
    }
    for (std::size_t j = 0; j < lines.size(); ++j)
        yMean += weights[j] * lines[j].at(xMean);
    const double estimate = xMean + (y - yMean) / slope;
    const double off = estimate - moving.pivot;
    const bool moves = moving.level > 0 || moving.tilt > 0;
    const double perDay = moves ? days * squaredPart({1, moving.df}, critical) : 0;
    double k0 = perDay * (moving.level + moving.tilt * off * off) + squaredHalfWidth(ofY, critical);
    double k1 = perDay * moving.tilt * off, k2 = perDay * moving.tilt;
    for (std::size_t j = 0; j < lines.size(); ++j) {
        const double points =
            weights[j] * weights[j] * squaredPart({scatter[j].s2, scatter[j].df}, critical);
        const double d = estimate - lines[j].xMean;
        k0 += points * (1.0 / lines[j].n + d * d / lines[j].sxx);
        k1 += points * d / lines[j].sxx;
        k2 += points / lines[j].sxx;
    }
    return solved(estimate, slope * slope, k0, k1, k2);
}

} // namespace slopebook::stats
