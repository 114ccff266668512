// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook sync: a log meets its store, joins one, leaves it.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/takenreport.h"
#include "core/answers/figures.h"
#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "core/model/errors.h"

#include <array>
#include <ctime>
#include <memory>

namespace slopebook::app {

namespace {

struct SyncOptions {
    std::filesystem::path log;
    std::string store, squad;
    bool leave = false, json = false;
};

std::string utcNow() {
    const std::time_t now = std::time(nullptr);
    std::tm utc{};
    gmtime_r(&now, &utc);
    std::array<char, 32> text{};
    return {text.data(), std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%SZ", &utc)};
}

std::string things(std::int64_t count) {
    return answers::counted(static_cast<int>(count), "thing");
}

std::string departedText(const meetings::Departing& one) {
    return one.name + (one.stayed
                           ? " went to another squad. Some of what was written here was not sent: "
                             "it stays here, and is sent nowhere any more.\n"
                           : " went to another squad, and is no longer in this log.\n");
}

std::string reportText(const meetings::MeetingReport& report, std::size_t open) {
    std::string text = report.wentBack ? "The store had gone back to a backup: it was told again "
                                         "what it had lost.\n"
                                       : "";
    for (const std::string& squad : report.squadsCame)
        text += "Open to this login: " + squad + "\n";
    for (const std::string& squad : report.squadsWent)
        text += "No longer open to this login: " + squad + ". What is here of it stays.\n";
    const desks::MergeReport& taken = report.taken;
    if (report.came == 0 && report.went == 0)
        text += "Nothing new on either side.\n";
    else
        text += "Taken: " + things(static_cast<std::int64_t>(taken.added)) + " new, " +
                std::to_string(taken.changed) + " changed, " + std::to_string(taken.removed) +
                " removed, " + std::to_string(taken.becameOne) +
                " one with another. Sent: " + things(report.went) + ".\n";
    text += takenText(taken);
    for (const meetings::Departing& one : report.departed)
        text += departedText(one);
    for (const Words& one : report.leftOut)
        text += "Left out: " + english(one) + "\n";
    for (const Words& one : report.notTaken)
        text += "Not taken: " + english(one) + "\n";
    if (report.waiting > 0)
        text += things(report.waiting) + (report.waiting == 1 ? " waits" : " wait") +
                " to be sent; " + std::to_string(report.held) +
                " of them may not be written by this login.\n";
    return text + openText(open);
}

std::string reportJson(const SyncOptions& options, const meetings::MeetingReport& report,
                       std::size_t open) {
    Json json;
    json.object()
        .field("log", options.log.string())
        .field("did", "met")
        .field("came", static_cast<double>(report.came))
        .field("went", static_cast<double>(report.went))
        .field("went_back", report.wentBack)
        .field("added", static_cast<int>(report.taken.added))
        .field("changed", static_cast<int>(report.taken.changed))
        .field("removed", static_cast<int>(report.taken.removed))
        .field("became_one", static_cast<int>(report.taken.becameOne));
    takenJson(json, report.taken);
    wordsJson(json, "left_out", report.leftOut);
    wordsJson(json, "not_taken", report.notTaken);
    json.key("departed").array();
    for (const meetings::Departing& one : report.departed)
        json.object().field("name", one.name).field("stayed", one.stayed).endObject();
    json.endArray();
    namesJson(json, "squads_came", report.squadsCame);
    namesJson(json, "squads_went", report.squadsWent);
    json.field("waiting", static_cast<double>(report.waiting))
        .field("held", static_cast<double>(report.held))
        .field("open", static_cast<int>(open))
        .endObject();
    return json.text();
}

int leave(const SyncOptions& options, log::Log& log) {
    meetings::leaveStore(log);
    if (options.json) {
        Json json;
        json.object().field("log", options.log.string()).field("did", "left").endObject();
        print(json.text());
    } else {
        print("The log meets no store any more. Nothing else of it was changed.\n");
    }
    return exitDone;
}

int runSync(const SyncOptions& options) {
    if (options.leave && !(options.store.empty() && options.squad.empty()))
        throw BadInput(asIs("--leave with --store or --squad"), asIs("one of them alone"));
    if (options.store.empty() && !options.squad.empty())
        throw BadInput(asIs("--squad without --store"), asIs("both, to join a store"));
    log::Log log = log::Log::open(options.log);
    if (options.leave)
        return leave(options, log);
    Interruptible interruptible;
    const Progress progress = interruptible.progress();
    if (!options.store.empty())
        meetings::joinStore(log, options.store, options.squad, progress);
    store::Connection store = store::Connection::open(meetings::addressOf(log), progress);
    const meetings::MeetingReport report = meetings::meet(log, store, utcNow(), progress);
    const std::size_t open = desks::openConflictCount(log);
    print(options.json ? reportJson(options, report, open) : reportText(report, open));
    return exitDone;
}

} // namespace

void addSync(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "sync", "A log meets its shared store: takes what is new there, sends what is new here");
    const auto options = std::make_shared<SyncOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--store", options->store,
                        "Joins that store first: postgresql://LOGIN@HOST/DATABASE, \"host=... "
                        "dbname=... user=...\" or service=NAME, without the password");
    command->add_option("--squad", options->squad,
                        "With --store: the squad to which what is new here goes");
    command->add_flag("--leave", options->leave, "The log meets no store any more");
    command->add_flag("--json", options->json, "JSON: what came, what went, what waits");
    command->callback([options, &exit] { exit = runSync(*options); });
}

} // namespace slopebook::app
