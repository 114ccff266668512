// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/power.h"

#include "core/stats/allowance.h"
#include "core/stats/normal.h"
#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

/// Density of s / sigma when s^2 has df degrees of freedom.
double scatterDensity(double ratio, double df) {
    if (ratio <= 0)
        return 0;
    const boost::math::chi_squared_distribution<double> chi(df);
    return 2 * df * ratio * boost::math::pdf(chi, df * ratio * ratio);
}

double squared(double x) {
    return x * x;
}

} // namespace

double tTestPower(double effect, double se, double df, double level) {
    const double critical = tCritical(level, df);
    const double shift = std::abs(effect) / se;
    if (std::isinf(df))
        return normalBelow(shift - critical) + normalBelow(-shift - critical);
    if (shift == 0)
        return 1 - level;
    const boost::math::non_central_t_distribution<double> t(df, shift);
    return std::clamp(boost::math::cdf(boost::math::complement(t, critical)) +
                          boost::math::cdf(t, -critical),
                      0.0, 1.0);
}

double equivalencePower(double truth, double margin, double se, double df, double level) {
    const double critical = tCritical(level, df);
    const auto inside = [&](double ratio) {
        const double room = margin - critical * se * ratio;
        if (room <= 0)
            return 0.0;
        return normalBelow((room - truth) / se) - normalBelow((-room - truth) / se);
    };
    if (std::isinf(df))
        return inside(1);
    // s / sigma has mean about 1 and SD about 1 / sqrt(2 df): nine of them hold all that counts
    const double reach = 9 / std::sqrt(2 * df);
    const double from = std::max(0.0, 1 - reach);
    const double to = std::min(margin / (critical * se), 1 + reach);
    if (to <= from)
        return 0;
    const auto weighed = [&](double ratio) { return inside(ratio) * scatterDensity(ratio, df); };
    return std::clamp(
        boost::math::quadrature::gauss_kronrod<double, 61>::integrate(weighed, from, to, 10, 1e-10),
        0.0, 1.0);
}

Chances chancesOverScatter(const ChanceQuestion& q) {
    const auto half = [&](double scatter, double level) {
        return std::sqrt(scatter * squared(tCritical(level, q.scatterDf)) +
                         squared(tCritical(level, q.priorDf)) * q.prior);
    };
    const double se = std::sqrt(q.scatter + q.expected);
    const auto given = [&](double scatter) {
        double reach = half(scatter, q.level);
        reach = reach > 0 ? reach * imbensManski(q.span / reach, q.level) + q.span / 2 : q.span / 2;
        const double room = q.effect - half(scatter, q.heldLevel) - q.span / 2;
        if (!(se > 0))
            return Chances{q.effect > reach ? 1.0 : 0.0, room > 0 ? 1.0 : 0.0};
        return Chances{normalBelow((q.effect - reach) / se) + normalBelow((-q.effect - reach) / se),
                       room > 0 ? 2 * normalBelow(room / se) - 1 : 0};
    };
    if (!(q.scatter > 0) || std::isinf(q.scatterDf))
        return given(q.scatter);
    constexpr int nodes = 15;
    Chances chances;
    for (int i = 0; i < nodes; ++i) {
        const Chances each =
            given(q.scatter * chiSquareQuantile((i + 0.5) / nodes, q.scatterDf) / q.scatterDf);
        chances.change += each.change / nodes;
        chances.held += each.held / nodes;
    }
    return chances;
}

std::optional<int> fewestRepeats(const std::function<double(int)>& power, double wanted, int most) {
    for (int repeats = 1; repeats <= most; ++repeats)
        if (power(repeats) >= wanted)
            return repeats;
    return std::nullopt;
}

} // namespace slopebook::stats
