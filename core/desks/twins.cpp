// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/twins.h"

#include <algorithm>
#include <utility>

namespace slopebook::desks {

namespace {
/// The session of a set, attempt or gap; 0: it is none of them.
Slot sessionHolding(const Thing& thing) {
    return std::visit(
        [](const auto& value) {
            if constexpr (requires {
                              value.session;
                              value.ordinal;
                          })
                return static_cast<Slot>(raw(value.session));
            else
                return Slot{0};
        },
        thing);
}

void goTo(Thing& thing, Slot session) {
    std::visit(
        [&](auto& value) {
            if constexpr (requires {
                              value.session;
                              value.ordinal;
                          })
                value.session = SessionId{session};
        },
        thing);
}

/// But for the number and the session.
bool saysTheSame(const Thing& one, Thing other) {
    if (one.index() != other.index())
        return false;
    goTo(other, sessionHolding(one));
    *numberOf(other) = *numberOf(one);
    return one == other;
}
} // namespace

Twins::Twins(const Meeting& meeting, const Ends& ends) : m_meeting(meeting), m_ends(ends) {
    for (const auto& [slot, atom] : meeting.desk)
        if (const Slot session = atom.thing ? sessionHolding(*atom.thing) : 0)
            m_held[session].push_back(slot);
}

Slot Twins::of(Slot slot, const Thing& moved) const {
    const Desk& desk = m_meeting.desk;
    const Slot from = sessionHolding(*desk.at(slot).thing);
    const Slot into = sessionHolding(moved);
    const auto held = m_held.find(into);
    if (into == 0 || into == from || held == m_held.end())
        return 0;
    std::vector<Slot> there;
    for (const Slot one : held->second) {
        const auto came = m_cameFrom.find(one);
        if (one != slot && desk.at(one).alive &&
            (came == m_cameFrom.end() || came->second != from) &&
            saysTheSame(moved, *desk.at(one).thing))
            there.push_back(one);
    }
    // those of its own session that were found here before, now or in an earlier meeting
    const auto found = std::ranges::count_if(m_held.at(from), [&](Slot one) {
        return one != slot && !desk.at(one).alive &&
               saysTheSame(moved, m_ends.followed(*desk.at(one).thing));
    });
    if (std::cmp_greater_equal(found, there.size()))
        return 0;
    m_meeting.sort(there);
    return there[static_cast<std::size_t>(found)];
}

bool Twins::stands(const Thing& moved) const {
    const auto held = m_held.find(sessionHolding(moved));
    return held != m_held.end() && std::ranges::any_of(held->second, [&](Slot one) {
               const Atom& atom = m_meeting.desk.at(one);
               return atom.alive && saysTheSame(moved, *atom.thing);
           });
}

void Twins::went(Slot slot, const Thing& before) {
    const Thing& now = *m_meeting.desk.at(slot).thing;
    m_held[sessionHolding(now)].push_back(slot);
    m_cameFrom[slot] = sessionHolding(before);
}

} // namespace slopebook::desks
