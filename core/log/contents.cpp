// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/contents.h"

#include "core/log/equipmenttable.h"
#include "core/log/sessionrows.h"
#include "core/log/stationtable.h"
#include "core/log/tables.h"
#include "core/log/testtable.h"

namespace slopebook::log {

namespace {
/// Every column of its table.
template <class Id>
Content ofRow(const UuidOf& uuids, const typename Table<Id>::Value& value) {
    Content content(uuids, Table<Id>::one);
    Table<Id>::columns(value, content);
    return content;
}
} // namespace

Sixteen contentHash(const UuidOf& uuids, const Athlete& athlete) {
    return ofRow<AthleteId>(uuids, athlete).hash();
}
Sixteen contentHash(const UuidOf& uuids, const Lift& lift) {
    return ofRow<LiftId>(uuids, lift).hash();
}
Sixteen contentHash(const UuidOf& uuids, const Device& device) {
    return ofRow<DeviceId>(uuids, device).hash();
}
Sixteen contentHash(const UuidOf& uuids, const Block& block) {
    return ofRow<BlockId>(uuids, block).hash();
}
Sixteen contentHash(const UuidOf& uuids, const TestKind& kind) {
    return ofRow<TestKindId>(uuids, kind).hash();
}

Sixteen contentHash(const UuidOf& uuids, const Equipment& equipment) {
    Content content = ofRow<EquipmentId>(uuids, equipment);
    for (const Bar& bar : equipment.bars) {
        content("bar", bar.mass);
        content("name", bar.name);
        content("unit", bar.unit);
    }
    for (const Plate& plate : equipment.plates) {
        content("plate", plate.mass);
        content("pairs", plate.pairs);
        content("unit", plate.unit);
    }
    for (const FixedMass& fixed : equipment.fixed) {
        content("fixed", fixed.mass);
        content("use", fixed.use);
        content("name", fixed.name);
        content("unit", fixed.unit);
    }
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, const Station& station) {
    Content content = ofRow<StationId>(uuids, station);
    for (const TestKindId test : station.tests)
        content.of(test);
    for (const Mass load : station.ladder)
        content("load_g", std::optional(load));
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, const SessionHead& head) {
    Content content(uuids, "session");
    content.of(head.athlete);
    content("day", std::optional(head.date));
    content("ordinal", head.ordinal);
    content("body_mass_g", head.bodyMass);
    content("repeat_of", head.repeatOf);
    content("note", head.note);
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, SessionId session, LiftId lift, const Conditions& held) {
    Content content(uuids, "lift conditions");
    content.of(session).of(lift);
    conditionColumns(held, content);
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, SessionId session, TestKindId test,
                    const Conditions& held) {
    Content content(uuids, "test conditions");
    content.of(session).of(test);
    conditionColumns(held, content);
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, const PlacedSet& placed) {
    Content content(uuids, "set");
    content.of(placed.session).of(placed.lift);
    content("ordinal", placed.ordinal);
    setColumns(placed.set, content);
    for (const Rep& rep : placed.set.reps) {
        content("velocity", std::optional(rep.velocity));
        content("excluded", rep.excluded);
    }
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, SessionId session, TestKindId test, int ordinal,
                    const Attempt& attempt) {
    Content content(uuids, "attempt");
    content.of(session).of(test);
    content("ordinal", ordinal);
    attemptColumns(attempt, content);
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, SessionId session, int ordinal, const Gap& gap) {
    Content content(uuids, "gap");
    content.of(session);
    content("ordinal", ordinal);
    gapColumns(gap, content);
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, AthleteId athlete, LiftId lift, Mass checkLoad) {
    Content content(uuids, "check load");
    content.of(athlete).of(lift);
    content("load_g", std::optional(checkLoad));
    return content.hash();
}

Sixteen contentHash(const UuidOf& uuids, const Roster& roster, int ordinal) {
    Content content(uuids, "roster");
    content.of(roster.station);
    content("day", std::optional(roster.day));
    content("ordinal", ordinal);
    content.of(roster.athletes.at(static_cast<std::size_t>(ordinal - 1)));
    return content.hash();
}

} // namespace slopebook::log
