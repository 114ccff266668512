// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/outputs.h"
#include "core/model/errors.h"
#include "core/model/few.h"
#include "core/questions/wholeexport.h"

#include <memory>

namespace slopebook::app {

namespace {

struct ExportOptions {
    std::filesystem::path log, folder;
    bool json = false;
    Outputs outputs;
};

int runExport(const ExportOptions& options) {
    if (options.folder == "-")
        throw BadInput(asIs("--into -"), asIs("a folder: standard output holds one file"));
    const log::Log log = log::Log::open(options.log, log::Access::ReadOnly);
    Interruptible interruptible;
    std::vector<std::filesystem::path> files;
    sayingHow([&] {
        files = questions::exportWhole(log, options.folder, interruptible.progress(),
                                       options.outputs.existing());
    });
    if (options.json) {
        Json json;
        json.object()
            .field("log", options.log.string())
            .field("folder", options.folder.string())
            .key("files")
            .array();
        for (const auto& file : files)
            json.value(file.filename().string());
        json.endArray().endObject();
        print(json.text());
        return exitDone;
    }
    std::vector<std::string> names;
    for (const auto& file : files)
        names.push_back(file.filename().string());
    print("Written into " + options.folder.string() + ": " + english(few(names)) + "\n");
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
    command->add_flag("--json", options->json, "JSON: what was written");
    options->outputs.addReplace(*command);
    command->callback([options, &exit] { exit = runExport(*options); });
}

} // namespace slopebook::app
