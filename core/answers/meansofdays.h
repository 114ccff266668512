// SPDX-License-Identifier: GPL-3.0-or-later
// Figures that are each the mean of so many days, and the noise of one day that they are read with:
// what a season's cells and the two sides of a battery have in common (method: tests/README.md,
// 'Seasons').
#pragma once

#include "core/model/battery.h"
#include "core/stats/quantiles.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// The mean of so many days.
struct MeanOfDays {
    double value = 0;
    int days = 0;
    BodySide better = BodySide::Both; ///< of an asymmetry
};
/// Nothing of no days.
std::optional<MeanOfDays> meanOf(std::span<const double> days);

/// The noise of one day's figure: t of df times sd; infinite df: published.
struct NoiseOfADay {
    double sd = 0, df = 0;
};

/// Variance of the mean of so many days over that of one: C / K, days being alike (daysalike.h); 1
/// of one day.
double shareOfADay(int days);
/// Half of the variance of a change between means of so many days, by the SD of a day: of one day
/// each exactly sd^2.
double varianceOfMeans(double sd, int earlier, int later);
/// mean -/+ t times its SE.
stats::Interval meanInterval(const MeanOfDays& mean, const NoiseOfADay& noise, double level);

/// Whether enough blocks hold days beside others to tell how days differ.
bool daysRepeat(std::span<const std::vector<double>> columns);
/// How far the days of each column lie apart, pooled, as the noise of one day; nothing where it has
/// under two df.
std::optional<NoiseOfADay> spreadOfDays(std::span<const std::vector<double>> columns);

} // namespace slopebook::answers
