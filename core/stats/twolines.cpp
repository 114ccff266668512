// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/twolines.h"

#include "core/stats/infinity.h"
#include "core/stats/stretches.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace slopebook::stats {

namespace {

/// The two sums of squares that decide whether the lines differ: D at x0, where its estimate is
/// independent of the slopes' difference, and that difference.
struct Parts {
    double x0 = 0;
    double d0 = 0;    ///< D(x0)
    double d = 0;     ///< difference of slopes
    double h0 = 0;    ///< Var D(x0) / s^2
    double perX2 = 0; ///< Var d / s^2
};

Parts partsOf(const Line& first, const Line& second) {
    const double w1 = 1 / first.sxx, w2 = 1 / second.sxx;
    const double gap = second.xMean - first.xMean;
    Parts parts;
    parts.x0 = first.xMean + gap * (w2 / (w1 + w2));
    parts.d0 = second.at(parts.x0) - first.at(parts.x0);
    parts.d = second.slope - first.slope;
    parts.h0 = 1.0 / first.n + 1.0 / second.n + gap * gap / (first.sxx + second.sxx);
    parts.perX2 = w1 + w2;
    return parts;
}

/// Variance of the line's mean at x over its residual variance.
double perScatter(const Line& line, double x) {
    const double off = x - line.xMean;
    return 1.0 / line.n + off * off / line.sxx;
}

Variance varianceOf(const Line& line, double x) {
    return {line.s2() * perScatter(line, x), line.df()};
}

std::function<double(double)> pointwise(double level) {
    return [level](double df) {
        const double t = tCritical(level, df);
        return t * t;
    };
}

/// Working and Hotelling's, of a line's two parameters.
std::function<double(double)> overAll(double level) {
    return [level](double df) { return 2 * fQuantile(level, 2, df); };
}

FTest fTest(double meanSquare, double s2, double df1, double df2) {
    FTest test{.df1 = df1, .df2 = df2};
    if (meanSquare > 0)
        test.f = s2 > 0 ? meanSquare / s2 : infinity;
    test.p = fTail(test.f, df1, df2);
    return test;
}

} // namespace

Variance sum(const Variance& a, const Variance& b) {
    if (b.value == 0)
        return a.value == 0 ? Variance{0, std::max(a.df, b.df)} : a;
    if (a.value == 0)
        return b;
    const double total = a.value + b.value;
    const double shareA = a.value / total, shareB = b.value / total;
    const double inverseDf = shareA * shareA / a.df + shareB * shareB / b.df;
    return {total, inverseDf > 0 ? 1 / inverseDf : infinity};
}

TwoLines::TwoLines(const Line& first, const Line& second, Variances variances)
    : m_first(first), m_second(second), m_variances(variances), m_df(first.n + second.n - 4) {
    if (m_df > 0)
        m_s2 = (first.rss + second.rss) / m_df;
}

double TwoLines::c() const {
    return m_second.intercept - m_first.intercept;
}

double TwoLines::d() const {
    return m_second.slope - m_first.slope;
}

double TwoLines::difference(double x) const {
    return m_second.at(x) - m_first.at(x);
}

Variance TwoLines::variance(double x, const Variance& extra) const {
    if (m_variances == Variances::Pooled)
        return sum({m_s2 * (perScatter(m_first, x) + perScatter(m_second, x)), m_df}, extra);
    return sum(sum(varianceOf(m_first, x), varianceOf(m_second, x)), extra);
}

template <typename Critical2>
double TwoLines::halfWidth(double x, const Variance& extra, const Critical2& critical2) const {
    const Variance lines = variance(x);
    double squared = 0;
    if (m_variances == Variances::Separate)
        squared = squaredTogether({varianceOf(m_first, x), critical2(m_first.df())},
                                  {varianceOf(m_second, x), critical2(m_second.df())}, critical2);
    else if (lines.value > 0)
        squared = critical2(lines.df) * lines.value;
    if (extra.value > 0) {
        const Variance whole = sum(lines, extra);
        squared = std::max(squared, critical2(whole.df) * whole.value);
    }
    return std::sqrt(squared);
}

