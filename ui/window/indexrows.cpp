// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/indexrows.h"

#include "ui/window/workspace.h"

#include <algorithm>

namespace slopebook::ui {

void IndexRows::show(Shown shown) {
    if (m_shown.names)
        m_shown.names->disconnect(this);
    m_shown = std::move(shown);
    if (m_shown.names) {
        connect(m_shown.names, &QAbstractItemModel::modelReset, this, &IndexRows::reread);
        connect(m_shown.names, &QAbstractItemModel::rowsInserted, this, &IndexRows::readOn);
    }
    reread();
}

void IndexRows::reread() {
    beginResetModel();
    m_rows = rows();
    endResetModel();
}

// Names are read on at the end, and what stands before them stays.
void IndexRows::readOn() {
    std::vector<Row> all = rows();
    if (all.size() <= m_rows.size())
        return;
    beginInsertRows({}, static_cast<int>(m_rows.size()), static_cast<int>(all.size()) - 1);
    m_rows = std::move(all);
    endInsertRows();
}

std::vector<IndexRows::Row> IndexRows::rows() const {
    std::vector<Row> all;
    const auto addPages = [&] {
        for (int i = 0; i < static_cast<int>(m_shown.pages.size()); ++i)
            all.push_back({true, i});
    };
    if (!m_shown.unfolded)
        addPages();
    const int names = m_shown.names ? m_shown.names->rowCount() : 0;
    for (int i = 0; i < names; ++i) {
        all.push_back({false, i});
        if (m_shown.unfolded && m_shown.chosen && keyAt(i) == m_shown.chosen)
            addPages();
    }
    return all;
}

std::optional<qint64> IndexRows::keyAt(int name) const {
    const QVariant key = m_shown.names->index(name).data(Qt::UserRole);
    return key.isValid() ? std::optional(key.toLongLong()) : std::nullopt;
}

int IndexRows::rowOf(std::optional<qint64> athlete) const {
    const auto found = std::ranges::find_if(
        m_rows, [&](const Row& row) { return athlete && !row.page && keyAt(row.at) == athlete; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int IndexRows::rowOf(Page page) const {
    const auto found = std::ranges::find_if(m_rows, [&](const Row& row) {
        return row.page && m_shown.pages[static_cast<std::size_t>(row.at)] == page;
    });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int IndexRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant IndexRows::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index))
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const bool chosen = row.page ? m_shown.pages[static_cast<std::size_t>(row.at)] == m_shown.page
                                 : m_shown.chosen && keyAt(row.at) == m_shown.chosen;
    if (role == ChosenRole)
        return chosen;
    if (role == HereRole) // the page, else who is shown
        return chosen && (row.page || m_shown.pages.empty());
    if (role == Qt::AccessibleDescriptionRole)
        return chosen ? Workspace::tr("chosen") : QString();
    if (!row.page) {
        const QModelIndex name = m_shown.names->index(row.at);
        if (role == KeyRole)
            return name.data(Qt::UserRole);
        return role == Qt::DisplayRole || role == Qt::ToolTipRole ? name.data() : QVariant();
    }
    const PageEntry& entry = entryOf(m_shown.pages[static_cast<std::size_t>(row.at)]);
    switch (role) {
    case Qt::DisplayRole:
        return entry.title();
    case Qt::ToolTipRole:
        return shortcutOf(entry);
    case PageRole:
        return static_cast<int>(entry.page);
    case InnerRole:
        return m_shown.unfolded;
    default:
        return {};
    }
}

bool IndexRows::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_shown.names && m_shown.names->canFetchMore({});
}

void IndexRows::fetchMore(const QModelIndex& parent) {
    if (canFetchMore(parent))
        m_shown.names->fetchMore({});
}

} // namespace slopebook::ui
