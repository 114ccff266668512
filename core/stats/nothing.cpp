// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/nothing.h"

#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace slopebook::stats {

namespace {
constexpr int quantiles = 24;
constexpr int errors = 5; // over the span
} // namespace

const std::vector<double>& Nothing::scales(double df) {
    auto& known = m_scales[df];
    if (!known.empty())
        return known;
    if (std::isinf(df))
        known = {1.0};
    else
        for (int i = 0; i < quantiles; ++i) {
            const double p = (i + 0.5) / quantiles;
            known.push_back(df / chiSquareQuantile(p, df));
        }
    return known;
}

double Nothing::beyond(std::span<const Variance> parts, double reach, double span) {
    std::vector<double> variances{0.0};
    for (const Variance& part : parts) {
        if (!(part.value > 0))
            continue;
        std::vector<double> next;
        for (const double before : variances)
            for (const double scale : scales(part.df))
                next.push_back(before + part.value * scale);
        variances = std::move(next);
        if (variances.size() > quantiles * quantiles) { // a third part: alike likely ones merged
            std::ranges::sort(variances);
            std::vector<double> fewer;
            for (std::size_t i = quantiles / 2; i < variances.size(); i += quantiles)
                fewer.push_back(variances[i]);
            variances = std::move(fewer);
        }
    }
    double sum = 0;
    for (const double variance : variances) {
        const double sd = std::sqrt(variance);
        for (int e = 0; e < errors; ++e) {
            const double error = span * ((e + 0.5) / errors - 0.5);
            if (!(sd > 0))
                sum += std::abs(error) > reach ? 1 : 0;
            else
                sum += normalBelow((error - reach) / sd) + normalBelow((-error - reach) / sd);
            if (span == 0) {
                sum += (errors - 1) * (sd > 0 ? 2 * normalBelow(-reach / sd) : 0);
                break;
            }
        }
    }
    return sum / (errors * static_cast<double>(variances.size()));
}

std::vector<double> holm(std::span<const double> p) {
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return p[i]; });
    std::vector<double> adjusted(p.size());
    double most = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        most = std::max(most, std::min(1.0, static_cast<double>(p.size() - i) * p[order[i]]));
        adjusted[order[i]] = most;
    }
    return adjusted;
}

} // namespace slopebook::stats
