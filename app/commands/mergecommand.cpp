// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/answers/figures.h"
#include "core/desks/merge.h"
#include "core/model/few.h"

#include <algorithm>
#include <memory>

namespace slopebook::app {

namespace {

struct MergeOptions {
    std::filesystem::path log, other;
    bool dryRun = false, json = false;
};

std::string called(const std::string& kind, const Words& name) {
    return english(desks::sayKind(kind)) + ", " + english(name);
}

/// The first ten, a line each, and how many more there are.
template <class List, class Text>
std::string someLines(const std::string& title, const List& list, const Text& text) {
    std::string all;
    for (std::size_t i = 0; i < std::min(list.size(), fewNamed); ++i)
        all += title + text(list[i]) + "\n";
    if (list.size() > fewNamed)
        all += title + "and " + std::to_string(list.size() - fewNamed) + " more\n";
    return all;
}

std::string sideText(bool there, const Words& value) {
    if (!there)
        return "removed";
    return value.empty() ? "nothing" : "\"" + english(value) + "\"";
}

std::string conflictText(const desks::ShownConflict& conflict) {
    std::string text =
        called(conflict.kind, conflict.about) + ": " + english(desks::sayWhy(conflict.why));
    if (conflict.stands != conflict.lived)
        return text + "\n    here " + sideText(conflict.stands, asIs("in the log")) +
               ", on the other side " + sideText(conflict.lived, asIs("in the log"));
    for (const desks::SideBySide& field : conflict.fields)
        text += "\n    " + english(field.field) + ": " + sideText(conflict.stands, field.stands) +
                " stands, " + sideText(conflict.lived, field.lost) + " does not";
    return text;
}

std::string pastText(const desks::MergeReport& report) {
    if (!report.noCommonPast)
        return {};
    return "These two logs have no common past: of " +
           answers::counted(static_cast<int>(report.athletes.here), "athlete") +
           " in the log and " + std::to_string(report.athletes.there) +
           " in the other none is in both. Who is in both under one name stands twice, with the "
           "sessions of each; lifts, tests and devices of one name become one.\n";
}

std::string countsText(const MergeOptions& options, const desks::MergeReport& report) {
    if (report.nothingNew)
        return "Nothing new: everything of " + options.other.string() +
               " was in the log already.\n";
    if (report.pastAlone)
        return std::string("Nothing new: both logs hold the same. How the other came to it ") +
               (options.dryRun ? "would be" : "is") +
               " noted, so that what both know is not asked about again.\n";
    return std::string(options.dryRun ? "Would take: " : "Taken: ") +
           answers::counted(static_cast<int>(report.added), "thing") + " new, " +
           std::to_string(report.changed) + " changed, " + std::to_string(report.removed) +
           " removed, " + std::to_string(report.becameOne) + " one with another.\n";
}

std::string reportText(const MergeOptions& options, const desks::MergeReport& report,
                       std::size_t open) {
    std::string text = pastText(report) + countsText(options, report);
    text += someLines("Joined: ", report.joined, [](const desks::MergeReport::Joined& one) {
        return called(one.from.kind, one.from.name) + " is one with " + english(one.into.name);
    });
    text += someLines("Brought back, since it is used: ", report.revived,
                      [](const desks::Named& one) { return called(one.kind, one.name); });
    text += someLines("Renamed: ", report.renamed, [](const desks::MergeReport::Renamed& one) {
        return called(one.now.kind, one.now.name) + " (before: " + one.before + ")";
    });
    text += someLines("To choose: ", report.listed, conflictText);
    if (open > 0)
        text += answers::counted(static_cast<int>(open), "choice") +
                (open == 1 ? " waits" : " wait") + " in the log; the window shows both sides.\n";
    if (!report.backup.empty())
        text += "As it was before: " + report.backup.string() + "\n";
    return options.dryRun ? text + "Dry run: nothing was written.\n" : text;
}

void conflictJson(Json& json, const desks::ShownConflict& conflict) {
    json.object()
        .field("id", log::hexOf(log::viewOf(conflict.uuid)))
        .field("kind", conflict.kind)
        .field("name", english(conflict.about))
        .field("why", std::string(desks::word(conflict.why)))
        .field("stands_removed", !conflict.stands)
        .field("lost_removed", !conflict.lived)
        .field("lost_known", conflict.known);
    json.key("fields").array();
    for (const desks::SideBySide& field : conflict.fields)
        json.object()
            .field("field", english(field.field))
            .field("stands", english(field.stands))
            .field("lost", english(field.lost))
            .endObject();
    json.endArray().endObject();
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
        .field("removed", static_cast<int>(report.removed))
        .field("became_one", static_cast<int>(report.becameOne))
        .field("past_alone", report.pastAlone)
        .field("no_common_past", report.noCommonPast);
    json.key("athletes")
        .object()
        .field("here", static_cast<int>(report.athletes.here))
        .field("there", static_cast<int>(report.athletes.there))
        .field("both", static_cast<int>(report.athletes.both))
        .endObject();
    json.key("joined").array();
    for (const auto& [from, into] : report.joined)
        json.object()
            .field("kind", from.kind)
            .field("name", english(from.name))
            .field("into", english(into.name))
            .endObject();
    json.endArray().key("revived").array();
    for (const desks::Named& one : report.revived)
        json.object().field("kind", one.kind).field("name", english(one.name)).endObject();
    json.endArray().key("renamed").array();
    for (const auto& [now, before] : report.renamed)
        json.object()
            .field("kind", now.kind)
            .field("name", english(now.name))
            .field("before", before)
            .endObject();
    json.endArray().key("to_choose").array();
    for (const desks::ShownConflict& conflict : report.listed)
        conflictJson(json, conflict);
    json.endArray().field("open", static_cast<int>(open));
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
