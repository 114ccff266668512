// SPDX-License-Identifier: GPL-3.0-or-later
// What is found of nothing: how likely a change is read where there is none, and how many of many
// readings stand when all of them are one family.
#pragma once

#include "core/stats/lognormal.h"
#include "core/stats/twolines.h"

#include <map>
#include <optional>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

namespace slopebook::stats {

/// A part of a variance as it is taken, and what it is likely to be over that: as it is said where
/// it is, else nu / chi^2 of its df, and then the part is a t.
struct UnsureVariance {
    Variance taken = {};
    std::optional<LogNormal> likely = {};
};

/// The chance that a sum of normal parts, of variances that are not sure, lies beyond reach on
/// either side of an error spread evenly over a span: P(|sum sqrt(V_i X_i) Z_i + e| > reach). Of
/// two t parts the Behrens-Fisher law (squaredHalfWidth is at most as often beyond). By quadrature
/// over each part's X and the span; agrees with R's integrate to 1e-6 for one and two parts, df of
/// 3 and more. Keeps the nodes of what it has met.
class Nothing {
public:
    double beyond(std::span<const UnsureVariance> parts, double reach, double span = 0);

private:
    using Scales = std::vector<std::pair<double, double>>; ///< X and its weight
    const Scales& ofDf(double df, std::size_t parts);
    const Scales& ofLikely(const LogNormal& likely, std::size_t parts);
    std::map<std::pair<double, std::size_t>, Scales> m_ofDf;
    std::map<std::tuple<double, double, std::size_t>, Scales> m_ofLikely;
};

/// Adjusted p of each by Holm's step-down (Scand J Stat 1979;6:65-70); agrees with R's p.adjust.
std::vector<double> holm(std::span<const double> p);

} // namespace slopebook::stats
