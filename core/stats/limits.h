// SPDX-License-Identifier: GPL-3.0-or-later
// Limits of agreement where several differences come from one person: they resemble each other, and
// counting each for one makes the limits too narrow and too sure.
#pragma once

#include "core/stats/twolines.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::stats {

struct GroupedLimits {
    int groups = 0;
    double bias = 0;                ///< mean of all differences
    Variance biasVariance = {};     ///< of the groups' and the single differences' parts
    double between = 0, within = 0; ///< variances
    double sd = 0;                  ///< of one difference of a new group: sqrt(between + within)
    Interval limits = {};           ///< bias -/+ 1.96 sd
    Interval lowerLimitInterval = {}, upperLimitInterval = {};
};

/// Bland and Altman 1999 and 2007 (the true value varies): variance components by one-way analysis
/// of variance, between = (MSB - MSW) / m0, not below zero; m0 = (N - sum m^2 / N) / (k - 1). The
/// intervals of the limits by variance recovery from that of the bias (t on k - 1 df) and that of
/// the SD (chi-square for either mean square), as Zou 2013; both from memory, coverage by
/// simulation. Nothing with under 3 groups, or with one difference in each.
std::optional<GroupedLimits> groupedLimits(std::span<const std::vector<double>> groups,
                                           double level = 0.95);

} // namespace slopebook::stats
