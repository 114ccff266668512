// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of load (x) against velocity (y) in a window.
#pragma once

#include "ui/charts/chartview.h"
#include "ui/charts/linefigure.h"

namespace slopebook::ui::charts {

class LineChart : public ChartView {
    Q_OBJECT
public:
    explicit LineChart(QWidget* parent = nullptr);

    /// Cheap to call after every key: only sessions that differ are replaced.
    void setData(const LineData& data);
    const LineData& data() const { return m_figure->data(); }
    /// Rings a point, the one of the table's selected row.
    void setHighlight(std::optional<PointRef> point);
    const LineFigure& figure() const { return *m_figure; }

    FigureTable figures() const override;

Q_SIGNALS:
    void pointClicked(slopebook::ui::charts::PointRef point);

protected:
    std::unique_ptr<Figure> paperFigure() const override;

private:
    LineFigure* m_figure;
    explicit LineChart(LineFigure* figure, QWidget* parent);
};

} // namespace slopebook::ui::charts
