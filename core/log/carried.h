// SPDX-License-Identifier: GPL-3.0-or-later
// What a log carries to another one: each thing with what it says, whether it lives, and its trail;
// and how what another log carried is written down here.
#pragma once

#include "core/log/atoms.h"
#include "core/log/contentreader.h"
#include "core/log/storerows.h"
#include "core/log/trail.h"

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook::log {

/// Every kind after those that it may belong to.
inline constexpr std::array<std::string_view, 16> kindsInOrder{"athlete",
                                                               "device",
                                                               "lift",
                                                               "test",
                                                               "block",
                                                               "equipment",
                                                               "station",
                                                               "session",
                                                               "lift conditions",
                                                               "test conditions",
                                                               "set",
                                                               "attempt",
                                                               "gap",
                                                               "check load",
                                                               "roster",
                                                               "conflict"};

struct Carried {
    std::string kind{}; ///< core/log/atoms.h; "conflict" too
    Sixteen uuid{};
    /// Its canonical bytes; of a removed one its last. Empty: it was removed before a log kept
    /// them, and only hash is known. Such a one can take a thing away where it is still known, and
    /// is of no use to who never had it.
    std::string content{};
    Sixteen hash{}; ///< of the content
    bool alive = true;
    Trail trail{};                     ///< its last step is stepHash(hash, alive)
    std::optional<Reference> parent{}; ///< what it belongs to, by its content
    std::optional<Sixteen> into{};     ///< of a removed session whose sets went to that one
    AtomKey place{};                   ///< in this log, or where it was
};

/// What a choice is about; nothing of another kind, or where nobody knows.
std::optional<Sixteen> aboutOf(const Carried& conflict);

/// Everything that stands in the log, what others belong to before them: what was removed is not
/// read, so that damage to it holds up nobody. Otherwise as visitCarried().
void visitLiving(Connection& db, const std::function<void(const Carried&)>& visit);

/// Everything that stands in the log or was removed from it, what others belong to before them.
/// One moment of the log must be held by the caller. Throws LogError (Damaged) where a thing has no
/// name, or is not as its hash says.
void visitCarried(Connection& db, const std::function<void(const Carried&)>& visit);
/// The same of a log, in one moment.
void visitCarried(const Log& log, const std::function<void(const Carried&)>& visit);

/// One of them; nothing where it never was here.
std::optional<Carried> carried(Connection& db, const Sixteen& uuid);
std::optional<Carried> carried(const Log& log, const Sixteen& uuid);

/// Whether a trail begins as trails do and ends in what the thing says.
bool isPastOf(const Trail& trail, const Sixteen& hash, bool alive);

/// The trail of one of them, without a look at what it says; empty where it never was here.
Trail trailHere(Connection& db, const Sixteen& uuid);

// Of one that was just written as another log carried it; each within the transaction that wrote
// it. Where the trail's last step is not of what stands there, BadInput.

/// Gives what stands at that place its UUID and its trail, whatever it got when it was written.
void adopt(Connection& db, const AtomKey& place, const Sixteen& uuid, const Trail& trail);
/// Notes a removed thing with its content: one that was removed here (its place stays), or never
/// was (carried.place says where it would have been). It must not live here.
void adoptRemoved(Connection& db, const Carried& carried);

} // namespace slopebook::log
