// SPDX-License-Identifier: GPL-3.0-or-later
// Gathers from the log what a season's matrix and a comparison of blocks need, and asks it: for the
// window, the page and the commands alike. No Qt in here.
#pragma once

#include "core/answers/seasonmatrix.h"
#include "core/questions/batteryquestions.h"

#include <map>
#include <optional>
#include <vector>

namespace slopebook::questions {

struct SeasonQuestion {
    /// The blocks that are looked at; empty: all in which the athlete has a session. With two of
    /// them every reading is one look.
    std::vector<BlockId> blocks = {};
    /// Where not empty these are the columns, and `blocks` is not looked at: their ids tell them
    /// apart and stand in no log. So two days can be compared that lie in no block.
    std::vector<Stored<BlockId, Block>> given = {};
    /// Of given columns that are one session of a day: its number there.
    std::map<BlockId, int> sessionOf = {};
    /// Of that lift alone, at these loads instead of its check loads; absent: all that was
    /// measured.
    std::optional<LiftId> lift = {};
    std::vector<Mass> loads = {};
    /// Of the battery's tests, and of no lift.
    bool testsAlone = false;
    /// That the others are read against; absent: the first.
    std::optional<BlockId> chosen = {};
};

/// A side of a comparison as a column: a block as it is; a day or a stretch of days as a block of
/// that name, its id -nth, which stands in no log.
Stored<BlockId, Block> columnFor(const log::Log& log, const BatterySide& side, int nth);
/// Columns and the one that they are read against, as they are typed (batterySide); no columns: all
/// blocks, and that one. Throws BadInput.
SeasonQuestion seasonQuestion(const log::Log& log, const std::vector<std::string>& columns,
                              const std::string& against);

struct SeasonAnswer {
    Stored<AthleteId, Athlete> athlete{};
    answers::SeasonMatrix matrix{};
    std::vector<Words> unread{}; ///< what cannot be read: damage
};

/// Refused with the reason: no blocks, no session in them.
Answer<SeasonAnswer> seasonMatrixOf(const log::Log& log, AthleteId athlete,
                                    const SeasonQuestion& question = {},
                                    const AskSettings& settings = {});
/// The same where what all athletes say of a lift is known already.
Answer<SeasonAnswer> seasonMatrixOf(const log::Log& log, const ContextOf& contextOf,
                                    AthleteId athlete, const SeasonQuestion& question,
                                    const AskSettings& settings = {});

} // namespace slopebook::questions
