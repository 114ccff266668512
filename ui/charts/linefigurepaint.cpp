// SPDX-License-Identifier: GPL-3.0-or-later
// What Qt Charts does not draw: names at the lines' ends, the threshold, check loads, 1RM whiskers.
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

namespace {

struct Name {
    const LineEntry* entry;
    double wanted; ///< y of the line's end
    double y;      ///< y of the name
};

// Pushes names apart to a least distance, keeping their order, inside top..bottom.
void spread(std::vector<Name>& names, double distance, double top, double bottom) {
    std::ranges::sort(names, {}, &Name::wanted);
    double next = top;
    for (Name& n : names) {
        n.y = std::max(n.wanted, next);
        next = n.y + distance;
    }
    double last = bottom;
    for (auto n = names.rbegin(); n != names.rend(); ++n) {
        n->y = std::min(n->y, last);
        last = n->y - distance;
    }
}

double firstVelocity(const LineEntry& entry, double start) {
    if (entry.line)
        return entry.line->at(std::isfinite(start) ? start : entry.line->from);
    double load = std::numeric_limits<double>::infinity(), v = 0;
    for (const LinePoint& p : entry.points)
        if (p.load < load) {
            load = p.load;
            v = p.velocity;
        }
    return v;
}

} // namespace

double LineFigure::labelRoom() const {
    double widest = 0;
    for (const LineEntry& entry : m_data.sessions)
        if (!entry.label.isEmpty())
            widest = std::max(widest, widthOf(entry.label));
    return widest > 0 ? widest + 2.6 * textSize() : 0;
}

double LineFigure::widthOf(const QString& label) const {
    constexpr qsizetype most = 500;
    if (m_widthsAt != textSize() || m_widths.size() > most)
        m_widths.clear();
    m_widthsAt = textSize();
    const auto known = m_widths.constFind(label);
    if (known != m_widths.cend())
        return *known;
    return *m_widths.insert(label, QFontMetricsF(textFont()).horizontalAdvance(label));
}

// As the series of the others are drawn.
void LineFigure::paintStill(QPainter& painter) const {
    painter.setClipRect(plot());
    const auto at = [this](double load, double velocity) {
        return toPosition(shown(load), velocity);
    };
    for (const LineEntry& entry : m_painted) {
        if (entry.line && std::isfinite(entry.line->intercept + entry.line->slope)) {
            const LineSegment& line = *entry.line;
            const auto part = [&](double from, double to, const QPen& pen) {
                painter.setPen(pen);
                if (to > from && std::isfinite(to - from))
                    painter.drawLine(at(from, line.at(from)), at(to, line.at(to)));
            };
            part(line.start, line.from, look::beyondPen(entry.role, ground()));
            part(line.to, line.end, look::beyondPen(entry.role, ground()));
            part(line.from, line.to, look::linePen(entry.role, ground()));
        }
        const QColor c = look::colour(entry.role, ground());
        const QPainterPath mark =
            look::seriesMarkerPath(look::marker(entry.role), markerSize(entry.role));
        for (const LinePoint& p : entry.points) {
            if (!std::isfinite(p.load) || !std::isfinite(p.velocity))
                continue;
            painter.setBrush(p.excluded ? QBrush(Qt::NoBrush) : QBrush(c));
            painter.setPen(p.excluded ? QPen(c, ground().print ? 0.8 : 1.4)
                                      : QPen(ground().paper, ground().print ? 0.5 : 1.0));
            painter.drawPath(mark.translated(at(p.load, p.velocity)));
        }
    }
    painter.setClipping(false);
}

