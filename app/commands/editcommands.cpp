// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook add, change, remove; exclude, include.
#include "app/commands/commands.h"
#include "app/commands/editing.h"
#include "core/model/errors.h"

#include <algorithm>

namespace slopebook::app {

namespace {

struct ExcludeOptions : Editing {
    std::string athlete, lift, session, reason;
    int set = 0, rep = 0; ///< rep 0: the whole set
};

log::PlacedSet setMeant(const log::Log& log, const ExcludeOptions& options,
                        const LiftSession& session) {
    std::string numbers;
    for (const log::PlacedSet& placed : log.sets(session.session, session.lift)) {
        if (placed.ordinal == options.set)
            return placed;
        numbers += (numbers.empty() ? "" : ", ") + std::to_string(placed.ordinal);
    }
    throw BadInput(asIs("set " + std::to_string(options.set)), asIs("one of: " + numbers));
}

/// What is named, by the names that the log has for it.
struct Meant {
    std::string athlete, lift;
    LiftSession session;
};

Meant meant(const log::Log& log, const ExcludeOptions& options) {
    const auto athlete = athleteNamed(log, options.athlete);
    const auto lift = liftNamed(log, options.lift);
    const auto sessions = log.liftSessions({.athlete = athlete.id, .lift = lift.id});
    const auto found = questions::sessionAt(sessions, options.session);
    if (!found)
        throw BadInput(asIs("the session " + options.session), found.why().reason);
    return {athlete.value.name, lift.value.name, *found};
}

ThingJson shown(const Meant& of, const log::PlacedSet& placed) {
    return [=](Json& json) {
        json.object()
            .field("athlete", of.athlete)
            .field("lift", of.lift)
            .field("date", dateKey(of.session.date, of.session.ordinal))
            .field("set", placed.ordinal)
            .field("load", kilograms(placed.set.load))
            .field("excluded", placed.set.excluded);
        json.key("reps").array();
        for (const Rep& rep : placed.set.reps)
            json.object()
                .field("velocity", rep.velocity)
                .field("excluded", rep.excluded)
                .endObject();
        json.endArray().endObject();
    };
}

/// reason empty: it counts again.
Edited setReason(log::Log& log, const ExcludeOptions& options, const std::string& did) {
    const Meant of = meant(log, options);
    const log::PlacedSet before = setMeant(log, options, of.session);
    log::PlacedSet after = before;
    if (options.rep > static_cast<int>(before.set.reps.size()))
        throw BadInput(asIs("rep " + std::to_string(options.rep)),
                       asIs("a rep from 1 to " + std::to_string(before.set.reps.size())));
    if (options.rep > 0)
        after.set.reps[static_cast<std::size_t>(options.rep) - 1].excluded = options.reason;
    else
        after.set.excluded = options.reason;
    const bool same = after == before;
    if (!same)
        log.change(before.id, after.set);
    std::string name = of.athlete + ", " + of.lift + ", " +
                       dateKey(of.session.date, of.session.ordinal) + ", set " +
                       std::to_string(options.set);
    if (options.rep > 0)
        name += ", rep " + std::to_string(options.rep);
    return {.did = did,
            .what = options.rep > 0 ? "rep" : "set",
            .name = name,
            .before = shown(of, before),
            .after = shown(of, after),
            .same = same};
}

void addExclusion(CLI::App& app, const char* did, const char* help, bool reason, int& exit) {
    auto* command = app.add_subcommand(did, help);
    const auto options = std::make_shared<ExcludeOptions>();
    addEditing(*command, *options);
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command
        ->add_option("--session", options->session,
                     "Day of the session, 2026-03-14 or 2026-03-14#2")
        ->required();
    command->add_option("--set", options->set, "The set's number in that session and lift")
        ->required()
        ->check(CLI::PositiveNumber);
    command->add_option("--rep", options->rep, "One rep of it; the whole set where left out")
        ->check(CLI::PositiveNumber);
    if (reason)
        command->add_option("--reason", options->reason, "Why it does not count")->required();
    command->callback([options, reason, did = std::string(did), &exit] {
        if (reason && options->reason.find_first_not_of(" \t") == std::string::npos)
            throw BadInput(asIs("no reason"), asIs("why it does not count"));
        exit = runEdit(*options, [&](log::Log& log) { return setReason(log, *options, did); });
    });
}

CLI::App& addVerb(CLI::App& app, const char* name, const char* help) {
    auto* verb = app.add_subcommand(name, help);
    verb->require_subcommand(1);
    return *verb;
}

} // namespace

void addEdits(CLI::App& app, int& exit) {
    const Verbs verbs{
        addVerb(app, "add", "A new athlete, device, block, lift, threshold or check load"),
        addVerb(app, "change", "An athlete, device, block, lift, threshold or check load"),
        addVerb(app, "remove",
                "Away with an athlete, device, block, lift, threshold or check load")};
    addPeopleEdits(verbs, exit);
    addBlockEdits(verbs, exit);
    addLiftEdits(verbs, exit);
    addCheckLoadEdits(verbs, exit);
    addExclusion(app, "exclude", "A set or a rep that is not to count, with the reason", true,
                 exit);
    addExclusion(app, "include", "A set or a rep that is to count again", false, exit);
}

} // namespace slopebook::app
