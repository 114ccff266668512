// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/planout.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/answers/maxwords.h"
#include "core/answers/nexttestwords.h"
#include "core/answers/restrictedflow.h"

#include <algorithm>
#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

std::string shownMass(double kg, MassUnit unit) {
    const double value = unit == MassUnit::Pound ? kg * 1000 / gramsPerPound : kg;
    return loadText(std::round(value * 100) / 100);
}

std::string withUnit(double kg, MassUnit unit) {
    return shownMass(kg, unit) + " " + std::string(word(unit));
}

std::string aimText(const Plan& plan) {
    if (!plan.settings.target)
        return "Every load of the equipment.\n";
    const Target& t = *plan.settings.target;
    const bool percent = t.kind == Target::Kind::Percent;
    const auto figure = [&](double value) { return percent ? fixed(value, 0) : fixed(value, 2); };
    std::string text = "Aim: " + figure(t.from) + (t.from == t.to ? "" : " to " + figure(t.to)) +
                       (percent ? " % of the estimated 1RM" : " m/s");
    const MassUnit unit = plan.settings.unit;
    return text + ", " +
           (plan.aim->low == plan.aim->high
                ? withUnit(std::round(plan.aim->low * 10) / 10, unit)
                : shownMass(std::round(plan.aim->low * 10) / 10, unit) + " to " +
                      withUnit(std::round(plan.aim->high * 10) / 10, unit)) +
           "\n";
}

/// With an aim the loads for it and those beside it, else all.
std::vector<std::size_t> rowsOf(const Plan& plan) {
    std::vector<std::size_t> rows = plan.chosen;
    for (const auto& beside : {plan.below, plan.above})
        if (beside)
            rows.push_back(*beside);
    if (!plan.aim)
        for (std::size_t i = 0; i < plan.loads.size(); ++i)
            rows.push_back(i);
    std::ranges::sort(rows);
    rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
    return rows;
}

std::string loadsText(const PlanOut& out) {
    using Align = TextTable::Align;
    const Plan& plan = out.plan;
    TextTable table(
        std::vector<TextTable::Column>{{""},
                                       {"load (" + std::string(word(plan.settings.unit)) + ")"},
                                       {"put on", Align::Left},
                                       {"% of est. 1RM"},
                                       {out.published ? "% by published" : "% by squad"},
                                       {"fastest rep (m/s)"},
                                       {"stop at"}});
    const auto related = out.related();
    for (const std::size_t i : rowsOf(plan)) {
        const PlannedLoad& load = plan.loads[i];
        const bool chosen = std::ranges::find(plan.chosen, i) != plan.chosen.end();
        std::string percent, relation, speed = fixed(load.velocity, 2);
        if (load.percent)
            percent = fixed(*load.percent, 0);
        if (load.percentInterval)
            percent += " (" + interval(*load.percentInterval, 0) + ")";
        if (load.prediction && load.prediction->low > 0)
            speed += " (" + interval(*load.prediction, 2) + ")";
        else if (load.prediction)
            speed += " (up to " + fixed(load.prediction->high, 2) + ")";
        if (!related.empty()) {
            relation = fixed(related[i].percent, 0);
            if (related[i].interval)
                relation += " (" + interval(*related[i].interval, 0) + ")";
        }
        table.row({chosen ? "*" : "", shownMass(kilograms(load.built.exact), plan.settings.unit),
                   english(loadWords(load.built)), percent, relation, speed,
                   load.stop ? fixed(*load.stop, 2) : ""});
    }
    return table.text();
}

std::string bullets(const std::vector<Words>& items) {
    std::string text;
    for (const Words& item : items)
        text += "    - " + english(item) + "\n";
    return text;
}

std::string cautionsText(const PlanOut& out) {
    std::string text = "Cautions:\n";
    for (const Caution& caution : out.plan.cautions)
        text += "  - " + english(caution.words, out.plan.settings.unit) + "\n";
    if (const Words name = out.relationName(); !name.empty())
        text += "  - " + english(relationCaution(name).words) + "\n";
    if (!out.plan.restrictedFlow)
        return text;
    const auto& flow = restrictedFlowText();
    return text + "Restricted-flow training:\n  " + english(flow.leading) +
           "\n  Not without medical clearance with:\n" + bullets(flow.screening) +
           "  Stop and deflate at once for:\n" + bullets(flow.stopAtOnce) +
           "  To medical care for:\n" + bullets(flow.afterwards) + "  Usual practice:\n" +
           bullets(flow.usualPractice) + "  " + english(flow.source) + "\n";
}

