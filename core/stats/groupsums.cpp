// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/groupsums.h"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

double groupMean(const std::vector<double>& values) {
    double sum = 0;
    for (const double v : values)
        sum += v;
    return sum / static_cast<double>(values.size());
}

Frame frameOf(std::span<const GroupPoints> groups) {
    double sum = 0, squares = 0, n = 0;
    for (const GroupPoints& g : groups) {
        sum += groupMean(g.x) * static_cast<double>(g.x.size());
        n += static_cast<double>(g.x.size());
    }
    const double centre = sum / n;
    for (const GroupPoints& g : groups)
        for (const double x : g.x)
            squares += (x - centre) * (x - centre);
    return {centre, std::sqrt(squares / n)};
}

GroupSums sumsOf(const GroupPoints& group, const Frame& frame) {
    GroupSums sums;
    const double n = static_cast<double>(group.x.size());
    if (const std::optional<Line> line = fitLine(group.x, group.y)) {
        const double root = std::sqrt(line->sxx);
        sums.r << std::sqrt(n), std::sqrt(n) * (line->xMean - frame.centre) / frame.scale, 0,
            root / frame.scale;
        sums.z << std::sqrt(n) * line->yMean, line->sxy / root;
        sums.rss = line->rss;
        return sums;
    }
    // One x only: the group has a level and no slope of its own.
    const double yMean = groupMean(group.y);
    sums.r << std::sqrt(n), std::sqrt(n) * (group.x.front() - frame.centre) / frame.scale, 0, 0;
    sums.z << std::sqrt(n) * yMean, 0;
    for (const double y : group.y)
        sums.rss += (y - yMean) * (y - yMean);
    return sums;
}

} // namespace

Eigen::Matrix2d outOf(const Frame& frame) {
    Eigen::Matrix2d turn;
    turn << 1, -frame.centre / frame.scale, 0, 1 / frame.scale;
    return turn;
}

std::optional<Groups> groupsOf(std::span<const GroupPoints> points) {
    if (points.size() < 3 ||
        std::ranges::any_of(points, [](const GroupPoints& g) { return g.x.empty(); }))
        return std::nullopt;
    Groups groups{.frame = frameOf(points)};
    int free = 0, withSlope = 0;
    double rss = 0;
    for (const GroupPoints& group : points) {
        if (group.x.size() != group.y.size() || !(groups.frame.scale > 0))
            return std::nullopt;
        groups.sums.push_back(sumsOf(group, groups.frame));
        const bool sloped = groups.sums.back().r(1, 1) > 0;
        withSlope += sloped;
        groups.points += static_cast<int>(group.x.size());
        free += static_cast<int>(group.x.size()) - (sloped ? 2 : 1);
        rss += groups.sums.back().rss;
    }
    if (withSlope < 2 || free < 1 || !(rss > 0))
        return std::nullopt;
    groups.s2 = rss / free;
    return groups;
}

UncertainLine shrunkenLine(const RemlDeviance::At& at, const Eigen::Matrix2d& g, const Frame& frame,
                           std::size_t i) {
    const Eigen::Matrix2d turn = outOf(frame);
    const Eigen::Vector2d line = turn * (at.beta + g * at.leaning[i]);
    const Eigen::Matrix2d own = g - g * at.weight[i] * g;
    const Eigen::Matrix2d lent = Eigen::Matrix2d::Identity() - g * at.weight[i];
    const Eigen::Matrix2d error = at.s2 * turn *
                                  (own + lent * at.information.inverse() * lent.transpose()) *
                                  turn.transpose();
    return {line(0), line(1), {error(0, 0), error(0, 1), error(1, 1)}};
}

} // namespace slopebook::stats
