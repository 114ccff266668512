// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix as a model: a measure a row, a block a column; what a cell says as a whole is
// its tip and what is heard of it.
#pragma once

#include "ui/athlete/overview/matrixfigure.h"

#include <QAbstractTableModel>

namespace slopebook::ui {

class MatrixModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    void setFigure(MatrixFigure figure);
    const MatrixFigure& figure() const { return m_figure; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

private:
    MatrixFigure m_figure;
};

} // namespace slopebook::ui
