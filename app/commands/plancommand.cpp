// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "app/commands/planout.h"
#include "core/answers/barfit.h"
#include "core/exchange/cells.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"

#include <chrono>
#include <ctime>
#include <memory>

namespace slopebook::app {

namespace {

struct PlanOptions : About {
    std::string session, percent, velocity, loss, equipment, bar, plates, fixed, ceiling;
    std::string side = "nearest";
    std::string relation, onBar, day;
    std::filesystem::path pdf;
    Outputs outputs;
    int nextTest = 0, sets = 3, reps = 0;
    bool restrictedFlow = false, history = false;
};

/// "70" or "65-75".
answers::Target targetFrom(const std::string& text, answers::Target::Kind kind) {
    const auto dash = text.find('-', 1);
    const auto from = exchange::readNumber(text.substr(0, dash));
    const auto to = dash == std::string::npos ? from : exchange::readNumber(text.substr(dash + 1));
    if (!from || !to)
        throw BadInput(asIs("\"" + text + "\""), asIs("a number, or a window such as 65-75"));
    return {kind, *from, *to};
}

MassUnit planUnit(const PlanOptions& options) {
    return options.pounds ? MassUnit::Pound : MassUnit::Kilogram;
}

ExactMass massFrom(const std::string& text, MassUnit unit, const std::string& what) {
    const auto mass = parseExactMass(text, unit);
    if (!mass || mass->units <= 0)
        throw BadInput(asIs("\"" + text + "\""), asIs(what + " in " + std::string(word(unit)) +
                                                      " with a decimal point, such as 20 or 62.5"));
    return *mass;
}

/// "26,30": masses that stand on their own.
std::vector<FixedMass> fixedFrom(const std::string& text, MassUnit unit) {
    std::vector<FixedMass> all;
    for (std::size_t from = 0; from < text.size();) {
        const auto comma = std::min(text.find(',', from), text.size());
        all.push_back({.name = "mass",
                       .mass = massFrom(text.substr(from, comma - from), unit, "masses"),
                       .unit = unit});
        from = comma + 1;
    }
    return all;
}

Equipment equipmentFrom(const PlanOptions& options, const log::Log& log) {
    const MassUnit unit = planUnit(options);
    if (!options.bar.empty() || !options.fixed.empty()) {
        Equipment typed{.name = "as given"};
        if (!options.bar.empty())
            typed.bars = {
                {.name = "bar", .mass = massFrom(options.bar, unit, "a bar"), .unit = unit}};
        typed.plates = parsePlates(options.plates, unit);
        typed.fixed = fixedFrom(options.fixed, unit);
        validate(typed);
        return typed;
    }
    const auto known = log.equipment();
    std::string names;
    for (const auto& each : known) {
        if (each.value.name == options.equipment ||
            (options.equipment.empty() && known.size() == 1))
            return each.value;
        names += (names.empty() ? "" : ", ") + each.value.name;
    }
    throw BadInput(asIs(options.equipment.empty() ? "no set of equipment"
                                                  : "the equipment \"" + options.equipment + "\""),
                   asIs(known.empty()
                            ? "--bar and --plates: this log holds no set of equipment yet"
                            : "--bar and --plates, or --equipment with one of: " + names));
}

/// The set with the bar of that name alone; where none is named, with those that go with the lift.
Equipment onNamedBar(const Equipment& equipment, const std::string& name, const log::Log& log,
                     const Lift& lift, std::vector<std::string>& leftOut) {
    std::string names;
    for (std::size_t i = 0; i < equipment.bars.size(); ++i) {
        if (equipment.bars[i].name == name)
            return answers::onBar(equipment, i);
        names += (names.empty() ? "" : ", ") + equipment.bars[i].name;
    }
    if (name.empty()) {
        std::vector<std::string> lifts;
        for (const auto& each : log.lifts())
            lifts.push_back(each.value.name);
        std::vector<answers::BarFit> others;
        auto fitting = answers::onFittingBars(equipment, lift.name, lifts, &others);
        for (const answers::BarFit& each : others)
            leftOut.push_back(equipment.bars[each.bar].name);
        return fitting;
    }
    throw BadInput(asIs("the bar \"" + name + "\""), asIs("one of: " + names));
}

answers::Side sideFrom(const std::string& text) {
    if (text == "below")
        return answers::Side::Below;
    return text == "above" ? answers::Side::Above : answers::Side::Nearest;
}

answers::PlanSettings settingsFrom(const PlanOptions& options, const log::Log& log,
                                   const questions::Background& about, const LiftSession& session,
                                   const questions::PlanDay& day,
                                   std::vector<std::string>& leftOut) {
    auto settings = questions::planSettings(
        questions::liftContext(log, about.lift.id), about, session,
        onNamedBar(equipmentFrom(options, log), options.onBar, log, about.lift.value, leftOut));
    settings.bounds = day.bounds;
    if (!options.percent.empty())
        settings.target = targetFrom(options.percent, answers::Target::Kind::Percent);
    else if (!options.velocity.empty())
        settings.target = targetFrom(options.velocity, answers::Target::Kind::Velocity);
    if (!options.loss.empty()) {
        settings.lossPercent = exchange::readNumber(options.loss);
        if (!settings.lossPercent)
            throw BadInput(asIs("\"" + options.loss + "\""),
                           asIs("a velocity loss in %, such as 20"));
    }
    if (!options.ceiling.empty())
        settings.ceiling = massFrom(options.ceiling, planUnit(options), "a ceiling");
    settings.side = sideFrom(options.side);
    settings.restrictedFlow = options.restrictedFlow;
    settings.unit = planUnit(options);
    return settings;
}

/// What was asked for beside the loads. A part without an answer says so and does not end it all.
void addParts(PlanOut& out, const PlanOptions& options, const log::Log& log,
              const questions::Background& about) {
    if (options.relation == "squad") {
        out.squad =
            answers::squadRelation(about.lift.value, log.liftSessions({.lift = about.lift.id}));
    } else if (options.relation == "published") {
        out.published = answers::publishedRelation(about.lift.value.name, about.lift.value.kind);
        if (!out.published)
            out.squad = NoAnswer{NoAnswer::Why::Other,
                                 asIs("no published equation is known for this lift and velocity "
                                      "kind")};
    }
    if (options.history)
        out.history = answers::borrow(about.lift.value, about.mvt, about.sessions,
                                      out.plan.profile.session.session);
    if (options.nextTest > 0) {
        const questions::LiftContext context = questions::liftContext(log, about.lift.id);
        auto settings = questions::nextTestSettings(context, about, out.plan.profile.session,
                                                    out.plan.settings.equipment);
        settings.ceiling = out.plan.settings.ceiling;
        settings.bounds = out.plan.settings.bounds;
        settings.steps = options.nextTest;
        out.next = answers::nextTest(out.plan.profile, settings);
        if (*out.next)
            out.settled = questions::settledAt(context, about, out.plan.profile, **out.next,
                                               (*out.next)->ladders.front());
        if (*out.next)
            out.settledMax = questions::settledMax(context, about, out.plan.profile, **out.next,
                                                   (*out.next)->ladders.front());
    }
}

int runPlan(const PlanOptions& options, const Pages& pages) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    questions::Background about = background(log, options);
    Answer<LiftSession> session = NoAnswer{
        NoAnswer::Why::NoSuchSession,
        asIs(about.athlete.value.name + " has no session of " + about.lift.value.name + ".")};
    if (!options.session.empty())
        session = questions::sessionAt(about.sessions, options.session);
    else if (!about.sessions.empty())
        session = about.sessions.back();
    if (!session)
        return sayNoAnswer(options, session.why(), planUnit(options));
    about = questions::within(questions::liftContext(log, about.lift.id), std::move(about),
                              session->conditions.device);
    const auto profile = questions::profileOf(about, *session);
    if (!profile)
        return sayNoAnswer(options, profile.why(), planUnit(options));
    const questions::PlanDay day =
        questions::planDay(log, about, *session, dayOrToday(options.day));
    if (day.notPossible)
        return sayNoAnswer(options, *day.notPossible, planUnit(options));
    std::vector<std::string> leftOut;
    const auto plan = answers::plan(about.lift.value, *profile,
                                    settingsFrom(options, log, about, *session, day, leftOut));
    if (!plan)
        return sayNoAnswer(options, plan.why(), planUnit(options));
    PlanOut out{.athlete = about.athlete.value.name,
                .lift = about.lift.value.name,
                .plan = *plan,
                .barsLeftOut = std::move(leftOut)};
    addParts(out, options, log, about);
    if (!options.pdf.empty()) {
        if (out.plan.chosen.empty())
            throw BadInput(asIs("no aim"),
                           asIs("--percent or --velocity: a card is printed for chosen loads"));
        pages.card(out, options.sets, options.reps, options.outputs.to(options.pdf));
    }
    if (!options.outputs.textToo())
        return exitDone;
    if (options.json) {
        Json json;
        planJson(json, out);
        print(json.text());
    } else {
        print(planText(out));
    }
    return exitDone;
}

} // namespace

