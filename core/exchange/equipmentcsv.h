// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of equipment as CSV: equipment.csv, one row a piece, masses exact in the unit in which they
// were typed.
#pragma once

#include "core/exchange/columnspec.h"
#include "core/exchange/identitycsv.h"
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
inline constexpr std::array<ColumnSpec, EquipmentColumnCount> equipmentSpec{
    textColumn("equipment", "name of the set of equipment").needed(),
    textColumn("piece",
               "what it is; alone: a load without a bar; added: goes on top of any load; "
               "ceiling: the heaviest load that may be used",
               "bar|plate|alone|added|ceiling")
        .needed(),
    ColumnSpec{.name = "mass",
               .holds = Holds::Number,
               .meaning = "mass of one piece, in what unit says",
               .required = true,
               .least = 0},
    textColumn("unit", "unit of mass", "kg|lb"),
    countColumn("pairs", "of a plate: how many pairs"),
    textColumn("piece_name", "name of the bar or the piece"),
    textColumn("equipment_note", "note on the set of equipment")};
inline constexpr auto equipmentColumns = namesOf(equipmentSpec);

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
std::vector<std::string> mergeEquipment(log::Log& log, const EquipmentTable& table,
                                        const KnownThings& met = {});

} // namespace slopebook::exchange
