// SPDX-License-Identifier: GPL-3.0-or-later
// The season of one load on paper: the chart, what it says, the figures of every session.
#pragma once

#include "ui/athlete/season/seasondata.h"
#include "ui/paper/pages.h"

#include <QString>

#include <vector>

namespace slopebook::ui {

struct SeasonPaper {
    QString athlete{}, lift{};
    answers::FollowedSeason season;
    SeasonData chart{};
    std::vector<Stored<BlockId, Block>> blocks{};
    double level = 0.95;
    bool trends = false; ///< with those within blocks
};

/// The pages for a printer, a preview or a PDF.
page::Print seasonPrint(const SeasonPaper& paper);

} // namespace slopebook::ui
