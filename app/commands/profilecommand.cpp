// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/log/snapshot.h"
#include "core/model/phrases/questions.h"
#include "core/questions/liftcontext.h"

#include <memory>

namespace slopebook::app {

namespace {

struct ProfileOptions : About {
    std::string session;
    double level = questions::AskSettings{}.level;
};

int runProfile(const ProfileOptions& options) {
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    questions::Background about = background(log, options);
    std::string which;
    Answer<LiftSession> session = NoAnswer{
        NoAnswer::Why::NoSuchSession,
        asIs(about.athlete.value.name + " has no session of " + about.lift.value.name + ".")};
    if (!options.session.empty()) {
        session = questions::sessionAt(about.sessions, options.session);
    } else if (!about.sessions.empty()) {
        session = about.sessions.back();
        which = "the latest of " + std::to_string(about.sessions.size());
    }
    if (!session)
        return sayNoAnswer(options, session.why());
    about = questions::within(questions::liftContext(log, about.lift.id), std::move(about),
                              session->conditions.device);
    const auto profile = questions::profileOf(about, *session, {.level = options.level});
    if (!profile)
        return sayNoAnswer(
            options,
            {profile.why().why, questions::say("%1: %2", sayDay(session->date, session->ordinal),
                                               profile.why().reason)});
    if (options.json) {
        Json json;
        profileJson(json, log, about, *profile);
        print(json.text());
    } else {
        print(profileText(log, about, *profile, which, options.masses()));
    }
    return exitDone;
}

} // namespace

void addProfile(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("profile", "One session of a lift: its line and estimated 1RM");
    const auto options = std::make_shared<ProfileOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option(
        "--session", options->session,
        "Day of the session, 2026-03-14 or 2026-03-14#2; the latest where left out");
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runProfile(*options); });
}

} // namespace slopebook::app
