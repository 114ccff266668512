// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/ask.h"
#include "app/commands/partsjson.h"
#include "core/answers/planbounds.h"
#include "core/answers/sources.h"

#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

std::optional<double> whereKnown(bool known, double value) {
    return known ? std::optional(value) : std::nullopt;
}

void lineJson(Json& json, const Profile& profile) {
    const stats::Line& line = profile.line;
    const bool inferred = line.hasInference();
    const bool falls = line.slope < 0;
    json.field("n", line.n)
        .field("distinct_loads", line.distinct)
        .field("lightest", profile.lightest)
        .field("heaviest", profile.heaviest)
        .field("v0", line.intercept)
        .field("v0_se", whereKnown(inferred, line.interceptSe()))
        .field("slope", line.slope)
        .field("slope_se", whereKnown(inferred, line.slopeSe()))
        .field("residual_sd", whereKnown(inferred, line.s()))
        .field("df", line.df())
        .field("r2", line.r2)
        .field("l0", falls ? std::optional(profile.l0()) : std::nullopt)
        .field("area", falls ? std::optional(profile.area()) : std::nullopt);
}

void mvtJson(Json& json, const std::optional<Mvt>& mvt) {
    json.key("mvt");
    if (!mvt) {
        json.null();
        return;
    }
    json.object()
        .field("value", mvt->value)
        .field("sd", mvt->sd)
        .field("source", english(wholeSourceOf(*mvt)))
        .endObject();
}

/// What loads are planned with, as straight only where that is of the same estimate; null where it
/// cannot be bounded.
void planJson(Json& json, const Profile& profile) {
    json.key("plan");
    if (!profile.oneRm || !toPlanWith(*profile.oneRm)) {
        json.null();
        return;
    }
    const OneRm& oneRm = *profile.oneRm;
    json.object()
        .field("estimate", estimateToPlanWith(oneRm))
        .ends("low", "high", toPlanWith(oneRm))
        .ends("straight_low", "straight_high",
              plansCalibrated(oneRm) ? std::nullopt : oneRm.straight)
        .field("level", profile.level)
        .endObject();
}

/// What was lifted that day bounds its maximum from below.
void bracketJson(Json& json, const Profile& profile) {
    json.key("bracket")
        .object()
        .field("lifted", profile.heaviestLifted())
        .field("not_lifted", profile.lightestNotLifted())
        .endObject();
}

/// By the log's own pairs of an estimate and a maximum lifted; null where there are too few.
void calibrationJson(Json& json, const Profile& profile) {
    json.key("calibration");
    const auto& made = profile.beyond.calibration;
    if (!made || !profile.oneRm || !profile.oneRm->calibrated) {
        json.null();
        return;
    }
    json.object()
        .field("estimate", *profile.oneRm->calibrated)
        .ends("low", "high", profile.oneRm->calibratedToPlan)
        .field("bias_percent", 100 * std::expm1(made->bias))
        .field("spread_percent", 100 * std::expm1(made->spread))
        .field("pairs", made->pairs)
        .field("own_pairs", made->ownPairs)
        .endObject();
}

void pointsJson(Json& json, const Profile& profile) {
    json.key("points").array();
    for (const ProfilePoint& each : profile.points)
        json.object()
            .field("load", each.point.load)
            .field("velocity", each.point.velocity)
            .field("set", each.point.set)
            .field("residual", each.residual)
            .field("leverage", each.leverage)
            .field("studentised", each.studentised)
            .field("cook", each.cook)
            .endObject();
    json.endArray();
}

} // namespace

void oneRmJson(Json& json, const Answer<OneRm>& oneRm, double level,
               const std::optional<Mass>& measured) {
    json.object();
    if (oneRm)
        json.field("estimate", oneRm->estimate)
            .ends("low", "high", oneRm->interval)
            .ends("with_mvt_low", "with_mvt_high", oneRm->withMvt)
            .field("level", level)
            .field("reach", oneRm->reach)
            .field("measured", measured ? std::optional(kilograms(*measured)) : std::nullopt);
    else
        json.field("reason", english(oneRm.why().reason));
    json.endObject();
}

void profileJson(Json& json, const log::Log& log, const questions::Background& about,
                 const Profile& profile) {
    const LiftSession& session = profile.session;
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("date", dateKey(session.date, session.ordinal))
        .field("velocity_kind", word(about.lift.value.kind))
        .field("device", deviceName(log, session));
    lineJson(json, profile);
    mvtJson(json, profile.mvt);
    json.key("one_rm");
    oneRmJson(json, profile.oneRm, profile.level, session.measuredOneRm);
    planJson(json, profile);
    calibrationJson(json, profile);
    bracketJson(json, profile);
    bendJson(json, profile.oneRm && profile.oneRm->toPlan ? &profile.oneRm->bend : nullptr,
             profile.beyond.bend);
    noiseJson(json, profile.beyond.day);
    pointsJson(json, profile);
    notesJson(json, profile.notes);
    json.endObject();
}

} // namespace slopebook::app
