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
    m_rows = std::move(rows);
    std::vector<Row> texts;
    for (const PointRow& row : m_rows)
        texts.push_back(
            {.cells = {QString::number(row.set), loadNumber(row.load, m_unit),
                       number(row.velocity, 3), figure(row, Residual), figure(row, Leverage),
                       figure(row, Studentised), figure(row, Cook), remarks(row)}});
    setTable({tr("Set"), tr("Load, %1").arg(unitName(m_unit)), tr("m/s"), tr("Residual"),
              tr("Leverage"), tr("Studentised"), tr("Cook"), tr("Remarks")},
             std::move(texts), SetNumber, Remarks);
}

} // namespace slopebook::ui
