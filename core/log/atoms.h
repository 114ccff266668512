// SPDX-License-Identifier: GPL-3.0-or-later
// The things that a log holds as other logs know them: each by a UUID of its own, the hash of its
// content (core/log/contents.h) and its trail (core/log/trail.h), written in the transaction that
// writes the thing. What is removed keeps all three and what it said last, and has its UUID and its
// trail again when it comes back. These are the only doors to them.
#pragma once

#include "core/log/connection.h"
#include "core/log/contents.h"
#include "core/log/tally.h"
#include "core/log/trail.h"
#include "core/log/uuid.h"

#include <compare>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::log {

/// A thing by its place in this log. Athletes, lifts, devices, blocks, tests, equipment, stations,
/// sessions, sets and conflicts by their key; lift conditions by session and lift, test conditions
/// by session and test; attempts and gaps by session and number; check loads by athlete, lift and
/// grams; roster entries by station, day (20260314) and athlete.
struct AtomKey {
    std::string kind{};
    std::int64_t one = 0, two = 0, three = 0;
    friend auto operator<=>(const AtomKey&, const AtomKey&) = default;
};

struct Atom {
    AtomKey key{};
    Sixteen uuid{}, hash{};
    std::string trail{}; ///< its steps' bytes; empty: shortTrail() of the hash
    friend bool operator==(const Atom&, const Atom&) = default;
};
/// Of one that lives; and of one that was removed. Throws LogError (Damaged) where its bytes are
/// none.
Trail trailOf(const Atom& atom, bool alive);

/// A thing that was removed, with what it said last; nothing: that was not kept yet.
struct RemovedAtom {
    Atom atom{};
    std::optional<std::string> content{};
};

/// Nothing where it has none.
std::optional<Atom> atomOf(Connection& db, const AtomKey& key);
std::optional<Atom> atomOf(Connection& db, const Sixteen& uuid);
std::optional<RemovedAtom> removedAtomOf(Connection& db, const Sixteen& uuid);
/// Every removed one of a kind; of all where kind is empty.
void visitRemoved(Connection& db, const std::string& kind,
                  const std::function<void(const RemovedAtom&)>& visit);
/// Those of a kind in pieces of at most that many, each read by itself, outside of any moment or
/// transaction of the caller's: nobody waits for longer. What comes or goes meanwhile may be
/// visited or not.
void visitRemovedInPieces(Connection& db, const std::string& kind, int most,
                          const std::function<void(const RemovedAtom&)>& visit);
/// The UUIDs of things that stand in the log; all zeros for one that does not.
UuidOf uuidsIn(Connection& db);
/// The same, remembering what was asked: for a moment in which nothing is written.
UuidOf rememberedUuidsIn(Connection& db);

/// Notes a thing that came or changed: its trail is a step longer, if it says something else.
void keepAtom(Connection& db, const AtomKey& key, const Sixteen& hash);
/// Notes that it is about to be removed: it must still stand there. Does nothing where it has no
/// UUID.
void dropAtom(Connection& db, const AtomKey& key);
/// The same where what it says is at hand.
void dropAtom(Connection& db, const AtomKey& key, const Content& said);
/// Of things that are numbered anew with each write (attempts and gaps of a session): those that
/// were there before and what they said, in order; what those say that are there now, and for each
/// the number that it had before; 0: it is new, and is a removed one that said the same, if any.
void placeAtoms(Connection& db, const char* kind, std::int64_t of,
                const std::vector<Content>& before, const std::vector<Content>& now,
                const std::vector<int>& was);

/// The trail of one that lives, as its row holds it: empty where it came and was never changed.
std::string packedTrail(const Trail& trail, const Sixteen& hash);
/// An atom's part of the tallies "atom" and "removed atom".
std::uint64_t weightOf(const Atom& atom);
std::uint64_t weightOf(const RemovedAtom& removed);
/// What stands in "atoms" or in "removed_atoms".
Tally tallyOfAtoms(Connection& db, const char* table);
/// Writes an atom as it is, without its tally: for many at once.
void insertAtom(Connection& db, const Atom& atom);

/// Gives one that stands here another UUID and trail, as another log knows it.
void renameAtom(Connection& db, const AtomKey& key, const Sixteen& uuid, const Trail& trail);
/// Puts another in place of one that stands there, with that trail, under the same key. gathered:
/// takes the change of the tally "atom", which is then the caller's to write.
void rewriteAtom(Connection& db, const Atom& held, const Atom& now, const Trail& trail,
                 Tally* gathered = nullptr);
/// Puts a removed one in place of what was known of it; it must not stand here.
void putRemoved(Connection& db, const RemovedAtom& removed);
/// It stands here again.
void forgetRemoved(Connection& db, const RemovedAtom& removed);

/// "set 17", "attempt 3, 2".
std::string placeOf(const AtomKey& key);

/// 20260314, of the key of a roster entry.
std::int64_t dayNumber(Date day);
Date dayOfNumber(std::int64_t number);

} // namespace slopebook::log
