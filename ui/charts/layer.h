// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet over or under the series of a figure, painted by the figure in its own coordinates.
#pragma once

#include <QGraphicsItem>
#include <QPainter>
#include <QPixmap>
#include <QWidget>

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
        if (size == m_size)
            return;
        prepareGeometryChange();
        m_size = size;
        m_picture = {};
    }
    /// In a window it is painted once, and from then on shown as that picture until repaint().
    void keepPicture() { m_keeps = true; }
    void repaint() {
        m_picture = {};
        update();
    }
    QRectF boundingRect() const override { return {QPointF(), m_size}; }
    QPainterPath shape() const override { return {}; } // clicks go through to the points
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* /*option*/,
               QWidget* widget) override {
        // What goes on paper or into a drawing is lines, never a picture of them.
        const bool asPicture = m_keeps && widget && !m_size.isEmpty() &&
                               painter->transform().type() <= QTransform::TxTranslate;
        if (!asPicture) {
            painter->setRenderHint(QPainter::Antialiasing);
            m_paint(*painter);
            return;
        }
        if (m_picture.isNull() || m_picture.devicePixelRatio() != widget->devicePixelRatioF())
            takePicture(widget->devicePixelRatioF());
        painter->drawPixmap(QPointF(), m_picture);
    }

private:
    void takePicture(double pixelsAUnit) {
        m_picture = QPixmap((m_size * pixelsAUnit).toSize());
        m_picture.setDevicePixelRatio(pixelsAUnit);
        m_picture.fill(Qt::transparent);
        QPainter painter(&m_picture);
        painter.setRenderHint(QPainter::Antialiasing);
        m_paint(painter);
    }

    QSizeF m_size;
    bool m_keeps = false;
    QPixmap m_picture;
    std::function<void(QPainter&)> m_paint;
};

} // namespace slopebook::ui::charts
