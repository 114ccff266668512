// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/linechart.h"

#include "ui/charts/figuretables.h"

namespace slopebook::ui::charts {

LineChart::LineChart(QWidget* parent) : LineChart(new LineFigure, parent) {}

LineChart::LineChart(LineFigure* figure, QWidget* parent)
    : ChartView(figure, parent), m_figure(figure) {
    m_figure->setData({});
    connect(m_figure, &LineFigure::pointClicked, this, &LineChart::pointClicked);
}

void LineChart::setData(const LineData& data) {
    m_figure->setData(data);
    describe();
}

void LineChart::setHighlight(std::optional<PointRef> point) {
    m_figure->setHighlight(point);
}

FigureTable LineChart::figures() const {
    return figuresOf(data());
}

std::unique_ptr<Figure> LineChart::paperFigure() const {
    auto figure = std::make_unique<LineFigure>();
    figure->setData(m_figure->data());
    return figure;
}

} // namespace slopebook::ui::charts
