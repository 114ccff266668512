// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/comparescript.h"
#include "app/commands/outputs.h"
#include "core/log/durable.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/questions/blockquestions.h"
#include "core/questions/seasonstep.h"

#include <memory>

namespace slopebook::app {

namespace {

struct CompareOptions : About {
    std::string from, to;
    std::filesystem::path pdf, script;
    double level = questions::AskSettings{}.level;
    Outputs outputs;
};

/// No line can judge it: of one session a side what was seen at the loads of both.
int sayShared(const CompareOptions& options, const log::Log& log,
              const questions::LiftContext& context, const questions::Background& about,
              const std::pair<answers::BlockSessions, answers::BlockSessions>& sides,
              const NoAnswer& why) {
    const auto &from = sides.first.sessions, &to = sides.second.sessions;
    if (from.size() != 1 || to.size() != 1 || !options.pdf.empty() || !options.script.empty())
        return sayNoAnswer(options, why);
    const auto shared = questions::sharedLoadsOf(log, context, about, from[0], to[0]);
    if (!shared)
        return sayNoAnswer(options, why);
    if (options.json) {
        Json json;
        sharedLoadsJson(json, about, from[0], to[0], why, *shared);
        print(json.text());
    } else {
        print(sharedLoadsText(about, from[0], to[0], why, *shared, options.masses()));
    }
    return exitDone;
}

std::optional<BlockId> blockOf(const questions::DayOrBlock& side) {
    const auto* block = std::get_if<Stored<BlockId, Block>>(&side);
    return block ? std::optional(block->id) : std::nullopt;
}

std::vector<Block> blocksOf(std::initializer_list<questions::DayOrBlock> sides) {
    std::vector<Block> blocks;
    for (const questions::DayOrBlock& side : sides)
        if (const auto* block = std::get_if<Stored<BlockId, Block>>(&side))
            blocks.push_back(block->value);
    return blocks;
}

int runCompare(const CompareOptions& options, const Pages& pages) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const questions::Background about = background(log, options);
    const auto from = questions::dayOrBlock(log, about.sessions, options.from);
    if (!from)
        return sayNoAnswer(options, from.why());
    const auto to = questions::dayOrBlock(log, about.sessions, options.to);
    if (!to)
        return sayNoAnswer(options, to.why());
    const questions::LiftContext context = questions::liftContext(log, about.lift.id);
    const auto comparison =
        questions::comparisonOfSides(log, context, about, *from, *to, {.level = options.level});
    if (!comparison)
        return sayShared(options, log, context, about,
                         {questions::sessionsOf(*from, about.sessions),
                          questions::sessionsOf(*to, about.sessions)},
                         comparison.why());
    // Figures for others to reckon with are of the change by itself; what is read is as the season
    // has it, as on every page.
    answers::Comparison told = *comparison;
    if (!options.pdf.empty() || (options.outputs.textToo() && !options.json))
        questions::tellSeasonStep(told, log, context, about.athlete.id, blockOf(*from),
                                  blockOf(*to), {.level = options.level});
    if (!options.script.empty()) {
        if (comparison->ofSeveral())
            throw BadInput(asIs("--script with several sessions on a side"),
                           asIs("one session on each: the script knows the lines of two days"));
        log::writeWhole(options.outputs.to(options.script), comparisonForR(about, *comparison));
    }
    if (!options.pdf.empty())
        pages.comparison(log, about, told, unitOf(options.pounds), options.outputs.to(options.pdf));
    if (!options.outputs.textToo())
        return exitDone;
    if (options.json) {
        Json json;
        comparisonJson(json, log, about, *comparison);
        print(json.text());
    } else {
        print(comparisonText(log, about, told, options.masses()) +
              storiesText(blocksOf({*from, *to}), options.masses()));
    }
    return exitDone;
}

} // namespace

void addCompare(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand(
        "compare", "Two sessions, blocks or stretches of days of a lift: what changed");
    const auto options = std::make_shared<CompareOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command
        ->add_option("--from", options->from,
                     "Day of the earlier session (2026-03-14, or 2026-03-14#2 for the second of "
                     "that day), days (2026-03-01..2026-03-14) or a block's name: of these all "
                     "sessions are made one")
        ->required();
    command->add_option("--to", options->to, "The later one, likewise")->required();
    command->add_flag("--json", options->json, "JSON with all digits");
    addLevel(*command, options->level);
    addPounds(*command, options->pounds);
    options->outputs.addFile(*command, "--pdf", options->pdf,
                             "Writes the comparison as one page to this file, its figures "
                             "attached as CSV");
    options->outputs.addFile(*command, "--script", options->script,
                             "Writes R that works the change out anew from an export");
    command->callback([options, &exit, &pages] { exit = runCompare(*options, pages); });
}

} // namespace slopebook::app
