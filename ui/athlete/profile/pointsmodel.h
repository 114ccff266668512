// SPDX-License-Identifier: GPL-3.0-or-later
// The points of one session's line, and what each does to it; what is left out stands there too.
#pragma once

#include "core/answers/profile.h"
#include "core/model/session.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace slopebook::ui {

/// One row: a point of the line, or a point that is left out (without figures).
struct PointRow {
    int set = 0;
    double load = 0;     ///< kg
    double velocity = 0; ///< m/s
    std::optional<answers::ProfilePoint> figures;
    std::string leftOut; ///< the reason
    std::string note;
};

class PointsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        SetNumber,
        Load,
        Velocity,
        Residual,
        Leverage,
        Studentised,
        Cook,
        Remarks,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setUnit(LoadUnit unit) { m_unit = unit; }
    void setRows(std::vector<PointRow> rows);
    const std::vector<PointRow>& rows() const { return m_rows; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<PointRow> m_rows;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
