// SPDX-License-Identifier: GPL-3.0-or-later
// A small table of ready texts: takes its rows whole, formats nothing.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace slopebook::ui {

class TextTable : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    struct Row {
        QStringList cells{};
        bool strong = false;   ///< in bold
        QList<int> quiet{};    ///< columns in grey
        QString explanation{}; ///< tool tip of the row
    };
    /// headings in plain words; firstRight: from this column on, cells are right-aligned figures,
    /// up to and without lastRight.
    void setTable(const QStringList& headings, std::vector<Row> rows, int firstRight,
                  int lastRight);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    QStringList m_headings;
    std::vector<Row> m_rows;
    int m_firstRight = 0, m_lastRight = 0;
};

} // namespace slopebook::ui
