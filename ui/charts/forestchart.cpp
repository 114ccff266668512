// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/forestchart.h"

#include "ui/charts/chartmenu.h"
#include "ui/charts/key.h"
#include "ui/charts/scale.h"
#include "ui/charts/whisker.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {

constexpr double rowUnits = 1.9;  // of text height
constexpr double axisUnits = 3.6; // ticks and title
constexpr double markUnits = 1.6; // a line of what marks mean, or of what holds of nearly all rows
constexpr double headUnits = 1.6; // "worse" and "better"
/// Units either way: an interval beyond it and beyond every change is cut and says so.
constexpr double widestSpan = 12;

QString marked(const QString& words, const answers::ForestRow& row, const answers::ForestKey& key) {
    const QString marks = QString::fromStdString(answers::forestMarks(row, key));
    return marks.isEmpty() ? words : words + u' ' + marks;
}

QString readingText(const answers::ForestRow& row, const answers::ForestKey& key, LoadUnit unit) {
    return marked(said(answers::forestReading(row), unit), row, key);
}

/// The same where no bar stands beside it: what leans with the size from which it would be clear.
QString readingInFull(const answers::ForestRow& row, const answers::ForestKey& key, LoadUnit unit) {
    return row.tells > 0 ? marked(said(row.word, unit), row, key) : readingText(row, key, unit);
}

/// Below the rows a line for each, where they are seen.
QStringList footLines(const answers::ForestKey& key) {
    QStringList lines = said(answers::forestMarkWords(key), LoadUnit::Kilograms);
    if (!lines.isEmpty())
        lines.prepend(ForestChart::tr("filled: better or worse"));
    return lines;
}

/// Above the rows and below them.
double topUnits(const answers::ForestKey& key) {
    return headUnits + markUnits * static_cast<double>(answers::forestAllWords(key).size());
}
double footUnits(const answers::ForestKey& key) {
    return axisUnits + markUnits * static_cast<double>(footLines(key).size());
}

struct Frame {
    QRectF plot;
    double from = -1, to = 1, step = 1;
    int decimals = 0;
    double rowHeight = 1;
    double x(double value) const {
        return plot.left() + (std::clamp(value, from, to) - from) / (to - from) * plot.width();
    }
    double y(std::size_t row) const {
        return plot.top() + (static_cast<double>(row) + 0.5) * rowHeight;
    }
};

Frame frameOf(const QRectF& target, const std::vector<answers::ForestRow>& rows,
              const answers::ForestKey& key, LoadUnit unit, const QFontMetricsF& metrics,
              double textSize) {
    double low = -1.5;
    double high = 1.5;
    double label = 0;
    double reading = 0;
    for (const auto& row : rows) {
        label = std::max(label, metrics.horizontalAdvance(said(row.label, unit)));
        reading = std::max(reading, metrics.horizontalAdvance(readingText(row, key, unit)));
        if (!row.noBar.empty())
            continue;
        low = std::min({low, std::max(row.interval.low, -widestSpan), row.change});
        high = std::max({high, std::min(row.interval.high, widestSpan), row.change});
    }
    const charts::Scale scale = charts::niceScale(low, high, 10);
    Frame frame;
    frame.from = scale.from;
    frame.to = scale.to;
    frame.step = scale.step;
    frame.decimals = scale.decimals();
    label = std::min(label, target.width() * 0.45);
    frame.plot = target.adjusted(label + textSize, topUnits(key) * textSize, -(reading + textSize),
                                 -footUnits(key) * textSize);
    frame.rowHeight = frame.plot.height() / std::max<double>(1, static_cast<double>(rows.size()));
    return frame;
}

