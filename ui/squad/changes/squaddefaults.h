// SPDX-License-Identifier: GPL-3.0-or-later
// What the squad page opens on: the last two blocks that hold tests of the lift, else the last two
// test days that most of the squad share. No Qt in here.
#pragma once

#include "core/model/people.h"
#include "core/questions/liftcontext.h"

#include <optional>
#include <span>
#include <utility>

namespace slopebook::ui {

/// Indices of the last two blocks with a test of the lift, the earlier first; nothing with under
/// two.
std::optional<std::pair<std::size_t, std::size_t>>
lastTwoBlocks(std::span<const Stored<BlockId, Block>> blocks,
              std::span<const questions::TestDay> days);

/// Two test days and how many days around each may stand in for it; they never overlap.
struct TwoTestDays {
    Date earlier{}, later{};
    int within = 0;
    friend bool operator==(const TwoTestDays&, const TwoTestDays&) = default;
};
/// The latest two around which at least three quarters as many athletes were tested both times as
/// around any two. Two weeks around each; less where all tests lie closer together. Nothing where
/// no athlete was tested on two days.
std::optional<TwoTestDays> lastTwoTestDays(std::span<const questions::TestDay> days);

} // namespace slopebook::ui
