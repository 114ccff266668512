// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixpaint.h"

#include "ui/athlete/overview/steppaint.h"
#include "ui/charts/plotframe.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

constexpr double leastStep = 56;          // px of a strip that can still be read, at a body of 13
constexpr double widestWord = 9;          // of a reading's column, in heights of a line
constexpr double widestBefore = 14;       // of what another block says, with its name
constexpr double gap = 0.5, inset = 0.35; // heights of a line

double sizedAs(const MatrixPen& pen, double at13) {
    return at13 * pen.line / 15;
}

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

/// In smaller type and on two lines.
bool wraps(CellMark mark) {
    return mark == CellMark::NoReading || mark == CellMark::NoFigure ||
           mark == CellMark::NotComparable;
}

bool isReason(CellMark mark) {
    return mark == CellMark::NoReading || mark == CellMark::NoFigure;
}

double markWidth(CellMark mark, const MatrixPen& pen) {
    return isSettled(mark) || mark == CellMark::Held ? 0.85 * pen.line : 0;
}

double figureWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen) {
    const QFontMetricsF body(strong(pen.body));
    double width = 0;
    for (const auto& row : figure.cells)
        width = std::max(width, body.horizontalAdvance(row[block].figure));
    return width;
}

/// On two lines, and no word cut.
double wrappedWidth(const QString& text, const QFontMetricsF& metrics) {
    double width = metrics.horizontalAdvance(text) * 0.65;
    for (const QString& word : text.split(u' '))
        width = std::max(width, metrics.horizontalAdvance(word) + 1);
    return width;
}

bool hasSteps(const MatrixFigure& figure, std::size_t block) {
    return std::ranges::any_of(figure.cells,
                               [block](const auto& row) { return row[block].step.has_value(); });
}

/// Words that stand where a bar would.
bool besideNoStep(const MatrixCellFigure& cell) {
    return !cell.step && cell.mark != CellMark::NotComparable;
}

/// Readings beside their bar; a reason wraps. whole: with what the block before says under them.
double wordWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen, bool whole) {
    const QFontMetricsF body(strong(pen.body));
    const QFontMetricsF small(pen.small);
    const bool steps = hasSteps(figure, block);
    double width = 0, before = 0;
    for (const auto& row : figure.cells) {
        const MatrixCellFigure& cell = row[block];
        if (steps && besideNoStep(cell) && wraps(cell.mark))
            continue; // a reason has the bar's room as well
        const QString& least = cell.brief.isEmpty() ? cell.reading : cell.brief;
        const double word = wraps(cell.mark)
                                ? wrappedWidth(cell.reading, small)
                                : body.horizontalAdvance(least) + markWidth(cell.mark, pen);
        width = std::max(width, word + 0.15 * pen.line);
        before = std::max(before, whole ? small.horizontalAdvance(cell.before) + 1 : 0.0);
    }
    return std::max(std::min(width, widestWord * pen.line),
                    std::min(before, widestBefore * pen.line));
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

/// In a column too narrow for a bar: the figure, and its reading under it.
void paintNarrow(QPainter& painter, const QRectF& box, const MatrixCellFigure& cell,
                 const MatrixPen& pen) {
    MatrixPen lower = pen;
    lower.body = pen.small;
    const double top = box.center().y() - (pen.line + pen.lower) / 2;
    painter.setPen(pen.ground.ink);
    painter.setFont(isSettled(cell.mark) ? strong(pen.body) : pen.body);
    painter.drawText(QRectF(box.left(), top, box.width(), pen.line),
                     Qt::AlignLeft | Qt::AlignVCenter, cell.figure);
    MatrixCellFigure alone = cell;
    alone.before.clear();
    const QRectF under(box.left(), cell.figure.isEmpty() ? box.top() : top + pen.line, box.width(),
                       cell.figure.isEmpty() ? box.height() : pen.lower);
    paintWords(painter, under, alone, lower);
}

} // namespace

