// SPDX-License-Identifier: GPL-3.0-or-later
// What is found of nothing: how likely a change is read where there is none, and how many of many
// readings stand when all of them are one family.
#pragma once

#include "core/stats/moving.h"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace slopebook::stats {

/// The chance that sum of parts, each a t of its own df times its SD, lies beyond reach on either
/// side of an error spread evenly over a span: P(|sum sqrt(V_i) T_i + e| > reach), the
/// Behrens-Fisher law of the intervals here (squaredHalfWidth is at most as often beyond). Averaged
/// over quantiles of each part's scale. Keeps the quantiles of the df that it has met.
class Nothing {
public:
    double beyond(std::span<const Variance> parts, double reach, double span = 0);

private:
    const std::vector<double>& scales(double df); ///< nu / chi^2, alike likely
    std::map<double, std::vector<double>> m_scales;
};

/// Adjusted p of each by Holm's step-down (Scand J Stat 1979;6:65-70); agrees with R's p.adjust.
std::vector<double> holm(std::span<const double> p);

} // namespace slopebook::stats
