// SPDX-License-Identifier: GPL-3.0-or-later
// What may be done with the sessions of the history: open, compare, delete, copy.
#include "ui/athlete/history/historypage.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QMenu>
#include <QMessageBox>

#include <algorithm>
#include <set>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {
constexpr std::size_t mostOffered =
    25; // sessions in the menu; any other pair is chosen in the table
} // namespace

void HistoryPage::openCurrent() {
    const QModelIndex at = m_table->currentIndex();
    if (at.isValid())
        Q_EMIT sessionWanted(SessionId{at.data(HistoryModel::SessionRole).toLongLong()});
}

void HistoryPage::showMenu(const QPoint& at) {
    const std::vector<SessionId> sessions = chosen();
    if (sessions.empty())
        return;
    QMenu menu(this);
    if (sessions.size() == 1)
        menu.addAction(tr("&Open the session"), this, [this] { openCurrent(); });
    addCompareActions(menu, sessions);
    menu.addAction(tr("&Copy the rows"), this, [this] { copyRows(); });
    if (sessions.size() == 1) {
        menu.addSeparator();
        menu.addAction(tr("&Delete the session"), this,
                       [this, session = sessions.front()] { askAndDelete(session); });
    }
    menu.exec(m_table->viewport()->mapToGlobal(at));
}

// Only sessions of the same athlete are compared.
void HistoryPage::addCompareActions(QMenu& menu, const std::vector<SessionId>& sessions) {
    std::vector<const HistoryRow*> rows;
    for (const SessionId session : sessions)
        if (const int row = m_model->rowOf(session); row >= 0)
            rows.push_back(&m_model->row(row));
    if (rows.size() == 2 && rows[0]->of == rows[1]->of)
        menu.addAction(tr("Com&pare these two"), this, [this, sessions, of = rows[0]->of] {
            Q_EMIT comparisonWanted(of, sessions[0], sessions[1]);
        });
    if (rows.size() != 1 || !m_reader)
        return;
    const HistoryRow& mine = *rows.front();
    const auto all = m_reader->newest(mine.of, mostOffered + 1);
    if (all.size() < 2)
        return;
    QMenu* others = menu.addMenu(tr("Com&pare with"));
    for (const LiftSession& other : all) {
        if (other.session == mine.session)
            continue;
        const bool later =
            std::pair(other.date, other.ordinal) > std::pair(mine.date, mine.ordinal);
        const SessionId from = later ? mine.session : other.session;
        const SessionId to = later ? other.session : mine.session;
        others->addAction(
            sessionText(other.date, other.ordinal), this,
            [this, from, to, of = mine.of] { Q_EMIT comparisonWanted(of, from, to); });
    }
}

void HistoryPage::deleteSession(SessionId session) {
    const QString name = nameOf(session);
    m_logbook.removeSession(session);
    Q_EMIT message(tr("The session of %1 is deleted. Undo brings it back.").arg(name));
    read();
}

// Undo makes a question needless, unless the session holds more than what is seen here.
void HistoryPage::askAndDelete(SessionId session) {
    try {
        std::set<LiftId> others;
        for (const log::PlacedSet& set : m_logbook.log().session(session).sets)
            if (!m_lift || set.lift != *m_lift)
                others.insert(set.lift);
        if (!others.empty()) {
            QStringList names;
            for (const auto& lift : m_logbook.log().lifts())
                if (others.contains(lift.id))
                    names << text(lift.value.name);
            const auto answer = QMessageBox::question(
                this, tr("Delete the session"),
                tr("The session of %1 also holds sets of: %2. Delete all of it? Undo brings it "
                   "back.")
                    .arg(nameOf(session), names.join(", "_L1)));
            if (answer != QMessageBox::Yes)
                return;
        }
        deleteSession(session);
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Delete the session"), said(error));
    }
}

// As a spreadsheet takes it: tabs between cells, the headings first.
void HistoryPage::copyRows() const {
    QStringList lines, cells;
    for (int c = 0; c < m_model->columnCount(); ++c)
        if (!m_table->isColumnHidden(c))
            cells << m_model->headerData(c, Qt::Horizontal).toString();
    lines << cells.join(u'\t');
    QModelIndexList rows = m_table->selectionModel()->selectedRows();
    std::ranges::sort(rows, {}, &QModelIndex::row);
    for (const QModelIndex& at : rows) {
        cells.clear();
        for (int c = 0; c < m_model->columnCount(); ++c)
            if (!m_table->isColumnHidden(c))
                cells << at.siblingAtColumn(c).data().toString();
        lines << cells.join(u'\t');
    }
    QGuiApplication::clipboard()->setText(lines.join(u'\n'));
}

} // namespace slopebook::ui