void LineFigure::paintUnder(QPainter& painter) {
    const QRectF area = plot();
    painter.setFont(textFont(0.9));
    painter.setClipRect(area);
    if (m_data.notComparable)
        look::hatch(painter, area, ground());
    painter.setPen(look::checkLoadPen(ground()));
    for (const double load : m_data.checkLoads) {
        const double x = toPosition(shown(load), 0).x();
        painter.setPen(look::checkLoadPen(ground()));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    }
    if (m_data.mvt) {
        const double y = toPosition(0, *m_data.mvt).y();
        painter.setPen(look::thresholdPen(ground()));
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
    painter.setClipping(false);
}

void LineFigure::paintOver(QPainter& painter) {
    const QRectF area = plot();
    if (m_data.sessions.empty()) {
        painter.setFont(textFont());
        painter.setPen(ground().quiet);
        painter.drawText(area, Qt::AlignCenter, tr("No sets yet"));
        return;
    }
    LabelRoom room = roomOfPoints();
    paintLabels(painter, room);
    painter.setFont(textFont(0.9));
    if (m_data.notComparable)
        room.take(paintLabel(
            painter, area.topRight() + QPointF(-0.4 * textSize(), 1.6 * textSize()),
            Qt::AlignRight | Qt::AlignVCenter, tr("not comparable"), ground(), ground().ink));
    paintOneRms(painter, room);
    paintNotLifted(painter, room);
    paintLoads(painter, room);
    paintLeftOut(painter, room);
    if (m_highlight) {
        const LinePoint& p = m_data.sessions[static_cast<std::size_t>(m_highlight->session)]
                                 .points[static_cast<std::size_t>(m_highlight->point)];
        painter.setPen(look::highlightPen(ground()));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(toPosition(shown(p.load), p.velocity), textSize() * 0.75,
                            textSize() * 0.75);
    }
}

LabelRoom LineFigure::roomOfPoints() const {
    LabelRoom room(plot().adjusted(-1, -1, 1, 1), 0.35 * textSize());
    for (const LineEntry& entry : m_data.sessions)
        for (const LinePoint& p : entry.points)
            if (std::isfinite(p.load) && std::isfinite(p.velocity))
                room.takePoint(toPosition(shown(p.load), p.velocity));
    return room;
}

void LineFigure::paintMvt(QPainter& painter, LabelRoom& room) const {
    const QRectF area = plot();
    const QFontMetricsF metrics(painter.font());
    if (m_data.mvt) {
        const double y = toPosition(xAxis().min(), *m_data.mvt).y();
        const QString words = tr("MVT %1 m/s").arg(number(*m_data.mvt, 2));
        const double wide = metrics.horizontalAdvance(words), high = metrics.height();
        const double left = area.left() + 0.4 * textSize();
        const double right = area.right() - 0.4 * textSize() - wide;
        const std::vector<QRectF> boxes{{left, y - high, wide, high},
                                        {left, y, wide, high},
                                        {right, y - high, wide, high},
                                        {right, y, wide, high}};
        if (const auto at = room.place(boxes))
            paintLabel(painter, boxes[*at].topLeft(), Qt::AlignLeft | Qt::AlignTop, words, ground(),
                       ground().ink);
        room.take({area.left(), y - 1, area.width(), 2});
    }
}

// At the top, from the left, those that have room.
void LineFigure::paintLoads(QPainter& painter, LabelRoom& room) const {
    const QRectF area = plot();
    const QFontMetricsF metrics(painter.font());
    for (const double load : m_data.checkLoads) {
        const QPointF at(toPosition(shown(load), 0).x(), area.top());
        const QString words = loadWithUnit(load, m_data.unit);
        const double wide = metrics.horizontalAdvance(words), apart = 0.4 * textSize();
        const QRectF box(at.x() - wide / 2 - apart, at.y(), wide + 2 * apart, metrics.height());
        if (room.place({box}))
            paintLabel(painter, at, Qt::AlignHCenter, words, ground(), ground().quiet);
    }
}

void LineFigure::paintBeside(QPainter& painter, LabelRoom& room, const QRectF& box,
                             const QStringList& texts, const QColor& ink) const {
    const QFontMetricsF metrics(painter.font());
    const double high = metrics.height(), apart = 0.5 * textSize(), middle = box.center().y();
    for (const QString& text : texts) {
        const double wide = metrics.horizontalAdvance(text);
        const std::vector<QRectF> boxes{
            {box.left() - apart - wide, middle - high / 2, wide, high},
            {box.right() + apart, middle - high / 2, wide, high},
            {box.right() - wide, box.top() - high, wide, high},
            {box.left() - apart - wide, middle + high / 2, wide, high},
        };
        if (const auto at = room.place(boxes)) {
            paintLabel(painter, boxes[*at].topLeft(), Qt::AlignLeft | Qt::AlignTop, text, ground(),
                       ink);
            return;
        }
    }
}

// Beside the points, the lines are no place for it either. The room is its own copy: nothing is
// laid out after it.
void LineFigure::paintLeftOut(QPainter& painter, LabelRoom room) const {
    constexpr int steps = 80;
    for (const LineEntry& entry : m_data.sessions)
        if (entry.line && std::isfinite(entry.line->intercept + entry.line->slope) &&
            std::isfinite(entry.line->end - entry.line->start))
            for (int i = 0; i <= steps; ++i) {
                const double load =
                    entry.line->start + (entry.line->end - entry.line->start) * i / steps;
                const QPointF at = toPosition(shown(load), entry.line->at(load));
                room.take({at.x() - 2, at.y() - 2, 4, 4});
            }
    painter.setFont(textFont(0.9));
    const double reach = 0.45 * textSize();
    for (const LineEntry& entry : m_data.sessions)
        for (const LinePoint& p : entry.points)
            if (p.excluded && std::isfinite(p.load) && std::isfinite(p.velocity)) {
                const QPointF at = toPosition(shown(p.load), p.velocity);
                paintBeside(painter, room, {at.x() - reach, at.y() - reach, 2 * reach, 2 * reach},
                            {tr("not in the line")}, ground().quiet);
            }
}

void LineFigure::paintLabels(QPainter& painter, LabelRoom& taken) const {
    const QRectF area = plot();
    const double first = start();
    std::vector<Name> names;
    double left = std::numeric_limits<double>::infinity();
    for (const LineEntry& entry : m_data.sessions) {
        for (const LinePoint& p : entry.points)
            if (std::isfinite(p.load))
                left = std::min(left, shown(p.load));
        if (entry.label.isEmpty() || (entry.points.empty() && !entry.line))
            continue;
        const double y = toPosition(0, firstVelocity(entry, first)).y();
        names.push_back({.entry = &entry, .wanted = y, .y = y});
    }
    if (std::isfinite(first))
        left = std::min(left, shown(first));
    if (names.empty() || !std::isfinite(left))
        return;
    painter.setFont(textFont());
    const QFontMetricsF metrics(painter.font());
    const double distance = metrics.height() * 1.02;
    // Where there are more names than room, the newest are named.
    const auto most = static_cast<std::size_t>(std::max(1.0, area.height() / distance - 1));
    if (names.size() > most)
        names.erase(names.begin(), names.end() - static_cast<std::ptrdiff_t>(most));
    spread(names, distance, area.top() + distance, area.bottom() - distance);
    const double lineStart = toPosition(left, 0).x();
    const double mark = textSize() * 0.75;
    const double right = lineStart - textSize() * 0.9;
    const double room = right - 1.6 * mark - area.left();
    for (const Name& n : names) {
        const QColor c = look::colour(n.entry->role, ground());
        painter.setPen(QPen(c, ground().print ? 0.6 : 1.0));
        painter.drawLine(QPointF(right, n.y), QPointF(lineStart - 0.2 * textSize(), n.wanted));
        // The marker stands before the name, away from the points: it is a key, not a set.
        const double atMost = std::max(room, 3 * textSize());
        // A day loses its year before it is cut.
        QString text = n.entry->label;
        while (widthOf(text) > atMost && text.contains(u' '))
            text.truncate(text.lastIndexOf(u' '));
        if (widthOf(text) > atMost)
            text = metrics.elidedText(text, Qt::ElideRight, atMost);
        const QRectF box =
            paintLabel(painter, QPointF(right - 0.3 * mark, n.y), Qt::AlignRight | Qt::AlignVCenter,
                       text, ground(), ground().ink);
        painter.fillPath(
            look::markerPath(look::marker(n.entry->role), mark * look::markerSize(n.entry->role))
                .translated(box.left() - 0.8 * mark, n.y),
            c);
        taken.take(box.adjusted(-1.6 * mark, 0, 0, 0));
    }
}

// A cross where the load stands on its axis, and what it is at the top, where no line is so far
// right.
void LineFigure::paintNotLifted(QPainter& painter, LabelRoom& room) const {
    const QRectF area = plot();
    const double arm = 0.35 * textSize();
    painter.setFont(textFont(0.9));
    double row = area.top() + (m_data.notComparable ? 2.9 : 1.6) * textSize();
    std::optional<double> named;
    for (const LineEntry& entry : m_data.sessions) {
        if (!entry.notLifted)
            continue;
        const QPointF at(toPosition(shown(*entry.notLifted), 0).x(), area.bottom());
        const QColor c = look::colour(entry.role, ground());
        painter.setPen(QPen(c, ground().print ? 0.5 : 0.8));
        painter.drawLine(at, QPointF(at.x(), row));
        painter.setPen(QPen(c, ground().print ? 1.2 : 2.0));
        painter.drawLine(at + QPointF(-arm, -arm), at + QPointF(arm, arm));
        painter.drawLine(at + QPointF(-arm, arm), at + QPointF(arm, -arm));
        // What was lifted in none of them is named once.
        if (std::exchange(named, entry.notLifted) == entry.notLifted)
            continue;
        paintBeside(painter, room, QRectF(at.x() - 1, row - 0.5 * textSize(), 2, textSize()),
                    {tr("%1 not lifted").arg(loadWithUnit(*entry.notLifted, m_data.unit))},
                    ground().ink);
        row += 1.3 * textSize();
    }
}

} // namespace slopebook::ui::charts
