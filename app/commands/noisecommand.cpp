// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/answers/sources.h"
#include "core/answers/squadsummary.h"
#include "core/log/snapshot.h"
#include "core/questions/liftcontext.h"

#include <map>
#include <memory>

namespace slopebook::app {

namespace {

struct NoiseOptions {
    std::filesystem::path log;
    std::string lift;
    bool json = false, pounds = false;
};

using AthleteNames = std::map<AthleteId, std::string>;

std::string text(const log::Log& log, const questions::NoiseGroup& group, const Masses& in) {
    std::string title = group.lift.name;
    if (group.device)
        title += ", " + group.deviceName;
    const Words cited = answers::citationOf(answers::asCited(group.inUse));
    const Words rule = answers::ruleOfThumb(group.inUse);
    const std::string inUse = "In use: " + in.say(answers::inUseWords(group.inUse, 4)) + "\n" +
                              (rule.empty() ? "" : in.say(rule) + "\n") +
                              (cited.empty() ? "" : in.say(asSentence(cited)) + "\n");
    if (group.noise)
        return title + "\n" + noiseText(log, *group.noise, in) + inUse + "\n";
    return title + "\nNo noise of its own: " + in.say(group.noise.why().reason) + "\n" + inUse +
           "\n";
}

void json(Json& out, const questions::NoiseGroup& group, const AthleteNames& names) {
    out.object()
        .field("lift", group.lift.name)
        .field("velocity_kind", word(group.lift.kind))
        .field("device", group.device ? std::optional(group.deviceName) : std::nullopt);
    if (group.noise)
        noiseJson(out, *group.noise, names);
    else
        out.field("reason", english(group.noise.why().reason));
    out.key("in_use");
    dayNoiseJson(out, group.inUse);
    out.endObject();
}

int runNoise(const NoiseOptions& options) {
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    std::vector<Stored<LiftId, Lift>> lifts;
    if (options.lift.empty())
        lifts = log.lifts();
    else
        lifts.push_back(liftNamed(log, options.lift));
    AthleteNames names;
    for (const auto& athlete : log.athletes())
        names[athlete.id] = athlete.value.name;
    std::string shown;
    Json out;
    out.object().key("lifts").array();
    bool answered = false;
    for (const auto& lift : lifts)
        for (const questions::NoiseGroup& group : questions::noiseGroups(log, lift.id)) {
            answered = answered || bool(group.noise);
            shown += text(log, group, Masses(unitOf(options.pounds)));
            json(out, group, names);
        }
    out.endArray().endObject();
    if (lifts.empty())
        shown = "No answer: the log has no lift yet.\n";
    print(options.json ? out.text() : shown);
    return answered ? exitDone : exitNoAnswer;
}

} // namespace

void addNoise(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("noise", "How noisy the lifts are from day to day, by repeat tests");
    const auto options = std::make_shared<NoiseOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--lift", options->lift, "One lift; all where left out");
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runNoise(*options); });
}

} // namespace slopebook::app
