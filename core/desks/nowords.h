// SPDX-License-Identifier: GPL-3.0-or-later
// What changes without a word of the coach: a log numbers attempts, gaps and turns anew with each
// write, and a meeting leads what belongs to one thing to what that became one with, behind what is
// there. Such a change stands against nobody's correction.
#pragma once

#include "core/desks/meeting.h"

namespace slopebook::desks {

/// Of two states that both went on.
struct Weighed {
    Verdict verdict{};
    std::optional<int> number{}; ///< of what stands: the one that it got on the other desk
};

class NoWords {
public:
    /// On a desk whose sessions, lifts, tests and devices are as they stand after both met.
    explicit NoWords(const Meeting& meeting);

    /// The verdict on mine and theirs: where of one of them nothing but such a change is new, the
    /// other counts, at its new place.
    Weighed weighed(Verdict verdict, const Atom& mine, const Atom& theirs) const;

private:
    std::optional<int> agreedNumber(const Atom& atom, const Atom& other) const;
    std::vector<Thing> ledBack(const Thing& thing) const;

    const Meeting& m_meeting;
    std::map<Slot, std::set<Slot>> m_were; ///< of each what became one with it
};

} // namespace slopebook::desks