Interval TwoLines::interval(double x, double level, const Variance& extra) const {
    const double half = halfWidth(x, extra, pointwise(level));
    return {difference(x) - half, difference(x) + half};
}

Interval TwoLines::band(double x, double level, const Variance& extra) const {
    const double half = halfWidth(x, extra, overAll(level));
    return {difference(x) - half, difference(x) + half};
}

std::vector<Stretch> TwoLines::differs(double level, bool simultaneous) const {
    const std::function<double(double)> critical2 =
        simultaneous ? overAll(level) : pointwise(level);
    if (m_variances == Variances::Separate && m_s2 > 0)
        return stretchesBySearch(*this, critical2);
    const Parts parts = partsOf(m_first, m_second);
    const double q = m_s2 > 0 ? critical2(m_df) * m_s2 : 0;
    // Two lines without scatter that are one line but for rounding do not differ.
    const double size = std::abs(m_first.yMean) + std::abs(m_second.yMean) +
                        (std::abs(m_first.slope) + std::abs(m_second.slope)) *
                            (std::abs(parts.x0) + std::abs(m_first.xMax) + std::abs(m_second.xMax));
    const double rounding = 16 * std::numeric_limits<double>::epsilon() * size;
    return stretchesOf({.x0 = parts.x0,
                        .d0 = std::abs(parts.d0) > rounding ? parts.d0 : 0,
                        .d = std::abs(parts.d) / std::sqrt(parts.perX2) > rounding ? parts.d : 0,
                        .q0 = q * parts.h0,
                        .qx = q * parts.perX2});
}

std::optional<TwoLines::Crossing> TwoLines::crossing(double level) const {
    const Parts parts = partsOf(m_first, m_second);
    if (parts.d == 0)
        return std::nullopt;
    Crossing crossing{.x = parts.x0 - parts.d0 / parts.d, .interval = std::nullopt};
    if (!std::isfinite(crossing.x))
        return std::nullopt;
    // Fieller's set for -c/d is where D is not told from zero; bounded when both outsides are.
    const std::vector<Stretch> apart = differs(level);
    if (apart.size() >= 2 && apart.front().from == -infinity && apart.back().to == infinity)
        crossing.interval = Interval{apart.front().to, apart.back().from};
    return crossing;
}

FTest TwoLines::parallel() const {
    const Parts parts = partsOf(m_first, m_second);
    return fTest(parts.d * parts.d / parts.perX2, m_s2, 1, m_df);
}

FTest TwoLines::coincident() const {
    const Parts parts = partsOf(m_first, m_second);
    const double squares = parts.d0 * parts.d0 / parts.h0 + parts.d * parts.d / parts.perX2;
    return fTest(squares / 2, m_s2, 2, m_df);
}

std::optional<FTest> TwoLines::varianceRatio() const {
    if (!m_first.hasInference() || !m_second.hasInference())
        return std::nullopt;
    const bool firstLarger = m_first.s2() > m_second.s2();
    const Line& large = firstLarger ? m_first : m_second;
    const Line& small = firstLarger ? m_second : m_first;
    if (large.s2() == 0)
        return FTest{.f = 1, .df1 = large.df(), .df2 = small.df(), .p = 1};
    FTest test = fTest(large.s2(), small.s2(), large.df(), small.df());
    // The tail of the larger over the smaller can exceed a half where the df differ.
    test.p = 2 * std::min(test.p, 1 - test.p);
    return test;
}

std::vector<Stretch> clip(const std::vector<Stretch>& stretches, double from, double to) {
    std::vector<Stretch> cut;
    for (const Stretch& stretch : stretches) {
        const Stretch part{std::max(stretch.from, from), std::min(stretch.to, to), stretch.sign};
        if (part.from < part.to)
            cut.push_back(part);
    }
    return cut;
}

} // namespace slopebook::stats
