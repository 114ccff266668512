// SPDX-License-Identifier: GPL-3.0-or-later
// The heads of a season's matrix in the window: blocks above, measures at the left, both in sight
// whatever is scrolled.
#pragma once

#include "ui/athlete/overview/matrixmodel.h"
#include "ui/athlete/overview/matrixpaint.h"

#include <QHeaderView>

namespace slopebook::ui {

/// What paints in a widget: its own font and palette.
MatrixPen penOf(const QWidget& widget);

class MatrixHead final : public QHeaderView {
    Q_OBJECT
public:
    MatrixHead(Qt::Orientation orientation, const MatrixModel& model, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    /// Measures get no more than this, for a narrow window.
    void setMost(int width) { m_most = width; }

protected:
    void paintSection(QPainter* painter, const QRect& area, int section) const override;

private:
    const MatrixModel& m_model;
    int m_most = 400;
};

} // namespace slopebook::ui
