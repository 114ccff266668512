// SPDX-License-Identifier: GPL-3.0-or-later
// What a row of a table says beside what has a column on the screen: for its tip, for a key, and
// for those who hear the table.
#pragma once

#include <QModelIndex>
#include <QStringList>

class QTableView;

namespace slopebook::ui {

/// The heading and the text of each of those columns that says anything in that row.
QStringList cellsOf(const QModelIndex& row, const QList<int>& columns);
/// These, and the tips of the row's own cells.
QStringList restOfRow(const QTableView& table, const QModelIndex& row, const QList<int>& columns);

/// Shows it under the row, until Escape or the mouse.
void showRest(QTableView& table, const QStringList& rest);
/// What those who hear the table are told of it: this row's, or without one which columns are
/// meant, and the key. Nothing where there is nothing.
QString describedRest(const QStringList& rest, const QTableView& table, const QList<int>& columns);

} // namespace slopebook::ui
