// SPDX-License-Identifier: GPL-3.0-or-later
// A load followed through the season with what stands around its sessions: the training blocks,
// each with all its sessions made one, and the days on which the load did not go up.
#pragma once

#include "core/answers/blockchange.h"
#include "core/answers/checkloads.h"
#include "core/answers/seasonmatrix.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

/// A trend within a block, and the days it is of; its start is what it says of the first of them.
struct BlockTrend : Trend {
    Date first = {}, last = {};
};

/// A training block in which the athlete did the lift, at the load.
struct FollowedBlock {
    BlockId id = {};
    Block block = {};
    /// What all its sessions say together, and the change from the baseline: family-wise over the
    /// blocks that are read. Absent in the baseline itself, and where that is one of its sessions.
    MatrixCell cell = {};
    Answer<BlockTrend> trend = NoAnswer{}; ///< within it
    bool holdsBaseline = false;            ///< it is the baseline, or has it among its sessions
};

/// A day on which the load, or a lighter one, was tried and not lifted, or was not possible.
struct NotLifted {
    SessionId session = {};
    Date date = {};
    bool tried = true;             ///< false: not possible
    std::optional<Mass> load = {}; ///< absent: nothing of the lift was possible
    std::string reason = {};
    friend bool operator==(const NotLifted&, const NotLifted&) = default;
};

/// The block that all is counted from, where it is no single session.
struct BaselineBlock {
    BlockId id = {};
    std::string name = {};
    std::vector<SessionId> sessions = {}; ///< that stand for it
    std::optional<double> value = {};     ///< m/s, what they say together
};

struct FollowedSeason {
    /// Its baseline is the session, or where a block is the baseline the one of it that all devices
    /// are taken to; the smallest detectable change is then that between the block and one more
    /// test.
    Follow follow;
    std::optional<BaselineBlock> block = {}; ///< the baseline, where it is a whole block
    std::vector<FollowedBlock> blocks = {};  ///< by their first day
    std::vector<NotLifted> notLifted = {};   ///< by date
    /// Whether the session is the baseline, or one of its block.
    bool isBaseline(const Followed& session) const;
    /// m/s, what all is counted from.
    std::optional<double> baselineValue() const;
};

/// follow() counted from a block as a whole: each session is read against what all the block's say
/// together, as compareBlocks() has it. settings: of the block and that session. Without blocks and
/// days not lifted (questions::seasonOf adds them).
Answer<FollowedSeason> followFrom(
    const Lift& lift, const Answer<Mvt>& mvt, std::span<const LiftSession> sessions, Mass load,
    BlockId id, const BlockSessions& block,
    const std::function<BlockSettings(const LiftSession& from, const LiftSession& to)>& settings,
    Mass plateStep, const std::map<SessionId, DeviceBias>& biases = {});

} // namespace slopebook::answers
