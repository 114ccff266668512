// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/line.h"

#include "core/stats/means.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <vector>

namespace slopebook::stats {

namespace {

int countDistinct(std::span<const double> values) {
    constexpr std::size_t few = 64;
    if (values.size() > few) {
        std::vector<double> sorted(values.begin(), values.end());
        std::ranges::sort(sorted);
        return static_cast<int>(std::unique(sorted.begin(), sorted.end()) - sorted.begin());
    }
    // The usual ladder: comparing in place costs less than a copy on the heap.
    int distinct = 0;
    for (auto it = values.begin(); it != values.end(); ++it)
        distinct += std::find(values.begin(), it, *it) == it;
    return distinct;
}

} // namespace

double Line::s() const {
    return std::sqrt(s2());
}

double Line::slopeSe() const {
    return s() / std::sqrt(sxx);
}

double Line::interceptSe() const {
    return s() * std::sqrt(1.0 / n + xMean * xMean / sxx);
}

double Line::seAt(double x) const {
    const double d = x - xMean;
    return s() * std::sqrt(1.0 / n + d * d / sxx);
}

std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y) {
    if (x.size() < 2 || x.size() != y.size())
        return std::nullopt;
    Line line;
    line.n = static_cast<int>(x.size());
    const auto [lowest, highest] = std::ranges::minmax(x);
    line.xMin = lowest;
    line.xMax = highest;
    line.distinct = countDistinct(x);
    const Mean xMean = meanOf(x), yMean = meanOf(y);
    line.xMean = xMean.value;
    line.yMean = yMean.value;
    double ySize = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double dx = (x[i] - xMean.value) - xMean.rest;
        const double dy = (y[i] - yMean.value) - yMean.rest;
        line.sxx += dx * dx;
        line.sxy += dx * dy;
        line.syy += dy * dy;
        ySize = std::max(ySize, std::abs(y[i]));
    }
    if (line.distinct < 2 || !(line.sxx > 0))
        return std::nullopt;
    line.slope = line.sxy / line.sxx;
    line.intercept =
        std::fma(-line.slope, xMean.value, yMean.value) + (yMean.rest - line.slope * xMean.rest);
    if (line.n > 2) {
        for (std::size_t i = 0; i < x.size(); ++i) {
            const double dx = (x[i] - xMean.value) - xMean.rest;
            const double dy = (y[i] - yMean.value) - yMean.rest;
            const double e = std::fma(-line.slope, dx, dy);
            line.rss += e * e;
        }
    }
    // Points on a line exactly leave only what rounding leaves; that is no scatter.
    const double xSize = std::max(std::abs(lowest), std::abs(highest));
    const double rounding =
        4 * std::numeric_limits<double>::epsilon() * (ySize + std::abs(line.slope) * xSize);
    if (line.rss <= line.n * rounding * rounding)
        line.rss = 0;
    line.r2 = line.syy > 0 ? std::clamp(1 - line.rss / line.syy, 0.0, 1.0) : 1;
    return line;
}

Interval meanInterval(const Line& line, double x, double level) {
    return around(line.at(x), tCritical(level, line.df()) * line.seAt(x));
}

Interval predictionInterval(const Line& line, double x, double level, int m) {
    const double se = std::hypot(line.seAt(x), line.s() / std::sqrt(m));
    return around(line.at(x), tCritical(level, line.df()) * se);
}

Interval workingHotelling(const Line& line, double x, double level) {
    return around(line.at(x), std::sqrt(2 * fQuantile(level, 2, line.df())) * line.seAt(x));
}

Interval slopeInterval(const Line& line, double level) {
    return around(line.slope, tCritical(level, line.df()) * line.slopeSe());
}

Interval interceptInterval(const Line& line, double level) {
    return around(line.intercept, tCritical(level, line.df()) * line.interceptSe());
}

} // namespace slopebook::stats
