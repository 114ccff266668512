// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/exchange/twins.h"
#include "core/log/snapshot.h"

#include <memory>

namespace slopebook::app {

namespace {

/// Spellings of one name: no damage, but one athlete's sessions may stand under two.
std::string twinsText(const log::Log& log) {
    std::string text;
    for (const Words& twins : exchange::twins(log))
        text += "Worth a look: " + english(twins) + "\n";
    return text;
}

int runCheck(const std::filesystem::path& file) {
    const log::Snapshot asked(file);
    const auto findings = asked.log().check();
    if (findings.empty()) {
        print("Whole and sound: " + file.string() + "\n" + twinsText(asked.log()));
        return exitDone;
    }
    print("Not sound: " + file.string() + "\n" + findingsText(findings) + twinsText(asked.log()));
    return exitNoAnswer;
}

} // namespace

void addCheck(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("check", "Whether the log is whole and sound, or what is not");
    const auto file = std::make_shared<std::filesystem::path>();
    command->add_option("LOG", *file, "The log")->required();
    command->callback([file, &exit] { exit = runCheck(*file); });
}

} // namespace slopebook::app
