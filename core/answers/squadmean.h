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
    std::optional<ReadChange> read = {}; ///< of the mean, by the mean of the smallest changes
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

/// So many readings better or worse, over all parts, were nothing changed in anybody.
double squadByChance(const Squad& squad);
/// A squad by its athletes: readings of one athlete are of the same lines and days, and go
/// together.
struct SquadAthletes {
    int asked = 0;   ///< who have a figure in any part
    int changed = 0; ///< of them, who have at least one reading better or worse
    /// Were nothing changed in anybody, no more of them than this could be expected to have such a
    /// reading: of each athlete the sum of the chances of their readings, one at the most
    /// (Boole's bound, which holds however readings hang together).
    double byChanceAtMost = 0;
};
SquadAthletes athletesOf(const Squad& squad);

/// "Mean change +0.031 m/s (+0.008 to +0.054): better. With the noise of their own
/// tests taken out, their changes still differ by an SD of 0.020 m/s."
Words squadMeanWords(const SquadPart& part, const SquadMean& mean);
/// "Better or worse in something: 1 of 6 athletes (3 of 18 readings; those of one athlete go
/// together). Chance alone gives at most 0.8 such athletes."
Words squadChanceWords(const Squad& squad);

} // namespace slopebook::answers
