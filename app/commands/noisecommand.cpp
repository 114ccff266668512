// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/answers/published.h"

#include <limits>
#include <memory>

namespace slopebook::app {

namespace {

struct Options {
    std::filesystem::path log;
    std::string lift;
    bool json = false;
};

// One lift as measured by one device (or by none that is named).
struct Group {
    Stored<LiftId, Lift> lift;
    std::optional<std::string> device;
    Answer<answers::LiftNoise> noise;
};

answers::DayNoise publishedNoise(const Lift& lift) {
    const auto row = answers::published(lift.name, lift.kind);
    if (!row || !row->dayNoise)
        return {};
    return {.variance = {*row->dayNoise * *row->dayNoise, std::numeric_limits<double>::infinity()},
            .origin = answers::DayNoise::Origin::Published,
            .source = row->dayNoiseSource,
            .pairs = 0};
}

// Devices never share their noise; a lift that no device repeated tells why it has none.
std::vector<Group> groups(const log::Log& log, const Stored<LiftId, Lift>& lift) {
    std::vector<Group> found;
    for (const auto& device : log.devices())
        if (auto noise = ui::noiseOf(log, lift.id, {}, device.id))
            found.push_back({lift, device.value.name, std::move(noise)});
    if (found.empty())
        found.push_back({lift, std::nullopt, ui::noiseOf(log, lift.id)});
    return found;
}

std::string text(const log::Log& log, const Group& group) {
    std::string title = group.lift.value.name;
    if (group.device)
        title += ", " + *group.device;
    if (group.noise)
        return title + "\n" + noiseText(log, *group.noise) + "\n";
    return title + "\nNo noise of its own: " + group.noise.why().reason +
           "\nIn use: " + dayNoiseText(publishedNoise(group.lift.value)) + "\n\n";
}

void json(Json& out, const Group& group) {
    out.object()
        .field("lift", group.lift.value.name)
        .field("velocity_kind", word(group.lift.value.kind))
        .field("device", group.device);
    if (group.noise) {
        noiseJson(out, *group.noise);
    } else {
        out.field("reason", group.noise.why().reason);
        out.key("day");
        dayNoiseJson(out, publishedNoise(group.lift.value));
    }
    out.endObject();
}

int run(const Options& options) {
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    std::vector<Stored<LiftId, Lift>> lifts;
    if (options.lift.empty())
        lifts = log.lifts();
    else
        lifts.push_back(liftNamed(log, options.lift));
    std::string shown;
    Json out;
    out.object().key("lifts").array();
    bool answered = false;
    for (const auto& lift : lifts)
        for (const Group& group : groups(log, lift)) {
            answered = answered || bool(group.noise);
            shown += text(log, group);
            json(out, group);
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
    const auto options = std::make_shared<Options>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--lift", options->lift, "One lift; all where left out");
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = run(*options); });
}

} // namespace slopebook::app
