// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/key.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QStringList>

namespace slopebook::ui::charts {

namespace {

struct ChartKey {
    Q_DECLARE_TR_FUNCTIONS(ChartKey)
};

// In heights of the text; a chart that has no size yet is narrower than the least to break lines
// in.
constexpr double sampleWidth = 2.0, gap = 0.4, betweenEntries = 1.4, leastWidth = 10;

/// Broken between words where it is wider than the room.
QStringList brokenInto(const QString& text, const QFontMetricsF& metrics, double room) {
    QStringList lines{{}};
    for (const QString& word : text.split(QLatin1Char(' '))) {
        const QString longer =
            lines.back().isEmpty() ? word : lines.back() + QLatin1Char(' ') + word;
        if (lines.back().isEmpty() || metrics.horizontalAdvance(longer) <= room)
            lines.back() = longer;
        else
            lines << word;
    }
    return lines;
}

// Calls place(entry, its lines, left, row) for each entry; returns the number of rows.
template <class Place>
int lay(const std::vector<KeyEntry>& entries, const QFontMetricsF& metrics, double width,
        const Place& place) {
    const double h = metrics.height(), before = (sampleWidth + gap) * h;
    double x = 0;
    int row = 0;
    for (const KeyEntry& entry : entries) {
        const double need = before + metrics.horizontalAdvance(entry.text);
        if (x > 0 && x + need > width) {
            x = 0;
            ++row;
        }
        const QStringList lines = need > width && width > leastWidth * h
                                      ? brokenInto(entry.text, metrics, width - before)
                                      : QStringList{entry.text};
        place(entry, lines, x, row);
        row += static_cast<int>(lines.size()) - 1;
        x += need + betweenEntries * h;
    }
    return entries.empty() ? 0 : row + 1;
}

} // namespace

KeyEntry notComparableKey(const look::Ground& ground) {
    return {ChartKey::tr("not comparable"), [ground](QPainter& painter, const QRectF& box) {
                look::hatch(painter, box.adjusted(0, 1, 0, -1), ground);
            }};
}

QString tooSmallText() {
    return ChartKey::tr("too small to matter");
}

KeyEntry tooSmallKey(const look::Ground& ground, const QString& amount) {
    return {amount.isEmpty() ? tooSmallText()
                             : ChartKey::tr("%1, \u00b1%2", "too small to matter, \u00b1 0.05 m/s")
                                   .arg(tooSmallText(), amount),
            [ground](QPainter& painter, const QRectF& box) {
                painter.fillRect(box.adjusted(0, 2, 0, -2), look::smallestBrush(ground));
            }};
}

double keyHeight(const std::vector<KeyEntry>& entries, const QFont& font, double width) {
    const QFontMetricsF metrics(font);
    return 1.1 * metrics.height() *
           lay(entries, metrics, width, [](const KeyEntry&, const QStringList&, double, int) {});
}

void paintKey(QPainter& painter, const std::vector<KeyEntry>& entries, const QFont& font,
              const QRectF& box, const QColor& ink) {
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const double h = metrics.height();
    lay(entries, metrics, box.width(),
        [&](const KeyEntry& entry, const QStringList& lines, double x, int row) {
            const double top = box.top() + row * 1.1 * h;
            painter.save();
            entry.sample(painter, QRectF(box.left() + x, top, sampleWidth * h, h));
            painter.restore();
            painter.setPen(ink);
            for (qsizetype i = 0; i < lines.size(); ++i)
                painter.drawText(QPointF(box.left() + x + (sampleWidth + gap) * h,
                                         top + static_cast<double>(i) * 1.1 * h + metrics.ascent()),
                                 lines[i]);
        });
}

} // namespace slopebook::ui::charts
