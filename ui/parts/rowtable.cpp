// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/rowtable.h"

#include <QHeaderView>

namespace slopebook::ui {

namespace {
/// The chosen row stays in sight when the table gets its room, or less of it.
class RowTable final : public QTableView {
protected:
    void resizeEvent(QResizeEvent* event) override {
        QTableView::resizeEvent(event);
        if (currentIndex().isValid())
            scrollTo(currentIndex());
    }
};
} // namespace

QTableView* rowTable(QAbstractItemModel* model, const QString& name) {
    auto* table = new RowTable;
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
