// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/outputs.h"
#include "core/answers/figures.h"
#include "core/answers/published.h"
#include "core/answers/testkinds.h"
#include "core/exchange/cells.h"
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "core/model/errors.h"

#include <cstdio>
#include <memory>
#include <utility>

namespace slopebook::app {

using answers::counted;

namespace {

struct ImportOptions {
    std::filesystem::path log;
    std::vector<std::filesystem::path> files;
    std::vector<std::string> mvt;
    std::string columns;
    std::filesystem::path map;
    bool propose = false;
    bool dryRun = false;
};

std::map<std::string, double> thresholds(const std::vector<std::string>& entries) {
    std::map<std::string, double> mvt;
    for (const std::string& entry : entries) {
        const auto equals = entry.rfind('=');
        const auto value = equals == std::string::npos
                               ? std::nullopt
                               : exchange::readNumber(std::string_view(entry).substr(equals + 1));
        if (!value || equals == 0)
            throw BadInput(asIs("--mvt " + english(exchange::found(entry))),
                           asIs("a lift and its threshold in m/s, such as \"Bench pull=0.52\""));
        mvt[entry.substr(0, equals)] = *value;
    }
    return mvt;
}

std::string listed(const std::string& title, const std::vector<std::string>& entries) {
    std::string list;
    for (const std::string& entry : entries)
        list += (list.empty() ? "" : ", ") + entry;
    return list.empty() ? list : title + list + "\n";
}

std::string batteryReport(const exchange::BatteryReport& r) {
    std::string text;
    if (r.attemptsAdded + r.gapsAdded > 0)
        text += "Of the battery: " + counted(r.attemptsAdded, "attempt") + ", " +
                counted(r.gapsAdded, "test") + " not possible" +
                (r.sessionsAdded > 0 ? ", " + counted(r.sessionsAdded, "new session") : "") + ".\n";
    if (r.attemptsAlreadyThere > 0)
        text += "Already there: " + counted(r.attemptsAlreadyThere, "attempt") + ".\n";
    return text + listed("New tests: ", r.testsMade) +
           listed("New athletes by their tests: ", r.athletesMade);
}

std::string report(const exchange::ImportReport& r, bool dryRun) {
    std::string text = counted(r.rows, "row") + " read.\n";
    if (r.addedNothing())
        text += "Nothing new: everything was in the log already.\n";
    else
        text += std::string(dryRun ? "Would add " : "Added ") + counted(r.setsAdded, "set") +
                " with " + counted(r.repsAdded, "rep") + " in " +
                counted(r.sessionsAdded, "new session") + ".\n";
    if (r.setsAlreadyThere > 0)
        text += "Already there: " + counted(r.setsAlreadyThere, "set") + ".\n";
    text += listed("New athletes: ", r.athletesMade) + listed("New lifts: ", r.liftsMade) +
            listed("New devices: ", r.devicesMade) + listed("New training blocks: ", r.blocksMade) +
            listed("New sets of equipment: ", r.equipmentMade);
    if (r.checkLoadsAdded > 0)
        text += "New check loads: " + std::to_string(r.checkLoadsAdded) + "\n";
    text += batteryReport(r.battery);
    text += listed("Columns not used: ", r.columnsNotUsed);
    for (const std::string& line : r.filledIn)
        text += "Filled in: " + line + "\n";
    for (const Words& line : r.flagged)
        text += "Taken, but worth a look: " + english(line) + "\n";
    return dryRun ? text + "Dry run: nothing was written.\n" : text;
}

// A log that an import makes is gone again where the import fails, or was only tried.
class LogToFill {
public:
    LogToFill(const std::filesystem::path& file, bool dryRun) : m_file(file) {
        m_made = !std::filesystem::exists(file);
        if (m_made && dryRun)
            m_file += ".dry-run";
        m_drop = m_made;
        m_log.emplace(m_made ? log::Log::create(m_file) : log::Log::open(m_file));
    }
    ~LogToFill() {
        if (!m_drop)
            return;
        m_log.reset();
        std::error_code ignored;
        std::filesystem::remove(m_file, ignored);
    }
    LogToFill(const LogToFill&) = delete;
    LogToFill& operator=(const LogToFill&) = delete;
    log::Log& log() { return *m_log; }
    bool made() const { return m_made; }
    void keep() { m_drop = false; }

private:
    std::filesystem::path m_file;
    bool m_made = false, m_drop = false;
    std::optional<log::Log> m_log;
};

std::string textOf(const std::filesystem::path& file) {
    std::string text;
    exchange::readPieces({.file = file, .text = {}}, exchange::Encoding::Utf8,
                         [&](std::string_view piece) { text += piece; });
    return text;
}

exchange::FileFacts factsUnder(const exchange::Source& table, const exchange::Layout& layout) {
    return exchange::lookAt(table, {.encoding = layout.encoding,
                                    .delimiter = layout.delimiter,
                                    .skip = layout.skip,
                                    .header = layout.header});
}

std::string asked(const exchange::Question& question, const exchange::FileFacts& facts) {
    using About = exchange::Question::About;
    const std::string column =
        question.column ? "\"" + english(facts.columnName(*question.column)) + "\"" : std::string();
    switch (question.about) {
    case About::DateOrder:
        return "the order of day and month in " + column + ", such as " +
               english(exchange::found(question.sample)) + " (dates: ...)";
    case About::Decimal:
        return "the decimal mark of " + column + ", such as " +
               english(exchange::found(question.sample)) + " (decimal comma or decimal point)";
    case About::SpeedUnit:
        return "the unit of " + column + ", such as " + english(exchange::found(question.sample)) +
               " (m/s or cm/s)";
    case About::Role:
        break;
    }
    const std::string role(
        question.role == exchange::TidyLoad ? "load" : exchange::tidyColumns[question.role]);
    return "the " + role + " (column " + role + ": ..." +
           (question.role == exchange::TidyVelocity ? ")" : ", or all " + role + ": ...)");
}

// Prints how a table would be read, to be kept as a file, changed and given to --map.
int propose(const ImportOptions& options) {
    for (const auto& file : options.files) {
        const auto facts = exchange::lookAt({.file = file, .text = {}});
        const auto shape = exchange::propose(facts);
        std::string text = "# " + file.filename().string() + ": columns that it has: ";
        for (std::size_t i = 0; i < facts.columns.size(); ++i)
            text += (i > 0 ? ", " : "") + english(facts.columnName(i));
        text += "\n" + exchange::shapeText(shape, facts.headings());
        for (const auto& question : exchange::openQuestions(shape, facts))
            text += "# to be said: " + asked(question, facts) + "\n";
        print(text);
    }
    return exitDone;
}

// Refused rows, a line each; nothing was written.
int sayRefused(const exchange::ShapedReport& done) {
    for (const BadInput& bad : done.refused)
        std::fprintf(stderr, "slopebook: %s\n", bad.what());
    std::fprintf(stderr, "slopebook: %s of %s refused; nothing was written.\n",
                 counted(static_cast<int>(done.rowsRefused), "row").c_str(),
                 std::to_string(done.rowsRead).c_str());
    return exitBad;
}

// One table under a map: whole or not at all.
exchange::ShapedReport importMapped(log::Log& log, const std::filesystem::path& file,
                                    const std::string& map, const ImportOptions& options,
                                    const exchange::ImportSettings& settings) {
    const exchange::Source table{.file = file, .text = {}};
    const std::string name = options.map.string();
    const auto facts = factsUnder(table, exchange::parseLayout(map, name));
    auto shape = exchange::parseShape(map, facts.headings(), name);
    exchange::settle(shape, facts);
    std::string open;
    for (const auto& question : exchange::openQuestions(shape, facts))
        open += (open.empty() ? "" : "; ") + asked(question, facts);
    if (!open.empty())
        throw BadInput({.file = name, .line = 0, .column = {}},
                       asIs("a map that leaves something open"), asIs(open));
    return exchange::importShaped(log, table, shape, facts.headings(), settings);
}

int runMapped(const ImportOptions& options, const exchange::ImportSettings& settings) {
    if (options.files.size() != 1)
        throw BadInput(asIs(std::to_string(options.files.size()) + " files with --map"),
                       asIs("one"));
    const std::string map = textOf(options.map);
    LogToFill target(options.log, options.dryRun);
    const auto done = importMapped(target.log(), options.files[0], map, options, settings);
    if (!done.refused.empty())
        return sayRefused(done);
    if (!options.dryRun)
        target.keep();
    print(report(done.report, options.dryRun));
    return exitDone;
}

int runImport(const ImportOptions& options) {
    if (options.propose)
        return propose(options);
    exchange::ImportSettings settings;
    if (!options.columns.empty())
        settings.columns = exchange::parseColumnMap(options.columns);
    settings.mvt = thresholds(options.mvt);
    settings.publishedMvt = [](const std::string& lift, VelocityKind kind) {
        const auto row = answers::published(lift, kind);
        return row ? row->mvt : std::optional<Mvt>();
    };
    settings.knownTest = [](const std::string& test) { return answers::builtInTestKind(test); };
    settings.dryRun = options.dryRun;
    const Stoppable stoppable;
    settings.progress = stoppable.progress();
    if (!options.map.empty())
        return runMapped(options, settings);
    LogToFill target(options.log, options.dryRun);
    const auto done = exchange::importTidy(target.log(), options.files, settings);
    if (!options.dryRun)
        target.keep();
    print((target.made() && !options.dryRun ? "New log: " + options.log.string() + "\n"
                                            : std::string()) +
          report(done, options.dryRun));
    return exitDone;
}

} // namespace

void addImport(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "import", "Tidy CSV into a log (made where there is none), whole or not at all");
    const auto options = std::make_shared<ImportOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("FILE", options->files, "CSV files, in any order")->required();
    command->add_option("--columns", options->columns,
                        "The file's names for columns: load_kg=Gewicht,velocity=v");
    command
        ->add_option("--map", options->map,
                     "How any other table is read: a file as --propose prints it")
        ->check(CLI::ExistingFile);
    command->add_flag("--propose", options->propose,
                      "Prints how FILE would be read, for --map; writes nothing");
    command
        ->add_option("--mvt", options->mvt,
                     "A lift's minimal-velocity threshold: \"Bench pull=0.52\"; may be repeated")
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    command->add_flag("--dry-run", options->dryRun, "Reads and checks everything, writes nothing");
    command->callback([options, &exit] { exit = runImport(*options); });
}

} // namespace slopebook::app
