// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/planout.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
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
                   describe(load.built), percent, relation, speed,
                   load.stop ? fixed(*load.stop, 2) : ""});
    }
    return table.text();
}

std::string bulleted(const std::vector<std::string_view>& items) {
    std::string text;
    for (const std::string_view item : items)
        text += "    - " + std::string(item) + "\n";
    return text;
}

std::string cautionsText(const PlanOut& out) {
    std::string text = "Cautions:\n";
    for (const Caution& caution : out.plan.cautions)
        text += "  - " + caution.text + "\n";
    if (const std::string name = out.relationName(); !name.empty())
        text += "  - " + relationCaution(name).text + "\n";
    if (!out.plan.restrictedFlow)
        return text;
    const auto& flow = restrictedFlowText();
    return text + "Restricted-flow training:\n  " + std::string(flow.leading) +
           "\n  Not without medical clearance with:\n" + bulleted(flow.screening) +
           "  Stop and deflate at once for:\n" + bulleted(flow.stopAtOnce) +
           "  To medical care for:\n" + bulleted(flow.afterwards) + "  Usual practice:\n" +
           bulleted(flow.usualPractice) + "  " + std::string(flow.source) + "\n";
}

std::string historyText(const PlanOut& out) {
    const auto& history = *out.history;
    if (!history)
        return "Borrowing from the history: " +
               english(history.why().reason, out.plan.settings.unit) + "\n";
    const MassUnit unit = out.plan.settings.unit;
    std::string text = "Borrowing from " + counted(history->model.groups, "session") +
                       " of the athlete's own (random intercept and slope, REML):\n";
    const BorrowedLine* line = history->of(out.plan.profile.session.session);
    if (!line)
        return text;
    text += "  line " + fixed(line->line.intercept, 3) + " " + signedFixed(line->line.slope, 5) +
            " m/s per kg";
    if (!line->oneRm)
        return text + "; no 1RM: " + english(line->oneRm.why().reason, unit) + "\n";
    text += "; estimated 1RM " + withUnit(std::round(line->oneRm->estimate * 10) / 10, unit);
    if (const auto& held = line->oneRm->interval)
        text += " (" + shownMass(std::round(held->low * 10) / 10, unit) + " to " +
                shownMass(std::round(held->high * 10) / 10, unit) + ")";
    if (out.plan.profile.oneRm)
        text += "; the session's own " +
                withUnit(std::round(out.plan.profile.oneRm->estimate * 10) / 10, unit);
    return text + "\n";
}

std::string ladderName(LadderForecast::Kind kind) {
    switch (kind) {
    case LadderForecast::Kind::BestForOneRm:
        return "best for the 1RM";
    case LadderForecast::Kind::BestForChange:
        return "best for the check loads";
    case LadderForecast::Kind::TwoExtremes:
        return "two extremes";
    case LadderForecast::Kind::SameAsLast:
        return "as last time";
    case LadderForecast::Kind::Even:
        return "even steps";
    case LadderForecast::Kind::BestInSteps:
        return "best without a great step";
    }
    return {};
}

std::string settledText(const ui::SettledAt& settled, MassUnit unit) {
    const Repeats& r = settled.repeats;
    std::string text = "  " + withUnit(kilograms(settled.load), unit) + ": a true change of " +
                       fixed(settled.smallest.value, 3) + " m/s is read as one with a chance of " +
                       fixed(100 * r.chanceNow, 0) + " %; 80 % ";
    if (r.changeLater)
        text += "with " + counted(*r.changeLater, "later test");
    else if (r.changeBoth)
        text += "with " + counted(*r.changeBoth, "test") +
                " on each side (the earlier one was done once)";
    else
        text += "not even with 20 tests on each side";
    return text + "\n";
}

