// SPDX-License-Identifier: GPL-3.0-or-later
// The marks of the season's chart, and its key.
#include "core/answers/readingwords.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/charts/whisker.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QPainterPath>

#include <algorithm>
#include <functional>
#include <initializer_list>

namespace slopebook::ui {

void paintDot(QPainter& painter, const QPointF& at, double radius, const QColor& ink,
              const QColor& fill) {
    painter.setPen(QPen(ink, std::max(0.6, radius / 3)));
    painter.setBrush(fill);
    painter.drawEllipse(at, radius, radius);
}

void paintTick(QPainter& painter, const QPointF& at, double reach, const QColor& ink) {
    painter.setPen(QPen(ink, tickWidth(reach)));
    painter.drawLine(at + QPointF(-reach, 0), at + QPointF(reach, 0));
}

double tickWidth(double reach) {
    return std::max(1.0, reach / 2.2);
}

double measuredSize(double textSize) {
    return 0.8 * textSize;
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

QPen blockTrendPen(const look::Ground& ground) {
    return {look::changeColour(ground), ground.print ? 0.7 : 1.2};
}

void paintMean(QPainter& painter, const MeanBox& mean, double textSize,
               const look::Ground& ground) {
    const QRectF& box = mean.interval;
    painter.setPen(ground.print ? QPen(ground.quiet, 0.4) : QPen(look::changeColour(ground), 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(box.topLeft(), box.bottomLeft());
    painter.drawLine(box.topRight(), box.bottomRight());
    const auto end = [&](double y, double outward, bool cut) {
        if (!cut)
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        else
            for (const double x : {box.left(), box.right()})
                charts::paintWhiskerEnd(painter, {x, y}, {0, outward}, 0.3 * textSize, true);
    };
    end(box.top(), -1, mean.cutAbove);
    end(box.bottom(), 1, mean.cutBelow);
    QPen line = mean.hollow ? look::changeBeyondPen(ground) : look::changePen(ground);
    line.setWidthF(1.4 * line.widthF());
    line.setCapStyle(Qt::FlatCap);
    painter.setPen(line);
    painter.drawLine(QPointF(box.left(), mean.at), QPointF(box.right(), mean.at));
}

namespace {

bool mattersAround(const SeasonData& data) {
    return data.matters && data.baselineValue;
}

QString mattersAmount(double speed) {
    return number(speed, 3) + QStringLiteral(" m/s");
}

using Sample = std::function<void(QPainter&, const QRectF&)>;

Sample lineSample(const QPen& pen) {
    return [pen](QPainter& p, const QRectF& box) {
        p.setPen(pen);
        p.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
    };
}

Sample whiskerSample(const look::Ground& g, const std::function<void(QPainter&, QRectF)>& mark) {
    return [g, mark](QPainter& p, const QRectF& box) {
        p.setPen(look::readingPen(g));
        p.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()));
        mark(p, box);
    };
}

Sample dotSample(const QColor& ink, const QColor& fill) {
    return [ink, fill](QPainter& p, const QRectF& box) {
        paintDot(p, box.center(), box.height() / 5, ink, fill);
    };
}

/// What stands in the key only where it has no word in the chart.
charts::KeyEntry unnamedEntry(SeasonName::Of of, const SeasonData& data, const look::Ground& g) {
    const QColor ink = look::changeColour(g);
    switch (of) {
    case SeasonName::Of::Alone:
        return {SeasonWords::tr("dashed, at the newest day: alone it is clear from \u00b1%1 m/s")
                    .arg(said(answers::clearFrom(*data.detectable, answers::saidSpeedDecimals))),
                [g](QPainter& p, const QRectF& box) {
                    p.setPen(look::smallestPen(g));
                    for (const double y :
                         {box.top() + box.height() / 4, box.bottom() - box.height() / 4})
                        p.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
                }};
    case SeasonName::Of::Trend:
        return {SeasonWords::tr("trend"), lineSample(look::changeBandPen(g))};
    case SeasonName::Of::BlockTrend:
        return {SeasonWords::tr("trend within a block"), lineSample(blockTrendPen(g))};
    case SeasonName::Of::NotLifted:
    case SeasonName::Of::NotPossible: {
        const bool tried = of == SeasonName::Of::NotLifted;
        return {tried ? SeasonWords::tr("not lifted") : SeasonWords::tr("not possible"),
                [g, tried](QPainter& p, const QRectF& box) {
                    paintNotLifted(p, box.center(), box.height() / 4, tried, g.ink);
                }};
    }
    case SeasonName::Of::Measured:
        return {SeasonWords::tr("measured 1RM"), [g](QPainter& p, const QRectF& box) {
                    paintMeasured(p, box.center(), box.height() / 1.8, g);
                }};
    case SeasonName::Of::Far:
        return {SeasonWords::tr("1RM: reach below 0.80"), dotSample(ink, g.paper)};
    case SeasonName::Of::ToPlan: // in the chart of the maxima, or nowhere
    case SeasonName::Of::Planned:
        break;
    case SeasonName::Of::Matters:
        return charts::tooSmallKey(g, mattersAmount(*data.matters));
    case SeasonName::Of::Seen:
        return {SeasonWords::tr("seen at the load"), [g](QPainter& p, const QRectF& box) {
                    paintTick(p, box.center(), box.height() / 4, g.ink);
                }};
    }
    return {};
}

} // namespace

QString mattersText(const SeasonData& data) {
    return charts::tooSmallKey({}, mattersAmount(*data.matters)).text;
}

std::vector<charts::KeyEntry> seasonKey(const SeasonData& data, const look::Ground& ground,
                                        const std::set<SeasonName::Of>& unnamed) {
    const look::Ground g = ground;
    const QColor ink = look::changeColour(g);
    std::vector<charts::KeyEntry> key{
        {SeasonWords::tr("from the line, %1").arg(levelText(data.level)),
         whiskerSample(g, dotSample(ink, ink))}};
    const auto any = [&](auto is) { return std::ranges::any_of(data.points, is); };
    const auto add = [&](std::initializer_list<SeasonName::Of> all) {
        for (const SeasonName::Of of : all)
            if (unnamed.contains(of) && (of != SeasonName::Of::Matters || mattersAround(data)))
                key.push_back(unnamedEntry(of, data, g));
    };
    if (std::ranges::any_of(data.means, [](const auto& mean) { return mean.has_value(); }))
        key.push_back({SeasonWords::tr("mean of a block, %1").arg(levelText(data.level)),
                       [g](QPainter& p, const QRectF& box) {
                           paintMean(
                               p, {.interval = box.adjusted(2, 2, -2, -2), .at = box.center().y()},
                               box.height(), g);
                       }});
    add({SeasonName::Of::NotLifted, SeasonName::Of::NotPossible});
    if (any([](const SeasonPoint& p) { return p.notComparable; }))
        key.push_back(charts::notComparableKey(g));
    add({SeasonName::Of::Seen});
    // Hollow in both charts is one entry, unless the maxima's has its words.
    const bool far = unnamed.contains(SeasonName::Of::Far);
    if (any([](const SeasonPoint& p) { return p.hollow && p.line; }))
        key.push_back({far ? SeasonWords::tr("extrapolated; 1RM: reach below 0.80")
                           : SeasonWords::tr("extrapolated"),
                       dotSample(ink, g.paper)});
    else
        add({SeasonName::Of::Far});
    // What comes last is told by the sentences over the chart, too.
    add({SeasonName::Of::Measured, SeasonName::Of::Matters, SeasonName::Of::Alone,
         SeasonName::Of::Trend, SeasonName::Of::BlockTrend});
    return key;
}

} // namespace slopebook::ui
