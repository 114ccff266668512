// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/ends.h"

#include "core/desks/sameones.h"

namespace slopebook::desks {

namespace {
/// Of several that say they are one with it one that lives, and then the least.
bool countsBefore(const Slots& known, const Desk& desk, Slot one, Slot other) {
    const bool lives = desk.at(one).alive;
    return lives != desk.at(other).alive ? lives : known.uuid(one) < known.uuid(other);
}

/// What the removed one became one with, alive or removed since; 0: it did not, or it is said
/// nowhere.
Slot becameOf(const Slots& known, const Desk& desk, Slot slot) {
    const Thing& thing = *desk.at(slot).thing;
    if (const auto* session = std::get_if<log::SessionThing>(&thing))
        return session->into ? known.find(*session->into) : 0;
    if (!isOneByName(thing))
        return 0;
    const Sixteen note = noteOf(known.uuid(slot));
    Slot found = 0;
    for (const auto& [other, atom] : desk)
        if (other != slot && atom.thing && canBeOne(thing, *atom.thing) &&
            log::holds(atom.trail, note) && (found == 0 || countsBefore(known, desk, other, found)))
            found = other;
    return found;
}
} // namespace

Slot livingEnd(const Slots& known, const Desk& desk, Slot slot) {
    std::set<Slot> passed;
    while (slot != 0 && passed.insert(slot).second) {
        const auto at = desk.find(slot);
        if (at == desk.end() || !at->second.thing)
            return 0;
        if (at->second.alive)
            return slot;
        slot = becameOf(known, desk, slot);
    }
    return 0;
}

Slot Ends::of(Slot slot) const {
    const auto at = m_desk.find(slot);
    if (at != m_desk.end() && at->second.alive)
        return slot;
    const auto [end, isNew] = m_ends.try_emplace(slot, 0);
    if (isNew)
        end->second = livingEnd(m_known, m_desk, slot);
    return end->second;
}

Thing Ends::followed(Thing thing) const {
    visitReferences(thing, [&](Slot of) {
        const Slot end = this->of(of);
        return end == 0 ? of : end;
    });
    return thing;
}

} // namespace slopebook::desks
