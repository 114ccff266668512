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

/// So many measures stand on one page.
constexpr std::size_t measuresAPage = 25;

page::Print wholeSeasonPrint(const AskedSeason& asked, LoadUnit unit);
/// Fills by the smallest step down in type that keeps to so many pages; the smallest of all where
/// none does.
void fillWithin(page::Flow& flow, std::size_t most,
                const std::function<void(page::Flow&, double)>& fill);
/// The matrix row by row, its heads again on the next page. text: height of ordinary text.
void addMatrix(page::Flow& flow, const MatrixFigure& figure, double text);

} // namespace slopebook::ui
