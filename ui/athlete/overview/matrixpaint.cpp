// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixpaint.h"

#include "ui/athlete/overview/matrixparts.h"
#include "ui/athlete/overview/steppaint.h"
#include "ui/charts/plotframe.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using namespace matrix;

namespace {

bool isReason(CellMark mark) {
    return mark == CellMark::NoReading || mark == CellMark::NoFigure;
}

/// A text in at most that many lines, the last cut with a mark where it must.
void paintWrapped(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
                  int most, Qt::Alignment alignment = Qt::AlignVCenter) {
    const QFontMetricsF metrics(font);
    QStringList lines;
    QTextLayout layout(text, font);
    layout.beginLayout();
    int from = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(box.width(), 1.0));
        if (lines.size() + 1 == most) {
            lines << metrics.elidedText(text.mid(from), Qt::ElideRight, box.width());
            break;
        }
        lines << text.mid(line.textStart(), line.textLength()).trimmed();
        from = line.textStart() + line.textLength();
    }
    layout.endLayout();
    painter.setFont(font);
    const double height = metrics.height() * static_cast<double>(lines.size());
    double y = alignment & Qt::AlignTop ? box.top() : box.center().y() - height / 2;
    for (const QString& line : lines) {
        painter.drawText(QPointF(box.left(), y + metrics.ascent()), line);
        y += metrics.height();
    }
}

/// A reading with its sign, and what the block before says under it.
void paintWords(QPainter& painter, const QRectF& box, const MatrixCellFigure& cell,
                const MatrixPen& pen) {
    QRectF upper = box;
    // Cut it would mislead: then the line under the table alone tells it.
    const bool fits = QFontMetricsF(pen.small).horizontalAdvance(cell.before) <= box.width();
    if (!cell.before.isEmpty() && fits && box.height() > pen.line + pen.lower) {
        const double top = box.center().y() - (pen.line + pen.lower) / 2;
        upper = QRectF(box.left(), top, box.width(), pen.line);
        painter.setPen(pen.ground.quiet);
        paintWrapped(painter, QRectF(box.left(), top + pen.line, box.width(), pen.lower),
                     cell.before, pen.small, 1);
    }
    const double sign = markWidth(cell.mark, pen);
    if (sign > 0)
        paintMark(painter, QRectF(upper.left(), upper.center().y() - pen.line / 2, sign, pen.line),
                  cell.mark, pen);
    const bool reason = isReason(cell.mark);
    painter.setPen(reason ? pen.ground.quiet : markColour(cell.mark, pen.ground));
    const bool low = upper.height() < 2 * pen.lower;
    // A reason cut short says nothing.
    const auto lacksRoom = [&] {
        if (!wraps(cell.mark))
            return QFontMetricsF(pen.body).horizontalAdvance(cell.reading) > upper.width() - sign;
        return QFontMetricsF(pen.small)
                   .boundingRect(QRectF(0, 0, upper.width(), 1e4), Qt::TextWordWrap, cell.reading)
                   .height() > (low ? 1.2 : 2.2) * pen.lower;
    };
    const bool noRoom = !cell.brief.isEmpty() && lacksRoom();
    paintWrapped(painter, upper.adjusted(sign, 0, 0, 0), noRoom ? cell.brief : cell.reading,
                 wraps(cell.mark)       ? pen.small
                 : isSettled(cell.mark) ? strong(pen.body)
                                        : pen.body,
                 wraps(cell.mark) && !low ? 2 : 1);
}

/// A change as a bar, or what says that it is none.
void paintBar(QPainter& painter, const QRectF& step, const MatrixCellFigure& cell, double span,
              const MatrixPen& pen) {
    if (cell.mark == CellMark::NotComparable)
        look::hatch(painter, step.adjusted(0, 2, 0, -2), pen.ground);
    else
        paintStepGround(painter, step, span, pen);
    if (cell.step)
        paintStep(painter, step, *cell.step, cell.mark, span, pen);
}

