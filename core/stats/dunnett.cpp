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
#include <cstdlib>
#include <limits>
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

    /// P(all |Z_j| <= z), the scale known.
    double insideNormal(double z) const { return givenScale(z); }
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

namespace {

constexpr double tableStep = 1.0 / 16, tableEnd = 12;
constexpr double loadSteps = 64;
constexpr double mostOfGrid = 63; // of 64: a load of 1 is none

std::vector<std::pair<double, double>> scalesOf(double df) {
    if (std::isinf(df))
        return {{1, 1}};
    const boost::math::chi_squared_distribution<double> chi(df);
    std::vector<Node> nodes;
    addNodes<Rule>(nodes, std::sqrt(chiSquareQuantile(1e-10, df) / df),
                   std::sqrt(chiSquareQuantile(1 - 1e-10, df) / df));
    std::vector<std::pair<double, double>> scales;
    for (const Node& node : nodes)
        scales.emplace_back(node.at, node.weight * boost::math::pdf(chi, df * node.at * node.at) *
                                         2 * df * node.at);
    return scales;
}

/// By the cubic through the four nearest entries; P is even in z, and 1 beyond the end.
double tabulated(const std::vector<double>& table, double z) {
    const double place = z / tableStep;
    const auto i = static_cast<std::ptrdiff_t>(place);
    if (z >= tableEnd - 2 * tableStep)
        return 1;
    const auto at = [&](std::ptrdiff_t j) { return table[static_cast<std::size_t>(std::abs(j))]; };
    const double t = place - static_cast<double>(i);
    const double a = at(i - 1), b = at(i), c = at(i + 1), d = at(i + 2);
    return b + t * ((c - a / 3 - b / 2 - d / 6) +
                    t * ((a + c) / 2 - b + t * ((d - a) / 6 + (b - c) / 2)));
}

} // namespace

double DunnettTable::critical(std::span<const double> loads, double df, double level) {
    const double one = tCritical(level, df);
    if (loads.size() <= 1)
        return one;
    std::vector<int> key;
    for (const double load : loads) {
        if (!(load >= 0 && load <= 1))
            throw std::domain_error("DunnettTable: a load outside [0, 1]");
        key.push_back(static_cast<int>(std::min(mostOfGrid, std::floor(load * loadSteps))));
    }
    std::ranges::sort(key);
    Known& known = m_known[key];
    if (known.inside.empty()) {
        std::vector<double> onGrid;
        for (const int step : key)
            onGrid.push_back(step / loadSteps);
        const ManyToOne all(onGrid, std::numeric_limits<double>::infinity());
        for (double z = 0; z <= tableEnd; z += tableStep)
            known.inside.push_back(all.insideNormal(z));
    }
    const auto [place, isNew] = known.critical.try_emplace({df, level}, one);
    if (!isNew)
        return place->second;
    auto& scales = m_scales[df];
    if (scales.empty())
        scales = scalesOf(df);
    const auto inside = [&](double d) {
        double sum = 0;
        for (const auto& [s, weight] : scales)
            sum += weight * tabulated(known.inside, d * s);
        return sum;
    };
    const double least = one * (1 - 1e-6);
    if (inside(least) >= level)
        return one;
    const double most = tCritical(1 - (1 - level) / static_cast<double>(loads.size()), df) * 1.001;
    std::uintmax_t steps = 100;
    const auto bracket =
        boost::math::tools::toms748_solve([&](double d) { return inside(d) - level; }, least, most,
                                          boost::math::tools::eps_tolerance<double>(30), steps);
    place->second = (bracket.first + bracket.second) / 2;
    return place->second;
}

} // namespace slopebook::stats
