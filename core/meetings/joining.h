// SPDX-License-Identifier: GPL-3.0-or-later
// A log joins a store, or leaves it: from then on it meets the other desks there.
#pragma once

#include "core/log/log.h"
#include "core/log/storerows.h"
#include "core/store/exchange.h"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace slopebook::meetings {

/// What a log knows of its store without asking it.
struct Joined {
    std::string connection{};           ///< as it was given, without a password
    std::string squad{};                ///< to which what is new here goes
    std::vector<store::Squad> squads{}; ///< that are here, by name
    std::string met{};        ///< when the last meeting ended, in UTC (2026-03-14T09:30:00Z);
                              ///< empty: there was none
    std::int64_t waiting = 0; ///< things that the store has not, or not as they are here
    friend bool operator==(const Joined&, const Joined&) = default;
};
/// Nothing: the log meets no store. Throws LogError.
std::optional<Joined> joined(const log::Log& log);

/// Joins the store; nothing is sent or taken yet. squad: to which what is new here goes, of those
/// in which the login may write; empty where there is just one. Everything that the log holds waits
/// to be sent. Joining the store once more, under another address or for another squad, keeps what
/// was met. Throws StoreError; BadInput naming the squads that may be written, or where the log
/// meets another store; LogError.
void joinStore(log::Log& log, const std::string& address, const std::string& squad,
               const Progress& stop = {});

/// The log meets no store any more; nothing that it holds changes. Throws LogError (Conflict) where
/// it meets none.
void leaveStore(log::Log& log);

/// What the log knows of its store. Throws LogError (Conflict) where it meets none. Within a
/// transaction or one moment.
log::JoinedStore storeOf(const log::Log& log);

/// Throws LogError (Conflict) where the log does not meet that store, or none any more. Within a
/// transaction.
void requireMeets(const log::Log& log, const store::Sixteen& id);

/// The squads that the login may write, of those that the log knows.
std::set<store::Sixteen> writableSquads(log::Connection& db);

/// Whom a log's meetings ask. Throws LogError (Conflict) where it meets none, BadInput.
store::Address addressOf(const log::Log& log);

} // namespace slopebook::meetings
