// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan must say beside its loads: a code with figures that a window can word in its own
// language, and the plain English that commands use.
#pragma once

#include <string>
#include <vector>

namespace slopebook::answers {

struct Caution {
    enum class Kind {
        Estimates,            ///< {}: loads are estimates, not clearance to lift
        Practitioner,         ///< {}: pain, illness, return from injury; local rules first
        NearMaximal,          ///< {kg, percent high}: spotter or safeties
        AboveEstimate,        ///< {kg, percent high}: may be more than the athlete can lift
        ExtrapolatedFar,      ///< {reach, kg beyond the heaviest load}
        ExtrapolatedVeryFar,  ///< the same
        NoOneRm,              ///< {}: why, in the text
        NoInterval,           ///< {}: two points, or a slope too uncertain
        NoDayNoise,           ///< {}: the interval lacks the scatter from day to day
        BeyondTestedLoads,    ///< {kg, lightest, heaviest}
        CeilingBelowTarget,   ///< {kg, percent low, percent high, target kg}
        LightestAboveTarget,  ///< {kg, target kg}
        SpeedAtCeiling,       ///< {kg, velocity, low, high}: one way left under a ceiling
        RepsAtCeiling,        ///< {kg, loss %, stop velocity}: another
        RestrictedFlowWindow, ///< {kg low, kg high}: a third, only with its own cautions
        StopUnderThreshold,   ///< {kg, stop velocity, MVT}
        MeanOfReps,           ///< {}: the line is of set means, stop velocities start lower
        BorrowedLine,         ///< {}: made with the athlete's own history
        GroupRelation,        ///< {}: made with a relation of other people, named in the text
        Other
    };
    Kind kind = Kind::Other;
    std::vector<double> figures = {};
    std::string text = {};
    friend bool operator==(const Caution&, const Caution&) = default;
};

} // namespace slopebook::answers
