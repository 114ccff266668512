// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/downscroll.h"

#include <QEvent>
#include <QScrollBar>

namespace slopebook::ui {

DownScroll::DownScroll(QWidget* inside) {
    setWidget(inside);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);
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
