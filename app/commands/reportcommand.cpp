// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook report: a squad page for each lift and a page for each athlete, in one new folder.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "app/commands/interrupt.h"
#include "app/commands/outputs.h"
#include "core/answers/squadmean.h"
#include "core/exchange/cells.h"
#include "core/log/durable.h"
#include "core/log/newfolder.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/model/few.h"
#include "core/model/filenames.h"
#include "core/questions/liftcontext.h"

#include <algorithm>
#include <map>
#include <memory>

namespace slopebook::app {

namespace {

constexpr const char* indexName = "index.csv";

struct ReportOptions {
    std::filesystem::path log, folder;
    std::string from, to;
    bool json = false, pounds = false;
    Outputs outputs;
};

/// A page of the report, or (no file) why there is none.
struct ReportPage {
    std::string file, kind, name, said;
};

/// Writes the pages into a folder that has its name only when all are there.
class Report {
public:
    Report(const log::Log& log, const ReportOptions& options, const Pages& pages, Progress progress)
        : m_log(log), m_options(options), m_pages(pages), m_progress(std::move(progress)),
          m_from(questions::batterySide(log, options.from)),
          m_to(questions::batterySide(log, options.to)) {
        const auto from = questions::daysOf(log, m_from).days,
                   to = questions::daysOf(log, m_to).days;
        if (m_from == m_to || ((from.holds(to.first) || to.holds(from.first)) &&
                               !(std::holds_alternative<DaySession>(m_from) &&
                                 std::holds_alternative<DaySession>(m_to))))
            throw BadInput(asIs("days that lie on both sides"),
                           asIs("--from and --to apart from each other"));
    }

    /// False where there is nothing to write: then nothing is.
    bool write() {
        log::NewFolder folder(m_options.folder, m_options.outputs.existing());
        m_folder = folder.path();
        const auto lifts = m_log.lifts();
        const auto athletes = m_log.athletes();
        m_all = static_cast<std::int64_t>(lifts.size() + athletes.size()) * 1000;
        for (const auto& lift : lifts) {
            readable("squad", lift.value.name, [&] { addSquad(lift); });
            step();
        }
        for (const auto& athlete : athletes) {
            readable("athlete", athlete.value.name, [&] { addAthlete(athlete); });
            step();
        }
        if (std::ranges::all_of(m_pagesMade, [](const auto& page) { return page.file.empty(); }))
            return false;
        log::writeWhole({m_folder / indexName, log::Existing::Refuse}, index());
        tell(m_progress, m_all, m_all);
        folder.giveName();
        return true;
    }

    const std::vector<ReportPage>& made() const { return m_pagesMade; }
    const std::vector<Words>& unread() const { return m_unread; }

private:
    void step() {
        m_done += 1000;
        tell(m_progress, m_done, m_all);
    }

    /// Damage that is met is noted, and the rest goes on.
    template <class Work>
    void readable(const char* kind, const std::string& name, const Work& work) {
        try {
            work();
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Damaged && error.kind() != LogError::Kind::Conflict)
                throw;
            leaveOut(kind, name, "cannot be read: " + std::string(error.what()));
            m_unread.push_back(error.words());
        }
    }

    void leaveOut(const char* kind, const std::string& name, const std::string& why) {
        m_pagesMade.push_back({.file = {}, .kind = kind, .name = name, .said = why});
    }

    log::Destination next(const char* kind, const std::string& name, const std::string& said) {
        const std::string file = m_names.next(std::string(kind) + " ", name, ".pdf");
        m_pagesMade.push_back({.file = file, .kind = kind, .name = name, .said = said});
        return {m_folder / file, log::Existing::Refuse};
    }

    const questions::LiftContext& context(LiftId lift) {
        const auto found = m_contexts.find(lift);
        return found != m_contexts.end()
                   ? found->second
                   : m_contexts.emplace(lift, questions::liftContext(m_log, lift)).first->second;
    }

    void addSquad(const Stored<LiftId, Lift>& lift) {
        const Progress inside = [&](std::int64_t done, std::int64_t total) {
            return !m_progress || m_progress(m_done + (total > 0 ? done * 1000 / total : 0), m_all);
        };
        const auto squad =
            questions::squadOf(m_log, context(lift.id), questions::periodOf(m_log, m_options.from),
                               questions::periodOf(m_log, m_options.to), {}, {}, inside);
        if (!squad) {
            leaveOut("squad", lift.value.name, english(squad.why().reason));
            return;
        }
        int most = 0;
        for (const auto& part : squad->parts)
            most = std::max(most, part.figures());
        if (most < answers::leastAthletes) {
            leaveOut("squad", lift.value.name,
                     "under " + std::to_string(answers::leastAthletes) +
                         " athletes with a change to be read");
            return;
        }
        m_pages.squad(*squad, lift.value, unitOf(m_options.pounds),
                      next("squad", lift.value.name, english(answers::squadChanceWords(*squad))));
    }

