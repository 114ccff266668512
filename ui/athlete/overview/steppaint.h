// SPDX-License-Identifier: GPL-3.0-or-later
// A change as it is drawn in the matrix and beside the overview's rows, on one scale for all of
// them.
#pragma once

#include "ui/athlete/overview/matrixpaint.h"

namespace slopebook::ui {

bool isSettled(CellMark mark);
QColor markColour(CellMark mark, const look::Ground& ground);
/// The grey of what does not matter and zero; the bar. span: units of what matters either way.
void paintStepGround(QPainter& painter, const QRectF& box, double span, const MatrixPen& pen);
void paintStep(QPainter& painter, const QRectF& box, const Step& step, CellMark mark, double span,
               const MatrixPen& pen);
/// The sign of a reading, in a box of a letter's size: a way up or down, two bars for held.
void paintMark(QPainter& painter, const QRectF& box, CellMark mark, const MatrixPen& pen);

} // namespace slopebook::ui
