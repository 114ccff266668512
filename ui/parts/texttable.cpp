// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/texttable.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>

namespace slopebook::ui {

void TextTable::setTable(const QStringList& headings, std::vector<Row> rows, int firstRight,
                         int lastRight) {
    beginResetModel();
    m_headings = headings;
    m_rows = std::move(rows);
    m_firstRight = firstRight;
    m_lastRight = lastRight;
    endResetModel();
}

int TextTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TextTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_headings.size());
}

QVariant TextTable::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    switch (role) {
    case Qt::DisplayRole:
        return row.cells.value(column);
    case Qt::ToolTipRole:
        return row.explanation.isEmpty() ? row.cells.value(column) : row.explanation;
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::Alignment(column >= m_firstRight && column < m_lastRight
                                                     ? Qt::AlignRight
                                                     : Qt::AlignLeft) |
                                   Qt::AlignVCenter);
    case Qt::FontRole: {
        QFont font;
        font.setBold(row.strong);
        return row.strong ? QVariant(font) : QVariant();
    }
    case Qt::ForegroundRole:
        return row.quiet.contains(column)
                   ? QVariant(QGuiApplication::palette().brush(QPalette::PlaceholderText))
                   : QVariant();
    default:
        return {};
    }
}

QVariant TextTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= m_headings.size())
        return {};
    if (role == Qt::DisplayRole)
        return m_headings[section];
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(section >= m_firstRight && section < m_lastRight
                                                     ? Qt::AlignRight
                                                     : Qt::AlignLeft) |
                                   Qt::AlignVCenter);
    return {};
}

} // namespace slopebook::ui
