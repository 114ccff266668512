// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/ask.h"
#include "app/commands/partsjson.h"

#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

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

namespace {

void blockSideJson(Json& json, const char* name, const BlockSide& side) {
    json.key(name).object().field("name", side.name);
    if (side.block) {
        json.field("first", isoDate(side.block->first)).field("last", isoDate(side.block->last));
        storyFields(json, *side.block);
    }
    json.key("sessions").array();
    for (const LiftSession& session : side.sessions)
        json.value(dateKey(session.date, session.ordinal));
    json.endArray().key("left_out").array();
    for (const BlockSide::LeftOut& left : side.leftOut)
        json.object()
            .field("date", dateKey(left.session.date, left.session.ordinal))
            .field("why", english(left.why))
            .endObject();
    json.endArray().endObject();
}

} // namespace

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
    conditionsJson(json, "conditions_changed", comparison.under.changes);
    const Words& why = comparison.under.notComparable;
    json.field("comparable", why.empty())
        .field("why", why.empty() ? std::nullopt : std::optional(english(why)));
    const auto& bias = comparison.settings.deviceBias;
    json.field("device_bias_taken_off", bias ? std::optional(bias->first) : std::nullopt)
        .field("residual_sd", std::sqrt(comparison.uncertainty.pooled().s2))
        .field("df", comparison.uncertainty.pooled().df);
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
    if (comparison.ofSeveral()) {
        json.key("parallel").null().key("coincident").null();
    } else {
        testJson(json, "parallel", comparison.lines.parallel());
        testJson(json, "coincident", comparison.lines.coincident());
    }
    oneRmChangeJson(json, comparison.oneRm);
    bendJson(json,
             comparison.oneRm && comparison.oneRm->read.reading != Reading::NoFigure
                 ? &comparison.oneRm->read.bend
                 : nullptr,
             comparison.settings.bend);
    noiseJson(json, comparison.settings.dayNoise);
    json.field("sentence", english(comparison.sentence));
    notesJson(json, comparison.notes);
    if (comparison.ofSeveral()) {
        json.key("blocks").object();
        blockSideJson(json, "from", comparison.blocks->first);
        blockSideJson(json, "to", comparison.blocks->second);
        json.endObject();
    }
    json.endObject();
}

} // namespace slopebook::app
