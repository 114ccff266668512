// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/contents.h"

#include "core/log/contentcolumns.h"

namespace slopebook::log {

namespace {
template <class Value>
Content spelled(const UuidOf& uuids, const Value& value) {
    Content content(uuids, ThingColumns<Value>::kind);
    ThingColumns<Value>::visit(value, content);
    return content;
}
} // namespace

Content contentOf(const UuidOf& uuids, const Athlete& athlete) {
    return spelled(uuids, athlete);
}
Content contentOf(const UuidOf& uuids, const Lift& lift) {
    return spelled(uuids, lift);
}
Content contentOf(const UuidOf& uuids, const Device& device) {
    return spelled(uuids, device);
}
Content contentOf(const UuidOf& uuids, const Block& block) {
    return spelled(uuids, block);
}
Content contentOf(const UuidOf& uuids, const TestKind& kind) {
    return spelled(uuids, kind);
}
Content contentOf(const UuidOf& uuids, const Equipment& equipment) {
    return spelled(uuids, equipment);
}
Content contentOf(const UuidOf& uuids, const Station& station) {
    return spelled(uuids, station);
}

Content contentOf(const UuidOf& uuids, const SessionHead& head) {
    Content content(uuids, ThingColumns<SessionThing>::kind);
    ThingColumns<SessionThing>::ofHead(head, content);
    return content;
}

Content contentOf(const UuidOf& uuids, SessionId session, LiftId lift, const Conditions& held) {
    return spelled(uuids, LiftConditionsThing{session, lift, held});
}
Content contentOf(const UuidOf& uuids, SessionId session, TestKindId test, const Conditions& held) {
    return spelled(uuids, TestConditionsThing{session, test, held});
}
Content contentOf(const UuidOf& uuids, const PlacedSet& placed) {
    return spelled(uuids, placed);
}
Content contentOf(const UuidOf& uuids, SessionId session, TestKindId test, int ordinal,
                  const Attempt& attempt) {
    return spelled(uuids, AttemptThing{session, test, ordinal, attempt});
}
Content contentOf(const UuidOf& uuids, SessionId session, int ordinal, const Gap& gap) {
    return spelled(uuids, GapThing{session, ordinal, gap});
}
Content contentOf(const UuidOf& uuids, AthleteId athlete, LiftId lift, Mass checkLoad) {
    return spelled(uuids, CheckLoadThing{athlete, lift, checkLoad});
}
Content contentOf(const UuidOf& uuids, const Roster& roster, int ordinal) {
    const AthleteId athlete = roster.athletes.at(static_cast<std::size_t>(ordinal - 1));
    return spelled(uuids, RosterThing{roster.station, roster.day, ordinal, athlete});
}
Content contentOf(const UuidOf& uuids, const Thing& thing) {
    return std::visit([&](const auto& value) { return spelled(uuids, value); }, thing);
}

Sixteen conflictUuid(const Sixteen& about, const Sixteen& revision) {
    return derivedUuid(about, std::string("conflict").append(viewOf(revision)));
}

} // namespace slopebook::log
