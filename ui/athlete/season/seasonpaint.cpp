// SPDX-License-Identifier: GPL-3.0-or-later
// How the season is painted, on the screen and on paper.
#include "ui/athlete/season/seasonchart.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/charts/figure.h"
#include "ui/charts/key.h"
#include "ui/charts/plotframe.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::KeyEntry;
using charts::PlotFrame;

namespace {

/// The two frames, one under the other, over one axis of time.
struct Frames {
    PlotFrame velocity, oneRm;
    double keyRoom = 0;
};

class Reach {
public:
    void take(double v) {
        if (std::isfinite(v)) {
            m_low = std::min(m_low, v);
            m_high = std::max(m_high, v);
        }
    }
    charts::Scale scale(double height, double textSize) const {
        const int parts = static_cast<int>(std::clamp(height / (2.2 * textSize), 2.0, 7.0));
        if (m_low > m_high)
            return charts::niceScale(0, 1, parts);
        const double room = 0.06 * (m_high - m_low) + 1e-9;
        return charts::niceScale(m_low - room, m_high + room, parts);
    }
    double low() const { return m_low; }
    double high() const { return m_high; }

private:
    double m_low = std::numeric_limits<double>::infinity(), m_high = -m_low;
};

/// Whiskers may be endless beside the points: they stretch the scale to three times those at most.
charts::Scale scaleOf(const Reach& points, const Reach& whiskers, double height, double textSize) {
    Reach all = points;
    const double room = std::max(points.high() - points.low(), 1e-3 * std::abs(points.high()));
    if (points.low() <= points.high()) {
        all.take(std::max(whiskers.low(), points.low() - room - 0.05 * std::abs(points.low())));
        all.take(std::min(whiskers.high(), points.high() + room + 0.05 * std::abs(points.high())));
    }
    return all.scale(height, textSize);
}

double shown(const SeasonData& data, double kilogram) {
    return inUnit(kilogram, data.unit);
}

charts::Scale velocityScale(const SeasonData& data, double height, double textSize) {
    Reach points, whiskers;
    for (const SeasonPoint& p : data.points) {
        for (const double seen : p.seen)
            points.take(seen);
        if (p.line)
            points.take(*p.line);
        if (p.interval) {
            whiskers.take(p.interval->low);
            whiskers.take(p.interval->high);
        }
    }
    if (data.detectable && data.baseline >= 0)
        if (const auto& base = data.points[static_cast<std::size_t>(data.baseline)].line) {
            points.take(*base - *data.detectable);
            points.take(*base + *data.detectable);
        }
    return scaleOf(points, whiskers, height, textSize);
}

charts::Scale oneRmScale(const SeasonData& data, double height, double textSize) {
    Reach points, whiskers;
    for (const SeasonPoint& p : data.points) {
        if (p.oneRm)
            points.take(shown(data, *p.oneRm));
        if (p.measured)
            points.take(shown(data, *p.measured));
        if (p.oneRmInterval) {
            whiskers.take(shown(data, p.oneRmInterval->low));
            whiskers.take(shown(data, p.oneRmInterval->high));
        }
    }
    return scaleOf(points, whiskers, height, textSize);
}

void dot(QPainter& painter, const QPointF& at, double radius, const QColor& ink,
         const QColor& fill) {
    painter.setPen(QPen(ink, std::max(0.6, radius / 3)));
    painter.setBrush(fill);
    painter.drawEllipse(at, radius, radius);
}

void cross(QPainter& painter, const QPointF& at, double reach, const QColor& ink) {
    painter.setPen(QPen(ink, std::max(0.6, reach / 3)));
    painter.drawLine(at + QPointF(-reach, -reach), at + QPointF(reach, reach));
    painter.drawLine(at + QPointF(-reach, reach), at + QPointF(reach, -reach));
}

void diamond(QPainter& painter, const QPointF& at, double size, const look::Ground& g) {
    painter.save();
    painter.translate(at);
    painter.setPen(QPen(g.ink, g.print ? 0.7 : 1.2));
    painter.setBrush(g.ink);
    painter.drawPath(look::markerPath(QScatterSeries::MarkerShapeRotatedRectangle, size));
    painter.restore();
}

std::vector<KeyEntry> keyOf(const SeasonData& data, const look::Ground& g) {
    const QColor ink = look::changeColour(g);
    std::vector<KeyEntry> key{
        {SeasonWords::tr("from the line, with its %1 interval").arg(levelText(data.level)),
         [g, ink](QPainter& p, const QRectF& box) {
             p.setPen(look::readingPen(g));
             p.drawLine(QPointF(box.center().x(), box.top()),
                        QPointF(box.center().x(), box.bottom()));
             dot(p, box.center(), box.height() / 5, ink, ink);
         }},
        {SeasonWords::tr("seen at the load"),
         [g](QPainter& p, const QRectF& box) { cross(p, box.center(), box.height() / 5, g.ink); }}};
    const auto any = [&](auto is) { return std::ranges::any_of(data.points, is); };
    if (any([](const SeasonPoint& p) { return p.hollow || p.far; }))
        key.push_back({SeasonWords::tr("beyond the loads lifted; 1RM: reach below 0.80"),
                       [g, ink](QPainter& p, const QRectF& box) {
                           dot(p, box.center(), box.height() / 5, ink, g.paper);
                       }});
    if (data.detectable)
        key.push_back({SeasonWords::tr("smallest detectable change (±%1 m/s) around the baseline")
                           .arg(number(*data.detectable, 3)),
                       [g](QPainter& p, const QRectF& box) {
                           p.fillRect(box.adjusted(0, 2, 0, -2), look::smallestBrush(g));
                       }});
    if (data.trend)
        key.push_back({SeasonWords::tr("trend"), [g](QPainter& p, const QRectF& box) {
                           p.setPen(look::changeBandPen(g));
                           p.drawLine(QPointF(box.left(), box.center().y()),
                                      QPointF(box.right(), box.center().y()));
                       }});
    if (any([](const SeasonPoint& p) { return p.notComparable; }))
        key.push_back(charts::notComparableKey(g));
    if (any([](const SeasonPoint& p) { return p.measured.has_value(); }))
        key.push_back({SeasonWords::tr("measured 1RM"), [g](QPainter& p, const QRectF& box) {
                           diamond(p, box.center(), box.height() / 1.8, g);
                       }});
    return key;
}

Frames framesOf(const QRectF& target, const SeasonData& data, const look::Ground& ground,
                double textSize) {
    Frames f;
    const double side = 0.4 * textSize;
    f.keyRoom = charts::keyHeight(keyOf(data, ground), charts::chartFont(textSize, 0.9),
                                  target.width() - 2 * side);
    double first = std::numeric_limits<double>::infinity(), last = -first;
    for (const SeasonPoint& p : data.points) {
        first = std::min(first, p.day);
        last = std::max(last, p.day);
    }
    const double room = std::max(7.0, 0.04 * (last - first));
    const double top = target.top() + side + f.keyRoom + 2.8 * textSize; // two lines of blocks
    const double bottom = target.bottom() - charts::xAxisRoom(textSize, false);
    const double gap = 1.4 * textSize;
    const double height = std::max(20.0, bottom - top - gap);
    const double left = target.left() + charts::yAxisRoom(textSize) + side;
    const double width = std::max(20.0, target.right() - 1.5 * textSize - left);
    for (PlotFrame* frame : {&f.velocity, &f.oneRm}) {
        frame->from = first - room;
        frame->to = last + room;
        frame->ground = ground;
        frame->textSize = textSize;
    }
    f.velocity.area = QRectF(left, top, width, 0.58 * height);
    f.oneRm.area = QRectF(left, top + 0.58 * height + gap, width, 0.42 * height);
    f.velocity.y = velocityScale(data, f.velocity.area.height(), textSize);
    f.oneRm.y = oneRmScale(data, f.oneRm.area.height(), textSize);
    return f;
}

void paintSpans(QPainter& painter, const Frames& f, const SeasonData& data) {
    const look::Ground& g = f.velocity.ground;
    const QRectF all = f.velocity.area.united(f.oneRm.area);
    painter.setFont(charts::chartFont(f.velocity.textSize, 0.9));
    const QFontMetricsF metrics(painter.font());
    bool shade = true;
    for (const SeasonSpan& span : data.spans) {
        const double left = std::max(f.velocity.x(span.from), all.left());
        const double right = std::min(f.velocity.x(span.to), all.right());
        if (right <= left)
            continue;
        if (shade)
            for (const PlotFrame* frame : {&f.velocity, &f.oneRm}) {
                QColor veil = g.ink;
                veil.setAlphaF(g.dark ? 0.09F : 0.05F);
                painter.fillRect(
                    QRectF(left, frame->area.top(), right - left, frame->area.height()), veil);
            }
        shade = !shade;
        painter.setPen(look::checkLoadPen(g));
        for (const double edge : {left, right})
            painter.drawLine(QPointF(edge, all.top() - 2.4 * f.velocity.textSize),
                             QPointF(edge, all.bottom()));
        const double room = right - left - 4;
        painter.setPen(g.ink);
        painter.drawText(
            QPointF(left + 3, all.top() - 2.6 * f.velocity.textSize + metrics.ascent()),
            metrics.elidedText(span.name, Qt::ElideRight, room));
        painter.setPen(g.quiet);
        painter.drawText(
            QPointF(left + 3, all.top() - 1.35 * f.velocity.textSize + metrics.ascent()),
            metrics.elidedText(span.ceiling, Qt::ElideRight, room));
    }
}

/// A strip behind each day that stands beside no other, or not beside the baseline.
void paintNotComparable(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    const double half = f.textSize;
    for (const SeasonPoint& p : data.points)
        if (p.notComparable)
            look::hatch(painter,
                        QRectF(f.x(p.day) - half, f.area.top(), 2 * half, f.area.height()) & f.area,
                        f.ground);
}

/// The middle of the widest stretch of the plot without a session, for a word on the baseline; as
/// near to the baseline's own day as any that has room.
double freePlace(const PlotFrame& f, const SeasonData& data, double width) {
    std::vector<double> taken{f.area.left()};
    for (const SeasonPoint& p : data.points)
        taken.push_back(f.x(p.day));
    taken.push_back(f.area.right());
    std::ranges::sort(taken);
    const double own = f.x(data.points[static_cast<std::size_t>(data.baseline)].day);
    const double room = width + 1.5 * f.textSize;
    std::optional<double> nearest;
    std::size_t widest = 1;
    for (std::size_t i = 1; i < taken.size(); ++i) {
        const double gap = taken[i] - taken[i - 1];
        if (gap > taken[widest] - taken[widest - 1])
            widest = i;
        if (gap < room)
            continue;
        const double at = std::clamp(own, taken[i - 1] + room / 2, taken[i] - room / 2);
        if (!nearest || std::abs(at - own) < std::abs(*nearest - own))
            nearest = at;
    }
    return nearest.value_or((taken[widest] + taken[widest - 1]) / 2);
}

void paintBaseline(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    if (data.baseline < 0)
        return;
    const SeasonPoint& base = data.points[static_cast<std::size_t>(data.baseline)];
    if (!base.line)
        return;
    if (data.detectable) {
        const double top = f.yOf(*base.line + *data.detectable);
        const double bottom = f.yOf(*base.line - *data.detectable);
        painter.fillRect(QRectF(f.area.left(), top, f.area.width(), bottom - top),
                         look::smallestBrush(f.ground));
        painter.setPen(look::smallestPen(f.ground));
        for (const double y : {top, bottom})
            painter.drawLine(QPointF(f.area.left(), y), QPointF(f.area.right(), y));
    }
    painter.setPen(look::zeroPen(f.ground));
    painter.drawLine(QPointF(f.area.left(), f.yOf(*base.line)),
                     QPointF(f.area.right(), f.yOf(*base.line)));
    painter.setFont(charts::chartFont(f.textSize, 0.9));
    const QFontMetricsF metrics(painter.font());
    const QString word = SeasonWords::tr("baseline");
    const double x = freePlace(f, data, metrics.horizontalAdvance(word));
    charts::paintLabel(painter, {x, f.yOf(*base.line) - 0.15 * f.textSize},
                       Qt::AlignHCenter | Qt::AlignBottom, word, f.ground, f.ground.ink);
}

void paintTrend(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    if (!data.trend || data.points.empty())
        return;
    const double last = data.points.back().day;
    const double weeks = (last - data.trend->day) / 7;
    painter.setPen(look::changeBandPen(f.ground));
    painter.drawLine(f.at(data.trend->day, data.trend->value),
                     f.at(last, data.trend->value + weeks * data.trend->perWeek));
}

void paintVelocities(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    const QColor ink = look::changeColour(f.ground);
    const double r = 0.3 * f.textSize;
    for (const SeasonPoint& p : data.points) {
        if (p.interval) {
            painter.setPen(look::readingPen(f.ground));
            f.paintWhisker(painter, p.day, p.interval->low, p.interval->high);
        }
        if (p.line)
            dot(painter, f.at(p.day, *p.line), r, ink, p.hollow ? f.ground.paper : ink);
        for (const double seen : p.seen)
            cross(painter, f.at(p.day, seen), r, f.ground.ink);
    }
}

void paintMaxima(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    const QColor ink = look::changeColour(f.ground);
    const double r = 0.3 * f.textSize;
    for (const SeasonPoint& p : data.points) {
        if (p.oneRmInterval) {
            painter.setPen(look::readingPen(f.ground));
            f.paintWhisker(painter, p.day, shown(data, p.oneRmInterval->low),
                           shown(data, p.oneRmInterval->high));
        }
        if (p.oneRm)
            dot(painter, f.at(p.day, shown(data, *p.oneRm)), r, ink, p.far ? f.ground.paper : ink);
        if (p.measured)
            diamond(painter, f.at(p.day, shown(data, *p.measured)), 0.8 * f.textSize, f.ground);
    }
}

void paintRing(QPainter& painter, const Frames& f, const SeasonData& data, int ringed) {
    const SeasonPoint& p = data.points[static_cast<std::size_t>(ringed)];
    painter.setBrush(Qt::NoBrush);
    painter.setPen(look::highlightPen(f.velocity.ground));
    const double r = 0.75 * f.velocity.textSize;
    if (p.line)
        painter.drawEllipse(f.velocity.at(p.day, *p.line), r, r);
    if (p.oneRm)
        painter.drawEllipse(f.oneRm.at(p.day, shown(data, *p.oneRm)), r, r);
}

} // namespace

