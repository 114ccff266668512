// SPDX-License-Identifier: GPL-3.0-or-later
// The sets of one session and lift as a table; load, reps and note are edited in place.
#pragma once

#include "core/log/log.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

#include <functional>
#include <optional>
#include <vector>

namespace slopebook::ui {

/// A set as the table shows it.
struct SetRow {
    log::PlacedSet placed;
    std::optional<double> point;       ///< m/s; nothing where the set does not count
    std::optional<double> farFromLine; ///< studentised residual, where it is past the mark
    friend bool operator==(const SetRow&, const SetRow&) = default;
};

class SetModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Load, Reps, PointOf, Felt, Remarks, ColumnCount };
    /// Writes a changed set; the sentence that says why it could not be, or nothing.
    using Change = std::function<QString(SetId, const Set&)>;

    /// A question about a changed set that is hard to believe, or nothing.
    using Doubts = std::function<QString(SetId, const Set&)>;

    explicit SetModel(Change change, QObject* parent = nullptr);
    void setDoubts(Doubts doubts) { m_doubts = std::move(doubts); }

    /// In which loads are shown and typed; before any rows.
    void setUnit(LoadUnit unit) { m_unit = unit; }
    void setRows(std::vector<SetRow> rows);
    /// row must be valid.
    const SetRow& row(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    int rowOf(SetId id) const; ///< -1 where it is not there
    bool anyFelt() const;      ///< whether any has its effort

    /// What is wrong with a text typed into that column; nothing where it can be taken. A text that
    /// was probably meant otherwise also gives what was meant.
    struct Refusal {
        QString why;
        std::optional<QString> meant;
    };
    std::optional<Refusal> refusal(int column, const QString& typed) const;
    /// What is to be asked of a text that can be taken, before it is; empty where nothing is.
    QString doubt(const QModelIndex& index, const QString& typed) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void refused(const QString& why);

private:
    QString shown(const SetRow& row, int column) const;
    QString edited(const SetRow& row, int column) const;
    /// typed must be one that can be taken.
    Set changed(const SetRow& row, int column, const QString& typed) const;

    Change m_change;
    Doubts m_doubts;
    std::vector<SetRow> m_rows;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
