// SPDX-License-Identifier: GPL-3.0-or-later
// How the stations of a test day stand in their table.
#pragma once

#include "core/log/tables.h"
#include "core/model/station.h"

namespace slopebook::log {

template <>
struct Table<StationId> : NamedTable {
    using Value = Station;
    static constexpr const char* one = "station";
    static constexpr Says says{.gone = "That station is not in the log any more.",
                               .goneUnchanged =
                                   "That station is not in the log any more. Nothing was changed.",
                               .there = "That station is in the log already. Nothing was changed.",
                               .freeName = "a name that no other station has",
                               .damaged = "the entry of the station '%1' is not as it was written",
                               .numbered = "station %1"};
    static constexpr const char* table = "stations";
    static constexpr bool hasParts = true; // its tests and its ladder
    static constexpr char checksummedAs = 'N';
    template <class Held, class Visitor>
    static void columns(Held& station, Visitor& visit) {
        visit("name", station.name);
        visit("lift", station.lift);
        conditionColumns(station.conditions, visit);
        visit("sets", station.sets);
        visit("rotates", station.rotates);
        visit("note", station.note);
    }
};

} // namespace slopebook::log
