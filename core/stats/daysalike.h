// SPDX-License-Identifier: GPL-3.0-or-later
// Days near each other are alike: what the mean of several of them varies by.
#pragma once

#include <span>

namespace slopebook::stats {

/// Correlation of one test's day with the next one's (tests/README.md, 'Seasons': what it holds
/// for, and what it does not).
constexpr double daysAlike = 0.5;

/// By how much the mean of K days varies more than were they independent: C = 1 + 2 sum_{i<K} (1 -
/// i/K) phi^i; 1 of one day.
double clustering(int days);

/// Variance of sum w_j X_j over that of one X, the X days in their order with correlations
/// phi^|i-j|: of equal weights 1 / K it is C / K, of one weight 1 exactly 1.
double varianceOfDays(std::span<const double> weights);

/// What a variance of K such days about their mean is to be divided by: (K - C) / (K - 1); K > 1.
double spreadShare(int days);

/// Of the sum of squares of K such days about their mean, A = (I - J/K) R (I - J/K) with R =
/// phi^|i-j|: tr A = K - C and tr A^2. Its mean is tr A, its variance 2 tr A^2, in units of a day.
/// Where each figure also scatters by itself, by `within` of a day's variance, the mean is tr A +
/// within (K - 1) and the variance 2 (tr A^2 + 2 within tr A + within^2 (K - 1)).
struct SpreadTraces {
    double first = 0, second = 0;
    int days = 0;
    /// On which the squares say the variance of a day (Satterthwaite 1946): (tr A)^2 over half of
    /// their variance. Of days that are not alike (K - 1) / (1 + within)^2.
    double df(double within) const;
    /// The df of the chi^2 that the squares are nearly, times their mean: mean^2 over half of their
    /// variance.
    double dfOfSquares(double within) const;
};
/// K > 1.
SpreadTraces spreadTraces(int days);

} // namespace slopebook::stats
