// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixparts.h"

#include <QFontInfo>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using namespace matrix;

namespace {

constexpr double leastStep = 56; // px of a strip that can still be read, at a body of 13
constexpr double widestStep = 170;
constexpr double widestWord = 9;    // of a reading's column, in heights of a line
constexpr double widestBefore = 14; // of what another block says, with its name
constexpr double gap = 0.5;         // heights of a line

double sizedAs(const MatrixPen& pen, double at13) {
    return at13 * pen.line / 15;
}

double figureWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen) {
    const QFontMetricsF body(strong(pen.body));
    double width = 0;
    for (const auto& row : figure.cells)
        width = std::max(width, body.horizontalAdvance(row[block].figure));
    return width;
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

} // namespace

namespace matrix {

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

bool wraps(CellMark mark) {
    return mark == CellMark::NoReading || mark == CellMark::NoFigure ||
           mark == CellMark::NotComparable;
}

double markWidth(CellMark mark, const MatrixPen& pen) {
    return isSettled(mark) || mark == CellMark::Held ? 0.85 * pen.line : 0;
}

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

bool besideNoStep(const MatrixCellFigure& cell) {
    return !cell.step && cell.mark != CellMark::NotComparable;
}

namespace {
/// In a column too narrow for a bar beside its words: figure and bar, and the words under them.
BlockParts narrowParts(const QRectF& inner, double digits, bool steps, const MatrixPen& pen) {
    const double top = inner.center().y() - (pen.line + pen.lower) / 2;
    BlockParts parts{.figure = QRectF(inner.left(), top, digits, pen.line),
                     .words = QRectF(inner.left(), top + pen.line, inner.width(), pen.lower),
                     .narrow = true};
    const double from = parts.figure.right() + gap * pen.line;
    const double room = inner.right() - from - gap * pen.line; // half a figure of the scale's
    if (steps && room >= sizedAs(pen, leastStep))
        parts.step = QRectF(from, top, std::min(room, sizedAs(pen, widestStep)), pen.line);
    return parts;
}
} // namespace

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
        return parts.words.width() < std::min(word, 4 * pen.line)
                   ? narrowParts(inner, digits, false, pen)
                   : parts;
    }
    const double rest = inner.width() - digits - word - 2 * between;
    if (rest < sizedAs(pen, leastStep))
        return narrowParts(inner, digits, true, pen);
    const double step = std::min(rest, sizedAs(pen, widestStep));
    parts.step = QRectF(parts.figure.right() + between, inner.top(), step, inner.height());
    parts.words = QRectF(parts.step.right() + between, inner.top(),
                         inner.right() - parts.step.right() - between, inner.height());
    return parts;
}

} // namespace matrix

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

double matrixHeadHeight(const MatrixFigure& figure, const MatrixPen& pen) {
    bool scale = false;
    for (std::size_t i = 0; i < figure.blocks.size(); ++i)
        scale = scale || hasSteps(figure, i);
    return std::ceil((scale ? 2 : 1) * pen.lower + pen.line * 1.5);
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

bool hasBars(const MatrixFigure& figure, std::size_t block, double width, const MatrixPen& pen) {
    return !partsOf(QRectF(0, 0, width, matrixRowHeight(pen)), figure, block, pen).step.isEmpty();
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

} // namespace slopebook::ui
