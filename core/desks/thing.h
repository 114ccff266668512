// SPDX-License-Identifier: GPL-3.0-or-later
// What a log holds, thing by thing, as two logs that meet see it: what one speaks of it names by a
// slot of the meeting (known.h), never by a log's own key.
#pragma once

#include "core/desks/slots.h"
#include "core/desks/verdicts.h"
#include "core/log/things.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook::desks {

using log::Thing;

/// Why the coach is shown two sides; a ConflictThing says it in these words.
enum class Why {
    BothChanged, ///< both desks changed it
    SameName,    ///< two things under one name: this one has another now
    SameNumber,  ///< two sessions of a day under one number: this one has another now
    Joined,      ///< two of which there can be one, and they did not say the same
    Revived,     ///< removed on one desk, used on the other
    Repeat       ///< a repeat test that cannot be one any more
};
std::string_view word(Why why);
std::optional<Why> whyFromWord(std::string_view word);

/// "athlete", "check load", ...: the kinds of core/log/carried.h.
std::string_view kindOf(const Thing& thing);

/// Of things under one key there can be only one: one name, a number of an athlete's day. Empty:
/// it has none.
std::string keyOf(const Thing& thing);

/// Its number among others of its place; nullptr: it has none.
int* numberOf(Thing& thing);
const int* numberOf(const Thing& thing);
/// Its own name; nullptr: it has none.
std::string* nameOf(Thing& thing);
const std::string* nameOf(const Thing& thing);

/// Calls what with each slot that the thing speaks of and puts what that gives in its place; 0
/// takes out a reference that need not be there.
void visitReferences(Thing& thing, const std::function<Slot(Slot)>& what);
/// The same, told the kind of what it speaks of.
void visitKindedReferences(Thing& thing, const std::function<Slot(const char* kind, Slot)>& what);
/// The same, to look only.
void eachReference(const Thing& thing, const std::function<void(Slot)>& what);

/// A thing with its past. One without a value was removed before logs kept what was removed: then
/// hash is all that is known of what it said.
struct Atom {
    std::optional<Thing> thing{};
    Sixteen hash{}; ///< where there is no value
    bool alive = true;
    Trail trail{};
    friend bool operator==(const Atom&, const Atom&) = default;
};

/// Everything on a desk, the removed as well.
using Desk = std::map<Slot, Atom>;

/// The bytes of what a thing says, and their hash (core/log/contents.h).
std::string bytesOf(const Slots& known, const Thing& thing);
Sixteen hashOf(const Slots& known, const Thing& thing);
/// The thing of such bytes. Throws BadInput.
Thing thingOf(Slots& known, std::string_view bytes);

/// Adds the step of an edit: the thing says now what it says, and is there or removed.
void extend(const Slots& known, Atom& atom);

} // namespace slopebook::desks