void paintGround(QPainter& painter, const Frame& frame, const look::Ground& ground,
                 double textSize) {
    const QFontMetricsF metrics(painter.font(), painter.device());
    painter.fillRect(
        QRectF(QPointF(frame.x(-1), frame.plot.top()), QPointF(frame.x(1), frame.plot.bottom())),
        ground.grid);
    painter.setPen(QPen(ground.quiet, textSize / 14));
    painter.drawLine(frame.plot.bottomLeft(), frame.plot.bottomRight());
    const auto ticks = std::lround((frame.to - frame.from) / frame.step);
    for (long i = 0; i <= ticks; ++i) {
        const double value = frame.from + static_cast<double>(i) * frame.step;
        const double x = frame.x(value);
        painter.setPen(QPen(ground.quiet, textSize / 14));
        painter.drawLine(QPointF(x, frame.plot.bottom()),
                         QPointF(x, frame.plot.bottom() + textSize / 3));
        painter.setPen(ground.ink);
        const QString label = number(value, frame.decimals);
        painter.drawText(
            QPointF(x - metrics.horizontalAdvance(label) / 2, frame.plot.bottom() + textSize * 1.5),
            label);
    }
    painter.setPen(QPen(ground.ink, textSize / 8));
    painter.drawLine(QPointF(frame.x(0), frame.plot.top()),
                     QPointF(frame.x(0), frame.plot.bottom()));
    painter.setPen(ground.quiet);
    const QString title =
        ForestChart::tr("change, in units of the smallest change that matters (grey: %1)")
            .arg(charts::tooSmallText());
    painter.drawText(QRectF(frame.plot.left() - frame.plot.width(),
                            frame.plot.bottom() + 2 * textSize, 3 * frame.plot.width(),
                            1.5 * textSize),
                     Qt::AlignHCenter | Qt::AlignTop, title);
    const double head = frame.plot.top() - headUnits * textSize;
    painter.drawText(QRectF(frame.plot.left(), head, frame.plot.width() / 2, headUnits * textSize),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     QStringLiteral("\u2190 ") + ForestChart::tr("worse"));
    painter.drawText(
        QRectF(frame.plot.center().x(), head, frame.plot.width() / 2, headUnits * textSize),
        Qt::AlignRight | Qt::AlignVCenter, ForestChart::tr("better") + QStringLiteral(" \u2192"));
}

/// Each on a line of its own, the first at that height.
void paintLines(QPainter& painter, const QRectF& target, double top, const QStringList& lines,
                const look::Ground& ground, double textSize) {
    painter.setPen(ground.quiet);
    for (const QString& line : lines) {
        painter.drawText(QRectF(target.left(), top, target.width(), markUnits * textSize),
                         Qt::AlignHCenter | Qt::AlignTop, line);
        top += markUnits * textSize;
    }
}

/// Why there is no bar, in its place; in full it stands under the table.
void paintNoBar(QPainter& painter, const Frame& frame, std::size_t at,
                const answers::ForestRow& test, LoadUnit unit, const look::Ground& ground) {
    const QFontMetricsF metrics(painter.font(), painter.device());
    QString words = ForestChart::tr("no bar: %1").arg(said(test.noBar, unit));
    const auto fits = [&] { return metrics.horizontalAdvance(words) <= frame.plot.width(); };
    if (!fits()) // that there is none is seen
        words = said(test.noBar, unit);
    if (!fits())
        words = ForestChart::tr("no bar: the reason stands below");
    const QRectF row(frame.plot.left(), frame.y(at) - frame.rowHeight / 2, frame.plot.width(),
                     frame.rowHeight);
    painter.fillRect(row.adjusted(-1, -1, 1, 1),
                     ground.paper); // the grey of what is too small says nothing here
    painter.setPen(ground.quiet);
    painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, words);
}

void paintRow(QPainter& painter, const Frame& frame, std::size_t at, const answers::ForestRow& row,
              const look::Ground& ground, double textSize) {
    const double y = frame.y(at);
    if (row.notComparable)
        look::hatch(painter,
                    QRectF(frame.plot.left(), y - 0.42 * frame.rowHeight, frame.plot.width(),
                           0.84 * frame.rowHeight),
                    ground);
    const double a = frame.x(row.interval.low);
    const double b = frame.x(row.interval.high);
    const double tick = textSize / 3;
    painter.setPen(QPen(ground.ink, textSize / 8));
    painter.drawLine(QPointF(a, y), QPointF(b, y));
    charts::paintWhiskerEnd(painter, {a, y}, {-1, 0}, tick, row.interval.low < frame.from);
    charts::paintWhiskerEnd(painter, {b, y}, {1, 0}, tick, row.interval.high > frame.to);
    const bool settled =
        row.reading == answers::Reading::Better || row.reading == answers::Reading::Worse;
    painter.setBrush(settled ? ground.ink : ground.paper);
    const double half = textSize / 2.6;
    painter.drawRect(QRectF(frame.x(row.change) - half, y - half, 2 * half, 2 * half));
    painter.setBrush(Qt::NoBrush);
}

} // namespace

double forestHeight(const std::vector<answers::ForestRow>& rows, double textSize) {
    const answers::ForestKey key = answers::forestKey(rows);
    return (topUnits(key) + footUnits(key) + rowUnits * static_cast<double>(rows.size())) *
           textSize;
}

