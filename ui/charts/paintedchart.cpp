// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/paintedchart.h"

#include <QEvent>
#include <QFontInfo>
#include <QPainter>

namespace slopebook::ui::charts {

PaintedChart::PaintedChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::NoFocus); // its figures are in a table, which has the focus
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

double PaintedChart::textSize() const {
    return QFontInfo(font()).pixelSize();
}

void PaintedChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const look::Ground ground = look::screenGround(palette());
    painter.fillRect(rect(), ground.paper);
    paintChart(painter, rect(), ground, textSize());
}

void PaintedChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::StyleChange)
        update();
}

} // namespace slopebook::ui::charts
