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
#include <set>
#include <string>
#include <vector>

namespace slopebook::log {

/// The sessions of an athlete's day with all that they hold, and what was removed under the
/// numbers of their conditions, attempts and gaps.
std::vector<Sixteen> uuidsOfDay(Connection& db, AthleteId athlete, Date day);
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

} // namespace slopebook::log