    void addAthlete(const Stored<AthleteId, Athlete>& athlete) {
        const auto from = questions::columnFor(m_log, m_from, 1),
                   to = questions::columnFor(m_log, m_to, 2);
        const auto answer = questions::seasonMatrixOf(
            m_log, [this](LiftId lift) -> const questions::LiftContext& { return context(lift); },
            athlete.id,
            {.given = {from, to}, .sessionOf = sessionsMeant(from.id, to.id), .chosen = from.id});
        if (!answer || answer->matrix.blocks.size() < 2) {
            const auto there = [&](BlockId id) {
                return answer && answer->matrix.blocks.front().id == id;
            };
            leaveOut("athlete", athlete.value.name,
                     !answer          ? "no session on either side"
                     : there(from.id) ? "no session in " + to.value.name
                                      : "no session in " + from.value.name);
            return;
        }
        for (const Words& what : answer->unread)
            m_unread.push_back(what);
        m_pages.overview(m_log, *answer, unitOf(m_options.pounds),
                         next("athlete", athlete.value.name, english(answer->matrix.sentence)));
    }

    /// Of columns that are one session of a day, its number there.
    std::map<BlockId, int> sessionsMeant(BlockId from, BlockId to) const {
        std::map<BlockId, int> meant;
        if (const auto* session = std::get_if<DaySession>(&m_from))
            meant.emplace(from, session->number);
        if (const auto* session = std::get_if<DaySession>(&m_to))
            meant.emplace(to, session->number);
        return meant;
    }

    std::string index() const {
        std::string text = "file,page,name,says\n";
        for (const ReportPage& page : m_pagesMade)
            text += exchange::csvText(page.file) + "," + page.kind + "," +
                    exchange::csvText(page.name) + "," + exchange::csvText(page.said) + "\n";
        return text;
    }

    const log::Log& m_log;
    const ReportOptions& m_options;
    const Pages& m_pages;
    Progress m_progress;
    questions::BatterySide m_from, m_to;
    std::filesystem::path m_folder;
    FileNames m_names;
    std::map<LiftId, questions::LiftContext> m_contexts;
    std::vector<ReportPage> m_pagesMade;
    std::vector<Words> m_unread;
    std::int64_t m_done = 0, m_all = 0;
};

/// At most ten lines, and how many more there are: the index has them all.
std::string firstOf(const std::vector<std::string>& lines) {
    std::string text;
    for (std::size_t i = 0; i < std::min(lines.size(), fewNamed); ++i)
        text += lines[i];
    return lines.size() > fewNamed
               ? text + "  and " + std::to_string(lines.size() - fewNamed) + " more\n"
               : text;
}

std::string reportText(const ReportOptions& options, const std::vector<ReportPage>& made) {
    std::vector<std::string> written, leftOut;
    for (const ReportPage& page : made)
        if (!page.file.empty())
            written.push_back("  " + page.file + "\n");
        else
            leftOut.push_back("  " + page.kind + " " + page.name + ": " + page.said + "\n");
    std::string text = "Written into " + options.folder.string() + ":\n" + firstOf(written) + "  " +
                       indexName + "\n";
    return leftOut.empty() ? text : text + "No page:\n" + firstOf(leftOut);
}

std::string reportJson(const ReportOptions& options, const std::vector<ReportPage>& made,
                       bool written) {
    Json json;
    json.object()
        .field("from", options.from)
        .field("to", options.to)
        .field("folder", written ? std::optional(options.folder.string()) : std::nullopt)
        .field("index", written ? std::optional(std::string(indexName)) : std::nullopt);
    json.key("files").array();
    for (const ReportPage& page : made)
        if (!page.file.empty())
            json.object()
                .field("file", page.file)
                .field("page", page.kind)
                .field("name", page.name)
                .field("says", page.said)
                .endObject();
    json.endArray().key("left_out").array();
    for (const ReportPage& page : made)
        if (page.file.empty())
            json.object()
                .field("page", page.kind)
                .field("name", page.name)
                .field("reason", page.said)
                .endObject();
    json.endArray().endObject();
    return json.text();
}

int runReport(const ReportOptions& options, const Pages& pages) {
    if (options.folder == "-")
        throw BadInput(asIs("--into -"), asIs("a folder: standard output holds one file"));
    const log::Snapshot asked(options.log);
    Interruptible interruptible;
    Report report(asked.log(), options, pages, interruptible.progress());
    bool written = false;
    pages.together([&] { sayingHow([&] { written = report.write(); }); });
    if (options.json)
        print(reportJson(options, report.made(), written));
    else if (written)
        print(reportText(options, report.made()));
    else
        print("No answer: nobody has a session on both sides, and no lift has enough athletes.\n");
    const int unread = complainOfLeftOut(report.unread());
    return unread != exitDone ? unread : written ? exitDone : exitNoAnswer;
}

} // namespace

void addReport(CLI::App& app, int& exit, const Pages& pages) {
    auto* command = app.add_subcommand(
        "report", "A squad page for each lift and a page for each athlete, in a new folder");
    const auto options = std::make_shared<ReportOptions>();
    command->add_option("LOG", options->log, "The log")->required();
    command->add_option("--from", options->from, sideHelp)->required();
    command->add_option("--to", options->to, "The later one, likewise")->required();
    command
        ->add_option("--into", options->folder,
                     "A folder that does not exist yet, or is empty; with --replace its files of "
                     "the same names are written anew, and the others stay")
        ->required();
    addPounds(*command, options->pounds);
    command->add_flag("--json", options->json, "JSON: what was written, and what was left out");
    options->outputs.addReplace(*command);
    command->callback([options, &exit, &pages] { exit = runReport(*options, pages); });
}

} // namespace slopebook::app
