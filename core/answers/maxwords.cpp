// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/maxwords.h"

#include "core/answers/planbounds.h"
#include "core/model/phrases/answers.h"

#include <utility>

namespace slopebook::answers {

Words liftedWords(const Profile& profile) {
    const Words lifted = massWords(profile.heaviestLifted());
    if (const auto tried = profile.lightestNotLifted())
        return say("%1 was lifted that day and %2 was not: that day's max lies between", lifted,
                   massWords(*tried));
    const auto* held =
        profile.oneRm && toPlanWith(*profile.oneRm) ? &*toPlanWith(*profile.oneRm) : nullptr;
    // The line knows of speeds alone.
    return held && held->low < profile.heaviestLifted()
               ? say("%1 was lifted that day: its max is no less, though the interval begins under "
                     "it",
                     lifted)
               : say("%1 was lifted that day: its max is no less", lifted);
}

Words planWithWords(const Profile& profile) {
    if (!profile.oneRm)
        return {};
    const OneRm& oneRm = *profile.oneRm;
    const auto ends = [](const stats::Interval& held) {
        return std::pair(massWords(held.low, bareEstimate), massWords(held.high, asEstimate));
    };
    if (plansCalibrated(oneRm)) {
        const auto [low, high] = ends(*oneRm.calibratedToPlan);
        return say("estimated 1RM by the log's own maxima %1; to plan with %2 to %3",
                   massWords(*oneRm.calibrated, asEstimate), low, high);
    }
    const Words estimate = massWords(oneRm.estimate, asEstimate);
    if (const auto& bounded = toPlanWith(oneRm); !oneRm.toPlan && bounded) {
        const auto [low, high] = ends(*bounded);
        return oneRm.withMvt
                   ? say("estimated 1RM %1; to plan with %2 to %3, by the line and the MVT's own "
                         "SD "
                         "alone: days and bend leave it unbounded",
                         estimate, low, high)
                   : say("estimated 1RM %1; to plan with %2 to %3, by the line alone: days and "
                         "bend leave it unbounded",
                         estimate, low, high);
    }
    if (!oneRm.toPlan)
        return profile.line.hasInference()
                   ? say("estimated 1RM %1; to plan with not bounded: lift loads further apart, "
                         "and heavier ones",
                         estimate)
                   : say("estimated 1RM %1, without an interval", estimate);
    const auto [low, high] = ends(*oneRm.toPlan);
    if (!oneRm.straight)
        return say("estimated 1RM %1; to plan with %2 to %3", estimate, low, high);
    const auto [straightLow, straightHigh] = ends(*oneRm.straight);
    return say("estimated 1RM %1; to plan with %2 to %3 (as if straight %4 to %5)", estimate, low,
               high, straightLow, straightHigh);
}

} // namespace slopebook::answers
