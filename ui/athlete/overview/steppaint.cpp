// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/steppaint.h"

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

bool isSettled(CellMark mark) {
    return mark == CellMark::Better || mark == CellMark::Worse;
}

QColor markColour(CellMark mark, const look::Ground& ground) {
    if (mark == CellMark::Better)
        return look::changeColour(ground);
    if (mark == CellMark::Worse)
        return look::colour({.kind = look::Role::Kind::Earlier}, ground);
    return ground.ink;
}

void paintMark(QPainter& painter, const QRectF& box, CellMark mark, const MatrixPen& pen) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double half = pen.line * 0.26;
    const QPointF at(box.left() + half, box.center().y());
    painter.setPen(Qt::NoPen);
    painter.setBrush(markColour(mark, pen.ground));
    if (mark == CellMark::Better)
        painter.drawPolygon(QPolygonF{at + QPointF(-half, half * 0.8),
                                      at + QPointF(half, half * 0.8),
                                      at + QPointF(0, -half * 0.9)});
    else if (mark == CellMark::Worse)
        painter.drawPolygon(QPolygonF{at + QPointF(-half, -half * 0.8),
                                      at + QPointF(half, -half * 0.8),
                                      at + QPointF(0, half * 0.9)});
    else if (mark == CellMark::Held)
        for (const double y : {-0.45, 0.45})
            painter.drawRect(QRectF(at.x() - half * 0.9, at.y() + y * half - half * 0.16,
                                    1.8 * half, half * 0.32));
    painter.restore();
}

void paintStepGround(QPainter& painter, const QRectF& box, double span, const MatrixPen& pen) {
    const double unit = box.width() / 2 / span;
    painter.fillRect(QRectF(box.center().x() - unit, box.top(), 2 * unit, box.height()),
                     look::smallestBrush(pen.ground));
    painter.setPen(look::zeroPen(pen.ground));
    painter.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()));
}

void paintStep(QPainter& painter, const QRectF& box, const Step& step, CellMark mark, double span,
               const MatrixPen& pen) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double unit = box.width() / 2 / span;
    const double y = box.center().y();
    const double cap = pen.line * 0.25;
    const auto at = [&](double value) {
        return QPointF(box.center().x() + std::clamp(value, -span, span) * unit, y);
    };
    look::Ground ground = pen.ground;
    ground.ink = markColour(mark, pen.ground);
    charts::Whisker whisker = step.whisker;
    const bool below = whisker.interval.low < -span;
    const bool above = whisker.interval.high > span;
    painter.setClipRect(box.adjusted(-1, 0, 1, 0), Qt::IntersectClip);
    charts::paintWhisker(painter, whisker, at, QPointF(0, cap), ground);
    // What runs on beyond the scale has an arrow over its cap.
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground.ink);
    const auto arrow = [&](double edge, double way) {
        painter.drawPolygon(QPolygonF{QPointF(edge, y), QPointF(edge - way * cap * 1.6, y - cap),
                                      QPointF(edge - way * cap * 1.6, y + cap)});
    };
    if (below)
        arrow(box.left(), -1);
    if (above)
        arrow(box.right(), 1);
    if (std::abs(step.change) <= span)
        painter.drawRect(
            QRectF(at(step.change).x() - cap * 0.42, y - cap * 1.25, cap * 0.84, cap * 2.5));
    painter.restore();
}

} // namespace slopebook::ui
