// SPDX-License-Identifier: GPL-3.0-or-later
// One load through the season as it is asked of a log: its sessions, its training blocks, and the
// days on which it did not go up. No Qt in here.
#pragma once

#include "core/answers/followedseason.h"
#include "core/questions/liftcontext.h"
#include "core/questions/liftside.h"

#include <optional>

namespace slopebook::questions {

/// What a season is counted from.
using Baseline = LiftSide;

/// baseline: that session or block; absent: the first session that has a line. A block with one
/// session is that session to the last digit. A stretch of just the days of a block is that block;
/// of any other the sessions count there and in no block.
Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const LiftContext& context,
                                         const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline = {},
                                         const AskSettings& settings = {});
Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline = {},
                                         const AskSettings& settings = {});

} // namespace slopebook::questions
