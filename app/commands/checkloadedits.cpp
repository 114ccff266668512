// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook add, change, remove: check-load.
#include "app/commands/commands.h"
#include "app/commands/editing.h"
#include "core/answers/figures.h"
#include "core/model/errors.h"

#include <algorithm>

namespace slopebook::app {

namespace checkloadediting {
namespace {

struct CheckLoadOptions : Editing {
    std::string athlete, lift, load, to;
};

/// The check loads of an athlete and lift, and what is asked of them.
struct Loads {
    Stored<AthleteId, Athlete> athlete;
    Stored<LiftId, Lift> lift;
    std::vector<Mass> before;
    Mass asked;
    bool has() const { return std::ranges::find(before, asked) != before.end(); }
};

Loads loadsOf(const log::Log& log, const CheckLoadOptions& options) {
    const auto athlete = athleteNamed(log, options.athlete);
    const auto lift = liftNamed(log, options.lift);
    return {athlete, lift, log.checkLoads(athlete.id, lift.id),
            massTyped(options.load, options.unit(), "the check load", true)};
}

Edited set(log::Log& log, const Loads& loads, std::vector<Mass> after, const char* did) {
    std::ranges::sort(after);
    const bool same = after == loads.before;
    if (!same)
        log.setCheckLoads(loads.athlete.id, loads.lift.id, after);
    const auto shown = [&](const std::vector<Mass>& all) -> ThingJson {
        return [all, athlete = loads.athlete.value.name, lift = loads.lift.value.name](Json& json) {
            json.object().field("athlete", athlete).field("lift", lift).key("loads").array();
            for (const Mass load : all)
                json.value(kilograms(load));
            json.endArray().endObject();
        };
    };
    return {.did = did,
            .what = "check_load",
            .name = loads.athlete.value.name + ", " + loads.lift.value.name + ", " +
                    answers::loadText(kilograms(loads.asked)) + " kg",
            .before = shown(loads.before),
            .after = shown(after),
            .same = same};
}

void requireThere(const Loads& loads) {
    if (loads.has())
        return;
    std::string there;
    for (const Mass load : loads.before)
        there += (there.empty() ? "" : ", ") + answers::loadText(kilograms(load));
    throw BadInput(asIs("the check load " + answers::loadText(kilograms(loads.asked)) + " kg"),
                   asIs(there.empty() ? "one that is there: there is none"
                                      : "one that is there: " + there + " kg"));
}

Edited add(log::Log& log, const CheckLoadOptions& options) {
    const Loads loads = loadsOf(log, options);
    auto after = loads.before;
    if (!loads.has())
        after.push_back(loads.asked);
    return set(log, loads, std::move(after), "add");
}

Edited change(log::Log& log, const CheckLoadOptions& options) {
    const Loads loads = loadsOf(log, options);
    requireThere(loads);
    auto after = loads.before;
    std::erase(after, loads.asked);
    const Mass to = massTyped(options.to, options.unit(), "the new check load", true);
    if (std::ranges::find(after, to) == after.end())
        after.push_back(to);
    return set(log, loads, std::move(after), "change");
}

Edited remove(log::Log& log, const CheckLoadOptions& options) {
    const Loads loads = loadsOf(log, options);
    requireThere(loads);
    auto after = loads.before;
    std::erase(after, loads.asked);
    return set(log, loads, std::move(after), "remove");
}

using Work = Edited (*)(log::Log&, const CheckLoadOptions&);

std::pair<CLI::App*, std::shared_ptr<CheckLoadOptions>> addOne(CLI::App& verb, const char* help,
                                                               Work work, int& exit) {
    const auto options = std::make_shared<CheckLoadOptions>();
    auto* command = verb.add_subcommand("check-load", help);
    addEditing(*command, *options, true);
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--load", options->load, "The check load in kg")->required();
    command->callback([options, work, &exit] {
        exit = runEdit(*options, [&](log::Log& log) { return work(log, *options); });
    });
    return {command, options};
}

} // namespace
} // namespace checkloadediting

void addCheckLoadEdits(const Verbs& verbs, int& exit) {
    using namespace checkloadediting;
    addOne(verbs.add, "One more check load of an athlete and lift", &add, exit);
    const auto [changing, options] =
        addOne(verbs.change, "Another check load in place of one", &change, exit);
    changing->add_option("--to", options->to, "The load in its place")->required();
    addOne(verbs.remove, "Away with a check load; its sets stay", &remove, exit);
}

} // namespace slopebook::app