void paintSeason(QPainter& painter, const QRectF& target, const SeasonData& data,
                 const look::Ground& ground, double textSize, std::optional<int> ringed) {
    if (data.points.empty()) {
        painter.setFont(charts::chartFont(textSize));
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter, SeasonWords::tr("Nothing to follow yet"));
        return;
    }
    const Frames f = framesOf(target, data, ground, textSize);
    const double side = 0.4 * textSize;
    charts::paintKey(painter, keyOf(data, ground), charts::chartFont(textSize, 0.9),
                     target.adjusted(side, side, -side, 0), ground.ink);
    paintSpans(painter, f, data);
    f.velocity.paintMonths(painter, false);
    f.oneRm.paintMonths(painter, true);
    f.velocity.paintYAxis(painter, data.velocityTitle, u"m/s"_s);
    f.oneRm.paintYAxis(painter, SeasonWords::tr("1RM (%1)").arg(unitName(data.unit)),
                       unitName(data.unit));
    for (const PlotFrame* frame : {&f.velocity, &f.oneRm})
        paintNotComparable(painter, *frame, data);
    painter.save();
    painter.setClipRect(f.velocity.area.adjusted(0, -1, textSize, 1));
    paintBaseline(painter, f.velocity, data);
    paintTrend(painter, f.velocity, data);
    paintVelocities(painter, f.velocity, data);
    painter.restore();
    paintMaxima(painter, f.oneRm, data);
    for (const PlotFrame* frame : {&f.velocity, &f.oneRm})
        frame->paintOutline(painter);
    if (ringed && *ringed >= 0 && *ringed < static_cast<int>(data.points.size()))
        paintRing(painter, f, data, *ringed);
}

std::optional<int> seasonPointAt(const QRectF& target, const SeasonData& data, double textSize,
                                 const QPointF& pos) {
    if (data.points.empty())
        return std::nullopt;
    const Frames f = framesOf(target, data, look::paperGround(), textSize);
    std::optional<int> nearest;
    double best = 1.5 * textSize;
    const auto take = [&](std::size_t i, const QPointF& at) {
        const double away = std::hypot(at.x() - pos.x(), at.y() - pos.y());
        if (away < best) {
            best = away;
            nearest = static_cast<int>(i);
        }
    };
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const SeasonPoint& p = data.points[i];
        if (p.line)
            take(i, f.velocity.at(p.day, *p.line));
        for (const double seen : p.seen)
            take(i, f.velocity.at(p.day, seen));
        if (p.oneRm)
            take(i, f.oneRm.at(p.day, shown(data, *p.oneRm)));
        if (p.measured)
            take(i, f.oneRm.at(p.day, shown(data, *p.measured)));
    }
    return nearest;
}

} // namespace slopebook::ui
