// SPDX-License-Identifier: GPL-3.0-or-later
// The part of Merge that deals with conditions: under what each lift of a session was measured.
#include "core/exchange/cells.h"
#include "core/exchange/merge.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <map>
#include <set>

namespace slopebook::exchange {

void Merge::conditions(const Staging& staging) {
    for (const StagedConditions& staged : staging.conditions)
        orRefuse([&] { conditionsOf(staging, staged); });
}

// What the file leaves blank says nothing against the log.
void Merge::conditionsOf(const Staging& staging, const StagedConditions& staged) {
    const auto at = static_cast<std::size_t>(staged.session);
    const SessionId session = m_sessionIds[at];
    const LiftId lift = m_liftIds[static_cast<std::size_t>(staged.lift)];
    if ((session == SessionId{} && !m_sessionIsNew[at]) || lift == LiftId{})
        return; // refused itself
    const StagedSession& day = staging.sessions[at];
    const auto inLog = [&](const Words& kept) {
        return say("%1, as the log has for %2", kept,
                   say("%1 of %2", staging.lifts[static_cast<std::size_t>(staged.lift)].name,
                       about(staging, day)));
    };
    const Conditions before = m_sessionIsNew[at] ? Conditions{} : m_log.conditions(session, lift);
    Conditions now = before;
    if (staged.device) {
        const DeviceId device = deviceFor(staged.device->value);
        if (now.device && *now.device != device)
            staging.contradict(staged.device->place, "device", found(staged.device->value),
                               inLog(found(m_devices.find(*now.device)->value.name)));
        now.device = device;
    }
    const auto fill = [&](std::string& mine, const MaybeWithPlace<std::string>& theirs,
                          const char* column) {
        if (!theirs)
            return;
        if (!mine.empty() && mine != theirs->value)
            staging.contradict(theirs->place, column, found(theirs->value), inLog(found(mine)));
        mine = theirs->value;
    };
    fill(now.place, staged.place, "place");
    fill(now.surface, staged.surface, "surface");
    fill(now.footwear, staged.footwear, "footwear");
    fill(now.technique, staged.technique, "technique");
    fill(now.notComparable, staged.notComparable, "not_comparable");
    if (now == before)
        return;
    if (m_sessionIsNew[at]) {
        m_newConditions[at].push_back({.lift = lift, .conditions = now});
        return;
    }
    m_log.setConditions(session, lift, now);
    m_report.filledIn.push_back(english(about(staging, day)) + ": conditions");
}

void Merge::sessionConditions(const Staging& staging) {
    for (std::size_t i = 0; i < staging.sessions.size(); ++i) {
        const StagedSession& staged = staging.sessions[i];
        if ((staged.device || staged.site) && m_sessionIds[i] != SessionId{})
            orRefuse([&] { spread(staging, staged, m_sessionIds[i]); });
    }
}

void Merge::takeGaps(const Staging& staging) {
    for (const StagedGap& staged : staging.gaps) {
        const SessionId session = m_sessionIds[static_cast<std::size_t>(staged.session)];
        const LiftId lift = m_liftIds[static_cast<std::size_t>(staged.lift)];
        if (session != SessionId{} && lift != LiftId{})
            m_gaps[session].push_back({.lift = lift, .load = staged.load, .reason = staged.reason});
    }
}

// After the attempts, which may name the same gaps in their order.
void Merge::gaps() {
    for (const auto& [session, gaps] : m_gaps) {
        Battery battery = m_log.battery(session);
        const Battery before = battery;
        for (const Gap& gap : gaps)
            if (std::ranges::find(battery.gaps, gap) == battery.gaps.end()) {
                battery.gaps.push_back(gap);
                ++m_report.battery.gapsAdded;
            }
        if (battery != before)
            m_log.setBattery(session, battery);
    }
}

void Merge::spread(const Staging& staging, const StagedSession& staged, SessionId session) {
    const log::SessionRecord record = m_log.session(session);
    std::set<LiftId> lifts;
    for (const log::PlacedSet& set : record.sets)
        lifts.insert(set.lift);
    const bool tested = std::ranges::any_of(
        record.battery.tests, [](const TestAttempts& test) { return !test.attempts.empty(); });
    if (lifts.empty() && !tested) {
        std::string words = staged.device ? staged.device->value : std::string();
        if (staged.site)
            words += (words.empty() ? "" : ", ") + staged.site->value;
        SessionHead head = record.head.value;
        if (head.note.ends_with(words))
            return;
        head.note += (head.note.empty() ? "" : "; ") + words;
        m_log.change(session, head);
        return;
    }
    const auto place = [&](Conditions& conditions) {
        if (staged.site && conditions.place.empty())
            conditions.place = staged.site->value;
    };
    for (const LiftId lift : lifts) {
        const auto held = std::ranges::find(record.conditions, lift, &LiftConditions::lift);
        const Conditions before = held == record.conditions.end() ? Conditions{} : held->conditions;
        Conditions now = before;
        place(now);
        if (staged.device) {
            const DeviceId device = deviceFor(staged.device->value);
            if (now.device && *now.device != device)
                staging.contradict(staged.device->place, "device", found(staged.device->value),
                                   say("%1, as the log has for %2",
                                       found(m_devices.find(*now.device)->value.name),
                                       about(staging, staged)));
            now.device = device;
        }
        if (now != before)
            m_log.setConditions(session, lift, now);
    }
    Battery battery = record.battery;
    for (TestAttempts& test : battery.tests) {
        place(test.conditions);
        if (staged.device && lifts.empty() && !test.conditions.device)
            test.conditions.device = deviceFor(staged.device->value);
    }
    if (battery != record.battery)
        m_log.setBattery(session, battery);
}

} // namespace slopebook::exchange
