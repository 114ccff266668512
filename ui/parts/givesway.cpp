// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/givesway.h"

#include <QLabel>
#include <QResizeEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {
/// px: so much of it, and no more than room, that no line of its words is cut through.
int wholeLines(const QWidget& words, int room) {
    int end = 0;
    for (const QLabel* label : words.findChildren<QLabel*>()) {
        if (!label->isVisibleTo(&words) || label->text().isEmpty())
            continue;
        const int top = label->mapTo(&words, QPoint()).y();
        const double lines =
            std::max(1.0, std::round(double(label->height()) / label->fontMetrics().lineSpacing()));
        const double each = label->height() / lines;
        const double seen = std::clamp(std::floor((room - top) / each + 1e-6), 0.0, lines);
        if (seen > 0)
            end = std::max(end, top + int(std::ceil(seen * each)));
    }
    return end > 0 ? std::min(end, room) : room;
}
} // namespace

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
    const int all = std::max(1, sizeHint().height());
    if (all != maximumHeight()) {
        setMaximumHeight(all);
        updateGeometry();
    }
    const int below = height() < all ? height() - wholeLines(*widget(), height()) : 0;
    if (below != viewportMargins().bottom())
        setViewportMargins(0, 0, 0, below);
    verticalScrollBar()->setSingleStep(fontMetrics().lineSpacing());
}

void GivesWay::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    fit();
}

bool GivesWay::event(QEvent* event) {
    const bool taken = QScrollArea::event(event);
    if (event->type() == QEvent::LayoutRequest)
        fit();
    return taken;
}

} // namespace slopebook::ui
