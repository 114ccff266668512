// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/rostermodel.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <QStringList>

#include <algorithm>

namespace slopebook::ui {

void RosterModel::setRows(std::vector<RosterRow> rows) {
    if (rows == m_rows)
        return;
    const bool same =
        std::ranges::equal(rows, m_rows, {}, &RosterRow::athlete, &RosterRow::athlete);
    if (!same) {
        beginResetModel();
        m_rows = std::move(rows);
        if (m_turn && *m_turn >= m_rows.size())
            m_turn.reset();
        endResetModel();
        return;
    }
    m_rows = std::move(rows);
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void RosterModel::setTurn(std::optional<std::size_t> turn) {
    const auto before = std::exchange(m_turn, turn);
    for (const auto row : {before, turn})
        if (row && *row < m_rows.size())
            Q_EMIT dataChanged(index(static_cast<int>(*row), 0),
                               index(static_cast<int>(*row), ColumnCount - 1));
}

void RosterModel::setRest(std::size_t row, const QString& rest) {
    if (row >= m_rows.size() || m_rows[row].rest == rest)
        return;
    m_rows[row].rest = rest;
    const QModelIndex at = index(static_cast<int>(row), Rest);
    Q_EMIT dataChanged(at, at, {Qt::DisplayRole});
}

int RosterModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RosterModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString RosterModel::shown(const RosterRow& row, int column) const {
    switch (column) {
    case Name:
        return row.name;
    case Done:
        return row.done;
    case Next:
        return row.next;
    case Last:
        return row.last;
    case Rest:
        return row.rest;
    default:
        return {};
    }
}

/// The whole row in the cell that is read first.
QString RosterModel::spoken(const RosterRow& row, bool turn) const {
    QStringList parts{turn ? tr("%1, whose turn it is").arg(row.name) : row.name};
    if (!row.done.isEmpty())
        parts << tr("done %1").arg(row.done);
    if (!row.next.isEmpty())
        parts << tr("next %1").arg(row.next);
    if (!row.last.isEmpty())
        parts << tr("last %1").arg(row.last);
    return parts.join(QStringLiteral(", "));
}

QVariant RosterModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const RosterRow& row = m_rows[static_cast<std::size_t>(index.row())];
    const bool turn = m_turn == static_cast<std::size_t>(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return index.column() == Name && turn ? QStringLiteral("\u25b8 ") + row.name
                                              : shown(row, index.column());
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return index.column() == Name ? spoken(row, turn) : shown(row, index.column());
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (index.column() == Name ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::FontRole: {
        QFont font;
        font.setBold(turn);
        return font;
    }
    case Qt::ForegroundRole:
        return row.quiet && !turn
                   ? QVariant(QGuiApplication::palette().brush(QPalette::PlaceholderText))
                   : QVariant();
    case Qt::UserRole:
        return qint64(raw(row.athlete));
    default:
        return {};
    }
}

QVariant RosterModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == Name ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Here today");
    case Done:
        return tr("Done");
    case Next:
        return tr("Next");
    case Last:
        return tr("Last");
    case Rest:
        return tr("Rest");
    default:
        return {};
    }
}

} // namespace slopebook::ui