MatrixPen matrixPen(const look::Ground& ground, const QFont& body) {
    MatrixPen pen{.ground = ground, .body = body, .small = body};
    const int pixels = body.pixelSize() > 0 ? body.pixelSize() : QFontInfo(body).pixelSize();
    pen.small.setPixelSize(static_cast<int>(std::lround(charts::smallSize(pixels, 0.87))));
    pen.line = QFontMetricsF(pen.body).height();
    pen.lower = QFontMetricsF(pen.small).height();
    return pen;
}

double matrixRowHeight(const MatrixPen& pen) {
    return std::ceil(pen.line + pen.lower + pen.line * 0.2);
}

double matrixHeadHeight(const MatrixPen& pen) {
    return std::ceil(pen.line + pen.lower + pen.line * 0.5);
}

double measureWidth(const MatrixFigure& figure, const MatrixPen& pen) {
    const QFontMetricsF body(pen.body);
    const QFontMetricsF small(pen.small);
    double width = 0;
    for (const MatrixMeasureFigure& measure : figure.measures)
        width = std::max({width, body.horizontalAdvance(measure.name),
                          small.horizontalAdvance(measure.unit + u"   "_s + measure.matters)});
    return width + 2 * inset * pen.line;
}

double blockWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen, bool whole) {
    const double step = hasSteps(figure, block) ? sizedAs(pen, 130) : 0;
    const QFontMetricsF small(pen.small);
    const double word = wordWidth(figure, block, pen, whole);
    const double cells = figureWidth(figure, block, pen) + step + word +
                         (step > 0 ? 2 : 1) * gap * pen.line + 2 * inset * pen.line;
    const double head =
        std::max(QFontMetricsF(strong(pen.body)).horizontalAdvance(figure.blocks[block].name),
                 small.horizontalAdvance(figure.blocks[block].under));
    return std::ceil(std::max(cells, head + 2 * inset * pen.line)) + 1;
}

double leastBlockWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen) {
    if (!hasSteps(figure, block))
        return std::min(blockWidth(figure, block, pen), 6 * pen.line);
    const double least = std::max(figureWidth(figure, block, pen), 6 * pen.line);
    return least + 2 * inset * pen.line;
}

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
/// Where the parts of a block's column stand.
struct BlockParts {
    QRectF figure{}, step{}, words{};
    bool narrow = false;
};

BlockParts partsOf(const QRectF& box, const MatrixFigure& figure, std::size_t block,
                   const MatrixPen& pen) {
    const QRectF inner = box.adjusted(inset * pen.line, 0, -inset * pen.line, 0);
    const double digits = figureWidth(figure, block, pen);
    const double between = gap * pen.line;
    double word = wordWidth(figure, block, pen, true);
    if (inner.width() - digits - word - 2 * between < sizedAs(pen, leastStep))
        word = wordWidth(figure, block, pen, false);
    BlockParts parts;
    parts.figure = QRectF(inner.left(), inner.top(), digits, inner.height());
    if (!hasSteps(figure, block)) {
        parts.words = inner.adjusted(digits + (digits > 0 ? between : 0), 0, 0, 0);
        parts.narrow = parts.words.width() < std::min(word, 4 * pen.line);
        return parts;
    }
    const double rest = inner.width() - digits - word - 2 * between;
    parts.narrow = rest < sizedAs(pen, leastStep);
    const double step = std::min(rest, sizedAs(pen, 170));
    parts.step = QRectF(parts.figure.right() + between, inner.top(), step, inner.height());
    parts.words = QRectF(parts.step.right() + between, inner.top(),
                         inner.right() - parts.step.right() - between, inner.height());
    return parts;
}
} // namespace

