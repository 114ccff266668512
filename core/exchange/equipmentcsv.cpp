// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/equipmentcsv.h"

#include "core/exchange/cells.h"
#include "core/model/errors.h"
#include "core/model/names.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

constexpr Phrase massExpected =
    "a mass above 0 and under 1000 kg with a decimal point, such as 20 or 2.5";

ExactMass readMass(const Cells& cells, MassUnit unit) {
    const auto mass = parseExactMass(cells.raw(EquipmentMass), unit);
    if (!mass || mass->units <= 0)
        cells.refuse(EquipmentMass, massExpected);
    return *mass;
}

void takePiece(const Cells& cells, Equipment& set) {
    const MassUnit unit =
        cells.said(EquipmentUnit)
            ? need(cells, EquipmentUnit, massUnitFromWord(cells.raw(EquipmentUnit)), "kg or lb")
            : MassUnit::Kilogram;
    const auto mass = readMass(cells, unit);
    const std::string_view piece = cells.raw(EquipmentPiece);
    if (cells.said(EquipmentPairs) && piece != "plate")
        cells.refuse(EquipmentPairs, "nothing: plates alone come in pairs");
    if (cells.said(EquipmentPieceName) && (piece == "plate" || piece == "ceiling"))
        cells.refuse(EquipmentPieceName, piece == "plate" ? say("nothing: a plate has no name")
                                                          : say("nothing: a ceiling has no name"));
    if (piece == "bar") {
        set.bars.push_back({.name = cells.text(EquipmentPieceName), .mass = mass, .unit = unit});
    } else if (piece == "plate") {
        const int pairs = cells.count(EquipmentPairs).value_or(1);
        set.plates.push_back({.mass = mass, .pairs = pairs, .unit = unit});
    } else if (piece == "ceiling") {
        if (set.ceiling && *set.ceiling != mass)
            cells.refuse(EquipmentMass, "one ceiling for a set of equipment");
        set.ceiling = mass;
    } else {
        const auto use = need(cells, EquipmentPiece, fixedMassUseFromWord(piece),
                              "bar, plate, alone, added or ceiling");
        set.fixed.push_back(
            {.name = cells.text(EquipmentPieceName), .mass = mass, .use = use, .unit = unit});
    }
}

void takeNote(const Cells& cells, Equipment& set) {
    const std::string note = cells.text(EquipmentNote);
    if (note.empty())
        return;
    if (!set.note.empty() && set.note != note)
        cells.refuse(EquipmentNote,
                     say("%1, as an earlier row says of the same set", found(set.note)));
    set.note = note;
}

} // namespace

bool isEquipmentHeader(const std::vector<std::string>& header) {
    return std::ranges::all_of(std::array{EquipmentName, EquipmentPiece, EquipmentMass},
                               [&](EquipmentColumn column) {
                                   return columnOf(header, equipmentColumns[column]).has_value();
                               });
}

std::vector<std::string> EquipmentTable::read(const std::filesystem::path& file) {
    std::optional<Table> table;
    const std::size_t before = sets.size(); // a second file tells sets of its own
    readCsv(file, ',', [&](const CsvRow& row) {
        if (!table) {
            table.emplace(file, row, equipmentColumns, equipmentRequired, ColumnMap{});
            return;
        }
        const Cells cells(*table, row);
        if (cells.blankRow())
            return;
        const std::string name = cells.name(EquipmentName);
        auto at = std::find_if(sets.begin() + static_cast<std::ptrdiff_t>(before), sets.end(),
                               [&](const Entry& each) { return each.equipment.name == name; });
        if (at == sets.end())
            at = sets.insert(at, {.equipment = {.name = name},
                                  .where = {.file = file.string(),
                                            .line = row.line,
                                            .column = inWords(equipmentColumns[0])}});
        takePiece(cells, at->equipment);
        takeNote(cells, at->equipment);
    });
    for (auto at = sets.begin() + static_cast<std::ptrdiff_t>(before); at != sets.end(); ++at)
        try {
            validate(at->equipment);
        } catch (const BadInput& bad) {
            throw BadInput(at->where, say("%1 in \"%2\"", bad.found(), at->equipment.name),
                           bad.expected());
        }
    return table ? table->notUsed() : std::vector<std::string>{};
}

std::vector<std::string> mergeEquipment(log::Log& log, const EquipmentTable& table) {
    std::vector<std::string> made;
    for (const EquipmentTable::Entry& entry : table.sets) {
        const auto held = log.equipment();
        const auto same = std::ranges::find_if(held, [&](const auto& stored) {
            return foldCase(stored.value.name) == foldCase(entry.equipment.name);
        });
        if (same == held.end()) {
            log.add(entry.equipment);
            made.push_back(entry.equipment.name);
            continue;
        }
        Equipment read = entry.equipment;
        read.name = same->value.name;
        if (read != same->value)
            throw BadInput(entry.where,
                           say("the set of equipment \"%1\" told otherwise", entry.equipment.name),
                           say("its pieces as the log has them (an import adds, it does not "
                               "overwrite: change it in the program)"));
    }
    return made;
}

} // namespace slopebook::exchange
