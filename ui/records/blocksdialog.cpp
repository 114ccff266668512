// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/blocksdialog.h"

#include "ui/edits/valueedits.h"
#include "ui/parts/dayedit.h"
#include "ui/parts/listlayout.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QDateEdit>
#include <QHeaderView>
#include <QLineEdit>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QTimer>

#include <utility>

namespace slopebook::ui {

namespace {
constexpr int usualDays = 42; // six weeks, to begin with
}

QString aWeekText(const std::optional<SessionsAWeek>& planned) {
    return planned ? text(typedText(*planned)).replace(u'.', QLocale().decimalPoint()) : QString();
}

BlockDialog::BlockDialog(Logbook& logbook, std::optional<BlockId> id, Date start, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change training block") : tr("Add training block"), parent),
      m_id(id) {
    Block block;
    block.first = start;
    block.last = modelDate(qtDate(start).addDays(usualDays - 1));
    if (id)
        block = stored(logbook.log(), *id);
    m_name = addLine(tr("&Name"), text(block.name));
    m_first = new DayEdit(block.first);
    addField(tr("&First day"), m_first);
    m_last = new DayEdit(block.last);
    addField(tr("&Last day"), m_last);
    m_ceiling = addLine(tr("Load &ceiling, %1").arg(unit()), shown(block.ceiling),
                        tr("The heaviest load at hand in that block. Empty: no ceiling."));
    m_trained = addLine(tr("&Trained"), text(block.trained),
                        tr("What was done in it, in a line, such as fast lifts and jumps. It "
                           "stands beside every figure of the block."));
    m_aWeek = addLine(tr("Sessions a &week"), aWeekText(block.aWeek),
                      tr("As planned: 3, 2-3 or 2.5. Empty: not said."));
    m_note = addLine(tr("N&ote"), text(block.note));
    finish();
}

std::optional<SessionsAWeek> BlockDialog::aWeek() const {
    const std::string typed = utf8(m_aWeek->text().trimmed());
    if (typed.empty())
        return std::nullopt;
    const auto read = sessionsAWeek(typed);
    if (!read)
        throw FieldProblem{m_aWeek, tr("Expected sessions a week in halves from 0.5 to 21, such as "
                                       "3, 2-3 or 2.5, or nothing.")};
    return read;
}

void BlockDialog::save() {
    Block block{.name = required(m_name, tr("Expected a name.")),
                .first = modelDate(m_first->date()),
                .last = modelDate(m_last->date()),
                .ceiling = mass(m_ceiling,
                                tr("Expected a load in %1, such as 40, or nothing.").arg(unit())),
                .trained = utf8(m_trained->text().trimmed()),
                .aWeek = aWeek(),
                .note = utf8(m_note->text().trimmed())};
    if (block.last < block.first)
        throw FieldProblem{m_last, tr("Expected a last day on or after the first.")};
    if (m_id)
        logbook().changeBlock(*m_id, block);
    else
        m_id = logbook().addBlock(block);
}

BlocksDialog::BlocksDialog(Logbook& logbook, Clock clock, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_clock(std::move(clock)),
      m_table(new QTableWidget(0, 7)) {
    setWindowTitle(tr("Training blocks"));
    m_table->setAccessibleName(tr("Training blocks"));
    m_table->setHorizontalHeaderLabels({tr("Block"), tr("First day"), tr("Last day"),
                                        tr("Ceiling, %1").arg(unitName(logbook.loadUnit())),
                                        tr("Trained"), tr("Sessions a week"), tr("Note")});
    m_table->horizontalHeader()->setStretchLastSection(true);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, m_table, [this] {
        // A note wraps in what is left, once that is known.
        QTimer::singleShot(0, m_table, &QTableView::resizeRowsToContents);
    });
    m_table->verticalHeader()->hide();
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    auto* addButton = new QPushButton(tr("&Add…"));
    auto* changeButton = new QPushButton(tr("Cha&nge…"));
    auto* removeButton = new QPushButton(tr("Re&move"));
    layOutList(*this, m_table, {addButton, changeButton, removeButton});
    resize(860, 340);
    connect(addButton, &QPushButton::clicked, this, [this] { openBlock(std::nullopt); });
    connect(changeButton, &QPushButton::clicked, this, [this] {
        if (const auto id = current())
            openBlock(id);
    });
    connect(m_table, &QTableWidget::itemActivated, this, [this] { openBlock(current()); });
    connect(removeButton, &QPushButton::clicked, this, &BlocksDialog::remove);
    fill();
}

std::optional<BlockId> BlocksDialog::current() const {
    const QTableWidgetItem* item = m_table->item(m_table->currentRow(), 0);
    if (!item)
        return std::nullopt;
    return BlockId{item->data(Qt::UserRole).toLongLong()};
}

void BlocksDialog::fill() {
    const auto blocks = m_logbook.log().blocks();
    m_table->setRowCount(static_cast<int>(blocks.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const auto& [id, block] = blocks[static_cast<std::size_t>(row)];
        const QStringList cells{
            text(block.name),
            dateText(block.first),
            dateText(block.last),
            block.ceiling ? massText(*block.ceiling, m_logbook.loadUnit()) : QString(),
            text(block.trained),
            aWeekText(block.aWeek),
            text(block.note)};
        for (int column = 0; column < cells.size(); ++column)
            m_table->setItem(row, column, new QTableWidgetItem(cells[column]));
        m_table->item(row, 0)->setData(Qt::UserRole, qint64(raw(id)));
    }
    m_table->resizeColumnsToContents();
}

void BlocksDialog::openBlock(std::optional<BlockId> id) {
    BlockDialog dialog(m_logbook, id, m_clock.today(), this);
    if (dialog.exec() == Accepted)
        fill();
}

void BlocksDialog::remove() {
    const auto id = current();
    if (!id)
        return;
    try {
        m_logbook.removeBlock(*id);
        fill();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Training block"), said(error));
    }
}

} // namespace slopebook::ui
