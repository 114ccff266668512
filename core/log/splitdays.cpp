// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/splitdays.h"

#include "core/log/history.h"
#include "core/model/errors.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <set>

namespace slopebook::log {

namespace {
/// What a session holds, by which it can be told from another one of its day.
struct Held {
    std::set<LiftId> lifts;
    std::set<TestKindId> tests;
    std::set<std::optional<DeviceId>> devices;
};

Held heldBy(const SessionRecord& record) {
    Held held;
    for (const PlacedSet& placed : record.sets)
        held.lifts.insert(placed.lift);
    for (const LiftConditions& one : record.conditions) {
        held.lifts.insert(one.lift);
        held.devices.insert(one.conditions.device);
    }
    for (const TestAttempts& test : record.battery.tests) {
        held.tests.insert(test.kind);
        held.devices.insert(test.conditions.device);
    }
    for (const Gap& gap : record.battery.gaps) {
        if (gap.lift)
            held.lifts.insert(*gap.lift);
        if (gap.kind)
            held.tests.insert(*gap.kind);
    }
    held.devices.erase(std::nullopt);
    return held;
}

template <class Thing>
bool apart(const std::set<Thing>& one, const std::set<Thing>& other) {
    return std::ranges::none_of(one, [&](const Thing& thing) { return other.contains(thing); });
}

bool splitByDevice(const SessionRecord& into, const SessionRecord& from) {
    const SessionHead& a = into.head.value;
    const SessionHead& b = from.head.value;
    if (a.athlete != b.athlete || a.date != b.date || a.ordinal >= b.ordinal ||
        a.repeatOf != b.repeatOf || (a.bodyMass && b.bodyMass && a.bodyMass != b.bodyMass))
        return false;
    const Held one = heldBy(into);
    const Held other = heldBy(from);
    return apart(one.lifts, other.lifts) && apart(one.tests, other.tests) && !one.devices.empty() &&
           !other.devices.empty() && apart(one.devices, other.devices);
}

/// The later one may go: it is no repeat, and none is of it.
bool mayJoin(const Log& log, const SessionRecord& into, const SessionRecord& from) {
    return !from.head.value.repeatOf && splitByDevice(into, from) && !isRepeated(log, from.head.id);
}

/// That of the two sessions, where they are one day's and may be joined.
std::optional<SplitDay> splitOf(const Log& log, const Stored<SessionId, SessionHead>& first,
                                const Stored<SessionId, SessionHead>& second) {
    const SplitDay day{.into = first.id, .from = second.id};
    if (first.value.date == second.value.date &&
        mayJoin(log, log.session(day.into), log.session(day.from)))
        return day;
    return std::nullopt;
}

void findOf(const Log& log, AthleteId athlete, std::vector<SplitDay>& found) {
    const auto heads = log.sessions(athlete);
    for (std::size_t i = 1; i < heads.size(); ++i)
        if (const auto day = splitOf(log, heads[i - 1], heads[i]))
            found.push_back(*day);
}
} // namespace

std::vector<SplitDay> splitDays(const Log& log, std::optional<AthleteId> athlete) {
    std::vector<SplitDay> found;
    if (athlete) {
        findOf(log, *athlete, found);
        return found;
    }
    for (const auto& each : log.athletes())
        findOf(log, each.id, found);
    return found;
}

std::optional<SplitDay> splitDayOf(const Log& log,
                                   std::span<const Stored<SessionId, SessionHead>> sessions,
                                   SessionId session) {
    const auto at = std::ranges::find(sessions, session, &Stored<SessionId, SessionHead>::id);
    if (at == sessions.end())
        return std::nullopt;
    if (at != sessions.begin())
        if (const auto day = splitOf(log, *(at - 1), *at))
            return day;
    if (at + 1 != sessions.end())
        return splitOf(log, *at, *(at + 1));
    return std::nullopt;
}

void joinSessions(Log& log, const SplitDay& day) {
    log.together([&] {
        const SessionRecord into = log.session(day.into);
        const SessionRecord from = log.session(day.from);
        if (!mayJoin(log, into, from))
            throw LogError(LogError::Kind::Conflict,
                           say("The two sessions are not one day on two devices any more. Nothing "
                               "was changed."));
        log.remove(day.from);
        SessionHead head = into.head.value;
        if (!head.bodyMass)
            head.bodyMass = from.head.value.bodyMass;
        if (const std::string& note = from.head.value.note; !note.empty())
            head.note += (head.note.empty() ? "" : "; ") + note;
        log.change(day.into, head);
        for (const LiftConditions& one : from.conditions)
            log.setConditions(day.into, one.lift, one.conditions);
        for (const PlacedSet& placed : from.sets)
            log.add(day.into, placed.lift, placed.set, placed.ordinal, placed.id);
        Battery battery = into.battery;
        battery.tests.insert(battery.tests.end(), from.battery.tests.begin(),
                             from.battery.tests.end());
        battery.gaps.insert(battery.gaps.end(), from.battery.gaps.begin(), from.battery.gaps.end());
        log.setBattery(day.into, battery);
    });
}

void partSessions(Log& log, const SessionRecord& into, const SessionRecord& from) {
    log.together([&] {
        for (const PlacedSet& placed : from.sets)
            log.remove(placed.id);
        for (const LiftConditions& one : from.conditions)
            log.setConditions(into.head.id, one.lift, {});
        log.setBattery(into.head.id, into.battery);
        log.change(into.head.id, into.head.value);
        log.add(from.head.value, from.head.id);
        for (const LiftConditions& one : from.conditions)
            log.setConditions(from.head.id, one.lift, one.conditions);
        for (const PlacedSet& placed : from.sets)
            log.add(from.head.id, placed.lift, placed.set, placed.ordinal, placed.id);
        if (!from.battery.empty())
            log.setBattery(from.head.id, from.battery);
    });
}

} // namespace slopebook::log
