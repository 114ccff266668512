// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/equipmentcsv.h"

#include "core/exchange/byname.h"
#include "core/exchange/cells.h"
#include "core/exchange/faults.h"
#include "core/model/errors.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

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

void requireValid(const EquipmentTable::Entry& entry) {
    try {
        validate(entry.equipment);
    } catch (const BadInput& bad) {
        throw BadInput(entry.where, say("%1 in \"%2\"", bad.found(), entry.equipment.name),
                       bad.expected());
    }
}

} // namespace

bool isEquipmentHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {equipmentColumns[EquipmentName], equipmentColumns[EquipmentPiece],
                               equipmentColumns[EquipmentMass]});
}

std::vector<std::string> EquipmentTable::read(const std::filesystem::path& file) {
    const std::size_t before = sets.size(); // a second file tells sets of its own
    FaultList faults;
    std::vector<std::string> notUsed;
    faults.collect([&] {
        notUsed = readTable(file, equipmentColumns, equipmentRequired,
                            [&](const Cells& cells, const Where& where) {
                                Entry& entry = entryOf(cells.name(EquipmentName), before, where);
                                takePiece(cells, entry.equipment);
                                takeNote(cells, entry.equipment);
                            });
    });
    if (faults.empty()) // else a piece may be missing
        for (std::size_t i = before; i < sets.size(); ++i)
            faults.collect([&] { requireValid(sets[i]); });
    faults.throwIfAny();
    return notUsed;
}

EquipmentTable::Entry& EquipmentTable::entryOf(const std::string& spelled, std::size_t from,
                                               const Where& where) {
    const std::string key = nameKey(spelled);
    for (std::size_t i = from; i < sets.size(); ++i)
        if (nameKey(sets[i].equipment.name) == key)
            return sets[i];
    sets.push_back({.equipment = {.name = newName(spelled)}, .where = where});
    sets.back().where.column = inWords(equipmentColumns[0]);
    return sets.back();
}

std::vector<std::string> mergeEquipment(log::Log& log, const EquipmentTable& table,
                                        const KnownThings& met) {
    std::vector<std::string> made;
    ByName<EquipmentId, Equipment> all(log.equipment());
    met.each<EquipmentId>("equipment",
                          [&](const auto& name, EquipmentId id) { all.also(name, id); });
    FaultList faults;
    for (const EquipmentTable::Entry& entry : table.sets) {
        const auto* held = all.find(entry.equipment.name);
        if (!held) {
            all.add(log.add(entry.equipment), entry.equipment);
            made.push_back(entry.equipment.name);
            continue;
        }
        Equipment read = entry.equipment;
        read.name = held->value.name;
        if (read != held->value)
            faults.add(
                BadInput(entry.where,
                         say("the set of equipment \"%1\" told otherwise", entry.equipment.name),
                         say("its pieces as the log has them (an import adds, it does not "
                             "overwrite: change it in the program)")));
    }
    faults.throwIfAny();
    return made;
}

} // namespace slopebook::exchange
