// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/writer.h"

#include "core/desks/localid.h"
#include "core/log/conflicts.h"
#include "core/log/impl.h"

#include <algorithm>
#include <limits>

namespace slopebook::desks {

Writer::Writer(log::Log& log, const Slots& known, const ReadDesk& before, const Desk& after,
               const std::set<Slot>& touched)
    : m_log(log), m_known(known), m_before(before), m_after(after) {
    for (const Slot slot : touched) {
        const Thing* was = this->before(slot);
        const Thing* now = this->after(slot);
        if (was == nullptr ? now == nullptr : now != nullptr && *was == *now)
            continue;
        m_changed.push_back(slot);
        for (const Thing* thing : {was, now})
            if (const auto group = thing == nullptr ? std::nullopt : groupOf(*thing))
                m_groups[*group];
    }
    std::ranges::sort(m_changed, {}, [&](Slot slot) {
        const Thing* thing = this->after(slot) != nullptr ? this->after(slot) : this->before(slot);
        return std::pair(thing->index(), m_known.uuid(slot));
    });
    if (!m_groups.empty())
        for (const auto& [slot, atom] : m_after)
            if (const auto group = atom.alive ? groupOf(*atom.thing) : std::nullopt)
                if (const auto at = m_groups.find(*group); at != m_groups.end())
                    at->second.push_back(slot);
}

std::optional<Writer::Group> Writer::groupOf(const Thing& thing) {
    if (const auto* attempt = std::get_if<log::AttemptThing>(&thing))
        return Group{.kind = "battery", .of = raw(attempt->session)};
    if (const auto* gap = std::get_if<log::GapThing>(&thing))
        return Group{.kind = "battery", .of = raw(gap->session)};
    if (const auto* held = std::get_if<log::TestConditionsThing>(&thing))
        return Group{.kind = "battery", .of = raw(held->session)};
    if (const auto* load = std::get_if<log::CheckLoadThing>(&thing))
        return Group{.kind = "check load", .of = raw(load->athlete), .also = raw(load->lift)};
    if (const auto* turn = std::get_if<log::RosterThing>(&thing))
        return Group{.kind = "roster", .of = raw(turn->station), .day = turn->day};
    return std::nullopt;
}

std::set<Slot> Writer::writtenAnew() const {
    std::set<Slot> all;
    for (const auto& [group, held] : m_groups)
        all.insert(held.begin(), held.end());
    return all;
}

std::set<Writer::Place> Writer::placesWritten() {
    std::set<Place> places;
    for (const auto& [group, held] : m_groups) {
        if (before(group.of) == nullptr && after(group.of) == nullptr)
            continue;
        if (group.kind == "battery")
            for (const char* kind : {"test conditions", "attempt", "gap"})
                places.insert({.kind = kind, .one = keyOf(group.of, "session")});
        else if (group.kind == "roster")
            places.insert({.kind = group.kind,
                           .one = keyOf(group.of, "station"),
                           .two = log::dayNumber(group.day)});
        else
            places.insert({.kind = group.kind, .one = keyOf(group.of, "athlete")});
    }
    for (const Slot slot : m_changed)
        for (const Thing* thing : {before(slot), after(slot)})
            if (const auto* held =
                    thing == nullptr ? nullptr : std::get_if<log::LiftConditionsThing>(thing))
                places.insert(
                    {.kind = "lift conditions", .one = keyOf(raw(held->session), "session")});
    return places;
}

const Thing* Writer::before(Slot slot) const {
    const auto at = m_before.desk.find(slot);
    return at != m_before.desk.end() && at->second.alive ? &*at->second.thing : nullptr;
}

const Thing* Writer::after(Slot slot) const {
    const auto at = m_after.find(slot);
    return at != m_after.end() && at->second.alive ? &*at->second.thing : nullptr;
}

std::int64_t Writer::keyOf(Slot slot, const char* kind) {
    const auto [at, isNew] = m_keys.try_emplace(slot, 0);
    if (isNew) {
        const auto place = m_before.places.find(slot);
        at->second =
            place != m_before.places.end() ? place->second.one : m_log.impl().reserveKeys(kind, 1);
    }
    return at->second;
}

Thing Writer::local(const Thing& thing) {
    Thing mine = thing;
    visitKindedReferences(mine, [&](const char* kind, Slot slot) { return keyOf(slot, kind); });
    return mine;
}

log::AtomKey Writer::placeOf(Slot slot) {
    const Atom& atom = m_after.at(slot);
    if (!atom.thing)
        return m_before.places.at(slot);
    log::AtomKey place{.kind = std::string(kindOf(*atom.thing))};
    const Thing mine = local(*atom.thing);
    std::visit(
        [&](const auto& value) {
            if constexpr (requires {
                              value.conditions;
                              value.session;
                          }) {
                place.one = raw(value.session);
                if constexpr (requires { value.lift; })
                    place.two = raw(value.lift);
                else
                    place.two = raw(value.test);
            } else if constexpr (
                requires { value.attempt; } || requires { value.gap; }) {
                place.one = raw(value.session);
                place.two = value.ordinal;
            } else if constexpr (requires { value.load; }) {
                place.one = raw(value.athlete);
                place.two = raw(value.lift);
                place.three = value.load.grams;
            } else if constexpr (requires { value.station; }) {
                place.one = raw(value.station);
                place.two = log::dayNumber(value.day);
                place.three = raw(value.athlete);
            } else {
                place.one = keyOf(slot, place.kind.c_str());
            }
        },
        mine);
    return place;
}

void Writer::giveUuid(Slot slot) {
    log::Connection& db = m_log.impl().db;
    const log::AtomKey place = placeOf(slot);
    const auto atom = log::atomOf(db, place);
    log::renameAtom(db, place, m_known.uuid(slot), log::shortTrail(atom->hash, true));
}

void Writer::makeRoom() {
    for (const Slot slot : m_changed)
        takeOut(slot);
    emptyGroups();
    makeRoomForSessions();
    for (const Slot slot : m_changed)
        parkNamed(slot);
}

void Writer::takeOut(Slot slot) {
    if (const auto* was = before<log::LiftConditionsThing>(slot))
        m_log.setConditions(idOf<SessionId>(raw(was->session), "session"),
                            idOf<LiftId>(raw(was->lift), "lift"), {});
    const auto* was = before<log::SetThing>(slot);
    if (was == nullptr)
        return;
    const auto* now = after<log::SetThing>(slot);
    if (now != nullptr && now->session == was->session && now->lift == was->lift &&
        now->ordinal == was->ordinal)
        return;
    m_log.remove(idOf<SetId>(slot, "set"));
    m_takenOut.insert(slot);
}

void Writer::emptyGroups() {
    for (const auto& [group, held] : m_groups) {
        if (before(group.of) == nullptr)
            continue;
        if (group.kind == "battery")
            m_log.setBattery(idOf<SessionId>(group.of, "session"), {});
        else if (group.kind == "roster")
            m_log.setRoster({.station = idOf<StationId>(group.of, "station"), .day = group.day});
        else if (before(group.also) != nullptr)
            m_log.setCheckLoads(idOf<AthleteId>(group.of, "athlete"),
                                idOf<LiftId>(group.also, "lift"), {});
    }
}

void Writer::makeRoomForSessions() {
    constexpr int parked = 10'000'000; // no session has such a number
    for (const Slot slot : m_changed) {
        const auto* was = before<log::SessionThing>(slot);
        if (was == nullptr)
            continue;
        const auto* now = after<log::SessionThing>(slot);
        SessionHead head = std::get<log::SessionThing>(local(*before(slot))).head;
        head.repeatOf.reset();
        if (now != nullptr && desks::keyOf(*before(slot)) != desks::keyOf(*after(slot)))
            head.ordinal = parked + ++m_parked;
        m_log.change(idOf<SessionId>(slot, "session"), head);
    }
    for (const Slot slot : m_changed)
        if (before<log::SessionThing>(slot) != nullptr && after(slot) == nullptr)
            m_log.remove(idOf<SessionId>(slot, "session"));
}

void Writer::parkNamed(Slot slot) {
    const Thing* was = before(slot);
    if (was == nullptr || nameOf(*was) == nullptr)
        return;
    const Thing* now = after(slot);
    if (now != nullptr && desks::keyOf(*was) == desks::keyOf(*now) &&
        *nameOf(*was) == *nameOf(*now))
        return;
    Thing parked = local(*was);
    *nameOf(parked) =
        "parked " + std::to_string(++m_parked) + " " + log::hexOf(log::viewOf(m_known.uuid(slot)));
    std::visit(
        [&](const auto& value) {
            using Id = LocalId<std::remove_cvref_t<decltype(value)>>;
            if constexpr (!std::is_void_v<Id>)
                m_log.change(idOf<Id>(slot, kindOf(parked).data()), value);
        },
        parked);
}

void Writer::writeNamed() {
    for (const Slot slot : m_changed) {
        if (after(slot) == nullptr)
            continue;
        const Thing now = local(*after(slot));
        std::visit(
            [&](const auto& value) {
                using Id = LocalId<std::remove_cvref_t<decltype(value)>>;
                if constexpr (!std::is_void_v<Id>) {
                    const Id id = idOf<Id>(slot, kindOf(now).data());
                    if (before(slot) != nullptr)
                        m_log.change(id, value);
                    else
                        m_log.add(value, std::optional(id));
                    giveUuid(slot);
                }
            },
            now);
    }
}

void Writer::writeSessions() {
    std::vector<std::pair<SessionId, SessionHead>> repeats;
    for (const Slot slot : m_changed) {
        const auto* now = after<log::SessionThing>(slot);
        if (now == nullptr)
            continue;
        SessionHead head = std::get<log::SessionThing>(local(*after(slot))).head;
        const auto id = idOf<SessionId>(slot, "session");
        if (head.repeatOf)
            repeats.emplace_back(id, head);
        head.repeatOf.reset();
        if (before(slot) != nullptr)
            m_log.change(id, head);
        else
            m_log.add(head, std::optional(id));
        giveUuid(slot);
    }
    for (const auto& [id, head] : repeats)
        m_log.change(id, head);
}

void Writer::writeHeld() {
    for (const Slot slot : m_changed) {
        if (const auto* now = after<log::LiftConditionsThing>(slot)) {
            const auto mine = std::get<log::LiftConditionsThing>(local(*after(slot)));
            m_log.setConditions(mine.session, mine.lift,
                                now->conditions == Conditions{} ? Conditions{} : mine.conditions);
        }
        if (after<log::SetThing>(slot) != nullptr)
            writeSet(slot);
    }
    for (auto& [group, held] : m_groups)
        if (after(group.of) != nullptr)
            writeGroup(group, held);
}

void Writer::writeSet(Slot slot) {
    const auto mine = std::get<log::SetThing>(local(*after(slot)));
    const auto id = idOf<SetId>(slot, "set");
    if (before(slot) != nullptr && !m_takenOut.contains(slot))
        m_log.change(id, mine.set);
    else
        m_log.add(mine.session, mine.lift, mine.set, mine.ordinal, id);
}

void Writer::writeGroup(const Group& group, std::vector<Slot>& held) {
    std::ranges::sort(held, {}, [&](Slot slot) {
        const int* number = numberOf(*after(slot)); // conditions last: attempts order the tests
        return number == nullptr ? std::numeric_limits<int>::max() : *number;
    });
    Battery battery;
    std::vector<Mass> loads;
    Roster roster{.day = group.day};
    for (const Slot slot : held) {
        const Thing mine = local(*after(slot));
        if (const auto* attempt = std::get_if<log::AttemptThing>(&mine)) {
            conditionsOf(battery, attempt->test); // its row comes into the battery
            std::ranges::find(battery.tests, attempt->test, &TestAttempts::kind)
                ->attempts.push_back(attempt->attempt);
        } else if (const auto* gap = std::get_if<log::GapThing>(&mine)) {
            battery.gaps.push_back(gap->gap);
        } else if (const auto* conditions = std::get_if<log::TestConditionsThing>(&mine)) {
            conditionsOf(battery, conditions->test) = conditions->conditions;
        } else if (const auto* load = std::get_if<log::CheckLoadThing>(&mine)) {
            loads.push_back(load->load);
        } else if (const auto* turn = std::get_if<log::RosterThing>(&mine)) {
            roster.athletes.push_back(turn->athlete);
        }
    }
    if (group.kind == "battery") {
        m_log.setBattery(idOf<SessionId>(group.of, "session"), asKept(std::move(battery)));
    } else if (group.kind == "roster") {
        roster.station = idOf<StationId>(group.of, "station");
        m_log.setRoster(roster);
    } else if (after(group.also) != nullptr) {
        m_log.setCheckLoads(idOf<AthleteId>(group.of, "athlete"), idOf<LiftId>(group.also, "lift"),
                            loads);
    }
}

void Writer::removeNamed() {
    for (auto at = m_changed.rbegin(); at != m_changed.rend(); ++at) {
        const Thing* was = before(*at);
        if (was == nullptr || after(*at) != nullptr)
            continue;
        std::visit(
            [&](const auto& value) {
                using Id = LocalId<std::remove_cvref_t<decltype(value)>>;
                if constexpr (!std::is_void_v<Id>)
                    m_log.remove(idOf<Id>(*at, kindOf(*was).data()));
            },
            *was);
    }
}

void Writer::writeConflicts() {
    for (const Slot slot : m_changed) {
        const auto id = [&] { return idOf<log::ConflictId>(slot, "conflict"); };
        if (before<log::ConflictThing>(slot) != nullptr)
            log::settleConflict(m_log, id());
        if (const auto* now = after<log::ConflictThing>(slot)) // found for another reason there
            log::noteConflict(m_log, *now, id());
    }
}

} // namespace slopebook::desks
