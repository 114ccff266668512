// SPDX-License-Identifier: GPL-3.0-or-later
// The typical error that a change of a battery test is read with, and where it comes from.
#pragma once

#include "core/answers/battery.h"
#include "core/answers/squadtests.h"
#include "core/model/words.h"
#include "core/stats/quantiles.h"

#include <optional>

namespace slopebook::answers {

/// The typical error that a change of a test is read with, in the test's unit.
struct TestNoiseUsed {
    enum class Origin { Athlete, Log, Kind };
    double te = 0;
    double df = 0; ///< infinite where it is a published or the coach's figure
    Origin origin = Origin::Kind;
    Words source = {};
};

/// The athlete's own repeat tests (two pairs or more), else the log's, else the kind's own figure
/// (published or the coach's), else what a single pair of the athlete's says (of a two-sided kind
/// that of each side together), else nothing. value: what a percentage is taken of.
std::optional<TestNoiseUsed> testNoise(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       AthleteId athlete, const SquadTests& squad, double value);

/// change -/+ t sqrt(2) TE on TE's df (Hopkins 2000; Swinton et al. 2018).
stats::Interval changeInterval(double change, double te, double df, double level);

/// The spread of the attempts within each day as noise of the day's value: a lower bound, for what
/// differs between days is not in it. The best of n is taken as steady as their mean.
std::optional<double> attemptNoise(const TestValue& before, const TestValue& after);

} // namespace slopebook::answers
