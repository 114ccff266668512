// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook squad: what one lift did in each athlete between two days or two blocks, and in all.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "app/commands/partsjson.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/answers/squadmean.h"
#include "core/answers/squadsummary.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/duequestions.h"
#include "core/questions/liftcontext.h"

#include <memory>

namespace slopebook::app {

namespace {

using answers::Squad;
using answers::SquadMean;
using answers::SquadPart;
using answers::SquadRow;

struct SquadOptions : About {
    std::string from, to, due;
    int within = 0, weeks = answers::DueQuestion{}.weeks;
    std::filesystem::path pdf;
    double level = questions::AskSettings{}.level;
    Outputs outputs;
};

std::string titleOf(const SquadPart& part, const Masses& in) {
    return part.load ? "Speed at " + in.withName(*part.load) + ", m/s"
                     : "Estimated 1RM, " + in.name();
}

/// The day of the one session, or how many there are.
std::string daysText(const std::optional<LiftSession>& session, int count) {
    if (!session)
        return "-";
    return count > 1 ? std::to_string(count) + " sessions"
                     : dateKey(session->date, session->ordinal);
}

std::string partText(const SquadPart& part, double level, const Masses& in) {
    using Align = TextTable::Align;
    const int d = part.load ? 3 : 1;
    const Masses of = part.load ? Masses() : in; // a change of speed is one in any unit
    const auto mean = answers::squadMean(part, level);
    TextTable table({{"athlete", Align::Left},
                     {"from", Align::Left},
                     {"to", Align::Left},
                     {"change"},
                     {percent(level)},
                     {"drawn to all"},
                     {"reading", Align::Left}});
    for (const SquadRow& row : part.rows) {
        const auto drawn = answers::drawnOf(mean, row.athlete);
        table.row(
            {row.name, daysText(row.from, row.fromSessions), daysText(row.to, row.toSessions),
             row.read ? of.signedFixed(row.read->change, d) : "",
             row.read ? of.signedInterval(row.read->interval, d) : "",
             drawn ? of.signedFixed(drawn->drawn, d) : "",
             row.read ? in.say(answers::sizedReading(*row.read)) : in.say(row.read.why().reason)});
    }
    return titleOf(part, in) + ": " + in.say(answers::countWords(part)) + "\n" +
           (mean ? in.say(answers::squadMeanWords(part, *mean)) + "\n" : "") + table.text() + "\n";
}

std::string dueText(const answers::SquadDue& due) {
    using Align = TextTable::Align;
    TextTable table({{"athlete", Align::Left},
                     {"test", Align::Left},
                     {"last", Align::Left},
                     {"days ago"},
                     {"due", Align::Left}});
    for (const answers::DueRow& row : due.rows)
        table.row({row.name, row.measure, row.last ? isoDate(*row.last) : "never",
                   row.last ? std::to_string(row.days) : "",
                   english(answers::dueWhy(row, due.question))});
    const Words away = answers::awayWords(due);
    return "Due on " + isoDate(due.question.today) + ": " + english(answers::dueWords(due)) + "\n" +
           (table.empty() ? "" : table.text()) + english(answers::dueMethod(due.question)) + "\n" +
           (away.empty() ? "" : english(away) + "\n");
}

void dueJson(Json& json, const answers::SquadDue& due) {
    json.key("due")
        .object()
        .field("on", isoDate(due.question.today))
        .field("weeks", due.question.weeks)
        .field("block",
               due.question.running ? std::optional(due.question.running->name) : std::nullopt);
    json.key("tests").array();
    for (const answers::DueRow& row : due.rows)
        json.object()
            .field("athlete", row.name)
            .field("kind", row.lift ? "lift" : "test")
            .field("name", row.measure)
            .field("last", row.last ? std::optional(isoDate(*row.last)) : std::nullopt)
            .field("days", row.last ? std::optional(row.days) : std::nullopt)
            .field("not_in_block", row.notInBlock)
            .field("over_weeks", row.longAgo)
            .field("others", row.others)
            .field("others_since", row.othersSince)
            .field("reason", english(answers::dueWhy(row, due.question)))
            .endObject();
    json.endArray().key("away").array();
    for (const std::string& name : due.away)
        json.value(name);
    json.endArray().endObject();
}

std::string squadText(const std::string& lift, const Squad& squad, const answers::SquadDue& due,
                      const Masses& in) {
    std::string text =
        lift + ", the squad from " + squad.from.name + " to " + squad.to.name + "\n\n";
    for (const SquadPart& part : squad.parts)
        text += partText(part, squad.level, in);
    return text + in.say(answers::squadChanceWords(squad)) + "\n" + notesText(squad.notes, in) +
           "\n" + dueText(due) + "\n" + cautionText() + "\n";
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
        .ends("low", "high", std::optional(mean->interval))
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
        .field("from_sessions", row.fromSessions)
        .field("to_sessions", row.toSessions)
        .field("reason", row.read ? std::nullopt : std::optional(english(row.read.why().reason)));
    json.key("read");
    if (row.read) {
        json.object();
        readJson(json, *row.read);
        json.endObject();
    } else {
        json.null();
    }
    const auto drawn = answers::drawnOf(mean, row.athlete);
    json.field("shrunken", drawn ? std::optional(drawn->drawn) : std::nullopt)
        .ends("shrunken_low", "shrunken_high",
              drawn ? std::optional(drawn->interval) : std::nullopt)
        .field("extrapolated", row.extrapolated)
        .endObject();
}

std::string squadJson(const std::string& lift, const Squad& squad, const answers::SquadDue& due) {
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
    const answers::SquadAthletes athletes = answers::athletesOf(squad);
    json.endArray()
        .field("expected_by_chance", answers::squadByChance(squad))
        .field("athletes_with_a_figure", athletes.asked)
        .field("athletes_changed", athletes.changed)
        .field("athletes_changed_by_chance_at_most", athletes.byChanceAtMost);
    notesJson(json, squad.notes);
    dueJson(json, due);
    json.endObject();
    return json.text();
}

int runSquad(const SquadOptions& options, const Pages& pages) {
    options.outputs.require(options.json);
    const Date due = dayOrToday(options.due);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const auto lift = liftNamed(log, options.lift);
    const auto from = questions::periodOf(log, options.from, options.within),
               to = questions::periodOf(log, options.to, options.within);
    const auto squad = questions::squadOf(log, lift.id, from, to, {}, {.level = options.level});
    if (!squad)
        return sayNoAnswer(options, squad.why());
    if (!options.pdf.empty())
        pages.squad(*squad, lift.value, unitOf(options.pounds), options.outputs.to(options.pdf));
    if (!options.outputs.textToo())
        return exitDone;
    const auto whoIsDue = questions::squadDueOn(log, due, lift.id, options.weeks);
    print(options.json ? squadJson(lift.value.name, *squad, whoIsDue)
                       : squadText(lift.value.name, *squad, whoIsDue, options.masses()));
    return exitDone;
}

} // namespace

void addSquad(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand(
        "squad", "One lift in every athlete between two days or two blocks, and in all together");
    const auto options = std::make_shared<SquadOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--from", options->from, sideHelp)->required();
    command->add_option("--to", options->to, "The later one, likewise")->required();
    command->add_option("--within", options->within,
                        "Of a day: as many days before and after it as may stand in for it");
    command->add_option("--due", options->due,
                        "The day for which is told who is due; today where left out");
    command->add_option("--weeks", options->weeks, "What is longer ago is due")
        ->check(CLI::Range(1, 520));
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    options->outputs.addFile(*command, "--pdf", options->pdf,
                             "Writes the printed page to this file");
    command->callback([options, &exit, &pages] { exit = runSquad(*options, pages); });
}

} // namespace slopebook::app
