// SPDX-License-Identifier: GPL-3.0-or-later
// The card for the bar: what to lift, what to put on, how fast, when to stop, and the cautions, in
// type that is read from the floor. Black on white, never cut: what does not fit goes on the next
// page.
#pragma once

#include "core/answers/squadrelation.h"
#include "ui/paper/pages.h"
#include "ui/words/units.h"

#include <QString>

#include <filesystem>

namespace slopebook::ui {

struct PlanCard {
    QString athlete{}, lift{};
    answers::Plan plan; ///< its chosen loads are printed, lightest first
    std::vector<answers::RelatedLoad> related = {}; ///< one a load of the plan, where asked for
    std::string relation = {};                      ///< what they are by
    LoadUnit unit = LoadUnit::Kilograms;
    int sets = 3;
    int reps = 0;                        ///< 0: until the stop speed
    page::Paper paper = page::Paper::A4; ///< of a PDF; a printer has its own
};

/// The pages for a printer, a preview or a PDF.
page::Print planCardPrint(const PlanCard& card);

/// Writes the PDF, whole or not at all. Throws LogError.
void writePlanCardPdf(const PlanCard& card, const log::Destination& to);

} // namespace slopebook::ui
