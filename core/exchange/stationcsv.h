// SPDX-License-Identifier: GPL-3.0-or-later
// Stations and rosters as CSV, read into values that name their place, and brought into a log. What
// the log has already is left; what contradicts it is refused.
#pragma once

#include "core/exchange/identitycsv.h"
#include "core/exchange/table.h"
#include "core/exchange/whois.h"
#include "core/log/log.h"

#include <string>
#include <vector>

namespace slopebook::exchange {

/// As the files say them: lift, tests and device by name.
struct StationTables {
    struct StationRow {
        Station station; ///< without what is by name
        std::string lift, device;
        std::vector<std::pair<std::string, Where>> tests; ///< each with its own row
        Where where;                                      ///< of its first row
    };
    struct RosterRow {
        std::string station;
        Date day{};
        std::vector<std::string> athletes; ///< in the order of the file
        Where where;
    };
    std::vector<StationRow> stations;
    std::vector<RosterRow> rosters;

    /// Each returns the file's columns that were not used. BadInput (file, line, column).
    std::vector<std::string> readStations(const std::filesystem::path& file);
    std::vector<std::string> readRosters(const std::filesystem::path& file);
};

bool isStationsHeader(const std::vector<std::string>& header);
bool isRostersHeader(const std::vector<std::string>& header);

/// Inside a transaction of the caller's, once lifts, tests and athletes of the files are there.
/// Devices and athletes that are not there are made. BadInput for a lift, test or station that
/// nobody explains, and for what contradicts the log.
void mergeStations(log::Log& log, const StationTables& tables, const WhoIsWho& who,
                   const KnownThings& met, std::vector<std::string>& made, int& rosters);

} // namespace slopebook::exchange
