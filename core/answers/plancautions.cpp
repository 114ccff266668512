// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/plan.h"
#include "core/answers/restrictedflow.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

using CautionKind = Caution::Kind;

// Marks of common practice.
constexpr double nearMaximalPercent = 90;
constexpr double usualLoss = 20;

Words tenths(double kg) {
    return massWords(kg, toTenths);
}

Words range(const stats::Interval& interval, int decimals) {
    return say("%1 to %2", figure(interval.low, decimals), figure(interval.high, decimals));
}

/// Percent of the estimated 1RM.
Words share(const PlannedLoad& load) {
    return load.percentInterval ? range(*load.percentInterval, 0) : figure(*load.percent, 0);
}

double highest(const PlannedLoad& load) {
    return load.percentInterval ? load.percentInterval->high : load.percent.value_or(0);
}

void sayLine(const Plan& plan, std::vector<Caution>& cautions) {
    const Profile& p = plan.profile;
    if (!p.oneRm) {
        cautions.push_back(
            {CautionKind::NoOneRm, say("no estimated 1RM: %1", p.oneRm.why().reason)});
    } else if (p.oneRm->extrapolatedFar()) {
        const Words beyond = tenths(p.oneRm->estimate - p.heaviest);
        const Words reach = figure(p.oneRm->reach, 2);
        if (p.oneRm->extrapolatedVeryFar())
            cautions.push_back(
                {CautionKind::ExtrapolatedVeryFar,
                 say("the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): every "
                     "percent here leans on that, so read the intervals first",
                     beyond, reach)});
        else
            cautions.push_back(
                {CautionKind::ExtrapolatedFar,
                 say("the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): every "
                     "percent here leans on that",
                     beyond, reach)});
    }
    if (!p.line.hasInference())
        cautions.push_back({CautionKind::NoInterval,
                            say("two points give no intervals: the line needs a third load")});
    else if (p.oneRm && !p.oneRm->interval)
        cautions.push_back({CautionKind::NoInterval,
                            say("the slope is not certain enough to bound the 1RM, so its "
                                "percents have no interval")});
    if (p.line.hasInference() && plan.settings.dayNoise.origin == DayNoise::Origin::None)
        cautions.push_back({CautionKind::NoDayNoise,
                            say("no repeat tests are known: the expected speeds' intervals lack "
                                "the scatter from day to day and are too narrow")});
    if (plan.settings.lossPercent && plan.lift.rule == PointRule::Mean)
        cautions.push_back({CautionKind::MeanOfReps,
                            say("this lift's line is of set means: take the stop speed from the "
                                "day's fastest rep")});
}

void sayChosen(const Plan& plan, std::vector<Caution>& cautions) {
    const PlannedLoad& load = plan.loads[plan.chosen.back()];
    if (load.percent && highest(load) > 100)
        cautions.push_back({CautionKind::AboveEstimate,
                            say("%1 is %2 % of this athlete's estimated 1RM: it may be more than "
                                "the athlete can lift that day",
                                tenths(kilograms(load.built.exact)), share(load))});
    if (load.percent && highest(load) >= nearMaximalPercent)
        cautions.push_back({CautionKind::NearMaximal,
                            say("near-maximal lifts need a competent spotter or safeties, and a "
                                "coach's eye")});
    const auto untested = std::find_if(plan.chosen.begin(), plan.chosen.end(),
                                       [&](std::size_t i) { return !plan.loads[i].tested; });
    if (untested != plan.chosen.end())
        cautions.push_back({CautionKind::BeyondTestedLoads,
                            say("%1 lies outside the loads of the test (%2 to %3): its speed is "
                                "the line drawn on",
                                tenths(kilograms(plan.loads[*untested].built.exact)),
                                tenths(plan.profile.lightest), tenths(plan.profile.heaviest))});
}

/// Of the chosen loads the first that would be lifted to failure; false where there is none.
bool sayChosenStops(const Plan& plan, std::vector<Caution>& cautions) {
    const auto under = [&](std::size_t i) { return plan.loads[i].stopUnderMvt; };
    const auto chosen = std::ranges::find_if(plan.chosen, under);
    if (chosen == plan.chosen.end())
        return false;
    const PlannedLoad& load = plan.loads[*chosen];
    cautions.push_back(
        {CautionKind::StopUnderThreshold,
         say("the stop speed of %1 m/s at %2 lies under the MVT of %3 m/s: the set would end "
             "by failure; choose less loss",
             figure(stopVelocity(load.velocity, *plan.settings.lossPercent), 2),
             tenths(kilograms(load.built.exact)), figure(plan.profile.mvt->value, 2))});
    return true;
}

/// Of the chosen loads, else of all.
void sayStops(const Plan& plan, std::vector<Caution>& cautions) {
    if (sayChosenStops(plan, cautions))
        return;
    const auto first = std::ranges::find_if(plan.loads, &PlannedLoad::stopUnderMvt);
    if (first != plan.loads.end())
        cautions.push_back(
            {CautionKind::StopUnderThreshold,
             say("from %1 up a loss of %2 % would end under the MVT of %3 m/s, by failure: no stop "
                 "speed stands there",
                 tenths(kilograms(first->built.exact)), figure(*plan.settings.lossPercent, 0),
                 figure(plan.profile.mvt->value, 2))});
}

