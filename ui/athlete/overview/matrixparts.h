// SPDX-License-Identifier: GPL-3.0-or-later
// How wide everything in a season's matrix is, and where it stands in its cell: what matrixpaint.h
// paints by.
#pragma once

#include "ui/athlete/overview/matrixpaint.h"

#include <QFontMetricsF>

namespace slopebook::ui::matrix {

constexpr double inset = 0.35; ///< beside what stands in a cell, heights of a line

QFont strong(QFont font);
/// In smaller type and on two lines.
bool wraps(CellMark mark);
double markWidth(CellMark mark, const MatrixPen& pen);
/// On two lines, and no word cut.
double wrappedWidth(const QString& text, const QFontMetricsF& metrics);
bool hasSteps(const MatrixFigure& figure, std::size_t block);
/// Words that stand where a bar would.
bool besideNoStep(const MatrixCellFigure& cell);

/// Where the parts of a block's column stand.
struct BlockParts {
    QRectF figure{}, step{}, words{};
    bool narrow = false;
};
BlockParts partsOf(const QRectF& box, const MatrixFigure& figure, std::size_t block,
                   const MatrixPen& pen);

} // namespace slopebook::ui::matrix
