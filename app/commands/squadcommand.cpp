// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook squad: what one lift did in each athlete between two days or two blocks, and in all.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/partsjson.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/answers/squadmean.h"
#include "core/answers/squadsummary.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/liftcontext.h"

#include <memory>

namespace slopebook::app {

namespace {

using answers::Squad;
using answers::SquadMean;
using answers::SquadPart;
using answers::SquadRow;

struct SquadOptions : About {
    std::string from, to;
    int within = 0;
};

answers::Period periodOf(const log::Log& log, const std::string& text, int within) {
    const auto side = questions::batterySide(log, text);
    if (const auto* date = std::get_if<Date>(&side))
        return answers::onDate(*date, within);
    return answers::inBlock(questions::blockOf(log, std::get<BlockId>(side)).value);
}

std::string titleOf(const SquadPart& part) {
    return part.load ? "Speed at " + answers::loadText(kilograms(*part.load)) + " kg, m/s"
                     : std::string("Estimated 1RM, kg");
}

/// What an athlete's change is drawn to; nothing without a mean, or a figure of that athlete.
std::optional<SquadMean::Drawn> drawnOf(const std::optional<SquadMean>& mean, AthleteId athlete) {
    if (mean)
        for (const SquadMean::Drawn& each : mean->each)
            if (each.athlete == athlete)
                return each;
    return std::nullopt;
}

std::string partText(const SquadPart& part, double level) {
    using Align = TextTable::Align;
    const int d = part.load ? 3 : 1;
    const auto mean = answers::squadMean(part, level);
    TextTable table({{"athlete", Align::Left},
                     {"from", Align::Left},
                     {"to", Align::Left},
                     {"change"},
                     {percent(level)},
                     {"drawn to all"},
                     {"reading", Align::Left}});
    for (const SquadRow& row : part.rows) {
        const auto drawn = drawnOf(mean, row.athlete);
        const auto day = [](const std::optional<LiftSession>& session) {
            return session ? dateKey(session->date, session->ordinal) : std::string("-");
        };
        table.row({row.name, day(row.from), day(row.to),
                   row.read ? answers::signedFixed(row.read->change, d) : "",
                   row.read ? signedInterval(row.read->interval, d) : "",
                   drawn ? answers::signedFixed(drawn->drawn, d) : "",
                   row.read ? english(answers::sizedReading(*row.read))
                            : english(row.read.why().reason)});
    }
    return titleOf(part) + ": " + english(answers::countWords(part)) + "\n" +
           (mean ? english(answers::squadMeanWords(part, *mean)) + "\n" : "") + table.text() + "\n";
}

std::string squadText(const std::string& lift, const Squad& squad) {
    std::string text =
        lift + ", the squad from " + squad.from.name + " to " + squad.to.name + "\n\n";
    for (const SquadPart& part : squad.parts)
        text += partText(part, squad.level);
    return text + english(answers::squadChanceWords(squad)) + "\n" + notesText(squad.notes) + "\n" +
           cautionText() + "\n";
}

void meanJson(Json& json, const std::optional<SquadMean>& mean) {
    json.key("mean");
    if (!mean) {
        json.null();
        return;
    }
    json.object()
        .field("athletes", mean->athletes)
        .field("change", mean->mean)
        .ends("low", "high", mean->interval)
        .field("reading", answers::word(mean->read->reading))
        .field("spread", mean->spread)
        .field("true_spread", mean->trueSpread)
        .endObject();
}

void rowJson(Json& json, const SquadRow& row, const std::optional<SquadMean>& mean) {
    const auto day = [](const std::optional<LiftSession>& session) {
        return session ? std::optional(dateKey(session->date, session->ordinal)) : std::nullopt;
    };
    json.object()
        .field("athlete", row.name)
        .field("from", day(row.from))
        .field("to", day(row.to))
        .field("reason", row.read ? std::nullopt : std::optional(english(row.read.why().reason)));
    json.key("read");
    if (row.read) {
        json.object();
        readJson(json, *row.read);
        json.endObject();
    } else {
        json.null();
    }
    const auto drawn = drawnOf(mean, row.athlete);
    json.field("shrunken", drawn ? std::optional(drawn->drawn) : std::nullopt)
        .ends("shrunken_low", "shrunken_high",
              drawn ? std::optional(drawn->interval) : std::nullopt)
        .field("extrapolated", row.extrapolated)
        .endObject();
}

std::string squadJson(const std::string& lift, const Squad& squad) {
    Json json;
    json.object()
        .field("lift", lift)
        .field("from", squad.from.name)
        .field("to", squad.to.name)
        .field("level", squad.level);
    json.key("parts").array();
    for (const SquadPart& part : squad.parts) {
        json.object()
            .field("kind", part.load ? "lift" : "one_rm")
            .field("load", part.load ? std::optional(kilograms(*part.load)) : std::nullopt)
            .field("unit", part.load ? "m/s" : "kg");
        const auto mean = answers::squadMean(part, squad.level);
        meanJson(json, mean);
        json.key("athletes").array();
        for (const SquadRow& row : part.rows)
            rowJson(json, row, mean);
        json.endArray().endObject();
    }
    json.endArray().field("expected_by_chance", answers::squadByChance(squad));
    notesJson(json, squad.notes);
    json.endObject();
    return json.text();
}

int runSquad(const SquadOptions& options) {
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const auto lift = liftNamed(log, options.lift);
    const auto from = periodOf(log, options.from, options.within),
               to = periodOf(log, options.to, options.within);
    const auto squad =
        questions::squadOf(log, lift.id, from, to, {}, {}, {}, questions::OfABlock::AllSessions);
    if (!squad)
        return sayNoAnswer(options, squad.why());
    print(options.json ? squadJson(lift.value.name, *squad) : squadText(lift.value.name, *squad));
    return exitDone;
}

} // namespace

void addSquad(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "squad", "One lift in every athlete between two days or two blocks, and in all together");
    const auto options = std::make_shared<SquadOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--from", options->from, "A day, or the name of a block")->required();
    command->add_option("--to", options->to, "A later day, or the name of a block")->required();
    command->add_option("--within", options->within,
                        "Of a day: as many days before and after it as may stand in for it");
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runSquad(*options); });
}

} // namespace slopebook::app
