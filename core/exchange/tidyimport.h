// SPDX-License-Identifier: GPL-3.0-or-later
// CSV into a log: tidy files (commands.md) and the tables that export writes beside them; whole or
// not at all; the same file twice adds nothing. An import adds and fills in what is blank, it never
// overwrites.
#pragma once

#include "core/exchange/batterycsv.h"
#include "core/log/log.h"
#include "core/model/errors.h"
#include "core/model/progress.h"

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

struct ImportSettings {
    /// Column of the file for a tidy column, where the names differ: {"load_kg", "Gewicht"}.
    std::map<std::string, std::string> columns{};
    /// --mvt LIFT=0.17: for lifts that are made, and for known ones (then as the coach's own).
    std::map<std::string, double> mvt{};
    /// The published default of a lift that is made.
    std::function<std::optional<Mvt>(const std::string& lift, VelocityKind kind)> publishedMvt{};
    /// A test of the battery that the program knows, where neither log nor files explain it.
    KnownTest knownTest{};
    /// Who new athletes are whose names are nearly another's.
    WhoIsWho who{};
    /// Rows go into the log as they are read, as soon as so many sets are held; 0: all are read
    /// first. Of no consequence but for time and memory.
    std::size_t setsHeld = 16384;
    bool dryRun = false; ///< read and check everything, write nothing
    /// May stop the import: Cancelled is thrown then, and nothing was written.
    Progress progress{};
};

struct ImportReport {
    int rows = 0;
    long rowsLeftOut = 0;     ///< of totals (TextLayout::leftOut)
    long rowsWithoutLoad = 0; ///< of loads as columns, with nothing under any: passed over
    std::size_t filesRead = 0;
    std::vector<std::string> withoutRows; ///< files that hold nothing below their header
    std::vector<std::string> derived;     ///< not read: worked out from the others (points.csv)
    /// New athletes who may be somebody else's slip: to be told before anything is written.
    std::vector<NearName> nearly;
    int setsAdded = 0, repsAdded = 0, sessionsAdded = 0;
    int setsAlreadyThere = 0;
    std::vector<std::string> liftsMade, athletesMade, devicesMade, blocksMade, equipmentMade,
        stationsMade;
    int checkLoadsAdded = 0, rostersAdded = 0;
    std::vector<std::string>
        filledIn; ///< what was there and was added to: "block Winter now to ..."
    std::vector<std::string> columnsNotUsed;
    std::vector<Words>
        flagged; ///< taken, but worth a look: implausible speeds and loads, with their lines
    BatteryReport battery;
    std::size_t flaggedMore = 0; ///< beyond those named
    bool addedNothing() const;
    /// Nothing stood below any header.
    bool holdsNothing() const { return filesRead > 0 && withoutRows.size() == filesRead; }
    friend bool operator==(const ImportReport&, const ImportReport&) = default;
};

/// All files in one transaction, whichever order they stand in. What a file is, is told by its
/// header (core/exchange/tidycolumns.h): reps, sessions, athletes, devices, lifts, blocks, check
/// loads, tests or attempts of the battery, sets of equipment, stations, rosters, identities (what
/// lives in the log under one of those names is that, whatever it is called; what comes has the
/// name and the trail it has there); what an export
/// worked out from those (points, estimates, the dictionary) is left, and alone refused. Throws
/// BadInput
/// (file, line, column, found, expected), Faults where several things are wrong, Undecided where a
/// new athlete is nearly another and settings.who does not say who that is (a dry run reports it
/// instead); nothing written.
ImportReport importTidy(log::Log& log, const std::vector<std::filesystem::path>& files,
                        const ImportSettings& settings);

/// Whether importTidy() knows all the columns that it needs by their names: a file of our own or
/// one written like it. False also for what cannot be read.
bool readsAsIs(const std::filesystem::path& file);

/// "load_kg=Gewicht,velocity=v" as ImportSettings::columns. BadInput for anything else, or for a
/// column that tidy CSV does not have.
std::map<std::string, std::string> parseColumnMap(const std::string& text);

} // namespace slopebook::exchange
