// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/profile/pointsmodel.h"

#include "ui/words/format.h"

namespace slopebook::ui {

namespace {
QString dash() {
    return QStringLiteral("\u2013");
}

QString orDash(const std::optional<double>& value, int decimals) {
    return value ? number(*value, decimals) : dash();
}

QString figure(const PointRow& row, int column) {
    if (!row.figures)
        return dash();
    switch (column) {
    case PointsModel::Residual:
        return signedNumber(row.figures->residual, 3);
    case PointsModel::Leverage:
        return number(row.figures->leverage, 2);
    case PointsModel::Studentised:
        return orDash(row.figures->studentised, 2);
    case PointsModel::Cook:
        return orDash(row.figures->cook, 2);
    default:
        return {};
    }
}

QString remarks(const PointRow& row) {
    QStringList all;
    if (!row.leftOut.empty())
        all << PointsModel::tr("left out: %1").arg(text(row.leftOut));
    if (row.figures && row.figures->farFromLine())
        all << PointsModel::tr("far from its line: have a look");
    if (!row.note.empty() && row.note != row.leftOut)
        all << text(row.note);
    return all.join(QStringLiteral("; "));
}
} // namespace

void PointsModel::setRows(std::vector<PointRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int PointsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int PointsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant PointsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const PointRow& row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (index.column() == Remarks ? Qt::AlignLeft : Qt::AlignRight));
    if (role == Qt::ToolTipRole && index.column() == Remarks)
        return remarks(row);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case SetNumber:
        return row.set;
    case Load:
        return loadNumber(row.load, m_unit);
    case Velocity:
        return number(row.velocity, 3);
    case Remarks:
        return remarks(row);
    default:
        return figure(row, index.column());
    }
}

QVariant PointsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    static const char* const titles[ColumnCount] = {
        QT_TR_NOOP("Set"),      QT_TR_NOOP("Load, %1"), QT_TR_NOOP("m/s"),
        QT_TR_NOOP("Residual"), QT_TR_NOOP("Leverage"), QT_TR_NOOP("Studentised"),
        QT_TR_NOOP("Cook"),     QT_TR_NOOP("Remarks")};
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount)
        return {};
    if (role == Qt::DisplayRole)
        return tr(titles[section]).replace(QLatin1String("%1"), unitName(m_unit));
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == Remarks ? Qt::AlignLeft : Qt::AlignRight));
    return {};
}

} // namespace slopebook::ui
