// SPDX-License-Identifier: GPL-3.0-or-later
// Many new sessions at once, as an import brings them: in a few statements, their checksums made
// from what is at hand instead of from what is read back.
#pragma once

#include "core/log/log.h"
#include "core/log/uuid.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::log {

/// What a thing is called in the store that it came from, and its past there.
struct CameAs {
    Sixteen uuid{};
    Sixteen hash{};      ///< of what it says
    std::string trail{}; ///< as an atom holds it (packedTrail)
};

struct NewSet {
    LiftId lift{};
    int ordinal = 1;
    Set set{};
    std::optional<CameAs> as{}; ///< nothing: it is new to everybody
};

/// A session that is not in the log yet, with the conditions of its lifts and its sets, in any
/// order.
struct NewSession {
    SessionHead head{};
    std::vector<LiftConditions> conditions{};
    std::vector<NewSet> sets{};
    std::optional<CameAs> as{};
    std::map<LiftId, CameAs> conditionsAs{};
};

/// What Log::add() and Log::setConditions() would write of each, one after the other; gives their
/// keys in order. Throws BadInput, LogError (Conflict: an athlete, a lift or a device is gone, or
/// such a session is there already; Damaged: what came under a name of its own does not say what it
/// is known by); nothing was written then. What came from the store does not wait to be sent there.
std::vector<SessionId> addSessions(const Log& log, std::vector<NewSession> sessions);

/// While it lives, the log's cache holds at most that many pages of 4 kB: what a transaction has
/// changed beyond them goes to the file before its commit, and from then on no other connection
/// can read until it ends.
class BoundedCache {
public:
    /// 24 MB. Never a multiple of 256: SQLite reads the last eight bits alone to tell whether to
    /// spill at all.
    static constexpr int usual = 6143;
    explicit BoundedCache(const Log& log, int pages = usual);
    ~BoundedCache();
    BoundedCache(const BoundedCache&) = delete;
    BoundedCache& operator=(const BoundedCache&) = delete;

private:
    const Log& m_log;
};

} // namespace slopebook::log
