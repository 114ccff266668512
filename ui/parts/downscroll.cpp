// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/downscroll.h"

#include <QEvent>
#include <QScrollBar>

namespace slopebook::ui {

void holdInside(QScrollArea& area, QWidget* inside) {
    area.setWidget(inside);
    area.setWidgetResizable(true);
    area.setFrameShape(QFrame::NoFrame);
    area.viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);
}

void holdDownwards(QScrollArea& area, QWidget* inside) {
    holdInside(area, inside);
    area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

DownScroll::DownScroll(QWidget* inside) {
    holdDownwards(*this, inside);
}

QSize DownScroll::minimumSizeHint() const {
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            QScrollArea::minimumSizeHint().height()};
}

bool DownScroll::event(QEvent* event) {
    const bool taken = QScrollArea::event(event);
    if (event->type() == QEvent::LayoutRequest)
        updateGeometry();
    return taken;
}

} // namespace slopebook::ui
