// SPDX-License-Identifier: GPL-3.0-or-later
// What the season says of a step that a page reads by itself. No Qt in here.
#pragma once

#include "core/answers/amongblocks.h"
#include "core/questions/batteryquestions.h"

#include <optional>

namespace slopebook::questions {

/// Of the battery's tests, the step between two training blocks in the athlete's season of all
/// blocks. Nothing is told where the season is of no more blocks than these two, or where it does
/// not hold them both.
answers::AmongBlocks testsStep(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
                               BlockId from, BlockId to, const AskSettings& settings = {});

/// Tells a comparison of one lift what the season says of each of its loads and of its max; where a
/// side is no block: nothing.
void tellSeasonStep(answers::Comparison& comparison, const log::Log& log,
                    const LiftContext& context, AthleteId athlete, std::optional<BlockId> from,
                    std::optional<BlockId> to, const AskSettings& settings = {});

} // namespace slopebook::questions
