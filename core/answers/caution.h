// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan must say beside its loads: a code with figures that a window can word in its own
// language, and the plain English that commands use.
#pragma once

#include "core/model/answer.h"

#include <string>
#include <vector>

namespace slopebook::answers {

struct Caution {
    enum class Kind {
        Estimates,            ///< {}: loads are estimates, not clearance to lift
        Practitioner,         ///< {}: pain, illness, return from injury; local rules first
        NearMaximal,          ///< {kg, percent high}: spotter or safeties
        AboveEstimate,        ///< {kg, percent low, high}: may be more than the athlete can lift
        ExtrapolatedFar,      ///< {reach, kg beyond the heaviest load}
        ExtrapolatedVeryFar,  ///< the same
        NoOneRm,              ///< {}, and why
        NoInterval,           ///< {}, and why: NeedsThirdLoad or SlopeUncertain
        NoDayNoise,           ///< {}: the interval lacks the scatter from day to day
        BeyondTestedLoads,    ///< {kg, lightest, heaviest}
        CeilingBelowTarget,   ///< {kg, percent low, high (0: no 1RM), target kg}
        LightestAboveTarget,  ///< {kg, target kg}
        SpeedAtCeiling,       ///< {kg, velocity, low, high}: one way left under a ceiling
        RepsAtCeiling,        ///< {kg, loss %, stop velocity}: another
        RestrictedFlowWindow, ///< {kg low, kg high}: a third, only with its own cautions
        StopUnderThreshold,   ///< {kg, stop velocity, MVT}
        MeanOfReps,           ///< {}: the line is of set means, stop velocities start lower
        GroupRelation,        ///< {}: made with the relation of other people that is named
        EndsAtInterval,       ///< {kg}: the list ends at the estimate's upper end
        EndsAtEstimate,       ///< {kg}: at the estimate, which has no interval
        EndsWithSpeed,        ///< {kg}: where the line gives no speed any more
        EndsBeyondLadder,     ///< {kg heaviest lifted}: a quarter beyond it
        EndsAtBlock,          ///< {kg}: at the ceiling of the block that is named
        EndsUnderFailure,     ///< {kg}: under a load that was not lifted
        Other
    };
    Kind kind = Kind::Other;
    std::vector<double> figures = {};
    std::string text = {};
    NoAnswer why = {};         ///< of NoOneRm and NoInterval
    std::string relation = {}; ///< of GroupRelation
    std::string block = {};    ///< of EndsAtBlock
    friend bool operator==(const Caution&, const Caution&) = default;
};

} // namespace slopebook::answers
