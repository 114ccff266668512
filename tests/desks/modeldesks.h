// SPDX-License-Identifier: GPL-3.0-or-later
// A few desks that are nothing but values: random edits and undos on each, any two of them meeting
// at any time, one way, both ways at once, backups put back, desks copied; and what must hold once
// everybody has met.
#pragma once

#include "core/desks/taking.h"

#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace slopebook::tests {

class ModelDesks {
public:
    ModelDesks(unsigned seed, const desks::Rules& rules);
    /// Empty: all desks came to the same and nothing was lost; else what went wrong first.
    std::string run(int steps);

    /// What a run did, to see that it did it.
    struct Did {
        int joined = 0, revived = 0, renamed = 0, renumbered = 0, listed = 0, swaps = 0;
        int namedJoined = 0, otherSides = 0, corrections = 0;
        int idleChoices = 0; ///< of what one coach alone said something
    } did;

private:
    struct Before {
        desks::Slot slot = 0;
        std::optional<desks::Atom> was{};
    };
    struct Room {
        desks::Desk desk;
        std::vector<std::vector<Before>> undo;
    };
    using Changes = std::vector<std::pair<desks::Slot, desks::Atom>>;

    bool chance(double share) { return std::uniform_real_distribution<>(0, 1)(m_random) < share; }
    std::size_t below(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_random);
    }
    desks::Slot newSlot();
    std::string newToken();
    template <class Value>
    std::vector<desks::Slot> live(const Room& room) const;
    void someEdit(Room& room);
    void addSession(Room& room, AthleteId athlete);
    void addSet(Room& room);
    void addHeld(Room& room);
    void addAttempt(Room& room, SessionId session);
    void correctAttempt(Room& room);
    void namedEdit(Room& room);
    void addNamed(Room& room);
    void addWhatUsesThem(Room& room);
    void undo(Room& room);
    void settleConflict(Room& room);
    /// Whether the log would take them: no key twice, nothing that speaks of what is removed.
    bool stands(const desks::Desk& desk) const;
    /// One transaction; nothing happens where the log would refuse it.
    bool change(Room& room, Changes changes, bool canBeUndone = true);
    void remove(Room& room, desks::Slot slot);
    void meet(Room& mine, const desks::Desk& theirs);
    void bothAtOnce(Room& one, Room& other);
    std::set<std::string> tokens(const desks::Desk& desk) const;
    std::string settleAll();
    std::string whatIsWrong() const;
    std::string wrongNames(const desks::Desk& desk) const;
    int idleChoices(const desks::Desk& desk) const;

    std::mt19937 m_random;
    desks::Rules m_rules;
    desks::Slots m_slots;
    std::vector<Room> m_rooms;
    std::vector<std::pair<std::size_t, Room>> m_backups;
    int m_made = 0;
    bool m_namesStay = false;           ///< all lifts, tests and devices of one name can be one
    std::map<desks::Slot, int> m_words; ///< how often a coach said something else of it
    std::set<std::string> m_written;    ///< each set's and corrected attempt's every state
    std::set<std::string> m_superseded; ///< by its own desk's later edit or removal
};

} // namespace slopebook::tests
