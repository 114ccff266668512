// SPDX-License-Identifier: GPL-3.0-or-later
// The line that is planned from, with what can be built on it: the chosen loads, where a set stops,
// the speeds of another day, and the 1RM with its interval.
#pragma once

#include "core/answers/plan.h"
#include "ui/charts/paintedchart.h"
#include "ui/words/units.h"

#include <optional>
#include <vector>

namespace slopebook::ui {

/// Loads in the coach's unit, speeds in m/s.
struct PlanDrawing {
    struct Load {
        double load = 0, speed = 0;
        std::optional<stats::Interval> expected{}; ///< of one rep on another day
        std::optional<double> stop{};
        bool chosen = false;
        bool overMax = false; ///< over the estimated 1RM
        friend bool operator==(const Load&, const Load&) = default;
    };
    std::vector<Load> loads{};         ///< ascending
    double lightest = 0, heaviest = 0; ///< of the session: beyond, the line is drawn on
    double intercept = 0, slope = 0;   ///< of the line, m/s and m/s per unit of load
    std::optional<double> mvt{};
    std::optional<double> oneRm{};
    std::optional<stats::Interval> toPlan{}; ///< of the 1RM
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const PlanDrawing&, const PlanDrawing&) = default;
};

PlanDrawing planDrawing(const answers::Plan& plan, LoadUnit unit);

class PlanChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;

    void setData(PlanDrawing data);
    const PlanDrawing& data() const { return m_data; }
    charts::FigureTable figures() const override;

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;

private:
    PlanDrawing m_data;
};

} // namespace slopebook::ui
