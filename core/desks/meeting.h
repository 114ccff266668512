// SPDX-License-Identifier: GPL-3.0-or-later
// A meeting under way: what stands under which key, who yields, and what is listed.
#pragma once

#include "core/desks/taking.h"

#include <unordered_map>

namespace slopebook::desks {

class Meeting {
public:
    Meeting(Slots& known, Desk& mine, const Desk& theirs, const Rules& rules, const MetBefore* met);
    Meeting(const Meeting&) = delete;
    Meeting& operator=(const Meeting&) = delete;

    Slots& known;
    Desk& desk;
    const Rules rules;
    Taken taken;
    std::set<Slot> arrived;          ///< alive, and not known here before: added
    std::vector<Slot> gone;          ///< removed on the other desk, counted so far as that
    std::map<Slot, Thing> lastKnown; ///< of what is removed, and nobody knows what it said then

    /// Whether one that finds its key taken may become one with the holder, if it is of such a
    /// kind.
    enum class Join { No, Yes };
    /// Gives everything its key. Of several under one the one of the least UUID keeps it.
    void placeAll();
    /// Gives a live thing its key; where another holds it, it yields.
    void place(Slot slot, Join join);
    /// Takes a thing's key away before it is edited.
    void free(Slot slot);
    /// An edit of the meeting's own: it lengthens the trail as a coach's does.
    void edit(Slot slot, Thing now, bool alive);
    /// Of a removed lift, test or device that is spoken of: whether one of its name lives that it
    /// is one with now.
    bool joinsOneOfItsName(Slot slot);
    /// They are one thing: nothing is added by what of the two comes from elsewhere.
    void isOneWith(Slot slot, Slot other);
    /// What the other desk had removed because it became one with what is there counts as that.
    void countJoined();
    /// Notes the side that does not stand.
    void list(Why why, Slot about, const Atom& lost);
    /// What was noted becomes things that travel.
    void writeList();
    /// Whether a store has it; of two desks that meet: no.
    bool isStored(Slot slot) const { return m_stored.contains(slot); }
    /// By kind, number and UUID: alike on both desks.
    void sort(std::vector<Slot>& some) const;

private:
    struct Noted {
        Why why{};
        Slot about = 0;
        Atom lost{};
    };
    bool isFree(const Thing& thing) const { return !m_holders.contains(keyOf(thing)); }
    void yield(Slot slot, Slot holder, Join join);
    bool mayBecomeOne(Slot slot, Slot holder, Join join) const;
    void becomeOne(Slot slot, Slot holder);
    void joinAgain();
    void giveAnotherName(Slot slot);
    std::string rootOf(const Thing& named) const;
    void renumber(Slot slot);

    std::set<Slot> m_newlyMet;   ///< known to one of the two desks alone
    std::set<Slot> m_stored;     ///< what a store has, which keeps its key; of two desks nothing
    std::set<Slot> m_notOurs;    ///< what may not be written from here
    std::set<Slot> m_usedUnseen; ///< what is used where nobody sees here
    std::unordered_map<std::string, Slot> m_holders;
    std::vector<Noted> m_noted;
};

} // namespace slopebook::desks
