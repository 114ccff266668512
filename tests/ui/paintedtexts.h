// SPDX-License-Identifier: GPL-3.0-or-later
// What is written in a picture, and where: a paint device that keeps texts and marks instead of
// drawing them. So a test reads a chart as it stands on the screen, whoever painted it.
#pragma once

#include <QLineF>
#include <QList>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <memory>

namespace slopebook::test {

struct PaintedText {
    QString text;
    QRectF box; ///< of its letters, in the device's units: without the room above and below them
    double pixels = 0; ///< of its font, as it comes onto the device
};

class TextRecorder final : public QPaintDevice {
public:
    explicit TextRecorder(const QSize& size);
    ~TextRecorder() override;

    const QList<PaintedText>& texts() const { return m_texts; }
    /// Middles of the points: what is small, round or polygonal, and filled.
    const QList<QPointF>& points() const { return m_points; }
    /// Straight lines that stand alone, and lines of two strokes: arrows, the tip in the middle.
    const QList<QLineF>& strokes() const { return m_strokes; }
    const QList<QPolygonF>& arrows() const { return m_arrows; }

    QPaintEngine* paintEngine() const override;

protected:
    int metric(PaintDeviceMetric which) const override;

private:
    class Engine;
    QSize m_size;
    QList<PaintedText> m_texts;
    QList<QPointF> m_points;
    QList<QLineF> m_strokes;
    QList<QPolygonF> m_arrows;
    std::unique_ptr<Engine> m_engine;
};

} // namespace slopebook::test
