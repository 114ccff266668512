// SPDX-License-Identifier: GPL-3.0-or-later
// A chart in a window that is painted by a function which also serves paper.
#pragma once

#include "ui/charts/look.h"

#include <QWidget>

namespace slopebook::ui::charts {

class PaintedChart : public QWidget {
    Q_OBJECT
public:
    explicit PaintedChart(QWidget* parent = nullptr);

    QSize sizeHint() const override { return {640, 400}; }
    QSize minimumSizeHint() const override { return {260, 170}; }
    /// What a screen reader says: the sentence of the result. The figures stand in a table beside.
    void setSpokenText(const QString& text) { setAccessibleName(text); }

protected:
    /// Ordinary text's height in pixels.
    double textSize() const;
    virtual void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                            double textSize) = 0;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
};

} // namespace slopebook::ui::charts
