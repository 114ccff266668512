// SPDX-License-Identifier: GPL-3.0-or-later
// Where labels may stand in a figure: over no point and over no other label.
#pragma once

#include <QRectF>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace slopebook::ui::charts {

class LabelRoom {
public:
    /// area: that labels stay within. reach: of a point about its middle.
    LabelRoom(const QRectF& area, double reach) : m_area(area), m_reach(reach) {}

    void take(const QRectF& box) { m_taken.push_back(box); }
    void takePoint(const QPointF& at) {
        m_taken.emplace_back(at.x() - m_reach, at.y() - m_reach, 2 * m_reach, 2 * m_reach);
    }
    bool isFree(const QRectF& box) const {
        return m_area.contains(box) && std::ranges::none_of(m_taken, [&box](const QRectF& one) {
                   return one.intersects(box);
               });
    }
    /// The first of the boxes that is free, which is taken with that.
    std::optional<std::size_t> place(const std::vector<QRectF>& boxes) {
        for (std::size_t i = 0; i < boxes.size(); ++i)
            if (isFree(boxes[i])) {
                take(boxes[i]);
                return i;
            }
        return std::nullopt;
    }

private:
    QRectF m_area;
    double m_reach;
    std::vector<QRectF> m_taken;
};

} // namespace slopebook::ui::charts
