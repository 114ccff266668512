// SPDX-License-Identifier: GPL-3.0-or-later
// What the columns of an athlete's matrix are: training blocks, or, where there are none to
// compare, the days of the last two tests.
#pragma once

#include "core/model/ids.h"
#include "core/model/people.h"
#include "core/questions/batteryquestions.h"

#include <vector>

namespace slopebook::ui {

/// Blocks in which the athlete has a session, by their first day.
std::vector<Stored<BlockId, Block>>
blocksWith(std::vector<Stored<BlockId, Block>> blocks,
           const std::vector<questions::BlockSession>& sessions);
/// The last two days with a session as blocks of one day each, named by it; under two days: none.
std::vector<Stored<BlockId, Block>>
lastTwoDays(const std::vector<questions::BlockSession>& sessions);
/// Whether a column stands for a day and not for a block of the log.
bool isDayColumn(BlockId id);

} // namespace slopebook::ui
