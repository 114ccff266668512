// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/dunnett.h"

#include "core/stats/normal.h"
#include "core/stats/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <stdexcept>
#include <utility>
#include <vector>

namespace slopebook::stats {

namespace {

using Rule = boost::math::quadrature::gauss<double, 48>;
using PanelRule = boost::math::quadrature::gauss<double, 16>;
constexpr double farOut = 8; // of the baseline's own deviation: beyond lies 1e-15
constexpr std::size_t exactUpTo = 24;
constexpr double gridSteps = 2048;
// 16 nodes meet a bell of SD w over a panel of 4 w to 1e-12.
constexpr double panelSteps = 4;
constexpr double certain = 8.3; // beyond, a normal probability is 0 or 1 to the last digit

struct Node {
    double at = 0, weight = 0;
};

template <typename R>
void addNodes(std::vector<Node>& all, double from, double to) {
    const double middle = (from + to) / 2, half = (to - from) / 2;
    for (std::size_t i = 0; i < R::abscissa().size(); ++i)
        for (const double side : {-1.0, 1.0})
            all.push_back({middle + side * half * R::abscissa()[i], half * R::weights()[i]});
}

class ManyToOne {
public:
    ManyToOne(std::span<const double> loads, double df) {
        for (const double load : loads) {
            if (!(load >= 0 && load < 1))
                throw std::domain_error("dunnettCritical: a load outside [0, 1)");
            double own = std::sqrt((1 - load) * (1 + load));
            if (loads.size() > exactUpTo)
                own = std::ceil(own * gridSteps) / gridSteps;
            ++m_counts[own];
        }
        baselineNodes();
        if (std::isinf(df)) {
            m_scale = {{1, 1}};
            return;
        }
        const boost::math::chi_squared_distribution<double> chi(df);
        addNodes<Rule>(m_scale, std::sqrt(chiSquareQuantile(1e-12, df) / df),
                       std::sqrt(chiSquareQuantile(1 - 1e-12, df) / df));
        for (Node& s : m_scale)
            s.weight *= boost::math::pdf(chi, df * s.at * s.at) * 2 * df * s.at;
    }

    /// P(all |T_j| <= d).
    double inside(double d) const {
        double sum = 0;
        for (const Node& s : m_scale)
            sum += s.weight * givenScale(d * s.at);
        return sum;
    }

private:
    /// Seen from the baseline, a load's probability falls from 1 to 0 over own / load of it: panels
    /// are no wider than a few of the narrowest such step. Both sides are alike: one, twice.
    void baselineNodes() {
        const double own = m_counts.begin()->first, load = std::sqrt((1 - own) * (1 + own));
        const double width = std::min(2.0, load > 0 ? panelSteps * own / load : 2.0);
        const int panels = static_cast<int>(std::ceil(farOut / width));
        for (int i = 0; i < panels; ++i)
            addNodes<PanelRule>(m_baseline, farOut * i / panels, farOut * (i + 1) / panels);
        for (Node& u : m_baseline)
            u.weight *= 2 * normalDensity(u.at);
    }

    double givenScale(double d) const {
        double sum = 0;
        for (const Node& u : m_baseline) {
            double product = u.weight;
            for (const auto& [own, count] : m_counts) {
                const double moved = std::sqrt((1 - own) * (1 + own)) * u.at;
                const double up = (d - moved) / own, down = (-d - moved) / own;
                if (up >= certain && down <= -certain)
                    continue;
                if (up <= -certain) {
                    product = 0;
                    break;
                }
                const double each = normalBelow(up) - normalBelow(down);
                product *= count == 1 ? each : std::pow(each, count);
            }
            sum += product;
        }
        return sum;
    }

    std::map<double, int> m_counts; ///< by what a value scatters of its own: sqrt(1 - load^2)
    std::vector<Node> m_baseline, m_scale;
};

} // namespace

double dunnettCritical(std::span<const double> loads, double df, double level) {
    const double one = tCritical(level, df);
    if (loads.size() <= 1)
        return one;
    const ManyToOne all(loads, df);
    // No larger than Bonferroni's.
    const double least = one * (1 - 1e-6);
    if (all.inside(least) >= level) // loads so near 1 that all is one and the same comparison
        return one;
    const double most = tCritical(1 - (1 - level) / static_cast<double>(loads.size()), df) + 1e-6;
    std::uintmax_t steps = 100;
    const auto bracket = boost::math::tools::toms748_solve(
        [&](double d) { return all.inside(d) - level; }, least, most,
        boost::math::tools::eps_tolerance<double>(36), steps);
    return (bracket.first + bracket.second) / 2;
}

} // namespace slopebook::stats
