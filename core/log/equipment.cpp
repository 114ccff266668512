// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of equipment: a row each, and its pieces in the order in which the coach listed them.
#include "core/log/named.h"

namespace slopebook::log {

namespace {
MassUnit unitOf(const Query& row, int column) {
    return massUnitFromWord(row.text(column)).value_or(MassUnit::Kilogram);
}
} // namespace

bool readParts(Connection& db, EquipmentId id, Equipment& equipment) {
    bool asWritten = true;
    Query rows(db,
               "SELECT kind, name, mass_10ng, unit, pairs FROM equipment_pieces "
               "WHERE equipment = ? ORDER BY ordinal",
               id);
    while (rows.next()) {
        const std::string kind = rows.text(0);
        const ExactMass mass{rows.integer(2)};
        if (kind == "bar")
            equipment.bars.push_back({.name = rows.text(1), .mass = mass, .unit = unitOf(rows, 3)});
        else if (kind == "plate") {
            equipment.plates.push_back(
                {.mass = mass, .pairs = rows.small(4), .unit = unitOf(rows, 3)});
            asWritten = asWritten && rows.text(1).empty();
        } else
            equipment.fixed.push_back(
                {.name = rows.text(1),
                 .mass = mass,
                 .use = kind == "added" ? FixedMass::Use::Added : FixedMass::Use::Alone,
                 .unit = unitOf(rows, 3)});
    }
    return asWritten;
}

void writeParts(Connection& db, EquipmentId id, const Equipment& equipment) {
    int ordinal = 0;
    const auto write = [&](const char* kind, const std::string& name, ExactMass mass, MassUnit unit,
                           std::optional<int> pairs) {
        Query(db,
              "INSERT INTO equipment_pieces (equipment, ordinal, kind, name, mass_10ng, unit, "
              "pairs) VALUES (?, ?, ?, ?, ?, ?, ?)",
              id, ++ordinal, std::string(kind), name, mass, std::string(word(unit)), pairs)
            .run();
    };
    for (const Bar& bar : equipment.bars)
        write("bar", bar.name, bar.mass, bar.unit, {});
    for (const Plate& plate : equipment.plates)
        write("plate", {}, plate.mass, plate.unit, plate.pairs);
    for (const FixedMass& fixed : equipment.fixed)
        write(fixed.use == FixedMass::Use::Added ? "added" : "alone", fixed.name, fixed.mass,
              fixed.unit, {});
}

void eraseParts(Connection& db, EquipmentId id) {
    Query(db, "DELETE FROM equipment_pieces WHERE equipment = ?", id).run();
}

std::vector<Stored<EquipmentId, Equipment>> Log::equipment() const {
    const ReadScope moment(m_impl->db);
    return named::list<EquipmentId>(*m_impl);
}

EquipmentId Log::add(const Equipment& equipment, std::optional<EquipmentId> id) {
    return named::add(*m_impl, equipment, id);
}

void Log::change(EquipmentId id, const Equipment& equipment) {
    requireValid(equipment);
    m_impl->write([&] { named::change(*m_impl, id, equipment); });
}

void Log::remove(EquipmentId id) {
    m_impl->write([&] { named::erase(*m_impl, id); });
}

} // namespace slopebook::log
