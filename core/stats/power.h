// SPDX-License-Identifier: GPL-3.0-or-later
// The chance that a test finds what is there, before it is made: two-sided t test by the noncentral
// t distribution, two one-sided tests by integration over the scatter.
#pragma once

#include <functional>
#include <optional>

namespace slopebook::stats {

/// The chance that the interval of a difference at that level excludes zero (on either side) when
/// the true difference is effect and its estimate has standard error se, itself estimated on df
/// degrees of freedom (may be infinite). se > 0. Agrees with R's power.t.test(strict = TRUE).
double tTestPower(double effect, double se, double df, double level);

/// The chance that the interval at that level lies inside -margin..+margin when the true difference
/// is truth (two one-sided tests at (1 - level) / 2 each: Schuirmann 1987). margin, se > 0.
double equivalencePower(double truth, double margin, double se, double df, double level);

/// A change to be read with half-width^2 = t(scatterDf)^2 V_scatter + t(priorDf)^2 V_prior, where
/// V_prior is a variance as readings take it and `expected` what it is expected to be.
struct ChanceQuestion {
    double effect = 0; ///< the true change asked about, and the margin of held; > 0
    double scatter = 0, scatterDf = 0;
    double prior = 0, priorDf = 0;
    double expected = 0;
    double span = 0; ///< of an error that no test lessens (core/stats/allowance.h)
    double level = 0.95, heldLevel = 0.90;
};
struct Chances {
    double change = 0; ///< that the interval excludes zero when the true change is effect
    double held = 0;   ///< that it lies inside -effect..+effect when there is none
};
/// Averaged over the scatter that the tests will show, 15 quantiles of chi-square: the plain value
/// at the expected scatter is off by up to 19 points with few points, this by 2
/// (tests/reference/uncertainty.R).
Chances chancesOverScatter(const ChanceQuestion& question);

/// The smallest number of repeats from 1 to most whose power reaches wanted; nothing where none
/// does. power is asked for each number in turn (it need not rise: df may fall on the way).
std::optional<int> fewestRepeats(const std::function<double(int)>& power, double wanted, int most);

} // namespace slopebook::stats
