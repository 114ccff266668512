// SPDX-License-Identifier: GPL-3.0-or-later
// Two desks that are nothing but values, for what is to be seen one by one.
#pragma once

#include "core/desks/taking.h"

#include <string>
#include <vector>

namespace slopebook::tests {

using namespace desks; // NOLINT(google-build-using-namespace): of tests alone

/// Two desks with a common past, and what each writes apart.
struct Pair {
    Slots known;
    Desk one, other;
    int made = 0;

    Slot add(Desk& desk, Thing thing) {
        const Slot slot = known.of(log::hashOf("thing " + std::to_string(++made)));
        Atom& atom = desk[slot];
        atom.thing = std::move(thing);
        extend(known, atom);
        return slot;
    }
    void edit(Desk& desk, Slot slot, Thing thing, bool alive = true) {
        Atom& atom = desk.at(slot);
        atom.thing = std::move(thing);
        atom.alive = alive;
        extend(known, atom);
    }
    void share() { other = one; }
    /// Both at once; what was told on the first.
    Taken meet(const Rules& rules = {}) {
        const Desk before = one;
        Taken taken = take(known, one, other, rules);
        take(known, other, before, rules);
        return taken;
    }
    template <class Value>
    std::vector<Value> live(const Desk& desk) const {
        std::vector<Value> all;
        for (const auto& [slot, atom] : desk)
            if (atom.alive)
                if (const auto* value = std::get_if<Value>(&*atom.thing))
                    all.push_back(*value);
        return all;
    }
};

/// Of all sessions.
inline constexpr Date day{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{4}};

} // namespace slopebook::tests
