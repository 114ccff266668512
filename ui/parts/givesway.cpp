// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/givesway.h"

#include <QResizeEvent>

namespace slopebook::ui {

GivesWay::GivesWay(QWidget* inside, int lines) : m_lines(lines) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    viewport()->setAutoFillBackground(false);
    setWidget(inside);
    inside->setAutoFillBackground(false);
}

QSize GivesWay::sizeHint() const {
    const QSize whole = widget()->sizeHint();
    const int wide = width() > 0 && testAttribute(Qt::WA_WState_Created) ? width() : whole.width();
    return {whole.width(),
            widget()->hasHeightForWidth() ? widget()->heightForWidth(wide) : whole.height()};
}

QSize GivesWay::minimumSizeHint() const {
    const int lines = m_lines * fontMetrics().lineSpacing();
    return {widget()->minimumSizeHint().width(), std::min(lines, sizeHint().height())};
}

// As high as it is whole and no higher: what is over is the picture's.
void GivesWay::fit() {
    const int whole = std::max(1, sizeHint().height());
    if (whole == maximumHeight())
        return;
    setMaximumHeight(whole);
    updateGeometry();
}

void GivesWay::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        fit();
}

bool GivesWay::event(QEvent* event) {
    const bool taken = QScrollArea::event(event);
    if (event->type() == QEvent::LayoutRequest)
        fit();
    return taken;
}

} // namespace slopebook::ui
