// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/uncertainty.h"

#include "core/stats/allowance.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr double pivotShare = 0.60;    // of the maximum
constexpr double maxOfZeroLoad = 0.85; // load at zero speed: 112, 117 and 148 % of 1RM published
constexpr double leaningLevel = 0.80;
constexpr double allowanceLevel = 0.95; // of f for what is said at less

/// Variance of the line's mean at x over its residual variance.
double leverageAt(const stats::Line& line, double x) {
    const double off = x - line.xMean;
    return 1.0 / line.n + off * off / line.sxx;
}

stats::Moving moving(const DayNoise& noise, double slope, double pivot) {
    if (noise.origin == DayNoise::Origin::None)
        return {};
    const double perKilogram = noise.slopeCv() * slope;
    return {.level = noise.variance.value,
            .tilt = perKilogram * perKilogram,
            .pivot = pivot,
            .df = noise.variance.df};
}

stats::Critical bandOf(double level) {
    return [level](double df) { return std::sqrt(2 * stats::fQuantile(level, 2, df)); };
}

double squared(double x) {
    return x * x;
}

double halfOf(const stats::Interval& interval) {
    return (interval.high - interval.low) / 2;
}

stats::Interval about(double centre, double squaredHalf) {
    const double half = std::sqrt(squaredHalf);
    return {centre - half, centre + half};
}

} // namespace

std::optional<double> referenceMax(const stats::Line& line, const std::optional<double>& mvt) {
    if (!(line.slope < 0))
        return std::nullopt;
    const double max = mvt && line.intercept > *mvt ? line.xMean + (*mvt - line.yMean) / line.slope
                                                    : maxOfZeroLoad * line.root();
    return max > 0 && std::isfinite(max) ? std::optional(max) : std::nullopt;
}

stats::Moving dayOf(const DayNoise& noise, const stats::Line& line,
                    const std::optional<double>& max) {
    return moving(noise, line.slope, max ? pivotShare * *max : (line.xMin + line.xMax) / 2);
}

stats::Moving dayOf(const DayNoise& noise, const stats::Line& earlier, const stats::Line& later,
                    const std::optional<double>& earlierMax) {
    const double slope = (std::abs(earlier.slope) + std::abs(later.slope)) / 2;
    const double middle =
        (std::max(earlier.xMin, later.xMin) + std::min(earlier.xMax, later.xMax)) / 2;
    return moving(noise, slope, earlierMax ? pivotShare * *earlierMax : middle);
}

std::optional<stats::Interval> intervalToPlanWith(const stats::Line& line, const Mvt& mvt,
                                                  const stats::Moving& day, const BendErrors& bend,
                                                  double level) {
    if (!line.hasInference() || line.slope == 0)
        return std::nullopt;
    const double sd = mvt.sd.value_or(0);
    const auto inverse =
        stats::inverseMoving(line, mvt.value, {line.s2(), line.df()}, day,
                             std::array{stats::Variance{sd * sd, mvt.sdDf}}, stats::tOf(level));
    if (inverse.shape != stats::Inverse::Shape::Bounded)
        return std::nullopt;
    return stats::allowing(inverse.interval, bend.ofMax(), level);
}

stats::Scatter ChangeUncertainty::scatter(const stats::Line& line) const {
    if (variances == stats::Variances::Separate)
        return {line.s2(), line.df()};
    return {std::max(lines.s2(), line.s2()), lines.df()};
}

double ChangeUncertainty::squaredBeyond(double x, const stats::Critical& by) const {
    return stats::squaredHalfWidth(std::array{stats::Variance{2 * day.at(x), day.df}, device}, by);
}

double ChangeUncertainty::squaredLines(double x, const stats::Critical& by) const {
    const double value = scatter(lines.first()).s2 * leverageAt(lines.first(), x) +
                         scatter(lines.second()).s2 * leverageAt(lines.second(), x);
    return stats::squaredHalfWidth(std::array{stats::Variance{value, lines.df()}}, by);
}

stats::Interval ChangeUncertainty::straight(double x, double level) const {
    const stats::Critical by = critical(level);
    double ofLines = 0;
    if (variances == stats::Variances::Pooled) {
        ofLines = squaredLines(x, by);
    } else {
        // Satterthwaite's df with their floor (TwoLines::interval), scaled to the critical value.
        const double df = lines.variance(x).df;
        const double scale = df > 0 ? by(df) / stats::tCritical(level, df) : 1;
        ofLines = squared(scale * halfOf(lines.interval(x, level)));
    }
    return about(lines.difference(x), ofLines + squaredBeyond(x, by));
}

stats::Interval ChangeUncertainty::band(double x, double level) const {
    const stats::Critical by = bandOf(level);
    const double ofLines = variances == stats::Variances::Pooled
                               ? squaredLines(x, by)
                               : squared(halfOf(lines.band(x, level)));
    return stats::allowing(about(lines.difference(x), ofLines + squaredBeyond(x, by)), bend.at(x),
                           level);
}

std::optional<stats::Interval> ChangeUncertainty::maxStraight(double y, double level) const {
    const auto side = [&](const stats::Line& line, const stats::Variance& bias) {
        return stats::inverseMoving(line, y, scatter(line), day, std::array{bias}, critical(level));
    };
    if (lines.first().slope == 0 || lines.second().slope == 0)
        return std::nullopt;
    const auto first = side(lines.first(), {}), second = side(lines.second(), device);
    for (const auto& each : {first, second})
        if (each.shape != stats::Inverse::Shape::Bounded)
            return std::nullopt;
    return stats::differenceInterval(first.estimate, first.interval, second.estimate,
                                     second.interval);
}

ReadChange readWithBend(double change,
                        const std::function<std::optional<stats::Interval>(double)>& straight,
                        const stats::Interval& bend, double level,
                        const std::optional<Smallest>& smallest) {
    const auto atLevel = straight(level), equivalence = straight(equivalenceLevel(level)),
               at80 = straight(leaningLevel);
    if (!atLevel || !equivalence)
        return {.change = change, .smallest = smallest};
    // Two one-sided tests need each end at its own level: no share of it is spent on the other.
    ReadChange made = read(change, stats::allowing(*atLevel, bend, level),
                           stats::allowingFully(*equivalence, bend), smallest);
    made.straight = atLevel;
    made.bend = bend;
    if (at80)
        made.at80 = stats::allowing(*at80, bend, allowanceLevel);
    return made;
}

} // namespace slopebook::answers
