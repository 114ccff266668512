// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of equipment: a row each, and its pieces in the order in which the coach listed them.
#include "core/log/impl.h"
#include "core/log/validity.h"
#include "core/model/names.h"

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

MassUnit unitOf(const Query& row, int column) {
    return massUnitFromWord(row.text(column)).value_or(MassUnit::Kilogram);
}

/// Whether they stand as they are written: what the checksum does not cover is empty.
bool readPieces(Log::Impl& impl, EquipmentId id, Equipment& equipment) {
    bool asWritten = true;
    Query rows(impl.db,
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

/// Every set by name; wrong is told of each that is not as it was written.
template <class Wrong>
std::vector<Stored<EquipmentId, Equipment>> listed(Log::Impl& impl, const Wrong& wrong) {
    std::vector<Stored<EquipmentId, Equipment>> all;
    Query rows(impl.db, "SELECT id, checksum, name, ceiling_10ng, note FROM equipment "
                        "ORDER BY name COLLATE NOCASE, name");
    const auto take = [&] {
        const auto id = rows.id<EquipmentId>(0);
        Equipment equipment{.name = rows.text(2), .note = rows.text(4)};
        if (!rows.null(3))
            equipment.ceiling = ExactMass{rows.integer(3)};
        const bool asWritten = readPieces(impl, id, equipment);
        if (asWritten && checksum(id, equipment) == rows.integer(1))
            all.push_back({id, std::move(equipment)});
        else
            wrong(say("the set of equipment '%1' is not as it was written", equipment.name));
    };
    while (impl.next(rows))
        impl.salvaging(take);
    return all;
}

bool isThere(Log::Impl& impl, EquipmentId id) {
    return Query(impl.db, "SELECT 1 FROM equipment WHERE id = ?", id).next();
}

/// Throws where it is gone; gives what it weighs in its tally.
std::uint64_t requireEquipment(Log::Impl& impl, EquipmentId id) {
    Query row(impl.db, "SELECT checksum FROM equipment WHERE id = ?", id);
    if (!row.next())
        throw LogError(Kind::Conflict,
                       say("That set of equipment is not in the log any more. Nothing "
                           "was changed."));
    return weight(row.integer(0));
}

void requireFreeEquipmentName(Log::Impl& impl, EquipmentId id, const std::string& name) {
    if (Query(impl.db, "SELECT 1 FROM equipment WHERE id <> ? AND name = ?", id, name).next())
        throw BadInput(say("'%1' a second time", name),
                       say("a name that no other set of equipment has"));
}

void requireNewEquipmentName(Log::Impl& impl, EquipmentId id, const std::string& name) {
    requireTidy(name);
    Query others(impl.db, "SELECT name FROM equipment WHERE id <> ?", id);
    while (others.next())
        if (nameKey(others.text(0)) == nameKey(name))
            throw BadInput(say("'%1', the same name as '%2'", name, others.text(0)),
                           say("a name that no other set of equipment has"));
}

bool isNamed(Log::Impl& impl, EquipmentId id, const std::string& name) {
    return Query(impl.db, "SELECT 1 FROM equipment WHERE id = ? AND name = ?", id, name).next();
}

void writePieces(Log::Impl& impl, EquipmentId id, const Equipment& equipment) {
    int ordinal = 0;
    const auto write = [&](const char* kind, const std::string& name, ExactMass mass, MassUnit unit,
                           std::optional<int> pairs) {
        Query(impl.db,
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

void erasePieces(Log::Impl& impl, EquipmentId id) {
    Query(impl.db, "DELETE FROM equipment_pieces WHERE equipment = ?", id).run();
}
} // namespace

std::vector<Stored<EquipmentId, Equipment>> Log::equipment() const {
    const Reading moment(m_impl->db);
    return listed(*m_impl, [&](const Words& what) { m_impl->leaveOut(what); });
}

EquipmentId Log::add(const Equipment& equipment, std::optional<EquipmentId> id) {
    requireValid(equipment);
    return m_impl->write([&] {
        if (id && isThere(*m_impl, *id))
            throw LogError(Kind::Conflict,
                           say("That set of equipment is in the log already. Nothing "
                               "was changed."));
        requireFreeEquipmentName(*m_impl, id.value_or(EquipmentId{}), equipment.name);
        if (!id)
            requireNewEquipmentName(*m_impl, EquipmentId{}, equipment.name);
        const EquipmentId given = m_impl->key("equipment", id);
        Query(m_impl->db,
              "INSERT INTO equipment (id, name, ceiling_10ng, note, checksum) VALUES (?, ?, ?, ?, "
              "?)",
              given, equipment.name, equipment.ceiling, equipment.note, checksum(given, equipment))
            .run();
        writePieces(*m_impl, given, equipment);
        Tally change;
        change.add(weight(checksum(given, equipment)));
        m_impl->tally("equipment", 0, change);
        return given;
    });
}

void Log::change(EquipmentId id, const Equipment& equipment) {
    requireValid(equipment);
    m_impl->write([&] {
        Tally change;
        change.take(requireEquipment(*m_impl, id));
        requireFreeEquipmentName(*m_impl, id, equipment.name);
        if (!isNamed(*m_impl, id, equipment.name))
            requireNewEquipmentName(*m_impl, id, equipment.name);
        erasePieces(*m_impl, id);
        Query(
            m_impl->db,
            "UPDATE equipment SET name = ?, ceiling_10ng = ?, note = ?, checksum = ? WHERE id = ?",
            equipment.name, equipment.ceiling, equipment.note, checksum(id, equipment), id)
            .run();
        writePieces(*m_impl, id, equipment);
        change.add(weight(checksum(id, equipment)));
        m_impl->tally("equipment", 0, change);
    });
}

void Log::remove(EquipmentId id) {
    m_impl->write([&] {
        Tally change;
        change.take(requireEquipment(*m_impl, id));
        erasePieces(*m_impl, id);
        Query(m_impl->db, "DELETE FROM equipment WHERE id = ?", id).run();
        m_impl->tally("equipment", 0, change);
    });
}

void Log::Impl::checkEquipment(Findings& findings) {
    listed(*this, [&](const Words& what) { findings.push_back(say("%1.", what)); });
}

} // namespace slopebook::log
