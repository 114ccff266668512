// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan must say beside its loads.
#pragma once

#include "core/model/words.h"

namespace slopebook::answers {

struct Caution {
    enum class Kind {
        Estimates,     ///< loads are estimates, not clearance to lift
        Practitioner,  ///< pain, illness, return from injury; local rules first
        NearMaximal,   ///< spotter or safeties
        AboveEstimate, ///< may be more than the athlete can lift
        ExtrapolatedFar,
        ExtrapolatedVeryFar,
        NoOneRm,
        NoInterval, ///< two points, or a slope that is not certain enough
        NoDayNoise, ///< the interval lacks the scatter from day to day
        BeyondTestedLoads,
        CeilingBelowTarget,
        LightestAboveTarget,
        SpeedAtCeiling,       ///< one way left under a ceiling
        RepsAtCeiling,        ///< another
        RestrictedFlowWindow, ///< a third, only with its own cautions
        StopUnderThreshold,
        MeanOfReps,       ///< the line is of set means, stop velocities start lower
        GroupRelation,    ///< made with the relation of other people
        EndsAtInterval,   ///< the list ends at the estimate's upper end
        EndsAtEstimate,   ///< at the estimate, which has no interval
        EndsWithSpeed,    ///< where the line gives no speed any more
        EndsBeyondLadder, ///< a quarter beyond the heaviest load lifted
        EndsAtBlock,      ///< at the ceiling of a block
        EndsUnderFailure, ///< under a load that was not lifted
        Other
    };
    Kind kind = Kind::Other;
    Words words = {}; ///< a clause without a stop; a window makes a sentence of it
    friend bool operator==(const Caution&, const Caution&) = default;
};

} // namespace slopebook::answers
