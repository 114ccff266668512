// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/pdf.h"

#include "app/commands/offscreen.h"
#include "app/commands/planout.h"
#include "ui/paper/comparisonpage.h"
#include "ui/paper/plancard.h"

namespace slopebook::app {

void writePdf(const log::Log& log, const ui::Background& about,
              const answers::Comparison& comparison, const log::Destination& to) {
    paintOffscreen(
        [&] { ui::writeComparisonPdf(comparison, ui::pageHeader(log, about, comparison), to); });
}

void writeCard(const PlanOut& out, int sets, int reps, const log::Destination& to) {
    paintOffscreen([&] {
        ui::writePlanCardPdf({.athlete = QString::fromStdString(out.athlete),
                              .lift = QString::fromStdString(out.lift),
                              .plan = out.plan,
                              .related = out.related(),
                              .relation = out.relationName(),
                              .unit = out.plan.settings.unit == MassUnit::Pound
                                          ? ui::LoadUnit::Pounds
                                          : ui::LoadUnit::Kilograms,
                              .sets = sets,
                              .reps = reps},
                             to);
    });
}

} // namespace slopebook::app