/// The words of a narrow column are under its figure and bar, in smaller type.
void paintNarrow(QPainter& painter, const QRectF& box, const BlockParts& parts,
                 const MatrixCellFigure& cell, double span, const MatrixPen& pen) {
    if (!parts.step.isEmpty() && !besideNoStep(cell))
        paintBar(painter, parts.step, cell, span, pen);
    else if (cell.mark == CellMark::NotComparable)
        look::hatch(painter, box.adjusted(1, 2, -1, -2), pen.ground);
    MatrixPen lower = pen;
    lower.body = pen.small;
    painter.setPen(pen.ground.ink);
    painter.setFont(isSettled(cell.mark) ? strong(pen.body) : pen.body);
    painter.drawText(parts.figure, Qt::AlignLeft | Qt::AlignVCenter, cell.figure);
    MatrixCellFigure alone = cell;
    alone.before.clear();
    const QRectF all(parts.words.left(), box.top(), parts.words.width(), box.height());
    paintWords(painter, cell.figure.isEmpty() ? all : parts.words, alone, lower);
}

} // namespace

void paintMeasure(QPainter& painter, const QRectF& box, const MatrixMeasureFigure& measure,
                  const MatrixPen& pen) {
    const QRectF inner = box.adjusted(inset * pen.line, 0, -inset * pen.line, 0);
    const bool two = inner.height() > pen.line + pen.lower;
    const double top = inner.center().y() - (pen.line + (two ? pen.lower : 0)) / 2;
    painter.setPen(pen.ground.ink);
    paintWrapped(painter, QRectF(inner.left(), top, inner.width(), pen.line), measure.name,
                 pen.body, 1);
    if (!two)
        return;
    const QRectF under(inner.left(), top + pen.line, inner.width(), pen.lower);
    painter.setFont(pen.small);
    painter.setPen(pen.ground.quiet);
    painter.drawText(under, Qt::AlignLeft | Qt::AlignVCenter, measure.unit);
    painter.drawText(under, Qt::AlignRight | Qt::AlignVCenter, measure.matters);
}

namespace {
/// In units of what matters, over the bars: the middle, and the nearest figure on both sides of it
/// that has its room.
void paintScale(QPainter& painter, const QRectF& step, double span, const MatrixPen& pen) {
    const QFontMetricsF small(pen.small);
    const double unit = step.width() / 2 / span;
    const auto words = [](int value) {
        const QString sign = value < 0 ? QString(QChar(0x2212)) : value > 0 ? u"+"_s : QString();
        return sign + QString::number(std::abs(value));
    };
    int labelled = static_cast<int>(span);
    for (const int value : {10, 5, 2, 1})
        if (value <= span && value * unit > small.horizontalAdvance(words(value)) + 0.4 * pen.lower)
            labelled = value;
    painter.setFont(pen.small);
    for (const int value : {-labelled, 0, labelled}) {
        const QString label = words(value);
        const double left = step.center().x() + value * unit - small.horizontalAdvance(label) / 2;
        painter.drawText(QPointF(left, step.top() + small.ascent()), label);
    }
}
} // namespace

void paintBlockHead(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
                    std::size_t block, const MatrixPen& pen) {
    const MatrixBlockFigure& head = figure.blocks[block];
    const QRectF inner = box.adjusted(inset * pen.line, 0, -inset * pen.line, 0);
    const double high = matrixHeadHeight(figure, pen) - 0.5 * pen.line;
    const double top = inner.center().y() - high / 2;
    painter.setPen(pen.ground.ink);
    paintWrapped(painter, QRectF(inner.left(), top, inner.width(), pen.line), head.name,
                 strong(pen.body), 1);
    painter.setPen(pen.ground.quiet);
    paintWrapped(painter, QRectF(inner.left(), top + pen.line, inner.width(), pen.lower),
                 head.under, pen.small, 1);
    if (!hasBars(figure, block, box.width(), pen))
        return;
    const BlockParts parts = partsOf(box, figure, block, pen);
    const double scale = top + pen.line + pen.lower;
    paintScale(painter, QRectF(parts.step.left(), scale, parts.step.width(), pen.lower),
               figure.span, pen);
}

