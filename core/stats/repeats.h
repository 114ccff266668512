// SPDX-License-Identifier: GPL-3.0-or-later
// Noise from repeated measurement: typical error, smallest detectable change, agreement of two
// devices.
#pragma once

#include "core/stats/quantiles.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::stats {

struct TypicalError {
    double value = 0;
    double df = 0;
    Interval interval;         ///< by chi-square
    double meanDifference = 0; ///< second - first; 0 for more than two trials
    double grandMean = 0;
    double cvPercent = 0; ///< 100 value / grandMean; 0 where the mean is 0
    std::optional<double>
        cvLogPercent; ///< 100 (exp(TE of logs) - 1); nothing where a value is not positive
    double smallestDetectable() const; ///< 1.96 sqrt(2) value
};

/// From pairs of tests: SD of differences / sqrt(2), df = pairs - 1 (Hopkins 2000). Nothing with
/// under 2 pairs.
std::optional<TypicalError> typicalError(std::span<const double> first,
                                         std::span<const double> second, double level = 0.95);
/// From people x trials (rows: people, all of one length >= 2): two-way ANOVA without the trial
/// effect, df = (people - 1)(trials - 1). Nothing with under 2 people or 2 trials.
std::optional<TypicalError> typicalError(const std::vector<std::vector<double>>& trials,
                                         double level = 0.95);

struct Agreement {
    int n = 0;
    double bias = 0; ///< mean of (first - second)
    double sd = 0;
    double biasSe = 0;
    Interval biasInterval;
    Interval limits;                                 ///< bias -/+ 1.96 sd
    Interval lowerLimitInterval, upperLimitInterval; ///< limit -/+ t sqrt(3 sd^2 / n)
    double correlation = 0;
    /// Least-products (geometric mean) regression first = intercept + slope second, with
    /// Fisher-type intervals (Ludbrook 1997; slope interval: Jolicoeur and Mosimann 1968). Where
    /// either device reads one constant: correlation 0, slope 1, intervals without ends.
    double slope = 0, intercept = 0;
    Interval slopeInterval, interceptInterval;
    bool proportional() const { return slopeInterval.low > 1 || slopeInterval.high < 1; }
};
/// Bland and Altman 1986. Nothing with under 3 pairs.
std::optional<Agreement> agreement(std::span<const double> first, std::span<const double> second,
                                   double level = 0.95);

} // namespace slopebook::stats
