// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/nothing.h"

#include "core/stats/normal.h"
#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace slopebook::stats {

namespace {

using SpanRule = boost::math::quadrature::gauss<double, 7>;
constexpr double outermost = 1e-10; // of a chi^2, on either side
constexpr double normalEnd = 6;

using Scales = std::vector<std::pair<double, double>>;

/// Gauss-Legendre's nodes from one value to another.
template <int count>
Scales nodes(double from, double to) {
    using Rule = boost::math::quadrature::gauss<double, count>;
    const double middle = (from + to) / 2, half = (to - from) / 2;
    Scales all;
    for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
        const double at = Rule::abscissa()[i], weight = half * Rule::weights()[i];
        all.emplace_back(middle + half * at, weight);
        if (at != 0)
            all.emplace_back(middle - half * at, weight);
    }
    return all;
}

/// So many for each of several parts: their products are what is summed over.
Scales nodesFor(std::size_t parts, double from, double to) {
    return parts <= 2   ? nodes<30>(from, to)
           : parts == 3 ? nodes<15>(from, to)
                        : nodes<10>(from, to);
}

void toOne(Scales& scales) {
    double all = 0;
    for (const auto& [at, weight] : scales)
        all += weight;
    for (auto& [at, weight] : scales)
        weight /= all;
}

} // namespace

const Nothing::Scales& Nothing::ofDf(double df, std::size_t parts) {
    Scales& known = m_ofDf[{df, parts}];
    if (!known.empty())
        return known;
    if (std::isinf(df))
        return known = {{1.0, 1.0}};
    // The cube root of a chi^2 is nearly normal (Wilson and Hilferty 1931).
    const auto root = [df](double p) { return std::cbrt(chiSquareQuantile(p, df) / df); };
    known = nodesFor(parts, root(outermost), root(1 - outermost));
    const boost::math::chi_squared_distribution<double> chi(df);
    for (auto& [at, weight] : known) {
        const double share = at * at * at;
        weight *= boost::math::pdf(chi, df * share) * at * at;
        at = 1 / share;
    }
    toOne(known);
    return known;
}

const Nothing::Scales& Nothing::ofLikely(const LogNormal& likely, std::size_t parts) {
    Scales& known = m_ofLikely[{likely.median, likely.logSd, parts}];
    if (!known.empty())
        return known;
    if (!(likely.logSd > 0))
        return known = {{likely.median, 1.0}};
    known = nodesFor(parts, -normalEnd, normalEnd);
    for (auto& [at, weight] : known) {
        weight *= normalDensity(at);
        at = likely.median * std::exp(likely.logSd * at);
    }
    toOne(known);
    return known;
}

double Nothing::beyond(std::span<const UnsureVariance> parts, double reach, double span) {
    std::vector<UnsureVariance> some;
    for (const UnsureVariance& part : parts)
        if (part.taken.value > 0)
            some.push_back(part);
    Scales variances{{0.0, 1.0}};
    for (const UnsureVariance& part : some) {
        const Scales& scales =
            part.likely ? ofLikely(*part.likely, some.size()) : ofDf(part.taken.df, some.size());
        Scales next;
        next.reserve(variances.size() * scales.size());
        for (const auto& [before, weight] : variances)
            for (const auto& [scale, share] : scales)
                next.emplace_back(before + part.taken.value * scale, weight * share);
        variances = std::move(next);
    }
    const auto beyondOf = [&](double error) {
        double sum = 0;
        for (const auto& [variance, weight] : variances) {
            if (!(variance > 0)) {
                sum += weight * (std::abs(error) > reach ? 1 : 0);
                continue;
            }
            const double sd = std::sqrt(variance);
            sum += weight * (error == 0 ? 2 * normalBelow(-reach / sd)
                                        : normalBelow((error - reach) / sd) +
                                              normalBelow((-error - reach) / sd));
        }
        return sum;
    };
    if (!(span > 0))
        return beyondOf(0);
    // Both sides of the span are alike.
    double sum = 0;
    for (std::size_t i = 0; i < SpanRule::abscissa().size(); ++i) {
        const double at = SpanRule::abscissa()[i];
        sum += SpanRule::weights()[i] * (at == 0 ? 0.5 : 1) * beyondOf(at * span / 2);
    }
    return sum;
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
