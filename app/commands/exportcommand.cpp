// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/exchange/tidyexport.h"

#include <memory>

namespace slopebook::app {

namespace {

struct ExportOptions {
    std::filesystem::path log, folder;
};

int runExport(const ExportOptions& options) {
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    std::string text = "Written:\n";
    for (const auto& file : exchange::exportTables(log, options.folder))
        text += "  " + file.string() + "\n";
    print(text);
    return exitDone;
}

} // namespace

void addExport(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("export", "The whole log as CSV, one file a table, and a workbook");
    const auto options = std::make_shared<ExportOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--to", options->folder, "A folder that does not exist yet")->required();
    command->callback([options, &exit] { exit = runExport(*options); });
}

} // namespace slopebook::app