std::string historyText(const PlanOut& out) {
    const auto& history = *out.history;
    if (!history)
        return "Borrowing from the history: " +
               english(history.why().reason, out.plan.settings.unit) + "\n";
    const MassUnit unit = out.plan.settings.unit;
    std::string text = english(asSentence(borrowedWords(*history, out.plan.profile)), unit) + "\n";
    if (const BorrowedLine* line = history->of(out.plan.profile.session.session))
        text += "  line " + fixed(line->line.intercept, 3) + " " +
                signedFixed(line->line.slope, 5) +
                " m/s per kg (random intercept and slope, REML)\n";
    return text;
}

std::string nextText(const PlanOut& out) {
    const auto& next = *out.next;
    if (!next)
        return "Next test: " + english(next.why().reason, out.plan.settings.unit) + "\n";
    using Align = TextTable::Align;
    const MassUnit unit = out.plan.settings.unit;
    const double per = unit == MassUnit::Pound ? 1000 / gramsPerPound : 1;
    std::vector<TextTable::Column> columns{{"ladder", Align::Left},
                                           {"loads (" + std::string(word(unit)) + ")", Align::Left},
                                           {"1RM +/-"}};
    for (const Mass load : next->settings.checkLoads)
        columns.push_back({"at " + withUnit(kilograms(load), unit) + " +/-"});
    columns.push_back({"beware", Align::Left});
    TextTable table(columns);
    for (const LadderForecast& ladder : next->ladders) {
        std::string loads;
        for (const BuiltLoad& load : ladder.loads)
            loads += (loads.empty() ? "" : " ") + shownMass(kilograms(load.exact), unit);
        std::vector<std::string> row{english(ladderWords(ladder.kind)), loads,
                                     ladder.oneRm ? fixed(*ladder.oneRm * per, 1) : "unbounded"};
        for (const ChangeForecast& change : ladder.changes)
            row.push_back(fixed(change.reading, 3));
        row.resize(columns.size() - 1);
        row.push_back(english(flawsWords(ladder.flaws, next->byOneRm)));
        table.row(row);
    }
    std::string text = "Next test, " + std::to_string(next->settings.steps) +
                       " steps (expected half-widths; loads up to " +
                       withUnit(std::round(next->cap * 10) / 10, unit) + "):\n" + table.text();
    if (const LadderFlaws& flaws = next->ladders.front().flaws; flaws.any())
        text += "Beware of the first ladder: " + english(flawsWords(flaws, next->byOneRm)) +
                "; no ladder without that was found under these settings\n";
    if (next->twoExtremesRatio)
        text += "Two extremes against the first ladder: " + fixed(*next->twoExtremesRatio, 2) +
                " times the half-width\n";
    TextTable curve(std::vector<TextTable::Column>{
        {"ceiling (" + std::string(word(unit)) + ")"}, {"best"}, {"even steps"}});
    for (const CeilingPoint& point : next->curve) {
        const auto figure = [&](const std::optional<double>& value) {
            return !value          ? std::string("unbounded")
                   : next->byOneRm ? fixed(*value * per, 1)
                                   : fixed(*value, 3);
        };
        curve.row(
            {shownMass(kilograms(point.ceiling.exact), unit) + (point.withinCeiling ? "" : " *"),
             figure(point.best), figure(point.even)});
    }
    text += "What a ceiling costs (* above today's):\n" + curve.text();
    if (const Words shows = canShowWords(next->ladders.front(), next->byOneRm); !shows.empty())
        text += "  " + english(asSentence(shows), unit) + "\n";
    for (const auto& settled : out.settled)
        text += "  " + english(asSentence(questions::settledWords(settled)), unit) + "\n";
    if (out.settledMax)
        text += "  " + english(asSentence(questions::settledWords(*out.settledMax)), unit) + "\n";
    return text;
}

} // namespace

Words PlanOut::relationName() const {
    if (published)
        return nameOf(*published);
    return squad && *squad ? (*squad)->name() : Words();
}

std::vector<RelatedLoad> PlanOut::related() const {
    if (published)
        return relatedLoads(plan, *published);
    return squad && *squad ? relatedLoads(plan, **squad) : std::vector<RelatedLoad>();
}

std::string planText(const PlanOut& out) {
    const Profile& p = out.plan.profile;
    const MassUnit unit = out.plan.settings.unit;
    std::string text = out.athlete + ", " + out.lift + ": plan from " +
                       dateKey(p.session.date, p.session.ordinal) + ", equipment " +
                       out.plan.settings.equipment.name + "\n";
    if (const Words with = planWithWords(p); !with.empty())
        text += english(asSentence(with), unit) + "\n";
    for (const std::string& bar : out.barsLeftOut)
        text += "Left out, for it does not go with this lift: " + bar + " (--on \"" + bar +
                "\" takes it)\n";
    text += aimText(out.plan) + loadsText(out);
    if (out.squad && !*out.squad)
        text += "Relation: " + english(out.squad->why().reason, unit) + "\n";
    if (out.history)
        text += historyText(out);
    if (out.next)
        text += nextText(out);
    return text + cautionsText(out);
}

} // namespace slopebook::app
