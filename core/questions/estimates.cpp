// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/estimates.h"

#include "core/answers/planbounds.h"
#include "core/answers/sources.h"
#include "core/questions/liftcontext.h"

#include <map>

namespace slopebook::questions {

namespace {

using exchange::Cell;
using exchange::ColumnSpec;
using exchange::figureColumn;
using exchange::textColumn;

constexpr std::array<ColumnSpec, EstimateCount> spec{
    textColumn("athlete", "whose it is").needed(),
    textColumn("lift", "which lift").needed(),
    exchange::dayColumn("date", "day of the session").needed(),
    exchange::countColumn("session", "which of the athlete's sessions of that day").needed(),
    textColumn("velocity_kind", "which speed of a rep", "mean|propulsive|peak").needed(),
    textColumn("block", "training block that the day lies in"),
    textColumn("device", "what the speed was measured with"),
    textColumn("place", "where it was measured"),
    textColumn("surface", "surface it was done on"),
    textColumn("footwear", "footwear it was done in"),
    textColumn("technique", "technique of the lift in that session"),
    textColumn("not_comparable", "why it stands beside no other day of the lift; empty: it may"),
    exchange::massColumn("body_mass_kg", "body mass in that session"),
    exchange::countColumn("n", "sets that count: the points of the line", 0).needed(),
    exchange::countColumn("distinct_loads", "loads among them that differ", 0),
    figureColumn("lightest_kg", "kg", "lightest load of the line"),
    figureColumn("heaviest_kg", "kg", "heaviest load of the line"),
    figureColumn("v0_m_s", "m/s", "speed of the line at no load"),
    figureColumn("v0_se_m_s", "m/s", "standard error of v0"),
    figureColumn("slope_m_s_kg", "m/s per kg", "slope of the line"),
    figureColumn("slope_se_m_s_kg", "m/s per kg", "standard error of the slope"),
    figureColumn("residual_sd_m_s", "m/s", "residual standard deviation, s"),
    figureColumn("df", "", "degrees of freedom of the line, n - 2"),
    figureColumn("r2", "", "share of the variance that the line explains"),
    figureColumn("l0_kg", "kg", "load at which the line has no speed left"),
    figureColumn("mvt_m_s", "m/s", "minimal-velocity threshold: the speed of a 1RM"),
    figureColumn("mvt_sd_m_s", "m/s", "standard deviation of it between people"),
    textColumn("mvt_source", "where it comes from"),
    figureColumn("level", "", "confidence level of all intervals").needed(),
    figureColumn("one_rm_kg", "kg", "estimated 1RM: the load of the line at the threshold"),
    figureColumn("one_rm_low_kg", "kg", "its interval by the line alone (Fieller)"),
    figureColumn("one_rm_high_kg", "kg", "the upper end of that"),
    figureColumn("one_rm_with_mvt_low_kg", "kg", "its interval with the threshold's SD as well"),
    figureColumn("one_rm_with_mvt_high_kg", "kg", "the upper end of that"),
    figureColumn("plan_one_rm_kg", "kg", "estimate to plan with: calibrated where the log can"),
    figureColumn("plan_low_kg", "kg", "interval to plan with: line, threshold, days and bend"),
    figureColumn("plan_high_kg", "kg", "the upper end of that"),
    figureColumn("reach", "", "heaviest load lifted / estimated 1RM"),
    figureColumn("measured_one_rm_kg", "kg", "heaviest true maximum of that session"),
    figureColumn("lifted_kg", "kg", "bracket of the maximum: the heaviest load lifted"),
    figureColumn("not_lifted_kg", "kg", "and the lightest above it that was not lifted"),
    textColumn("reason", "why there is no line, or no 1RM")};

template <class T>
Cell orBlank(const std::optional<T>& value) {
    return value ? Cell(*value) : Cell();
}

Cell where(bool known, double value) {
    return known ? Cell(value) : Cell();
}

void ends(EstimateRow& row, std::size_t low, const std::optional<stats::Interval>& interval) {
    if (!interval)
        return;
    row[low] = interval->low;
    row[low + 1] = interval->high;
}

void oneRm(EstimateRow& row, const answers::OneRm& found) {
    row[EstimateOneRm] = found.estimate;
    ends(row, EstimateOneRmLow, found.interval);
    ends(row, EstimateMvtLow, found.withMvt);
    row[EstimateReach] = found.reach;
    if (answers::toPlanWith(found)) {
        row[EstimatePlan] = answers::estimateToPlanWith(found);
        ends(row, EstimatePlanLow, answers::toPlanWith(found));
    }
}

void line(EstimateRow& row, const answers::Profile& profile) {
    const stats::Line& fitted = profile.line;
    const bool inferred = fitted.hasInference();
    row[EstimateDistinct] = static_cast<int>(fitted.distinct);
    row[EstimateLightest] = profile.lightest;
    row[EstimateHeaviest] = profile.heaviest;
    row[EstimateV0] = fitted.intercept;
    row[EstimateV0Se] = where(inferred, fitted.interceptSe());
    row[EstimateSlope] = fitted.slope;
    row[EstimateSlopeSe] = where(inferred, fitted.slopeSe());
    row[EstimateResidualSd] = where(inferred, fitted.s());
    row[EstimateDf] = static_cast<int>(fitted.df());
    row[EstimateR2] = fitted.r2;
    row[EstimateL0] = where(fitted.slope < 0, profile.l0());
    if (profile.mvt) {
        row[EstimateMvt] = profile.mvt->value;
        row[EstimateMvtSd] = orBlank(profile.mvt->sd);
        row[EstimateMvtSource] = english(answers::wholeSourceOf(*profile.mvt));
    }
    if (profile.oneRm)
        oneRm(row, *profile.oneRm);
    else
        row[EstimateReason] = english(profile.oneRm.why().reason);
}

/// What is said of every session alike.
struct Said {
    std::vector<Stored<BlockId, Block>> blocks;
    std::map<DeviceId, std::string> devices;

