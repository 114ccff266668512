// SPDX-License-Identifier: GPL-3.0-or-later
// How the season is painted, on the screen and on paper.
#include "ui/athlete/season/seasonchart.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonmarks.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/charts/figure.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

void paintSpans(QPainter& painter, const SeasonLayout& f, const SeasonData& data) {
    const look::Ground& g = f.velocity.ground;
    const QRectF all = f.showsMax ? f.velocity.area.united(f.oneRm.area) : f.velocity.area;
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
            painter.drawLine(QPointF(edge, all.top() - f.header + 0.2 * f.velocity.textSize),
                             QPointF(edge, all.bottom()));
        const double room = right - left - 4;
        painter.setPen(g.ink);
        painter.drawText(QPointF(left + 3, all.top() - f.header + metrics.ascent()),
                         metrics.elidedText(span.name, Qt::ElideRight, room));
        painter.setPen(g.quiet);
        painter.drawText(
            QPointF(left + 3, all.top() - f.header + 1.25 * f.velocity.textSize + metrics.ascent()),
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

void paintBaseline(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    if (!data.baselineValue)
        return;
    const PlotFrame& f = layout.velocity;
    const double at = f.yOf(*data.baselineValue);
    if (data.matters) {
        const double top = f.yOf(*data.baselineValue + *data.matters);
        const double bottom = f.yOf(*data.baselineValue - *data.matters);
        painter.fillRect(QRectF(f.area.left(), top, f.area.width(), bottom - top),
                         look::smallestBrush(f.ground));
    }
    if (const auto lines = aloneLines(f, data)) { // no ground: grey is what matters too little
        painter.setPen(look::smallestPen(f.ground));
        for (const double y : {lines->top, lines->bottom})
            painter.drawLine(QPointF(lines->from, y), QPointF(lines->to, y));
    }
    painter.setPen(look::zeroPen(f.ground));
    painter.drawLine(QPointF(f.area.left(), at), QPointF(f.area.right(), at));
}

void paintTrends(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    painter.setPen(look::changeBandPen(f.ground));
    if (data.trend)
        painter.drawLine(trendLine(f, *data.trend));
    painter.setPen(blockTrendPen(f.ground));
    for (const SeasonTrend& trend : data.blockTrends)
        painter.drawLine(trendLine(f, trend));
}

void paintMeans(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    const PlotFrame& f = layout.velocity;
    for (const auto& mean : data.means)
        if (const auto box = mean ? segmentBox(layout, *mean) : std::nullopt) {
            if (mean->notComparable)
                look::hatch(painter, *box, f.ground);
            paintMean(painter,
                      {.interval = *box,
                       .at = f.yOf(mean->value),
                       .hollow = mean->hollow,
                       .cutAbove = mean->interval && mean->interval->high > f.y.to,
                       .cutBelow = mean->interval && mean->interval->low < f.y.from},
                      f.textSize, f.ground);
        }
}

/// A line's name in the line's colour.
QColor nameColour(SeasonName::Of of, const look::Ground& ground) {
    const bool trend = of == SeasonName::Of::Trend || of == SeasonName::Of::BlockTrend;
    return trend ? look::changeColour(ground) : ground.ink;
}

/// The readings beside their segments and the names, after everything else.
void paintLabels(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    const PlotFrame& f = layout.velocity;
    for (const SeasonLayout::Label& label : layout.labels) {
        const SeasonMean& mean = *data.means[label.mean];
        if (label.apart)
            if (const auto segment = segmentBox(layout, mean)) {
                const double x =
                    std::clamp(segment->center().x(), label.box.left() + 2, label.box.right() - 2);
                painter.setPen(look::smallestPen(f.ground));
                painter.drawLine(QPointF(x, label.box.bottom()),
                                 QPointF(segment->center().x(), f.yOf(mean.value)));
            }
        painter.setFont(charts::chartFont(f.textSize, 0.9));
        charts::paintLabel(painter, label.box.center(), Qt::AlignCenter, mean.label, f.ground,
                           f.ground.ink);
    }
    if (layout.baselineWord) {
        painter.setFont(charts::chartFont(f.textSize, 0.9));
        charts::paintLabel(painter, layout.baselineWord->center(), Qt::AlignCenter,
                           SeasonWords::tr("baseline"), f.ground, f.ground.ink);
    }
    painter.setFont(charts::chartFont(f.textSize, 0.9));
    for (const SeasonName& name : layout.names)
        charts::paintLabel(painter, name.box.center(), Qt::AlignCenter, name.text, f.ground,
                           nameColour(name.of, f.ground));
}

void paintMarks(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    for (const SeasonMark& mark : data.marks)
        paintNotLifted(painter, markAt(layout, mark), 0.35 * layout.velocity.textSize, mark.tried,
                       layout.velocity.ground.ink);
}

void paintVelocities(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    const QColor ink = look::changeColour(f.ground);
    const double r = pointRadius(f.textSize);
    for (const SeasonPoint& p : data.points) {
        if (p.interval) {
            painter.setPen(look::readingPen(f.ground));
            f.paintWhisker(painter, p.day, p.interval->low, p.interval->high);
        }
        if (p.line)
            paintDot(painter, f.at(p.day, *p.line), r, ink, p.hollow ? f.ground.paper : ink);
        for (const double seen : p.seen)
            paintTick(painter, f.at(p.day, seen), r, f.ground.ink);
    }
}

void paintMaxima(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    const PlotFrame& f = layout.oneRm;
    const QColor ink = look::changeColour(f.ground);
    const double r = pointRadius(f.textSize);
    painter.setPen(look::readingPen(f.ground));
    for (const SeasonPoint& p : data.points)
        if (const auto held = shownInterval(p))
            f.paintWhisker(painter, p.day, shownMass(data, held->low), shownMass(data, held->high));
    for (const MaxMark& mark : layout.maxima)
        switch (mark.kind) {
        case MaxMark::Kind::Estimate:
            paintDot(painter, mark.at, r, ink, data.points[mark.point].far ? f.ground.paper : ink);
            break;
        case MaxMark::Kind::Planned: // the whisker is around it, and not around the dot
            paintTick(painter, mark.at, r, ink);
            break;
        case MaxMark::Kind::Measured:
            paintMeasured(painter, mark.at, measuredSize(f.textSize), f.ground);
            break;
        }
}

/// Where a session stands in both frames.
std::vector<QPointF> placesOf(const SeasonLayout& f, const SeasonData& data, std::size_t point) {
    std::vector<QPointF> all;
    const SeasonPoint& p = data.points[point];
    if (p.line)
        all.push_back(f.velocity.at(p.day, *p.line));
    for (const double seen : p.seen)
        all.push_back(f.velocity.at(p.day, seen));
    for (const MaxMark& mark : f.maxima)
        if (mark.point == point && mark.kind != MaxMark::Kind::Planned)
            all.push_back(mark.at);
    return all;
}

void paintRing(QPainter& painter, const SeasonLayout& f, const SeasonData& data,
               const SeasonItem& item) {
    const double textSize = f.velocity.textSize;
    painter.setPen(look::highlightPen(f.velocity.ground));
    painter.setBrush(Qt::NoBrush);
    const auto around = [&](const QPointF& at) {
        painter.drawEllipse(at, 0.65 * textSize, 0.65 * textSize);
    };
    if (item.kind == SeasonItem::Kind::NotLifted && item.index < data.marks.size()) {
        around(markAt(f, data.marks[item.index]));
    } else if (item.kind == SeasonItem::Kind::Block && item.index < data.means.size()) {
        const auto& mean = data.means[item.index];
        if (const auto box = mean ? segmentBox(f, *mean) : std::nullopt)
            painter.drawRect(box->adjusted(-2, -3, 2, 3));
    } else if (item.kind == SeasonItem::Kind::Session && item.index < data.points.size()) {
        const SeasonPoint& p = data.points[item.index];
        if (p.line)
            around(f.velocity.at(p.day, *p.line));
        else if (!p.seen.empty())
            around(f.velocity.at(p.day, p.seen.front()));
        if (p.oneRm && f.showsMax)
            around(f.oneRm.at(p.day, shownMass(data, *p.oneRm)));
    }
}

} // namespace

void paintSeason(QPainter& painter, const QRectF& target, const SeasonData& data,
                 const look::Ground& ground, double textSize,
                 const std::optional<SeasonItem>& ringed) {
    if (data.points.empty()) {
        painter.setFont(charts::chartFont(textSize));
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter, SeasonWords::tr("Nothing to follow yet"));
        return;
    }
    const SeasonLayout f = seasonLayout(target, data, ground, textSize);
    const double side = 0.4 * textSize;
    charts::paintKey(painter, f.key, charts::chartFont(textSize, 0.9),
                     target.adjusted(side, side, -side, 0), ground.ink);
    paintSpans(painter, f, data);
    f.velocity.paintYAxis(painter, data.velocityTitle, u"m/s"_s);
    paintNotComparable(painter, f.velocity, data);
    if (f.showsMax) {
        f.velocity.paintMonths(painter, false);
        f.oneRm.paintMonths(painter, true);
        f.oneRm.paintYAxis(painter, SeasonWords::tr("1RM (%1)").arg(unitName(data.unit)),
                           unitName(data.unit));
        paintNotComparable(painter, f.oneRm, data);
    } else {
        PlotFrame months = f.velocity; // its labels under the days not lifted
        months.area.setBottom(std::max(months.area.bottom(), f.foot.bottom()));
        months.paintMonths(painter, true);
    }
    painter.save();
    painter.setClipRect(f.velocity.area.adjusted(0, -1, textSize, 1));
    paintBaseline(painter, f, data);
    paintMeans(painter, f, data);
    paintTrends(painter, f.velocity, data);
    paintVelocities(painter, f.velocity, data);
    painter.restore();
    paintMarks(painter, f, data);
    f.velocity.paintOutline(painter);
    if (f.showsMax) {
        paintMaxima(painter, f, data);
        f.oneRm.paintOutline(painter);
    }
    paintLabels(painter, f, data);
    if (ringed)
        paintRing(painter, f, data, *ringed);
}

