// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook add, change, remove: lift, and its minimal-velocity threshold (mvt).
#include "app/commands/commands.h"
#include "app/commands/editing.h"
#include "core/answers/published.h"
#include "core/exchange/cells.h"
#include "core/model/errors.h"

namespace slopebook::app {

namespace liftediting {
namespace {

struct LiftOptions : Editing {
    std::string name;
    std::optional<std::string> rename, kind, rule, ballistic, movesBody, value, sd, source,
        smallestVelocity, smallestOneRm, note;
};

constexpr const char* speedExpected = "a speed in m/s above 0 and under 2, such as 0.17";

std::optional<double> figureOrNone(const std::string& text, double above, double below,
                                   const char* expected) {
    return text == "none" ? std::nullopt : std::optional(numberTyped(text, above, below, expected));
}

/// What was typed, in place of what the lift says so far.
Lift typed(const LiftOptions& options, Lift lift) {
    if (options.kind)
        lift.kind = *velocityKindFromWord(*options.kind);
    if (options.rule)
        lift.rule = *pointRuleFromWord(*options.rule);
    if (options.ballistic)
        lift.ballistic = *options.ballistic == "yes";
    if (options.movesBody)
        lift.movesBody = *options.movesBody == "yes";
    if (options.smallestVelocity)
        lift.smallestVelocity = figureOrNone(*options.smallestVelocity, 0, 2, speedExpected);
    if (options.smallestOneRm)
        lift.smallestOneRm =
            options.smallestOneRm == "none"
                ? std::nullopt
                : std::optional(kilograms(massTyped(*options.smallestOneRm, options.unit(),
                                                    "the smallest change of the 1RM")));
    if (options.note)
        lift.note = *options.note;
    return lift;
}

/// What is not typed stays as it was.
Mvt typedMvt(const LiftOptions& options, const std::optional<Mvt>& before = {}) {
    Mvt mvt = before.value_or(Mvt{.origin = Mvt::Origin::Coach, .source = {}});
    mvt.value = numberTyped(*options.value, 0, 2, speedExpected);
    if (options.sd)
        mvt.sd = figureOrNone(*options.sd, 0, 1, "a spread in m/s above 0, such as 0.03, or none");
    if (options.source)
        mvt.source = *options.source;
    if (before && mvt != *before)
        mvt.origin = Mvt::Origin::Coach;
    return mvt;
}

/// Another value is not what the published source says.
void requireOwnSource(const LiftOptions& options, const Lift& lift, const Mvt& typed) {
    if (lift.mvt->origin != Mvt::Origin::Published || typed.value == lift.mvt->value ||
        (options.source && (options.sd || !lift.mvt->sd)))
        return;
    throw BadInput(
        asIs("a new value for \"" + lift.name +
             "\", whose threshold is a published one with its SD and source"),
        asIs("--source and --sd of the new value as well (--sd none where it has none)"));
}

ThingJson shown(const Lift& lift) {
    return [lift](Json& json) { liftJson(json, lift); };
}

Edited changed(log::Log& log, const Stored<LiftId, Lift>& before, const Lift& after,
               const char* did, const char* what) {
    const bool same = after == before.value;
    if (!same)
        log.change(before.id, after);
    return {.did = did,
            .what = what,
            .name = after.name,
            .before = shown(before.value),
            .after = shown(after),
            .same = same};
}

Edited addLift(log::Log& log, const LiftOptions& options) {
    Lift lift = typed(options, {.name = nameTyped(options.name)});
    if (options.value)
        lift.mvt = typedMvt(options);
    else if (const auto row = answers::published(lift.name, lift.kind); row && !lift.ballistic)
        lift.mvt = row->mvt;
    log.add(lift);
    return {.did = "add", .what = "lift", .name = lift.name, .after = shown(lift)};
}

Edited changeLift(log::Log& log, const LiftOptions& options) {
    const auto before = liftNamed(log, options.name);
    Lift after = typed(options, before.value);
    if (options.rename)
        after.name = nameTyped(*options.rename);
    return changed(log, before, after, "change", "lift");
}

Edited removeLift(log::Log& log, const LiftOptions& options) {
    const auto before = liftNamed(log, options.name);
    log.remove(before.id);
    return {
        .did = "remove", .what = "lift", .name = before.value.name, .before = shown(before.value)};
}

Edited addMvt(log::Log& log, const LiftOptions& options) {
    const auto before = liftNamed(log, options.name);
    if (before.value.mvt)
        throw BadInput(asIs("\"" + before.value.name + "\", which has a threshold"),
                       asIs("a lift without one, or change mvt"));
    Lift after = before.value;
    after.mvt = typedMvt(options);
    return changed(log, before, after, "add", "mvt");
}

Edited changeMvt(log::Log& log, const LiftOptions& options) {
    const auto before = liftNamed(log, options.name);
    if (!before.value.mvt)
        throw BadInput(asIs("\"" + before.value.name + "\", which has no threshold"),
                       asIs("a lift with one, or add mvt"));
    Lift after = before.value;
    after.mvt = typedMvt(options, before.value.mvt);
    requireOwnSource(options, before.value, *after.mvt);
    return changed(log, before, after, "change", "mvt");
}

Edited removeMvt(log::Log& log, const LiftOptions& options) {
    const auto before = liftNamed(log, options.name);
    Lift after = before.value;
    after.mvt.reset();
    return changed(log, before, after, "remove", "mvt");
}

using Work = Edited (*)(log::Log&, const LiftOptions&);

struct Command {
    CLI::App* app;
    std::shared_ptr<LiftOptions> options;
};

Command addOne(CLI::App& verb, const char* what, const char* help, Work work, int& exit) {
    const auto options = std::make_shared<LiftOptions>();
    auto* command = verb.add_subcommand(what, help);
    addEditing(*command, *options, std::string(what) == "lift");
    command->add_option("--lift", options->name, "The lift's name")->required();
    command->callback([options, work, &exit] {
        exit = runEdit(*options, [&](log::Log& log) { return work(log, *options); });
    });
    return {command, options};
}

void addFields(const Command& command) {
    LiftOptions& to = *command.options;
    const CLI::IsMember yesNo({"yes", "no"});
    command.app->add_option("--velocity-kind", to.kind, "mean, propulsive or peak")
        ->check(CLI::IsMember({"mean", "propulsive", "peak"}));
    command.app->add_option("--point-rule", to.rule, "Which reps make a set's point: fastest, mean")
        ->check(CLI::IsMember({"fastest", "mean"}));
    command.app->add_option("--ballistic", to.ballistic, "yes: thrown or jumped, without a 1RM")
        ->check(yesNo);
    command.app
        ->add_option("--moves-body", to.movesBody,
                     "yes: the load of its line is the load and the body mass")
        ->check(yesNo);
    command.app->add_option("--smallest-velocity", to.smallestVelocity,
                            "Smallest change of speed that matters in m/s; none: as published");
    command.app->add_option("--smallest-one-rm", to.smallestOneRm,
                            "Smallest change of the 1RM that matters; none: as published");
    command.app->add_option("--note", to.note, "A note");
}

void addThreshold(const Command& command, const char* option, bool needed) {
    LiftOptions& to = *command.options;
    auto* value = command.app->add_option(option, to.value,
                                          "The threshold in m/s: the speed of a 1RM, such as 0.52");
    value->required(needed);
    command.app
        ->add_option("--sd", to.sd,
                     "Its standard deviation between people in m/s; none: it has none")
        ->needs(value);
    command.app->add_option("--source", to.source, "Where it comes from")->needs(value);
}

} // namespace
} // namespace liftediting

void addLiftEdits(const Verbs& verbs, int& exit) {
    using namespace liftediting;
    const Command adding = addOne(
        verbs.add, "lift",
        "A new lift, with the published threshold of its name where there is one", &addLift, exit);
    addFields(adding);
    addThreshold(adding, "--mvt", false);
    const Command changing =
        addOne(verbs.change, "lift", "How a lift is measured, or its name", &changeLift, exit);
    addFields(changing);
    changing.app->add_option("--rename", changing.options->rename, "The new name");
    addOne(verbs.remove, "lift", "Away with a lift that no set is of", &removeLift, exit);
    addThreshold(addOne(verbs.add, "mvt", "A threshold of a lift that has none", &addMvt, exit),
                 "--value", true);
    addThreshold(
        addOne(verbs.change, "mvt", "Another threshold of a lift that has one", &changeMvt, exit),
        "--value", true);
    addOne(verbs.remove, "mvt", "Away with a lift's threshold", &removeMvt, exit);
}

} // namespace slopebook::app
