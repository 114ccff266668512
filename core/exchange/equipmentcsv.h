// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of equipment as CSV: equipment.csv, one row a piece, masses exact in the unit in which they
// were typed.
#pragma once

#include "core/exchange/table.h"
#include "core/log/log.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::exchange {

enum EquipmentColumn : std::size_t {
    EquipmentName,
    EquipmentPiece, ///< bar, plate, alone, added, ceiling
    EquipmentMass,  ///< of one piece
    EquipmentUnit,  ///< kg where blank, or lb
    EquipmentPairs, ///< of a plate; 1 where blank
    EquipmentPieceName,
    EquipmentNote, ///< of the whole set
    EquipmentColumnCount
};
constexpr std::size_t equipmentRequired = EquipmentMass + 1;
constexpr std::array<std::string_view, EquipmentColumnCount> equipmentColumns{
    "equipment", "piece", "mass", "unit", "pairs", "piece_name", "equipment_note"};

/// Whether a header is that of equipment.csv.
bool isEquipmentHeader(const std::vector<std::string>& header);

struct EquipmentTable {
    struct Entry {
        Equipment equipment;
        Where where; ///< the first row that speaks of it
    };
    std::vector<Entry> sets;

    /// Rows of one set may stand anywhere; their order is the order of its pieces. Returns the
    /// columns that were not used. BadInput (file, line, column).
    std::vector<std::string> read(const std::filesystem::path& file);

private:
    Entry& entryOf(const std::string& spelled, std::size_t from, const Where& where);
};

/// Adds the sets that the log does not have and returns their names; one that it has just so is
/// left. Inside a transaction of the caller's. BadInput for one that it has otherwise.
std::vector<std::string> mergeEquipment(log::Log& log, const EquipmentTable& table);

} // namespace slopebook::exchange
