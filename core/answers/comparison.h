// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions of one athlete and lift: what changed by load, what the estimated 1RM did, and the
// sentence.
#pragma once

#include "core/answers/profile.h"
#include "core/answers/reading.h"
#include "core/stats/twolines.h"

#include <string>
#include <vector>

namespace slopebook::answers {

struct ComparisonSettings {
    double level = 0.95;
    stats::Variances variances = stats::Variances::Pooled;
    std::vector<Mass> checkLoads = {};
    DayNoise dayNoise = {};
    std::optional<Smallest> smallestVelocity = {}; ///< m/s
    std::optional<Smallest> smallestOneRm = {};    ///< kg
    /// Bias of the later session's device against the earlier one's, m/s, with its variance: taken
    /// off.
    std::optional<std::pair<double, stats::Variance>> deviceBias = {};
};

struct ChangeAt {
    Mass load = {};
    double se = 0;                    ///< of the lines alone, m/s
    stats::Interval interval = {};    ///< of the lines alone, pointwise
    stats::Interval band = {};        ///< of the lines alone, simultaneous
    stats::Interval readingBand = {}; ///< with day-to-day noise
    ReadChange read = {};             ///< with day-to-day noise
    bool extrapolated = false;        ///< outside the loads that both sessions cover
    bool checkLoad = false;
    std::optional<double> seenFrom = {}, seenTo = {}; ///< mean velocity seen at exactly that load
};

/// Loads at which the lines differ, pointwise, from the lines alone.
struct Differs {
    stats::Stretch stretch = {}; ///< kg, cut to the lightest..heaviest of either session
    bool extrapolated = false;   ///< beyond the loads that both cover
};

struct OneRmChange {
    double estimate = 0;
    std::optional<stats::Interval> interval =
        {};                ///< of the lines alone; absent where either cannot be bounded
    ReadChange read = {};  ///< NoFigure where the interval is absent
    double mvtResidue = 0; ///< u |1/b1 - 1/b2|, kg
    std::optional<double> measured = {}; ///< change of the measured 1RM, kg
};

struct Comparison {
    ComparisonSettings settings = {};
    Profile from, to;
    stats::TwoLines lines;
    std::vector<ChangeAt> at = {}; ///< by load
    std::vector<Differs> differs = {};
    std::optional<stats::TwoLines::Crossing> crossing = {};
    Answer<OneRmChange> oneRm;
    std::string sentence = {}; ///< plain English, by sentence.h
    std::vector<Note> notes = {};
};

/// Refused with the reason: no line on a side, lines without inference, different athletes or
/// lifts.
Answer<Comparison> compare(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& from,
                           const LiftSession& to, const ComparisonSettings& settings);

} // namespace slopebook::answers
