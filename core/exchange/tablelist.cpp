// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tablelist.h"

#include "core/exchange/batterycolumns.h"
#include "core/exchange/datapackage.h"
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/identitycolumns.h"
#include "core/exchange/tidycolumns.h"

namespace slopebook::exchange::tables {

const TableSpec athletes{
    .name = "athletes", .meaning = "One row an athlete.", .columns = athleteSpec, .key = "athlete"};
const TableSpec devices{
    .name = "devices", .meaning = "One row a device.", .columns = deviceSpec, .key = "device"};
const TableSpec lifts{
    .name = "lifts", .meaning = "One row a lift.", .columns = liftSpec, .key = "lift"};
const TableSpec blocks{.name = "blocks",
                       .meaning = "One row a training block.",
                       .columns = blockSpec,
                       .key = "block,first_day"};
const TableSpec sessions{.name = "sessions",
                         .meaning = "One row a session of an athlete.",
                         .columns = sessionSpec,
                         .key = "date,athlete,session",
                         .refers = "athlete>athletes"};
const TableSpec reps{.name = "reps",
                     .meaning = "One row a rep; a set without reps, the conditions of a lift "
                                "without sets, and what was not possible have a row of their own.",
                     .columns = tidySpec,
                     .refers = "athlete>athletes;lift>lifts;device>devices;"
                               "date,athlete,session>sessions"};
const TableSpec points{.name = "points",
                       .meaning = "One row a set that counts: the points that lines are fitted to.",
                       .columns = pointSpec,
                       .key = "date,athlete,lift,session,set",
                       .refers = "athlete>athletes;lift>lifts;date,athlete,session>sessions",
                       .derived = true};
const TableSpec checkLoads{.name = "check_loads",
                           .meaning = "One row a check load of an athlete and lift.",
                           .columns = checkLoadSpec,
                           .key = "athlete,lift,check_load_kg",
                           .refers = "athlete>athletes;lift>lifts"};
const TableSpec tests{.name = "tests",
                      .meaning = "One row a test of the battery.",
                      .columns = testSpec,
                      .key = "test"};
const TableSpec attempts{.name = "attempts",
                         .meaning = "One row an attempt of a test; what was not possible and the "
                                    "conditions of a test without attempts have a row of their "
                                    "own.",
                         .columns = attemptSpec,
                         .refers = "athlete>athletes;test>tests;lift>lifts;test_device=device>"
                                   "devices;date,athlete,session>sessions"};
const TableSpec equipment{.name = "equipment",
                          .meaning = "One row a piece of a set of equipment.",
                          .columns = equipmentSpec};
const TableSpec stations{.name = "stations",
                         .meaning = "One row a station, and one more for each further test that is "
                                    "done there.",
                         .columns = stationSpec,
                         .refers = "lift>lifts;test>tests;device>devices"};
const TableSpec rosters{.name = "rosters",
                        .meaning = "One row an athlete at a station on a day.",
                        .columns = rosterSpec,
                        .key = "station,date,turn",
                        .refers = "athlete>athletes"};
const TableSpec identities{.name = "identities",
                           .meaning = "One row a thing of the log: its name among logs, and what "
                                      "it has been. Taken in with the other tables, they are the "
                                      "same things again.",
                           .columns = identitySpec,
                           .key = "uuid"};
const TableSpec dictionary{.name = "dictionary",
                           .meaning = "One row a column of every table: what it is.",
                           .columns = dictionarySpec,
                           .key = "table,column",
                           .derived = true};

std::span<const TableSpec> all() {
    static const std::array<TableSpec, 14> list{athletes,  devices,  lifts,   blocks,     sessions,
                                                reps,      points,   tests,   checkLoads, attempts,
                                                equipment, stations, rosters, identities};
    return list;
}

} // namespace slopebook::exchange::tables
