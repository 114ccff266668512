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

} // namespace slopebook::stats
