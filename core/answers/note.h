// SPDX-License-Identifier: GPL-3.0-or-later
// Remarks that go with an answer.
#pragma once

#include "core/model/words.h"

namespace slopebook::answers {

struct Note {
    enum class Kind {
        TwoPointLine, ///< no inference
        PointsBend,
        FarFromLine,
        ExtrapolatedFar,
        ExtrapolatedVeryFar,
        SlopeUncertain,
        MvtSdUnknown,
        MvtKind,
        DifferentDevices,
        DeviceCorrected,
        DayNoiseSource,
        SmallestSource,
        UnequalVariances,
        MvtCancels,
        ImplausiblePoint,
        NoOverlap,
        LevelNot95,
        ByChance,
        LoadNotReached,
        Proportional,
        Unpaired,
        DeviceStudy,
        NoStudyBeside,
        ContextChanged,
        BaselineHasNoLine,
        UnderLifted,
        OverNotLifted, ///< the estimate lies over a load that was not lifted that day
        Calibrated,
        AsManyReps,
        Leaning,
        AsSeen,
        OfSeveral, ///< which sessions of a block stand for it
        Other
    };
    Kind kind = Kind::Other;
    Words words = {}; ///< a clause without a stop; a window makes a sentence of it
};

} // namespace slopebook::answers
