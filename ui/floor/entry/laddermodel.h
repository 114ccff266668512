// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder of last time as a table, with the load that comes next marked in words.
#pragma once

#include "core/model/session.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace slopebook::ui {

class LadderModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Load, Reps, PointOf, ColumnCount };
    struct Step {
        Set set;
        std::optional<double> point; ///< m/s
        friend bool operator==(const Step&, const Step&) = default;
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setUnit(LoadUnit unit) { m_unit = unit; }
    void setSteps(std::vector<Step> steps, std::optional<Mass> next);
    /// The row of the next load; -1 where last time had no such load.
    int nextRow() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<Step> m_steps;
    LoadUnit m_unit = LoadUnit::Kilograms;
    std::optional<Mass> m_next;
};

} // namespace slopebook::ui
