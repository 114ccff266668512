// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/planout.h"
#include "core/answers/restrictedflow.h"

#include <algorithm>

namespace slopebook::app {

using namespace answers;

namespace {

std::string_view ladderWord(LadderForecast::Kind kind) {
    switch (kind) {
    case LadderForecast::Kind::BestForOneRm:
        return "best_one_rm";
    case LadderForecast::Kind::BestForChange:
        return "best_change";
    case LadderForecast::Kind::TwoExtremes:
        return "two_extremes";
    case LadderForecast::Kind::SameAsLast:
        return "same_as_last";
    case LadderForecast::Kind::Even:
        return "even";
    case LadderForecast::Kind::BestInSteps:
        return "best_in_steps";
    }
    return {};
}

void targetJson(Json& json, const Plan& plan) {
    json.key("target");
    if (!plan.settings.target) {
        json.null();
        return;
    }
    const Target& t = *plan.settings.target;
    json.object()
        .field("kind", t.kind == Target::Kind::Percent ? "percent" : "velocity")
        .field("from", t.from)
        .field("to", t.to)
        .field("from_load", plan.aim->low)
        .field("to_load", plan.aim->high)
        .endObject();
}

void loadJson(Json& json, const PlanOut& out, std::size_t i,
              const std::vector<RelatedLoad>& related) {
    const PlannedLoad& load = out.plan.loads[i];
    json.object()
        .field("load", kilograms(load.built.exact))
        .field("pounds", pounds(load.built.exact))
        .field("put_on", english(loadWords(load.built)));
    json.key("per_side").array();
    for (const PlateCount& plate : load.built.perSide)
        json.object()
            .field("plate", in(plate.plate.unit, plate.plate.mass))
            .field("unit", word(plate.plate.unit))
            .field("count", plate.perSide)
            .endObject();
    json.endArray().field("percent", load.percent);
    json.ends("percent_low", "percent_high", load.percentInterval);
    json.field("velocity", load.velocity).ends("low", "high", load.prediction);
    json.field("stop", load.stop)
        .field("tested", load.tested)
        .field("chosen", std::ranges::find(out.plan.chosen, i) != out.plan.chosen.end());
    if (!related.empty())
        json.field("relation_percent", related[i].percent)
            .ends("relation_low", "relation_high", related[i].interval);
    json.endObject();
}

void flowJson(Json& json, const Plan& plan) {
    json.key("restricted_flow");
    if (!plan.restrictedFlow) {
        json.null();
        return;
    }
    const auto& text = restrictedFlowText();
    json.object()
        .field("from_load", plan.restrictedFlow->low)
        .field("to_load", plan.restrictedFlow->high)
        .field("caution", english(text.leading));
    const auto list = [&](std::string_view name, const std::vector<Words>& items) {
        json.key(name).array();
        for (const Words& item : items)
            json.value(english(item));
        json.endArray();
    };
    list("not_without_clearance", text.screening);
    list("stop_for", text.stopAtOnce);
    list("medical_care_for", text.afterwards);
    list("usual_practice", text.usualPractice);
    json.field("source", english(text.source)).endObject();
}

void historyJson(Json& json, const PlanOut& out) {
    json.key("history").object();
    if (!*out.history) {
        json.field("reason", english(out.history->why().reason, out.plan.settings.unit))
            .endObject();
        return;
    }
    const History& history = **out.history;
    json.field("sessions", history.model.groups)
        .field("points", history.model.points)
        .field("residual_variance", history.model.s2)
        .field("singular", history.model.singular);
    json.key("line");
    if (const BorrowedLine* line = history.of(out.plan.profile.session.session)) {
        json.object().field("v0", line->line.intercept).field("slope", line->line.slope);
        json.key("one_rm").object();
        if (line->oneRm)
            json.field("estimate", line->oneRm->estimate)
                .ends("low", "high", line->oneRm->interval)
                .ends("with_mvt_low", "with_mvt_high", line->oneRm->withMvt);
        else
            json.field("reason", english(line->oneRm.why().reason, out.plan.settings.unit));
        json.endObject().endObject();
    } else {
        json.null();
    }
    json.endObject();
}

void spanJson(Json& json, std::string_view name, const stats::Interval& of) {
    json.key(name).object().field("low", of.low).field("high", of.high).endObject();
}

void laddersJson(Json& json, const NextTest& next) {
    json.key("ladders").array();
    for (const LadderForecast& ladder : next.ladders) {
        json.object().field("kind", ladderWord(ladder.kind));
        json.key("loads").array();
        for (const BuiltLoad& load : ladder.loads)
            json.value(kilograms(load.exact));
        json.endArray()
            .field("one_rm_half_width", ladder.oneRm)
            .field("one_rm_change_half_width", ladder.oneRmChange);
        spanJson(json, "bend", ladder.bend);
        spanJson(json, "bend_of_change", ladder.bendChange);
        json.field("largest_step", ladder.flaws.largestStep)
            .field("great_step", ladder.flaws.greatStep)
            .field("cannot_show_a_bend", ladder.flaws.cannotBend);
        json.key("changes").array();
        for (const ChangeForecast& change : ladder.changes) {
            json.object()
                .field("load", kilograms(change.load))
                .field("half_width", change.halfWidth)
                .field("reading_half_width", change.reading);
            spanJson(json, "bend", change.bend);
            json.endObject();
        }
        json.endArray().endObject();
    }
    json.endArray();
}

void nextJson(Json& json, const PlanOut& out) {
    json.key("next_test").object();
    if (!*out.next) {
        json.field("reason", english(out.next->why().reason, out.plan.settings.unit)).endObject();
        return;
    }
    const NextTest& next = **out.next;
    json.field("steps", next.settings.steps)
        .field("by_one_rm", next.byOneRm)
        .field("scatter_sd", next.settings.scatter.s)
        .field("scatter_df", next.settings.scatter.df)
        .field("cap", next.cap)
        .field("one_rm_half_width_now", next.oneRmNow)
        .field("two_extremes_ratio", next.twoExtremesRatio);
    laddersJson(json, next);
    json.key("ceiling_curve").array();
    for (const CeilingPoint& point : next.curve)
        json.object()
            .field("ceiling", kilograms(point.ceiling.exact))
            .field("best", point.best)
            .field("even", point.even)
            .field("within_ceiling", point.withinCeiling)
            .endObject();
    json.endArray();
    const auto count = [&](std::string_view name, const std::optional<int>& value) {
        json.field(name, value);
    };
    json.key("settled").array();
    for (const questions::SettledAt& settled : out.settled) {
        json.object()
            .field("load", kilograms(settled.load))
            .field("smallest", settled.smallest.value)
            .field("chance_now", settled.repeats.chanceNow)
            .field("chance_held_now", settled.repeats.chanceHeldNow);
        count("later_tests", settled.repeats.changeLater);
        count("tests_on_each_side", settled.repeats.changeBoth);
        count("held_later_tests", settled.repeats.heldLater);
        count("held_tests_on_each_side", settled.repeats.heldBoth);
        json.endObject();
    }
    json.endArray().key("settled_one_rm");
    if (out.settledMax) {
        const Repeats& r = out.settledMax->repeats;
        json.object()
            .field("smallest", out.settledMax->smallest.value)
            .field("chance_now", r.chanceNow)
            .field("chance_held_now", r.chanceHeldNow);
        count("later_tests", r.changeLater);
        count("tests_on_each_side", r.changeBoth);
        count("held_later_tests", r.heldLater);
        count("held_tests_on_each_side", r.heldBoth);
        json.endObject();
    } else {
        json.null();
    }
    json.endObject();
}

} // namespace

void planJson(Json& json, const PlanOut& out) {
    const Profile& p = out.plan.profile;
    json.object()
        .field("athlete", out.athlete)
        .field("lift", out.lift)
        .field("date", dateKey(p.session.date, p.session.ordinal))
        .field("equipment", out.plan.settings.equipment.name)
        .field("level", p.level);
    json.key("one_rm");
    if (p.oneRm)
        json.object()
            .field("estimate", estimateToPlanWith(*p.oneRm))
            .ends("low", "high", toPlanWith(*p.oneRm))
            .field("calibrated", plansCalibrated(*p.oneRm))
            .endObject();
    else
        json.null();
    targetJson(json, out.plan);
    json.field("loss", out.plan.settings.lossPercent)
        .field("percent_with_mvt", out.plan.percentWithMvt);
    if (out.squad || out.published) {
        const Words name = out.relationName();
        json.field("relation",
                   english(name.empty() ? out.squad->why().reason : name, out.plan.settings.unit));
    }
    json.key("bars_left_out").array();
    for (const std::string& bar : out.barsLeftOut)
        json.value(bar);
    json.endArray().field("end", kilograms(out.plan.end.most));
    const auto related = out.related();
    json.key("loads").array();
    for (std::size_t i = 0; i < out.plan.loads.size(); ++i)
        loadJson(json, out, i, related);
    json.endArray();
    if (out.history)
        historyJson(json, out);
    if (out.next)
        nextJson(json, out);
    flowJson(json, out.plan);
    json.key("cautions").array();
    for (const Caution& each : out.plan.cautions)
        json.value(english(each.words, out.plan.settings.unit));
    if (const Words name = out.relationName(); !name.empty())
        json.value(english(relationCaution(name).words));
    json.endArray().endObject();
}

} // namespace slopebook::app
