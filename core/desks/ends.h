// SPDX-License-Identifier: GPL-3.0-or-later
// Where things that became one with others are found now (livingEnd(), taking.h), for many who ask.
#pragma once

#include "core/desks/taking.h"

namespace slopebook::desks {

/// Of removed things what each became one with, once it is known: every set asks for its lift.
class Ends {
public:
    Ends(const Slots& known, const Desk& desk) : m_known(known), m_desk(desk) {}
    /// livingEnd(), as long as no session, lift, test or device comes or goes.
    Slot of(Slot slot) const;
    /// The thing as it speaks of what lives; what lives nowhere it goes on speaking of.
    Thing followed(Thing thing) const;

private:
    const Slots& m_known;
    const Desk& m_desk;
    mutable std::map<Slot, Slot> m_ends; ///< of the removed
};

} // namespace slopebook::desks
