// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/stationcsv.h"

#include "core/exchange/cells.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"
#include "core/model/session.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {
constexpr Phrase ladderExpected = "loads in kg with blanks between, from light to heavy: 40 60 80";

std::vector<Mass> readLadder(const Cells& cells) {
    std::vector<Mass> ladder;
    const std::string text = cells.text(StationLadder);
    for (std::size_t at = text.find_first_not_of(' '); at != std::string::npos;) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const auto load = readNumber(text.substr(at, end - at));
        if (!load || !(*load >= 0) || *load > kilograms(storableLoadLimit))
            cells.refuse(StationLadder, ladderExpected);
        ladder.push_back(massFromKilograms(*load));
        at = text.find_first_not_of(' ', end);
    }
    return ladder;
}

StationTables::StationRow readStation(const Cells& cells, const Where& where) {
    StationTables::StationRow row;
    Station& station = row.station;
    station.name = cells.name(StationName);
    row.lift = cells.text(StationLift);
    row.device = cells.text(StationDevice);
    station.conditions = {.place = cells.text(StationSite),
                          .surface = cells.text(StationSurface),
                          .footwear = cells.text(StationFootwear),
                          .technique = cells.text(StationTechnique),
                          .notComparable = cells.text(StationNotComparable)};
    station.ladder = readLadder(cells);
    station.sets = cells.count(StationSets).value_or(0);
    station.rotates = cells.flag(StationRotates).value_or(true);
    station.note = cells.text(StationNote);
    row.where = where;
    return row;
}
} // namespace

bool isStationsHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"station", "lift", "test"});
}

bool isRostersHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"station", "date", "turn", "athlete"});
}

// The first row of a station says all of it; what follows adds tests.
std::vector<std::string> StationTables::readStations(const std::filesystem::path& file) {
    return readTable(
        file, stationColumns, stationRequired, [&](const Cells& cells, const Where& where) {
            const std::string name = cells.name(StationName);
            auto held = std::ranges::find_if(stations, [&](const StationRow& row) {
                return nameKey(row.station.name) == nameKey(name);
            });
            if (held == stations.end())
                held = stations.insert(held, readStation(cells, where));
            else if (!cells.said(StationTest))
                cells.refuse(StationTest, "one more test: the station stands further up");
            if (cells.said(StationTest))
                held->tests.emplace_back(cells.name(StationTest), where);
        });
}

std::vector<std::string> StationTables::readRosters(const std::filesystem::path& file) {
    constexpr Phrase dateExpected = "a date written year-month-day, such as 2026-03-14";
    return readTable(file, rosterColumns, RosterCount, [&](const Cells& cells, const Where& where) {
        const std::string station = cells.name(RosterStation);
        const Date day = need(cells, RosterDate, cells.date(RosterDate), dateExpected);
        auto held = std::ranges::find_if(rosters, [&](const RosterRow& row) {
            return nameKey(row.station) == nameKey(station) && row.day == day;
        });
        if (held == rosters.end())
            held = rosters.insert(held,
                                  {.station = station, .day = day, .athletes = {}, .where = where});
        const auto turn =
            need(cells, RosterTurn, cells.count(RosterTurn), "the number of the turn, from 1 on");
        if (turn != static_cast<int>(held->athletes.size()) + 1)
            cells.refuse(RosterTurn,
                         say("%1, the turn after the one before", held->athletes.size() + 1));
        held->athletes.push_back(cells.name(RosterAthlete));
    });
}

} // namespace slopebook::exchange