/// What is left where the heaviest load to be had stays under the target.
void sayCeiling(const Plan& plan, std::vector<Caution>& cautions) {
    const PlannedLoad& top = plan.loads.back();
    const Words load = tenths(kilograms(top.built.exact));
    const Words target = tenths(plan.aim->low);
    cautions.push_back(
        {CautionKind::CeilingBelowTarget,
         top.percent ? say("%1 is %2 % of this athlete's estimated 1RM; the target is %3", load,
                           share(top), target)
                     : say("%1 is the heaviest load at hand; the target is %2", load, target)});
    if (plan.cut && plan.end.ofTheAthlete())
        return; // work at a load that may be the athlete's last is no way out

    const Words speed = figure(top.velocity, 2);
    cautions.push_back({CautionKind::SpeedAtCeiling,
                        top.prediction
                            ? say("possible there: every rep of %1 as fast as it will go, the day "
                                  "judged by its speed (expected %2 m/s, %3)",
                                  load, speed, range(*top.prediction, 2))
                            : say("possible there: every rep of %1 as fast as it will go, the day "
                                  "judged by its speed (expected %2 m/s)",
                                  load, speed)});
    const double loss = plan.settings.lossPercent.value_or(usualLoss);
    if (plan.profile.mvt && stopVelocity(top.velocity, loss) < plan.profile.mvt->value)
        return; // sets to failure are no way out either
    cautions.push_back({CautionKind::RepsAtCeiling,
                        say("or more reps of it, ending each set when speed has fallen by %1 % "
                            "(about %2 m/s): more work, not more load",
                            figure(loss, 0), figure(stopVelocity(top.velocity, loss), 2))});
}

/// What sets the last load, where heavier ones could be built.
Caution endOf(const Plan& plan) {
    const PlanEnd& end = plan.end;
    const Words at = tenths(end.kg);
    switch (end.kind) {
    case PlanEnd::Kind::Interval:
        return {CautionKind::EndsAtInterval,
                say("the loads end at the upper end of the estimated 1RM (%1)", at)};
    case PlanEnd::Kind::Estimate:
        return {CautionKind::EndsAtEstimate,
                say("the loads end at the estimated 1RM (%1), which has no interval", at)};
    case PlanEnd::Kind::Speed:
        return {CautionKind::EndsWithSpeed,
                say("the loads end where the line gives no speed any more (%1)", at)};
    case PlanEnd::Kind::Ladder:
        return {CautionKind::EndsBeyondLadder,
                say("without an estimated 1RM the loads end a quarter beyond the heaviest load "
                    "lifted (%1)",
                    tenths(plan.profile.heaviest))};
    case PlanEnd::Kind::Block:
        return {CautionKind::EndsAtBlock,
                say("the loads keep to the ceiling of the block %1 (%2)", end.name, at)};
    case PlanEnd::Kind::NotLifted:
        break;
    }
    return {CautionKind::EndsUnderFailure,
            say("the loads stay under %1, which was not lifted", at)};
}

void sayRestrictedFlow(const stats::Interval& window, std::vector<Caution>& cautions) {
    cautions.push_back(
        {CautionKind::RestrictedFlowWindow,
         say("restricted-flow work uses %1 to %2 % of 1RM, here %3 to %4: only after screening and "
             "under trained, licensed supervision, as its caution says",
             figure(restrictedFlowFrom, 0), figure(restrictedFlowTo, 0), tenths(window.low),
             tenths(window.high))});
}

/// What no load changes.
void sayAlways(const Plan& plan, std::vector<Caution>& cautions) {
    if (plan.restrictedFlow)
        sayRestrictedFlow(*plan.restrictedFlow, cautions);
    cautions.push_back({CautionKind::Estimates, say("loads are estimates, not clearance to lift")});
    cautions.push_back({CautionKind::Practitioner,
                        say("pain, illness or return from injury: a qualified practitioner "
                            "decides; local rules come first")});
}

} // namespace

std::vector<Caution> cautionsOf(const Plan& plan) {
    std::vector<Caution> cautions;
    sayLine(plan, cautions);
    if (!plan.chosen.empty())
        sayChosen(plan, cautions);
    sayStops(plan, cautions);
    if (plan.cut)
        cautions.push_back(endOf(plan));
    if (plan.aim) {
        const double heaviest = kilograms(plan.loads.back().built.exact);
        const double lightest = kilograms(plan.loads.front().built.exact);
        if (!plan.above && heaviest < plan.aim->low)
            sayCeiling(plan, cautions);
        if (!plan.below && lightest > plan.aim->high)
            cautions.push_back({CautionKind::LightestAboveTarget,
                                say("%1 is the lightest load at hand; the target is %2",
                                    tenths(lightest), tenths(plan.aim->high))});
    }
    sayAlways(plan, cautions);
    return cautions;
}

std::vector<Caution> cautionsOfSets(const Plan& plan) {
    std::vector<Caution> cautions;
    sayLine(plan, cautions);
    if (!plan.chosen.empty()) {
        sayChosen(plan, cautions);
        sayChosenStops(plan, cautions);
    }
    sayAlways(plan, cautions);
    return cautions;
}

} // namespace slopebook::answers
