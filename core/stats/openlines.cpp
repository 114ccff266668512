// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/openlines.h"

#include "core/stats/groupsums.h"

#include <Eigen/Cholesky>
#include <Eigen/LU>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::stats {

namespace {

/// T = I + H^1/2 G H^1/2 by the logarithms of its diagonal and Fisher's z of its correlation: each
/// is known about as well everywhere.
struct Node {
    std::array<double, 3> at{};
    double logWeight = 0;
};

struct Range {
    double low = 0, high = 0;
};
using Box = std::array<Range, 3>;

constexpr double farOff = 8; ///< in log weight: not worth looking at

class Posterior {
public:
    explicit Posterior(const Groups& groups)
        : m_deviance(groups.sums, groups.points), m_frame(groups.frame) {
        Eigen::Matrix2d information = Eigen::Matrix2d::Zero();
        for (const GroupSums& g : groups.sums)
            information += g.r.transpose() * g.r;
        information /= static_cast<double>(groups.sums.size());
        const Eigen::Matrix2d root = information.llt().matrixL();
        m_back = root.transpose().inverse();
    }

    /// The covariance between groups over s2; nothing for what is none.
    std::optional<Eigen::Matrix2d> between(const std::array<double, 3>& at) const {
        const double first = std::exp(at[0]), second = std::exp(at[1]);
        Eigen::Matrix2d r;
        const double both = std::tanh(at[2]) * std::sqrt(first * second);
        r << first - 1, both, both, second - 1;
        if (!(r(0, 0) > 0) || !(r(1, 1) > 0) || !(r.determinant() > 0))
            return std::nullopt;
        return m_back * r * m_back.transpose();
    }

    std::optional<double> logWeight(const std::array<double, 3>& at) const {
        const auto g = between(at);
        if (!g)
            return std::nullopt;
        // dS = |T|^-3 dT for S = T^-1; dT in the coordinates of the node
        const double rest = -2 * std::log(std::cosh(at[2])); // log(1 - rho^2)
        return -m_deviance.value(*g) / 2 - 1.5 * (at[0] + at[1]) - 2 * rest;
    }

    UncertainLine line(const std::array<double, 3>& at, std::size_t group) const {
        const Eigen::Matrix2d g = *between(at);
        const Eigen::LLT<Eigen::Matrix2d> factor(g);
        const Eigen::Matrix2d lambda = factor.matrixL();
        return shrunkenLine(m_deviance.at({lambda(0, 0), lambda(1, 0), lambda(1, 1)}), g, m_frame,
                            group);
    }

private:
    RemlDeviance m_deviance;
    Frame m_frame;
    Eigen::Matrix2d m_back;
};

/// The middles of count^3 cells of a box, where they have a weight.
std::vector<Node> nodesOf(const Posterior& posterior, const Box& box, int count) {
    std::vector<Node> nodes;
    const auto middle = [&](const Range& range, int i) {
        return range.low + (range.high - range.low) * (i + 0.5) / count;
    };
    for (int i = 0; i < count; ++i)
        for (int j = 0; j < count; ++j)
            for (int k = 0; k < count; ++k) {
                const std::array<double, 3> at{middle(box[0], i), middle(box[1], j),
                                               middle(box[2], k)};
                if (const auto weight = posterior.logWeight(at))
                    nodes.push_back({at, *weight});
            }
    return nodes;
}

double most(const std::vector<Node>& nodes) {
    double weight = nodes.front().logWeight;
    for (const Node& node : nodes)
        weight = std::max(weight, node.logWeight);
    return weight;
}

/// The box about the nodes that have a weight worth looking at, a cell wider.
Box boxAround(const std::vector<Node>& nodes, const Box& box, int count) {
    Box next;
    const double floor = most(nodes) - farOff;
    for (std::size_t d = 0; d < 3; ++d) {
        const double cell = (box[d].high - box[d].low) / count;
        next[d] = {box[d].high, box[d].low};
        for (const Node& node : nodes)
            if (node.logWeight > floor) {
                next[d].low = std::min(next[d].low, node.at[d] - cell);
                next[d].high = std::max(next[d].high, node.at[d] + cell);
            }
        if (d < 2) // a variance cannot be less than nothing
            next[d].low = std::max(next[d].low, 0.0);
    }
    return next;
}

} // namespace

std::optional<OpenLines> openLines(std::span<const GroupPoints> points, std::size_t group) {
    const auto groups = groupsOf(points);
    if (!groups || group >= points.size())
        return std::nullopt;
    const Posterior posterior(*groups);
    Box box{Range{0, 14}, Range{0, 14}, Range{-4, 4}};
    std::vector<Node> nodes;
    for (const int count : {14, 10, 9}) {
        nodes = nodesOf(posterior, box, count);
        if (nodes.empty())
            return std::nullopt;
        box = boxAround(nodes, box, count);
    }
    OpenLines open{.df = static_cast<double>(groups->points - 2)};
    const double top = most(nodes);
    double sum = 0;
    for (const Node& node : nodes)
        if (node.logWeight > top - farOff) {
            open.lines.push_back({std::exp(node.logWeight - top), posterior.line(node.at, group)});
            sum += open.lines.back().weight;
        }
    for (WeightedLine& each : open.lines)
        each.weight /= sum;
    return open;
}

double OpenLines::chanceUnder(double x, double y, double yVariance) const {
    using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    const boost::math::students_t_distribution<double, InDouble> t(df);
    double chance = 0;
    for (const WeightedLine& each : lines) {
        const double sd = std::sqrt(std::max(0.0, each.line.covariance.at(x)) + yVariance);
        const double off = y - each.line.at(x);
        chance += each.weight * (sd > 0 ? boost::math::cdf(t, off / sd) : (off > 0 ? 1.0 : 0.0));
    }
    return chance;
}

std::optional<Interval> inverseInterval(const OpenLines& open, double y, double yVariance,
                                        double near, double reach, double level) {
    // How far the chance at near + off lies beyond the one wanted; off from 0 outwards.
    const auto end = [&](double chance, double direction) -> std::optional<double> {
        const auto beyond = [&](double off) {
            return direction * (open.chanceUnder(near + direction * off, y, yVariance) - chance);
        };
        double inside = 0, outside = reach / 256;
        double least = beyond(inside), most = beyond(outside);
        while (most < 0) {
            if (outside >= reach)
                return std::nullopt;
            inside = outside;
            least = most;
            outside *= 2;
            most = beyond(outside);
        }
        if (least >= 0) // the middle of a skewed chance lies off the estimate
            return near;
        std::uintmax_t steps = 40;
        const auto found = boost::math::tools::toms748_solve(
            beyond, inside, outside, least, most,
            [&](double a, double b) { return std::abs(a - b) < 1e-7 * reach; }, steps);
        return near + direction * (found.first + found.second) / 2;
    };
    const auto low = end((1 - level) / 2, -1);
    const auto high = end((1 + level) / 2, 1);
    if (!low || !high)
        return std::nullopt;
    return Interval{*low, *high};
}

} // namespace slopebook::stats
