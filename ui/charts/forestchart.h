// SPDX-License-Identifier: GPL-3.0-or-later
// The forest plot: every test's change on one axis, in units of the smallest change that matters,
// right is better. One painting for window and paper; greys tell it all.
#pragma once

#include "core/answers/batterycomparison.h"
#include "ui/charts/chartout.h"
#include "ui/charts/look.h"
#include "ui/words/units.h"

#include <QWidget>

#include <vector>

namespace slopebook::ui {

/// Height of the plot of those rows, in units of text height.
double forestHeight(const std::vector<answers::ForestRow>& rows, double textSize);

/// Paints the rows into target. unit: of the loads in their labels. textSize: height of ordinary
/// text, in the painter's units.
void paintForest(QPainter& painter, const QRectF& target,
                 const std::vector<answers::ForestRow>& rows, LoadUnit unit,
                 const look::Ground& ground, double textSize);

class ForestChart final : public QWidget, public charts::ChartOut {
    Q_OBJECT
public:
    explicit ForestChart(QWidget* parent = nullptr);

    void setRows(std::vector<answers::ForestRow> rows, LoadUnit unit, bool allAtOnce = false);
    const std::vector<answers::ForestRow>& rows() const { return m_rows; }
    charts::FigureTable figures() const override;
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;
    QSizeF paperSize() const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    double textSize() const;
    std::vector<answers::ForestRow> m_rows;
    LoadUnit m_unit = LoadUnit::Kilograms; ///< as setRows said
    bool m_allAtOnce = false;
};

} // namespace slopebook::ui
