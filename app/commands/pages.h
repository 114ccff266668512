// SPDX-License-Identifier: GPL-3.0-or-later
// The printed pages as the commands ask for them. Who paints them is handed in: no command knows a
// window, or Qt.
#pragma once

#include "app/commands/planout.h"
#include "core/answers/comparison.h"
#include "core/log/target.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/questions.h"
#include "core/questions/seasonquestions.h"

#include <functional>

namespace slopebook::app {

/// Each writes a PDF, whole or not at all, with loads in that unit, and throws LogError where it
/// cannot be written.
class Pages {
public:
    virtual ~Pages() = default;
    virtual void comparison(const log::Log& log, const questions::Background& about,
                            const answers::Comparison& comparison, MassUnit unit,
                            const log::Destination& to) const = 0;
    /// The card for the bar; reps 0: until the stop speed.
    virtual void card(const PlanOut& out, int sets, int reps, const log::Destination& to) const = 0;
    /// Several pages in one go, at less cost than one by one. Throws what work throws.
    virtual void together(const std::function<void()>& work) const = 0;
    virtual void squad(const answers::Squad& squad, const Lift& lift, MassUnit unit,
                       const log::Destination& to) const = 0;
    /// The last step of an athlete's matrix: what is better, and what is due.
    virtual void overview(const log::Log& log, const questions::SeasonAnswer& answer, MassUnit unit,
                          const log::Destination& to) const = 0;
    virtual void battery(const questions::BatteryAnswer& answer, MassUnit unit,
                         const log::Destination& to) const = 0;
};

} // namespace slopebook::app
