// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/look.h"

#include "ui/parts/deskstyle.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <array>
#include <cmath>

namespace slopebook::ui::look {

namespace {

// Of the Okabe-Ito set: vermilion and blue on white, orange and sky blue on dark. Each pair also
// differs in lightness, so that it is told apart in grey.
QColor earlier(const Ground& g) {
    return g.dark ? QColor(0xe6, 0x9f, 0x00) : QColor(0xd5, 0x5e, 0x00);
}
QColor later(const Ground& g) {
    return g.dark ? QColor(0x56, 0xb4, 0xe9) : QColor(0x00, 0x5a, 0x8f);
}

QColor between(const QColor& a, const QColor& b, double share) {
    const auto mix = [share](float x, float y) {
        return static_cast<float>(x + (y - x) * static_cast<float>(share));
    };
    return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()),
                            mix(a.blueF(), b.blueF()));
}

QColor faded(QColor c, double alpha) {
    c.setAlphaF(static_cast<float>(alpha));
    return c;
}

QPen pen(const QColor& c, double width, const QList<qreal>& dashes = {}) {
    QPen p(c, width);
    p.setCapStyle(Qt::FlatCap);
    p.setJoinStyle(Qt::RoundJoin);
    if (!dashes.isEmpty())
        p.setDashPattern(dashes);
    return p;
}

// Five dashes and six markers: thirty sessions before a pair comes again.
const std::array<QList<qreal>, 5>& dashes() {
    static const std::array<QList<qreal>, 5> all{QList<qreal>{}, QList<qreal>{7, 3},
                                                 QList<qreal>{2.5, 2}, QList<qreal>{8, 2.5, 2, 2.5},
                                                 QList<qreal>{12, 3}};
    return all;
}
constexpr std::array markers{
    QScatterSeries::MarkerShapeCircle,    QScatterSeries::MarkerShapeTriangle,
    QScatterSeries::MarkerShapeRectangle, QScatterSeries::MarkerShapeRotatedRectangle,
    QScatterSeries::MarkerShapePentagon,  QScatterSeries::MarkerShapeStar};

// Counted from the newest, so that the newest is always the solid line with round points.
std::size_t age(const Role& role, std::size_t cycle) {
    const int fromNewest = std::max(0, role.count - 1 - role.index);
    return static_cast<std::size_t>(fromNewest) % cycle;
}

QColor sessionColour(const Role& role, const Ground& ground) {
    const double share = role.count > 1 ? static_cast<double>(role.index) / (role.count - 1) : 1.0;
    // One hue (a green-blue that is neither of the compared colours); contrast grows with the date.
    const QColor oldest = ground.dark ? QColor(0x6a, 0xa6, 0x9f) : QColor(0x44, 0x7a, 0x72);
    const QColor newest = ground.dark ? QColor(0xb9, 0xf2, 0xe8) : QColor(0x06, 0x40, 0x3a);
    return between(oldest, newest, share);
}

} // namespace

