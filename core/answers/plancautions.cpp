// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/figures.h"
#include "core/answers/plan.h"
#include "core/answers/restrictedflow.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

using CautionKind = Caution::Kind;

// Marks of common practice.
constexpr double nearMaximalPercent = 90;
constexpr double usualLoss = 20;

std::string shown(double kg, MassUnit unit) {
    const double value = unit == MassUnit::Pound ? kg * 1000 / gramsPerPound : kg;
    return loadText(std::round(value * 10) / 10) + " " + std::string(word(unit));
}

std::string range(const stats::Interval& interval, int decimals) {
    return fixed(interval.low, decimals) + " to " + fixed(interval.high, decimals);
}

std::string share(const PlannedLoad& load) {
    return (load.percentInterval ? range(*load.percentInterval, 0) : fixed(*load.percent, 0)) +
           " % of this athlete's estimated 1RM";
}

double highest(const PlannedLoad& load) {
    return load.percentInterval ? load.percentInterval->high : load.percent.value_or(0);
}

double lowest(const PlannedLoad& load) {
    return load.percentInterval ? load.percentInterval->low : load.percent.value_or(0);
}

void sayLine(const Plan& plan, std::vector<Caution>& cautions) {
    const Profile& p = plan.profile;
    if (!p.oneRm) {
        cautions.push_back(
            {CautionKind::NoOneRm,
             {},
             "no estimated 1RM: " + english(p.oneRm.why().reason, plan.settings.unit),
             p.oneRm.why()});
    } else if (p.oneRm->extrapolatedFar()) {
        const double beyond = p.oneRm->estimate - p.heaviest;
        const bool very = p.oneRm->extrapolatedVeryFar();
        cautions.push_back({very ? CautionKind::ExtrapolatedVeryFar : CautionKind::ExtrapolatedFar,
                            {p.oneRm->reach, beyond},
                            "the estimated 1RM lies " + shown(beyond, plan.settings.unit) +
                                " beyond the heaviest load lifted (reach " +
                                fixed(p.oneRm->reach, 2) + "): every percent here leans on that" +
                                (very ? ", so read the intervals first" : "")});
    }
    if (!p.line.hasInference())
        cautions.push_back({CautionKind::NoInterval,
                            {},
                            "two points give no intervals: the line needs a third load",
                            {.why = NoAnswer::Why::NeedsThirdLoad, .reason = {}}});
    else if (p.oneRm && !p.oneRm->interval)
        cautions.push_back(
            {CautionKind::NoInterval,
             {},
             "the slope is not certain enough to bound the 1RM, so its percents have "
             "no interval",
             {.why = NoAnswer::Why::SlopeUncertain, .reason = {}}});
    if (p.line.hasInference() && plan.settings.dayNoise.origin == DayNoise::Origin::None)
        cautions.push_back({CautionKind::NoDayNoise,
                            {},
                            "no repeat tests are known: the expected speeds' intervals lack the "
                            "scatter from day to day and are too narrow"});
    if (plan.settings.lossPercent && plan.lift.rule == PointRule::Mean)
        cautions.push_back({CautionKind::MeanOfReps,
                            {},
                            "this lift's line is of set means: take the stop speed from the day's "
                            "fastest rep"});
}

void sayChosen(const Plan& plan, std::vector<Caution>& cautions) {
    const PlannedLoad& load = plan.loads[plan.chosen.back()];
    const double kg = kilograms(load.built.exact);
    const std::string mass = shown(kg, plan.settings.unit);
    if (load.percent && highest(load) > 100)
        cautions.push_back(
            {CautionKind::AboveEstimate,
             {kg, lowest(load), highest(load)},
             mass + " is " + share(load) + ": it may be more than the athlete can lift that day"});
    if (load.percent && highest(load) >= nearMaximalPercent)
        cautions.push_back(
            {CautionKind::NearMaximal,
             {kg, highest(load)},
             "near-maximal lifts need a competent spotter or safeties, and a coach's "
             "eye"});
    const auto untested = std::find_if(plan.chosen.begin(), plan.chosen.end(),
                                       [&](std::size_t i) { return !plan.loads[i].tested; });
    if (untested != plan.chosen.end()) {
        const double outside = kilograms(plan.loads[*untested].built.exact);
        cautions.push_back({CautionKind::BeyondTestedLoads,
                            {outside, plan.profile.lightest, plan.profile.heaviest},
                            shown(outside, plan.settings.unit) +
                                " lies outside the loads of the test (" +
                                shown(plan.profile.lightest, plan.settings.unit) + " to " +
                                shown(plan.profile.heaviest, plan.settings.unit) +
                                "): its speed is the line drawn on"});
    }
    for (const std::size_t i : plan.chosen)
        if (const auto& each = plan.loads[i];
            each.stop && plan.profile.mvt && *each.stop < plan.profile.mvt->value) {
            cautions.push_back({CautionKind::StopUnderThreshold,
                                {kilograms(each.built.exact), *each.stop, plan.profile.mvt->value},
                                "the stop speed of " + fixed(*each.stop, 2) + " m/s at " +
                                    shown(kilograms(each.built.exact), plan.settings.unit) +
                                    " lies under the MVT of " + fixed(plan.profile.mvt->value, 2) +
                                    " m/s: the set would end by failure; choose less loss"});
            break;
        }
}