void paintBlockHead(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
                    std::size_t block, const MatrixPen& pen) {
    const MatrixBlockFigure& head = figure.blocks[block];
    const QRectF inner = box.adjusted(inset * pen.line, 0, -inset * pen.line, 0);
    const double top = inner.center().y() - (pen.line + pen.lower) / 2;
    painter.setPen(pen.ground.ink);
    paintWrapped(painter, QRectF(inner.left(), top, inner.width(), pen.line), head.name,
                 strong(pen.body), 1);
    painter.setPen(pen.ground.quiet);
    const BlockParts parts = partsOf(box, figure, block, pen);
    const bool scale = !parts.narrow && parts.step.width() > sizedAs(pen, leastStep);
    const QFontMetricsF small(pen.small);
    QRectF under(inner.left(), top + pen.line, inner.width(), pen.lower);
    const double unit = parts.step.width() / 2 / figure.span;
    const double word = small.horizontalAdvance(u"+10"_s);
    const int labelled = unit > word ? 1 : 2 * unit > word ? 2 : 5; // units from label to label
    const double taken = inner.left() + small.horizontalAdvance(head.under) + 0.3 * pen.lower;
    paintWrapped(painter, under, head.under, pen.small, 1);
    if (!scale || labelled > figure.span || taken > parts.step.center().x() - word / 4)
        return;
    for (const int value : {-labelled, 0, labelled}) {
        const QString label = value == 0 ? u"0"_s
                                         : (value < 0 ? QString(QChar(0x2212)) : u"+"_s) +
                                               QString::number(std::abs(value));
        const double left =
            parts.step.center().x() + value * unit - small.horizontalAdvance(label) / 2;
        if (left >= taken) // the middle and one side tell a scale as well
            painter.drawText(QPointF(left, under.top() + small.ascent()), label);
    }
}

void paintCell(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
               std::size_t measure, std::size_t block, const MatrixPen& pen) {
    const MatrixCellFigure& cell = figure.cells[measure][block];
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const BlockParts parts = partsOf(box, figure, block, pen);
    if (parts.narrow) {
        if (cell.mark == CellMark::NotComparable)
            look::hatch(painter, box.adjusted(1, 2, -1, -2), pen.ground);
        paintNarrow(painter, box.adjusted(inset * pen.line, 0, -inset * pen.line, 0), cell, pen);
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
        if (cell.mark == CellMark::NotComparable)
            look::hatch(painter, parts.step.adjusted(0, 2, 0, -2), pen.ground);
        else
            paintStepGround(painter, parts.step, figure.span, pen);
        if (cell.step)
            paintStep(painter, parts.step, *cell.step, cell.mark, figure.span, pen);
    } else if (cell.mark == CellMark::NotComparable) {
        look::hatch(painter, box.adjusted(1, 2, -1, -2), pen.ground);
    }
    painter.setPen(pen.ground.ink);
    painter.setFont(isSettled(cell.mark) ? strong(pen.body) : pen.body);
    painter.drawText(parts.figure, Qt::AlignRight | Qt::AlignVCenter, cell.figure);
    paintWords(painter, words, cell, pen);
    painter.restore();
}

std::vector<double> sharedOut(const MatrixFigure& figure, double room, double most,
                              const MatrixPen& pen) {
    std::vector<double> widths;
    double fixed = 0, wanted = 0;
    const auto want = [&](bool whole) {
        widths.clear();
        fixed = wanted = 0;
        for (std::size_t i = 0; i < figure.blocks.size(); ++i) {
            widths.push_back(blockWidth(figure, i, pen, whole));
            (hasSteps(figure, i) ? wanted : fixed) += widths.back();
        }
    };
    want(true);
    if (fixed + wanted > room) // bars before what is told under the table as well
        want(false);
    // What is read needs its bars; the chosen block's figures need no more than their own room.
    const bool allFits = wanted > 0 && room > fixed;
    const double share = allFits ? std::min((room - fixed) / wanted, most)
                                 : std::min(room / std::max(1.0, fixed + wanted), most);
    for (std::size_t i = 0; i < widths.size(); ++i)
        if (!allFits || hasSteps(figure, i))
            widths[i] *= share;
    return widths;
}

MatrixColumns matrixColumns(const MatrixFigure& figure, double width, const MatrixPen& pen) {
    MatrixColumns columns;
    columns.measures = std::min(measureWidth(figure, pen), width * 0.37);
    const double room = width - columns.measures;
    columns.blocks = sharedOut(figure, room, 1.25, pen);
    return columns;
}

void paintMatrixHead(QPainter& painter, const QPointF& at, const MatrixFigure& figure,
                     const MatrixColumns& columns, const MatrixPen& pen) {
    const double height = matrixHeadHeight(pen);
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
