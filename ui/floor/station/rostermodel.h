// SPDX-License-Identifier: GPL-3.0-or-later
// Who is at a station, in the order of their turns: done and due, next load, the last set, rest.
#pragma once

#include "core/model/ids.h"

#include <QAbstractTableModel>
#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui {

struct RosterRow {
    AthleteId athlete{};
    QString name, done, next, last, rest;
    bool quiet = false; ///< nothing is due
    friend bool operator==(const RosterRow&, const RosterRow&) = default;
};

class RosterModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Name, Done, Next, Last, Rest, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    /// Rows of the same athletes are changed in place: what is chosen and read aloud stays.
    void setRows(std::vector<RosterRow> rows);
    /// Whose turn it is: marked in words and by a sign, never by colour alone.
    void setTurn(std::optional<std::size_t> turn);
    void setRest(std::size_t row, const QString& rest);
    std::optional<std::size_t> turn() const { return m_turn; }
    const std::vector<RosterRow>& rows() const { return m_rows; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    QString shown(const RosterRow& row, int column) const;
    QString spoken(const RosterRow& row, bool turn) const;

    std::vector<RosterRow> m_rows;
    std::optional<std::size_t> m_turn;
};

} // namespace slopebook::ui
