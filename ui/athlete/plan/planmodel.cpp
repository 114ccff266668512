// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/planmodel.h"

#include "ui/words/planwords.h"

#include <QFont>

#include <algorithm>

namespace slopebook::ui {

void PlanModel::setPlan(std::optional<answers::Plan> plan, LoadUnit unit,
                        std::vector<answers::RelatedLoad> related, const QString& relation) {
    beginResetModel();
    m_plan = std::move(plan);
    m_unit = unit;
    m_related = std::move(related);
    m_relation = relation;
    endResetModel();
}

int PlanModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_plan ? 0 : static_cast<int>(m_plan->loads.size());
}

int PlanModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : (m_related.empty() ? Related : ColumnCount);
}

bool PlanModel::chosen(int row) const {
    return std::ranges::find(m_plan->chosen, static_cast<std::size_t>(row)) != m_plan->chosen.end();
}

QString PlanModel::cell(int row, int column) const {
    const answers::PlannedLoad& load = m_plan->loads[static_cast<std::size_t>(row)];
    switch (column) {
    case Chosen:
        return chosen(row) ? QStringLiteral("●") : QString();
    case Load:
        return planwords::loadText(load.built.exact, m_unit);
    case PerSide:
        return planwords::putOnText(load.built, m_plan->settings.equipment);
    case Percent:
        return planwords::percentText(load);
    case Speed:
        return planwords::speedText(load);
    case Stop:
        return planwords::stopText(load);
    case Related:
        return planwords::relatedText(m_related[static_cast<std::size_t>(row)]);
    default:
        return {};
    }
}

QVariant PlanModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !m_plan)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return cell(index.row(), index.column());
    case Qt::FontRole:
        if (chosen(index.row())) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    case Qt::TextAlignmentRole:
        return QVariant(index.column() == Load || index.column() == Stop
                            ? (Qt::AlignRight | Qt::AlignVCenter).toInt()
                            : (Qt::AlignLeft | Qt::AlignVCenter).toInt());
    case Qt::ToolTipRole:
        if (index.column() == PerSide) // elided in a narrow window
            return cell(index.row(), PerSide);
        return m_plan->loads[static_cast<std::size_t>(index.row())].tested
                   ? QVariant()
                   : QVariant(tr("Outside the loads of the test: the line drawn on"));
    case Qt::AccessibleTextRole:
        return index.column() == Chosen && chosen(index.row()) ? QVariant(tr("chosen"))
                                                               : data(index, Qt::DisplayRole);
    default:
        return {};
    }
}

QVariant PlanModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case Chosen:
        return QString();
    case Load:
        return tr("Load");
    case PerSide:
        return tr("Put on (each side)");
    case Percent:
        return tr("Of estimated 1RM");
    case Speed:
        return tr("Fastest rep expected");
    case Stop:
        return tr("Stop at");
    case Related:
        return m_relation;
    default:
        return {};
    }
}

} // namespace slopebook::ui
