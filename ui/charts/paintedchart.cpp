// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/paintedchart.h"

#include "ui/charts/chartmenu.h"

#include <QEvent>
#include <QFontInfo>
#include <QPainter>

namespace slopebook::ui::charts {

PaintedChart::PaintedChart(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_menu = new ChartMenu(this, *this);
}

double PaintedChart::textSize() const {
    return QFontInfo(font()).pixelSize();
}

void PaintedChart::setSpokenText(const QString& text) {
    m_menu->setSpoken(text);
}

void PaintedChart::leaveKeys() {
    m_menu->leaveKeys();
}

void PaintedChart::describe() {
    m_menu->dataChanged();
}

void PaintedChart::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    painter.save();
    painter.translate(target.topLeft());
    painter.scale(target.width() / points.width(), target.height() / points.height());
    paintChart(painter, QRectF(QPointF(), points), look::paperGround(), paperTextSize, false);
    painter.restore();
}

void PaintedChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const look::Ground ground = look::screenGround(palette());
    painter.fillRect(rect(), ground.paper);
    paintChart(painter, rect(), ground, textSize(), true);
    if (hasFocus())
        look::paintFocus(painter, rect(), palette());
}

void PaintedChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::StyleChange)
        update();
}

} // namespace slopebook::ui::charts
