// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/planbounds.h"
#include "ui/athlete/plan/planchart.h"

#include <algorithm>

namespace slopebook::ui {

PlanDrawing planDrawing(const answers::Plan& plan, LoadUnit unit) {
    const answers::Profile& profile = plan.profile;
    const double perUnit = inUnit(1.0, unit); // units a kilogram
    PlanDrawing drawing{.lightest = inUnit(profile.lightest, unit),
                        .heaviest = inUnit(profile.heaviest, unit),
                        .intercept = profile.line.intercept,
                        .slope = profile.line.slope / perUnit,
                        .unit = unit};
    if (profile.mvt)
        drawing.mvt = profile.mvt->value;
    if (profile.oneRm) {
        drawing.oneRm = inUnit(answers::estimateToPlanWith(*profile.oneRm), unit);
        if (const auto& interval = answers::toPlanWith(*profile.oneRm))
            drawing.toPlan = inUnit(*interval, unit);
    }
    for (std::size_t i = 0; i < plan.loads.size(); ++i) {
        const answers::PlannedLoad& load = plan.loads[i];
        drawing.loads.push_back({.load = inUnit(kilograms(load.built.exact), unit),
                                 .speed = load.velocity,
                                 .expected = load.prediction,
                                 .stop = load.stop,
                                 .chosen = std::ranges::find(plan.chosen, i) != plan.chosen.end(),
                                 .overMax = load.percent.value_or(0) > 100});
    }
    return drawing;
}

} // namespace slopebook::ui
