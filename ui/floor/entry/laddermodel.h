// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder of last time as a table, with the load that comes next marked in words.
#pragma once

#include "core/model/session.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

#include <optional>
#include <vector>

namespace slopebook::ui {

class LadderModel final : public TextTable {
    Q_OBJECT
public:
    enum Column { Load, Reps, PointOf };
    struct Step {
        Set set;
        std::optional<double> point; ///< m/s
        friend bool operator==(const Step&, const Step&) = default;
    };

    using TextTable::TextTable;

    void setUnit(LoadUnit unit);
    void setSteps(std::vector<Step> steps, std::optional<Mass> next);
    /// The row of the next load; -1 where last time had no such load.
    int nextRow() const;

    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

private:
    std::vector<Step> m_steps;
    LoadUnit m_unit = LoadUnit::Kilograms;
    std::optional<Mass> m_next;
};

} // namespace slopebook::ui
