// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadmarks.h"

#include <algorithm>

namespace slopebook::ui {

void paintChangeDot(QPainter& painter, const QPointF& at, double half, const look::Ground& ground,
                    bool hollow) {
    painter.setPen(look::readingPen(ground));
    painter.setBrush(hollow ? ground.paper : ground.ink);
    painter.drawEllipse(at, half, half);
}

void paintDiamond(QPainter& painter, const QPointF& at, double half, const look::Ground& ground,
                  bool filled) {
    QPen thin = look::readingPen(ground); // or its corners are round on paper, as a dot is
    thin.setWidthF(std::min(0.25 * half, thin.widthF()));
    thin.setJoinStyle(Qt::MiterJoin);
    painter.setPen(thin);
    painter.setBrush(filled ? ground.ink : ground.paper);
    painter.drawPolygon(QPolygonF{{at.x() - half, at.y()},
                                  {at.x(), at.y() - half},
                                  {at.x() + half, at.y()},
                                  {at.x(), at.y() + half}});
}

std::vector<charts::KeyEntry> squadForestKey(const SquadForest& data, const look::Ground& g,
                                             double textSize) {
    std::vector<charts::KeyEntry> key{
        {SquadForestWords::tr("later − earlier, %1").arg(levelText(data.level)),
         [g, textSize](QPainter& p, const QRectF& box) {
             p.setPen(look::readingPen(g));
             p.drawLine(QPointF(box.left(), box.center().y()),
                        QPointF(box.right(), box.center().y()));
             paintChangeDot(p, box.center(), dotReach * textSize, g, false);
         }}};
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.drawn.has_value(); }))
        key.push_back({SquadForestWords::tr("the same drawn to all"),
                       [g, textSize](QPainter& p, const QRectF& box) {
                           paintDiamond(p, box.center(), drawnReach * textSize, g, false);
                       }});
    if (data.all)
        key.push_back(
            {SquadForestWords::tr("mean of all"), [g, textSize](QPainter& p, const QRectF& box) {
                 paintDiamond(p, box.center(), allReach * textSize, g, true);
             }});
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.change && r.smallest; }))
        key.push_back(charts::tooSmallKey(g));
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.change && r.hollow; }))
        key.push_back(
            {SquadForestWords::tr("extrapolated"), [g, textSize](QPainter& p, const QRectF& box) {
                 p.setPen(look::readingPen(g));
                 p.drawLine(QPointF(box.left(), box.center().y()),
                            QPointF(box.right(), box.center().y()));
                 paintChangeDot(p, box.center(), dotReach * textSize, g, true);
             }});
    if (std::ranges::any_of(data.rows, &SquadForestRow::notComparable))
        key.push_back(charts::notComparableKey(g));
    return key;
}

} // namespace slopebook::ui
