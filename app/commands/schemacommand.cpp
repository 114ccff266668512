// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook schema: the log's file in words and SQL, or the JSON Schema of what a command prints.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/exchange/jsonschemas.h"
#include "core/log/fileformat.h"
#include "core/log/snapshot.h"

#include <memory>

namespace slopebook::app {

namespace {

struct SchemaOptions {
    std::filesystem::path log;
    std::string command;
};

int runSchema(const SchemaOptions& options) {
    if (!options.command.empty()) {
        print(exchange::jsonSchemaOf(options.command));
    } else if (options.log.empty()) {
        print(log::fileFormat());
    } else {
        const log::Snapshot asked(options.log);
        print(log::fileFormat(asked.log()));
    }
    return exitDone;
}

} // namespace

void addSchema(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "schema",
        "The file's format in words and SQL, or the JSON Schema of what a command prints");
    const auto options = std::make_shared<SchemaOptions>();
    auto* log = command->add_option("LOG", options->log,
                                    "A log whose own tables are shown; a new log's where left out");
    command
        ->add_option("--json", options->command,
                     "A command: prints the JSON Schema of what its --json prints")
        ->excludes(log);
    command->callback([options, &exit] { exit = runSchema(*options); });
}

} // namespace slopebook::app
