// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/limits.h"

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

constexpr double limitZ = 1.96;
constexpr std::size_t groupsNeeded = 3;

double meanOf(const std::vector<double>& values) {
    double sum = 0;
    for (const double v : values)
        sum += v;
    return sum / static_cast<double>(values.size());
}

/// A mean square's share of a variance, and how far its interval reaches to either side.
struct Share {
    double value = 0, down = 0, up = 0;
    Share(double share, double df, double level)
        : value(share), down(share * (1 - df / chiSquareQuantile((1 + level) / 2, df))),
          up(share * (df / chiSquareQuantile((1 - level) / 2, df) - 1)) {}
};

} // namespace

std::optional<GroupedLimits> groupedLimits(std::span<const std::vector<double>> groups,
                                           double level) {
    double n = 0, squaresOfSizes = 0, sum = 0;
    for (const auto& group : groups) {
        const auto m = static_cast<double>(group.size());
        n += m;
        squaresOfSizes += m * m;
        for (const double d : group)
            sum += d;
    }
    const auto k = static_cast<double>(groups.size());
    if (groups.size() < groupsNeeded || !(n > k) ||
        std::ranges::any_of(groups, [](const auto& group) { return group.empty(); }))
        return std::nullopt;
    GroupedLimits g{.groups = static_cast<int>(groups.size()), .bias = sum / n};
    double among = 0, inside = 0;
    for (const auto& group : groups) {
        const double mean = meanOf(group);
        among += static_cast<double>(group.size()) * (mean - g.bias) * (mean - g.bias);
        for (const double d : group)
            inside += (d - mean) * (d - mean);
    }
    const double msb = among / (k - 1), msw = inside / (n - k);
    const double m0 = (n - squaresOfSizes / n) / (k - 1);
    g.within = msw;
    g.between = std::max(0.0, (msb - msw) / m0);
    g.sd = std::sqrt(g.between + g.within);
    g.biasVariance = {g.between * squaresOfSizes / n / n + g.within / n, k - 1};
    g.limits = {g.bias - limitZ * g.sd, g.bias + limitZ * g.sd};

    const Share a(msb / m0, k - 1, level), b((1 - 1 / m0) * msw, n - k, level);
    const double total = a.value + b.value;
    const double low = std::min(g.sd, std::sqrt(std::max(0.0, total - std::hypot(a.down, b.down))));
    const double high = std::max(g.sd, std::sqrt(total + std::hypot(a.up, b.up)));
    const double ofBias = tCritical(level, k - 1) * std::sqrt(g.biasVariance.value);
    const double outward = std::hypot(ofBias, limitZ * (high - g.sd));
    const double inward = std::hypot(ofBias, limitZ * (g.sd - low));
    g.lowerLimitInterval = {g.limits.low - outward, g.limits.low + inward};
    g.upperLimitInterval = {g.limits.high - inward, g.limits.high + outward};
    return g;
}

} // namespace slopebook::stats
