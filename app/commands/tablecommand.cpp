// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook table: every session's line, one row each, for R or pandas.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/outputs.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/log/durable.h"
#include "core/log/snapshot.h"
#include "core/questions/estimates.h"

#include <memory>

namespace slopebook::app {

namespace {

using exchange::Cell;
using questions::EstimateColumn;
using questions::EstimateRow;

struct TableOptions {
    std::filesystem::path log, csv;
    std::string athlete, lift;
    double level = questions::AskSettings{}.level;
    bool json = false, pounds = false;
    Outputs outputs;
};

void cellJson(Json& json, const Cell& cell) {
    struct Write {
        Json& json;
        void operator()(std::monostate) const { json.null(); }
        void operator()(const std::string& text) const {
            text.empty() ? json.null() : json.value(text);
        }
        void operator()(double value) const { json.value(value); }
        void operator()(Mass mass) const { json.value(kilograms(mass)); }
        void operator()(int count) const { json.value(count); }
        void operator()(Date date) const { json.value(isoDate(date)); }
    };
    std::visit(Write{json}, cell);
}

void rowJson(Json& json, const EstimateRow& row) {
    json.object();
    for (std::size_t i = 0; i < row.size(); ++i) {
        json.key(questions::estimatesTable.columns[i].written());
        cellJson(json, row[i]);
    }
    json.endObject();
}

/// Empty where there is no figure.
std::string shown(const Cell& cell, int decimals) {
    if (const auto* value = std::get_if<double>(&cell))
        return answers::fixed(*value, decimals);
    if (const auto* mass = std::get_if<Mass>(&cell))
        return answers::loadText(kilograms(*mass));
    if (const auto* count = std::get_if<int>(&cell))
        return std::to_string(*count);
    const auto* text = std::get_if<std::string>(&cell);
    return text ? *text : std::string();
}

/// Of a figure in kilograms.
std::string massShown(const Cell& cell, const Masses& in) {
    if (const auto* value = std::get_if<double>(&cell))
        return in.fixed(*value, 1);
    if (const auto* mass = std::get_if<Mass>(&cell))
        return in.load(*mass);
    return {};
}

/// The same for what is said of each kilogram.
std::string shownPer(const Cell& cell, const Masses& in) {
    const auto* value = std::get_if<double>(&cell);
    return value ? answers::fixed(in.per(*value), 5) : std::string();
}

/// "90.1 to 96.3", or nothing.
std::string endsText(const EstimateRow& row, EstimateColumn low, const Masses& in) {
    const std::string from = massShown(row[low], in);
    return from.empty() ? from : from + " to " + massShown(row[low + 1], in);
}

std::vector<std::string> textRow(const EstimateRow& row, const Masses& in) {
    using enum EstimateColumn;
    const std::string lifted = massShown(row[EstimateLifted], in),
                      notLifted = massShown(row[EstimateNotLifted], in);
    return {shown(row[EstimateAthlete], 0),
            shown(row[EstimateLift], 0),
            dateKey(std::get<Date>(row[EstimateDate]), std::get<int>(row[EstimateSession])),
            shown(row[EstimateDevice], 0),
            shown(row[EstimateN], 0),
            shown(row[EstimateV0], 3),
            shown(row[EstimateV0Se], 3),
            shownPer(row[EstimateSlope], in),
            shownPer(row[EstimateSlopeSe], in),
            shown(row[EstimateResidualSd], 4),
            shown(row[EstimateDf], 0),
            shown(row[EstimateR2], 4),
            shown(row[EstimateMvt], 3),
            massShown(row[EstimateOneRm], in),
            endsText(row, EstimateOneRmLow, in),
            endsText(row, EstimatePlanLow, in),
            shown(row[EstimateReach], 2),
            notLifted.empty() ? lifted : lifted + " to " + notLifted,
            shown(row[EstimateReason], 0)};
}

TextTable emptyTable(double level, const Masses& in) {
    using Align = TextTable::Align;
    return TextTable({{"Athlete", Align::Left},
                      {"Lift", Align::Left},
                      {"Date", Align::Left},
                      {"Device", Align::Left},
                      {"n"},
                      {"V0 m/s"},
                      {"SE"},
                      {"Slope m/s/" + in.name()},
                      {"SE"},
                      {"s m/s"},
                      {"df"},
                      {"R2"},
                      {"MVT m/s"},
                      {"1RM " + in.name()},
                      {percent(level) + " " + in.name()},
                      {"to plan with " + in.name()},
                      {"Reach"},
                      {"Bracket " + in.name()},
                      {"Why not", Align::Left}});
}

int runTable(const TableOptions& options) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const log::Filter filter = filterNamed(log, options.athlete, options.lift);
    Interruptible interruptible;
    std::string csv = exchange::csvHeader(questions::estimatesTable) + "\n";
    const Masses in(unitOf(options.pounds));
    TextTable table = emptyTable(options.level, in);
    Json json;
    json.object().key("sessions").array();
    questions::eachEstimate(
        log, filter, {.level = options.level},
        [&](const EstimateRow& row) {
            if (!options.csv.empty())
                csv += exchange::csvLine(row) + "\n";
            if (options.json)
                rowJson(json, row);
            else if (options.outputs.textToo())
                table.row(textRow(row, in));
        },
        interruptible.progress());
    json.endArray().endObject();
    if (!options.csv.empty())
        log::writeWhole(options.outputs.to(options.csv), csv);
    if (options.json)
        print(json.text());
    else if (options.outputs.textToo())
        print(table.empty() ? "No sessions.\n" : table.text());
    return exitDone;
}

} // namespace

void addTable(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "table", "Every session's line with all its figures, one row each, for R or pandas");
    const auto options = std::make_shared<TableOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "One athlete; all where left out");
    command->add_option("--lift", options->lift, "One lift; all where left out");
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    options->outputs.addFile(*command, "--csv", options->csv,
                             "Writes it as CSV to this file, as an export has it");
    command->callback([options, &exit] { exit = runTable(*options); });
}

} // namespace slopebook::app
