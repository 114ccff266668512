// SPDX-License-Identifier: GPL-3.0-or-later
// Block against block as it is asked of a log. No Qt in here.
#pragma once

#include "core/answers/blockchange.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/liftcontext.h"
#include "core/questions/liftside.h"

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace slopebook::questions {

/// One side of a question that takes days and blocks alike: a session of a lift, or all of a block
/// or of a stretch of days.
using DayOrBlock = std::variant<LiftSession, Stored<BlockId, Block>, DayStretch>;
/// "2026-03-14", "2026-03-14#2", "2026-03-01..2026-03-14" or a block's name (letter case aside; the
/// latest of that name).
/// NoSuchSession with the days there are; BadInput lists the blocks where the text is neither.
Answer<DayOrBlock> dayOrBlock(const log::Log& log, std::span<const LiftSession> sessions,
                              const std::string& text);
/// Those that lie in these days, under that name.
answers::BlockSessions sessionsIn(const DayStretch& days, const std::string& name,
                                  std::span<const LiftSession> sessions);
/// Its sessions, and what it is called.
answers::BlockSessions sessionsOf(const DayOrBlock& side, std::span<const LiftSession> sessions);
/// A stretch of just the days of a block is that block. Of a session or a block that is not among
/// these (any more): none, without a name.
answers::BlockSessions sessionsOf(const LiftSide& side,
                                  std::span<const Stored<BlockId, Block>> blocks,
                                  std::span<const LiftSession> sessions);

/// How tests beside the later of two sessions are compared as one: by the block that holds it and
/// not the earlier one, else by the days from it on that lie within two weeks.
answers::MeanOfTests meanOfTests(std::span<const Stored<BlockId, Block>> blocks,
                                 std::span<const LiftSession> sessions, const LiftSession& from,
                                 const LiftSession& to);

/// How blocks of this athlete and lift are compared; from and to: of each the session by which
/// devices and smallest changes are chosen. The log, the context and the background are kept no
/// longer than they are.
answers::BlockSettings blockSettings(const log::Log& log, const LiftContext& context,
                                     const Background& about, const LiftSession& from,
                                     const LiftSession& to, const AskSettings& settings = {});

/// Of two sessions what comparisonOf() says.
Answer<answers::Comparison> comparisonOfSides(const log::Log& log, const LiftContext& context,
                                              const Background& about, const DayOrBlock& from,
                                              const DayOrBlock& to,
                                              const AskSettings& settings = {});
/// Of their sessions alone; no session on a side: refused with the reason.
Answer<answers::Comparison> comparisonOfSides(const log::Log& log, const LiftContext& context,
                                              const Background& about,
                                              const answers::BlockSessions& from,
                                              const answers::BlockSessions& to,
                                              const AskSettings& settings = {});

} // namespace slopebook::questions
