// SPDX-License-Identifier: GPL-3.0-or-later
// Asks the log for an athlete's matrix, for the pages and what they print; where there is none,
// what to do instead.
#pragma once

#include "core/questions/seasonquestions.h"
#include "ui/parts/taskpage.h"

#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui {

struct AskedSeason {
    QString athlete{};
    answers::SeasonMatrix matrix{};
    std::vector<questions::BlockSession> sessions{}; ///< the athlete's, by date
    std::vector<Words> unread{};                     ///< what of the log cannot be read
};

/// Why there is nothing to show, and the way out of it with its words.
struct NothingThere {
    QString title{}, why{};
    std::optional<TaskPage::Place> way{};
    QString wayText{};
};

struct SeasonAsking {
    std::optional<AskedSeason> answer{};
    NothingThere nothing{}; ///< where there is no answer
};

/// Read against `chosen`, where it is still a column; else against the first column, or the last
/// but one (lastStep). Throws LogError.
SeasonAsking askSeason(const Logbook& logbook, std::optional<AthleteId> athlete,
                       std::optional<BlockId> chosen, bool lastStep);

} // namespace slopebook::ui
