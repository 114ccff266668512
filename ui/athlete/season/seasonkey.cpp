// SPDX-License-Identifier: GPL-3.0-or-later
// The marks of the season's chart, and its key.
#include "core/answers/readingwords.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QPainterPath>

#include <algorithm>

namespace slopebook::ui {

void paintDot(QPainter& painter, const QPointF& at, double radius, const QColor& ink,
              const QColor& fill) {
    painter.setPen(QPen(ink, std::max(0.6, radius / 3)));
    painter.setBrush(fill);
    painter.drawEllipse(at, radius, radius);
}

void paintTick(QPainter& painter, const QPointF& at, double reach, const QColor& ink) {
    painter.setPen(QPen(ink, std::max(1.0, reach / 2.2)));
    painter.drawLine(at + QPointF(-reach, 0), at + QPointF(reach, 0));
}

void paintNotLifted(QPainter& painter, const QPointF& at, double reach, bool tried,
                    const QColor& ink) {
    painter.setPen(QPen(ink, std::max(0.7, reach / 2.5)));
    painter.setBrush(Qt::NoBrush);
    if (tried)
        painter.drawLine(at + QPointF(-reach, -reach), at + QPointF(reach, reach));
    else
        painter.drawEllipse(at, reach, reach);
    painter.drawLine(at + QPointF(-reach, reach), at + QPointF(reach, -reach));
}

void paintMeasured(QPainter& painter, const QPointF& at, double size, const look::Ground& g) {
    painter.save();
    painter.translate(at);
    painter.setPen(QPen(g.ink, g.print ? 0.7 : 1.2));
    painter.setBrush(g.ink);
    painter.drawPath(look::markerPath(QScatterSeries::MarkerShapeRotatedRectangle, size));
    painter.restore();
}

QPen lineAlonePen(const look::Ground& ground) {
    QPen pen = look::readingPen(ground);
    pen.setWidthF(2.6 * pen.widthF());
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

QPen blockTrendPen(const look::Ground& ground) {
    return {look::changeColour(ground), ground.print ? 0.7 : 1.2};
}

void paintMean(QPainter& painter, const QRectF& interval, double at, bool hollow,
               const look::Ground& ground) {
    painter.setPen(ground.print ? QPen(ground.quiet, 0.4) : QPen(look::changeColour(ground), 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(interval);
    QPen mean = hollow ? look::changeBeyondPen(ground) : look::changePen(ground);
    mean.setWidthF(1.4 * mean.widthF());
    mean.setCapStyle(Qt::FlatCap);
    painter.setPen(mean);
    painter.drawLine(QPointF(interval.left(), at), QPointF(interval.right(), at));
}

std::vector<charts::KeyEntry> seasonKey(const SeasonData& data, const look::Ground& ground) {
    const look::Ground g = ground;
    const QColor ink = look::changeColour(g);
    std::vector<charts::KeyEntry> key{
        {SeasonWords::tr("from the line, %1").arg(levelText(data.level)),
         [g, ink](QPainter& p, const QRectF& box) {
             p.setPen(look::readingPen(g));
             p.drawLine(QPointF(box.center().x(), box.top()),
                        QPointF(box.center().x(), box.bottom()));
             paintDot(p, box.center(), box.height() / 5, ink, ink);
         }}};
    const auto any = [&](auto is) { return std::ranges::any_of(data.points, is); };
    if (std::ranges::any_of(data.means, [](const auto& mean) { return mean.has_value(); }))
        key.push_back({SeasonWords::tr("mean of a block, %1").arg(levelText(data.level)),
                       [g](QPainter& p, const QRectF& box) {
                           paintMean(p, box.adjusted(2, 2, -2, -2), box.center().y(), false, g);
                       }});
    for (const bool tried : {true, false})
        if (std::ranges::any_of(data.marks,
                                [&](const SeasonMark& mark) { return mark.tried == tried; }))
            key.push_back({tried ? SeasonWords::tr("not lifted") : SeasonWords::tr("not possible"),
                           [g, tried](QPainter& p, const QRectF& box) {
                               paintNotLifted(p, box.center(), box.height() / 4, tried, g.ink);
                           }});
    if (any([](const SeasonPoint& p) { return p.notComparable; }))
        key.push_back(charts::notComparableKey(g));
    key.push_back({SeasonWords::tr("seen at the load"), [g](QPainter& p, const QRectF& box) {
                       paintTick(p, box.center(), box.height() / 4, g.ink);
                   }});
    if (any([](const SeasonPoint& p) { return p.hollow || p.far; }))
        key.push_back({SeasonWords::tr("extrapolated; 1RM: reach below 0.80"),
                       [g, ink](QPainter& p, const QRectF& box) {
                           paintDot(p, box.center(), box.height() / 5, ink, g.paper);
                       }});
    if (data.matters)
        key.push_back(charts::tooSmallKey(g, number(*data.matters, 3) + QStringLiteral(" m/s")));
    if (data.detectable)
        key.push_back(
            {SeasonWords::tr("dashed, at the newest day: alone it is clear from ±%1 m/s")
                 .arg(said(answers::clearFrom(*data.detectable, answers::saidSpeedDecimals))),
             [g](QPainter& p, const QRectF& box) {
                 p.setPen(look::smallestPen(g));
                 for (const double y :
                      {box.top() + box.height() / 4, box.bottom() - box.height() / 4})
                     p.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
             }});
    const auto line = [&](const QString& words, const QPen& pen) {
        key.push_back({words, [pen](QPainter& p, const QRectF& box) {
                           p.setPen(pen);
                           p.drawLine(QPointF(box.left(), box.center().y()),
                                      QPointF(box.right(), box.center().y()));
                       }});
    };
    if (data.trend)
        line(SeasonWords::tr("trend"), look::changeBandPen(g));
    if (!data.blockTrends.empty())
        line(SeasonWords::tr("trend within a block"), blockTrendPen(g));
    if (any([](const SeasonPoint& p) { return p.oneRmToPlan && p.oneRmInterval; }))
        key.push_back({SeasonWords::tr("1RM: thin to plan with, thick line alone"),
                       [g](QPainter& p, const QRectF& box) {
                           const double x = box.center().x();
                           p.setPen(look::readingPen(g));
                           p.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
                           p.setPen(lineAlonePen(g));
                           p.drawLine(QPointF(x, box.top() + box.height() / 4),
                                      QPointF(x, box.bottom() - box.height() / 4));
                       }});
    if (any([](const SeasonPoint& p) { return p.plannedApart(); }))
        key.push_back({SeasonWords::tr("to plan with by the log\u2019s maxima"),
                       [g, ink](QPainter& p, const QRectF& box) {
                           const double x = box.center().x();
                           p.setPen(look::readingPen(g));
                           p.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
                           paintTick(p, box.center(), box.height() / 4, ink);
                       }});
    if (any([](const SeasonPoint& p) { return p.measured.has_value(); }))
        key.push_back({SeasonWords::tr("measured 1RM"), [g](QPainter& p, const QRectF& box) {
                           paintMeasured(p, box.center(), box.height() / 1.8, g);
                       }});
    return key;
}

} // namespace slopebook::ui
