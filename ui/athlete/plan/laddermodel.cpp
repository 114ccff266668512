// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/laddermodel.h"

#include "ui/words/planwords.h"
#include "ui/words/said.h"

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

void PlanLadderModel::setNextTest(std::optional<answers::NextTest> next, LoadUnit unit) {
    beginResetModel();
    m_next = std::move(next);
    m_unit = unit;
    endResetModel();
}

int PlanLadderModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_next ? 0 : static_cast<int>(m_next->ladders.size());
}

int PlanLadderModel::columnCount(const QModelIndex& parent) const {
    if (parent.isValid())
        return 0;
    return bewareColumn() + 1;
}

int PlanLadderModel::bewareColumn() const {
    return FirstCheckLoad + (m_next ? static_cast<int>(m_next->settings.checkLoads.size()) : 0);
}

QString PlanLadderModel::cell(int row, int column) const {
    const answers::LadderForecast& ladder = m_next->ladders[static_cast<std::size_t>(row)];
    switch (column) {
    case Rank:
        return QString::number(row + 1);
    case Name:
        return said(answers::ladderWords(ladder.kind));
    case Loads:
        return planwords::ladderLoads(ladder, m_unit);
    case Heaviest:
        return ladder.heaviestPercent > 0 ? number(ladder.heaviestPercent, 0) + u" %"_s : QString();
    case OneRm:
        return ladder.oneRm
                   ? u"± "_s + number(inUnit(*ladder.oneRm, m_unit), 1) + u' ' + unitName(m_unit)
                   : tr("not bounded");
    case OneRmChange:
        return ladder.oneRmChange ? u"± "_s + number(inUnit(*ladder.oneRmChange, m_unit), 1) +
                                        u' ' + unitName(m_unit)
                                  : tr("not bounded");
    default:
        break;
    }
    if (column == bewareColumn())
        return said(answers::flawsWords(ladder.flaws, m_next->byOneRm));
    const auto at = static_cast<std::size_t>(column - FirstCheckLoad);
    if (at >= ladder.changes.size())
        return {};
    return tr("± %1 (lines ± %2)")
        .arg(number(ladder.changes[at].reading, 3), number(ladder.changes[at].halfWidth, 3));
}

QVariant PlanLadderModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !m_next)
        return {};
    const auto& ladder = m_next->ladders[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return cell(index.row(), index.column());
    case Qt::TextAlignmentRole:
        return QVariant(index.column() == Name || index.column() == Loads ||
                                index.column() == bewareColumn()
                            ? (Qt::AlignLeft | Qt::AlignVCenter).toInt()
                            : (Qt::AlignRight | Qt::AlignVCenter).toInt());
    case Qt::ToolTipRole:
        return ladder.distinct < 3
                   ? QVariant(tr("Two loads cannot show whether the points bend, and one slip of a "
                                 "set bends the whole line"))
                   : QVariant();
    default:
        return {};
    }
}

QVariant PlanLadderModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return QAbstractTableModel::headerData(section, orientation, role);
    switch (section) {
    case Rank:
        return tr("#");
    case Name:
        return tr("Ladder");
    case Loads:
        return tr("Loads (%1)").arg(unitName(m_unit));
    case Heaviest:
        return tr("Heaviest");
    case OneRm:
        return tr("Estimated 1RM");
    case OneRmChange:
        return tr("Its change");
    default:
        break;
    }
    if (section == bewareColumn())
        return tr("Beware");
    const auto at = static_cast<std::size_t>(section - FirstCheckLoad);
    if (!m_next || at >= m_next->settings.checkLoads.size())
        return {};
    return tr("Change at %1").arg(loadWithUnit(kilograms(m_next->settings.checkLoads[at]), m_unit));
}

} // namespace slopebook::ui
