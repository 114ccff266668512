// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/power.h"

#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

double normalBelow(double z) {
    return boost::math::cdf(boost::math::normal_distribution<double>(), z);
}

/// Density of s / sigma when s^2 has df degrees of freedom.
double scatterDensity(double ratio, double df) {
    if (ratio <= 0)
        return 0;
    const boost::math::chi_squared_distribution<double> chi(df);
    return 2 * df * ratio * boost::math::pdf(chi, df * ratio * ratio);
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

std::optional<int> fewestRepeats(const std::function<double(int)>& power, double wanted, int most) {
    for (int repeats = 1; repeats <= most; ++repeats)
        if (power(repeats) >= wanted)
            return repeats;
    return std::nullopt;
}

} // namespace slopebook::stats
