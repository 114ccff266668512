// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of several groups (the sessions of one athlete, say) that vary about a common line:
// y = (a + A_i) + (b + B_i) x, (A_i, B_i) normal with an unstructured covariance, by REML (Laird
// and Ware 1982; profiled as in Bates et al. 2015, J Stat Softw 67(1)). Groups with few points
// borrow from the others.
#pragma once

#include "core/stats/inverse.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::stats {

struct GroupPoints {
    std::vector<double> x, y;
};

/// Symmetric covariance of an intercept (at x = 0) and a slope.
struct LineCovariance {
    double intercept = 0; ///< variance
    double both = 0;      ///< covariance
    double slope = 0;     ///< variance
    /// Variance of intercept + slope x.
    double at(double x) const { return intercept + x * (2 * both + x * slope); }
};

/// A line with the covariance of its coefficients' errors.
struct UncertainLine {
    double intercept = 0;
    double slope = 0;
    LineCovariance covariance;
    double at(double x) const { return intercept + slope * x; }
};

struct MixedLine {
    int groups = 0;
    int points = 0;
    UncertainLine fixed;    ///< the common line
    LineCovariance between; ///< of (A_i, B_i)
    double s2 = 0;          ///< residual variance within groups
    double logLik = 0;      ///< restricted log-likelihood, as R's nlme::lme gives it
    bool singular = false;  ///< between is of less than full rank: the optimum lies on the boundary

    /// One per group, in their order: the shrunken (best linear unbiased) line. Its covariance is
    /// that of prediction error: of the group's own deviation and of the common line together.
    std::vector<UncertainLine> lines;
    /// Of the deviation alone, the common line taken as known.
    std::vector<LineCovariance> conditional;
};

/// Nothing with fewer than three groups, fewer than two groups with two distinct x, or no scatter
/// about the groups' own lines to estimate s2 from. Groups without points are not allowed.
std::optional<MixedLine> fitMixedLine(std::span<const GroupPoints> groups);

/// Where an uncertain line reaches y, by Fieller; see inverse.h. df infinite: the normal quantile.
/// slope must not be zero.
Inverse inversePrediction(const UncertainLine& line, double y, double yVariance, double df,
                          double level);

} // namespace slopebook::stats
