// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/planbounds.h"

#include "core/answers/figures.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// The slope of the line is told from none: Fieller's g < 1.
bool slopeIsTold(const Profile& profile) {
    return stats::slopeInterval(profile.line, profile.level).high < 0;
}

NoAnswer slopeUncertain() {
    return {NoAnswer::Why::SlopeUncertain,
            say("the slope is not certain enough to bound the estimated 1RM, so nothing is planned "
                "from this line: lift loads further apart, and heavier ones")};
}

std::optional<NoAnswer> uselessEstimate(const Profile& profile) {
    const OneRm& oneRm = *profile.oneRm;
    if (!(oneRm.reach >= leastReach))
        return NoAnswer{NoAnswer::Why::BeyondLoads,
                        say("the heaviest load lifted is %1 % of the 1RM that the line would read: "
                            "nothing is planned from so far away; lift heavier loads first",
                            figure(fixed(100 * oneRm.reach, 0)))};
    if (!profile.line.hasInference()) {
        if (oneRm.extrapolatedVeryFar())
            return NoAnswer{
                NoAnswer::Why::NeedsThirdLoad,
                say("two loads, the heavier under half of the 1RM that their line would "
                    "read: lift a third, heavier load before planning from it")};
        return std::nullopt;
    }
    const auto& interval = toPlanWith(oneRm);
    const bool unbounded = !interval || !oneRm.interval || !(interval->low > 0) ||
                           !std::isfinite(interval->high) ||
                           (profile.mvt && profile.mvt->sd && !oneRm.withMvt);
    if (unbounded)
        return slopeUncertain();
    if (interval->high - interval->low > oneRm.estimate)
        return NoAnswer{NoAnswer::Why::SlopeUncertain,
                        say("the interval of the estimated 1RM is wider than the estimate itself: "
                            "nothing is planned from it; lift loads further apart, and heavier "
                            "ones")};
    return std::nullopt;
}

PlanEnd endOfTheLine(const Profile& profile) {
    PlanEnd end;
    if (profile.oneRm) {
        const auto& interval = toPlanWith(*profile.oneRm);
        end.kind = interval ? PlanEnd::Kind::Interval : PlanEnd::Kind::Estimate;
        end.kg = std::max(interval ? interval->high : estimateToPlanWith(*profile.oneRm),
                          profile.heaviest);
    } else {
        end.kind = PlanEnd::Kind::Ladder;
        end.kg = profile.heaviest / OneRm::farMark;
    }
    const double stops = (leastSpeed - profile.line.intercept) / profile.line.slope;
    if (stops < end.kg)
        end = {.kind = PlanEnd::Kind::Speed, .kg = stops};
    end.most = nearestExactMass(std::max(end.kg, 0.0), MassUnit::Kilogram);
    return end;
}

} // namespace

ExactMass LoadBound::most() const {
    const ExactMass exact = exactMass(load);
    return kind == Kind::NotLifted ? ExactMass{exact.units - 1} : exact;
}

std::optional<ExactMass> lowest(std::optional<ExactMass> ceiling,
                                std::span<const LoadBound> bounds) {
    for (const LoadBound& bound : bounds)
        ceiling = ceiling ? std::min(*ceiling, bound.most()) : bound.most();
    return ceiling;
}

bool plansCalibrated(const OneRm& oneRm) {
    return oneRm.calibrated && oneRm.calibratedToPlan;
}

const std::optional<stats::Interval>& toPlanWith(const OneRm& oneRm) {
    return plansCalibrated(oneRm) ? oneRm.calibratedToPlan
           : oneRm.toPlan         ? oneRm.toPlan
           : oneRm.withMvt        ? oneRm.withMvt
                                  : oneRm.interval;
}

double estimateToPlanWith(const OneRm& oneRm) {
    return plansCalibrated(oneRm) ? *oneRm.calibrated : oneRm.estimate;
}

std::optional<NoAnswer> noPlan(const Profile& profile) {
    if (!(profile.line.slope < 0))
        return NoAnswer{NoAnswer::Why::SlopeNotNegative,
                        say("speed does not fall as load rises, so no load belongs to a speed")};
    if (profile.line.hasInference() && !slopeIsTold(profile))
        return slopeUncertain();
    return profile.oneRm ? uselessEstimate(profile) : std::nullopt;
}

PlanEnd planEnd(const Profile& profile, std::span<const LoadBound> bounds) {
    PlanEnd end = endOfTheLine(profile);
    for (const LoadBound& bound : bounds)
        if (bound.most() < end.most)
            end = {.kind = bound.kind == LoadBound::Kind::Block ? PlanEnd::Kind::Block
                                                                : PlanEnd::Kind::NotLifted,
                   .kg = kilograms(bound.load),
                   .most = bound.most(),
                   .name = bound.name};
    return end;
}

NoAnswer aimBeyond(const PlanEnd& end) {
    using Why = NoAnswer::Why;
    switch (end.kind) {
    case PlanEnd::Kind::Estimate:
        return {Why::BeyondLoads,
                say("the aim lies above the estimated 1RM: no load is planned there")};
    case PlanEnd::Kind::Speed:
        return {Why::SpeedNotReached,
                say("the aim lies beyond where the line gives any speed: no load is planned "
                    "there")};
    case PlanEnd::Kind::Ladder:
        return {
            Why::BeyondLoads,
            say("the aim lies more than a quarter beyond the heaviest load lifted: test heavier "
                "loads first")};
    case PlanEnd::Kind::Interval:
    case PlanEnd::Kind::Block:
    case PlanEnd::Kind::NotLifted:
        break;
    }
    return {Why::BeyondLoads,
            say("the aim lies above the upper end of the estimated 1RM's interval: no load is "
                "planned there")};
}

ExactMass heaviestOf(const Equipment& equipment) {
    ExactMass on{}, alone{}, added{};
    for (const Bar& bar : equipment.bars)
        on = std::max(on, bar.mass);
    if (!equipment.bars.empty())
        for (const Plate& plate : equipment.plates)
            on = on + 2 * plate.pairs * plate.mass;
    for (const FixedMass& fixed : equipment.fixed)
        if (fixed.use == FixedMass::Use::Added)
            added = added + fixed.mass;
        else
            alone = std::max(alone, fixed.mass);
    return std::max(on, alone) + added;
}

} // namespace slopebook::answers
