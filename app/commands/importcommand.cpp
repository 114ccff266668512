// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/importreport.h"
#include "app/commands/interrupt.h"
#include "core/answers/published.h"
#include "core/answers/testkinds.h"
#include "core/exchange/cells.h"
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "core/log/newlog.h"
#include "core/log/rehearsal.h"
#include "core/log/sound.h"
#include "core/model/errors.h"
#include "core/model/names.h"

#include <memory>
#include <unistd.h>
#include <utility>

namespace slopebook::app {

namespace {

struct ImportOptions {
    std::filesystem::path log;
    std::vector<std::filesystem::path> files;
    std::vector<std::string> mvt;
    std::string columns;
    std::filesystem::path map;
    std::vector<std::string> same, somebodyNew;
    bool allNew = false;
    bool propose = false;
    bool dryRun = false, json = false;
    bool unsoundToo = false;
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

/// Who is who, of "--same NAME=KNOWN" and "--new NAME".
exchange::WhoIsWho whoIsWho(const ImportOptions& options) {
    exchange::WhoIsWho who;
    who.allNew = options.allNew;
    for (const std::string& entry : options.same) {
        const auto equals = entry.find('=');
        const std::string name = entry.substr(0, equals);
        const auto known =
            equals == std::string::npos ? std::nullopt : tidyName(entry.substr(equals + 1));
        if (!known || !tidyName(name))
            throw BadInput(asIs("--same " + english(exchange::found(entry))),
                           asIs("the file's name and the athlete's own, such as "
                                "\"Jose Diaz=Jos\u00E9 D\u00EDaz\""));
        who.same[name] = *known;
    }
    who.somebodyNew.insert(options.somebodyNew.begin(), options.somebodyNew.end());
    return who;
}

/// Where an import that only tries makes the log that it would make: no folder of the coach's is
/// touched.
std::filesystem::path tryingPlace() {
    return std::filesystem::temp_directory_path() /
           ("slopebook-try-" + std::to_string(::getpid()) + ".slopebook");
}

template <class Result>
struct Filled {
    Result result;
    bool made = false; ///< the log is new
};

/// Has work fill the log of that name. One that is not there yet is made whole under another name
/// and then put in place, where whole(result) holds; if somebody has made it meanwhile, the work is
/// done on theirs instead. Into a log that is not sound only with the coach's word.
template <class Work, class Whole>
auto fill(const ImportOptions& options, const Work& work, const Whole& whole) {
    const std::filesystem::path& file = options.log;
    const bool dryRun = options.dryRun;
    using Result = decltype(work(std::declval<log::Log&>()));
    const auto isThere = [&] {
        return std::filesystem::exists(std::filesystem::symlink_status(file));
    };
    if (!isThere())
        try {
            log::NewLog fresh(dryRun ? tryingPlace() : file);
            Filled<Result> filled{.result = {}, .made = true};
            {
                log::Log log = log::Log::open(fresh.file());
                filled.result = work(log);
            }
            if (!dryRun && whole(filled.result))
                fresh.place();
            return filled;
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Conflict || dryRun || !isThere())
                throw;
        }
    if (const log::Rehearsal tried(file); tried.log()) {
        if (!options.unsoundToo)
            log::requireSoundToWrite(tried.log()->check(), file);
        Result result = work(*tried.log());
        if (dryRun || !whole(result))
            return Filled<Result>{.result = std::move(result), .made = false};
    }
    log::Log log = log::Log::open(file);
    if (!options.unsoundToo)
        log::writeOnlyWhenSound(log);
    return Filled<Result>{.result = work(log), .made = false};
}

std::string textOf(const std::filesystem::path& file) {
    std::string text;
    exchange::readPieces({.file = file, .text = {}}, exchange::Encoding::Utf8,
                         [&](std::string_view piece) { text += piece; });
    return text;
}

exchange::FileFacts factsUnder(const exchange::Source& table, const exchange::TextLayout& layout) {
    return exchange::lookAt(table, exchange::toldOf(layout));
}

std::string asked(const exchange::Question& question, const exchange::FileFacts& facts) {
    using About = exchange::Question::About;
    const std::string column =
        question.column ? "\"" + english(facts.columnName(*question.column)) + "\"" : std::string();
    switch (question.about) {
    case About::DateOrder:
        if (question.column && facts.columns[*question.column].isSerialDays())
            return "from where days are counted in " + column + ", such as " +
                   english(exchange::found(question.sample)) +
                   " (dates: days from 1900, or days from 1904)";
        return "the order of day and month in " + column + ", such as " +
               english(exchange::found(question.sample)) + " (dates: ...)";
    case About::Decimal:
        return "the decimal mark of " + column + ", such as " +
               english(exchange::found(question.sample)) + " (decimal comma or decimal point)";
    case About::SpeedUnit:
        return "the unit of " + column + ", such as " + english(exchange::found(question.sample)) +
               " (m/s or cm/s)";
    case About::Sheet:
        return "the sheet of the workbook (sheet: ...); what follows is of " +
               english(exchange::found(question.sample));
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
        text += "\n";
        for (const exchange::SheetName& sheet : facts.sheets)
            text += "# a sheet of it" + std::string(sheet.hidden ? " (hidden): " : ": ") +
                    sheet.name + "\n";
        for (const Words& laid : exchange::layoutWords(facts))
            text += "# " + english(laid) + "\n";
        if (const Words order = exchange::orderWords(shape, facts); !order.empty())
            text += "# " + english(order) + "\n";
        text += exchange::shapeText(shape, facts.headings());
        for (const auto& question : exchange::openQuestions(shape, facts))
            text += "# to be said: " + asked(question, facts) + "\n";
        print(text);
    }
    return exitDone;
}

std::string openOf(const exchange::Shape& shape, const exchange::FileFacts& facts) {
    std::string open;
    for (const auto& question : exchange::openQuestions(shape, facts))
        open += (open.empty() ? "" : "; ") + asked(question, facts);
    return open;
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
    if (const std::string open = openOf(shape, facts); !open.empty())
        throw BadInput({.file = name, .line = 0, .column = {}},
                       asIs("a map that leaves something open"), asIs(open));
    return exchange::importShaped(log, table, shape, facts.headings(), settings);
}

// A workbook that is not tidy CSV in one sheet: by what its sheets say of themselves, where that
// leaves nothing open.
exchange::ShapedReport importWorkbook(log::Log& log, const std::filesystem::path& file,
                                      const exchange::ImportSettings& settings) {
    const exchange::Source table{.file = file, .text = {}};
    const auto facts = exchange::lookAt(table);
    const auto shape = exchange::propose(facts);
    if (const std::string open = openOf(shape, facts); !open.empty())
        throw BadInput({.file = file.string(), .line = 0, .column = {}},
                       asIs("a workbook that leaves something open (--propose FILE prints how it "
                            "would be read, for --map)"),
                       asIs(open));
    return exchange::importShaped(log, table, shape, facts.headings(), settings);
}

/// What a dry run finds open is open in earnest too.
void requireDecided(const exchange::ImportReport& report) {
    if (!report.nearly.empty())
        throw exchange::Undecided(report.nearly);
}

int sayDone(const ImportOptions& options, const exchange::ImportReport& report, bool made) {
    if (options.json) {
        requireDecided(report);
        print(reportJson(report, options.log, made && !options.dryRun, options.dryRun));
        return exitDone;
    }
    print((made && !options.dryRun ? "New log: " + options.log.string() + "\n" : std::string()) +
          reportText(report, options.dryRun));
    requireDecided(report);
    return exitDone;
}

int runShaped(const ImportOptions& options,
              const std::function<exchange::ShapedReport(log::Log&)>& work) {
    const auto filled = fill(
        options, work, [](const exchange::ShapedReport& report) { return report.refused.empty(); });
    if (!filled.result.refused.empty()) {
        complain(filled.result);
        return exitBad;
    }
    return sayDone(options, filled.result.report, filled.made);
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
    settings.who = whoIsWho(options);
    Interruptible interruptible;
    settings.progress = interruptible.progress();
    if (!options.map.empty()) {
        if (options.files.size() != 1)
            throw BadInput(asIs(std::to_string(options.files.size()) + " files with --map"),
                           asIs("one"));
        return runShaped(options, [&, map = textOf(options.map)](log::Log& log) {
            return importMapped(log, options.files[0], map, options, settings);
        });
    }
    if (options.files.size() == 1 && options.columns.empty() &&
        exchange::isWorkbook(options.files[0]) && !exchange::readsAsIs(options.files[0]))
        return runShaped(options, [&](log::Log& log) {
            return importWorkbook(log, options.files[0], settings);
        });
    const auto filled = fill(
        options, [&](log::Log& log) { return exchange::importTidy(log, options.files, settings); },
        [](const exchange::ImportReport&) { return true; });
    return sayDone(options, filled.result, filled.made);
}

} // namespace

void addImport(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand(
        "import",
        "Tidy CSV, or a workbook, into a log (made where there is none), whole or not at all");
    const auto options = std::make_shared<ImportOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command
        ->add_option("FILE", options->files, "CSV files, in any order, or .xlsx or .ods workbooks")
        ->required();
    command->add_option("--columns", options->columns,
                        "The file's names for columns: load_kg=Gewicht,velocity=v");
    command
        ->add_option(
            "--map", options->map,
            "How any other table is read: a file as --propose prints it, a fact a line "
            "(sheet, delimiter, encoding, rows passed over, header, units row, rows left "
            "out: Total, loads are columns, rows in order: by time, a row is: a set, blank "
            "is as above, dates: day month year or days from 1900, column velocity, "
            "several in a cell: ..., all athlete: ...)")
        ->check(CLI::ExistingFile);
    auto* propose = command->add_flag("--propose", options->propose,
                                      "Prints how FILE would be read, for --map; writes nothing");
    command->add_flag("--json", options->json, "JSON: what came in")->excludes(propose);
    command
        ->add_option("--mvt", options->mvt,
                     "A lift's minimal-velocity threshold: \"Bench pull=0.52\"; may be repeated")
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    command
        ->add_option(
            "--same", options->same,
            "Who a new name of the file is: \"Jose Diaz=Jos\u00E9 D\u00EDaz\"; may be repeated")
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    command
        ->add_option("--new", options->somebodyNew,
                     "A name that is nearly a known athlete's, and somebody new; may be repeated")
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    command->add_flag("--all-new", options->allNew,
                      "All new names are new athletes, however near to others");
    command->add_flag("--dry-run", options->dryRun, "Reads and checks everything, writes nothing");
    command->add_flag("--even-if-not-sound", options->unsoundToo,
                      "Writes into a log that check finds not sound, which is refused otherwise");
    command->callback([options, &exit] { exit = runImport(*options); });
}

} // namespace slopebook::app
