// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/mixedline.h"

#include "core/stats/groupsums.h"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

LineCovariance covarianceOf(const Eigen::Matrix2d& m) {
    return {m(0, 0), m(0, 1), m(1, 1)};
}

/// Covariance of the groups' own lines less what scatter makes of it, over s2: the method of
/// moments, as a Cholesky factor. From it and from plainer guesses the descent starts.
std::vector<Eigen::Vector3d> startsOf(const std::vector<GroupSums>& groups, double s2) {
    std::vector<Eigen::Vector3d> starts{{1, 0, 1},      {0.1, 0, 0.1}, {1, 0.8, 0.3},
                                        {1, -0.8, 0.3}, {1, 0, 0.01},  {0.01, 0, 1}};
    std::vector<Eigen::Vector2d> lines;
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    Eigen::Matrix2d scatter = Eigen::Matrix2d::Zero();
    for (const GroupSums& g : groups)
        if (g.r(1, 1) > 0) {
            const Eigen::Matrix2d back = g.r.inverse();
            lines.push_back(back * g.z);
            mean += lines.back();
            scatter += back * back.transpose();
        }
    const double count = static_cast<double>(lines.size());
    mean /= count;
    Eigen::Matrix2d spread = Eigen::Matrix2d::Zero();
    for (const Eigen::Vector2d& line : lines)
        spread += (line - mean) * (line - mean).transpose();
    const Eigen::Matrix2d moments = spread / (count - 1) / s2 - scatter / count;
    const double level = std::sqrt(std::max(moments(0, 0), 1e-3));
    const double cross = moments(0, 1) / level;
    starts.emplace_back(level, cross, std::sqrt(std::max(moments(1, 1) - cross * cross, 1e-3)));
    return starts;
}

Eigen::Vector3d bestOf(const RemlDeviance& deviance, const std::vector<Eigen::Vector3d>& starts) {
    Eigen::Vector3d best = starts.front();
    double least = deviance.at(best).value;
    for (const Eigen::Vector3d& start : starts) {
        const Eigen::Vector3d theta = deviance.descend(start);
        if (const double value = deviance.at(theta).value; value < least) {
            least = value;
            best = theta;
        }
    }
    return best;
}

MixedLine written(const RemlDeviance& deviance, const Eigen::Vector3d& theta, const Frame& frame) {
    const RemlDeviance::At at = deviance.at(theta);
    Eigen::Matrix2d lambda;
    lambda << theta(0), 0, theta(1), theta(2);
    const Eigen::Matrix2d g = lambda * lambda.transpose();
    const Eigen::Matrix2d covariance = at.information.inverse();
    const Eigen::Matrix2d turn = outOf(frame);
    const auto turned = [&](const Eigen::Matrix2d& m) {
        return covarianceOf(at.s2 * turn * m * turn.transpose());
    };
    MixedLine fit;
    const Eigen::Vector2d beta = turn * at.beta;
    fit.fixed = {beta(0), beta(1), turned(covariance)};
    fit.between = turned(g);
    fit.s2 = at.s2;
    // The likelihood is that of x as it was given, not of its frame.
    fit.logLik = -at.value / 2 - std::log(frame.scale);
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> solver(g);
    fit.singular = solver.eigenvalues()(0) <= 1e-8 * std::max(1.0, solver.eigenvalues()(1));
    for (std::size_t i = 0; i < at.weight.size(); ++i) {
        fit.lines.push_back(shrunkenLine(at, g, frame, i));
        fit.conditional.push_back(turned(g - g * at.weight[i] * g));
    }
    return fit;
}

} // namespace

std::optional<MixedLine> fitMixedLine(std::span<const GroupPoints> points) {
    auto groups = groupsOf(points);
    if (!groups)
        return std::nullopt;
    const std::vector<Eigen::Vector3d> starts = startsOf(groups->sums, groups->s2);
    const RemlDeviance deviance(std::move(groups->sums), groups->points);
    MixedLine fit = written(deviance, bestOf(deviance, starts), groups->frame);
    fit.groups = static_cast<int>(points.size());
    fit.points = groups->points;
    return fit;
}

Inverse inversePrediction(const UncertainLine& line, double y, double yVariance, double df,
                          double level) {
    // About the x where level and slope are uncorrelated the line looks like a fitted one.
    const LineCovariance& v = line.covariance;
    Line alike;
    alike.n = 1;
    alike.xMean = v.slope > 0 ? -v.both / v.slope : 0;
    alike.yMean = line.at(alike.xMean);
    alike.slope = line.slope;
    alike.intercept = line.intercept;
    alike.sxx = 1;
    const double atMean =
        std::max(0.0, v.intercept - (v.slope > 0 ? v.both * v.both / v.slope : 0));
    return inverseByCritical(alike, y, atMean - v.slope + yVariance, v.slope, tCritical(level, df));
}

} // namespace slopebook::stats
