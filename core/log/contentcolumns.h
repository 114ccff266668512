// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of what each thing says, in the order of its bytes: one list for writing them
// (Content) and for reading them (ContentReader). Beside what a table's list calls (columns.h) they
// call of() with the thing that this one belongs to or speaks of, always() with what stands there
// whatever it holds, and each() with parts and the columns of one, the first of which always
// stands.
#pragma once

#include "core/log/equipmenttable.h"
#include "core/log/sessionrows.h"
#include "core/log/stationtable.h"
#include "core/log/tables.h"
#include "core/log/testtable.h"
#include "core/log/things.h"

namespace slopebook::log {

template <class Value>
struct ThingColumns;

/// Of one that is a row of its table.
template <class Id>
struct RowColumns {
    static constexpr const char* kind = Table<Id>::one;
    template <class Held, class Visitor>
    static void visit(Held& value, Visitor& column) {
        Table<Id>::columns(value, column);
    }
};
template <>
struct ThingColumns<Athlete> : RowColumns<AthleteId> {};
template <>
struct ThingColumns<Lift> : RowColumns<LiftId> {};
template <>
struct ThingColumns<Device> : RowColumns<DeviceId> {};
template <>
struct ThingColumns<Block> : RowColumns<BlockId> {};
template <>
struct ThingColumns<TestKind> : RowColumns<TestKindId> {};

template <>
struct ThingColumns<Equipment> : RowColumns<EquipmentId> {
    template <class Held, class Visitor>
    static void visit(Held& equipment, Visitor& column) {
        Table<EquipmentId>::columns(equipment, column);
        column.each("bar", equipment.bars, [](auto& bar, auto& of) {
            of("bar", bar.mass);
            of("name", bar.name);
            of("unit", bar.unit);
        });
        column.each("plate", equipment.plates, [](auto& plate, auto& of) {
            of("plate", plate.mass);
            of("pairs", plate.pairs);
            of("unit", plate.unit);
        });
        column.each("fixed", equipment.fixed, [](auto& fixed, auto& of) {
            of("fixed", fixed.mass);
            of("use", fixed.use);
            of("name", fixed.name);
            of("unit", fixed.unit);
        });
    }
};

template <>
struct ThingColumns<Station> : RowColumns<StationId> {
    template <class Held, class Visitor>
    static void visit(Held& station, Visitor& column) {
        Table<StationId>::columns(station, column);
        column.each("test", station.tests, [](auto& test, auto& of) { of.of(test); });
        column.each("load_g", station.ladder,
                    [](auto& load, auto& of) { of.always("load_g", load); });
    }
};

template <>
struct ThingColumns<SessionThing> {
    static constexpr const char* kind = "session";
    template <class Held, class Visitor>
    static void ofHead(Held& head, Visitor& column) {
        column.of(head.athlete);
        column.always("day", head.date);
        column("ordinal", head.ordinal);
        column("body_mass_g", head.bodyMass);
        column("repeat_of", head.repeatOf);
        column("note", head.note);
    }
    template <class Held, class Visitor>
    static void visit(Held& session, Visitor& column) {
        ofHead(session.head, column);
        column("into", session.into);
    }
};

template <>
struct ThingColumns<LiftConditionsThing> {
    static constexpr const char* kind = "lift conditions";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.session);
        column.of(held.lift);
        conditionColumns(held.conditions, column);
    }
};

template <>
struct ThingColumns<TestConditionsThing> {
    static constexpr const char* kind = "test conditions";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.session);
        column.of(held.test);
        conditionColumns(held.conditions, column);
    }
};

template <>
struct ThingColumns<SetThing> {
    static constexpr const char* kind = "set";
    template <class Held, class Visitor>
    static void visit(Held& placed, Visitor& column) {
        column.of(placed.session);
        column.of(placed.lift);
        column("ordinal", placed.ordinal);
        setColumns(placed.set, column);
        column.each("velocity", placed.set.reps, [](auto& rep, auto& of) {
            of.always("velocity", rep.velocity);
            of("excluded", rep.excluded);
        });
    }
};

template <>
struct ThingColumns<AttemptThing> {
    static constexpr const char* kind = "attempt";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.session);
        column.of(held.test);
        column("ordinal", held.ordinal);
        attemptColumns(held.attempt, column);
    }
};

template <>
struct ThingColumns<GapThing> {
    static constexpr const char* kind = "gap";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.session);
        column("ordinal", held.ordinal);
        gapColumns(held.gap, column);
    }
};

template <>
struct ThingColumns<CheckLoadThing> {
    static constexpr const char* kind = "check load";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.athlete);
        column.of(held.lift);
        column.always("load_g", held.load);
    }
};

template <>
struct ThingColumns<RosterThing> {
    static constexpr const char* kind = "roster";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column.of(held.station);
        column.always("day", held.day);
        column("ordinal", held.ordinal);
        column.of(held.athlete);
    }
};

template <>
struct ThingColumns<ConflictThing> {
    static constexpr const char* kind = "conflict";
    template <class Held, class Visitor>
    static void visit(Held& held, Visitor& column) {
        column("about", held.about);
        column("revision", held.revision);
        column("why", held.why);
        column("lived", held.lived);
        column("content", held.content);
    }
};

} // namespace slopebook::log
