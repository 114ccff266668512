// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/outputs.h"
#include "core/exchange/tidyexport.h"
#include "core/model/errors.h"

#include <memory>

namespace slopebook::app {

namespace {

struct ExportOptions {
    std::filesystem::path log, folder;
    Outputs outputs;
};

int runExport(const ExportOptions& options) {
    if (options.folder == "-")
        throw BadInput(asIs("--into -"), asIs("a folder: standard output holds one file"));
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    Interruptible interruptible;
    std::string text = "Written:\n";
    sayingHow([&] {
        for (const auto& file : exchange::exportTables(
                 log, options.folder, interruptible.progress(), options.outputs.existing()))
            text += "  " + file.string() + "\n";
    });
    print(text);
    return exitDone;
}

} // namespace

void addExport(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("export", "The whole log as CSV, one file a table, and a workbook");
    const auto options = std::make_shared<ExportOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command
        ->add_option("--into,--to", options->folder,
                     "A folder that does not exist yet, or is empty; with --replace its files of "
                     "the same names are written anew, and the others stay")
        ->required();
    options->outputs.addReplace(*command);
    command->callback([options, &exit] { exit = runExport(*options); });
}

} // namespace slopebook::app
