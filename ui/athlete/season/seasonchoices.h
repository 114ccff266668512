// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's chooser of loads holds.
#pragma once

#include "core/questions/followquestions.h"

#include <optional>
#include <utility>
#include <vector>

namespace slopebook::ui {

/// Check loads (true), then the loads lifted in most sessions.
std::vector<std::pair<Mass, bool>> loadsToFollow(const questions::Background& about);

/// The first block with a session of the lift, where any lies outside it: what the season is read
/// against until the coach says otherwise. Nothing: the first session is.
std::optional<BlockId> firstBlock(const std::vector<Stored<BlockId, Block>>& blocks,
                                  const std::vector<LiftSession>& sessions);

} // namespace slopebook::ui
