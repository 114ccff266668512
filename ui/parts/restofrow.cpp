// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/restofrow.h"

#include <QCoreApplication>
#include <QTableView>
#include <QToolTip>

namespace slopebook::ui {

namespace {
struct RestOfRow {
    Q_DECLARE_TR_FUNCTIONS(RestOfRow)
};

QString headingOf(const QAbstractItemModel& model, int column) {
    return model.headerData(column, Qt::Horizontal).toString().replace(u'\n', u' ');
}
} // namespace

QStringList cellsOf(const QModelIndex& row, const QList<int>& columns) {
    QStringList cells;
    for (const int column : columns)
        if (const QString cell = row.siblingAtColumn(column).data().toString(); !cell.isEmpty())
            cells << RestOfRow::tr("%1: %2").arg(headingOf(*row.model(), column), cell);
    return cells;
}

QStringList restOfRow(const QTableView& table, const QModelIndex& row, const QList<int>& columns) {
    if (!row.isValid())
        return {};
    QStringList rest = cellsOf(row, columns);
    for (int column = 0; column < table.model()->columnCount(); ++column) {
        const QModelIndex cell = row.siblingAtColumn(column);
        const QString tip = cell.data(Qt::ToolTipRole).toString();
        if (!table.isColumnHidden(column) && tip != cell.data().toString())
            rest << tip;
    }
    rest.removeAll(QString());
    rest.removeDuplicates();
    return rest;
}

void showRest(QTableView& table, const QStringList& rest) {
    const QRect row = table.visualRect(table.currentIndex());
    const QPoint under(row.left(), row.bottom());
    QToolTip::showText(table.viewport()->mapToGlobal(under), rest.join(u'\n'), &table);
}

QString describedRest(const QStringList& rest, const QTableView& table, const QList<int>& columns) {
    if (!rest.isEmpty())
        return RestOfRow::tr("%1. F4 shows it under the row.").arg(rest.join(QLatin1String("; ")));
    QStringList headings;
    for (const int column : columns)
        headings << headingOf(*table.model(), column);
    headings.removeAll(QString());
    if (headings.isEmpty())
        return {};
    return RestOfRow::tr("F4 shows under a row what has no column here: %1.")
        .arg(headings.join(QLatin1String(", ")));
}

} // namespace slopebook::ui
