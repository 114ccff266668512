// SPDX-License-Identifier: GPL-3.0-or-later
// What a load ceiling costs: ceiling against the expected half-width of the 1RM's interval.
#pragma once

#include "core/answers/nexttest.h"
#include "ui/charts/chartview.h"
#include "ui/charts/figure.h"
#include "ui/words/units.h"

#include <QLineSeries>

namespace slopebook::ui::charts {

struct CeilingData {
    std::vector<answers::CeilingPoint> curve = {};
    bool byOneRm = true; ///< half-width in kg, else in m/s
    LoadUnit unit = LoadUnit::Kilograms;
};

class CeilingFigure : public Figure {
    Q_OBJECT
public:
    CeilingFigure();
    void setData(const CeilingData& data);
    const CeilingData& data() const { return m_data; }

protected:
    void dress() override;
    void paintUnder(QPainter& painter) override;
    void paintOver(QPainter& painter) override;

private:
    double width(double halfWidth) const;
    CeilingData m_data;
    QLineSeries* m_best;
    QLineSeries* m_even;
};

class CeilingChart : public ChartView {
    Q_OBJECT
public:
    explicit CeilingChart(QWidget* parent = nullptr);
    void setData(const CeilingData& shown);
    const CeilingFigure& figure() const { return *m_figure; }
    FigureTable figures() const override;

protected:
    std::unique_ptr<Figure> paperFigure() const override;

private:
    CeilingChart(CeilingFigure* figure, QWidget* parent);
    CeilingFigure* m_figure;
};

} // namespace slopebook::ui::charts
