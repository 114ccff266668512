// SPDX-License-Identifier: GPL-3.0-or-later
// Remarks that go with an answer: a code and figures that a window can word in its own language,
// and the plain English wording that commands use.
#pragma once

#include "core/answers/reading.h"
#include "core/model/words.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::answers {

struct Note {
    enum class Kind {
        TwoPointLine,        ///< no inference
        PointsBend,          ///< {p}
        FarFromLine,         ///< {load, velocity, studentised}
        ExtrapolatedFar,     ///< {reach}
        ExtrapolatedVeryFar, ///< {reach}
        SlopeUncertain,      ///< {g}
        MvtSdUnknown,        ///< {}
        MvtKind,             ///< {}
        DifferentDevices,    ///< {}
        DeviceCorrected,     ///< {bias}
        DayNoiseSource,      ///< {te}
        SmallestSource,      ///< {m}
        UnequalVariances,    ///< {f, p, 1 where one variance is pooled, else 0}
        MvtCancels,          ///< {u |1/b1 - 1/b2|}
        ImplausiblePoint,    ///< {load, velocity}
        NoOverlap,           ///< {}
        LevelNot95,          ///< {level}
        ByChance,            ///< {athletes, readings expected by chance alone}
        LoadNotReached,      ///< {kg}
        Proportional,        ///< {least-products slope}
        Unpaired,            ///< {sets}
        DeviceStudy,         ///< {sets, athletes} that a bias comes from
        NoStudyBeside,       ///< {1 where both sessions measure the same sets, else 0}
        ContextChanged,      ///< names: what changed, before, after
        BaselineHasNoLine,   ///< why
        UnderLifted,         ///< {estimate, heaviest lifted that day}
        Calibrated,          ///< {calibrated, raw, pairs, own pairs}
        AsManyReps,          ///< {}
        Leaning,             ///< {}
        AsSeen,              ///< {}
        Other
    };
    Kind kind = Kind::Other;
    std::vector<double> figures = {};
    std::string text = {};                 ///< plain English
    std::optional<DayNoise> noise = {};    ///< of DayNoiseSource
    std::optional<Smallest> smallest = {}; ///< of SmallestSource, where it is of speed
    std::vector<std::string> names = {};   ///< of ContextChanged
    Words why = {};                        ///< of BaselineHasNoLine
};

} // namespace slopebook::answers
