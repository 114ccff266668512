// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/namemodel.h"

#include <algorithm>
#include <exception>
#include <iterator>

namespace slopebook::ui {

NameSource sourceOf(Names names) {
    return [names = std::move(names)](const QString& find, const std::optional<QString>& after,
                                      int most) {
        auto from = names.begin();
        if (after) {
            from = std::ranges::find(names, *after, &Names::value_type::second);
            if (from != names.end())
                ++from;
        }
        Names page;
        for (; from != names.end() && std::ssize(page) < most; ++from)
            if (from->second.contains(find, Qt::CaseInsensitive))
                page.push_back(*from);
        return page;
    };
}

void NameModel::setSource(NameSource source, const QString& find) {
    beginResetModel();
    m_source = std::move(source);
    m_find = find;
    m_names.clear();
    m_more = false;
    std::exception_ptr wrong;
    try {
        m_names = nextPage();
    } catch (...) {
        wrong = std::current_exception();
    }
    endResetModel();
    if (wrong)
        std::rethrow_exception(wrong);
}

void NameModel::setFind(const QString& find) {
    try {
        setSource(m_source, find);
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch): nothing is offered then
    }
}

std::optional<qint64> NameModel::bestMatch(const QString& typed) {
    if (typed.isEmpty())
        return std::nullopt;
    setFind(typed);
    std::optional<qint64> found;
    for (int row = 0; row < rowCount(); ++row) {
        const auto& [key, name] = m_names[static_cast<std::size_t>(row)];
        const bool whole = name.compare(typed, Qt::CaseInsensitive) == 0;
        if (whole || !found)
            found = key;
        if (whole)
            break;
        if (row + 1 == rowCount())
            readOn();
    }
    return found;
}

Names NameModel::nextPage() {
    m_more = false; // should the source throw
    if (!m_source)
        return {};
    // As many again as are read already: each page costs a look at all names, and so the last of
    // thousands is reached in few.
    const int most = std::max(pageRows, static_cast<int>(m_names.size()));
    Names page = m_source(
        m_find, m_names.empty() ? std::nullopt : std::optional(m_names.back().second), most);
    m_more = std::ssize(page) == most;
    return page;
}

int NameModel::rowOf(qint64 key) {
    std::size_t looked = 0;
    while (true) {
        for (; looked < m_names.size(); ++looked)
            if (m_names[looked].first == key)
                return static_cast<int>(looked);
        if (!readOn())
            return -1;
    }
}

int NameModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_names.size());
}

QVariant NameModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index))
        return {};
    const auto& [key, name] = m_names[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole || role == Qt::EditRole)
        return name;
    return role == Qt::UserRole ? QVariant(key) : QVariant();
}

bool NameModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_more && !m_onDemand;
}

void NameModel::setSameAs(const NameModel& other) {
    beginResetModel();
    m_source = other.m_source;
    m_find = other.m_find;
    m_names = other.m_names;
    m_more = other.m_more;
    endResetModel();
}

void NameModel::fetchMore(const QModelIndex& parent) {
    if (canFetchMore(parent))
        readOn();
}

// Called by views: what goes wrong here ends the list, and is said by the page that reads next.
bool NameModel::readOn() {
    if (!m_more)
        return false;
    try {
        Names page = nextPage();
        if (page.empty())
            return false;
        const int from = rowCount();
        beginInsertRows({}, from, from + static_cast<int>(page.size()) - 1);
        m_names.insert(m_names.end(), std::move_iterator(page.begin()),
                       std::move_iterator(page.end()));
        endInsertRows();
        return true;
    } catch (const std::exception&) {
        m_more = false;
        return false;
    }
}

} // namespace slopebook::ui
