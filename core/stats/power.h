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

/// The smallest number of repeats from 1 to most whose power reaches wanted; nothing where none
/// does. power is asked for each number in turn (it need not rise: df may fall on the way).
std::optional<int> fewestRepeats(const std::function<double(int)>& power, double wanted, int most);

} // namespace slopebook::stats
