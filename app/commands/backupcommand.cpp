// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/outputs.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"

#include <memory>

namespace slopebook::app {

namespace {

struct BackupOptions {
    std::filesystem::path log, target;
    bool json = false;
    Outputs outputs;
};

void printJson(const BackupOptions& options, const std::vector<Words>& findings) {
    Json json;
    json.object()
        .field("log", options.log.string())
        .field("file", options.target.string())
        .field("sound", findings.empty());
    wordsJson(json, "findings", findings);
    json.endObject();
    print(json.text());
}

int runBackup(const BackupOptions& options) {
    const bool toOut = options.outputs.to(options.target).standardOutput();
    if (toOut && options.json)
        throw BadInput(asIs("more than one thing for standard output"),
                       asIs("one: the copy, or --json"));
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    std::vector<Words> findings;
    if (toOut) {
        findings = log::backUpToStandardOutput(log);
    } else {
        Interruptible interruptible;
        sayingHow([&] {
            findings = log::backUp(log, options.target, options.outputs.existing(),
                                   interruptible.progress());
        });
    }
    if (options.json) {
        printJson(options, findings);
        return findings.empty() ? exitDone : exitNoAnswer;
    }
    if (findings.empty()) {
        if (!toOut)
            print("Backed up, and the copy checked: " + options.target.string() + "\n");
        return exitDone;
    }
    const std::string text = "Backed up, but the log is not sound, and the copy is no better: " +
                             options.target.string() + "\n" + findingsText(findings);
    if (toOut)
        printError(text);
    else
        print(text);
    return exitNoAnswer;
}

} // namespace

void addBackup(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("backup", "A copy of the log in a new file, and whether it is sound");
    const auto options = std::make_shared<BackupOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command
        ->add_option("FILE", options->target,
                     "The copy; must not exist, or be a plain file with --replace; - for standard "
                     "output")
        ->required();
    command->add_flag("--json", options->json, "JSON: what was written, and whether it is sound");
    options->outputs.addReplace(*command);
    command->callback([options, &exit] { exit = runBackup(*options); });
}

} // namespace slopebook::app
