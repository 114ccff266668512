// SPDX-License-Identifier: GPL-3.0-or-later
// The printed pages as the commands ask for them. Who paints them is handed in: no command knows a
// window, or Qt.
#pragma once

#include "app/commands/planout.h"
#include "core/answers/comparison.h"
#include "core/log/target.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/questions.h"

namespace slopebook::app {

/// Each writes a PDF, whole or not at all, and throws LogError where it cannot be written.
class Pages {
public:
    virtual ~Pages() = default;
    virtual void comparison(const log::Log& log, const questions::Background& about,
                            const answers::Comparison& comparison,
                            const log::Destination& to) const = 0;
    /// The card for the bar; reps 0: until the stop speed.
    virtual void card(const PlanOut& out, int sets, int reps, const log::Destination& to) const = 0;
    virtual void battery(const questions::BatteryAnswer& answer,
                         const log::Destination& to) const = 0;
};

} // namespace slopebook::app
