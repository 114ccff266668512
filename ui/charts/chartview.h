// SPDX-License-Identifier: GPL-3.0-or-later
// A figure in a window: follows the desktop's colours and fonts, and goes out as a picture.
#pragma once

#include "ui/charts/figure.h"

#include <QChartView>
#include <QImage>

namespace slopebook::ui::charts {

class ChartView : public QChartView {
    Q_OBJECT
public:
    explicit ChartView(Figure* figure, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// What a screen reader says: the sentence of the result. The figures stand in a table beside.
    void setSpokenText(const QString& text);

    /// The same chart for paper, laid out afresh at size points. The one way out of the window.
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const;
    /// On white, scale pixels a point.
    QImage picture(const QSizeF& points, double scale) const;
    /// False where the file could not be written.
    bool writePng(const QString& file, const QSizeF& points, double scale = 3) const;
    bool writeSvg(const QString& file, const QSizeF& points, const QString& title) const;
    void copyToClipboard(const QSizeF& points) const;

protected:
    void changeEvent(QEvent* event) override;
    /// Copy the picture, or save it as PNG or SVG.
    void contextMenuEvent(QContextMenuEvent* event) override;
    virtual std::unique_ptr<Figure> paperFigure() const = 0;

private:
    void followDesktop();
    void savePicture(bool vectors);
    Figure* m_figure;
};

/// Sizes for paper, in points.
constexpr double paperTextSize = 8;

} // namespace slopebook::ui::charts
