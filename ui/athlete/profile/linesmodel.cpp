// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/profile/linesmodel.h"

#include "core/answers/maxwords.h"
#include "core/answers/planbounds.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QIcon>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include <algorithm>

namespace slopebook::ui {

namespace {
QString oneRmFigure(const answers::OneRm& oneRm, int column, LoadUnit unit) {
    const QString estimate = number(inUnit(oneRm.estimate, unit), 1);
    switch (column) {
    case LinesModel::OneRm:
        return oneRm.extrapolatedVeryFar() || !oneRm.interval ? QStringLiteral("(%1)").arg(estimate)
                                                              : estimate;
    case LinesModel::ToPlan:
        if (!answers::toPlanWith(oneRm))
            return QStringLiteral("\u2013");
        // By the log's own maxima it is around another estimate than the line's beside it.
        return (answers::plansCalibrated(oneRm)
                    ? number(inUnit(answers::estimateToPlanWith(oneRm), unit), 1) +
                          QStringLiteral(": ")
                    : QString()) +
               rangeText(inUnit(*answers::toPlanWith(oneRm), unit), 1);
    case LinesModel::Interval:
        return oneRm.interval ? rangeText(inUnit(*oneRm.interval, unit), 1)
                              : QStringLiteral("\u2013");
    case LinesModel::Reach:
        return number(oneRm.reach, 2);
    default:
        return {};
    }
}

QString lineFigure(const answers::Profile& profile, int column, LoadUnit unit) {
    const stats::Line& line = profile.line;
    switch (column) {
    case LinesModel::V0:
        return number(line.intercept, 3);
    case LinesModel::Slope:
        return number(line.slope / inUnit(1, unit), 4);
    case LinesModel::Scatter:
        return line.hasInference() ? number(line.s(), 3) : QStringLiteral("\u2013");
    case LinesModel::R2:
        return line.hasInference() ? number(line.r2, 3) : QStringLiteral("\u2013");
    case LinesModel::L0:
        return line.slope < 0 ? number(inUnit(profile.l0(), unit), 1) : QStringLiteral("\u2013");
    default:
        return {};
    }
}
} // namespace

void LinesModel::setRows(std::vector<LineRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT shownChanged();
}

void LinesModel::setShown(int row, bool shown) {
    LineRow& line = m_rows[static_cast<std::size_t>(row)];
    if (line.shown == shown)
        return;
    line.shown = shown;
    // Every marker may change: they go by the place among those shown.
    Q_EMIT dataChanged(index(0, Day), index(rowCount() - 1, Day));
    Q_EMIT shownChanged();
}

std::optional<look::Role> LinesModel::roleOf(int row) const {
    if (!m_rows[static_cast<std::size_t>(row)].shown)
        return std::nullopt;
    const auto shown = [](const LineRow& one) { return one.shown; };
    const auto older = std::count_if(m_rows.begin() + row + 1, m_rows.end(), shown);
    const auto all = std::count_if(m_rows.begin(), m_rows.end(), shown);
    return look::Role{look::Role::Kind::Session, static_cast<int>(older), static_cast<int>(all)};
}

void LinesModel::setGround(const look::Ground& ground) {
    if (ground == m_ground)
        return;
    m_ground = ground;
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, Day), index(rowCount() - 1, Day), {Qt::DecorationRole});
}

int LinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int LinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString LinesModel::figure(const LineRow& row, int column) const {
    const LiftSession& session = row.session;
    switch (column) {
    case Day:
        return sessionText(session);
    case Count:
        return QString::number(session.points.size());
    case Measured:
        return session.measuredOneRm ? massText(*session.measuredOneRm, m_unit) : QString();
    case Loads:
        return row.profile ? tr("%1 to %2")
                                 .arg(loadNumber(row.profile->lightest, m_unit),
                                      loadNumber(row.profile->heaviest, m_unit))
                           : QStringLiteral("\u2013");
    case OneRm:
    case ToPlan:
    case Interval:
    case Reach:
        return row.profile && row.profile->oneRm ? oneRmFigure(*row.profile->oneRm, column, m_unit)
                                                 : QStringLiteral("\u2013");
    default:
        return row.profile ? lineFigure(*row.profile, column, m_unit) : QStringLiteral("\u2013");
    }
}

