// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of the charts of lines and of change as tables.
#pragma once

#include "ui/charts/changedata.h"
#include "ui/charts/chartout.h"
#include "ui/charts/linedata.h"

namespace slopebook::ui::charts {

/// A row a point, then each session's line and estimated 1RM.
FigureTable figuresOf(const LineData& data);
/// A row a load that has a reading.
FigureTable figuresOf(const ChangeData& data);

} // namespace slopebook::ui::charts
