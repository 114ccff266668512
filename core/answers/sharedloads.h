// SPDX-License-Identifier: GPL-3.0-or-later
// The change at each load lifted on both days, where a line cannot be judged: two loads, a thrown
// lift done once or twice.
#pragma once

#include "core/answers/comparison.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// The typical error of a point at a load, m/s: what differs from day to day, and the scatter of a
/// point about its line.
struct PointNoise {
    stats::Variance day = {};     ///< of one day at that load, (m/s)^2
    stats::Variance scatter = {}; ///< of one point
};

/// scatter: of the athlete's own points about their lines (pooledScatter of nexttest.h: s, df),
/// where any line shows it; nothing: 0.015 m/s, the least that studies of such lines show, on 8 df.
PointNoise pointNoise(const DayNoise& noise, const std::optional<stats::Scatter>& scatter);
/// With the scatter of all the athlete's sessions of the lift.
PointNoise pointNoiseFrom(const DayNoise& noise, std::span<const LiftSession> sessions);

struct SharedLoadChange {
    Mass load = {};
    double seenFrom = 0, seenTo = 0; ///< mean velocity at exactly that load
    ReadChange read = {};
};

/// By load, ascending: half-width^2 = t0^2 2 V_day + t^2 s^2 (1/n1 + 1/n2), no line and so no bend.
/// Refused where the days share no load, and for one and the same session.
Answer<std::vector<SharedLoadChange>> sharedLoadChanges(const LiftSession& from,
                                                        const LiftSession& to,
                                                        const ComparisonSettings& settings,
                                                        const PointNoise& noise);

} // namespace slopebook::answers
