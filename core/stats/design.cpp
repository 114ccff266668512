// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/design.h"

#include "core/stats/infinity.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/quadrature/exp_sinh.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace slopebook::stats {

namespace {

/// E sqrt((known + chi-square(fresh)) / (known + fresh)): how far under sigma s is expected.
double expectedRatio(double known, double fresh) {
    if (std::isinf(known) || fresh <= 0)
        return 1;
    if (known <= 0)
        return std::sqrt(2 / fresh) *
               std::exp(std::lgamma((fresh + 1) / 2) - std::lgamma(fresh / 2));
    const boost::math::chi_squared_distribution<double> chi(fresh);
    boost::math::quadrature::exp_sinh<double> integrator;
    return integrator.integrate([&](double q) {
        return std::isfinite(q)
                   ? std::sqrt((known + q) / (known + fresh)) * boost::math::pdf(chi, q)
                   : 0.0;
    });
}

} // namespace

std::optional<ExpectedScatter> expectedScatter(double s, double knownDf, double newDf,
                                               double level) {
    const double fresh = std::max(0.0, newDf);
    const double df = knownDf + fresh;
    if (!(df > 0))
        return std::nullopt;
    return ExpectedScatter{tCritical(level, df), s * expectedRatio(knownDf, fresh), df};
}

Spread spread(std::span<const double> x) {
    Spread result{static_cast<int>(x.size()), 0, 0};
    for (const double value : x)
        result.mean += value / static_cast<double>(x.size());
    for (const double value : x)
        result.sxx += (value - result.mean) * (value - result.mean);
    return result;
}

double inverseHalfWidth(double slope, double x0, double yVariance, const Spread& x,
                        const ExpectedScatter& scatter) {
    const double s2 = scatter.s * scatter.s;
    const double g = scatter.t * scatter.t * s2 / (slope * slope * x.sxx);
    if (!(g < 1))
        return infinity;
    const double off = x0 - x.mean;
    return scatter.t / std::abs(slope) *
           std::sqrt((1 - g) * (s2 / x.n + yVariance) + s2 * off * off / x.sxx) / (1 - g);
}

double differenceSe(double x0, const Line& earlier, const Spread& x,
                    const ExpectedScatter& scatter) {
    if (!(x.sxx > 0))
        return infinity;
    const double here = x0 - x.mean;
    const double there = x0 - earlier.xMean;
    return scatter.s * std::sqrt(1.0 / x.n + here * here / x.sxx + 1.0 / earlier.n +
                                 there * there / earlier.sxx);
}

namespace {

/// Candidates as whole steps from the first one.
struct Grid {
    std::vector<std::int64_t> steps;
    bool exact = true;
};

Grid layOnGrid(std::span<const std::int64_t> candidates, std::int64_t gridSteps) {
    std::int64_t common = 0;
    for (const std::int64_t x : candidates)
        common = std::gcd(common, x - candidates.front());
    const std::int64_t range = candidates.back() - candidates.front();
    Grid grid;
    grid.exact = range / common <= gridSteps;
    for (const std::int64_t x : candidates) {
        const std::int64_t from = x - candidates.front();
        grid.steps.push_back(
            grid.exact ? from / common
                       : std::llround(static_cast<double>(from) / static_cast<double>(range) *
                                      static_cast<double>(gridSteps)));
    }
    return grid;
}

/// For every sum of n steps, the largest sum of squares and the candidate that was added last.
struct LargestSquares {
    std::vector<std::int64_t> squares; ///< -1: the sum cannot be made
    std::vector<std::vector<std::int32_t>> last;
};

LargestSquares largestSquares(const std::vector<std::int64_t>& steps, int n) {
    LargestSquares table;
    table.squares = {0};
    for (int count = 0; count < n; ++count) {
        const auto size = table.squares.size() + static_cast<std::size_t>(steps.back());
        std::vector<std::int64_t> next(size, -1);
        std::vector<std::int32_t> last(size, -1);
        for (std::size_t c = 0; c < steps.size(); ++c) {
            const auto step = static_cast<std::size_t>(steps[c]);
            const std::int64_t square = steps[c] * steps[c];
            for (std::size_t sum = 0; sum < table.squares.size(); ++sum)
                if (table.squares[sum] >= 0 && table.squares[sum] + square > next[sum + step]) {
                    next[sum + step] = table.squares[sum] + square;
                    last[sum + step] = static_cast<std::int32_t>(c);
                }
        }
        table.squares = std::move(next);
        table.last.push_back(std::move(last));
    }
    return table;
}

double judge(std::span<const std::int64_t> x, double unit, const DesignCriterion& criterion) {
    std::vector<double> values;
    for (const std::int64_t value : x)
        values.push_back(static_cast<double>(value) * unit);
    return criterion(spread(values));
}

} // namespace

std::optional<Design> bestDesign(std::span<const std::int64_t> candidates, double unit, int n,
                                 const DesignCriterion& criterion, std::int64_t gridSteps) {
    if (candidates.size() < 2 || n < 2)
        return std::nullopt;
    const Grid grid = layOnGrid(candidates, gridSteps);
    const LargestSquares table = largestSquares(grid.steps, n);
    const double first = static_cast<double>(candidates.front()) * unit;
    const double step = static_cast<double>(candidates.back() - candidates.front()) * unit /
                        static_cast<double>(grid.steps.back());
    double least = infinity;
    std::size_t best = 0;
    for (std::size_t sum = 0; sum < table.squares.size(); ++sum) {
        if (table.squares[sum] < 0)
            continue;
        // n Q - S^2 in whole numbers: no digits are lost where the loads hardly differ
        const auto whole = static_cast<std::int64_t>(sum);
        const double centred = static_cast<double>(n * table.squares[sum] - whole * whole) / n;
        const double value =
            criterion({n, first + step * static_cast<double>(whole) / n, centred * step * step});
        if (value < least) {
            least = value;
            best = sum;
        }
    }
    if (!std::isfinite(least))
        return std::nullopt;
    Design design;
    for (int count = n; count > 0; --count) {
        const auto c =
            static_cast<std::size_t>(table.last[static_cast<std::size_t>(count - 1)][best]);
        design.x.push_back(candidates[c]);
        best -= static_cast<std::size_t>(grid.steps[c]);
    }
    std::sort(design.x.begin(), design.x.end());
    design.criterion = judge(design.x, unit, criterion);
    return design;
}

std::vector<std::int64_t> twoExtremes(std::span<const std::int64_t> candidates, int n) {
    std::vector<std::int64_t> x(static_cast<std::size_t>(n), candidates.back());
    std::fill_n(x.begin(), n / 2, candidates.front());
    return x;
}

} // namespace slopebook::stats
