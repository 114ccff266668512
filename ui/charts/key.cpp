// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/key.h"

#include <QFontMetricsF>

namespace slopebook::ui::charts {

namespace {

constexpr double sampleWidth = 2.0, gap = 0.4, betweenEntries = 1.4; // in heights of the text

// Calls place(entry, left, row) for each entry; returns the number of rows.
template <class Place>
int lay(const std::vector<KeyEntry>& entries, const QFontMetricsF& metrics, double width,
        const Place& place) {
    const double h = metrics.height();
    double x = 0;
    int row = 0;
    for (const KeyEntry& entry : entries) {
        const double need = (sampleWidth + gap) * h + metrics.horizontalAdvance(entry.text);
        if (x > 0 && x + need > width) {
            x = 0;
            ++row;
        }
        place(entry, x, row);
        x += need + betweenEntries * h;
    }
    return entries.empty() ? 0 : row + 1;
}

} // namespace

double keyHeight(const std::vector<KeyEntry>& entries, const QFont& font, double width) {
    const QFontMetricsF metrics(font);
    return 1.1 * metrics.height() *
           lay(entries, metrics, width, [](const KeyEntry&, double, int) {});
}

void paintKey(QPainter& painter, const std::vector<KeyEntry>& entries, const QFont& font,
              const QRectF& box, const QColor& ink) {
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const double h = metrics.height();
    lay(entries, metrics, box.width(), [&](const KeyEntry& entry, double x, int row) {
        const double top = box.top() + row * 1.1 * h;
        painter.save();
        entry.sample(painter, QRectF(box.left() + x, top, sampleWidth * h, h));
        painter.restore();
        painter.setPen(ink);
        painter.drawText(QPointF(box.left() + x + (sampleWidth + gap) * h, top + metrics.ascent()),
                         entry.text);
    });
}

} // namespace slopebook::ui::charts
