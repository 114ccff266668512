// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/dunnett.h"

#include "core/stats/normal.h"
#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>
#include <map>
#include <stdexcept>
#include <utility>
#include <vector>

namespace slopebook::stats {

namespace {

using Rule = boost::math::quadrature::gauss<double, 48>;
constexpr double farOut = 8; // of the baseline's own deviation: beyond lies 1e-15
constexpr std::size_t exactUpTo = 24;
constexpr double gridSteps = 64;

struct Node {
    double at = 0, weight = 0;
};

std::vector<Node> nodes(double from, double to) {
    std::vector<Node> all;
    const double middle = (from + to) / 2, half = (to - from) / 2;
    for (std::size_t i = 0; i < Rule::abscissa().size(); ++i)
        for (const double side : {-1.0, 1.0})
            all.push_back({middle + side * half * Rule::abscissa()[i], half * Rule::weights()[i]});
    return all;
}

class ManyToOne {
public:
    ManyToOne(std::span<const double> loads, double df) {
        for (double load : loads) {
            if (!(load >= 0 && load < 1))
                throw std::domain_error("dunnettCritical: a load outside [0, 1)");
            if (loads.size() > exactUpTo)
                load = std::floor(load * gridSteps) / gridSteps;
            ++m_counts[load];
        }
        for (const Node& u : nodes(-farOut, farOut))
            m_baseline.push_back({u.at, u.weight * normalDensity(u.at)});
        if (std::isinf(df)) {
            m_scale = {{1, 1}};
            return;
        }
        const boost::math::chi_squared_distribution<double> chi(df);
        for (const Node& s : nodes(std::sqrt(chiSquareQuantile(1e-12, df) / df),
                                   std::sqrt(chiSquareQuantile(1 - 1e-12, df) / df)))
            m_scale.push_back(
                {s.at, s.weight * boost::math::pdf(chi, df * s.at * s.at) * 2 * df * s.at});
    }

    /// P(all |T_j| <= d).
    double inside(double d) const {
        double sum = 0;
        for (const Node& s : m_scale)
            sum += s.weight * givenScale(d * s.at);
        return sum;
    }

private:
    double givenScale(double d) const {
        double sum = 0;
        for (const Node& u : m_baseline) {
            double product = u.weight;
            for (const auto& [load, count] : m_counts) {
                const double own = std::sqrt(1 - load * load);
                const double each =
                    normalBelow((d + load * u.at) / own) - normalBelow((-d + load * u.at) / own);
                product *= count == 1 ? each : std::pow(each, count);
            }
            sum += product;
        }
        return sum;
    }

    std::map<double, int> m_counts; ///< by load
    std::vector<Node> m_baseline, m_scale;
};

} // namespace

double dunnettCritical(std::span<const double> loads, double df, double level) {
    const double one = tCritical(level, df);
    if (loads.size() <= 1)
        return one;
    const ManyToOne all(loads, df);
    // No larger than Bonferroni's.
    const double most = tCritical(1 - (1 - level) / static_cast<double>(loads.size()), df) + 1e-6;
    std::uintmax_t steps = 100;
    const auto bracket = boost::math::tools::toms748_solve(
        [&](double d) { return all.inside(d) - level; }, one * (1 - 1e-6), most,
        boost::math::tools::eps_tolerance<double>(36), steps);
    return (bracket.first + bracket.second) / 2;
}

} // namespace slopebook::stats
