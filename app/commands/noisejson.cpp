// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"

#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

void typicalErrorJson(Json& json, const stats::TypicalError& error, int decimals) {
    if (!answers::spreads(error, decimals)) {
        json.field("typical_error", std::optional<double>())
            .field("df", error.df)
            .field("reason", "no spread at this resolution");
        return;
    }
    json.field("typical_error", error.value)
        .ends("low", "high", std::optional(error.interval))
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
