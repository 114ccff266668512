// SPDX-License-Identifier: GPL-3.0-or-later
// The commands' pages, painted as the window prints them, without a display.
#pragma once

#include "app/commands/pages.h"

namespace slopebook::app {

class PaintedPages : public Pages {
public:
    void comparison(const log::Log& log, const questions::Background& about,
                    const answers::Comparison& comparison, MassUnit unit,
                    const log::Destination& to) const override;
    void card(const PlanOut& out, int sets, int reps, const log::Destination& to) const override;
    void together(const std::function<void()>& work) const override;
    void squad(const answers::Squad& squad, const Lift& lift, MassUnit unit,
               const log::Destination& to) const override;
    void overview(const log::Log& log, const questions::SeasonAnswer& answer, MassUnit unit,
                  const log::Destination& to) const override;
    void battery(const questions::BatteryAnswer& answer, MassUnit unit,
                 const log::Destination& to) const override;
};

} // namespace slopebook::app
