// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that are read row by row, set up alike.
#pragma once

#include <QTableView>

namespace slopebook::ui {

/// One row is chosen at a time and stays in sight when the table is resized; Tab leaves the table,
/// rows have no headings. name: for those who hear the table.
QTableView* rowTable(QAbstractItemModel* model, const QString& name);

/// The same for ready texts: none wraps, the last column takes what is left.
QTableView* textRowTable(QAbstractItemModel* model, const QString& name);

} // namespace slopebook::ui
