// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paintedtexts.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace slopebook::test {

class TextRecorder::Engine final : public QPaintEngine {
public:
    explicit Engine(TextRecorder& to) : QPaintEngine(AllFeatures), m_to(to) {}

    bool begin(QPaintDevice* /*device*/) override {
        setActive(true);
        return true;
    }
    bool end() override { return true; }
    Type type() const override { return User; }

    void updateState(const QPaintEngineState& now) override {
        const DirtyFlags changed = now.state();
        if (changed & DirtyTransform)
            m_transform = now.transform();
        if (changed & DirtyBrush)
            m_filled = now.brush().style() != Qt::NoBrush && now.brush().color().alpha() == 255;
    }

    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        if (item.text().trimmed().isEmpty())
            return;
        // Capitals and what hangs below: the line's own room is not a text.
        const QFontMetricsF metrics(item.font());
        const QRectF letters(at.x(), at.y() - metrics.capHeight(), item.width(),
                             metrics.capHeight() + 0.5 * metrics.descent());
        const double scale = std::sqrt(std::abs(m_transform.determinant()));
        m_to.m_texts.append({item.text(), m_transform.mapRect(letters),
                             scale * QFontInfo(item.font()).pixelSize()});
    }

    void drawPath(const QPainterPath& path) override { mark(path.boundingRect()); }
    void drawEllipse(const QRectF& box) override { mark(box); }
    void drawEllipse(const QRect& box) override { mark(box); }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        const QPolygonF all(QList<QPointF>(points, points + count));
        if (mode != PolylineMode)
            mark(all.boundingRect());
        else if (count == 3)
            m_to.m_arrows.append(m_transform.map(all));
    }
    void drawPolygon(const QPoint* points, int count, PolygonDrawMode mode) override {
        if (mode != PolylineMode)
            mark(QPolygon(QList<QPoint>(points, points + count)).boundingRect());
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {
    }
    void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
    void drawRects(const QRectF*, int) override {}
    void drawRects(const QRect*, int) override {}
    void drawLines(const QLineF* lines, int count) override {
        for (int i = 0; i < count; ++i)
            m_to.m_strokes.append(m_transform.map(lines[i]));
    }
    void drawLines(const QLine*, int) override {}
    void drawPoints(const QPointF*, int) override {}
    void drawPoints(const QPoint*, int) override {}

private:
    void mark(const QRectF& box) {
        constexpr double least = 3, most = 16;
        const QRectF seen = m_transform.mapRect(box);
        if (m_filled && std::min(seen.width(), seen.height()) >= least &&
            std::max(seen.width(), seen.height()) <= most)
            m_to.m_points.append(seen.center());
    }

    TextRecorder& m_to;
    QTransform m_transform;
    bool m_filled = false;
};

TextRecorder::TextRecorder(const QSize& size)
    : m_size(size), m_engine(std::make_unique<Engine>(*this)) {}

TextRecorder::~TextRecorder() = default;

QPaintEngine* TextRecorder::paintEngine() const {
    return m_engine.get();
}

int TextRecorder::metric(PaintDeviceMetric which) const {
    switch (which) {
    case PdmWidth:
        return m_size.width();
    case PdmHeight:
        return m_size.height();
    case PdmWidthMM:
        return m_size.width() * 254 / 960;
    case PdmHeightMM:
        return m_size.height() * 254 / 960;
    case PdmNumColors:
        return 1 << 24;
    case PdmDepth:
        return 32;
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
        return 96;
    case PdmDevicePixelRatio:
        return 1;
    case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
    }
    return 0;
}

} // namespace slopebook::test
