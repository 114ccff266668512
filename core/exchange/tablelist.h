// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of the export: one list for the CSV files, the workbook, the dictionary and
// datapackage.json.
#pragma once

#include "core/exchange/columnspec.h"

#include <array>
#include <span>

namespace slopebook::exchange::tables {

extern const TableSpec athletes, devices, lifts, blocks, sessions, reps, points, checkLoads, tests,
    attempts, equipment, stations, rosters, identities, dictionary;

/// All but the dictionary, which tells of them.
std::span<const TableSpec> all();

} // namespace slopebook::exchange::tables
