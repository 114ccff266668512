// SPDX-License-Identifier: GPL-3.0-or-later
// The history of a lift as a table: one row a session, of one athlete or of everybody. Knows the
// order of all its sessions by their keys, and reads the rows page by page as they are looked at.
#pragma once

#include "core/answers/profile.h"
#include "core/questions/questions.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace slopebook::ui {

struct HistoryRow {
    SessionId session{};
    AthleteId of{};
    Date date{};
    int ordinal = 1;
    QString athlete{}, block{}, device{}, note{};
    int n = 0;
    double lightest = 0, heaviest = 0;         ///< kg; 0 where no set counts
    std::optional<Mass> notLifted{};           ///< the lightest tried above the heaviest lifted
    std::optional<double> v0{}, slope{}, r2{}; ///< m/s, m/s per kg
    std::optional<answers::OneRm> oneRm{};
    std::optional<double> measured{}; ///< kg
    struct AtLoad {
        double velocity = 0; ///< m/s, of the line
        bool extrapolated = false;
        friend bool operator==(const AtLoad&, const AtLoad&) = default;
    };
    std::vector<std::optional<AtLoad>> atCheckLoads{}; ///< in the order of the check loads
    std::optional<NoAnswer> why{};                     ///< why there is no line, or no 1RM
};

/// One row a session, in the order given. Each session asks core for its profile.
std::vector<HistoryRow> historyRows(const questions::Background& about,
                                    std::span<const Stored<BlockId, Block>> blocks,
                                    std::span<const Stored<DeviceId, Device>> devices,
                                    const questions::AskSettings& settings = {});

/// Where a history's rows come from.
struct HistorySource {
    /// All sessions in the order of a column of the model. May throw.
    std::function<std::vector<SessionId>(int column, Qt::SortOrder)> order;
    /// The rows of some of them, in their order. May throw.
    std::function<std::vector<HistoryRow>(std::span<const SessionId>)> rows;
};

class HistoryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        DateColumn,
        AthleteColumn,
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
        NoteColumn,
        FirstCheckLoad ///< then one column a check load
    };
    enum Role { SessionRole = Qt::UserRole };

    static constexpr std::size_t pageRows = 100;

    using QAbstractTableModel::QAbstractTableModel;

    /// Asks for the order and reads the first page. Throws what the source throws, and is empty
    /// then.
    void setSource(HistorySource source, std::vector<Mass> checkLoads, LoadUnit unit);
    const HistoryRow& row(int number) const { return m_rows[static_cast<std::size_t>(number)]; }
    /// How many sessions there are, read or not.
    std::size_t sessions() const { return m_order.size(); }
    /// The row of a session, which is read if need be; -1 where it is not in the history.
    int rowOf(SessionId session);

    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;
    void sort(int column, Qt::SortOrder order) override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

Q_SIGNALS:
    /// What a page or an order could not be read for; no more pages are asked for then.
    void failed(const QString& why);

private:
    void readOrder();
    std::vector<HistoryRow> nextPage();
    QString shown(const HistoryRow& row, int column) const;
    QString explanation(const HistoryRow& row, int column) const;
    bool quiet(const HistoryRow& row, int column) const;
    const std::optional<HistoryRow::AtLoad>* atLoad(const HistoryRow& row, int column) const;

    HistorySource m_source;
    int m_column = DateColumn;
    Qt::SortOrder m_direction = Qt::DescendingOrder;
    std::vector<SessionId> m_order;
    std::vector<HistoryRow> m_rows; ///< of the first sessions of the order
    std::vector<Mass> m_checkLoads;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
