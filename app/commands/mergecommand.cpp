// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/takenreport.h"
#include "core/answers/figures.h"
#include "core/desks/merge.h"

#include <memory>

namespace slopebook::app {

namespace {

struct MergeOptions {
    std::filesystem::path log, other;
    bool dryRun = false, json = false;
};

std::string reportText(const MergeOptions& options, const desks::MergeReport& report,
                       std::size_t open) {
    const auto things = [](std::size_t count) {
        return answers::counted(static_cast<int>(count), "thing");
    };
    std::string text;
    if (report.nothingNew)
        text =
            "Nothing new: everything of " + options.other.string() + " was in the log already.\n";
    else
        text = std::string(options.dryRun ? "Would take: " : "Taken: ") + things(report.added) +
               " new, " + std::to_string(report.changed) + " changed, " +
               std::to_string(report.removed) + " removed.\n";
    text += takenText(report) + openText(open);
    if (!report.backup.empty())
        text += "As it was before: " + report.backup.string() + "\n";
    return options.dryRun ? text + "Dry run: nothing was written.\n" : text;
}

std::string reportJson(const MergeOptions& options, const desks::MergeReport& report,
                       std::size_t open) {
    Json json;
    json.object()
        .field("log", options.log.string())
        .field("other", options.other.string())
        .field("dry_run", options.dryRun)
        .field("nothing_new", report.nothingNew)
        .field("added", static_cast<int>(report.added))
        .field("changed", static_cast<int>(report.changed))
        .field("removed", static_cast<int>(report.removed));
    takenJson(json, report);
    json.field("open", static_cast<int>(open));
    json.key("backup");
    if (report.backup.empty())
        json.null();
    else
        json.value(report.backup.string());
    json.endObject();
    return json.text();
}

int runMerge(const MergeOptions& options) {
    log::Log log = log::Log::open(options.log,
                                  options.dryRun ? log::Access::ReadOnly : log::Access::ReadWrite);
    const desks::MergeReport report = options.dryRun ? desks::previewMerge(log, options.other)
                                                     : desks::mergeInto(log, options.other);
    const std::size_t open =
        desks::openConflictCount(log) + (options.dryRun ? report.listed.size() : 0);
    print(options.json ? reportJson(options, report, open) : reportText(options, report, open));
    return exitDone;
}

} // namespace

void addMerge(CLI::App& app, int& exit) {
    auto* command =
        app.add_subcommand("merge", "What another log holds into this one; the other is only read");
    const auto options = std::make_shared<MergeOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("OTHER", options->other, "The other log, changed apart from this one")
        ->required();
    command->add_flag("--dry-run", options->dryRun, "Says what would come, writes nothing");
    command->add_flag("--json", options->json,
                      "JSON: what came, what was joined, brought back and renamed, what is to be "
                      "chosen");
    command->callback([options, &exit] { exit = runMerge(*options); });
}

} // namespace slopebook::app
