// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answersjson.h"
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "core/log/snapshot.h"
#include "core/questions/liftcontext.h"

#include <memory>

namespace slopebook::app {

namespace {

struct CompareOptions : About {
    std::string from, to;
    std::filesystem::path pdf;
    Outputs outputs;
};

int runCompare(const CompareOptions& options, const Pages& pages) {
    options.outputs.require(options.json);
    const log::Snapshot asked(options.log);
    const log::Log& log = asked.log();
    const questions::Background about = background(log, options);
    const auto from = questions::sessionAt(about.sessions, options.from);
    if (!from)
        return sayNoAnswer(options, from.why());
    const auto to = questions::sessionAt(about.sessions, options.to);
    if (!to)
        return sayNoAnswer(options, to.why());
    const questions::LiftContext context = questions::liftContext(log, about.lift.id);
    const auto comparison = questions::comparisonOf(log, context, about, *from, *to);
    if (!comparison) {
        const auto shared = questions::sharedLoadsOf(log, context, about, *from, *to);
        if (!shared || !options.pdf.empty())
            return sayNoAnswer(options, comparison.why());
        if (options.json) {
            Json json;
            sharedLoadsJson(json, about, *from, *to, comparison.why(), *shared);
            print(json.text());
        } else {
            print(sharedLoadsText(about, *from, *to, comparison.why(), *shared));
        }
        return exitDone;
    }
    if (!options.pdf.empty())
        pages.comparison(log, about, *comparison, options.outputs.to(options.pdf));
    if (!options.outputs.textToo())
        return exitDone;
    if (options.json) {
        Json json;
        comparisonJson(json, log, about, *comparison);
        print(json.text());
    } else {
        print(comparisonText(log, about, *comparison));
    }
    return exitDone;
}

} // namespace

void addCompare(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand("compare", "Two sessions of a lift: what changed");
    const auto options = std::make_shared<CompareOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--athlete", options->athlete, "The athlete's name")->required();
    command->add_option("--lift", options->lift, "The lift's name")->required();
    command->add_option("--from", options->from, "Day of the earlier session")->required();
    command->add_option("--to", options->to, "Day of the later session")->required();
    command->add_flag("--json", options->json, "JSON with all digits");
    options->outputs.addFile(*command, "--pdf", options->pdf,
                             "Writes the comparison as one page to this file");
    command->callback([options, &exit, &pages] { exit = runCompare(*options, pages); });
}

} // namespace slopebook::app
