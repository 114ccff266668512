// SPDX-License-Identifier: GPL-3.0-or-later
// The change that a step's reading is made of, drawn beside the chart's last point, and its name.
#pragma once

#include "ui/athlete/overview/stepcharts.h"

#include <algorithm>
#include <vector>

namespace slopebook::ui {

/// Where a chart's blocks and units stand.
struct StepFrame {
    QRectF area{};
    double span = 1, blocks = 1;
    double x(double block) const { return area.left() + (block + 0.5) / blocks * area.width(); }
    double y(double value) const {
        return area.center().y() - std::clamp(value / span, -1.0, 1.0) * area.height() / 2;
    }
};

/// Beside the last point what the reading is made of.
void paintChange(QPainter& painter, const StepChart& chart, const StepFrame& frame,
                 const MatrixPen& pen);
/// Says what that bar is, or it is taken for a point more: over it, under it or left of it,
/// wherever there is room. taken: boxes of other texts. False where there is none, or no bar.
bool nameChange(QPainter& painter, const StepChart& chart, const StepFrame& frame,
                const std::vector<QRectF>& taken, const MatrixPen& pen);

} // namespace slopebook::ui
