// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixmodel.h"

#include <QStringList>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

void MatrixModel::setFigure(MatrixFigure figure) {
    beginResetModel();
    m_figure = std::move(figure);
    endResetModel();
}

int MatrixModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_figure.measures.size());
}

int MatrixModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_figure.blocks.size());
}

QVariant MatrixModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index))
        return {};
    const MatrixCellFigure& cell =
        m_figure
            .cells[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return cell.text();
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return cell.spoken;
    default:
        return {};
    }
}

QVariant MatrixModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    const auto at = static_cast<std::size_t>(section);
    QStringList parts;
    if (orientation == Qt::Horizontal && at < m_figure.blocks.size())
        // The story says the sessions and the ceiling again.
        parts = role == Qt::ToolTipRole && !m_figure.blocks[at].story.isEmpty()
                    ? QStringList{m_figure.blocks[at].story}
                    : QStringList{m_figure.blocks[at].name, m_figure.blocks[at].under};
    else if (orientation == Qt::Vertical && at < m_figure.measures.size())
        parts = {m_figure.measures[at].name, m_figure.measures[at].unit,
                 m_figure.measures[at].matters};
    parts.removeAll(QString());
    return parts.join(u", "_s);
}

} // namespace slopebook::ui
