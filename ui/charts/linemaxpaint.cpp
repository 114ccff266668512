// SPDX-License-Identifier: GPL-3.0-or-later
// The estimated 1RMs of the lines, with their intervals, over the axis of loads.
#include "ui/charts/linefigure.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

void LineFigure::paintOneRms(QPainter& painter, LabelRoom& room) const {
    std::vector<const LineEntry*> marked;
    for (const LineEntry& entry : m_data.sessions)
        if (entry.oneRm && std::isfinite(entry.oneRm->estimate))
            marked.push_back(&entry);
    // More would climb into the lines, or over the MVT's; the table has them all.
    constexpr std::size_t least = 2, most = 4;
    constexpr double lowest = 0.75, apart = 1.15, half = 0.5; // heights of text
    std::size_t rows = most;
    if (m_data.mvt) {
        const double under =
            (plot().bottom() - toPosition(0, *m_data.mvt).y()) / textSize() - lowest - half;
        rows = std::clamp(static_cast<std::size_t>(std::max(0.0, under / apart + 1)), least, most);
    }
    if (marked.size() > rows)
        marked.erase(marked.begin(), marked.end() - static_cast<std::ptrdiff_t>(rows));
    painter.setFont(textFont(0.9));
    if (m_data.mvt)
        for (const LineEntry* entry : marked) {
            const QPointF at = toPosition(shown(entry->oneRm->estimate), *m_data.mvt);
            painter.setPen(
                QPen(look::colour(entry->role, ground()), ground().print ? 0.5 : 0.8, Qt::DotLine));
            painter.drawLine(at, QPointF(at.x(), plot().bottom()));
        }
    double row = lowest;
    std::vector<QRectF> whiskers;
    for (auto entry = marked.rbegin(); entry != marked.rend(); ++entry, row += apart) {
        whiskers.push_back(paintOneRm(painter, **entry, row));
        room.take(whiskers.back());
    }
    paintMvt(painter, room); // before the words, which stand on neither it nor its name
    for (std::size_t i = 0; i < marked.size(); ++i) // the newest first
        paintBeside(painter, room, whiskers[i], oneRmTexts(*marked[marked.size() - 1 - i]->oneRm),
                    ground().ink);
}

QStringList LineFigure::oneRmTexts(const OneRmMark& mark) const {
    const QString unit = unitName(m_data.unit);
    const QString estimate = number(shown(mark.estimate), 1);
    const auto range = [this](const stats::Interval& held) {
        return rangeText({shown(held.low), shown(held.high)}, 1);
    };
    // Each of the two intervals says which it is, and how it is drawn.
    QStringList names;
    if (mark.whole && mark.interval && *mark.whole != *mark.interval)
        names << (mark.planned
                      ? tr("est. 1RM %1 %2 (thin: to plan with %3; thick: line alone %4)")
                      : tr("est. 1RM %1 %2 (thin: with days and bend %3; thick: line alone %4)"))
                     .arg(estimate, unit, range(*mark.whole), range(*mark.interval));
    if (mark.whole)
        names << (mark.planned ? tr("est. 1RM %1 %2 (to plan with %3)")
                               : tr("est. 1RM %1 %2 (with days and bend %3)"))
                     .arg(estimate, unit, range(*mark.whole));
    else if (mark.interval)
        names << tr("est. 1RM %1 %2 (line alone %3)").arg(estimate, unit, range(*mark.interval));
    else
        names << tr("est. 1RM %1").arg(tr("%1 %2").arg(estimate, unit));
    // Of the log's own maxima, and so not in the middle of what is planned with.
    if (mark.planned && std::abs(*mark.planned - mark.estimate) > 0.05)
        for (QString& name : names)
            name += tr("; by the log\u2019s maxima %1").arg(number(shown(*mark.planned), 1));
    QStringList texts;
    if (mark.measured)
        for (const QString& name : names)
            texts << tr("%1, lifted %2").arg(name, loadNumber(*mark.measured, m_data.unit));
    const QString alone = tr("%1 %2").arg(estimate, unit);
    return texts + names << tr("est. 1RM %1").arg(alone) << alone << estimate;
}

QRectF LineFigure::paintOneRm(QPainter& painter, const LineEntry& entry, double row) const {
    const OneRmMark& mark = *entry.oneRm;
    const QRectF area = plot();
    const double y = area.bottom() - row * textSize();
    const double x = toPosition(shown(mark.estimate), 0).x();
    const QColor c = look::colour(entry.role, ground());
    const double cap = 0.3 * textSize();
    const QPen pen(c, ground().print ? 1.0 : 1.6);
    const bool two = mark.whole && mark.interval && *mark.whole != *mark.interval;
    double from = x, to = x;
    if (two) { // within the one to plan with, thick: the line's alone
        QPen thick(c, ground().print ? 2.4 : 4.0);
        thick.setCapStyle(Qt::FlatCap);
        painter.setPen(thick);
        painter.drawLine(
            QPointF(std::max(area.left(), toPosition(shown(mark.interval->low), 0).x()), y),
            QPointF(std::min(area.right(), toPosition(shown(mark.interval->high), 0).x()), y));
    }
    painter.setPen(pen);
    if (const auto& held = mark.whole ? mark.whole : mark.interval) {
        from = std::max(area.left(), toPosition(shown(held->low), 0).x());
        to = toPosition(shown(held->high), 0).x();
        const bool cut = to > area.right();
        to = std::min(to, area.right());
        painter.drawLine(QPointF(from, y), QPointF(to, y));
        painter.drawLine(QPointF(from, y - cap), QPointF(from, y + cap));
        if (cut) {
            painter.drawLine(QPointF(to - cap, y - cap), QPointF(to, y));
            painter.drawLine(QPointF(to - cap, y + cap), QPointF(to, y));
        } else {
            painter.drawLine(QPointF(to, y - cap), QPointF(to, y + cap));
        }
    }
    const double size = 0.7 * textSize();
    painter.fillPath(look::markerPath(look::marker(entry.role), size).translated(x, y), c);
    if (mark.measured) {
        const double m = toPosition(shown(*mark.measured), 0).x();
        painter.setPen(pen);
        painter.drawLine(QPointF(m, y - 1.5 * cap), QPointF(m, y + 1.5 * cap));
        painter.drawLine(QPointF(m - cap, y - 1.5 * cap), QPointF(m + cap, y - 1.5 * cap));
        from = std::min(from, m);
        to = std::max(to, m);
    }
    const double half = std::max(size / 2, 1.5 * cap);
    return {std::min(from, x - size / 2), y - half,
            std::max(to, x + size / 2) - std::min(from, x - size / 2), 2 * half};
}

} // namespace slopebook::ui::charts
