// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside a thing of the log, found by keys and indexes: it costs the same in a log of
// any size. UUIDs of things that stand there and, where it says so, of what was removed from there.
// The caller holds one moment or a transaction.
#pragma once

#include "core/log/connection.h"
#include "core/log/uuid.h"
#include "core/model/date.h"
#include "core/model/ids.h"

#include <cstdint>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace slopebook::log {

/// The sessions of an athlete's day with all that they hold, and what was removed under the
/// numbers of their conditions, attempts and gaps.
std::vector<Sixteen> uuidsOfDay(Connection& db, AthleteId athlete, Date day);
/// What a session holds with itself, likewise.
std::vector<Sixteen> uuidsOfSession(Connection& db, SessionId session);
/// The keys of an athlete's sessions.
std::vector<SessionId> sessionsOf(Connection& db, AthleteId athlete);
/// The check loads of an athlete, there or removed.
std::vector<Sixteen> uuidsOfCheckLoads(Connection& db, AthleteId athlete);
/// The roster of a station on a day, there or removed.
std::vector<Sixteen> uuidsOfRoster(Connection& db, StationId station, Date day);
/// All of a kind (core/log/atoms.h) that stand there.
std::vector<Sixteen> uuidsOfKind(Connection& db, const std::string& kind);
/// The sessions that repeat this one.
std::vector<Sixteen> uuidsOfRepeats(Connection& db, SessionId session);
/// The removed sessions that speak of that one: they became one with it, or repeated it.
std::vector<Sixteen> uuidsOfRemovedSessions(Connection& db, const Sixteen& session);
/// Sets, attempts and gaps that belonged to one of those sessions when they were removed. Reads
/// every removed one, once.
std::vector<Sixteen> uuidsRemovedFrom(Connection& db, const std::set<Sixteen>& sessions);
/// What was removed from under one key: of a session its attempts, gaps or conditions, of an
/// athlete his check loads.
std::vector<Sixteen> uuidsRemovedAt(Connection& db, const std::string& kind, std::int64_t one);
/// The same under two: of a station the roster of a day (20260314).
std::vector<Sixteen> uuidsRemovedAt(Connection& db, const std::string& kind, std::int64_t one,
                                    std::int64_t two);

/// Whether anything is known under one of those names: that it stands here, was removed, or that a
/// store has it or is to have it.
bool knowsAny(Connection& db, std::span<const Sixteen> uuids);
/// Whether an athlete has a session of that number on that day.
bool hasSession(Connection& db, AthleteId athlete, Date day, int ordinal);
/// Which that is.
std::optional<Sixteen> uuidOfSession(Connection& db, AthleteId athlete, Date day, int ordinal);
/// Whose a session is; nothing where there is none.
std::optional<AthleteId> athleteOf(Connection& db, SessionId session);

} // namespace slopebook::log
