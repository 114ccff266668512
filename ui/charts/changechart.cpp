// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/changechart.h"

#include "ui/charts/figuretables.h"

namespace slopebook::ui::charts {

ChangeChart::ChangeChart(QWidget* parent) : ChangeChart(new ChangeFigure, parent) {}

ChangeChart::ChangeChart(ChangeFigure* figure, QWidget* parent)
    : ChartView(figure, parent), m_figure(figure) {}

void ChangeChart::setData(const ChangeData& shownData) {
    m_figure->setData(shownData);
    describe();
}

void ChangeChart::setHighlight(std::optional<int> reading) {
    m_figure->setHighlight(reading);
}

FigureTable ChangeChart::figures() const {
    return figuresOf(m_figure->data());
}

std::unique_ptr<Figure> ChangeChart::paperFigure() const {
    auto figure = std::make_unique<ChangeFigure>();
    figure->setData(m_figure->data());
    return figure;
}

} // namespace slopebook::ui::charts
