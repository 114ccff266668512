// SPDX-License-Identifier: GPL-3.0-or-later
// One load through the season as it is asked of a log: its sessions, its training blocks, and the
// days on which it did not go up. No Qt in here.
#pragma once

#include "core/answers/followedseason.h"
#include "core/questions/liftcontext.h"

#include <optional>
#include <variant>

namespace slopebook::questions {

/// What a season is counted from: a session, or a training block as a whole.
using Baseline = std::variant<SessionId, BlockId>;

/// baseline: that session or block; absent: the first session that has a line. A block with one
/// session is that session to the last digit.
Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const LiftContext& context,
                                         const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline = {},
                                         const AskSettings& settings = {});
Answer<answers::FollowedSeason> seasonOf(const log::Log& log, const Background& about, Mass load,
                                         const std::optional<Baseline>& baseline = {},
                                         const AskSettings& settings = {});

} // namespace slopebook::questions
