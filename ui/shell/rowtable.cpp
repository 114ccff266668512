// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/rowtable.h"

#include <QHeaderView>

namespace slopebook::ui {

QTableView* rowTable(QAbstractItemModel* model, const QString& name) {
    auto* table = new QTableView;
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

QTableView* textRowTable(QAbstractItemModel* model, const QString& name) {
    QTableView* table = rowTable(model, name);
    table->setWordWrap(false);
    table->horizontalHeader()->setStretchLastSection(true);
    return table;
}

} // namespace slopebook::ui
