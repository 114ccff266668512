// SPDX-License-Identifier: GPL-3.0-or-later
// How the sets of equipment stand in their table.
#pragma once

#include "core/log/tables.h"
#include "core/model/equipment.h"

namespace slopebook::log {

template <>
struct Table<EquipmentId> : NamedTable {
    using Value = Equipment;
    static constexpr const char* one = "equipment";
    static constexpr Says says{
        .gone = "That set of equipment is not in the log any more.",
        .goneUnchanged = "That set of equipment is not in the log any more. Nothing was changed.",
        .there = "That set of equipment is in the log already. Nothing was changed.",
        .freeName = "a name that no other set of equipment has",
        .damaged = "the set of equipment '%1' is not as it was written",
        .numbered = "set of equipment %1"};
    static constexpr const char* table = "equipment";
    static constexpr bool hasParts = true; // its pieces
    template <class Held, class Visitor>
    static void columns(Held& equipment, Visitor& visit) {
        visit("name", equipment.name);
        visit("ceiling_10ng", equipment.ceiling);
        visit("note", equipment.note);
    }
};

} // namespace slopebook::log
