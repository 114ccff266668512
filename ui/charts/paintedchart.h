// SPDX-License-Identifier: GPL-3.0-or-later
// A chart in a window that is painted by a function which also serves paper.
#pragma once

#include "ui/charts/chartout.h"
#include "ui/charts/look.h"

#include <QWidget>

namespace slopebook::ui::charts {

class ChartMenu;

class PaintedChart : public QWidget, public ChartOut {
    Q_OBJECT
public:
    explicit PaintedChart(QWidget* parent = nullptr);

    QSize sizeHint() const override { return {640, 400}; }
    QSize minimumSizeHint() const override { return {260, 170}; }
    /// What a screen reader says: the sentence of the result; the figures follow it.
    void setSpokenText(const QString& text);
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;

protected:
    /// Ordinary text's height in pixels.
    double textSize() const;
    /// onScreen: with what is picked in the window.
    virtual void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                            double textSize, bool onScreen) const = 0;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    /// After the data have changed.
    void describe();
    /// The chart's own keys go through what it shows.
    void leaveKeys();

private:
    ChartMenu* m_menu;
};

} // namespace slopebook::ui::charts
