// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/answers/figures.h"
#include "core/answers/published.h"
#include "core/answers/testkinds.h"
#include "core/exchange/cells.h"
#include "core/exchange/tidyimport.h"
#include "core/model/errors.h"

#include <memory>
#include <utility>

namespace slopebook::app {

using answers::counted;

namespace {

struct Options {
    std::filesystem::path log;
    std::vector<std::filesystem::path> files;
    std::vector<std::string> mvt;
    std::string columns;
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
            throw BadInput("--mvt " + exchange::found(entry),
                           "a lift and its threshold in m/s, such as \"Bench pull=0.52\"");
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
    for (const std::string& line : r.flagged)
        text += "Taken, but worth a look: " + line + "\n";
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

int run(const Options& options) {
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
    const auto options = std::make_shared<Options>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("FILE", options->files, "CSV files, in any order")->required();
    command->add_option("--columns", options->columns,
                        "The file's names for columns: load_kg=Gewicht,velocity=v");
    command
        ->add_option("--mvt", options->mvt,
                     "A lift's minimal-velocity threshold: \"Bench pull=0.52\"; may be repeated")
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    command->add_flag("--dry-run", options->dryRun, "Reads and checks everything, writes nothing");
    command->callback([options, &exit] { exit = run(*options); });
}

} // namespace slopebook::app
