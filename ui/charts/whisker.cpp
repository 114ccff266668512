// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/whisker.h"

#include <QPolygonF>

#include <algorithm>

namespace slopebook::ui::charts {

namespace {

void paintPart(QPainter& painter, const stats::Interval& part, const stats::Interval& solid,
               const std::function<QPointF(double)>& at, QPen pen) {
    const auto line = [&](double from, double to) {
        if (from < to) {
            painter.setPen(pen);
            painter.drawLine(at(from), at(to));
        }
    };
    pen.setCapStyle(Qt::FlatCap);
    line(std::max(part.low, solid.low), std::min(part.high, solid.high));
    // Dashes and gaps count in the pen's own width.
    const double width = pen.widthF();
    pen.setDashPattern({std::max(1.0, 3 / width), std::max(0.8, 2 / width)});
    line(part.low, std::min(part.high, solid.low));
    line(std::max(part.low, solid.high), part.high);
}

} // namespace

bool bends(const Whisker& w) {
    const double least = 0.01 * (w.interval.high - w.interval.low);
    return w.straight.low - w.interval.low > least || w.interval.high - w.straight.high > least;
}

void paintWhisker(QPainter& painter, const Whisker& w, const std::function<QPointF(double)>& at,
                  const QPointF& across, const look::Ground& ground) {
    const QPen thin = look::readingPen(ground);
    QPen thick = thin;
    thick.setWidthF(2 * thin.widthF());
    paintPart(painter, w.interval, w.straight, at, thin);
    paintPart(painter, w.equivalence, w.straight, at, thick);
    painter.setPen(thin);
    for (const double end : {w.interval.low, w.interval.high})
        painter.drawLine(at(end) - across, at(end) + across);
}

void paintWhiskerEnd(QPainter& painter, const QPointF& end, const QPointF& outward, double cap,
                     bool runsOn) {
    const QPointF across(-cap * outward.y(), cap * outward.x());
    if (!runsOn) {
        painter.drawLine(end - across, end + across);
        return;
    }
    const QPointF back = end - cap * outward;
    painter.drawPolyline(QPolygonF{back - across, end, back + across});
}

} // namespace slopebook::ui::charts