void paintCell(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
               std::size_t measure, std::size_t block, const MatrixPen& pen) {
    const MatrixCellFigure& cell = figure.cells[measure][block];
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const BlockParts parts = partsOf(box, figure, block, pen);
    if (parts.narrow) {
        paintNarrow(painter, box, parts, cell, figure.span, pen);
        painter.restore();
        return;
    }
    const bool bars = !parts.step.isEmpty() && hasSteps(figure, block);
    QRectF words = parts.words;
    if (bars && besideNoStep(cell)) {
        if (wraps(cell.mark) &&
            wrappedWidth(cell.reading, QFontMetricsF(pen.small)) > words.width())
            words.setLeft(parts.step.left());
    } else if (bars) {
        paintBar(painter, parts.step, cell, figure.span, pen);
    } else if (cell.mark == CellMark::NotComparable) {
        look::hatch(painter, box.adjusted(1, 2, -1, -2), pen.ground);
    }
    painter.setPen(pen.ground.ink);
    painter.setFont(isSettled(cell.mark) ? strong(pen.body) : pen.body);
    painter.drawText(parts.figure, Qt::AlignRight | Qt::AlignVCenter, cell.figure);
    paintWords(painter, words, cell, pen);
    painter.restore();
}

bool anyBars(const MatrixFigure& figure, std::span<const double> widths, const MatrixPen& pen) {
    for (std::size_t i = 0; i < widths.size(); ++i)
        if (hasBars(figure, i, widths[i], pen))
            return true;
    return false;
}

void paintMatrixHead(QPainter& painter, const QPointF& at, const MatrixFigure& figure,
                     const MatrixColumns& columns, const MatrixPen& pen) {
    const double height = matrixHeadHeight(figure, pen);
    const double width =
        std::accumulate(columns.blocks.begin(), columns.blocks.end(), columns.measures);
    double x = at.x() + columns.measures;
    for (std::size_t i = 0; i < columns.blocks.size(); ++i) {
        paintBlockHead(painter, QRectF(x, at.y(), columns.blocks[i], height), figure, i, pen);
        x += columns.blocks[i];
    }
    painter.setPen(QPen(pen.ground.ink, pen.ground.print ? 0.9 : 1.5));
    painter.drawLine(at, at + QPointF(width, 0));
    painter.setPen(QPen(pen.ground.quiet, 0.5));
    painter.drawLine(at + QPointF(0, height), at + QPointF(width, height));
}

void paintMatrixRow(QPainter& painter, const QPointF& at, double height, const MatrixFigure& figure,
                    std::size_t measure, const MatrixColumns& columns, const MatrixPen& pen) {
    const double width =
        std::accumulate(columns.blocks.begin(), columns.blocks.end(), columns.measures);
    const MatrixMeasureFigure& what = figure.measures[measure];
    paintMeasure(painter, QRectF(at, QSizeF(columns.measures, height)), what, pen);
    double x = at.x() + columns.measures;
    for (std::size_t i = 0; i < columns.blocks.size(); ++i) {
        paintCell(painter, QRectF(x, at.y(), columns.blocks[i], height), figure, measure, i, pen);
        x += columns.blocks[i];
    }
    const bool last = measure + 1 == figure.measures.size();
    if (what.firstOfKind) {
        painter.setPen(QPen(pen.ground.grid.darker(110), 0.5));
        painter.drawLine(at, at + QPointF(width, 0));
    }
    if (last) {
        painter.setPen(QPen(pen.ground.ink, pen.ground.print ? 0.9 : 1.5));
        painter.drawLine(at + QPointF(0, height), at + QPointF(width, height));
    }
}

} // namespace slopebook::ui
