// SPDX-License-Identifier: GPL-3.0-or-later
// What the points of groups come to for the models of mixedline.h: sums in a frame about their
// middle, and the way back to x as it was given.
#pragma once

#include "core/stats/mixedline.h"
#include "core/stats/remldeviance.h"

namespace slopebook::stats {

/// u = (x - centre) / scale, in which all is computed.
struct Frame {
    double centre = 0;
    double scale = 1;
};

/// The groups of a model and what they leave free.
struct Groups {
    Frame frame{};
    std::vector<GroupSums> sums{};
    int points = 0;
    double s2 = 0; ///< about the groups' own lines
};

/// Nothing where fitMixedLine() gives nothing.
std::optional<Groups> groupsOf(std::span<const GroupPoints> groups);

/// Coefficients about the frame's centre to those about zero; the same turn for covariances.
Eigen::Matrix2d outOf(const Frame& frame);

/// The shrunken line of group i where the covariance between groups over s2 is g.
UncertainLine shrunkenLine(const RemlDeviance::At& at, const Eigen::Matrix2d& g, const Frame& frame,
                           std::size_t i);

} // namespace slopebook::stats
