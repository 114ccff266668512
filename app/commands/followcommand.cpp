// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/log/snapshot.h"
#include "core/questions/blockquestions.h"
#include "core/questions/felt.h"

#include <memory>

namespace slopebook::app {

namespace {

struct FollowOptions : About {
    std::string load, baseline;
};

/// Of a block the session that the others are counted from: the last that makes a line.
const LiftSession& lastWithALine(const questions::Background& about,
                                 const std::vector<LiftSession>& sessions) {
    for (auto session = sessions.rbegin(); session != sessions.rend(); ++session)
        if (questions::profileOf(about, *session))
            return *session;
    return sessions.back();
}

int runFollow(const FollowOptions& options) {
    const Mass load = massFromOption(options.load);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const questions::Background about = background(log, options);
    std::optional<SessionId> baseline;
    if (!options.baseline.empty()) {
        const auto side = questions::dayOrBlock(log, about.sessions, options.baseline);
        if (!side)
            return sayNoAnswer(options, side.why());
        const auto sessions = questions::sessionsOf(*side, about.sessions);
        if (sessions.sessions.empty())
            return sayNoAnswer(options, {NoAnswer::Why::NoSuchSession,
                                         asIs(about.athlete.value.name + " has no session in " +
                                              sessions.name + ".")});
        baseline = lastWithALine(about, sessions.sessions).session;
    }
    const questions::AskSettings settings;
    const auto follow = questions::followOf(log, about, load, baseline, settings);
    if (!follow)
        return sayNoAnswer(options, follow.why());
    const auto felt = questions::feltAt(log, about.lift, *follow, settings.plateStep);
    const auto blocks = log.blocks();
    if (options.json) {
        Json json;
        followJson(json, about, *follow, felt, blocks, settings.level);
        print(json.text());
    } else {
        print(followText(about, *follow, felt, blocks, settings.level));
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
    command->add_option("--load", options->load, "The load in kg")->required();
    command->add_option("--baseline", options->baseline,
                        "Day of the session to count from, or a block or days "
                        "(2026-03-01..2026-03-14), whose last with a line counts; the first with a "
                        "line where left out");
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runFollow(*options); });
}

} // namespace slopebook::app
