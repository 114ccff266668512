// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts, tests and devices that two desks made apart: under one name they are one, and what became
// one stays so.
//
// That another became one with this one is written into this one's trail, as a step that no edit
// makes. The trail travels with the thing whatever it is called later, so that what a third desk
// still says of the other goes to the right place; and no content says anything new, so that older
// logs and the store keep their columns. By its name alone it would be looked for in vain once the
// one is renamed.
#pragma once

#include "core/desks/thing.h"

namespace slopebook::desks {

/// A lift, a test or a device: there is one of a name. Two athletes of one name are two.
bool isOneByName(const Thing& thing);
/// Two of such a kind of which there can be one, whatever their names: what was measured on one
/// goes on with the other. Lifts: of the same velocity, both thrown or neither, both moving the
/// body or neither. Tests: of the same unit, formula, direction and sides.
bool canBeOne(const Thing& one, const Thing& other);
/// Whether something of what the coach wrote would be lost if it became one with that.
bool saysMoreThan(const Thing& lost, const Thing& holder);

/// Notes that the thing of that UUID is one with the living atom: a new state of it.
void noteOne(const Slots& known, Atom& atom, const Sixteen& other);
/// The revision of the step that notes it.
Sixteen noteOf(const Sixteen& other);

/// "Ada" of "Ada (2)"; the whole name where it has no such number.
std::string withoutNumber(const std::string& name);
/// The same name but for such a number.
bool sameRoot(const std::string& one, const std::string& other);

} // namespace slopebook::desks
