// SPDX-License-Identifier: GPL-3.0-or-later
// The things that a log holds as other logs know them: each by a UUID of its own, and by the hash
// of its content (core/log/contents.h), written in the transaction that writes the thing. What is
// removed keeps its UUID, and has it again when it comes back.
#pragma once

#include "core/log/connection.h"
#include "core/log/contents.h"
#include "core/log/tally.h"
#include "core/log/uuid.h"

#include <compare>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::log {

/// A thing by its place in this log. Athletes, lifts, devices, blocks, tests, equipment, stations,
/// sessions and sets by their key; lift conditions by session and lift, test conditions by session
/// and test; attempts and gaps by session and number; check loads by athlete, lift and grams;
/// roster entries by station, day (20260314) and athlete.
struct AtomKey {
    std::string kind{};
    std::int64_t one = 0, two = 0, three = 0;
    friend auto operator<=>(const AtomKey&, const AtomKey&) = default;
};

struct Atom {
    AtomKey key{};
    Sixteen uuid{}, hash{};
    friend bool operator==(const Atom&, const Atom&) = default;
};

/// Nothing where it has none.
std::optional<Atom> atomOf(Connection& db, const AtomKey& key);
/// The UUIDs of things that stand in the log; all zeros for one that does not.
UuidOf uuidsIn(Connection& db);
/// The same, remembering what was asked: for a moment in which nothing is written.
UuidOf rememberedUuidsIn(Connection& db);

/// Notes a thing that came or changed.
void keepAtom(Connection& db, const AtomKey& key, const Sixteen& hash);
/// Notes that it was removed. Does nothing where it has no UUID.
void dropAtom(Connection& db, const AtomKey& key);
/// Of things that are numbered anew with each write (attempts and gaps of a session): those that
/// were there before and are there still, and their hashes now. was: for each of now the number
/// that it had before; 0: it is new, and has the UUID of a removed one of the same hash, if any.
void placeAtoms(Connection& db, const char* kind, std::int64_t of, const std::vector<Sixteen>& now,
                const std::vector<int>& was);
/// Every atom of a kind that belongs to one thing is noted as removed.
void dropAtomsOf(Connection& db, const char* kind, std::int64_t of);

/// An atom's part of the tallies "atom" and "removed atom".
std::uint64_t weightOf(const Atom& atom);
/// What stands in "atoms" or in "removed_atoms".
Tally tallyOfAtoms(Connection& db, const char* table);
/// Writes an atom as it is, without its tally: for many at once.
void insertAtom(Connection& db, const Atom& atom);

/// 20260314, of the key of a roster entry.
std::int64_t dayNumber(Date day);

} // namespace slopebook::log
