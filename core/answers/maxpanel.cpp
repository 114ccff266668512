// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/maxpanel.h"

#include "core/answers/figures.h"
#include "core/answers/maxwords.h"
#include "core/answers/method.h"
#include "core/answers/planbounds.h"
#include "core/model/phrases/answers.h"

namespace slopebook::answers {

namespace {

// The interval to plan with leads: line, MVT, days and bend. That as if the line were straight
// stands beside it; that of the line alone is for comparing sessions, where the MVT is the same.
Words headlineOf(const Profile& profile, const OneRm& oneRm, bool wholeSource) {
    const Words estimate = massWords(estimateToPlanWith(oneRm), asEstimate);
    const auto& whole = toPlanWith(oneRm);
    if (!whole)
        return say("Estimated 1RM %1, no interval", estimate);
    const Words level = figure(loadText(100 * profile.level));
    const Words low = massWords(whole->low, bareEstimate);
    if (oneRm.extrapolatedFar()) // a figure alone would be read as one
        return say("Estimated 1RM %1 to %2 (%3 %), middle %4", low,
                   massWords(whole->high, asEstimate), level,
                   massWords(estimateToPlanWith(oneRm), bareEstimate));
    const Words high = massWords(whole->high, bareEstimate);
    if (plansCalibrated(oneRm))
        return say("1RM to plan with %1, by this log's maxima (%2 %: %3 to %4); the line's own %5",
                   estimate, level, low, high, massWords(oneRm.estimate, asEstimate));
    if (oneRm.toPlan)
        return wholeSource ? say("Estimated 1RM %1 (%2 % to plan with: %3 to %4)", estimate, level,
                                 low, high)
                           : say("Estimated 1RM %1 (%2 %, days and bend: %3 to %4)", estimate,
                                 level, low, high);
    return oneRm.withMvt ? say("Estimated 1RM %1 (%2 % for a maximum that day: %3 to %4)", estimate,
                               level, low, high)
                         : say("Estimated 1RM %1 (%2 % of the line alone: %3 to %4)", estimate,
                               level, low, high);
}

Words reachWords(const OneRm& oneRm) {
    const Words reach = figure(oneRm.reach, 2), share = figure(100 * oneRm.reach, 0);
    if (oneRm.extrapolatedVeryFar())
        return say("lifted up to %1 % of it (reach %2), extrapolated very far", share, reach);
    return oneRm.extrapolatedFar()
               ? say("lifted up to %1 % of it (reach %2), extrapolated far", share, reach)
               : say("lifted up to %1 % of it (reach %2)", share, reach);
}

Words between(const stats::Interval& held, bool straight) {
    const Words low = massWords(held.low, bareEstimate), high = massWords(held.high, asEstimate);
    return straight
               ? say("as if the line were straight, to see what a bend may add: %1 to %2", low,
                     high)
               : say("of the line alone, to compare with other days and not to plan with: %1 to %2",
                     low, high);
}

} // namespace

Words noSetsYet() {
    return say("Estimated 1RM: no sets yet");
}

Words noMaxHeadline() {
    return say("Estimated 1RM: no figure");
}

MaxPanel maxPanel(const Profile& profile, bool wholeSource) {
    if (!profile.oneRm)
        return {.headline = noMaxHeadline(), .detail = {profile.oneRm.why().reason}};
    if (const Words why = tooUncertainWords(profile); !why.empty())
        return {.headline = noMaxHeadline(), .detail = {why}};
    const OneRm& oneRm = *profile.oneRm;
    MaxPanel panel{.headline = headlineOf(profile, oneRm, wholeSource),
                   .muted = oneRm.extrapolatedVeryFar()};
    if (!profile.line.hasInference())
        panel.detail.push_back(say("the interval needs a third load"));
    if (plansCalibrated(oneRm))
        panel.detail.push_back(
            say("by the log's own maxima; the line reads %1", massWords(oneRm.estimate, toTenths)));
    else if (oneRm.toPlan && oneRm.straight)
        panel.detail.push_back(between(*oneRm.straight, true));
    if (wholeSource && oneRm.withMvt)
        panel.detail.push_back(between(*oneRm.interval, false));
    panel.detail.push_back(reachWords(oneRm));
    panel.brief = panel.detail;
    if (profile.mvt) {
        panel.detail.push_back(say("MVT %1", mvtWords(*profile.mvt)));
        panel.brief.push_back(say("MVT %1 m/s", figure(profile.mvt->value, 2)));
    }
    std::vector<Words> lifted{liftedWords(profile)};
    if (profile.session.measuredOneRm)
        lifted.push_back(
            say("measured 1RM %1", massWords(kilograms(*profile.session.measuredOneRm))));
    panel.detail.insert(panel.detail.end(), lifted.begin(), lifted.end());
    panel.brief.insert(panel.brief.end(), lifted.begin(), lifted.end());
    return panel;
}

} // namespace slopebook::answers
