// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of writing a desk into its log, in an order in which no key is taken and nothing speaks
// of what is not there.
#pragma once

#include "core/desks/reading.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace slopebook::desks {

class Writer {
public:
    Writer(log::Log& log, const Slots& known, const ReadDesk& before, const Desk& after,
           const std::set<Slot>& touched);

    /// Takes out what goes or moves, and gives what stays under another key one that nobody has.
    void makeRoom();
    /// Athletes, devices, lifts, tests, blocks, sets of equipment, stations: what is new or says
    /// something else.
    void writeNamed();
    void writeSessions();
    /// What sessions, athletes and stations hold.
    void writeHeld();
    /// Of those with names what is removed, once nothing speaks of it any more.
    void removeNamed();
    void writeConflicts();

    /// Where the writing may have left removed things that it had itself put there: kinds, what
    /// they stand under, and of a roster the day.
    struct Place {
        std::string kind{};
        std::int64_t one = 0;
        std::optional<std::int64_t> two{};
        friend auto operator<=>(const Place&, const Place&) = default;
    };
    std::set<Place> placesWritten();
    /// What was written anew as it was, with what stands under one key with it.
    std::set<Slot> writtenAnew() const;
    /// Where it stands in the log now, or where it was or would have been.
    log::AtomKey placeOf(Slot slot);

private:
    /// What is written as a whole: everything under one of these keys.
    struct Group {
        std::string kind{}; ///< "battery", "check load", "roster"
        Slot of = 0, also = 0;
        Date day{};
        friend auto operator<=>(const Group&, const Group&) = default;
    };
    static std::optional<Group> groupOf(const Thing& thing);

    /// What it says; nullptr: it does not stand there.
    const Thing* before(Slot slot) const;
    const Thing* after(Slot slot) const;
    template <class Value>
    const Value* before(Slot slot) const {
        const Thing* thing = before(slot);
        return thing == nullptr ? nullptr : std::get_if<Value>(thing);
    }
    template <class Value>
    const Value* after(Slot slot) const {
        const Thing* thing = after(slot);
        return thing == nullptr ? nullptr : std::get_if<Value>(thing);
    }
    /// Its key in the log; a new one where it never was here.
    std::int64_t keyOf(Slot slot, const char* kind);
    template <class Id>
    Id idOf(Slot slot, const char* kind) {
        return static_cast<Id>(keyOf(slot, kind));
    }
    /// A thing in the log's own keys.
    Thing local(const Thing& thing);
    /// Gives what was just written its UUID: what speaks of it is hashed by that.
    void giveUuid(Slot slot);

    void takeOut(Slot slot);
    void emptyGroups();
    void makeRoomForSessions();
    void parkNamed(Slot slot);
    void writeSet(Slot slot);
    void writeGroup(const Group& group, std::vector<Slot>& held);

    log::Log& m_log;
    const Slots& m_known;
    const ReadDesk& m_before;
    const Desk& m_after;
    std::vector<Slot> m_changed; ///< what says something else than it did, by kind
    std::map<Slot, std::int64_t> m_keys;
    std::map<Group, std::vector<Slot>> m_groups; ///< and what they hold after
    std::set<Slot> m_takenOut;                   ///< sets
    int m_parked = 0;
};

} // namespace slopebook::desks
