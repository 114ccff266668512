// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/historymodel.h"

#include "ui/athlete/history/historyfields.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QGuiApplication>
#include <QPalette>

#include <algorithm>
#include <exception>
#include <iterator>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

void HistoryModel::setSource(HistorySource source, std::vector<Mass> checkLoads, LoadUnit unit) {
    beginResetModel();
    m_source = std::move(source);
    m_checkLoads = std::move(checkLoads);
    m_unit = unit;
    std::exception_ptr wrong;
    try {
        readOrder();
    } catch (...) {
        wrong = std::current_exception();
    }
    endResetModel();
    if (wrong)
        std::rethrow_exception(wrong);
}

void HistoryModel::readOrder() {
    m_rows.clear();
    m_order.clear();
    if (!m_source.order)
        return;
    m_order = m_source.order(m_column, m_direction);
    try {
        m_rows = nextPage();
    } catch (...) {
        m_order.clear();
        throw;
    }
}

std::vector<HistoryRow> HistoryModel::nextPage() {
    const std::size_t from = m_rows.size();
    const std::size_t count = std::min(pageRows, m_order.size() - from);
    auto page = m_source.rows(std::span(m_order).subspan(from, count));
    // Where one does not hold the lift any more, the window is told of that change soon.
    if (page.size() != count) {
        const auto place =
            m_order.erase(m_order.begin() + static_cast<std::ptrdiff_t>(from),
                          m_order.begin() + static_cast<std::ptrdiff_t>(from + count));
        std::vector<SessionId> left;
        for (const HistoryRow& row : page)
            left.push_back(row.session);
        m_order.insert(place, left.begin(), left.end());
    }
    return page;
}

bool HistoryModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_rows.size() < m_order.size();
}

void HistoryModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent))
        return;
    std::vector<HistoryRow> page;
    try {
        page = nextPage();
    } catch (const std::exception& error) {
        m_order.resize(m_rows.size());
        Q_EMIT failed(said(error));
        return;
    }
    if (page.empty())
        return;
    const int from = static_cast<int>(m_rows.size());
    beginInsertRows({}, from, from + static_cast<int>(page.size()) - 1);
    m_rows.insert(m_rows.end(), std::move_iterator(page.begin()), std::move_iterator(page.end()));
    endInsertRows();
}

void HistoryModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || (column == m_column && order == m_direction))
        return;
    m_column = column;
    m_direction = order;
    QString why;
    beginResetModel();
    try {
        readOrder();
    } catch (const std::exception& error) {
        why = said(error);
    }
    endResetModel();
    if (!why.isEmpty())
        Q_EMIT failed(why);
}

int HistoryModel::rowOf(SessionId session) {
    const auto found = std::ranges::find(m_order, session);
    const auto at = static_cast<std::size_t>(found - m_order.begin());
    if (found == m_order.end())
        return -1;
    while (m_rows.size() <= at && canFetchMore({}))
        fetchMore({});
    return at < m_rows.size() ? static_cast<int>(at) : -1;
}

int HistoryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int HistoryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : FirstCheckLoad + static_cast<int>(m_checkLoads.size());
}

const std::optional<HistoryRow::AtLoad>* HistoryModel::atLoad(const HistoryRow& row,
                                                              int column) const {
    const auto i = static_cast<std::size_t>(column - FirstCheckLoad);
    return column >= FirstCheckLoad && i < row.atCheckLoads.size() && row.atCheckLoads[i]
               ? &row.atCheckLoads[i]
               : nullptr;
}

QString HistoryModel::shown(const HistoryRow& row, int column) const {
    if (column < FirstCheckLoad)
        return historyFields()[static_cast<std::size_t>(column)].shown(row, m_unit);
    const auto* at = atLoad(row, column);
    if (!at)
        return {};
    const QString velocity = number((*at)->velocity, 2);
    return (*at)->extrapolated ? velocity + u'*' : velocity;
}

bool HistoryModel::quiet(const HistoryRow& row, int column) const {
    if (column == OneRmColumn || column == ReachColumn)
        return row.oneRm && row.oneRm->extrapolatedVeryFar();
    const auto* at = atLoad(row, column);
    return at && (*at)->extrapolated;
}

QString HistoryModel::explanation(const HistoryRow& row, int column) const {
    if (const auto* at = atLoad(row, column); at && (*at)->extrapolated)
        return tr("* outside the loads lifted that day: extrapolated");
    if (column == ReachColumn && row.oneRm && row.oneRm->extrapolatedFar())
        return tr("Heaviest load / estimated 1RM. Under %1 the estimate is extrapolated far.")
            .arg(number(answers::OneRm::farMark, 2));
    if (column >= V0Column && column <= ReachColumn && row.why)
        return noAnswerText(*row.why, m_unit);
    return shown(row, column);
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index))
        return {};
    const HistoryRow& r = row(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return shown(r, index.column());
    case Qt::ToolTipRole:
        return explanation(r, index.column());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            Qt::Alignment(index.column() >= PointsColumn && index.column() != NoteColumn
                              ? Qt::AlignRight
                              : Qt::AlignLeft) |
            Qt::AlignVCenter);
    case Qt::ForegroundRole:
        return quiet(r, index.column())
                   ? QVariant(QGuiApplication::palette().brush(QPalette::PlaceholderText))
                   : QVariant();
    case SessionRole:
        return qlonglong{raw(r.session)};
    default:
        return {};
    }
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    const bool tip = role == Qt::ToolTipRole;
    if (section < 0)
        return {};
    if (section < FirstCheckLoad) {
        const HistoryField& field = historyFields()[static_cast<std::size_t>(section)];
        return (tip ? field.tip : field.heading)(unitName(m_unit));
    }
    const auto i = static_cast<std::size_t>(section - FirstCheckLoad);
    if (i >= m_checkLoads.size())
        return {};
    const QString load = loadWithUnit(kilograms(m_checkLoads[i]), m_unit);
    return tip ? tr("Velocity that the line gives at the check load of %1, m/s").arg(load)
               : tr("at %1").arg(load);
}

} // namespace slopebook::ui
