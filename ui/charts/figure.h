// SPDX-License-Identifier: GPL-3.0-or-later
// What all charts share: two value axes, a ground to be drawn on, and a layer under and one over
// the series for what Qt Charts cannot draw. The same figure stands in a window and on paper.
#pragma once

#include "ui/charts/look.h"
#include "ui/charts/scale.h"

#include <QChart>
#include <QValueAxis>

#include <memory>
#include <optional>
#include <utility>

namespace slopebook::ui::charts {

class Layer;

class Figure : public QChart {
    Q_OBJECT
public:
    Figure();
    ~Figure() override;

    void setGround(const look::Ground& ground);
    const look::Ground& ground() const { return m_ground; }
    /// Height of ordinary text in the figure's own units (pixels on screen, points on paper).
    void setTextSize(double size);
    double textSize() const { return m_textSize; }

    /// Paints the figure as it is into target, laid out at size units: points for paper.
    void paintInto(QPainter& painter, const QRectF& target, const QSizeF& size);

    QPointF toPosition(double x, double y) const;
    QRectF plot() const { return plotArea(); }
    const QValueAxis& xAxis() const { return *m_x; }
    const QValueAxis& yAxis() const { return *m_y; }

protected:
    /// Pens and brushes of the series for the current ground.
    virtual void dress() = 0;
    virtual void paintUnder(QPainter& painter) = 0;
    virtual void paintOver(QPainter& painter) = 0;

    /// Whether they were others before.
    bool setScales(const Scale& x, const Scale& y);
    /// y stands upright above its axis, or its unit alone where the figure is narrow.
    void setTitles(const QString& x, const QString& y);
    /// Height over the plot that the title of the upright axis takes.
    double titleRoom() const;
    void join(QAbstractSeries* series);
    virtual void repaintLayers();
    QFont textFont(double scale = 1, bool bold = false) const;
    double unit() const { return m_textSize / 12; } ///< one pixel at ordinary text

private:
    void dressFrame();
    void paintTitle(QPainter& painter) const;

    QValueAxis* m_x;
    QValueAxis* m_y;
    std::optional<std::pair<Scale, Scale>> m_scales;
    std::unique_ptr<Layer> m_under, m_over;
    look::Ground m_ground = look::paperGround();
    double m_textSize = 12;
};

/// Text with a halo of the ground's colour, so that it is read over lines. anchor: where the
/// alignment's side or centre stands. Returns the text's rectangle.
QRectF paintLabel(QPainter& painter, const QPointF& anchor, Qt::Alignment alignment,
                  const QString& text, const look::Ground& ground, const QColor& ink);

} // namespace slopebook::ui::charts
