// SPDX-License-Identifier: GPL-3.0-or-later
// The change between sides of several sessions: ChangeUncertainty's own parts, each the weighted
// mean of the sessions'.
#include "core/answers/uncertainty.h"

#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

stats::Variance inKilograms(const stats::Variance& ofSpeed, double slope) {
    return {ofSpeed.value / (slope * slope), ofSpeed.df};
}

std::optional<stats::Inverse> inverseOfSide(const SideSessions& side, double y,
                                            const stats::Moving& day, const stats::Variance& bias,
                                            const stats::Critical& critical) {
    const auto mixed = mixedAtMax(side, y, day);
    if (!mixed)
        return std::nullopt;
    std::vector<stats::Line> lines;
    std::vector<double> shares;
    std::vector<stats::Scatter> scatter;
    for (std::size_t j = 0; j < side.lines.size(); ++j)
        if (mixed->shares[j] != 0) {
            lines.push_back(side.lines[j]);
            shares.push_back(mixed->shares[j]);
            scatter.push_back(side.scatterOf(side.lines[j]));
        }
    const auto inverse = stats::inverseOfMean(lines, shares, y, scatter, day, mixed->days,
                                              std::array{bias}, critical);
    return inverse.shape == stats::Inverse::Shape::Bounded ? std::optional(inverse) : std::nullopt;
}

/// ChangeParts::pooledShare, each side asked at its own load.
double pooledShareOf(const ChangeUncertainty::Sides& sides, const Mixed& before, double first,
                     const Mixed& after, double second) {
    const double taken =
        before.ofScatter(sides.earlier, first) + after.ofScatter(sides.later, second);
    const double pooled =
        before.ofPooledScatter(sides.earlier, first) + after.ofPooledScatter(sides.later, second);
    return taken > 0 ? pooled / taken : 1;
}

std::optional<double> maxOf(const stats::Line& line, double y) {
    if (!(line.slope < 0))
        return std::nullopt;
    return line.xMean + (y - line.yMean) / line.slope;
}

std::optional<double> maxOf(const SideSessions& side, double y, const stats::Moving& day) {
    const auto mixed = mixedAtMax(side, y, day);
    return mixed ? std::optional(mixed->root(side, y)) : std::nullopt;
}

} // namespace

ChangeParts ChangeUncertainty::ofSides(double x) const {
    const Mixed before = mixedAt(sides->earlier, x, day), after = mixedAt(sides->later, x, day);
    return {.earlier = {before.ofScatter(sides->earlier, x), sides->earlier.scatter.df},
            .later = {after.ofScatter(sides->later, x), sides->later.scatter.df},
            .day = {day.at(x) * (before.days + after.days) / 2, day.df},
            .device = device,
            .bend = bend.at(x, before.shares, after.shares),
            .likely = day.likely,
            .pooledShare = pooledShareOf(*sides, before, x, after, x)};
}

ChangeParts ChangeUncertainty::ofMaxOfSides(double y) const {
    const auto before = mixedAtMax(sides->earlier, y, day),
               after = mixedAtMax(sides->later, y, day);
    if (!before || !after)
        return {};
    const auto side = [&](const SideSessions& of, const Mixed& mixed) {
        const double x = mixed.root(of, y), slope = mixed.slope(of);
        return std::pair{inKilograms({mixed.ofScatter(of, x), of.scatter.df}, slope),
                         inKilograms({day.at(x) * mixed.days, day.df}, slope).value};
    };
    const auto [earlier, earlierDay] = side(sides->earlier, *before);
    const auto [later, laterDay] = side(sides->later, *after);
    return {.earlier = earlier,
            .later = later,
            .day = {(earlierDay + laterDay) / 2, day.df},
            .device = inKilograms(device, after->slope(sides->later)),
            .bend = bend.ofMax(before->shares, after->shares),
            .likely = day.likely,
            .pooledShare = pooledShareOf(*sides, *before, before->root(sides->earlier, y), *after,
                                         after->root(sides->later, y))};
}

std::optional<stats::Interval> ChangeUncertainty::maxOfSides(double y,
                                                             const stats::Critical& by) const {
    const auto first = inverseOfSide(sides->earlier, y, day, {}, by),
               second = inverseOfSide(sides->later, y, day, device, by);
    if (!first || !second)
        return std::nullopt;
    return stats::differenceInterval(first->estimate, first->interval, second->estimate,
                                     second->interval);
}

std::optional<double> ChangeUncertainty::maxOfEarlier(double y) const {
    return sides ? maxOf(sides->earlier, y, day) : maxOf(lines.first(), y);
}

std::optional<double> ChangeUncertainty::maxOfLater(double y) const {
    return sides ? maxOf(sides->later, y, day) : maxOf(lines.second(), y);
}

bool ChangeUncertainty::extrapolated(double x) const {
    return mixedAt(sides->earlier, x, day).extrapolated ||
           mixedAt(sides->later, x, day).extrapolated;
}

stats::Scatter ChangeUncertainty::pooled() const {
    if (!sides || variances == stats::Variances::Separate)
        return {lines.s2(), lines.df()};
    return sides->earlier.scatter;
}

stats::Interval ChangeUncertainty::bendAt(double x) const {
    return sides ? bend.at(x, mixedAt(sides->earlier, x, day).shares,
                           mixedAt(sides->later, x, day).shares)
                 : bend.at(x);
}

stats::Interval ChangeUncertainty::bendOfMax(double y) const {
    if (!sides)
        return bend.ofMax();
    const auto before = mixedAtMax(sides->earlier, y, day),
               after = mixedAtMax(sides->later, y, day);
    return before && after ? bend.ofMax(before->shares, after->shares) : stats::Interval{};
}

stats::Variance ChangeUncertainty::aloneVariance(double x) const {
    if (!sides || (sides->earlier.lines.size() == 1 && sides->later.lines.size() == 1))
        return lines.variance(x);
    const ChangeParts parts = ofSides(x);
    return stats::sum(parts.earlier, parts.later);
}

stats::Interval ChangeUncertainty::alone(double x, double level) const {
    if (!sides || (sides->earlier.lines.size() == 1 && sides->later.lines.size() == 1))
        return lines.interval(x, level);
    ChangeParts parts = ofSides(x);
    parts.day = parts.device = {};
    const double half = std::sqrt(squaredHalfWidth(parts, stats::tOf(level)));
    return {change(x) - half, change(x) + half};
}

stats::Interval ChangeUncertainty::aloneBand(double x, double level) const {
    if (!sides || (sides->earlier.lines.size() == 1 && sides->later.lines.size() == 1))
        return lines.band(x, level);
    ChangeParts parts = ofSides(x);
    parts.day = parts.device = {};
    const double half = std::sqrt(squaredHalfWidth(
        parts, [level](double df) { return std::sqrt(2 * stats::fQuantile(level, 2, df)); }));
    return {change(x) - half, change(x) + half};
}

} // namespace slopebook::answers