    explicit Said(const log::Log& log) : blocks(log.blocks()) {
        for (const auto& device : log.devices())
            devices.emplace(device.id, device.value.name);
    }

    EstimateRow of(const Background& about, const LiftSession& session) const {
        EstimateRow row;
        row[EstimateAthlete] = about.athlete.value.name;
        row[EstimateLift] = about.lift.value.name;
        row[EstimateDate] = session.date;
        row[EstimateSession] = session.ordinal;
        row[EstimateKind] = std::string(word(about.lift.value.kind));
        if (const auto block = blockOn(blocks, session.date))
            row[EstimateBlock] = block->name;
        const Conditions& under = session.conditions;
        if (under.device)
            row[EstimateDevice] = devices.at(*under.device);
        row[EstimatePlace] = under.place;
        row[EstimateSurface] = under.surface;
        row[EstimateFootwear] = under.footwear;
        row[EstimateTechnique] = under.technique;
        row[EstimateNotComparable] = under.notComparable;
        row[EstimateBodyMass] = orBlank(session.bodyMass);
        row[EstimateN] = static_cast<int>(session.points.size());
        row[EstimateMeasured] = orBlank(session.measuredOneRm);
        row[EstimateLifted] = orBlank(session.heaviestLifted);
        row[EstimateNotLifted] = orBlank(session.lightestNotLifted);
        return row;
    }
};

} // namespace

const exchange::TableSpec estimatesTable{
    .name = "estimates",
    .meaning = "One row a session of a lift: its line and its estimated 1RM.",
    .columns = spec,
    .key = "athlete,lift,date,session",
    .refers = "athlete>athletes;lift>lifts;device>devices;date,athlete,session>sessions",
    .derived = true};

void eachEstimate(const log::Log& log, const log::Filter& filter, const AskSettings& settings,
                  const std::function<void(const EstimateRow&)>& visit, const Progress& progress) {
    const Said said(log);
    std::map<LiftId, LiftContext> contexts;
    const auto athletes = log.athletes();
    std::int64_t done = 0;
    std::optional<AthleteId> of;
    eachBackground(log, filter, [&](const Background& about) {
        if (std::exchange(of, about.athlete.id) != about.athlete.id)
            ++done;
        auto context = contexts.find(about.lift.id);
        if (context == contexts.end())
            context = contexts.emplace(about.lift.id, liftContext(log, about.lift.id)).first;
        std::map<std::optional<DeviceId>, Background> onDevice;
        for (const LiftSession& session : about.sessions) {
            tell(progress, done, static_cast<std::int64_t>(athletes.size()));
            const auto device = session.conditions.device;
            auto whole = onDevice.find(device);
            if (whole == onDevice.end())
                whole = onDevice.emplace(device, within(context->second, about, device)).first;
            EstimateRow row = said.of(about, session);
            row[EstimateLevel] = settings.level;
            const auto profile = profileOf(whole->second, session, settings);
            if (profile)
                line(row, *profile);
            else
                row[EstimateReason] = english(profile.why().reason);
            visit(row);
        }
    });
}

} // namespace slopebook::questions
