// SPDX-License-Identifier: GPL-3.0-or-later
// A table of the screen as cells of the paper.
#pragma once

#include "ui/paper/flow.h"
#include "ui/parts/texttable.h"

namespace slopebook::ui::page {

inline std::vector<Cell> headCells(const QStringList& headings) {
    std::vector<Cell> cells;
    for (const QString& heading : headings)
        cells.push_back({.text = heading, .bold = true});
    return cells;
}

inline std::vector<std::vector<Cell>> rowCells(const std::vector<TextTable::Row>& rows) {
    std::vector<std::vector<Cell>> all;
    for (const TextTable::Row& row : rows) {
        std::vector<Cell>& cells = all.emplace_back();
        for (qsizetype i = 0; i < row.cells.size(); ++i)
            cells.push_back(
                {.text = row.cells[i], .bold = row.strong, .quiet = row.quiet.contains(int(i))});
    }
    return all;
}

} // namespace slopebook::ui::page
