// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/everything.h"

#include <QCollator>

#include <algorithm>
#include <set>

namespace slopebook::ui {

std::array<QString, EverythingModel::ColumnCount> EverythingModel::cells(const DoneRow& row) {
    return {row.day, row.block, row.what, row.result, row.note, row.conditions};
}

void EverythingModel::setRows(std::vector<DoneRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    arrange();
    endResetModel();
}

void EverythingModel::setFind(const QString& find) {
    if (find == m_find)
        return;
    beginResetModel();
    m_find = find;
    arrange();
    endResetModel();
}

void EverythingModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= ColumnCount || (column == m_column && order == m_order))
        return;
    beginResetModel();
    m_column = column;
    m_order = order;
    arrange();
    endResetModel();
}

void EverythingModel::arrange() {
    m_shown.clear();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto all = cells(m_rows[i]);
        if (std::ranges::any_of(all, [this](QString cell) {
                cell.replace(QChar::Nbsp, QLatin1Char(' ')); // as it is typed
                return cell.contains(m_find, Qt::CaseInsensitive);
            }))
            m_shown.push_back(i);
    }
    const bool down = m_order == Qt::DescendingOrder;
    if (m_column == Day) { // they stand newest first, each session in its own order
        if (!down)
            std::ranges::stable_sort(m_shown, [this](std::size_t a, std::size_t b) {
                return std::pair(m_rows[a].date, m_rows[a].ordinal) <
                       std::pair(m_rows[b].date, m_rows[b].ordinal);
            });
        return;
    }
    QCollator words;
    words.setNumericMode(true); // "2 attempts" before "10 attempts"
    words.setCaseSensitivity(Qt::CaseInsensitive);
    const auto cell = [this](std::size_t i) {
        return cells(m_rows[i])[static_cast<std::size_t>(m_column)];
    };
    std::ranges::stable_sort(m_shown, [&](std::size_t a, std::size_t b) {
        const QString one = cell(a), other = cell(b);
        if (one.isEmpty() != other.isEmpty()) // what says nothing comes last in both orders
            return other.isEmpty();
        const int order = words.compare(one, other);
        return down ? order > 0 : order < 0;
    });
}

int EverythingModel::sessions() const {
    std::set<SessionId> all;
    for (const std::size_t i : m_shown)
        all.insert(m_rows[i].session);
    return static_cast<int>(all.size());
}

int EverythingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int EverythingModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant EverythingModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) ||
        (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    return cells(row(index.row()))[static_cast<std::size_t>(index.column())];
}

QVariant EverythingModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount)
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
    if (role != Qt::DisplayRole)
        return {};
    const std::array<QString, ColumnCount> headings{tr("Day"),    tr("Block"), tr("Lift or test"),
                                                    tr("Result"), tr("Notes"), tr("Conditions")};
    return headings[static_cast<std::size_t>(section)];
}

} // namespace slopebook::ui