/// What is left where the heaviest load to be had stays under the target.
void sayCeiling(const Plan& plan, std::vector<Caution>& cautions) {
    const PlannedLoad& top = plan.loads.back();
    const double kg = kilograms(top.built.exact);
    const MassUnit unit = plan.settings.unit;
    Caution caution{CautionKind::CeilingBelowTarget,
                    {kg, 0, 0, plan.aim->low},
                    shown(kg, unit) + " is the heaviest load at hand"};
    if (top.percent) {
        const auto percent =
            top.percentInterval.value_or(stats::Interval{*top.percent, *top.percent});
        caution.figures = {kg, percent.low, percent.high, plan.aim->low};
        caution.text = shown(kg, unit) + " is " + share(top);
    }
    caution.text += "; the target is " + shown(plan.aim->low, unit);
    cautions.push_back(caution);
    if (plan.cut && plan.end.ofTheAthlete())
        return; // work at a load that may be the athlete's last is no way out

    cautions.push_back(
        {CautionKind::SpeedAtCeiling,
         top.prediction
             ? std::vector<double>{kg, top.velocity, top.prediction->low, top.prediction->high}
             : std::vector<double>{kg, top.velocity},
         "possible there: every rep of " + shown(kg, unit) +
             " as fast as it will go, the day judged by its speed (expected " +
             fixed(top.velocity, 2) + " m/s" +
             (top.prediction ? ", " + range(*top.prediction, 2) : std::string()) + ")"});
    const double loss = plan.settings.lossPercent.value_or(usualLoss);
    const double stop = stopVelocity(top.velocity, loss);
    cautions.push_back({CautionKind::RepsAtCeiling,
                        {kg, loss, stop},
                        "or more reps of it, ending each set when speed has fallen by " +
                            fixed(loss, 0) + " % (about " + fixed(stop, 2) +
                            " m/s): more work, not more load"});
}

/// What sets the last load, where heavier ones could be built.
Caution endOf(const Plan& plan) {
    const PlanEnd& end = plan.end;
    const std::string at = shown(end.kg, plan.settings.unit);
    switch (end.kind) {
    case PlanEnd::Kind::Interval:
        return {CautionKind::EndsAtInterval,
                {end.kg},
                "the loads end at the upper end of the estimated 1RM (" + at + ")"};
    case PlanEnd::Kind::Estimate:
        return {CautionKind::EndsAtEstimate,
                {end.kg},
                "the loads end at the estimated 1RM (" + at + "), which has no interval"};
    case PlanEnd::Kind::Speed:
        return {CautionKind::EndsWithSpeed,
                {end.kg},
                "the loads end where the line gives no speed any more (" + at + ")"};
    case PlanEnd::Kind::Ladder: {
        const double heaviest = plan.profile.heaviest;
        return {CautionKind::EndsBeyondLadder,
                {heaviest},
                "without an estimated 1RM the loads end a quarter beyond the heaviest load lifted "
                "(" +
                    shown(heaviest, plan.settings.unit) + ")"};
    }
    case PlanEnd::Kind::Block:
        return {.kind = CautionKind::EndsAtBlock,
                .figures = {end.kg},
                .text = "the loads keep to the ceiling of the block " + end.name + " (" + at + ")",
                .block = end.name};
    case PlanEnd::Kind::NotLifted:
        break;
    }
    return {CautionKind::EndsUnderFailure,
            {end.kg},
            "the loads stay under " + at + ", which was not lifted"};
}

void sayRestrictedFlow(const Plan& plan, const stats::Interval& window,
                       std::vector<Caution>& cautions) {
    cautions.push_back({CautionKind::RestrictedFlowWindow,
                        {window.low, window.high},
                        "restricted-flow work uses " + fixed(restrictedFlowFrom, 0) + " to " +
                            fixed(restrictedFlowTo, 0) + " % of 1RM, here " +
                            shown(window.low, plan.settings.unit) + " to " +
                            shown(window.high, plan.settings.unit) +
                            ": only after screening and under trained, licensed supervision, as "
                            "its caution says"});
}

} // namespace

std::vector<Caution> cautionsOf(const Plan& plan) {
    std::vector<Caution> cautions;
    sayLine(plan, cautions);
    if (!plan.chosen.empty())
        sayChosen(plan, cautions);
    if (plan.cut)
        cautions.push_back(endOf(plan));
    if (plan.aim) {
        const double heaviest = kilograms(plan.loads.back().built.exact);
        const double lightest = kilograms(plan.loads.front().built.exact);
        if (!plan.above && heaviest < plan.aim->low)
            sayCeiling(plan, cautions);
        if (!plan.below && lightest > plan.aim->high)
            cautions.push_back({CautionKind::LightestAboveTarget,
                                {lightest, plan.aim->high},
                                shown(lightest, plan.settings.unit) +
                                    " is the lightest load at hand; the target is " +
                                    shown(plan.aim->high, plan.settings.unit)});
    }
    if (plan.restrictedFlow)
        sayRestrictedFlow(plan, *plan.restrictedFlow, cautions);
    cautions.push_back({CautionKind::Estimates, {}, "loads are estimates, not clearance to lift"});
    cautions.push_back({CautionKind::Practitioner,
                        {},
                        "pain, illness or return from injury: a qualified practitioner decides; "
                        "local rules come first"});
    return cautions;
}

} // namespace slopebook::answers