void paintForest(QPainter& painter, const QRectF& target,
                 const std::vector<answers::ForestRow>& rows, LoadUnit unit,
                 const look::Ground& ground, double textSize) {
    if (rows.empty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(painter.font(), painter.device());
    const answers::ForestKey key = answers::forestKey(rows);
    const Frame frame = frameOf(target, rows, key, unit, metrics, textSize);
    paintGround(painter, frame, ground, textSize);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].noBar.empty())
            paintRow(painter, frame, i, rows[i], ground, textSize);
        else
            paintNoBar(painter, frame, i, rows[i], unit, ground);
        painter.setPen(ground.ink);
        const double top = frame.y(i) - frame.rowHeight / 2;
        const double labels = frame.plot.left() - textSize - target.left();
        painter.drawText(QRectF(target.left(), top, labels, frame.rowHeight),
                         Qt::AlignRight | Qt::AlignVCenter,
                         metrics.elidedText(said(rows[i].label, unit), Qt::ElideMiddle, labels));
        painter.drawText(QRectF(frame.plot.right() + textSize, top,
                                target.right() - frame.plot.right() - textSize, frame.rowHeight),
                         Qt::AlignLeft | Qt::AlignVCenter, readingText(rows[i], key, unit));
    }
    paintLines(painter, target, target.top(),
               said(answers::forestAllWords(key), LoadUnit::Kilograms), ground, textSize);
    const QStringList foot = footLines(key);
    paintLines(painter, target,
               target.bottom() - markUnits * textSize * static_cast<double>(foot.size()), foot,
               ground, textSize);
    painter.restore();
}

ForestChart::ForestChart(QWidget* parent) : QWidget(parent) {
    new charts::ChartMenu(this, *this);
    setAccessibleName(tr("Changes of all tests in units of the smallest change that matters; the "
                         "same figures stand in the table"));
}

double ForestChart::textSize() const {
    return QFontMetricsF(font()).ascent();
}

void ForestChart::setRows(std::vector<answers::ForestRow> rows, LoadUnit unit, bool allAtOnce) {
    m_allAtOnce = allAtOnce;
    m_unit = unit;
    m_rows = std::move(rows);
    const answers::ForestKey key = answers::forestKey(m_rows);
    QStringList spoken = said(answers::forestAllWords(key), LoadUnit::Kilograms);
    for (const auto& row : m_rows)
        spoken << (row.noBar.empty()
                       ? tr("%1: %2 units, %3")
                             .arg(said(row.label, unit), signedNumber(row.change, 1),
                                  readingInFull(row, key, unit))
                       : tr("%1: %2; no bar: %3")
                             .arg(said(row.label, unit), readingInFull(row, key, unit),
                                  said(row.noBar, unit)));
    setAccessibleDescription(spoken.join(QStringLiteral("; ")));
    updateGeometry();
    update();
}

charts::FigureTable ForestChart::figures() const {
    charts::FigureTable table{.headings = {tr("Test"), tr("Change, units"),
                                           readAgainst(tr("Interval, units"), m_allAtOnce),
                                           tr("Reading")}};
    const answers::ForestKey key = answers::forestKey(m_rows);
    for (const auto& row : m_rows)
        table.rows.push_back({said(row.label, m_unit),
                              row.noBar.empty() ? signedNumber(row.change, 2) : QString(),
                              row.noBar.empty() ? signedRangeText(row.interval, 2) : QString(),
                              readingInFull(row, key, m_unit)});
    return table;
}

QSizeF ForestChart::paperSize() const {
    return {480, forestHeight(m_rows, charts::paperTextSize) + 8};
}

void ForestChart::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    painter.save();
    painter.translate(target.topLeft());
    painter.scale(target.width() / points.width(), target.height() / points.height());
    QFont small = font();
    small.setPixelSize(static_cast<int>(charts::paperTextSize));
    painter.setFont(small);
    paintForest(painter, QRectF(4, 4, points.width() - 8, points.height() - 8), m_rows, m_unit,
                look::paperGround(), charts::paperTextSize);
    painter.restore();
}

QSize ForestChart::sizeHint() const {
    return {760, static_cast<int>(std::ceil(forestHeight(m_rows, textSize()))) + 8};
}

QSize ForestChart::minimumSizeHint() const {
    return {420, sizeHint().height()};
}

void ForestChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const look::Ground ground = look::screenGround(palette());
    painter.fillRect(rect(), ground.paper);
    const double height = std::min<double>(rect().height() - 8, forestHeight(m_rows, textSize()));
    paintForest(painter, QRectF(8, 4, rect().width() - 16, height), m_rows, m_unit, ground,
                textSize());
    if (hasFocus())
        look::paintFocus(painter, rect(), palette());
}

void ForestChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        update();
}

} // namespace slopebook::ui
