// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk asks of a store when they meet: what is new there, and that its own be taken in.
#pragma once

#include "core/store/atom.h"
#include "core/store/connection.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::store {

/// Of the store's schema and of the contents in it, which go together: rises with either
/// (resources/store). Stores and desks of different layouts do not meet.
constexpr int storeLayout = 1;

/// What the login may.
struct Squad {
    Sixteen uuid{};
    std::string name{};
    bool mayWrite = false;
    friend bool operator==(const Squad&, const Squad&) = default;
};

/// The squads that the login sees, by name, without everybody's. Throws StoreError: OtherLayout
/// where the store is of another one, NoStore, NotAllowed.
std::vector<Squad> squadsOf(Connection& store, const Progress& stop = {});

/// Which store it is: the same when it has gone back to a backup. Throws as squadsOf().
Sixteen idOf(Connection& store, const Progress& stop = {});

/// Throws StoreError (OtherLayout) unless it is ours; which of both is older is said.
void requireLayout(const Asked& asked, std::int64_t layout);

/// One round trip: whether anything is new.
struct Look {
    Mark now{};
    bool knowsMark = false; ///< false: the store went back to a backup, or is another one
};
Look lookAt(Connection& store, const Mark& highest, const Progress& stop = {});

/// All in one moment of the store, what others hang on before them. Atoms and departures of those
/// squads (and of everybody, where it is among them) above their cursors; nothing where the store
/// does not know the mark. A squad that is new to the desk, with a cursor of 0, comes whole.
/// highest empty: the desk was never here.
Look pull(Connection& store, const std::optional<Mark>& highest, std::span<const Cursor> since,
          const std::function<void(Atom&&)>& atom, const std::function<void(const Departed&)>& gone,
          const Progress& stop = {});

/// The highest of these marks that the store has as well; nothing where it has none.
std::optional<Mark> lastCommon(Connection& store, std::span<const Mark> marks,
                               const Progress& stop = {});

/// What became of a push. All or nothing went in; with Ok it stands on the store's disk.
struct Pushed {
    enum class Answer {
        Ok,
        WentBack, ///< the store does not know the mark: look for the last common one
        Stale,    ///< the store has what this desk does not know: pull first
        Taken,    ///< a key is somebody else's there: pull first
        Orphan,   ///< something hangs on what is not there or not alive: pull first
        NotOurs   ///< not this login's to write, or in another squad by now
    };
    Answer answer{};
    Mark now{};                   ///< with Ok: a mark that the desk may keep
    std::int64_t wrote = 0;       ///< how many were new to the store
    std::vector<Sixteen> stale{}; ///< which
};

/// All of the batch in one statement; the same batch sent twice counts once. Of several that depend
/// on each other all must be in it or in the store. Throws StoreError; after Lost it may have
/// arrived.
Pushed push(Connection& store, const Mark& highest, std::span<const Atom> batch,
            const Progress& stop = {});

/// From here on waitForNews() hears of every push.
void listen(Connection& store, const Progress& stop = {});

} // namespace slopebook::store
