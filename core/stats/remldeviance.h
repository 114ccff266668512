// SPDX-License-Identifier: GPL-3.0-or-later
// The profiled REML deviance of lines that vary between groups: the inside of fitMixedLine().
#pragma once

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace slopebook::stats {

/// What one group's points come to: Z = Q R for Z = [1 u], z = Q'y, and what Q leaves of y.
struct GroupSums {
    Eigen::Matrix2d r;
    Eigen::Vector2d z;
    double rss = 0;
};

/// theta holds the relative Cholesky factor (11, 21, 22) of the covariance between groups over s2.
/// All signs are allowed: the deviance does not see them, so that a boundary is a smooth point.
class RemlDeviance {
public:
    RemlDeviance(std::vector<GroupSums> groups, int points)
        : m_groups(std::move(groups)), m_points(points) {}

    struct At {
        double value = 0; ///< -2 x the restricted log-likelihood, s2 profiled out
        Eigen::Vector3d gradient;
        Eigen::Vector2d beta;
        Eigen::Matrix2d information; ///< X'V^-1 X s2
        double s2 = 0;
        std::vector<Eigen::Matrix2d> weight;  ///< K_i = R'(I + R G R')^-1 R
        std::vector<Eigen::Vector2d> leaning; ///< R'(I + R G R')^-1 (z - R beta)
    };
    At at(const Eigen::Vector3d& theta) const;
    /// The value alone, where the covariance between groups over s2 is g.
    double value(const Eigen::Matrix2d& g) const;
    Eigen::Matrix3d curvature(const Eigen::Vector3d& theta) const;

    /// The minimum found from a start by Newton steps that leave saddles; theta.
    Eigen::Vector3d descend(Eigen::Vector3d theta) const;

private:
    std::vector<GroupSums> m_groups;
    int m_points = 0;
};

} // namespace slopebook::stats
