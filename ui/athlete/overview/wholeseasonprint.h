// SPDX-License-Identifier: GPL-3.0-or-later
// A whole season on paper: one page, two where there are more than 25 measures.
#pragma once

#include "ui/athlete/overview/matrixpaint.h"
#include "ui/athlete/overview/seasonasking.h"
#include "ui/paper/pages.h"

#include <QStringList>

namespace slopebook::ui {

/// What stands under a matrix.
struct SeasonNotes {
    QStringList story{}; ///< what was done in the blocks
    QStringList beware{};
    QString intervals{}; ///< of how many questions they hold at once
    QStringList chance{};
    QStringList design{};
};
SeasonNotes seasonNotes(const AskedSeason& asked, LoadUnit unit);
/// Its intervals alone: what they hold for; empty where no blocks are read at once.
QString seasonIntervals(const answers::SeasonMatrix& matrix);

page::Print wholeSeasonPrint(const AskedSeason& asked, LoadUnit unit);
/// The matrix row by row, its heads again on the next page.
void addMatrix(page::Flow& flow, const MatrixFigure& figure, const QFont& font);

} // namespace slopebook::ui
