// SPDX-License-Identifier: GPL-3.0-or-later
// What a squad's changes are together: the mean with the day that all were tested on taken apart,
// how far athletes truly differ, each drawn towards the others, and what chance alone gives.
#pragma once

#include "core/answers/squad.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

struct SquadMean {
    int athletes = 0; ///< with a comparable figure from lines
    double mean = 0;  ///< m/s, or kg of the 1RM
    /// hw^2 = t^2(n - 1) S^2 / n + t^2(df) 2 f V_day: half of the variance of a day (f) is shared
    /// by all who were tested together, and no number of athletes lessens it.
    stats::Interval interval = {};
    std::optional<ReadChange> read = {}; ///< of the mean, by the rows' smallest change
    double spread = 0;                   ///< SD of the changes as they are
    double trueSpread = 0;               ///< what of it their own noise does not explain; 0: none
    struct Drawn {
        AthleteId athlete = {};
        double raw = 0, drawn = 0;
        stats::Interval interval = {}; ///< of the drawn one
    };
    std::vector<Drawn> each = {}; ///< in the order of the rows; those without a figure left out
};

/// Nothing with under three athletes.
std::optional<SquadMean> squadMean(const SquadPart& part, double level = 0.95);

/// So many athletes make a mean.
constexpr int leastAthletes = 3;
/// What an athlete's change is drawn to; nothing without a mean, or without a figure of theirs.
std::optional<SquadMean::Drawn> drawnOf(const std::optional<SquadMean>& mean, AthleteId athlete);

/// So many better or worse, over all parts, were nothing changed in anybody.
double squadByChance(const Squad& squad);

/// "Mean change +0.031 m/s (+0.008 to +0.054): better; athletes truly differ by an SD of 0.020."
Words squadMeanWords(const SquadPart& part, const SquadMean& mean);
/// "Over all loads 9 of 40 readings are better or worse; had nothing changed, about 1.2 would be."
Words squadChanceWords(const Squad& squad);

} // namespace slopebook::answers
