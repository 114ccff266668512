// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/stepchange.h"

#include "ui/athlete/overview/steppaint.h"
#include "ui/charts/labelroom.h"

#include <QFontMetricsF>

namespace slopebook::ui {

namespace {

constexpr double beside = 0.34; // of a block's width

bool hasBar(const StepChart& chart) {
    return chart.change && chart.banded;
}

double changeBarAt(const StepChart& chart, const StepFrame& frame) {
    return frame.x(chart.points.back().block) + beside * frame.area.width() / frame.blocks;
}

/// The points' whiskers and what leads from one to the next.
void takePoints(charts::LabelRoom& room, const StepChart& chart, const StepFrame& frame,
                double half) {
    constexpr int pieces = 12; // of a slanted line, each in a box of its own
    const StepChart::Point* before = nullptr;
    for (const StepChart::Point& point : chart.points) {
        const double x = frame.x(point.block);
        room.take(
            QRectF(QPointF(x - half, frame.y(point.high)), QPointF(x + half, frame.y(point.low)))
                .normalized()
                .adjusted(0, -half, 0, half));
        for (int i = 0; before && i < pieces; ++i) {
            const auto along = [&](int piece) {
                const double share = static_cast<double>(piece) / pieces;
                return QPointF(frame.x(before->block + share * (point.block - before->block)),
                               frame.y(before->value + share * (point.value - before->value)));
            };
            room.take(QRectF(along(i), along(i + 1)).normalized().adjusted(-1, -1, 1, 1));
        }
        before = &point;
    }
}

} // namespace

void paintChange(QPainter& painter, const StepChart& chart, const StepFrame& frame,
                 const MatrixPen& pen) {
    if (!hasBar(chart))
        return;
    const double x = changeBarAt(chart, frame);
    look::Ground ground = pen.ground;
    ground.ink = markColour(chart.mark, pen.ground);
    painter.save();
    painter.setClipRect(frame.area.adjusted(0, -1, 0, 1));
    charts::paintWhisker(
        painter, chart.change->whisker,
        [&](double value) {
            return QPointF(x,
                           frame.area.center().y() - value / frame.span * frame.area.height() / 2);
        },
        QPointF(pen.line * 0.18, 0), ground);
    painter.fillRect(QRectF(x - pen.line * 0.3, frame.y(chart.change->change) - pen.line * 0.08,
                            pen.line * 0.6, pen.line * 0.16),
                     ground.ink);
    painter.setClipping(false);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground.ink);
    const double half = pen.line * 0.22;
    const auto runsOn = [&](double edge, double way) { // beyond the scale
        painter.drawPolygon(QPolygonF{QPointF(x, edge - way * half),
                                      QPointF(x - half, edge + way * half),
                                      QPointF(x + half, edge + way * half)});
    };
    if (chart.change->whisker.interval.high > frame.span)
        runsOn(frame.area.top(), 1);
    if (chart.change->whisker.interval.low < -frame.span)
        runsOn(frame.area.bottom(), -1);
    painter.restore();
}

bool nameChange(QPainter& painter, const StepChart& chart, const StepFrame& frame,
                const std::vector<QRectF>& taken, const MatrixPen& pen) {
    if (!hasBar(chart) || chart.mark == CellMark::NotComparable)
        return false;
    const QFontMetricsF metrics(pen.small);
    const QString name = StepChartsView::tr("change");
    const double wide = metrics.horizontalAdvance(name), high = metrics.height();
    const double x = changeBarAt(chart, frame), half = pen.line * 0.3, air = pen.line * 0.15;
    const double top = frame.y(chart.change->whisker.interval.high);
    const double bottom = frame.y(chart.change->whisker.interval.low);
    charts::LabelRoom room(frame.area, half);
    for (const QRectF& box : taken)
        room.take(box);
    takePoints(room, chart, frame, half);
    room.take(QRectF(QPointF(x - half, top), QPointF(x + half, bottom)));
    const double left = std::min(x - wide / 2, frame.area.right() - wide);
    const double aside = x - half - air - wide;
    const std::vector<QRectF> boxes{{left, top - air - high, wide, high},
                                    {left, bottom + air, wide, high},
                                    {aside, top, wide, high},
                                    {aside, bottom - high, wide, high},
                                    {aside, (top + bottom - high) / 2, wide, high}};
    const auto place = room.place(boxes);
    if (!place)
        return false;
    painter.setFont(pen.small);
    painter.setPen(pen.ground.quiet);
    painter.drawText(boxes[*place], Qt::AlignCenter, name);
    return true;
}

} // namespace slopebook::ui