void paintFocus(QPainter& painter, const QRect& area, const QPalette& palette) {
    painter.setPen(QPen(deskTones(palette).chosen, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(1, 1, -1, -1));
}

Ground screenGround(const QPalette& palette) {
    Ground g;
    g.paper = palette.color(QPalette::Base);
    g.ink = palette.color(QPalette::Text);
    g.quiet = between(g.ink, g.paper, 0.22); // read on the bands as well
    g.grid = between(g.ink, g.paper, 0.87);
    g.dark = g.paper.lightnessF() < 0.5F;
    return g;
}

Ground paperGround() {
    return {.paper = Qt::white,
            .ink = Qt::black,
            .quiet = QColor(0x50, 0x50, 0x50),
            .grid = QColor(0xdd, 0xdd, 0xdd),
            .dark = false,
            .print = true};
}

QColor colour(const Role& role, const Ground& ground) {
    switch (role.kind) {
    case Role::Kind::Earlier:
        return earlier(ground);
    case Role::Kind::Later:
        return later(ground);
    case Role::Kind::Session:
        break;
    }
    return sessionColour(role, ground);
}

QPen linePen(const Role& role, const Ground& ground) {
    const QColor c = colour(role, ground);
    const double width = ground.print ? 1.4 : 2.2;
    switch (role.kind) {
    case Role::Kind::Earlier:
        return pen(c, width, {6, 2.5});
    case Role::Kind::Later:
        return pen(c, width);
    case Role::Kind::Session:
        break;
    }
    const bool newest = role.index >= role.count - 1;
    return pen(c, newest ? width : width * 0.8, dashes().at(age(role, dashes().size())));
}

QPen beyondPen(const Role& role, const Ground& ground) {
    return pen(colour(role, ground), ground.print ? 0.8 : 1.2, {1.5, 3});
}

QBrush bandBrush(const Role& role, const Ground& ground) {
    return faded(colour(role, ground), ground.dark ? 0.24 : 0.16);
}

QScatterSeries::MarkerShape marker(const Role& role) {
    switch (role.kind) {
    case Role::Kind::Earlier:
        return QScatterSeries::MarkerShapeRectangle;
    case Role::Kind::Later:
        return QScatterSeries::MarkerShapeCircle;
    case Role::Kind::Session:
        break;
    }
    return markers.at(age(role, markers.size()));
}

double markerSize(const Role& role) {
    switch (marker(role)) {
    case QScatterSeries::MarkerShapeRectangle:
        return 0.9;
    case QScatterSeries::MarkerShapeStar:
        return 1.25;
    case QScatterSeries::MarkerShapeTriangle:
        return 1.1;
    default:
        return 1.0;
    }
}

QPainterPath markerPath(QScatterSeries::MarkerShape shape, double size) {
    const double r = size / 2;
    QPainterPath path;
    const auto polygon = [&](int corners, double inner) {
        QPolygonF p;
        const int steps = inner > 0 ? corners * 2 : corners;
        for (int i = 0; i < steps; ++i) {
            const double angle = 2 * M_PI * i / steps - M_PI / 2;
            const double reach = inner > 0 && i % 2 == 1 ? r * inner : r;
            p << QPointF(reach * std::cos(angle), reach * std::sin(angle));
        }
        path.addPolygon(p);
        path.closeSubpath();
    };
    switch (shape) {
    case QScatterSeries::MarkerShapeRectangle:
        path.addRect(-r, -r, size, size);
        break;
    case QScatterSeries::MarkerShapeRotatedRectangle:
        polygon(4, 0);
        break;
    case QScatterSeries::MarkerShapeTriangle:
        polygon(3, 0);
        break;
    case QScatterSeries::MarkerShapePentagon:
        polygon(5, 0);
        break;
    case QScatterSeries::MarkerShapeStar:
        polygon(5, 0.4);
        break;
    default:
        path.addEllipse(QPointF(), r, r);
    }
    return path;
}

QPainterPath seriesMarkerPath(QScatterSeries::MarkerShape shape, double size) {
    const double r = size / 2;
    if (shape != QScatterSeries::MarkerShapeTriangle)
        return markerPath(shape, size);
    QPainterPath path; // as wide and as high as it is large
    path.addPolygon(QPolygonF{{0, -r}, {r, r}, {-r, r}});
    path.closeSubpath();
    return path;
}

QColor changeColour(const Ground& ground) {
    return later(ground);
}
QPen changePen(const Ground& ground) {
    return pen(changeColour(ground), ground.print ? 1.4 : 2.2);
}
QPen changeBeyondPen(const Ground& ground) {
    return pen(changeColour(ground), ground.print ? 0.8 : 1.2, {1.5, 3});
}
QBrush changeIntervalBrush(const Ground& ground) {
    return faded(changeColour(ground), ground.dark ? 0.34 : 0.24);
}
QPen changeBandPen(const Ground& ground) {
    return pen(changeColour(ground), ground.print ? 0.7 : 1.0, {5, 2.5});
}
QPen readingPen(const Ground& ground) {
    return pen(ground.ink, ground.print ? 0.9 : 1.4);
}
QBrush smallestBrush(const Ground& ground) {
    return faded(ground.ink, ground.dark ? 0.16 : 0.10);
}
QPen smallestPen(const Ground& ground) {
    return pen(ground.quiet, ground.print ? 0.5 : 0.8, {3, 2});
}
void hatch(QPainter& painter, const QRectF& area, const Ground& ground) {
    if (area.width() <= 0 || area.height() <= 0)
        return;
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setPen(pen(faded(ground.ink, ground.dark ? 0.35 : 0.28), ground.print ? 0.3 : 0.8));
    const double step = ground.print ? 4 : 7;
    // Anchored at the origin, so that neighbouring areas continue each other.
    const double first = std::floor((area.left() + area.top()) / step) * step;
    for (double c = first; c <= area.right() + area.bottom(); c += step)
        painter.drawLine(QPointF(c - area.top(), area.top()),
                         QPointF(c - area.bottom(), area.bottom()));
    painter.restore();
}
QPen zeroPen(const Ground& ground) {
    return pen(ground.ink, ground.print ? 0.7 : 1.0);
}
QPen thresholdPen(const Ground& ground) {
    return pen(ground.ink, ground.print ? 0.7 : 1.0, {4, 3});
}
QPen checkLoadPen(const Ground& ground) {
    return pen(ground.quiet, ground.print ? 0.5 : 0.8, {1, 3});
}
QPen highlightPen(const Ground& ground) {
    return pen(ground.ink, ground.print ? 1.0 : 2.0);
}

} // namespace slopebook::ui::look
