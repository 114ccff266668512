// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/planmodel.h"

#include "core/answers/plansummary.h"
#include "ui/parts/rowtable.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"

#include <algorithm>

namespace slopebook::ui {

void PlanModel::setPlan(std::optional<answers::Plan> plan, LoadUnit unit,
                        std::vector<answers::RelatedLoad> related, const QString& relation) {
    m_plan = std::move(plan);
    QStringList headings{QString(),
                         tr("Load"),
                         tr("Put on (each side)"),
                         tr("Of estimated 1RM"),
                         tr("Fastest rep expected"),
                         tr("Stop at")};
    if (!related.empty())
        headings << relation;
    headings = inTwoLines(headings); // a column is as wide as its figures
    std::vector<Row> rows;
    for (std::size_t i = 0; m_plan && i < m_plan->loads.size(); ++i) {
        const answers::PlannedLoad& load = m_plan->loads[i];
        const bool strong = chosen(static_cast<int>(i));
        rows.push_back({.cells = {strong ? QStringLiteral("●") : QString(),
                                  planwords::loadText(load.built.exact, unit),
                                  planwords::putOnText(load.built, m_plan->settings.equipment),
                                  planwords::percentText(load), planwords::speedText(load),
                                  stopBeforeFailure(load)},
                        .strong = strong,
                        .quiet = load.percent.value_or(0) > 100 // nobody has lifted it yet
                                     ? QList<int>{Load, PerSide, Percent, Speed, Stop}
                                     : QList<int>{},
                        .explanation = said(answers::drawnOnWords(load))});
        if (!related.empty())
            rows.back().cells << planwords::relatedText(related[i]);
    }
    setTable(headings, std::move(rows), QList<int>{Load, Stop});
}

/// A speed under the one that a maximum goes up with stops nobody in time.
QString PlanModel::stopBeforeFailure(const answers::PlannedLoad& load) const {
    if (load.percent.value_or(0) > 100)
        return tr("over the 1RM"); // nobody has lifted it yet
    const auto& mvt = m_plan->profile.mvt;
    return load.stop && mvt && *load.stop < mvt->value ? tr("under the MVT")
                                                       : planwords::stopText(load);
}

bool PlanModel::chosen(int row) const {
    return std::ranges::find(m_plan->chosen, static_cast<std::size_t>(row)) != m_plan->chosen.end();
}

QVariant PlanModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::ToolTipRole && index.column() == PerSide) // elided in a narrow window
        return TextTable::data(index, Qt::DisplayRole);
    if (role == Qt::AccessibleTextRole)
        return index.isValid() && index.column() == Chosen && chosen(index.row())
                   ? QVariant(tr("chosen"))
                   : TextTable::data(index, Qt::DisplayRole);
    return TextTable::data(index, role);
}

} // namespace slopebook::ui
