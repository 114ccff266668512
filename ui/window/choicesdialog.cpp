// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/choicesdialog.h"

#include "ui/edits/logbook.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/texttable.h"
#include "ui/window/mergerows.h"
#include "ui/words/said.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

ChoicesDialog::ChoicesDialog(Logbook& logbook, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_open(desks::openConflicts(logbook.log())),
      m_sentence(new QLabel), m_list(new QTreeWidget), m_why(new QLabel),
      m_sides(new TextTable(this)), m_table(textRowTable(m_sides, tr("Both sides"))),
      m_problem(new QLabel) {
    setWindowTitle(tr("Choose between two sides"));
    build();
    fill();
}

void ChoicesDialog::build() {
    m_list->setHeaderLabels({tr("Of"), tr("Which")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAccessibleName(tr("What waits"));
    m_list->setObjectName(QStringLiteral("choices"));
    m_list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    m_table->setObjectName(QStringLiteral("sides"));
    for (QLabel* label : {m_sentence, m_why, m_problem}) {
        label->setTextFormat(Qt::PlainText); // names are anything
        label->setWordWrap(true);
    }
    m_problem->setObjectName(QStringLiteral("choiceProblem"));
    m_problem->hide();
    auto* buttons = new QDialogButtonBox;
    m_keep = buttons->addButton(tr("&Keep what stands"), QDialogButtonBox::ActionRole);
    m_take = buttons->addButton(tr("&Take the other side"), QDialogButtonBox::ActionRole);
    buttons->addButton(QDialogButtonBox::Close); // last: Tab comes to none that came before others
    m_keep->setObjectName(QStringLiteral("keepStanding"));
    m_take->setObjectName(QStringLiteral("takeOther"));
    connect(m_keep, &QPushButton::clicked, this, [this] { settle(desks::Choice::AsItStands); });
    connect(m_take, &QPushButton::clicked, this, [this] { settle(desks::Choice::WhatLost); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_list, &QTreeWidget::currentItemChanged, this,
            [this] { showOne(m_list->indexOfTopLevelItem(m_list->currentItem())); });
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_sentence);
    layout->addWidget(m_list, 2);
    layout->addWidget(m_why);
    layout->addWidget(m_table, 3);
    layout->addWidget(m_problem);
    layout->addWidget(buttons);
    setTabOrder(m_keep, m_take); // the box's own order passes over one of its buttons
    setTabOrder(m_take, buttons->button(QDialogButtonBox::Close));
    resize(760, 520);
}

void ChoicesDialog::fill() {
    m_sentence->setText(
        tr("%n choices wait. One side of each counts until then; the choice goes along to the "
           "other log with the next merge.",
           nullptr, static_cast<int>(m_open.size())));
    const int row = std::max(0, m_list->indexOfTopLevelItem(m_list->currentItem()));
    m_list->clear();
    for (const desks::ShownConflict& one : m_open) {
        auto* item =
            new QTreeWidgetItem(m_list, {said(desks::sayKind(one.kind), m_logbook.loadUnit()),
                                         said(one.about, m_logbook.loadUnit())});
        item->setToolTip(1, item->text(1));
        giveRowAir(*m_list, *item);
    }
    const int last = m_list->topLevelItemCount() - 1;
    m_list->setCurrentItem(m_list->topLevelItem(std::min(row, last)));
    showOne(last < 0 ? -1 : std::min(row, last));
    m_list->setFocus();
}

void ChoicesDialog::showOne(int row) {
    m_problem->hide();
    const bool one = row >= 0 && row < static_cast<int>(m_open.size());
    std::vector<TextTable::Row> rows;
    if (one) {
        const desks::ShownConflict& conflict = m_open[static_cast<std::size_t>(row)];
        const auto words = [&](const Words& some) { return said(some, m_logbook.loadUnit()); };
        m_why->setText(words(asSentence(desks::sayWhy(conflict.why))));
        if (conflict.stands != conflict.lived)
            rows.push_back({.cells = {tr("in the log"), conflict.stands ? tr("yes") : tr("removed"),
                                      conflict.lived ? tr("yes") : tr("removed")}});
        for (const desks::SideBySide& field : conflict.fields)
            rows.push_back({.cells = {words(field.field), words(field.stands), words(field.lost)}});
    } else {
        m_why->clear();
    }
    m_sides->setTable({tr("What"), tr("As it stands"), tr("The other side")}, std::move(rows),
                      QList<int>{});
    m_table->resizeColumnsToContents();
    m_table->setColumnWidth(1, std::max(m_table->columnWidth(1), 240));
    m_keep->setEnabled(one);
    m_take->setEnabled(one && m_open[static_cast<std::size_t>(std::max(row, 0))].known);
}

void ChoicesDialog::settle(desks::Choice choice) {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    if (row < 0)
        return;
    try {
        const auto uuid = m_open[static_cast<std::size_t>(row)].uuid;
        m_logbook.applyOutsideUndo([&](log::Log& log) { desks::settle(log, uuid, choice); });
        m_open = desks::openConflicts(m_logbook.log());
        fill();
        if (m_open.empty())
            accept();
    } catch (const std::exception& error) {
        m_problem->setText(said(error));
        m_problem->show();
    }
}

} // namespace slopebook::ui
