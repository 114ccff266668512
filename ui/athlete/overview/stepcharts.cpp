// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/stepcharts.h"

#include "ui/athlete/overview/stepchange.h"
#include "ui/athlete/overview/steppaint.h"
#include "ui/charts/key.h"
#include "ui/paper/flow.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace slopebook::ui {

namespace {

constexpr int nameRows = 2;                     // of blocks, under a chart
constexpr double leastSpan = 1.6, mostSpan = 4; // units either way
constexpr double marker = 0.62;                 // heights of a line

/// What a chart counts in: the smallest change that matters, else half of the widest interval.
double unitOf(const answers::MatrixRow& row) {
    if (row.smallest && row.smallest->value > 0)
        return row.smallest->value;
    double widest = 0;
    for (const answers::MatrixCell& cell : row.cells)
        if (cell.interval)
            widest = std::max(widest, (cell.interval->high - cell.interval->low) / 2);
    return widest > 0 ? widest : 1;
}

/// As the table has it, where right is better; here up is more.
std::optional<Step> changeOf(const answers::Measure& measure, const answers::OverviewRow& shown) {
    auto step = shown.step && shown.step->why.empty() ? stepOf(measure, *shown.step) : std::nullopt;
    if (!step || measure.higherIsBetter)
        return step;
    for (stats::Interval* range :
         {&step->whisker.interval, &step->whisker.equivalence, &step->whisker.straight})
        *range = {-range->high, -range->low};
    step->change = -step->change;
    return step;
}

StepChart chartOf(const answers::SeasonMatrix& matrix, const answers::OverviewRow& shown,
                  LoadUnit unit) {
    const answers::MatrixRow& row = matrix.rows[shown.row];
    const double size = unitOf(row);
    const double zero = *row.cells[*shown.from].value;
    StepChart chart{.name = asSentence(said(answers::measureWords(row.measure), unit)),
                    .unit = measureUnit(row.measure, unit),
                    .reading = said(shown.standing == answers::Standing::Unclear
                                        ? answers::leaningReading(shown.step->read)
                                        : answers::standingWords(shown.standing),
                                    unit),
                    .words = shown.step ? changeWords(row.measure, *shown.step, unit) : QString(),
                    .mark = shown.step ? markOf(row.measure, *shown.step) : CellMark::Figure,
                    .banded = row.smallest && row.smallest->value > 0,
                    .change = changeOf(row.measure, shown)};
    for (std::size_t block = 0; block < row.cells.size(); ++block) {
        const answers::MatrixCell& cell = row.cells[block];
        if (!cell.value)
            continue;
        if (block == *shown.from)
            chart.from = chart.points.size();
        const stats::Interval range =
            cell.interval.value_or(stats::Interval{*cell.value, *cell.value});
        chart.points.push_back({.block = static_cast<double>(block),
                                .value = (*cell.value - zero) / size,
                                .low = (range.low - zero) / size,
                                .high = (range.high - zero) / size,
                                .figure = measureNumber(row.measure, *cell.value, unit)});
    }
    return chart;
}

double spanOf(const StepChartsData& data) {
    double span = leastSpan;
    for (const StepChart& chart : data.charts)
        for (const StepChart::Point& point : chart.points)
            span = std::max({span, std::abs(point.low), std::abs(point.high)});
    for (const StepChart& chart : data.charts)
        if (chart.change && chart.banded)
            span = std::max({span, std::abs(chart.change->whisker.interval.low),
                             std::abs(chart.change->whisker.interval.high)});
    return std::min(span * 1.05, mostSpan);
}

QScatterSeries::MarkerShape shapeOf(const StepChart& chart, std::size_t at) {
    if (at + 1 == chart.points.size())
        return QScatterSeries::MarkerShapeCircle;
    return at == chart.from ? QScatterSeries::MarkerShapeTriangle
                            : QScatterSeries::MarkerShapeRotatedRectangle;
}

void paintPoints(QPainter& painter, const StepChart& chart, const StepFrame& frame,
                 const MatrixPen& pen) {
    const int count = static_cast<int>(chart.points.size());
    QPen dotted = look::smallestPen(pen.ground);
    for (int i = 0; i + 1 < count; ++i) {
        const auto& a = chart.points[static_cast<std::size_t>(i)];
        const auto& b = chart.points[static_cast<std::size_t>(i) + 1];
        painter.setPen(dotted);
        painter.drawLine(QPointF(frame.x(a.block), frame.y(a.value)),
                         QPointF(frame.x(b.block), frame.y(b.value)));
    }
    const double cap = pen.line * 0.18;
    for (int i = 0; i < count; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const StepChart::Point& point = chart.points[at];
        const QColor colour = look::colour(
            {.kind = look::Role::Kind::Session, .index = i, .count = count}, pen.ground);
        const double x = frame.x(point.block);
        painter.setPen(QPen(colour, pen.ground.print ? 0.9 : 1.5));
        painter.drawLine(QPointF(x, frame.y(point.low)), QPointF(x, frame.y(point.high)));
        for (const double end : {point.low, point.high}) {
            const double y = frame.y(end);
            if (std::abs(end) <= frame.span) {
                painter.drawLine(QPointF(x - cap, y), QPointF(x + cap, y));
                continue;
            }
            const double back = end > 0 ? cap : -cap; // it runs on beyond the scale
            painter.drawLine(QPointF(x - cap, y + back), QPointF(x, y));
            painter.drawLine(QPointF(x + cap, y + back), QPointF(x, y));
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.save();
        painter.translate(x, frame.y(point.value));
        painter.drawPath(look::markerPath(shapeOf(chart, at), marker * pen.line));
        painter.restore();
    }
}

/// The figures of the last block and of the one before it, beside their points.
void paintFigures(QPainter& painter, const StepChart& chart, const StepFrame& frame, double right,
                  const MatrixPen& pen) {
    const StepChart::Point& last = chart.points.back();
    const StepChart::Point& from = chart.points[chart.from];
    const QFontMetricsF metrics(pen.small);
    const double half = metrics.height() / 2;
    double a = frame.y(last.value);
    double b = frame.y(from.value);
    if (std::abs(a - b) < 2 * half) { // neither over the other
        const double middle = (a + b) / 2;
        const double way = last.value >= from.value ? -1 : 1;
        a = middle + way * half;
        b = middle - way * half;
    }
    const double left = frame.area.right() + pen.line * 0.3;
    const auto write = [&](double y, const QString& text, bool bold, const QColor& ink) {
        QFont font = pen.small;
        font.setBold(bold);
        painter.setFont(font);
        painter.setPen(ink);
        painter.drawText(QRectF(left, y - half, right - left, 2 * half),
                         Qt::AlignLeft | Qt::AlignVCenter, text);
    };
    write(b, from.figure, false, pen.ground.quiet);
    write(a, last.figure, true, pen.ground.ink);
}

void paintBlocks(QPainter& painter, const QStringList& blocks, const StepFrame& frame,
                 const MatrixPen& pen) {
    const QFontMetricsF metrics(pen.small);
    const double top = frame.area.bottom() + pen.line * 0.2;
    painter.setPen(QPen(pen.ground.ink, pen.ground.print ? 0.7 : 1));
    painter.drawLine(frame.area.bottomLeft(), frame.area.bottomRight());
    painter.setFont(pen.small);
    std::array<double, nameRows> taken;
    taken.fill(std::numeric_limits<double>::infinity());
    // From the right: the last block has its name whatever becomes of the others'. One that has no
    // room beside it stands a row lower, whole, or is left to the table.
    for (qsizetype i = blocks.size() - 1; i >= 0; --i) {
        const QString name = metrics.elidedText(blocks[i], Qt::ElideRight, frame.area.width());
        const double wide = metrics.horizontalAdvance(name);
        double left = frame.x(static_cast<double>(i)) - wide / 2;
        left = std::clamp(left, frame.area.left(), frame.area.right() - wide);
        const auto row = std::ranges::find_if(
            taken, [&](double from) { return left + wide <= from - pen.line * 0.4; });
        if (row == taken.end())
            continue;
        painter.setPen(pen.ground.quiet);
        painter.drawText(
            QPointF(left, top + metrics.ascent() +
                              static_cast<double>(row - taken.begin()) * metrics.height()),
            name);
        *row = left;
    }
}

QFont boldOf(const MatrixPen& pen) {
    QFont bold = pen.body;
    bold.setBold(true);
    return bold;
}

/// What the name of the longest chart takes, so that all charts begin alike.
double namesHeight(const StepChartsData& data, double width, const MatrixPen& pen) {
    const QFontMetricsF metrics(boldOf(pen));
    double most = pen.line;
    for (const StepChart& chart : data.charts)
        most = std::max(
            most,
            metrics.boundingRect(QRectF(0, 0, width, 10 * pen.line), Qt::TextWordWrap, chart.name)
                .height());
    return most;
}

void paintOne(QPainter& painter, const QRectF& whole, const StepChart& chart,
              const StepChartsData& data, double span, bool explained, bool& barNamed,
              const MatrixPen& pen) {
    const QFont bold = boldOf(pen);
    const QFontMetricsF body(bold);
    const QFontMetricsF small(pen.small);
    const double names = namesHeight(data, whole.width(), pen);
    painter.setFont(bold);
    painter.setPen(pen.ground.ink);
    painter.drawText(QRectF(whole.left(), whole.top(), whole.width(), names),
                     Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, chart.name);
    const QRectF box = whole.adjusted(0, names - pen.line, 0, 0);
    // Unit left, reading right with its sign.
    const double second = box.top() + pen.line;
    const bool settled = chart.mark == CellMark::Better || chart.mark == CellMark::Worse;
    const QFont reading = settled ? bold : pen.body;
    const double wide = QFontMetricsF(reading).horizontalAdvance(chart.reading);
    const double sign = settled || chart.mark == CellMark::Held ? pen.line * 0.85 : 0;
    painter.setFont(pen.small);
    painter.setPen(pen.ground.quiet);
    painter.drawText(QPointF(box.left(), second + body.ascent()), chart.unit);
    paintMark(painter, QRectF(box.right() - wide - sign, second, sign, pen.line), chart.mark, pen);
    painter.setFont(reading);
    painter.setPen(pen.ground.ink);
    painter.drawText(QPointF(box.right() - wide, second + body.ascent()), chart.reading);
    double figures = 0;
    for (const StepChart::Point& point : chart.points)
        figures = std::max(figures, QFontMetricsF(bold).horizontalAdvance(point.figure));
    StepFrame frame{.area = box.adjusted(0, 2.4 * pen.line, -figures - 0.3 * pen.line,
                                         -(0.35 + 0.95 * nameRows) * pen.line),
                    .span = span,
                    .blocks = std::max(1.0, static_cast<double>(data.blocks.size()))};
    if (chart.mark == CellMark::NotComparable)
        look::hatch(painter, frame.area, pen.ground);
    else if (chart.banded)
        painter.fillRect(QRectF(QPointF(frame.area.left(), frame.y(1)),
                                QPointF(frame.area.right(), frame.y(-1))),
                         look::smallestBrush(pen.ground));
    painter.setPen(QPen(pen.ground.quiet, pen.ground.print ? 0.6 : 1));
    painter.drawLine(QPointF(frame.area.left(), frame.y(0)),
                     QPointF(frame.area.right(), frame.y(0)));
    std::vector<QRectF> taken;
    const QString grey = StepChartsView::tr("grey: %1").arg(charts::tooSmallText());
    const bool room = small.horizontalAdvance(grey) + 2 <= box.width();
    if (explained && room && chart.banded && chart.mark != CellMark::NotComparable) {
        painter.setFont(pen.small);
        painter.setPen(pen.ground.quiet);
        const QPointF base(frame.area.left() + 2, frame.area.bottom() - small.descent() - 2);
        painter.drawText(base, grey);
        taken.push_back(small.boundingRect(grey).translated(base));
    }
    paintPoints(painter, chart, frame, pen);
    paintChange(painter, chart, frame, pen);
    if (!barNamed)
        barNamed = nameChange(painter, chart, frame, taken, pen);
    paintFigures(painter, chart, frame, box.right(), pen);
    paintBlocks(painter, data.blocks, frame, pen);
}

} // namespace

StepChartsData stepCharts(const answers::SeasonMatrix& matrix, const answers::Overview& overview,
                          LoadUnit unit) {
    StepChartsData data;
    for (const answers::MatrixBlock& block : matrix.blocks)
        data.blocks << periodText(block.block.name);
    for (const std::size_t wanted : overview.charts) {
        const auto row = std::ranges::find(overview.rows, wanted, &answers::OverviewRow::row);
        if (row != overview.rows.end() && row->from)
            data.charts.push_back(chartOf(matrix, *row, unit));
    }
    return data;
}

void paintStepCharts(QPainter& painter, const QRectF& target, const StepChartsData& data,
                     const MatrixPen& pen) {
    if (data.charts.empty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double gutter = 1.6 * pen.line;
    // A chart alone is no wider than it reads well.
    const double count = std::max<double>(3, static_cast<double>(data.charts.size()));
    const double width = (target.width() - (count - 1) * gutter) / count;
    const double span = spanOf(data);
    bool barNamed = false; // once, in the first that has room
    for (std::size_t i = 0; i < data.charts.size(); ++i)
        paintOne(painter,
                 QRectF(target.left() + static_cast<double>(i) * (width + gutter), target.top(),
                        width, target.height()),
                 data.charts[i], data, span, i == 0, barNamed, pen);
    painter.restore();
}

void StepChartsView::setData(StepChartsData data) {
    m_data = std::move(data);
    describe();
    update();
}

charts::FigureTable StepChartsView::figures() const {
    charts::FigureTable table{.headings = {tr("Measure"), tr("Unit")}};
    table.headings << m_data.blocks << tr("Reading");
    for (const StepChart& chart : m_data.charts) {
        QStringList row{chart.name, chart.unit};
        for (qsizetype i = 0; i < m_data.blocks.size(); ++i) {
            const auto point =
                std::ranges::find(chart.points, static_cast<double>(i), &StepChart::Point::block);
            row << (point == chart.points.end() ? QString() : point->figure);
        }
        table.rows.push_back(row << chart.words);
    }
    return table;
}

void StepChartsView::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                                double textSize, bool onScreen) const {
    QFont body = onScreen ? font() : page::pageFont(textSize);
    if (onScreen)
        body.setPixelSize(static_cast<int>(std::lround(textSize)));
    paintStepCharts(painter, target.adjusted(4, 2, -4, -2), m_data, matrixPen(ground, body));
}

} // namespace slopebook::ui
