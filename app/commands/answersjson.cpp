// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"

#include "app/commands/ask.h"
#include "core/answers/planbounds.h"
#include "core/answers/threshold.h"

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
        .field("source", describe(*mvt))
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

/// How far a straight line may be off, kg; null where nothing is known of it.
void bendJson(Json& json, const stats::Interval* error, const Bend& bend) {
    json.key("bend");
    if (!error || bend.relations.empty()) {
        json.null();
        return;
    }
    json.object()
        .field("low", error->low)
        .field("high", error->high)
        .field("source", bend.source())
        .field("own_ladders", bend.ladders)
        .endObject();
}

/// What was lifted that day bounds its maximum from below.
void bracketJson(Json& json, const Profile& profile) {
    json.key("bracket").object().field("lifted", profile.heaviestLifted()).endObject();
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

/// What moves a line from day to day and how much of that comes from where; null where nothing is
/// known.
void noiseJson(Json& json, const DayNoise& noise) {
    json.key("noise");
    if (noise.origin == DayNoise::Origin::None) {
        json.null();
        return;
    }
    json.object()
        .field("level_sd", std::sqrt(noise.variance.value))
        .field("slope_cv", noise.slopeCv())
        .field("df", noise.variance.df);
    json.key("sources").array();
    const auto source = [&](const char* from, double share, int pairs) {
        if (share > 0)
            json.object()
                .field("from", from)
                .field("share", share)
                .field("repeat_tests", pairs)
                .endObject();
    };
    source("athlete", noise.ownShare, noise.ownPairs);
    source("log", noise.othersShare, noise.othersPairs);
    source("published", 1 - noise.ownShare - noise.othersShare, 0);
    json.endArray().endObject();
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

const char* word(Settling::By by) {
    switch (by) {
    case Settling::By::SameDay:
        return "same day";
    case Settling::By::Later:
        return "later tests";
    case Settling::By::BothSides:
        return "tests on each side";
    case Settling::By::OneMore:
        return "one more later test";
    case Settling::By::Nothing:
        break;
    }
    return "nothing";
}

/// null where the reading is not unclear, or no smallest change is known.
void settleJson(Json& json, const std::optional<RepeatsQuestion>& question) {
    json.key("settle");
    if (!question) {
        json.null();
        return;
    }
    const Repeats repeats = repeatsToSettle(*question);
    const Settling least = settling(repeats);
    json.object()
        .field("smallest", question->smallest)
        .field("power", question->power)
        .field("chance_now", repeats.chanceNow)
        .field("chance_held_now", repeats.chanceHeldNow)
        .field("by", word(least.by))
        .field("times", least.times)
        .field("later_tests", repeats.changeLater)
        .field("tests_on_each_side", repeats.changeBoth)
        .field("same_day", repeats.changeSameDay)
        .field("held_later_tests", repeats.heldLater)
        .field("held_tests_on_each_side", repeats.heldBoth)
        .field("held_same_day", repeats.heldSameDay)
        .endObject();
}

/// A change without a line: what was seen on both days.
void readJson(Json& json, const ReadChange& read) {
    json.field("change", read.change)
        .ends("reading_low", "reading_high", read.interval)
        .field("smallest", read.smallest ? std::optional(read.smallest->value) : std::nullopt)
        .field("reading", word(read.reading))
        .field("leans", read.leans());
}

void changeJson(Json& json, const ChangeAt& at) {
    json.object()
        .field("load", kilograms(at.load))
        .field("change", at.read.change)
        .field("se", at.se)
        .ends("low", "high", at.interval)
        .ends("band_low", "band_high", at.band)
        .ends("reading_low", "reading_high", at.read.interval)
        .field("smallest", at.read.smallest ? std::optional(at.read.smallest->value) : std::nullopt)
        .field("reading", word(at.read.reading))
        .field("leans", at.read.leans())
        .ends("straight_low", "straight_high", at.read.straight)
        .field("extrapolated", at.extrapolated);
    settleJson(json, at.unsettled);
    json.endObject();
}

void differsJson(Json& json, const std::vector<Differs>& differs) {
    json.key("differs").array();
    for (const Differs& each : differs)
        json.object()
            .field("from_load", each.stretch.from)
            .field("to_load", each.stretch.to)
            .field("direction", each.stretch.sign > 0 ? "faster" : "slower")
            .field("extrapolated", each.extrapolated)
            .endObject();
    json.endArray();
}

void testJson(Json& json, const char* name, const stats::FTest& test) {
    json.key(name)
        .object()
        .field("f", test.f)
        .field("df1", test.df1)
        .field("df2", test.df2)
        .field("p", test.p)
        .endObject();
}

void oneRmChangeJson(Json& json, const Answer<OneRmChange>& change) {
    json.key("one_rm_change").object();
    if (change) {
        json.field("estimate", change->estimate)
            .ends("low", "high", change->interval)
            .ends("reading_low", "reading_high",
                  change->interval ? std::optional(change->read.interval) : std::nullopt)
            .field("smallest", change->read.smallest ? std::optional(change->read.smallest->value)
                                                     : std::nullopt)
            .field("reading", word(change->read.reading))
            .field("leans", change->read.leans())
            .ends("straight_low", "straight_high", change->read.straight);
        settleJson(json, change->unsettled);
    } else {
        json.field("reason", english(change.why().reason));
    }
    json.endObject();
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

void sharedLoadsJson(Json& json, const questions::Background& about, const LiftSession& from,
                     const LiftSession& to, const NoAnswer& why,
                     const std::vector<SharedLoadChange>& shared) {
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("from", dateKey(from.date, from.ordinal))
        .field("to", dateKey(to.date, to.ordinal))
        .field("reason", english(why.reason));
    json.key("shared_loads").array();
    for (const SharedLoadChange& each : shared) {
        json.object()
            .field("load", kilograms(each.load))
            .field("seen_from", each.seenFrom)
            .field("seen_to", each.seenTo);
        readJson(json, each.read);
        json.endObject();
    }
    json.endArray().endObject();
}

void comparisonJson(Json& json, const log::Log& log, const questions::Background& about,
                    const Comparison& comparison) {
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("level", comparison.settings.level);
    json.key("from");
    profileJson(json, log, about, comparison.from);
    json.key("to");
    profileJson(json, log, about, comparison.to);
    const auto& bias = comparison.settings.deviceBias;
    json.field("device_bias_taken_off", bias ? std::optional(bias->first) : std::nullopt)
        .field("residual_sd", std::sqrt(comparison.lines.s2()))
        .field("df", comparison.lines.df());
    json.key("at").array();
    for (const ChangeAt& at : comparison.at)
        changeJson(json, at);
    json.endArray();
    differsJson(json, comparison.differs);
    json.key("crossing");
    if (const auto& crossing = comparison.crossing)
        json.object()
            .field("load", crossing->x)
            .ends("low", "high", crossing->interval)
            .endObject();
    else
        json.null();
    testJson(json, "parallel", comparison.lines.parallel());
    testJson(json, "coincident", comparison.lines.coincident());
    oneRmChangeJson(json, comparison.oneRm);
    bendJson(json,
             comparison.oneRm && comparison.oneRm->read.reading != Reading::NoFigure
                 ? &comparison.oneRm->read.bend
                 : nullptr,
             comparison.settings.bend);
    noiseJson(json, comparison.settings.dayNoise);
    json.field("sentence", english(comparison.sentence));
    notesJson(json, comparison.notes);
    json.endObject();
}

namespace {

using Blocks = std::span<const Stored<BlockId, Block>>;

std::optional<std::string> blockName(Blocks blocks, Date date) {
    const auto block = questions::blockOn(blocks, date);
    return block ? std::optional(block->name) : std::nullopt;
}

void followedJson(Json& json, const Followed& each, Blocks blocks, double level) {
    json.object().field("date", dateKey(each.session.date, each.session.ordinal));
    json.key("seen").array();
    for (const double velocity : each.seen)
        json.value(velocity);
    json.endArray();
    json.field("line", each.line ? std::optional(*each.line) : std::nullopt)
        .field("se", each.se)
        .ends("low", "high", each.interval)
        .field("extrapolated", each.extrapolated)
        .field("device_bias", each.bias)
        .field("block", blockName(blocks, each.session.date));
    json.key("change");
    if (each.change)
        changeJson(json, *each.change);
    else
        json.null();
    json.key("seen_change");
    if (each.seenChange) {
        json.object();
        readJson(json, *each.seenChange);
        json.endObject();
    } else {
        json.null();
    }
    json.key("one_rm");
    oneRmJson(json, each.oneRm, level, each.session.measuredOneRm);
    json.endObject();
}

void trendJson(Json& json, const Answer<Trend>& trend) {
    json.key("trend").object();
    if (trend)
        json.field("per_week", trend->perWeek)
            .ends("low", "high", trend->interval)
            .field("sessions", trend->sessions)
            .field("start", trend->start);
    else
        json.field("reason", english(trend.why().reason));
    json.endObject();
}

void typicalErrorJson(Json& json, const stats::TypicalError& error, int decimals) {
    if (!answers::spreads(error, decimals)) {
        json.field("typical_error", std::optional<double>())
            .field("df", error.df)
            .field("reason", "no spread at this resolution");
        return;
    }
    json.field("typical_error", error.value)
        .ends("low", "high", error.interval)
        .field("df", error.df)
        .field("smallest_detectable", error.smallestDetectable())
        .field("cv_percent", error.cvPercent)
        .field("cv_log_percent", error.cvLogPercent);
}

const char* originWord(DayNoise::Origin origin) {
    switch (origin) {
    case DayNoise::Origin::Athlete:
        return "athlete";
    case DayNoise::Origin::LogLift:
        return "log";
    case DayNoise::Origin::Published:
        return "published";
    case DayNoise::Origin::None:
        return "none";
    }
    return "";
}

} // namespace

void followJson(Json& json, const questions::Background& about, const Follow& follow,
                std::span<const Stored<BlockId, Block>> blocks, double level) {
    const LiftSession& baseline = follow.sessions.at(follow.baseline).session;
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("load", kilograms(follow.load))
        .field("level", level)
        .field("baseline", dateKey(baseline.date, baseline.ordinal))
        .field("smallest_detectable", follow.smallestDetectable);
    trendJson(json, follow.trend);
    json.key("sessions").array();
    for (const Followed& each : follow.sessions)
        followedJson(json, each, blocks, level);
    json.endArray();
    json.key("blocks").array();
    for (const auto& [id, block] : blocks)
        json.object()
            .field("name", block.name)
            .field("first", isoDate(block.first))
            .field("last", isoDate(block.last))
            .field("ceiling",
                   block.ceiling ? std::optional(kilograms(*block.ceiling)) : std::nullopt)
            .endObject();
    json.endArray();
    notesJson(json, follow.notes);
    json.endObject();
}

void dayNoiseJson(Json& json, const DayNoise& noise) {
    json.object()
        .field("sd", std::sqrt(noise.variance.value))
        .field("df", noise.variance.df)
        .field("origin", originWord(noise.origin))
        .field("source", noise.source)
        .field("pairs", noise.pairs)
        .endObject();
}

void noiseJson(Json& json, const LiftNoise& noise,
               const std::map<AthleteId, std::string>& athletes) {
    json.field("pairs", static_cast<int>(noise.used.size()));
    json.key("used").array();
    for (const RepeatPair& pair : noise.used)
        json.object()
            .field("athlete", athletes.at(pair.first.athlete))
            .field("test", dateKey(pair.first.date, pair.first.ordinal))
            .field("repeat", dateKey(pair.second.date, pair.second.ordinal))
            .endObject();
    json.endArray();
    json.key("at").array();
    for (const NoiseAtLoad& each : noise.atLoads) {
        json.object().field("load", kilograms(each.load));
        typicalErrorJson(json, each.error, 4);
        json.endObject();
    }
    json.endArray();
    json.key("one_rm");
    if (noise.oneRm) {
        json.object();
        typicalErrorJson(json, *noise.oneRm, 2);
        json.endObject();
    } else {
        json.null();
    }
    json.key("day");
    dayNoiseJson(json, noise.day);
}

} // namespace slopebook::app