std::string settledText(const ui::SettledMax& settled, MassUnit unit) {
    const Repeats& r = settled.repeats;
    return "  estimated 1RM: a true change of " +
           withUnit(std::round(settled.smallest.value * 10) / 10, unit) +
           " is read as one with a chance of " + fixed(100 * r.chanceNow, 0) +
           " %, none as held with " + fixed(100 * r.chanceHeldNow, 0) + " %" +
           (r.changeBoth ? "; 80 % with " + counted(*r.changeBoth, "test") + " on each side"
                         : "; not even 20 tests on each side make it 80 %") +
           "\n";
}

/// What the last test and this ladder can show of a change before it is done.
std::string showsText(const LadderForecast& ladder, bool byOneRm, MassUnit unit) {
    const double per = unit == MassUnit::Pound ? 1000 / gramsPerPound : 1;
    std::string text;
    for (const ChangeForecast& change : ladder.changes) {
        text += "  at " + withUnit(kilograms(change.load), unit) + " changes from " +
                fixed(change.reading, 3) + " m/s up";
        if (const double span = change.bend.high - change.bend.low; span >= 0.0005)
            text += ", of which the bend takes " + fixed(span / 2, 3);
        text += "\n";
    }
    if (ladder.oneRmChange) {
        text += "  of the estimated 1RM changes from " + fixed(*ladder.oneRmChange * per, 1) + " " +
                std::string(word(unit)) + " up";
        if (const double span = (ladder.bendChange.high - ladder.bendChange.low) * per;
            span >= 0.05)
            text += ", of which the bend takes " + fixed(span / 2, 1) +
                    " (the same loads both times: none)";
        text += "\n";
    } else if (byOneRm) {
        text += "  of the estimated 1RM none: it cannot be bounded\n";
    }
    return text.empty() ? text : "What the last test and the first ladder can show:\n" + text;
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
        std::vector<std::string> row{ladderName(ladder.kind), loads,
                                     ladder.oneRm ? fixed(*ladder.oneRm * per, 1) : "unbounded"};
        for (const ChangeForecast& change : ladder.changes)
            row.push_back(fixed(change.reading, 3));
        row.resize(columns.size() - 1);
        row.push_back(flawsText(ladder.flaws, next->byOneRm));
        table.row(row);
    }
    std::string text = "Next test, " + std::to_string(next->settings.steps) +
                       " steps (expected half-widths; loads up to " +
                       withUnit(std::round(next->cap * 10) / 10, unit) + "):\n" + table.text();
    if (const LadderFlaws& flaws = next->ladders.front().flaws; flaws.any())
        text += "Beware of the first ladder: " + flawsText(flaws, next->byOneRm) +
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
    text += showsText(next->ladders.front(), next->byOneRm, unit);
    for (const auto& settled : out.settled)
        text += settledText(settled, unit);
    if (out.settledMax)
        text += settledText(*out.settledMax, unit);
    return text;
}

} // namespace

std::string PlanOut::relationName() const {
    if (published)
        return "the published equation (" + answers::cited(std::string(published->source)) + ")";
    return squad && *squad ? (*squad)->name() : std::string();
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
    if (p.oneRm) {
        const auto ends = [&](const stats::Interval& held) {
            return shownMass(std::round(held.low * 10) / 10, unit) + " to " +
                   shownMass(std::round(held.high * 10) / 10, unit);
        };
        text += "Estimated 1RM " + withUnit(std::round(p.oneRm->estimate * 10) / 10, unit);
        if (p.oneRm->calibrated)
            text += ", calibrated by the log's own maxima " +
                    withUnit(std::round(*p.oneRm->calibrated * 10) / 10, unit);
        if (const auto& held = toPlanWith(*p.oneRm)) {
            text += " (" + ends(*held);
            if (!p.oneRm->toPlan)
                text += p.oneRm->withMvt ? ", with the MVT's own SD" : ", of the line alone";
            else if (p.oneRm->straight && !p.oneRm->calibrated)
                text += " to plan with; " + ends(*p.oneRm->straight) + " as if straight";
            else
                text += " to plan with";
            text += ")";
        }
        text += "\n";
    }
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
