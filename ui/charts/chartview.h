// SPDX-License-Identifier: GPL-3.0-or-later
// A figure in a window: follows the desktop's colours and fonts, and goes out as every chart does.
#pragma once

#include "ui/charts/chartout.h"
#include "ui/charts/figure.h"

#include <QChartView>

namespace slopebook::ui::charts {

class ChartMenu;

class ChartView : public QChartView, public ChartOut {
    Q_OBJECT
public:
    explicit ChartView(Figure* figure, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// What a screen reader says: the sentence of the result; the figures follow it.
    void setSpokenText(const QString& text);
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;
    /// What was changed is on the screen when this returns, before anything else is laid out.
    void drawNow();

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    virtual std::unique_ptr<Figure> paperFigure() const = 0;
    /// After the data have changed.
    void describe();

private:
    void followDesktop();
    Figure* m_figure;
    ChartMenu* m_menu;
};

} // namespace slopebook::ui::charts
