// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of an athlete and lift with the figures of their lines; a check box puts one on the
// chart.
#pragma once

#include "core/answers/profile.h"
#include "ui/charts/look.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace slopebook::ui {

struct LineRow {
    LiftSession session;
    Answer<answers::Profile> profile = NoAnswer{};
    bool shown = false;
};

class LinesModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        Day,
        OneRm,
        ToPlan,
        Interval,
        Reach,
        Measured,
        V0,
        Slope,
        Scatter,
        R2,
        Count,
        Loads,
        L0,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// Newest first; sessions that were shown stay shown.
    /// In which loads are shown; before any rows.
    void setUnit(LoadUnit unit) { m_unit = unit; }
    void setRows(std::vector<LineRow> rows);
    const std::vector<LineRow>& rows() const { return m_rows; }
    void setShown(int row, bool shown);
    /// What the session is drawn as, oldest 0; nothing where it is not shown.
    std::optional<look::Role> roleOf(int row) const;
    /// The markers follow the desktop's colours.
    void setGround(const look::Ground& ground);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void shownChanged();

private:
    QString figure(const LineRow& row, int column) const;
    QVariant markerOf(int row) const;

    std::vector<LineRow> m_rows;
    LoadUnit m_unit = LoadUnit::Kilograms;
    look::Ground m_ground;
};

} // namespace slopebook::ui
