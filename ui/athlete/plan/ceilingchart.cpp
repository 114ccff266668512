// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/ceilingchart.h"

#include <QPainter>

#include <algorithm>
#include <limits>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {
// Under the lightest ceilings the width runs away: what is over this multiple of the narrowest is
// left out of the scale.
constexpr double widestShown = 8;
} // namespace

CeilingFigure::CeilingFigure() : m_best(new QLineSeries), m_even(new QLineSeries) {
    m_best->setObjectName(u"best"_s);
    m_even->setObjectName(u"even"_s);
    join(m_even);
    join(m_best);
    dress();
    setData({});
}

double CeilingFigure::width(double halfWidth) const {
    return m_data.byOneRm ? inUnit(halfWidth, m_data.unit) : halfWidth;
}

void CeilingFigure::setData(const CeilingData& data) {
    m_data = data;
    QList<QPointF> best, even;
    double narrowest = std::numeric_limits<double>::infinity(), first = 0, last = 0, highest = 0;
    for (const answers::CeilingPoint& point : data.curve)
        if (point.best)
            narrowest = std::min(narrowest, width(*point.best));
    for (const answers::CeilingPoint& point : data.curve) {
        const double x = inUnit(kilograms(point.ceiling.exact), data.unit);
        const auto take = [&](QList<QPointF>& points, const std::optional<double>& value) {
            if (!value || width(*value) > widestShown * narrowest)
                return;
            points << QPointF(x, width(*value));
            highest = std::max(highest, width(*value));
            first = first == 0 ? x : std::min(first, x);
            last = std::max(last, x);
        };
        take(best, point.best);
        take(even, point.even);
    }
    m_best->replace(best);
    m_even->replace(even);
    setTitles(tr("Heaviest load allowed (%1)").arg(unitName(data.unit)),
              data.byOneRm ? tr("Expected ± of the 1RM (%1)").arg(unitName(data.unit))
                           : tr("Expected ± of the change (m/s)"));
    if (best.isEmpty() && even.isEmpty())
        setScales(niceScale(0, 100, 5), niceScale(0, 10, 5));
    else
        setScales(niceScale(first, last, 6), niceScale(0, highest, 5));
    repaintLayers();
}

void CeilingFigure::dress() {
    m_best->setPen(QPen(ground().ink, 2 * unit()));
    QPen even(ground().quiet, 1.5 * unit());
    even.setStyle(Qt::DashLine);
    m_even->setPen(even);
}

void CeilingFigure::paintUnder(QPainter& painter) {
    // the last ceiling that can be had today
    const auto beyond = std::ranges::find_if(
        m_data.curve, [](const answers::CeilingPoint& point) { return !point.withinCeiling; });
    if (beyond == m_data.curve.begin() || beyond == m_data.curve.end())
        return;
    const double x =
        toPosition(inUnit(kilograms(std::prev(beyond)->ceiling.exact), m_data.unit), 0).x();
    painter.setPen(look::checkLoadPen(ground()));
    painter.drawLine(QPointF(x, plot().top()), QPointF(x, plot().bottom()));
    painter.setFont(textFont(0.9));
    paintLabel(painter, QPointF(x + 3 * unit(), plot().top() + 2 * unit()),
               Qt::AlignLeft | Qt::AlignTop, tr("today's ceiling"), ground(), ground().quiet);
}

void CeilingFigure::paintOver(QPainter& painter) {
    painter.setFont(textFont(0.9));
    if (m_best->count() == 0) {
        painter.setPen(ground().quiet);
        painter.drawText(plot(), Qt::AlignCenter, tr("Nothing to show yet"));
        return;
    }
    const auto label = [&](const QLineSeries& series, const QString& text, Qt::Alignment side) {
        if (series.count() == 0)
            return;
        const QPointF at = series.at(series.count() / 3);
        paintLabel(painter, toPosition(at.x(), at.y()), side, text, ground(), ground().ink);
    };
    label(*m_even, tr("even steps"), Qt::AlignLeft | Qt::AlignBottom);
    label(*m_best, tr("best ladder"), Qt::AlignRight | Qt::AlignTop);
}

CeilingChart::CeilingChart(QWidget* parent) : CeilingChart(new CeilingFigure, parent) {}

CeilingChart::CeilingChart(CeilingFigure* figure, QWidget* parent)
    : ChartView(figure, parent), m_figure(figure) {}

void CeilingChart::setData(const CeilingData& shown) {
    m_figure->setData(shown);
    describe();
}

FigureTable CeilingChart::figures() const {
    const CeilingData& drawn = m_figure->data();
    const auto shown = [&](const std::optional<double>& halfWidth) {
        if (!halfWidth)
            return QString();
        return drawn.byOneRm ? number(inUnit(*halfWidth, drawn.unit), 1) : number(*halfWidth, 3);
    };
    const QString unit = drawn.byOneRm ? unitName(drawn.unit) : tr("m/s");
    FigureTable table{.headings = {tr("Ceiling, %1").arg(unitName(drawn.unit)),
                                   tr("Best ladder, half-width in %1").arg(unit),
                                   tr("Even steps, half-width in %1").arg(unit), tr("Today")}};
    for (const answers::CeilingPoint& point : drawn.curve)
        table.rows.push_back({loadNumber(kilograms(point.ceiling.exact), drawn.unit),
                              shown(point.best), shown(point.even),
                              point.withinCeiling ? tr("can be had") : QString()});
    return table;
}

std::unique_ptr<Figure> CeilingChart::paperFigure() const {
    auto figure = std::make_unique<CeilingFigure>();
    figure->setData(m_figure->data());
    return figure;
}

} // namespace slopebook::ui::charts
