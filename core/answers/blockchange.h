// SPDX-License-Identifier: GPL-3.0-or-later
// Block against block from all their sessions of a lift: which of them may stand beside each other,
// and what is then known of the change (method: tests/README.md, 'Seasons').
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/noise.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::answers {

/// The sessions of a lift in one block, by date.
struct BlockSessions {
    std::string name = {};
    std::vector<LiftSession> sessions = {};
    std::optional<Block> block = {}; ///< where it is a training block: its story
};

/// How blocks are compared. Of ComparisonSettings: deviceBias and asManyReps are those of two
/// sessions and not looked at here.
struct BlockSettings {
    ComparisonSettings with = {};
    ReadAs readAs = ReadAs::Mean;
    /// What the device of a session reads against that of the one all others are taken to; nothing
    /// where no study of the two is known.
    std::function<std::optional<DeviceBias>(const LiftSession& reference,
                                            const LiftSession& session)>
        biasOf = {};
    /// All sessions with their points made of as many reps; none: as they are.
    std::function<std::vector<LiftSession>(std::vector<LiftSession>)> asManyReps = {};
    /// The day-to-day noise, given what the blocks' own sessions say of it and which they are;
    /// none: that of `with`, which may be what all blocks of a season say (noiseOfSeason).
    std::function<DayNoise(std::span<const stats::DaySpread> spreads,
                           std::span<const LiftSession> sessions)>
        dayNoise = {};
    /// Of points about their lines, where no session of either block shows any.
    std::optional<stats::Scatter> scatter = {};
    /// Of all blocks of a season, in place of that of the two: a block then has one figure,
    /// whichever it is read against.
    std::optional<stats::Scatter> ofSeason = {};
};

/// Two blocks made ready to be asked.
struct BlockPair {
    BlockSide from = {}, to = {};
    Under under = {};
    DayNoise dayNoise = {};
    /// Its sides are there; its lines are those of the leads, which need not have inference.
    ChangeUncertainty uncertainty{.lines = stats::TwoLines({}, {})};
    bool corrected = false; ///< a device's bias is taken off somewhere
    bool fewerReps = false; ///< points were made of fewer reps than were done
};

/// Refused with the reason: no session with a point in a block; one session a block without lines
/// that have inference (sharedloads.h reads those), a session on both sides. Throws BadInput for
/// sessions of different athletes or lifts.
Answer<BlockPair> blockPair(const Lift& lift, const Answer<Mvt>& mvt, const BlockSessions& from,
                            const BlockSessions& to, const BlockSettings& settings);

/// One block by itself, on both sides: for its figures alone.
Answer<BlockPair> oneBlock(const Lift& lift, const Answer<Mvt>& mvt, const BlockSessions& block,
                           const BlockSettings& settings);

/// What the sessions of all blocks of a season say together of how points scatter and how days
/// vary: for ofSeason and with.dayNoise. Of two blocks what blockPair would find.
struct SeasonNoise {
    stats::Scatter scatter = {};
    DayNoise day = {};
};
SeasonNoise seasonNoise(std::span<const BlockSessions> blocks, const BlockSettings& settings);

/// As compare() of two sessions, and of one session a block exactly that. Refused as above, and
/// where no session of a block has a line with inference.
Answer<Comparison> compareBlocks(const Lift& lift, const Answer<Mvt>& mvt,
                                 const BlockSessions& from, const BlockSessions& to,
                                 const BlockSettings& settings);

} // namespace slopebook::answers
