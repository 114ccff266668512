// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the parts of a season's matrix, for the window's table and for paper alike; greys tell it
// all.
#pragma once

#include "ui/athlete/overview/matrixfigure.h"

#include <QFont>
#include <QPainter>

#include <span>

namespace slopebook::ui {

/// What is painted with: the ground, the ordinary font and the smaller one.
struct MatrixPen {
    look::Ground ground{};
    QFont body{}, small{};
    double line = 0;  ///< height of a line of the ordinary font
    double lower = 0; ///< of the smaller one
};
MatrixPen matrixPen(const look::Ground& ground, const QFont& body);

/// Height of a row, and of the blocks' heads: where there are bars with a line for their scale.
double matrixRowHeight(const MatrixPen& pen);
double matrixHeadHeight(const MatrixFigure& figure, const MatrixPen& pen);
/// Width of the measures' column, and of a block's at its best and at its least.
double measureWidth(const MatrixFigure& figure, const MatrixPen& pen);
/// whole: with what another block says of it under its reading.
double blockWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen,
                  bool whole = true);
double leastBlockWidth(const MatrixFigure& figure, std::size_t block, const MatrixPen& pen);

/// Whether a block's column of that width has room for its bars, where it has any: else its figures
/// and readings stand alone.
bool hasBars(const MatrixFigure& figure, std::size_t block, double width, const MatrixPen& pen);

void paintMeasure(QPainter& painter, const QRectF& box, const MatrixMeasureFigure& measure,
                  const MatrixPen& pen);
void paintBlockHead(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
                    std::size_t block, const MatrixPen& pen);
void paintCell(QPainter& painter, const QRectF& box, const MatrixFigure& figure,
               std::size_t measure, std::size_t block, const MatrixPen& pen);
/// Widths of the blocks' columns within so much room, none over `most` times what it wants.
std::vector<double> sharedOut(const MatrixFigure& figure, double room, double most,
                              const MatrixPen& pen);

/// The columns of a matrix that is painted whole, from the left edge of `width`.
struct MatrixColumns {
    double measures = 0;
    std::vector<double> blocks{}; ///< widths
};
MatrixColumns matrixColumns(const MatrixFigure& figure, double width, const MatrixPen& pen);
/// Whether any of the blocks, of those widths, has its bars.
bool anyBars(const MatrixFigure& figure, std::span<const double> widths, const MatrixPen& pen);
/// Heads, and one row: so that a table may go on with its heads on the next page.
void paintMatrixHead(QPainter& painter, const QPointF& at, const MatrixFigure& figure,
                     const MatrixColumns& columns, const MatrixPen& pen);
void paintMatrixRow(QPainter& painter, const QPointF& at, double height, const MatrixFigure& figure,
                    std::size_t measure, const MatrixColumns& columns, const MatrixPen& pen);

} // namespace slopebook::ui
