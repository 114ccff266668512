// SPDX-License-Identifier: GPL-3.0-or-later
// The points of one session's line, and what each does to it; what is left out stands there too.
#pragma once

#include "core/answers/profile.h"
#include "core/model/session.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

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

class PointsModel final : public TextTable {
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

    using TextTable::TextTable;

    void setUnit(LoadUnit unit) { m_unit = unit; }
    void setRows(std::vector<PointRow> rows);
    const std::vector<PointRow>& rows() const { return m_rows; }

private:
    std::vector<PointRow> m_rows;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
