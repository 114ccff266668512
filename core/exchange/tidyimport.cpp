// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tidyimport.h"

#include "core/exchange/asread.h"
#include "core/exchange/byname.h"
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/faults.h"
#include "core/exchange/importnames.h"
#include "core/exchange/merge.h"
#include "core/exchange/sheet.h"
#include "core/exchange/staging.h"
#include "core/exchange/stationcsv.h"
#include "core/exchange/tables.h"
#include "core/exchange/tidycolumns.h"
#include "core/exchange/whoreads.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <memory>
#include <set>
#include <span>
#include <unordered_set>
#include <utility>

namespace slopebook::exchange {

namespace {

/// All that files say, before any of it is brought into a log.
struct FoundInFiles {
    Tables tables;
    BatteryTables battery;
    EquipmentTable equipment;
    StationTables stations;
    /// Shared by the attempts, each of which has the rest for itself.
    std::shared_ptr<log::Identities> identities = std::make_shared<log::Identities>();
    KnownThings known;
    Staging staging;
    std::vector<std::string> notUsed;
    std::unordered_set<std::string> notUsedSeen;

    void note(const std::vector<std::string>& columns) {
        for (const std::string& column : columns)
            if (notUsedSeen.insert(column).second)
                notUsed.push_back(column);
    }
    void readTable(const log::Log& log, const ToRead& what) {
        switch (what.as) {
        case ReadAs::Tests:
            return note(battery.readTests(what.file));
        case ReadAs::Attempts:
            return note(battery.readAttempts(what.file));
        case ReadAs::Equipment:
            return note(equipment.read(what.file));
        case ReadAs::Stations:
            return note(stations.readStations(what.file));
        case ReadAs::Rosters:
            return note(stations.readRosters(what.file));
        case ReadAs::Identities:
            return note(readIdentities(what.file, [&](const log::Identity& one) {
                known.add(log, one);
                identities->add(one);
            }));
        case ReadAs::Table:
            return note(tables.read(what.file, what.kind));
        case ReadAs::Derived:
        case ReadAs::Reps:
        case ReadAs::Sessions:
            break; // read after the tables, whose names they meet
        }
    }
};

/// What lives in the log under a name of the files is that, whatever it is called here.
void meetKnown(const log::Log& log, FoundInFiles& found, WhoIsWho& who) {
    found.identities->sort();
    found.known.each<AthleteId>("athlete", [&](const std::string& name, AthleteId id) {
        if (const std::string called = log.athlete(id).value.name; called != name)
            who.same.emplace(name, called);
    });
    found.known.each<LiftId>("lift", [&](const std::string& name, LiftId /*id*/) {
        found.staging.liftNames.known(name);
    });
}

void tellListed(const Tables& tables, Staging& staging) {
    for (const auto& row : tables.athletes)
        staging.athletes.alsoKnown(newName(row.value.name));
    for (const auto& row : tables.lifts)
        staging.liftNames.alsoKnown(newName(row.value.lift.name));
}

void readSessions(FoundInFiles& found, const std::vector<ToRead>& files,
                  const ImportSettings& settings, FaultList& faults) {
    const Progress reading = partOf(settings.progress, 0, 300);
    const auto ofSessions = std::ranges::count_if(files, [](const ToRead& what) {
        return what.as == ReadAs::Reps || what.as == ReadAs::Sessions;
    });
    found.staging.refused = [&](const BadInput& bad) { faults.add(bad); };
    int filesRead = 0;
    for (const ToRead& what : files) {
        if (what.as != ReadAs::Reps && what.as != ReadAs::Sessions)
            continue;
        const Progress ofFile = partOf(reading, static_cast<int>(1000 * filesRead / ofSessions),
                                       static_cast<int>(1000 * (filesRead + 1) / ofSessions));
        ++filesRead;
        faults.collect([&] {
            found.note(what.as == ReadAs::Reps
                           ? found.staging.readTidy(what.file, settings.columns, ofFile)
                           : found.staging.readSessions(what.file));
        });
    }
    found.staging.finish();
}

std::vector<NearName> nearlyOf(const std::vector<std::string>& ofLog, const FoundInFiles& found,
                               const WhoIsWho& who) {
    std::vector<std::string> spelled;
    std::set<std::string> listed;
    for (const auto& row : found.tables.athletes) {
        listed.insert(newName(row.value.name));
        spelled.push_back(row.value.name);
    }
    for (const std::string& name : found.staging.athletes.names())
        spelled.push_back(name);
    for (const auto& session : found.battery.sessions)
        spelled.push_back(session.athlete);
    return nearlyKnown(ofLog, spelled, listed, who);
}

// What was read, as far as it is told of.
void tellRead(const std::vector<std::string>& ofLog, const FoundInFiles& found,
              const ImportSettings& settings, ImportReport& report) {
    tellFlagged(found.staging, report);
    report.columnsNotUsed = found.notUsed;
    report.nearly = nearlyOf(ofLog, found, settings.who);
    if (!settings.dryRun && !report.nearly.empty())
        throw Undecided(report.nearly);
}

// What comes after the rows.
void mergeRest(log::Log& log, const FoundInFiles& found, const ImportSettings& settings,
               ImportReport& report, Merge& merge, FaultList& faults) {
    merge.finishRows(found.staging);
    merge.thresholds();
    merge.checkLoads(found.tables);
    faults.collect(
        [&] { report.equipmentMade = mergeEquipment(log, found.equipment, found.known); });
    faults.collect([&] {
        report.battery =
            mergeBattery(log, found.battery, settings.knownTest, settings.who, found.known);
    });
    merge.gaps();
    faults.collect([&] {
        mergeStations(log, found.stations, settings.who, found.known, report.stationsMade,
                      report.rostersAdded);
    });
}

/// What the log knew before, and what came is to be called.
class KnownBefore {
public:
    KnownBefore(const log::Log& log, const log::Identities& identities)
        : m_log(log), m_identities(identities) {
        if (!identities.empty())
            m_known = log::namesKnown(log);
    }
    /// Once all has come.
    void take() const {
        if (!m_identities.empty())
            log::takeIdentities(m_log, m_identities, m_known);
    }

private:
    const log::Log& m_log;
    const log::Identities& m_identities;
    std::vector<log::Sixteen> m_known;
};

void mergeAll(log::Log& log, const FoundInFiles& found, const ImportSettings& settings,
              ImportReport& report) {
    FaultList faults;
    const KnownBefore before(log, *found.identities);
    Merge merge(log, settings, report);
    merge.refused = [&](const BadInput& bad) { faults.add(bad); };
    merge.meet(found.known);
    merge.tables(found.tables);
    merge.rows(found.staging);
    mergeRest(log, found, settings, report, merge, faults);
    merge.sessionConditions(found.staging);
    faults.throwIfAny();
    before.take();
}

// found: the tables; its staging is still to be filled.
AsRead mergeAsRead(log::Log& log, FoundInFiles found, const std::vector<ToRead>& files,
                   const ImportSettings& settings, ImportReport& report, bool sorted) {
    const std::vector<std::string> ofLog = athleteNames(log);
    const auto ofReps = std::ranges::count(files, ReadAs::Reps, &ToRead::as);
    return asRead(log, report, [&](ImportReport& made) {
        FaultList faults;
        const KnownBefore before(log, *found.identities);
        Merge merge(log, settings, made);
        merge.meet(found.known);
        merge.tables(found.tables);
        Staging& staging = found.staging;
        handOver(staging, merge, settings);
        if (sorted)
            staging.sortFirst();
        const Progress reading = partOf(settings.progress, 0, sorted ? 300 : 900);
        std::ptrdiff_t filesRead = 0;
        for (const ToRead& what : files) {
            if (what.as != ReadAs::Reps)
                continue;
            const Progress ofFile = partOf(reading, static_cast<int>(1000 * filesRead / ofReps),
                                           static_cast<int>(1000 * (filesRead + 1) / ofReps));
            ++filesRead;
            found.note(staging.readTidy(what.file, settings.columns, ofFile));
        }
        if (sorted)
            staging.takeSorted(partOf(settings.progress, 300, 900));
        staging.finish();
        tellRead(ofLog, found, settings, made);
        merge.rows(staging);
        mergeRest(log, found, settings, made, merge, faults);
        faults.throwIfAny();
        before.take();
    });
}

bool writtenAsRead(log::Log& log, const FoundInFiles& found, const std::vector<ToRead>& files,
                   const ImportSettings& settings, ImportReport& report) {
    if (!writesAsRead(settings) ||
        std::ranges::find(files, ReadAs::Sessions, &ToRead::as) != files.end())
        return false;
    return asReadOrSorted(
        [&](bool sorted) { return mergeAsRead(log, found, files, settings, report, sorted); });
}

} // namespace

bool ImportReport::addedNothing() const {
    return setsAdded == 0 && repsAdded == 0 && sessionsAdded == 0 && checkLoadsAdded == 0 &&
           liftsMade.empty() && athletesMade.empty() && devicesMade.empty() && blocksMade.empty() &&
           equipmentMade.empty() && stationsMade.empty() && rostersAdded == 0 && filledIn.empty() &&
           battery.addedNothing();
}

ImportReport importTidy(log::Log& log, const std::vector<std::filesystem::path>& files,
                        const ImportSettings& given) {
    const Progress progress = onward(given.progress);
    ImportSettings settings = given;
    settings.progress = progress;
    ImportReport report;
    FoundInFiles found;
    FaultList faults;
    std::vector<ToRead> toRead;
    for (const auto& file : files)
        faults.collect([&] {
            toRead.push_back(readerOf(file, settings.columns));
            if (toRead.back().as == ReadAs::Derived) {
                report.derived.push_back(file.filename().string());
                return;
            }
            if (!hasRows(file))
                report.withoutRows.push_back(file.filename().string());
            found.readTable(log, toRead.back());
        });
    if (!report.derived.empty() && report.derived.size() == files.size())
        throw BadInput({.file = files.front().string(), .line = 1, .column = {}},
                       say("figures that were worked out from other tables"),
                       say("the tables that they come from, such as reps.csv"));
    tellNames(log, found.staging);
    meetKnown(log, found, settings.who);
    tellListed(found.tables, found.staging);
    found.staging.who = settings.who;
    report.filesRead = files.size() - report.derived.size();
    if (faults.empty() && writtenAsRead(log, found, toRead, settings, report))
        return report;
    readSessions(found, toRead, settings, faults);
    faults.throwIfAny();
    tellRead(athleteNames(log), found, settings, report);
    ImportSettings merging = settings;
    merging.progress = partOf(settings.progress, 300, 1000);
    try {
        log.together([&] {
            mergeAll(log, found, merging, report);
            if (settings.dryRun)
                throw DryRunDone{};
        });
    } catch (const DryRunDone&) { // NOLINT(bugprone-empty-catch): that is what it is for
    }
    return report;
}

bool readsAsIs(const std::filesystem::path& file) {
    try {
        if (isWorkbook(file) && std::ranges::count(sheetsOf(file), false, &SheetName::hidden) > 1)
            return false; // which of its sheets is the coach's to say
        const auto header = headerOf(file);
        if (readerOf(header, {}).as != ReadAs::Reps)
            return true;
        return std::ranges::all_of(
            std::span(tidyColumns).first(tidyRequired),
            [&](std::string_view name) { return columnOf(header, name).has_value(); });
    } catch (const std::exception&) {
        return false;
    }
}

std::map<std::string, std::string> parseColumnMap(const std::string& text) {
    std::map<std::string, std::string> columns;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const std::size_t end = std::min(text.find(',', begin), text.size());
        const std::string entry = text.substr(begin, end - begin);
        const std::size_t equals = entry.find('=');
        const std::string tidy = entry.substr(0, equals);
        if (equals == std::string::npos || equals + 1 == entry.size() || tidy.empty())
            throw BadInput(say("\"%1\"", entry),
                           say("a column of tidy CSV and the file's name for it, such as "
                               "load_kg=Gewicht,velocity=v"));
        if (std::ranges::find(tidyColumns, tidy) == tidyColumns.end() && tidy != oldSetNote) {
            std::string all;
            for (const auto name : tidyColumns)
                all += (all.empty() ? "" : ", ") + std::string(name);
            throw BadInput(say("the column \"%1\"", tidy), say("one of %1", all));
        }
        const std::string column(tidy == oldSetNote ? tidyColumns[TidyNote] : tidy);
        if (!columns.emplace(column, entry.substr(equals + 1)).second)
            throw BadInput(say("the column \"%1\" twice", tidy), say("each column once"));
        begin = end + 1;
    }
    return columns;
}

} // namespace slopebook::exchange
