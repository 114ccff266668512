// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook season: everything that was measured, by training blocks.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "app/commands/seasonjson.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/log/durable.h"
#include "core/log/snapshot.h"
#include "core/questions/seasonquestions.h"

#include <memory>

namespace slopebook::app {

namespace {

using answers::MatrixCell;
using answers::MatrixRow;
using answers::SeasonMatrix;

struct SeasonOptions : About {
    std::string against;
    std::vector<std::string> blocks;
    std::filesystem::path csv;
    double level = questions::AskSettings{}.level;
    Outputs outputs;
};

std::string cellText(const MatrixRow& row, const MatrixCell& cell, const Masses& in) {
    if (!cell.value)
        return in.say(cell.value.why().reason);
    const Masses of = row.measure.isMass() ? in : Masses();
    std::string text = of.fixed(*cell.value, row.measure.decimals);
    if (cell.sessions > 1)
        text += " (" + std::to_string(cell.sessions) + ")";
    if (cell.against && row.measure.judged())
        text += ", " + (cell.against->comparable() && !cell.against->why.empty()
                            ? in.say(cell.against->why)
                            : in.say(answers::sizedReading(cell.against->read)));
    return text;
}

std::string seasonText(const questions::SeasonAnswer& answer, const Masses& in) {
    const SeasonMatrix& matrix = answer.matrix;
    using Align = TextTable::Align;
    std::vector<TextTable::Column> columns{{"measure", Align::Left}, {"unit", Align::Left}};
    for (const auto& block : matrix.blocks)
        columns.push_back({block.block.name, Align::Left});
    TextTable table(std::move(columns));
    for (const MatrixRow& row : matrix.rows) {
        std::vector<std::string> cells{in.say(answers::measureWords(row.measure)),
                                       row.measure.isMass() ? in.name() : row.measure.unit};
        for (const MatrixCell& cell : row.cells)
            cells.push_back(cellText(row, cell, in));
        table.row(std::move(cells));
    }
    std::string text = answer.athlete.value.name + ": the season by blocks, read against " +
                       matrix.blocks[matrix.chosen].block.name + "\n\n" + in.say(matrix.sentence) +
                       "\n\n" + table.text() +
                       "In brackets: sessions made one, where they are several.\n\n";
    if (!matrix.chance.empty())
        text += in.say(matrix.chance) + "\n";
    text += "What was done in the blocks:\n";
    for (const Words& words : matrix.story)
        text += "  " + in.say(words) + "\n";
    for (const Words& words : matrix.design)
        text += in.say(words) + "\n";
    for (const Words& what : answer.unread)
        text += "left out: " + english(what) + "\n";
    return text + notesText(matrix.notes, in) + "\n" + cautionText() + "\n";
}

int runSeason(const SeasonOptions& options) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const auto athlete = athleteNamed(log, options.athlete);
    const auto answer = questions::seasonMatrixOf(
        log, athlete.id, questions::seasonQuestion(log, options.blocks, options.against),
        {.level = options.level});
    if (!answer)
        return sayNoAnswer(options, answer.why());
    if (!options.csv.empty())
        log::writeWhole(options.outputs.to(options.csv), seasonCsv(*answer));
    if (options.outputs.textToo())
        print(options.json ? seasonJson(*answer) : seasonText(*answer, options.masses()));
    return complainOfLeftOut(answer->unread);
}

} // namespace

void addSeason(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "season", "Everything that was measured, by training blocks, each read against one");
    const auto options = std::make_shared<SeasonOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--against", options->against,
                        "The block, day (2026-03-14, or 2026-03-14#2 for its second session) or "
                        "days that the others are read against; the first where left "
                        "out");
    command->add_option(
        "--block", options->blocks,
        "A column: a block, a day, or days (2026-03-01..2026-03-14); as often as there "
        "are; all blocks where left out");
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON with all digits");
    options->outputs.addFile(*command, "--csv", options->csv, "Writes it as CSV to this file");
    command->callback([options, &exit] { exit = runSeason(*options); });
}

} // namespace slopebook::app
