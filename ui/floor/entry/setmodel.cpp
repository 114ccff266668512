// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/setmodel.h"

#include "ui/floor/entry/setwords.h"
#include "ui/typed/pieces.h"
#include "ui/words/format.h"

#include <QFont>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
QString remarks(const SetRow& row, LoadUnit unit) {
    const Set& set = row.placed.set;
    QStringList all;
    if (set.trueMaximum)
        all << SetModel::tr("true maximum");
    if (!set.reason.empty())
        all << text(set.reason);
    if (!set.excluded.empty())
        all << SetModel::tr("left out: %1").arg(text(set.excluded));
    for (std::size_t i = 0; i < set.reps.size(); ++i)
        if (!set.reps[i].excluded.empty() && set.reps[i].excluded != set.note)
            all << SetModel::tr("rep %1 left out: %2").arg(i + 1).arg(text(set.reps[i].excluded));
    if (const QString flags = flagText(set, unit); !flags.isEmpty())
        all << SetModel::tr("have a look: %1").arg(flags);
    if (row.farFromLine)
        all << SetModel::tr("have a look: %1 residuals from its line")
                   .arg(signedNumber(*row.farFromLine, 1));
    if (!set.note.empty())
        all << text(set.note);
    return all.join(QStringLiteral("; "));
}
} // namespace

namespace {
// A dash in the place of speeds: not lifted after all; speeds in a dash's place: it was.
void setReps(Set& set, const QString& typed) {
    if (isDash(trimmed(view(typed)))) {
        set.outcome = Outcome::NotLifted;
        set.reps.clear();
        if (set.reason.empty())
            set.reason = std::exchange(set.note, {});
        return;
    }
    set.outcome = Outcome::Lifted;
    if (set.note.empty())
        set.note = set.reason;
    set.reason.clear();
    set.reps = repsFromTyped(std::get<std::vector<TypedRep>>(readSpeeds(view(typed))), set.reps);
}
} // namespace

SetModel::SetModel(Change change, QObject* parent)
    : QAbstractTableModel(parent), m_change(std::move(change)) {}

void SetModel::setRows(std::vector<SetRow> rows) {
    if (rows == m_rows)
        return;
    bool sameSets = rows.size() == m_rows.size();
    for (std::size_t i = 0; sameSets && i < rows.size(); ++i)
        sameSets = rows[i].placed.id == m_rows[i].placed.id;
    if (sameSets) {
        m_rows = std::move(rows);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

bool SetModel::anyFelt() const {
    return std::ranges::any_of(m_rows,
                               [](const SetRow& row) { return row.placed.set.effort.has_value(); });
}

int SetModel::rowOf(SetId id) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].placed.id == id)
            return static_cast<int>(i);
    return -1;
}

std::optional<SetModel::Refusal> SetModel::refusal(int column, const QString& typed) const {
    if (column == Load) {
        const auto load = readLoad(view(typed), massUnit(m_unit));
        if (const auto* problem = std::get_if<LineProblem>(&load))
            return Refusal{problemText(*problem, typed, m_unit), {}};
    }
    if (column == Felt && !typed.trimmed().isEmpty() && !readEffort(view(typed)))
        return Refusal{tr("Found “%1”, expected an effort from 1 to 10 in halves, such as 8 or "
                          "8.5; or nothing.")
                           .arg(typed.trimmed()),
                       {}};
    if (column == Reps && !isDash(trimmed(view(typed)))) {
        const auto reps = readSpeeds(view(typed));
        if (const auto* problem = std::get_if<LineProblem>(&reps))
            return Refusal{problemText(*problem, typed, m_unit), {}};
        if (const auto* question = std::get_if<LineQuestion>(&reps))
            return Refusal{questionText(*question), QString::fromStdU16String(question->meant)};
    }
    return std::nullopt;
}

int SetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int SetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString SetModel::shown(const SetRow& row, int column) const {
    switch (column) {
    case Load:
        return massText(row.placed.set.load, m_unit) +
               (row.placed.set.trueMaximum ? QStringLiteral("!") : QString());
    case Reps:
        return row.placed.set.outcome == Outcome::NotLifted ? tr("not lifted")
                                                            : repsText(row.placed.set);
    case Felt:
        return row.placed.set.effort ? effortText(*row.placed.set.effort) : QString();
    case PointOf:
        return row.point ? speedText(*row.point) : QStringLiteral("\u2013");
    case Remarks:
        return remarks(row, m_unit);
    default:
        return {};
    }
}

QString SetModel::edited(const SetRow& row, int column) const {
    switch (column) {
    case Load:
        return massText(row.placed.set.load, m_unit);
    case Reps:
        return row.placed.set.outcome == Outcome::NotLifted ? QStringLiteral("-")
                                                            : repsText(row.placed.set);
    case Felt:
        return row.placed.set.effort ? effortText(*row.placed.set.effort) : QString();
    case Remarks:
        return text(row.placed.set.outcome == Outcome::NotLifted ? row.placed.set.reason
                                                                 : row.placed.set.note);
    default:
        return {};
    }
}

QVariant SetModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const SetRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return shown(row, index.column());
    case Qt::EditRole:
        return edited(row, index.column());
    case Qt::ToolTipRole:
        return index.column() == Remarks ? shown(row, Remarks) : QVariant();
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter |
                   (index.column() == Load || index.column() == PointOf || index.column() == Felt
                        ? Qt::AlignRight
                        : Qt::AlignLeft));
    case Qt::FontRole:
        if (!row.point && row.placed.set.outcome == Outcome::Lifted) {
            QFont struck;
            struck.setStrikeOut(index.column() != Remarks);
            return struck;
        }
        return {};
    default:
        return {};
    }
}

QVariant SetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal)
        return int(Qt::AlignVCenter |
                   (section == Load || section == PointOf || section == Felt ? Qt::AlignRight
                                                                             : Qt::AlignLeft));
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return section + 1;
    switch (section) {
    case Load:
        return tr("Load, %1").arg(unitName(m_unit));
    case Reps:
        return tr("Reps, m/s");
    case PointOf:
        return tr("Point");
    case Felt:
        return tr("RPE");
    case Remarks:
        return tr("Remarks");
    default:
        return {};
    }
}

Qt::ItemFlags SetModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.isValid() && index.column() != PointOf)
        flags |= Qt::ItemIsEditable;
    return flags;
}

Set SetModel::changed(const SetRow& row, int column, const QString& typed) const {
    Set set = row.placed.set;
    if (column == Load)
        set.load = std::get<Mass>(readLoad(view(typed), massUnit(m_unit)));
    else if (column == Felt)
        set.effort = readEffort(view(typed));
    else if (column == Reps)
        setReps(set, typed);
    else
        (set.outcome == Outcome::NotLifted ? set.reason : set.note) = utf8(typed.trimmed());
    return set;
}

QString SetModel::doubt(const QModelIndex& index, const QString& typed) const {
    const int column = index.column();
    if (!m_doubts || (column != Load && column != Reps) || refusal(column, typed))
        return {};
    const SetRow& row = m_rows[static_cast<std::size_t>(index.row())];
    if (typed == edited(row, column) || !row.placed.set.excluded.empty())
        return {};
    return m_doubts(row.placed.id, changed(row, column, typed));
}

bool SetModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole || index.column() == PointOf)
        return false;
    const QString typed = value.toString();
    if (const auto refused_ = refusal(index.column(), typed)) {
        Q_EMIT refused(refused_->why);
        return false;
    }
    const SetRow& row = m_rows[static_cast<std::size_t>(index.row())];
    if (typed == edited(row, index.column()))
        return true;
    const QString why = m_change(row.placed.id, changed(row, index.column(), typed));
    if (!why.isEmpty())
        Q_EMIT refused(why);
    return why.isEmpty();
}

} // namespace slopebook::ui