void addPlan(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand("plan", "Loads from the plates at hand, and the next test");
    const auto options = std::make_shared<PlanOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--session", options->session,
                        "Day of the session whose line is used; the latest where left out");
    auto* percent = command->add_option("--percent", options->percent,
                                        "Aim: % of the estimated 1RM, 70 or a window 65-75");
    command
        ->add_option("--velocity", options->velocity,
                     "Aim: speed of the fastest rep in m/s, 0.6 or a window 0.7-0.6")
        ->excludes(percent);
    command->add_option("--loss", options->loss,
                        "End a set after losing this % of the fastest rep");
    auto* equipment =
        command->add_option("--equipment", options->equipment, "A set of equipment of the log");
    auto* bar = command->add_option("--bar", options->bar, "Mass of the bar")->excludes(equipment);
    command->add_option("--plates", options->plates, "Mass of one plate x pairs: 20x2,10x2,2.5x1")
        ->needs(bar);
    command->add_option("--fixed", options->fixed, "Masses that stand on their own: 26,30")
        ->excludes(equipment);
    command->add_option("--on", options->onBar,
                        "The bar of the equipment that is lifted, by name; those that go with "
                        "the lift where left out");
    command->add_option("--day", options->day,
                        "The day that is planned for, whose block may hold a ceiling; today where "
                        "left out");
    command->add_option("--ceiling", options->ceiling, "The heaviest load that may be used");
    command->add_option("--side", options->side, "Which load beside the aim")
        ->check(CLI::IsMember({"nearest", "below", "above"}));
    command->add_flag("--lb", options->pounds,
                      "Masses of this command are pounds, and loads are shown in pounds");
    command->add_flag("--restricted-flow", options->restrictedFlow,
                      "The load window of restricted-flow work, with its cautions");
    command
        ->add_option("--relation", options->relation,
                     "Shares of the 1RM by a relation of other people as well")
        ->check(CLI::IsMember({"squad", "published"}));
    command->add_flag("--history", options->history,
                      "The line that borrows from the athlete's own history, beside");
    command->add_option("--next-test", options->nextTest, "Rank ladders of so many steps, 2 to 8")
        ->check(CLI::Range(2, 8));
    options->outputs.addFile(*command, "--pdf", options->pdf,
                             "Writes the card for the bar to this file");
    command->add_option("--sets", options->sets, "Sets on the card")->check(CLI::Range(1, 20));
    command->add_option("--reps", options->reps, "Reps a set on the card; 0: until the stop speed")
        ->check(CLI::Range(0, 50));
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit, &pages] { exit = runPlan(*options, pages); });
}

} // namespace slopebook::app
