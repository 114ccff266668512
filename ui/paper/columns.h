// SPDX-License-Identifier: GPL-3.0-or-later
// How wide the columns of a printed table are: as asked for, but for words that would be broken and
// rows that would take more lines than they need.
#pragma once

#include "ui/paper/flow.h"

namespace slopebook::ui::page {

/// Between the text of a column and the next column; the last one's goes to the edge.
constexpr double cellGap = 8;

/// As wide together. No word is broken while another column has room to give, and room goes from
/// column to column as long as the table grows shorter by it.
std::vector<Column> fitted(std::vector<Column> columns, const std::vector<Cell>& head,
                           const std::vector<std::vector<Cell>>& rows, const QFont& font);

} // namespace slopebook::ui::page
