// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook battery: all tests of two dates or two blocks side by side.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "app/commands/partsjson.h"
#include "app/commands/texttable.h"
#include "core/answers/batterysummary.h"
#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/log/snapshot.h"
#include "core/questions/batterytable.h"

#include <algorithm>
#include <memory>

namespace slopebook::app {

namespace {

using Align = TextTable::Align;

using answers::TestChange;

struct BatteryOptions : About {
    std::string from, to;
    std::filesystem::path csv, pdf;
    double level = questions::AskSettings{}.level;
    Outputs outputs;
};

/// "231.0", of several days "231.0 (3: 225.1 to 236.9)".
std::string seenText(const answers::SeenTest& seen, const TestKind& kind) {
    if (!seen.value)
        return english(seen.value.why().reason);
    const std::string value = answers::fixed(seen.value->value, kind.decimals);
    if (seen.sessions < 2)
        return value;
    return value + " (" + std::to_string(seen.sessions) +
           (seen.interval ? ": " + interval(*seen.interval, kind.decimals) : "") + ")";
}

/// What the brackets hold; nothing where every figure is of one day.
std::string bracketsText(const answers::BatteryComparison& battery) {
    const bool means = std::ranges::any_of(battery.tests, [](const TestChange& test) {
        return test.before.sessions > 1 || test.after.sessions > 1;
    });
    return means ? "In brackets: sessions that the mean is of, and its " + percent(battery.level) +
                       " interval.\n"
                 : "";
}

std::string testsText(const answers::BatteryComparison& battery) {
    TextTable table({{"test", Align::Left},
                     {"unit", Align::Left},
                     {"before", Align::Right},
                     {"after", Align::Right},
                     {"change", Align::Right},
                     {"%", Align::Right},
                     {percent(battery.level), Align::Right},
                     {"TE", Align::Right},
                     {"reading", Align::Left}});
    for (const TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        const int d = kind.decimals;
        const bool figure = test.noReading.empty();
        table.row({english(answers::testLabel(kind, test.side)), kind.unit,
                   seenText(test.before, kind), seenText(test.after, kind),
                   test.change ? answers::signedFixed(*test.change, d) : "",
                   test.percent ? answers::signedFixed(*test.percent, 1) : "",
                   figure ? signedInterval(test.read.interval, d) : "",
                   test.noise ? answers::fixed(test.noise->te, d) : "",
                   english(sizedCell(test.read, d))});
    }
    return table.empty() ? english(answers::batterySummary(battery)) + "\n"
                         : table.text() + bracketsText(battery);
}

/// Where a lift has no line to judge by: what was seen at the loads of both sides.
std::string sharedText(const questions::BatteryLift& lift, const Masses& in) {
    std::string text;
    for (const auto& each : lift.shared)
        text += "    at " + in.withName(each.load) +
                " as seen: " + answers::signedFixed(each.read.change, 3) + " m/s (" +
                signedInterval(each.read.interval, 3) + "): " + english(speedCell(each.read)) +
                "\n";
    return text;
}

std::string restText(const questions::BatteryAnswer& answer, const Masses& in) {
    const auto& battery = answer.battery;
    std::string text;
    if (!battery.leftRight.empty()) {
        text += "\nLeft and right (the better side, and by how much of it):\n";
        for (const auto& row : battery.leftRight) {
            const Words change = answers::asymmetryChangeWords(row);
            text += "  " + row.kind.value.name + ": " +
                    (row.before ? english(answers::asymmetryWords(*row.before))
                                : english(row.before.why().reason)) +
                    ", then " +
                    (row.after ? english(answers::asymmetryWords(*row.after))
                               : english(row.after.why().reason)) +
                    (change.empty() ? "" : "; " + english(change)) + "\n";
        }
    }
    if (!battery.missing.empty()) {
        text += "\nNot possible:\n";
        for (const auto& missing : battery.missing)
            text += "  " + isoDate(missing.date) + "  " + in.say(missing.what) + ": " +
                    missing.reason + "\n";
    }
    if (!answer.lifts.empty()) {
        text += "\nLifts:\n";
        for (const auto& lift : answer.lifts)
            text += "  " + lift.lift.value.name + ": " +
                    (lift.comparison ? in.say(lift.comparison->sentence)
                                     : in.say(lift.comparison.why().reason)) +
                    "\n" + sharedText(lift, in);
    }
    for (const Words& what : answer.unread)
        text += "\n" + in.say(answers::leftOutWords(what)) + "\n";
    return text + notesText(battery.notes, in);
}

std::string batteryText(const questions::BatteryAnswer& answer, const Masses& in) {
    return answer.athlete.value.name + ": all tests from " + answer.battery.fromLabel + " to " +
           answer.battery.toLabel + "\n\n" + testsText(answer.battery) + restText(answer, in) +
           "\n" + cautionText() + "\n";
}

void seenJson(Json& json, const char* name, const answers::SeenTest& seen) {
    json.key(name).object();
    if (seen.value)
        json.field("value", seen.value->value)
            .field("attempts", seen.value->counted)
            .field("best", seen.value->best)
            .field("mean", seen.value->mean)
            .field("sd", seen.value->sd);
    else
        json.field("reason", english(seen.value.why().reason));
    json.field("date", seen.date ? std::optional(isoDate(*seen.date)) : std::nullopt)
        .field("first_date", seen.first ? std::optional(isoDate(*seen.first)) : std::nullopt)
        .field("sessions", seen.sessions)
        .ends("low", "high", seen.interval);
    json.endObject();
}

void testChangeJson(Json& json, const TestChange& test) {
    json.object();
    json.field("test", test.kind.value.name)
        .field("side", std::string(word(test.side)))
        .field("unit", test.kind.value.unit)
        .field("higher_is_better", test.kind.value.higherIsBetter);
    seenJson(json, "from", test.before);
    seenJson(json, "to", test.after);
    json.field("change", test.change).field("change_percent", test.percent);
    json.ends("low", "high",
              test.noReading.empty() ? std::optional(test.read.interval) : std::nullopt);
    json.key("typical_error");
    if (test.noise)
        json.object()
            .field("value", test.noise->te)
            .field("df", test.noise->df)
            .field("source", english(test.noise->source))
            .endObject();
    else
        json.null();
    json.field("attempt_noise", test.attemptNoise);
    json.key("smallest");
    if (test.read.smallest)
        json.object()
            .field("value", test.read.smallest->value)
            .field("source", test.read.smallest->source)
            .endObject();
    else
        json.null();
    json.field("reading", std::string(answers::word(test.read.reading)))
        .field("leans", test.read.leans())
        .field("reason",
               test.noReading.empty() ? std::nullopt : std::optional(english(test.noReading)));
    conditionsJson(json, "context_changed", test.conditions);
    json.endObject();
}

void asymmetryJson(Json& json, const char* name, const Answer<answers::Asymmetry>& asymmetry) {
    json.key(name).object();
    if (asymmetry)
        json.field("percent", asymmetry->percent)
            .field("better", std::string(word(asymmetry->better)));
    else
        json.field("reason", english(asymmetry.why().reason));
    json.endObject();
}

void sharedJson(Json& json, const questions::BatteryLift& lift) {
    json.key("shared_loads").array();
    for (const auto& each : lift.shared)
        json.object()
            .field("load", kilograms(each.load))
            .field("change", each.read.change)
            .ends("low", "high", std::optional(each.read.interval))
            .field("reading", std::string(answers::word(each.read.reading)))
            .field("leans", each.read.leans())
            .endObject();
    json.endArray();
}

/// Of the size, percentage points: less is better.
void asymmetryChangeJson(Json& json, const answers::LeftRight& row) {
    const bool read = row.change && row.noReading.empty();
    json.field("change_signed", row.change)
        .field("change", read ? std::optional(row.read.change) : std::nullopt)
        .ends("low", "high", read ? std::optional(row.read.interval) : std::nullopt)
        .field("reading", std::string(answers::word(row.read.reading)))
        .field("leans", row.read.leans())
        .field("reason",
               row.noReading.empty() ? std::nullopt : std::optional(english(row.noReading)));
}

std::string batteryJson(const questions::BatteryAnswer& answer) {
    const auto& battery = answer.battery;
    Json json;
    json.object();
    json.field("athlete", answer.athlete.value.name)
        .field("level", battery.level)
        .field("from", battery.fromLabel)
        .field("to", battery.toLabel);
    json.key("tests").array();
    for (const TestChange& test : battery.tests)
        testChangeJson(json, test);
    json.endArray().key("left_right").array();
    for (const auto& row : battery.leftRight) {
        json.object().field("test", row.kind.value.name);
        asymmetryJson(json, "from", row.before);
        asymmetryJson(json, "to", row.after);
        asymmetryChangeJson(json, row);
        json.endObject();
    }
    json.endArray().key("forest").array();
    for (const auto& row : battery.forest) {
        json.object().field("label", english(row.label)).field("change", row.change);
        json.ends("low", "high", std::optional(row.interval));
        json.field("reading", std::string(answers::word(row.reading)))
            .field("flagged", row.otherConditions || row.extrapolated)
            .endObject();
    }
    json.endArray().key("missing").array();
    for (const auto& missing : battery.missing)
        json.object()
            .field("date", isoDate(missing.date))
            .field("what", english(missing.what))
            .field("reason", missing.reason)
            .endObject();
    json.endArray().key("lifts").array();
    for (const auto& lift : answer.lifts) {
        json.object()
            .field("lift", lift.lift.value.name)
            .field("sentence", lift.comparison ? std::optional(english(lift.comparison->sentence))
                                               : std::nullopt)
            .field("reason", lift.comparison
                                 ? std::nullopt
                                 : std::optional(english(lift.comparison.why().reason)));
        sharedJson(json, lift);
        json.endObject();
    }
    json.endArray().key("unread").array();
    for (const Words& what : answer.unread)
        json.value(english(what));
    json.endArray();
    notesJson(json, battery.notes);
    json.endObject();
    return json.text();
}

int runBattery(const BatteryOptions& options, const Pages& pages) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const auto athlete = athleteNamed(log, options.athlete);
    const auto ask = [&](bool allBlocks) {
        return questions::batteryOf(log, athlete.id, questions::batterySide(log, options.from),
                                    questions::batterySide(log, options.to),
                                    {.level = options.level, .allBlocks = allBlocks});
    };
    const auto answer = ask(false);
    if (!answer)
        return sayNoAnswer(options, answer.why());
    // Figures for others to reckon with are of the change by itself; what is read is as the season
    // has it, as on every page.
    const bool text = options.outputs.textToo() && !options.json;
    const auto told = text || !options.pdf.empty() ? ask(true) : answer;
    if (!options.csv.empty())
        questions::writeBatteryCsv(*answer, options.outputs.to(options.csv));
    if (!options.pdf.empty())
        pages.battery(*told, unitOf(options.pounds), options.outputs.to(options.pdf));
    if (options.outputs.textToo())
        print(options.json ? batteryJson(*answer) : batteryText(*told, options.masses()));
    return complainOfLeftOut(answer->unread);
}

} // namespace

void addBattery(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand(
        "battery",
        "All tests of two days or two blocks, of a block the mean of its sessions: what changed, "
        "left and right");
    const auto options = std::make_shared<BatteryOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--from", options->from, sideHelp)->required();
    command->add_option("--to", options->to, "The later one, likewise")->required();
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    options->outputs.addFile(*command, "--csv", options->csv,
                             "Writes the comparison as CSV to this file");
    options->outputs.addFile(*command, "--pdf", options->pdf,
                             "Writes the printed page to this file");
    command->callback([options, &exit, &pages] { exit = runBattery(*options, pages); });
}

} // namespace slopebook::app
