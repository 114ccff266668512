// SPDX-License-Identifier: GPL-3.0-or-later
// The ranked ladders for the next test.
#pragma once

#include "core/answers/nexttest.h"
#include "ui/words/units.h"

#include <QAbstractTableModel>

namespace slopebook::ui {

class PlanLadderModel : public QAbstractTableModel {
    Q_OBJECT
public:
    /// After these, one column a check load.
    enum Column { Rank, Name, Loads, Heaviest, OneRm, OneRmChange, FirstCheckLoad };
    using QAbstractTableModel::QAbstractTableModel;

    /// The last one: what is wrong with a ladder. The figures stand before the words.
    int bewareColumn() const;
    void setNextTest(std::optional<answers::NextTest> next, LoadUnit unit);
    const std::optional<answers::NextTest>& nextTest() const { return m_next; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    QString cell(int row, int column) const;

    std::optional<answers::NextTest> m_next;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui
