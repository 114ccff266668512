// SPDX-License-Identifier: GPL-3.0-or-later
// The history of one athlete and lift as a table: one row a session. Takes its rows whole; SortRole
// gives raw values, for a proxy to sort by.
#pragma once

#include "core/answers/profile.h"
#include "ui/questions/questions.h"
#include "ui/units.h"

#include <QAbstractTableModel>

#include <optional>
#include <span>
#include <vector>

namespace slopebook::ui {

struct HistoryRow {
    SessionId session{};
    Date date{};
    int ordinal = 1;
    QString block{}, device{};
    int n = 0;
    double lightest = 0, heaviest = 0;         ///< kg; 0 where no set counts
    std::optional<double> v0{}, slope{}, r2{}; ///< m/s, m/s per kg
    std::optional<answers::OneRm> oneRm{};
    std::optional<double> measured{}; ///< kg
    struct AtLoad {
        double velocity = 0; ///< m/s, of the line
        bool extrapolated = false;
        friend bool operator==(const AtLoad&, const AtLoad&) = default;
    };
    std::vector<std::optional<AtLoad>> atCheckLoads{}; ///< in the order of the check loads
    QString why{};                                     ///< why there is no line, or no 1RM
};

/// One row a session, by date. Each session asks core for its profile.
std::vector<HistoryRow> historyRows(const Background& about,
                                    std::span<const Stored<BlockId, Block>> blocks,
                                    std::span<const Stored<DeviceId, Device>> devices,
                                    const AskSettings& settings = {});

class HistoryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        DateColumn,
        BlockColumn,
        DeviceColumn,
        PointsColumn,
        LoadsColumn,
        V0Column,
        SlopeColumn,
        R2Column,
        OneRmColumn,
        ReachColumn,
        MeasuredColumn,
        FirstCheckLoad ///< then one column a check load
    };
    enum Role { SortRole = Qt::UserRole, SessionRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<HistoryRow> rows, std::vector<Mass> checkLoads, LoadUnit unit);
    const HistoryRow& row(int number) const { return m_rows[static_cast<std::size_t>(number)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    QString shown(const HistoryRow& row, int column) const;
    QVariant rawValue(const HistoryRow& row, int column) const;
    QString explanation(const HistoryRow& row, int column) const;
    bool quiet(const HistoryRow& row, int column) const;
    const std::optional<HistoryRow::AtLoad>* atLoad(const HistoryRow& row, int column) const;

    std::vector<HistoryRow> m_rows;
    std::vector<Mass> m_checkLoads;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
