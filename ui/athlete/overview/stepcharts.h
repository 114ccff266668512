// SPDX-License-Identifier: GPL-3.0-or-later
// The last step of a few measures as small charts side by side, on one scale in units of what
// matters. One painting for window and paper.
#pragma once

#include "core/answers/overview.h"
#include "ui/athlete/overview/matrixpaint.h"
#include "ui/charts/paintedchart.h"

namespace slopebook::ui {

/// One measure over the blocks.
struct StepChart {
    struct Point {
        double block = 0;                    ///< its place among the blocks
        double value = 0, low = 0, high = 0; ///< units of what matters from the block compared with
        QString figure{};                    ///< in the measure's unit
        friend bool operator==(const Point&, const Point&) = default;
    };
    QString name{}, unit{}; ///< "Bench pull at 40 kg", "m/s"
    QString reading{};
    QString words{}; ///< in full
    CellMark mark = CellMark::Figure;
    bool banded = true; ///< whether a smallest change is known; else a unit is the interval's half
    std::optional<Step> change{}; ///< of the last point from that one, up is more
    std::vector<Point> points{};
    std::size_t from = 0; ///< the point that the last is compared with
    friend bool operator==(const StepChart&, const StepChart&) = default;
};

struct StepChartsData {
    std::vector<StepChart> charts{};
    QStringList blocks{};
    friend bool operator==(const StepChartsData&, const StepChartsData&) = default;
};

StepChartsData stepCharts(const answers::SeasonMatrix& matrix, const answers::Overview& overview,
                          LoadUnit unit);
void paintStepCharts(QPainter& painter, const QRectF& target, const StepChartsData& data,
                     const MatrixPen& pen);

class StepChartsView final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;
    void setData(StepChartsData data);
    const StepChartsData& data() const { return m_data; }
    charts::FigureTable figures() const override;
    QSizeF paperSize() const override { return {520, 150}; }
    QSize sizeHint() const override { return {800, 230}; }
    QSize minimumSizeHint() const override { return {260, 150}; }

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;

private:
    StepChartsData m_data;
};

} // namespace slopebook::ui
