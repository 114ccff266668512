// SPDX-License-Identifier: GPL-3.0-or-later
// Where a plan ends: what an athlete's line can bear, and what holds the loads down from outside (a
// block's ceiling, a load that was not lifted).
#pragma once

#include "core/answers/plates.h"
#include "core/answers/profile.h"

#include <optional>
#include <span>
#include <string>

namespace slopebook::answers {

/// A bound from above that the line knows nothing of.
struct LoadBound {
    enum class Kind {
        Block,    ///< the training block holds no more: the load itself may be used
        NotLifted ///< was tried and not lifted: plans stay under it
    };
    Kind kind = Kind::Block;
    Mass load{};
    std::string name{}; ///< of the block
    /// The heaviest load that it allows.
    ExactMass most() const;
    friend bool operator==(const LoadBound&, const LoadBound&) = default;
};

/// The lowest of a ceiling and the bounds; nothing where there are none.
std::optional<ExactMass> lowest(std::optional<ExactMass> ceiling,
                                std::span<const LoadBound> bounds);

/// Loads are planned with the calibrated estimate and its interval; where it has none that is
/// bounded, with both as the line reads them: an estimate and its interval are one pair.
bool plansCalibrated(const OneRm& oneRm);
/// The interval of an estimate that loads are planned with: the calibrated one, else the one with
/// days and bend, else with the MVT's own SD, else the line's.
const std::optional<stats::Interval>& toPlanWith(const OneRm& oneRm);
/// The estimate that loads are planned with, kg: of the same pair as toPlanWith().
double estimateToPlanWith(const OneRm& oneRm);

/// Why nothing may be planned from a line: it does not fall, its slope does not bound a maximum
/// (Fieller's g >= 1, for a lift without a 1RM as well), or the estimate lies too far from the
/// loads lifted to be of use. Nothing where it bears a plan.
std::optional<NoAnswer> noPlan(const Profile& profile);
/// The heaviest load lifted under this share of the estimate: no plan (the marks of 0.80 and 0.50
/// are OneRm's; this one is a choice of this program).
constexpr double leastReach = 0.25;
/// The slowest speed that a plan names, m/s: slower ones would be shown as 0.00.
constexpr double leastSpeed = 0.01;

/// The last load of a plan and what sets it.
struct PlanEnd {
    enum class Kind {
        Interval,  ///< the upper end of the estimate's interval to plan with
        Estimate,  ///< the estimate, which has no interval
        Speed,     ///< the line gives no speed above it
        Ladder,    ///< no 1RM: a quarter beyond the heaviest load lifted (a reach of 0.80)
        Block,     ///< a bound from outside
        NotLifted, ///< another
    };
    Kind kind = Kind::Interval;
    double kg = 0;      ///< for NotLifted the load itself, which is not planned
    ExactMass most{};   ///< the heaviest load that may be named
    std::string name{}; ///< of the block
    /// The athlete's own, not the equipment's or the block's.
    bool ofTheAthlete() const { return kind != Kind::Block; }
};
/// The lowest that applies. Never under the heaviest load lifted, but for the bounds. noPlan() must
/// have nothing against the profile.
PlanEnd planEnd(const Profile& profile, std::span<const LoadBound> bounds);

/// Why an aim above the end gets no load.
NoAnswer aimBeyond(const PlanEnd& end);

/// The heaviest load that the pieces could make, without looking at the ceiling.
ExactMass heaviestOf(const Equipment& equipment);

} // namespace slopebook::answers