QVariant LinesModel::markerOf(int row) const {
    const auto role = roleOf(row);
    if (!role)
        return {};
    constexpr int side = 16;
    constexpr double scale = 2; // sharp on dense screens
    QPixmap picture(int(side * scale), int(side * scale));
    picture.setDevicePixelRatio(scale);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(side / 2.0, side / 2.0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look::colour(*role, m_ground));
    painter.drawPath(look::markerPath(look::marker(*role), 11));
    return QIcon(picture);
}

QVariant LinesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const LineRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return figure(row, index.column());
    case Qt::CheckStateRole:
        if (index.column() == Day)
            return row.shown ? Qt::Checked : Qt::Unchecked;
        return {};
    case Qt::DecorationRole:
        return index.column() == Day ? markerOf(index.row()) : QVariant();
    case Qt::ToolTipRole:
        if (!row.profile)
            return noAnswerText(row.profile.why(), m_unit);
        if (!row.profile->oneRm)
            return noAnswerText(row.profile->oneRm.why(), m_unit);
        return said(asSentence(answers::planWithWords(*row.profile)), m_unit);
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (index.column() == Day ? Qt::AlignLeft : Qt::AlignRight));
    default:
        return {};
    }
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    static const char* const titles[ColumnCount] = {
        QT_TR_NOOP("Session"),        QT_TR_NOOP("Line's 1RM, %1"), QT_TR_NOOP("To plan with, %1"),
        QT_TR_NOOP("Line alone, %1"), QT_TR_NOOP("Reach"),          QT_TR_NOOP("Measured"),
        QT_TR_NOOP("V0, m/s"),        QT_TR_NOOP("Slope"),          QT_TR_NOOP("Scatter, m/s"),
        QT_TR_NOOP("R\u00b2"),        QT_TR_NOOP("Points"),         QT_TR_NOOP("Loads, %1"),
        QT_TR_NOOP("L0, %1")};
    static const char* const tips[ColumnCount] = {
        QT_TR_NOOP("Checked: on the chart"),
        QT_TR_NOOP(
            "Estimated 1RM; in brackets where reach is under half, or where it has no interval"),
        QT_TR_NOOP("95 % interval to plan with: line, MVT, days and bend"),
        QT_TR_NOOP("95 % interval of the estimate by the line alone, for comparing sessions: the "
                   "MVT taken as exact"),
        QT_TR_NOOP("Heaviest load lifted / estimated 1RM"),
        QT_TR_NOOP("Measured 1RM: the heaviest true maximum, %1"),
        QT_TR_NOOP("Velocity at zero load"),
        QT_TR_NOOP("m/s per %1"),
        QT_TR_NOOP("SD (standard deviation) of the points about the line"),
        QT_TR_NOOP("Share of the spread that the line explains"),
        QT_TR_NOOP("Sets that count"),
        QT_TR_NOOP("Lightest to heaviest load"),
        QT_TR_NOOP("Load at zero velocity")};
    const auto withUnit = [this](QString words) {
        return words.replace(QLatin1String("%1"), unitName(m_unit));
    };
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount)
        return {};
    if (role == Qt::DisplayRole)
        return withUnit(tr(titles[section]));
    if (role == Qt::ToolTipRole)
        return withUnit(tr(tips[section]));
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == Day ? Qt::AlignLeft : Qt::AlignRight));
    return {};
}

Qt::ItemFlags LinesModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.isValid() && index.column() == Day)
        flags |= Qt::ItemIsUserCheckable;
    return flags;
}

bool LinesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::CheckStateRole || index.column() != Day)
        return false;
    setShown(index.row(), value.toInt() == Qt::Checked);
    return true;
}

} // namespace slopebook::ui
