// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/log/snapshot.h"

#include <memory>

namespace slopebook::app {

using answers::fixed;

namespace {

struct ListOptions {
    std::filesystem::path log;
    std::string athlete, lift;
    bool json = false, pounds = false;
};

// What is said of every session alike.
struct Names {
    std::vector<Stored<BlockId, Block>> blocks;
    std::vector<Stored<DeviceId, Device>> devices;

    std::optional<std::string> block(Date date) const {
        const auto held = questions::blockOn(blocks, date);
        return held ? std::optional(held->name) : std::nullopt;
    }
    std::optional<std::string> device(std::optional<DeviceId> id) const {
        for (const auto& device : devices)
            if (device.id == id)
                return device.value.name;
        return std::nullopt;
    }
};

void addText(TextTable& table, const Names& names, const questions::Background& about,
             const LiftSession& session, const Masses& in) {
    const auto profile = questions::profileOf(about, session);
    std::vector<std::string> row{about.athlete.value.name,
                                 about.lift.value.name,
                                 dateKey(session.date, session.ordinal),
                                 names.block(session.date).value_or(""),
                                 names.device(session.conditions.device).value_or(""),
                                 std::to_string(session.points.size())};
    if (!profile) {
        row.insert(row.end(), {"-", "-", "-", "-", "-", "-"});
    } else {
        const auto& oneRm = profile->oneRm;
        row.push_back(in.range(profile->lightest, profile->heaviest));
        row.push_back(fixed(profile->line.intercept, 3));
        row.push_back(fixed(in.per(profile->line.slope), 5));
        row.push_back(fixed(profile->line.r2, 4));
        row.push_back(oneRm ? in.fixed(oneRm->estimate, 1) : "-");
        row.push_back(oneRm && oneRm->interval ? in.interval(*oneRm->interval, 1) : "-");
    }
    row.push_back(session.measuredOneRm ? in.load(*session.measuredOneRm) : "");
    table.row(std::move(row));
}

void addJson(Json& json, const Names& names, const questions::Background& about,
             const LiftSession& session) {
    json.object()
        .field("athlete", about.athlete.value.name)
        .field("lift", about.lift.value.name)
        .field("date", dateKey(session.date, session.ordinal))
        .field("block", names.block(session.date))
        .field("device", names.device(session.conditions.device))
        .field("velocity_kind", word(about.lift.value.kind))
        .field("n", static_cast<int>(session.points.size()));
    const auto profile = questions::profileOf(about, session);
    if (!profile) {
        json.field("reason", english(profile.why().reason)).endObject();
        return;
    }
    json.field("distinct_loads", profile->line.distinct)
        .field("lightest", profile->lightest)
        .field("heaviest", profile->heaviest)
        .field("v0", profile->line.intercept)
        .field("slope", profile->line.slope)
        .field("r2", profile->line.r2)
        .key("one_rm");
    oneRmJson(json, profile->oneRm, profile->level, session.measuredOneRm);
    json.endObject();
}

int runList(const ListOptions& options) {
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const log::Filter filter = filterNamed(log, options.athlete, options.lift);
    const Names names{log.blocks(), log.devices()};
    const Masses in(unitOf(options.pounds));
    using Align = TextTable::Align;
    TextTable table({{"Athlete", Align::Left},
                     {"Lift", Align::Left},
                     {"Date", Align::Left},
                     {"Block", Align::Left},
                     {"Device", Align::Left},
                     {"n"},
                     {"Loads " + in.name()},
                     {"V0 m/s"},
                     {"Slope"},
                     {"R2"},
                     {"1RM " + in.name()},
                     {"95 % interval"},
                     {"Measured " + in.name()}});
    Json json;
    json.object().key("sessions").array();
    questions::eachBackground(log, filter, [&](const questions::Background& about) {
        for (const LiftSession& session : about.sessions) {
            if (options.json)
                addJson(json, names, about, session);
            else
                addText(table, names, about, session, in);
        }
    });
    json.endArray().endObject();
    if (options.json)
        print(json.text());
    else
        print(table.empty() ? "No sessions.\n" : table.text());
    return exitDone;
}

} // namespace

void addList(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand("list", "The sessions, each lift with its line");
    const auto options = std::make_shared<ListOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "One athlete; all where left out");
    command->add_option("--lift", options->lift, "One lift; all where left out");
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runList(*options); });
}

} // namespace slopebook::app
