// SPDX-License-Identifier: GPL-3.0-or-later
// Where to measure a line next: expected half-widths of an inverse prediction and of a difference
// to an earlier line, and the exact best set of x among those that can be had.
#pragma once

#include "core/stats/line.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace slopebook::stats {

/// The scatter that intervals of the next measurement will be made of: Student's factor, and the
/// expectation of the pooled s, which lies under the true one (E s = c4 s for new points alone).
struct ExpectedScatter {
    double t = 0;
    double s = 0;
    double df = 0;
};
/// s: residual SD of one point. knownDf: degrees of freedom with which s is known beside the new
/// points: 0 where the new line will be judged by its own scatter alone, infinite where s is taken
/// as known. newDf: degrees of freedom that the new points add. Nothing where both are 0.
std::optional<ExpectedScatter> expectedScatter(double s, double knownDf, double newDf,
                                               double level);

/// What a set of x comes to: count, mean, centred sum of squares. All that the criteria see of it.
struct Spread {
    int n = 0;
    double mean = 0;
    double sxx = 0;
};
Spread spread(std::span<const double> x);

/// Expected half-width of Fieller's interval for the x at which the line's mean reaches y; x0 is
/// where the expected line does, slope its slope:
///   (t/|slope|) sqrt( (1-g)(s^2/n + yVariance) + s^2 (x0 - mean)^2 / sxx ) / (1-g),
///   g = t^2 s^2 / (slope^2 sxx),
/// taken at the expected line and the expected s (exact to first order in s / slope; checked by
/// simulation in the tests). Infinite where no finite interval is expected (g >= 1, one x).
double inverseHalfWidth(double slope, double x0, double yVariance, const Spread& x,
                        const ExpectedScatter& scatter);

/// Expected standard error at x0 of (new line - earlier line), both of the same scatter. The
/// expected half-width is scatter.t times it. Infinite where x is one value.
double differenceSe(double x0, const Line& earlier, const Spread& x,
                    const ExpectedScatter& scatter);

/// Judges a set of x by its spread: less is better, infinity where there is nothing to judge. At
/// the same n and mean it must not rise with sxx; both figures above satisfy that.
using DesignCriterion = std::function<double(const Spread&)>;

struct Design {
    std::vector<std::int64_t> x; ///< ascending, with repeats
    double criterion = 0;
};

/// The set of n of the candidates (each as often as wanted) with the least criterion, exactly. x is
/// candidates in whole units; unit converts one to what the criterion measures in. Of sets as good,
/// the one that comes first by sum. Nothing where every set has an infinite criterion, or with
/// under two candidates.
///
/// How it is exact: a criterion sees n, sum and sum of squares only, and improves with the latter
/// at a given sum. So for each sum that n candidates can make the largest sum of squares is found
/// (dynamic programming over whole numbers, cost n x sums x candidates), and the criterion picks
/// among the sums. Candidates that share a step (2.5 kg, 5 lb) make few sums; where they do not
/// (kg and lb plates mixed), they are first laid on the finest grid of `gridSteps` steps over their
/// range; the criterion of the set found is then that of its true x.
std::optional<Design> bestDesign(std::span<const std::int64_t> candidates, double unit, int n,
                                 const DesignCriterion& criterion, std::int64_t gridSteps = 4000);

/// Half the points (the larger half) at the last candidate, the others at the first.
std::vector<std::int64_t> twoExtremes(std::span<const std::int64_t> candidates, int n);

} // namespace slopebook::stats
