// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/laddermodel.h"

#include "ui/words/format.h"

#include <QFont>

namespace slopebook::ui {

void LadderModel::setUnit(LoadUnit unit) {
    m_unit = unit;
    setSteps({}, {}); // the columns are there before the steps
}

void LadderModel::setSteps(std::vector<Step> steps, std::optional<Mass> next) {
    if (steps == m_steps && next == m_next && columnCount() > 0)
        return;
    m_steps = std::move(steps);
    m_next = next;
    std::vector<Row> rows;
    for (const Step& step : m_steps)
        rows.push_back(
            {.cells = {massText(step.set.load, m_unit), repsText(step.set),
                       step.point                               ? speedText(*step.point)
                       : step.set.outcome == Outcome::NotLifted ? QStringLiteral("\u00d7")
                                                                : QStringLiteral("\u2013")}});
    if (const int row = nextRow(); row >= 0) {
        Row& marked = rows[static_cast<std::size_t>(row)];
        marked.cells.front().prepend(QStringLiteral("\u25b8 "));
        marked.strong = true;
    }
    setTable({tr("Load, %1").arg(unitName(m_unit)), tr("Reps, m/s"), tr("Point")}, std::move(rows),
             QList<int>{Load, PointOf});
}

int LadderModel::nextRow() const {
    for (std::size_t i = 0; i < m_steps.size(); ++i)
        if (m_next == m_steps[i].set.load)
            return static_cast<int>(i);
    return -1;
}

QVariant LadderModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const Step& step = m_steps[static_cast<std::size_t>(index.row())];
    const bool isNext = index.row() == nextRow();
    if (role == Qt::AccessibleTextRole && isNext && index.column() == Load)
        return tr("next: %1").arg(massText(step.set.load, m_unit));
    const bool lifted = step.set.outcome == Outcome::Lifted;
    if (role == Qt::AccessibleTextRole && !lifted && index.column() == PointOf)
        return tr("not lifted");
    if (role == Qt::FontRole && !step.point && lifted) {
        QFont marked;
        marked.setBold(isNext);
        marked.setStrikeOut(true);
        return marked;
    }
    return TextTable::data(index, role);
}

} // namespace slopebook::ui
