// SPDX-License-Identifier: GPL-3.0-or-later
// Intervals of shrunken lines that know how little a few groups tell about the spread between
// groups. The REML estimate taken as known makes them far too narrow (with four groups a "95 %"
// interval of the 1RM held the truth in two cases of three; tests/README.md).
#pragma once

#include "core/stats/mixedline.h"

namespace slopebook::stats {

/// A shrunken line under one covariance between groups, and how well that one fits the data.
struct WeightedLine {
    double weight = 0; ///< of all together 1
    UncertainLine line;
};

/// The lines of one group over all covariances between groups that the data leave open.
struct OpenLines {
    std::vector<WeightedLine> lines{};
    double df = 0; ///< of Student's t about each of them: points - 2
    /// The chance that the line at x lies under y, where y has a variance of its own.
    double chanceUnder(double x, double y, double yVariance) const;
};

/// The posterior under the approximate uniform shrinkage prior (Natarajan and Kass 2000, J Am Stat
/// Assoc 95:227-237, from memory) for the covariance between groups over s2, and 1/s2 for s2: with
/// Z the design of a group and H the mean of Z'Z over the groups, the share of the error in a
/// group's line, (I + H^1/2 G H^1/2)^-1, is uniform on what it can be. By integration over three
/// zooming grids. Nothing where fitMixedLine() gives nothing.
std::optional<OpenLines> openLines(std::span<const GroupPoints> groups, std::size_t group);

/// Where the line reaches y: the x at which its chance to lie under y is (1 - level) / 2, and the x
/// at which it is (1 + level) / 2. For falling lines; near: an x between them. Nothing where either
/// end lies farther than reach from it.
std::optional<Interval> inverseInterval(const OpenLines& open, double y, double yVariance,
                                        double near, double reach, double level);

} // namespace slopebook::stats
