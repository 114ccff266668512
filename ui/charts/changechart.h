// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of the change of speed by load in a window.
#pragma once

#include "ui/charts/changefigure.h"
#include "ui/charts/chartview.h"

namespace slopebook::ui::charts {

class ChangeChart : public ChartView {
    Q_OBJECT
public:
    explicit ChangeChart(QWidget* parent = nullptr);

    void setData(const ChangeData& shownData);
    /// Rings a reading, the one of the table's selected row.
    void setHighlight(std::optional<int> reading);
    const ChangeFigure& figure() const { return *m_figure; }

    FigureTable figures() const override;

protected:
    std::unique_ptr<Figure> paperFigure() const override;

private:
    ChangeChart(ChangeFigure* figure, QWidget* parent);
    ChangeFigure* m_figure;
};

} // namespace slopebook::ui::charts
