// SPDX-License-Identifier: GPL-3.0-or-later
// What a log that meets a store knows of it: which one, the squads that are here, moments of it
// that were seen, what it has of this log and what not yet. Everything that is written goes by
// these, so that what is missing of it is noticed (core/log/tally.h). The caller holds the
// transaction.
#pragma once

#include "core/log/connection.h"
#include "core/log/log.h"
#include "core/log/uuid.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::log {

struct JoinedStore {
    Sixteen id{};
    std::string connection{}; ///< as libpq takes it, without a password
    Sixteen squad{};          ///< to which what is new here goes
    std::string met{};        ///< when the last meeting ended, in UTC; empty: there was none
    friend bool operator==(const JoinedStore&, const JoinedStore&) = default;
};
struct JoinedSquad {
    Sixteen id{};
    std::string name{};
    bool mayWrite = false;
    std::int64_t taken = 0; ///< the version up to which it was taken
    friend bool operator==(const JoinedSquad&, const JoinedSquad&) = default;
};
struct Mark {
    std::int64_t n = 0;
    Sixteen tag{};
    friend bool operator==(const Mark&, const Mark&) = default;
};
/// A thing as the store has it.
struct Sent {
    Sixteen uuid{}, squad{};
    std::int64_t version = 0;
    Sixteen revision{};
    friend bool operator==(const Sent&, const Sent&) = default;
};
/// A thing that the store has not, or not as it is here.
struct Unsent {
    Sixteen uuid{};
    std::optional<Sixteen> squad{}; ///< to which it goes, where that was said
    friend bool operator==(const Unsent&, const Unsent&) = default;
};

/// The connection behind a log, for what is done within Log::together().
Connection& connectionOf(const Log& log);

/// Whether the log meets a store; which. Nothing: it meets none.
bool meetsStore(Connection& db);
std::optional<JoinedStore> joinedStore(Connection& db);
void setJoinedStore(Connection& db, const JoinedStore& store);
/// The log meets no store any more; nothing of what it holds changes. What it noted of single
/// things stays, means nothing any more, and goes by forgetNoted().
void leaveStore(Connection& db);
/// Of a log that meets no store: forgets so many of what was sent or waited, or fewer; how many.
std::size_t forgetNoted(Connection& db, std::size_t most);
/// Whether anything is left of what was sent.
bool hasSent(Connection& db);

std::vector<JoinedSquad> joinedSquads(Connection& db);
void putSquad(Connection& db, const JoinedSquad& squad);
void eraseSquad(Connection& db, const Sixteen& id);

std::vector<Mark> marksIn(Connection& db); ///< ascending; each of a writing that was seen
std::optional<Mark> highestMark(Connection& db);
void putMark(Connection& db, const Mark& mark);
void eraseMarksAbove(Connection& db, std::int64_t n);
void eraseMarks(Connection& db, std::span<const std::int64_t> numbers);

std::optional<Sent> sentOf(Connection& db, const Sixteen& uuid);
/// Those above a version, by it.
void visitSent(Connection& db, std::int64_t above, const std::function<void(const Sent&)>& visit);
void putSent(Connection& db, std::span<const Sent> sent);
/// Of those none of which is there, in one statement.
void putFirstSent(Connection& db, std::span<const Sent> sent);
void eraseSent(Connection& db, std::span<const Sixteen> uuids);

std::optional<Unsent> unsentOf(Connection& db, const Sixteen& uuid);
bool isUnsent(Connection& db, const Sixteen& uuid);
std::int64_t countUnsent(Connection& db);
void visitUnsent(Connection& db, const std::function<void(const Unsent&)>& visit);
/// Those that come after that one by their UUIDs, or the first of all; so many at most.
std::vector<Unsent> unsentAfter(Connection& db, const std::optional<Sixteen>& last,
                                std::size_t most);
/// Notes them where the log meets a store; a squad that was said before stays where none is said.
void noteUnsent(Connection& db, std::span<const Unsent> unsent);
void noteUnsent(Connection& db, const Sixteen& uuid);
/// The same before the log meets one.
void noteUnsentAhead(Connection& db, std::span<const Sixteen> uuids);
/// What stands in the log or was removed from it, by UUID after that one: so many at most.
std::vector<Sixteen> namesAfter(Connection& db, const std::optional<Sixteen>& last,
                                std::size_t most);
/// They were sent.
void eraseUnsent(Connection& db, std::span<const Sixteen> uuids);

} // namespace slopebook::log
