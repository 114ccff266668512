// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "core/log/snapshot.h"

#include <memory>

namespace slopebook::app {

namespace {

struct BackupOptions {
    std::filesystem::path log, target;
    Outputs outputs;
};

int runBackup(const BackupOptions& options) {
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    if (options.outputs.to(options.target).standardOutput()) {
        log::backUpToStandardOutput(log);
        return exitDone;
    }
    const Stoppable stoppable;
    sayingHow([&] {
        log::backUp(log, options.target, options.outputs.existing(), stoppable.progress());
    });
    print("Backed up, and the copy checked: " + options.target.string() + "\n");
    return exitDone;
}

} // namespace

void addBackup(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand("backup", "A verified copy of the log in a new file");
    const auto options = std::make_shared<BackupOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command
        ->add_option("FILE", options->target,
                     "The copy; must not exist, or be a plain file with --replace; - for standard "
                     "output")
        ->required();
    options->outputs.addReplace(*command);
    command->callback([options, &exit] { exit = runBackup(*options); });
}

} // namespace slopebook::app
