// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/partsjson.h"

#include "core/answers/testsneeded.h"

#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

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

} // namespace

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

void storyFields(Json& json, const Block& block) {
    json.field("ceiling", block.ceiling ? std::optional(kilograms(*block.ceiling)) : std::nullopt)
        .field("trained", block.trained)
        .key("sessions_a_week");
    if (block.aWeek)
        json.object()
            .field("fewest", block.aWeek->fewest)
            .field("most", block.aWeek->most)
            .endObject();
    else
        json.null();
    json.field("note", block.note);
}

void conditionsJson(Json& json, const char* name, std::span<const ConditionChange> changes) {
    json.key(name).array();
    for (const ConditionChange& change : changes)
        json.object()
            .field("what", answers::word(change.what))
            .field("from", change.before)
            .field("to", change.after)
            .endObject();
    json.endArray();
}

void readJson(Json& json, const ReadChange& read) {
    json.field("change", read.change)
        .ends("reading_low", "reading_high", std::optional(read.interval))
        .field("smallest", read.smallest ? std::optional(read.smallest->value) : std::nullopt)
        .field("reading", word(read.reading))
        .field("leans", read.leans());
}

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

void changeJson(Json& json, const ChangeAt& at) {
    json.object()
        .field("load", kilograms(at.load))
        .field("change", at.read.change)
        .field("se", at.se)
        .ends("low", "high", std::optional(at.interval))
        .ends("band_low", "band_high", std::optional(at.band))
        .ends("reading_low", "reading_high", std::optional(at.read.interval))
        .field("smallest", at.read.smallest ? std::optional(at.read.smallest->value) : std::nullopt)
        .field("reading", word(at.read.reading))
        .field("leans", at.read.leans())
        .ends("straight_low", "straight_high", at.read.straight)
        .field("extrapolated", at.extrapolated);
    settleJson(json, at.unsettled);
    json.endObject();
}

} // namespace slopebook::app
