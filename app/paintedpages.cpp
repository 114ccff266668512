// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paintedpages.h"

#include "app/offscreen.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/plancard.h"
#include "ui/paper/printedcomparison.h"

namespace slopebook::app {

void PaintedPages::comparison(const log::Log& log, const ui::Background& about,
                              const answers::Comparison& comparison,
                              const log::Destination& to) const {
    paintOffscreen(
        [&] { ui::writeComparisonPdf(comparison, ui::pageHeader(log, about, comparison), to); });
}

void PaintedPages::card(const PlanOut& out, int sets, int reps, const log::Destination& to) const {
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

void PaintedPages::battery(const ui::BatteryAnswer& answer, const log::Destination& to) const {
    paintOffscreen(
        [&] { ui::writeBatteryPdf(answer, ui::LoadUnit::Kilograms, ui::page::Paper::A4, to); });
}

} // namespace slopebook::app
