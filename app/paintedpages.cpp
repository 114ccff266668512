// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paintedpages.h"

#include "app/offscreen.h"
#include "ui/athlete/overview/overviewprint.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/plancard.h"
#include "ui/paper/printedcomparison.h"
#include "ui/squad/changes/squadprint.h"

namespace slopebook::app {

namespace {
ui::LoadUnit shownIn(MassUnit unit) {
    return unit == MassUnit::Pound ? ui::LoadUnit::Pounds : ui::LoadUnit::Kilograms;
}
} // namespace

void PaintedPages::comparison(const log::Log& log, const questions::Background& about,
                              const answers::Comparison& comparison, MassUnit unit,
                              const log::Destination& to) const {
    paintOffscreen([&] {
        ui::PageHeader header = ui::pageHeader(log, about, comparison);
        header.unit = shownIn(unit);
        ui::writeComparisonPdf(comparison, header, to);
    });
}

void PaintedPages::card(const PlanOut& out, int sets, int reps, const log::Destination& to) const {
    paintOffscreen([&] {
        ui::writePlanCardPdf({.athlete = QString::fromStdString(out.athlete),
                              .lift = QString::fromStdString(out.lift),
                              .plan = out.plan,
                              .related = out.related(),
                              .relation = out.relationName(),
                              .unit = shownIn(out.plan.settings.unit),
                              .sets = sets,
                              .reps = reps},
                             to);
    });
}

void PaintedPages::together(const std::function<void()>& work) const {
    paintOffscreen(work);
}

void PaintedPages::squad(const answers::Squad& squad, const Lift& lift, MassUnit unit,
                         const log::Destination& to) const {
    paintOffscreen([&] {
        ui::page::writePagesPdf(ui::squadPrint(squad, ui::liftTitle(lift), shownIn(unit)),
                                ui::page::Paper::A4, to);
    });
}

void PaintedPages::overview(const log::Log& log, const questions::SeasonAnswer& answer,
                            MassUnit unit, const log::Destination& to) const {
    paintOffscreen([&] {
        const ui::AskedSeason asked{.athlete = QString::fromStdString(answer.athlete.value.name),
                                    .matrix = answer.matrix,
                                    .sessions = questions::seasonOf(log, answer.athlete.id),
                                    .unread = answer.unread};
        ui::page::writePagesPdf(
            ui::overviewPrint(asked, answers::overviewOf(asked.matrix), shownIn(unit)),
            ui::page::Paper::A4, to);
    });
}

void PaintedPages::battery(const questions::BatteryAnswer& answer, MassUnit unit,
                           const log::Destination& to) const {
    paintOffscreen([&] { ui::writeBatteryPdf(answer, shownIn(unit), ui::page::Paper::A4, to); });
}

} // namespace slopebook::app
