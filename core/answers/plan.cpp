// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/plan.h"

#include "core/answers/figures.h"
#include "core/answers/restrictedflow.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

void validate(const PlanSettings& settings) {
    if (settings.target) {
        const Target& t = *settings.target;
        const bool percent = t.kind == Target::Kind::Percent;
        const double most = percent ? 120 : storableVelocityLimit;
        for (const double value : {t.from, t.to})
            if (!(value > 0 && value <= most))
                throw BadInput(figure(fixed(value, 2)),
                               percent ? say("a share of the 1RM above 0 and up to 120 %")
                                       : say("a velocity above 0 and under 10 m/s"));
    }
    if (settings.lossPercent && !(*settings.lossPercent > 0 && *settings.lossPercent < 100))
        throw BadInput(figure(fixed(*settings.lossPercent, 1)),
                       say("a velocity loss between 0 and 100 %"));
}

/// The target as kilograms on the line.
Answer<stats::Interval> aimOf(const Profile& profile, const Target& target) {
    double from = 0, to = 0;
    if (target.kind == Target::Kind::Percent) {
        if (!profile.oneRm)
            return profile.oneRm.why();
        from = estimateToPlanWith(*profile.oneRm) * target.from / 100;
        to = estimateToPlanWith(*profile.oneRm) * target.to / 100;
    } else {
        if (!(profile.line.slope < 0))
            return NoAnswer{
                NoAnswer::Why::SlopeNotNegative,
                say("speed does not fall as load rises, so no load belongs to a speed")};
        for (const double v : {target.from, target.to})
            if (v >= profile.line.intercept)
                return NoAnswer{NoAnswer::Why::SpeedNotReached,
                                say("the line starts at V0 = %1 m/s: %2 m/s is not reached at any "
                                    "load",
                                    figure(fixed(profile.line.intercept, 2)), figure(fixed(v, 2)))};
        from = (target.from - profile.line.intercept) / profile.line.slope;
        to = (target.to - profile.line.intercept) / profile.line.slope;
    }
    return stats::Interval{std::min(from, to), std::max(from, to)};
}

void choose(Plan& plan, std::span<const BuiltLoad> built) {
    const ExactMass low = nearestExactMass(plan.aim->low, MassUnit::Kilogram);
    const ExactMass high = nearestExactMass(plan.aim->high, MassUnit::Kilogram);
    plan.below = find(built, low, Side::Below);
    plan.above = find(built, high, Side::Above);
    if (plan.settings.target->from != plan.settings.target->to)
        for (std::size_t i = 0; i < built.size(); ++i)
            if (built[i].exact >= low && built[i].exact <= high)
                plan.chosen.push_back(i);
    if (!plan.chosen.empty())
        return;
    // one figure, or a window that no load falls into: the load beside it
    const ExactMass middle{low.units + (high.units - low.units) / 2};
    const ExactMass at = plan.settings.side == Side::Below   ? low
                         : plan.settings.side == Side::Above ? high
                                                             : middle;
    auto found = find(built, at, plan.settings.side);
    if (!found)
        found = find(built, at, Side::Nearest);
    plan.chosen.push_back(*found);
}

/// A bar does not go up at a speed below none: an interval ends there, and no set is stopped there.
PlannedLoad keptAboveZero(PlannedLoad load) {
    if (load.prediction)
        load.prediction->low = std::max(load.prediction->low, 0.0);
    if (load.stop && *load.stop < leastSpeed / 2)
        load.stop.reset();
    return load;
}

/// What can be built up to the plan's end; tells the plan whether more could be.
std::vector<BuiltLoad> buildable(Plan& plan) {
    const PlanSettings& settings = plan.settings;
    ExactMass most = plan.end.most, last = heaviestOf(settings.equipment);
    for (const auto& ceiling : {settings.equipment.ceiling, settings.ceiling})
        if (ceiling) {
            most = std::min(most, *ceiling);
            last = std::min(last, *ceiling);
        }
    plan.cut = last > plan.end.most;
    return buildableLoads(settings.equipment, most);
}

} // namespace

PlannedLoad plannedLoad(const Profile& profile, const BuiltLoad& load,
                        const PlanSettings& settings) {
    const double kg = kilograms(load.exact);
    PlannedLoad planned{.built = load, .velocity = profile.line.at(kg)};
    planned.tested = kg >= profile.lightest && kg <= profile.heaviest;
    if (profile.oneRm) {
        planned.percent = 100 * kg / estimateToPlanWith(*profile.oneRm);
        if (const auto& interval = toPlanWith(*profile.oneRm); interval && interval->low > 0)
            planned.percentInterval =
                stats::Interval{100 * kg / interval->high, 100 * kg / interval->low};
    }
    if (profile.line.hasInference()) {
        const double se = profile.line.seAt(kg);
        const stats::Moving day = dayOf(settings.dayNoise, profile.line, profile.referenceMax());
        // a set of a day to come against this day's line
        const ChangeParts parts{.earlier = {se * se, profile.line.df()},
                                .later = {profile.line.s2(), profile.line.df()},
                                .day = {day.at(kg), day.df}};
        const double half = std::sqrt(squaredHalfWidth(parts, stats::tOf(profile.level)));
        planned.prediction = stats::Interval{planned.velocity - half, planned.velocity + half};
    }
    if (settings.lossPercent) {
        const double stop = stopVelocity(planned.velocity, *settings.lossPercent);
        planned.stopUnderMvt = profile.mvt && stop < profile.mvt->value;
        if (!planned.stopUnderMvt)
            planned.stop = stop;
    }
    return planned;
}

Answer<Plan> plan(const Lift& lift, const Profile& profile, const PlanSettings& settings) {
    validate(settings);
    if (auto none = noPlan(profile))
        return *none;
    Plan plan{.lift = lift,
              .profile = profile,
              .settings = settings,
              .end = planEnd(profile, settings.bounds)};
    const auto built = buildable(plan);
    if (built.empty())
        return NoAnswer{NoAnswer::Why::Other,
                        plan.cut && plan.end.ofTheAthlete()
                            ? say("every load that can be built is too heavy for this athlete")
                            : say("no load can be built under that ceiling")};
    for (const BuiltLoad& load : built)
        plan.loads.push_back(keptAboveZero(plannedLoad(profile, load, settings)));
    plan.percentWithMvt = profile.oneRm && profile.oneRm->withMvt;
    if (settings.target) {
        const auto aim = aimOf(profile, *settings.target);
        if (!aim)
            return aim.why();
        // beyond a ceiling the load under it is offered, beyond the athlete none
        if (const PlanEnd end = planEnd(profile, {}); aim->low > kilograms(end.most))
            return aimBeyond(end);
        plan.aim = *aim;
        choose(plan, built);
    }
    const double heaviest = kilograms(built.back().exact);
    const bool shortOf = plan.aim && heaviest < plan.aim->low;
    if (profile.oneRm &&
        (settings.restrictedFlow ||
         (shortOf && heaviest >= estimateToPlanWith(*profile.oneRm) * restrictedFlowFrom / 100)))
        plan.restrictedFlow =
            stats::Interval{estimateToPlanWith(*profile.oneRm) * restrictedFlowFrom / 100,
                            estimateToPlanWith(*profile.oneRm) * restrictedFlowTo / 100};
    plan.cautions = cautionsOf(plan);
    return plan;
}

} // namespace slopebook::answers
