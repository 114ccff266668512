// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixheads.h"

#include "ui/parts/fingers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

MatrixPen penOf(const QWidget& widget) {
    return matrixPen(look::screenGround(widget.palette()), widget.font());
}

MatrixHead::MatrixHead(Qt::Orientation orientation, const MatrixModel& model, QWidget* parent)
    : QHeaderView(orientation, parent), m_model(model) {
    setHighlightSections(false);
    setSectionsClickable(false);
    setSectionResizeMode(QHeaderView::Fixed);
    setMinimumSectionSize(0);
}

QSize MatrixHead::sizeHint() const {
    const MatrixPen pen = penOf(*this);
    if (orientation() == Qt::Horizontal) {
        const int least = fingersFit() ? fingerSize : 0;
        return {QHeaderView::sizeHint().width(),
                std::max(static_cast<int>(matrixHeadHeight(m_model.figure(), pen)), least)};
    }
    const int wanted = static_cast<int>(std::ceil(measureWidth(m_model.figure(), pen)));
    return {std::min(wanted, m_most), QHeaderView::sizeHint().height()};
}

void MatrixHead::paintSection(QPainter* painter, const QRect& area, int section) const {
    const MatrixFigure& figure = m_model.figure();
    const auto at = static_cast<std::size_t>(section);
    const MatrixPen pen = penOf(*this);
    painter->save();
    painter->setClipRect(area);
    painter->fillRect(area, pen.ground.paper);
    const bool cut = area.top() > 0 && area.bottom() >= viewport()->height();
    if (orientation() == Qt::Vertical && cut) { // as its row is
        painter->restore();
        return;
    }
    if (orientation() == Qt::Horizontal && at < figure.blocks.size()) {
        paintBlockHead(*painter, area, figure, at, pen);
        painter->fillRect(QRectF(area.left(), area.bottom(), area.width(), 1), pen.ground.quiet);
    } else if (orientation() == Qt::Vertical && at < figure.measures.size()) {
        paintMeasure(*painter, area, figure.measures[at], pen);
        if (figure.measures[at].firstOfKind)
            painter->fillRect(QRectF(area.left(), area.top(), area.width(), 1), pen.ground.grid);
    }
    painter->restore();
}

} // namespace slopebook::ui
