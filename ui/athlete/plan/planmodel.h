// SPDX-License-Identifier: GPL-3.0-or-later
// The table of loads that can be built: what to put on, share of the 1RM, expected and stop speed.
#pragma once

#include "core/answers/squadrelation.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

namespace slopebook::ui {

class PlanModel : public TextTable {
    Q_OBJECT
public:
    /// Related: shares by a relation of other people, there only when the coach asked for one.
    enum Column { Chosen, Load, PerSide, Percent, Speed, Stop, Related, ColumnCount };
    using TextTable::TextTable;

    /// The plan's loads; empty without a plan. relation: what names the shares of others.
    void setPlan(std::optional<answers::Plan> plan, LoadUnit unit,
                 std::vector<answers::RelatedLoad> related = {}, const QString& relation = {});
    const std::optional<answers::Plan>& plan() const { return m_plan; }

    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

private:
    bool chosen(int row) const;
    QString stopBeforeFailure(const answers::PlannedLoad& load) const;

    std::optional<answers::Plan> m_plan;
};

} // namespace slopebook::ui
