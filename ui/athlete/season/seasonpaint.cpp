// SPDX-License-Identifier: GPL-3.0-or-later
// How the season is painted, on the screen and on paper.
#include "ui/athlete/season/seasonchart.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/charts/figure.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

constexpr double besideNewest = 10; // of the width

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
    if (data.detectable) { // lines, no ground: grey is what matters too little
        const double top = f.yOf(*data.baselineValue + *data.detectable);
        const double bottom = f.yOf(*data.baselineValue - *data.detectable);
        painter.setPen(look::smallestPen(f.ground));
        // The newest day's alone, and so beside it alone.
        const auto newest = std::ranges::max_element(data.points, {}, &SeasonPoint::day);
        const double from =
            newest == data.points.end() ? 0 : f.x(newest->day) - f.area.width() / besideNewest;
        for (const double y : {top, bottom})
            painter.drawLine(QPointF(std::max(from, f.area.left()), y), QPointF(f.area.right(), y));
    }
    painter.setPen(look::zeroPen(f.ground));
    painter.drawLine(QPointF(f.area.left(), at), QPointF(f.area.right(), at));
}

void paintTrends(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    painter.setPen(look::changeBandPen(f.ground));
    const auto draw = [&](const SeasonTrend& trend) {
        const double weeks = (trend.last - trend.day) / 7;
        painter.drawLine(f.at(trend.day, trend.value),
                         f.at(trend.last, trend.value + weeks * trend.perWeek));
    };
    if (data.trend)
        draw(*data.trend);
    painter.setPen(blockTrendPen(f.ground));
    for (const SeasonTrend& trend : data.blockTrends)
        draw(trend);
}

void paintMeans(QPainter& painter, const SeasonLayout& layout, const SeasonData& data) {
    const PlotFrame& f = layout.velocity;
    for (const auto& mean : data.means)
        if (const auto box = mean ? segmentBox(layout, *mean) : std::nullopt) {
            if (mean->notComparable)
                look::hatch(painter, *box, f.ground);
            paintMean(painter, *box, f.yOf(mean->value), mean->hollow, f.ground);
        }
}

/// The readings beside their segments, after everything else.
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

void paintMaxima(QPainter& painter, const PlotFrame& f, const SeasonData& data) {
    const QColor ink = look::changeColour(f.ground);
    const double r = pointRadius(f.textSize);
    for (const SeasonPoint& p : data.points) {
        if (const auto& held = p.oneRmToPlan ? p.oneRmToPlan : p.oneRmInterval) {
            painter.setPen(look::readingPen(f.ground));
            f.paintWhisker(painter, p.day, shownMass(data, held->low), shownMass(data, held->high));
        }
        if (p.oneRmToPlan && p.oneRmInterval) {
            const double low =
                std::min(f.yOf(shownMass(data, p.oneRmInterval->low)), f.area.bottom());
            const double high =
                std::max(f.yOf(shownMass(data, p.oneRmInterval->high)), f.area.top());
            painter.setPen(lineAlonePen(f.ground));
            if (low > high)
                painter.drawLine(QPointF(f.x(p.day), low), QPointF(f.x(p.day), high));
        }
        if (p.plannedApart()) // the thin whisker is around it, and not around the dot
            paintTick(painter, f.at(p.day, shownMass(data, *p.oneRmPlanned)), r, ink);
        if (p.oneRm)
            paintDot(painter, f.at(p.day, shownMass(data, *p.oneRm)), r, ink,
                     p.far ? f.ground.paper : ink);
        if (p.measured)
            paintMeasured(painter, f.at(p.day, shownMass(data, *p.measured)), 0.8 * f.textSize,
                          f.ground);
    }
}

/// Where a session stands in both frames.
std::vector<QPointF> placesOf(const SeasonLayout& f, const SeasonData& data, const SeasonPoint& p) {
    std::vector<QPointF> all;
    if (p.line)
        all.push_back(f.velocity.at(p.day, *p.line));
    for (const double seen : p.seen)
        all.push_back(f.velocity.at(p.day, seen));
    if (!f.showsMax)
        return all;
    if (p.oneRm)
        all.push_back(f.oneRm.at(p.day, shownMass(data, *p.oneRm)));
    if (p.measured)
        all.push_back(f.oneRm.at(p.day, shownMass(data, *p.measured)));
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
    paintLabels(painter, f, data);
    paintMarks(painter, f, data);
    f.velocity.paintOutline(painter);
    if (f.showsMax) {
        paintMaxima(painter, f.oneRm, data);
        f.oneRm.paintOutline(painter);
    }
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
        for (const QPointF& at : placesOf(f, data, data.points[i]))
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
