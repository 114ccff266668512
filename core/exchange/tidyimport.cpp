// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tidyimport.h"

#include "core/exchange/equipmentcsv.h"
#include "core/exchange/merge.h"
#include "core/exchange/staging.h"
#include "core/exchange/tables.h"
#include "core/exchange/tidycolumns.h"

#include <algorithm>
#include <span>

namespace slopebook::exchange {

namespace {

struct HeaderRead {}; // stops reading once the header is there
struct DryRunDone {}; // takes a transaction back

std::vector<std::string> headerOf(const std::filesystem::path& file) {
    std::vector<std::string> header;
    try {
        readCsv(file, ',', [&](const CsvRow& row) {
            header = row.fields;
            throw HeaderRead{};
        });
    } catch (const HeaderRead&) {
        return header;
    }
    throw BadInput({.file = file.string(), .line = 1, .column = {}}, say("an empty file"),
                   say("a header row such as date,athlete,lift,set,load_kg,rep,velocity"));
}

void noteNotUsed(ImportReport& report, const std::vector<std::string>& columns) {
    for (const std::string& column : columns)
        if (std::ranges::find(report.columnsNotUsed, column) == report.columnsNotUsed.end())
            report.columnsNotUsed.push_back(column);
}

FileKind kindOf(const std::filesystem::path& file, const ImportSettings& settings) {
    const auto header = headerOf(file);
    // Mapped columns stand under other names; only reps are ever mapped.
    const bool mapped = std::ranges::any_of(settings.columns, [&](const auto& entry) {
        return columnOf(header, entry.second).has_value();
    });
    return mapped ? FileKind::Reps : fileKind(header);
}

/// False where the file is none of the battery's.
bool readBattery(const std::filesystem::path& file, BatteryTables& battery, ImportReport& report) {
    const auto header = headerOf(file);
    if (isTestsHeader(header))
        noteNotUsed(report, battery.readTests(file));
    else if (isAttemptsHeader(header))
        noteNotUsed(report, battery.readAttempts(file));
    else
        return false;
    return true;
}

void tellNames(const log::Log& log, const Tables& tables, Staging& staging) {
    for (const auto& stored : log.athletes())
        staging.athletes.known(stored.value.name);
    for (const auto& stored : log.lifts())
        staging.liftNames.known(stored.value.name);
    for (const auto& row : tables.athletes)
        staging.athletes.known(row.value.name);
    for (const auto& row : tables.lifts)
        staging.liftNames.known(row.value.lift.name);
}

} // namespace

bool ImportReport::addedNothing() const {
    return setsAdded == 0 && repsAdded == 0 && sessionsAdded == 0 && checkLoadsAdded == 0 &&
           liftsMade.empty() && athletesMade.empty() && devicesMade.empty() && blocksMade.empty() &&
           equipmentMade.empty() && filledIn.empty() && battery.addedNothing();
}

ImportReport importTidy(log::Log& log, const std::vector<std::filesystem::path>& files,
                        const ImportSettings& settings) {
    ImportReport report;
    Tables tables;
    BatteryTables battery;
    EquipmentTable equipment;
    std::vector<std::pair<std::filesystem::path, FileKind>> ofSessions;
    for (const auto& file : files) {
        if (readBattery(file, battery, report))
            continue;
        if (isEquipmentHeader(headerOf(file))) {
            noteNotUsed(report, equipment.read(file));
            continue;
        }
        const FileKind kind = kindOf(file, settings);
        if (kind == FileKind::Reps || kind == FileKind::Sessions)
            ofSessions.emplace_back(file, kind);
        else
            noteNotUsed(report, tables.read(file, kind));
    }
    Staging staging;
    tellNames(log, tables, staging);
    const Progress reading = partOf(settings.progress, 0, 300);
    int filesRead = 0;
    for (const auto& [file, kind] : ofSessions) {
        const Progress ofFile =
            partOf(reading, 1000 * filesRead / static_cast<int>(ofSessions.size()),
                   1000 * (filesRead + 1) / static_cast<int>(ofSessions.size()));
        ++filesRead;
        noteNotUsed(report, kind == FileKind::Reps
                                ? staging.readTidy(file, settings.columns, ofFile)
                                : staging.readSessions(file));
    }
    staging.finish();
    report.flagged = staging.flagged;
    ImportSettings merging = settings;
    merging.progress = partOf(settings.progress, 300, 1000);
    try {
        log.together([&] {
            Merge merge(log, merging, report);
            merge.tables(tables);
            merge.rows(staging);
            merge.thresholds();
            merge.checkLoads(tables);
            report.equipmentMade = mergeEquipment(log, equipment);
            report.battery = mergeBattery(log, battery, settings.knownTest);
            if (settings.dryRun)
                throw DryRunDone{};
        });
    } catch (const DryRunDone&) {
    }
    return report;
}

bool readsAsIs(const std::filesystem::path& file) {
    try {
        const auto header = headerOf(file);
        if (isTestsHeader(header) || isAttemptsHeader(header) || isEquipmentHeader(header) ||
            fileKind(header) != FileKind::Reps)
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
        if (std::ranges::find(tidyColumns, tidy) == tidyColumns.end()) {
            std::string all;
            for (const auto name : tidyColumns)
                all += (all.empty() ? "" : ", ") + std::string(name);
            throw BadInput(say("the column \"%1\"", tidy), say("one of %1", all));
        }
        if (!columns.emplace(tidy, entry.substr(equals + 1)).second)
            throw BadInput(say("the column \"%1\" twice", tidy), say("each column once"));
        begin = end + 1;
    }
    return columns;
}

} // namespace slopebook::exchange
