// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/log/snapshot.h"
#include "core/questions/blockquestions.h"
#include "core/questions/felt.h"
#include "core/questions/followquestions.h"

#include <memory>

namespace slopebook::app {

namespace {

struct FollowOptions : About {
    std::string load, baseline;
    bool trends = false;
    double level = questions::AskSettings{}.level;
};

int runFollow(const FollowOptions& options) {
    const Mass load = massFromOption(options.load, options.masses().unit());
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const questions::Background about = background(log, options);
    std::optional<questions::Baseline> baseline;
    if (!options.baseline.empty()) {
        const auto side = questions::dayOrBlock(log, about.sessions, options.baseline);
        if (!side)
            return sayNoAnswer(options, side.why());
        if (const auto* session = std::get_if<LiftSession>(&*side))
            baseline = session->session;
        else if (const auto* days = std::get_if<DayStretch>(&*side))
            baseline = *days;
        else
            baseline = std::get<Stored<BlockId, Block>>(*side).id;
    }
    const questions::AskSettings settings{.level = options.level};
    const auto season = questions::seasonOf(log, about, load, baseline, settings);
    if (!season)
        return sayNoAnswer(options, season.why());
    const auto felt = questions::feltAt(log, about.lift, season->follow, settings.plateStep);
    const auto blocks = log.blocks();
    if (options.json) {
        Json json;
        followJson(json, about, *season, felt, blocks, settings.level);
        print(json.text());
    } else {
        print(followText(about, *season, felt, blocks, settings.level, options.trends,
                         options.masses()));
    }
    return exitDone;
}

} // namespace

void addFollow(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand("follow", "One load through the season");
    const auto options = std::make_shared<FollowOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--load", options->load, "The load in kg, with --lb in pounds")->required();
    command->add_option(
        "--baseline", options->baseline,
        "Day of the session to count from, or days (2026-03-01..2026-03-14) or a block, all of "
        "whose sessions count; "
        "the first day with a line where left out");
    command->add_flag("--trends", options->trends, "Also the trend within each block");
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runFollow(*options); });
}

} // namespace slopebook::app
