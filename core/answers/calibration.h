// SPDX-License-Identifier: GPL-3.0-or-later
// How far an estimated 1RM is off, from the log's own pairs of an estimate and a maximum lifted
// within days. Studies of other people's estimates move nothing.
#pragma once

#include "core/model/answer.h"
#include "core/model/ids.h"
#include "core/model/lift.h"
#include "core/model/session.h"
#include "core/stats/quantiles.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// An estimate and what was lifted within calibrationDays of it.
struct EstimatePair {
    AthleteId athlete{};
    double estimate = 0; ///< kg
    double lifted = 0;   ///< kg, the measured 1RM
};
constexpr int calibrationDays = 7;
constexpr int calibrationPairsNeeded = 3;

/// Of one athlete's sessions of a lift: each measured 1RM with the nearest bounded, well reached
/// estimate of a session within calibrationDays, whose line does not hold that maximum itself
/// (then it would tell of itself).
std::vector<EstimatePair> estimatePairs(const Lift& lift, const Answer<Mvt>& mvt,
                                        std::span<const LiftSession> sessions);

/// estimate / lifted is exp(bias): of all pairs, and of the athlete's own moderated by them.
struct Calibration {
    int pairs = 0, ownPairs = 0;
    double bias = 0;   ///< log estimate - log lifted
    double spread = 0; ///< SD of it between pairs
    double se = 0;     ///< of bias
    double df = 0;
    double calibrated(double estimate) const;
    /// An interval to plan with, taken by the bias and widened by its uncertainty.
    stats::Interval calibrated(const stats::Interval& toPlan, double estimate, double level) const;
};

/// Refused with under calibrationPairsNeeded pairs. The own mean is moderated towards the others'
/// by k / (k + 1): bias differs between athletes about as much as between one's own pairs (no
/// figure was read for it: equal parts).
Answer<Calibration> calibrate(std::span<const EstimatePair> pairs, AthleteId athlete);

} // namespace slopebook::answers
