// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/rowtable.h"

#include <QHeaderView>

namespace slopebook::ui {

namespace {
constexpr char growing[] = "rowsGrow";
constexpr int rowsThatCount = 60; // for a column's width: more than a screen shows

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

QTableView* rowTable(QAbstractItemModel* model, const QString& name, const RowStyle& style) {
    auto* table = new RowTable;
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setWordWrap(style.wraps);
    QHeaderView* rows = table->verticalHeader();
    rows->setVisible(style.numbered);
    if (style.height > 0)
        rows->setDefaultSectionSize(style.height);
    if (style.compact)
        rows->setDefaultSectionSize(table->fontMetrics().height() + 8);
    if (style.numbered)
        rows->setSectionResizeMode(QHeaderView::Fixed);
    QHeaderView* columns = table->horizontalHeader();
    columns->setHighlightSections(false);
    columns->setStretchLastSection(style.lastTakesRest);
    if (style.growing) {
        rows->setMinimumSectionSize(30);
        table->setProperty(growing, true);
        QObject::connect(columns, &QHeaderView::sectionResized, table, [table] {
            if (table->property(growing).toBool())
                table->resizeRowsToContents();
        });
    }
    return table;
}

WidthsFirst::WidthsFirst(QTableView& table) : m_table(table) {
    table.horizontalHeader()->setResizeContentsPrecision(rowsThatCount);
    if (table.property(growing).isValid())
        table.setProperty(growing, false);
}

WidthsFirst::~WidthsFirst() {
    if (!m_table.property(growing).isValid())
        return;
    m_table.setProperty(growing, true);
    m_table.resizeRowsToContents();
}

void showWhole(QTableView* table) {
    table->resizeColumnsToContents();
    int height = table->horizontalHeader()->sizeHint().height() + 2 * table->frameWidth() + 2;
    for (int row = 0; row < table->model()->rowCount(); ++row)
        height += table->rowHeight(row);
    table->setFixedHeight(height + 16); // room for a scroll bar below
}

QTableView* textRowTable(QAbstractItemModel* model, const QString& name) {
    return rowTable(model, name, {.wraps = false, .lastTakesRest = true});
}

} // namespace slopebook::ui