std::optional<SeasonItem> seasonItemAt(const QRectF& target, const SeasonData& data,
                                       double textSize, const QPointF& pos) {
    if (data.points.empty())
        return std::nullopt;
    const SeasonLayout f = seasonLayout(target, data, look::paperGround(), textSize);
    std::optional<SeasonItem> nearest;
    double best = 1.5 * textSize;
    const auto take = [&](SeasonItem::Kind kind, std::size_t i, const QPointF& at) {
        const double away = std::hypot(at.x() - pos.x(), at.y() - pos.y());
        if (away < best) {
            best = away;
            nearest = SeasonItem{kind, i};
        }
    };
    for (std::size_t i = 0; i < data.points.size(); ++i)
        for (const QPointF& at : placesOf(f, data, i))
            take(SeasonItem::Kind::Session, i, at);
    for (std::size_t i = 0; i < data.marks.size(); ++i)
        take(SeasonItem::Kind::NotLifted, i, markAt(f, data.marks[i]));
    if (nearest)
        return nearest;
    for (std::size_t i = 0; i < data.means.size(); ++i)
        if (const auto box = data.means[i] ? segmentBox(f, *data.means[i]) : std::nullopt) {
            const double y = f.velocity.yOf(data.means[i]->value);
            take(SeasonItem::Kind::Block, i, {std::clamp(pos.x(), box->left(), box->right()), y});
        }
    return nearest;
}

} // namespace slopebook::ui
