// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that an athlete did, as a table: one row a lift, a test, or what was not possible, of
// each session; in any order, narrowed down by what is typed.
#pragma once

#include "core/log/log.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <array>
#include <optional>
#include <vector>

namespace slopebook::ui {

struct DoneRow {
    SessionId session{};
    std::optional<LiftId> lift{}; ///< nothing of a test
    Date date{};
    int ordinal = 1;
    QString day{}, block{}, what{}, result{}, conditions{}, note{};
};

/// Newest first; in a session in the order of entry. Reads each session of the athlete: throws
/// LogError.
std::vector<DoneRow> doneBy(const log::Log& log, AthleteId athlete, LoadUnit unit);

class EverythingModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Day, BlockName, What, Result, Note, Under, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<DoneRow> rows);
    /// Only rows with that in one of their cells, letter case aside; empty: all.
    void setFind(const QString& find);
    const DoneRow& row(int shown) const { return m_rows[m_shown[static_cast<std::size_t>(shown)]]; }
    /// Of how many sessions rows are shown.
    int sessions() const;

    void sort(int column, Qt::SortOrder order) override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    static std::array<QString, ColumnCount> cells(const DoneRow& row);
    void arrange();

    std::vector<DoneRow> m_rows;      ///< newest first
    std::vector<std::size_t> m_shown; ///< of m_rows
    QString m_find;
    int m_column = Day;
    Qt::SortOrder m_order = Qt::DescendingOrder;
};

} // namespace slopebook::ui
