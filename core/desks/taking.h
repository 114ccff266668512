// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk holds once it has taken what another one holds: pure, on values. Two desks that take
// each other's at the same time come to the same; what comes to stand twice under one key, what was
// changed twice, what was removed here and used there is settled, and listed where a coach's word
// would be lost.
#pragma once

#include "core/desks/thing.h"

#include <map>
#include <set>
#include <vector>

namespace slopebook::desks {

/// All of them hold, always. A test takes one away to show what breaks.
struct Rules {
    bool trails = true;     ///< what lies on the other's way gives way to it
    bool alike = true;      ///< both desks choose the same of two new states
    bool noWords = true;    ///< what changed without a word of the coach gives way (nowords.h)
    bool yields = true;     ///< of two under one key one gets another
    bool joins = true;      ///< sessions of one day and number, new to one of two, become one
    bool joinsNamed = true; ///< lifts, tests and devices of one name, the same (sameones.h)
    bool follows = true;    ///< what belongs to one that became another goes there
    bool revives = true;    ///< what is used is there
    bool lists = true;      ///< what does not stand is listed
};

/// Something that the coach is told.
struct Told {
    enum class What {
        Joined,     ///< about is one with into now
        Revived,    ///< about was removed on one desk and is used on the other
        Renamed,    ///< about had the name before
        Renumbered, ///< about, a session, was that day's session of that number
        Listed      ///< about is a conflict
    };
    What what{};
    Slot about = 0;
    Slot into = 0;
    std::string before{}; ///< a name, or a number
    friend bool operator==(const Told&, const Told&) = default;
};

struct Taken {
    std::set<Slot> touched;                          ///< those that are not as they were
    std::size_t added = 0, changed = 0, removed = 0; ///< by what the other desk did
    std::size_t joined = 0;                          ///< became one with another, here or there
    std::vector<Told> told;
};

/// What is known of a store that a desk meets again and again.
struct MetBefore {
    std::set<Slot> things{};  ///< those of the desk's that the store has
    std::set<Slot> notOurs{}; ///< of all, those that may not be written from here: others yield
    std::map<Slot, Sixteen> asStored{}; ///< of those of the desk's: the revision in the store
    /// What uses them is not seen here: they keep their names, and become one with no other,
    /// though that was said before: what is one with them goes to them.
    std::set<Slot> usedUnseen{};
};

/// Takes theirs into mine. Throws BadInput for what no desk holds: what speaks of nothing, a number
/// outside 1 .. mostNumbered, a session that became one with itself, a choice that cannot be shown.
/// Two whole desks: met is nullptr. Where theirs is only what came since they last met, it
/// says what of mine they have already, though theirs does not say it again; and mine must hold
/// whatever speaks of, stands beside or is spoken of by what is in theirs; and all lifts, tests and
/// devices, since any of them may have become one with what is spoken of.
Taken take(Slots& known, Desk& mine, const Desk& theirs, const Rules& rules = {},
           const MetBefore* met = nullptr);

/// The slot itself while it lives; where a session, lift, test or device that became one with
/// another is found now; 0: nowhere.
Slot livingEnd(const Slots& known, const Desk& desk, Slot slot);

/// After the coach has put another state in place of one: its key yields where it is taken, what it
/// speaks of comes back. Gives what else is touched by that. Nothing is listed: it was chosen.
std::set<Slot> settleDesk(Slots& known, Desk& desk, const std::set<Slot>& touched);

/// No number of a session, set, attempt, gap or turn that comes from elsewhere is greater.
constexpr int mostNumbered = 100'000;

} // namespace slopebook::desks
