// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/exchange/twins.h"
#include "core/log/snapshot.h"

#include <memory>

namespace slopebook::app {

namespace {

struct CheckOptions {
    std::filesystem::path log;
    bool json = false;
};

int runCheck(const CheckOptions& options) {
    const log::Snapshot asked(options.log);
    const auto findings = asked.log().check();
    // Spellings of one name: no damage, but one athlete's sessions may stand under two.
    const auto twins = exchange::twins(asked.log());
    if (options.json) {
        Json json;
        json.object().field("log", options.log.string()).field("sound", findings.empty());
        wordsJson(json, "findings", findings);
        wordsJson(json, "worth_a_look", twins);
        json.endObject();
        print(json.text());
    } else {
        std::string text = (findings.empty() ? "Whole and sound: " : "Not sound: ") +
                           options.log.string() + "\n" + findingsText(findings);
        for (const Words& each : twins)
            text += "Worth a look: " + english(each) + "\n";
        print(text);
    }
    return findings.empty() ? exitDone : exitNoAnswer;
}

} // namespace

void addCheck(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("check", "Whether the log is whole and sound, or what is not");
    const auto options = std::make_shared<CheckOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_flag("--json", options->json, "JSON: what was found");
    command->callback([options, &exit] { exit = runCheck(*options); });
}

} // namespace slopebook::app
