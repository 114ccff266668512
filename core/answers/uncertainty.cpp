// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/uncertainty.h"

#include "core/stats/allowance.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr double pivotShare = 0.60;     // of the maximum
constexpr double maxOfZeroLoad = 0.85;  // load at zero speed: 112, 117 and 148 % of 1RM published
constexpr double allowanceLevel = 0.95; // of f for what is said at less

stats::Moving moving(const DayNoise& noise, double slope, double pivot) {
    if (noise.origin == DayNoise::Origin::None)
        return {};
    const double perKilogram = noise.slopeCv() * slope;
    std::optional<stats::LogNormal> likely;
    if (noise.likely && noise.variance.value > 0)
        likely = {noise.likely->median * noise.likely->median / noise.variance.value,
                  2 * noise.likely->logSd};
    return {.level = noise.variance.value,
            .tilt = perKilogram * perKilogram,
            .pivot = pivot,
            .df = noise.variance.df,
            .likely = likely};
}

stats::Critical bandOf(double level) {
    return [level](double df) { return std::sqrt(2 * stats::fQuantile(level, 2, df)); };
}

double squared(double x) {
    return x * x;
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
                                                  const stats::Moving& day,
                                                  const stats::Interval& bend, double level) {
    if (!line.hasInference() || line.slope == 0)
        return std::nullopt;
    const double sd = mvt.sd.value_or(0);
    const auto inverse =
        stats::inverseMoving(line, mvt.value, {line.s2(), line.df()}, day,
                             std::array{stats::Variance{sd * sd, mvt.sdDf}}, stats::tOf(level));
    if (inverse.shape != stats::Inverse::Shape::Bounded)
        return std::nullopt;
    return stats::allowing(inverse.interval, bend, level);
}

double squaredHalfWidth(const ChangeParts& parts, const stats::Critical& critical) {
    if (parts.earlier.df != parts.later.df)
        return stats::squaredHalfWidth(
            std::array{parts.earlier, parts.later,
                       stats::Variance{2 * parts.day.value, parts.day.df}, parts.device},
            critical);
    return stats::squaredHalfWidth(
        std::array{stats::Variance{parts.earlier.value + parts.later.value, parts.later.df},
                   stats::Variance{2 * parts.day.value, parts.day.df}, parts.device},
        critical);
}

stats::Scatter ChangeUncertainty::scatter(const stats::Line& line) const {
    if (expected)
        return *expected;
    if (variances == stats::Variances::Separate)
        return {line.s2(), line.df()};
    return {std::max(lines.s2(), line.s2()), lines.df()};
}

stats::Variance ChangeUncertainty::ofLine(const stats::Line& line, double x) const {
    return {scatter(line).s2 * leverageAt(line, x), expected ? expected->df : lines.df()};
}

double ChangeUncertainty::pooledShare(double first, double second) const {
    if (expected || variances == stats::Variances::Separate)
        return 1;
    const double taken = ofLine(lines.first(), first).value + ofLine(lines.second(), second).value;
    const double leverages = leverageAt(lines.first(), first) + leverageAt(lines.second(), second);
    return taken > 0 ? lines.s2() * leverages / taken : 1;
}

double ChangeUncertainty::change(double x) const {
    if (!sides)
        return lines.difference(x);
    return mixedAt(sides->later, x, day).at(sides->later, x) -
           mixedAt(sides->earlier, x, day).at(sides->earlier, x);
}

ChangeParts ChangeUncertainty::at(double x) const {
    if (sides)
        return ofSides(x);
    return {.earlier = ofLine(lines.first(), x),
            .later = ofLine(lines.second(), x),
            .day = {day.at(x), day.df},
            .device = device,
            .bend = bend.at(x),
            .likely = day.likely,
            .pooledShare = pooledShare(x, x)};
}

ChangeParts ChangeUncertainty::ofMax(double y) const {
    if (sides)
        return ofMaxOfSides(y);
    const auto root = [y](const stats::Line& line) {
        return line.xMean + (y - line.yMean) / line.slope;
    };
    const auto inKg = [](stats::Variance ofSpeed, const stats::Line& line) {
        ofSpeed.value /= line.slope * line.slope;
        return ofSpeed;
    };
    const auto side = [&](const stats::Line& line) { return inKg(ofLine(line, root(line)), line); };
    const auto ofDay = [&](const stats::Line& line) {
        return inKg({day.at(root(line)), day.df}, line).value;
    };
    return {.earlier = side(lines.first()),
            .later = side(lines.second()),
            .day = {(ofDay(lines.first()) + ofDay(lines.second())) / 2, day.df},
            .device = inKg(device, lines.second()),
            .bend = bendOfMax(y),
            .likely = day.likely,
            .pooledShare = pooledShare(root(lines.first()), root(lines.second()))};
}

stats::Interval ChangeUncertainty::withLinesOf(const stats::Interval& ofLines, double x,
                                               const stats::Critical& by) const {
    ChangeParts beyond = at(x);
    beyond.earlier = beyond.later = {};
    return about(lines.difference(x), squared(ofLines.width() / 2) + squaredHalfWidth(beyond, by));
}

stats::Interval ChangeUncertainty::straight(double x, double level) const {
    const stats::Critical by = critical(level);
    if (sides || variances == stats::Variances::Pooled)
        return about(change(x), squaredHalfWidth(at(x), by));
    // Satterthwaite's df with their floor (TwoLines::interval), scaled to the critical value.
    const double df = lines.variance(x).df;
    const double scale = df > 0 ? by(df) / stats::tCritical(level, df) : 1;
    const double half = scale * lines.interval(x, level).width() / 2;
    return withLinesOf({-half, half}, x, by);
}

stats::Interval ChangeUncertainty::band(double x, double level) const {
    const stats::Critical by = bandOf(level);
    if (sides) {
        const ChangeParts parts = at(x);
        return stats::allowing(about(change(x), squaredHalfWidth(parts, by)), parts.bend, level);
    }
    return stats::allowing(variances == stats::Variances::Pooled
                               ? about(lines.difference(x), squaredHalfWidth(at(x), by))
                               : withLinesOf(lines.band(x, level), x, by),
                           bend.at(x), level);
}

std::optional<stats::Interval> ChangeUncertainty::maxStraight(double y, double level) const {
    if (sides)
        return maxOfSides(y, critical(level));
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
