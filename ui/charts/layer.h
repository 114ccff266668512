// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet over or under the series of a figure, painted by the figure in its own coordinates.
#pragma once

#include <QGraphicsItem>
#include <QPainter>

#include <functional>

namespace slopebook::ui::charts {

class Layer : public QGraphicsItem {
public:
    Layer(QGraphicsItem* parent, double z, std::function<void(QPainter&)> paint)
        : QGraphicsItem(parent), m_paint(std::move(paint)) {
        setZValue(z);
        setAcceptedMouseButtons(Qt::NoButton);
    }
    void setSize(const QSizeF& size) {
        prepareGeometryChange();
        m_size = size;
    }
    QRectF boundingRect() const override { return {QPointF(), m_size}; }
    QPainterPath shape() const override { return {}; } // clicks go through to the points
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* /*option*/,
               QWidget* /*widget*/) override {
        painter->setRenderHint(QPainter::Antialiasing);
        m_paint(*painter);
    }

private:
    QSizeF m_size;
    std::function<void(QPainter&)> m_paint;
};

} // namespace slopebook::ui::charts
