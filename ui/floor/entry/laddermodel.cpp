// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/laddermodel.h"

#include "ui/words/format.h"

#include <QFont>

namespace slopebook::ui {

void LadderModel::setSteps(std::vector<Step> steps, std::optional<Mass> next) {
    if (steps == m_steps && next == m_next)
        return;
    beginResetModel();
    m_steps = std::move(steps);
    m_next = next;
    endResetModel();
}

int LadderModel::nextRow() const {
    for (std::size_t i = 0; i < m_steps.size(); ++i)
        if (m_next == m_steps[i].set.load)
            return static_cast<int>(i);
    return -1;
}

int LadderModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_steps.size());
}

int LadderModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant LadderModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const Step& step = m_steps[static_cast<std::size_t>(index.row())];
    const bool isNext = index.row() == nextRow();
    if (role == Qt::DisplayRole) {
        switch (index.column()) {
        case Load:
            return (isNext ? QStringLiteral("\u25b8 ") : QString()) +
                   massText(step.set.load, m_unit);
        case Reps:
            return repsText(step.set);
        case PointOf:
            return step.point ? speedText(*step.point) : QStringLiteral("\u2013");
        default:
            return {};
        }
    }
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (index.column() == Reps ? Qt::AlignLeft : Qt::AlignRight));
    if (role == Qt::AccessibleTextRole && isNext && index.column() == Load)
        return tr("next: %1").arg(massText(step.set.load, m_unit));
    if (role == Qt::FontRole && (isNext || !step.point)) {
        QFont marked;
        marked.setBold(isNext);
        marked.setStrikeOut(!step.point);
        return marked;
    }
    return {};
}

QVariant LadderModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal)
        return int(Qt::AlignVCenter | (section == Reps ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return section + 1;
    switch (section) {
    case Load:
        return tr("Load, %1").arg(unitName(m_unit));
    case Reps:
        return tr("Reps, m/s");
    case PointOf:
        return tr("Point");
    default:
        return {};
    }
}

} // namespace slopebook::ui
