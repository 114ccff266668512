// SPDX-License-Identifier: GPL-3.0-or-later
// From a figure of a season to the page that it comes from: its comparison, its session, its load
// through the season.
#pragma once

#include "core/answers/seasonmatrix.h"
#include "core/questions/batteryquestions.h"
#include "ui/parts/taskpage.h"

#include <optional>
#include <vector>

namespace slopebook::ui {

enum class Way { Comparison, Session, Season };

/// A figure of a matrix: what, in which block, and the block that it is compared with.
struct MeasureAt {
    const answers::SeasonMatrix& matrix;
    std::size_t measure = 0, block = 0;
    std::optional<std::size_t> from{};
};

/// Whether there is anything to be shown that way. sessions: the athlete's, by date.
bool leads(const MeasureAt& at, Way way, const std::vector<questions::BlockSession>& sessions);
/// Asks the shell for it; nothing where it does not lead anywhere.
void go(TaskPage& page, const MeasureAt& at, Way way,
        const std::vector<questions::BlockSession>& sessions);
/// The same, to its session where there is no other to compare it with; whether it led anywhere.
bool goOrToSession(TaskPage& page, const MeasureAt& at, Way way,
                   const std::vector<questions::BlockSession>& sessions);

/// The last session in that block that holds what is measured; of a body mass: the last there is.
std::optional<SessionId> lastSession(const answers::Measure& measure, const Block& block,
                                     const std::vector<questions::BlockSession>& sessions);

} // namespace slopebook::ui
