// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of a table in the editor of its shape: what each is, and how it is written.
#include "core/exchange/headings.h"
#include "ui/importing/importwords.h"
#include "ui/importing/shapeboxes.h"
#include "ui/importing/shapeeditor.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QHeaderView>
#include <QTableWidget>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using namespace exchange;

namespace {
enum Column { Heading, Samples, Role, Written, Unit, ColumnCount };
constexpr int notUsed = -1;
constexpr int notSaid = ShapeChoices::notSaid;
} // namespace

void ShapeEditor::buildColumns() {
    m_columns = new QTableWidget(0, ColumnCount);
    m_columns->setObjectName(u"columns"_s);
    m_columns->setAccessibleName(tr("Columns of the table and what they are"));
    m_columns->setHorizontalHeaderLabels(
        {tr("Column"), tr("First cells"), tr("Is the"), tr("Written with"), tr("In")});
    m_columns->verticalHeader()->hide();
    m_columns->setTabKeyNavigation(false);
    m_columns->setSelectionMode(QAbstractItemView::NoSelection);
    m_columns->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_columns->setFocusPolicy(Qt::NoFocus); // the boxes in it take the keys
    m_columns->horizontalHeader()->setHighlightSections(false);
    m_columns->horizontalHeader()->setSectionResizeMode(Samples, QHeaderView::Stretch);
    m_columns->setMinimumHeight(80);
}

void ShapeEditor::focusColumns() {
    if (m_columns->rowCount() > 0)
        combo(0, Role)->setFocus();
}

QComboBox* ShapeEditor::combo(int row, int column) const {
    return qobject_cast<QComboBox*>(m_columns->cellWidget(row, column));
}

void ShapeEditor::fillColumns() {
    const FileFacts& facts = m_chosen.facts();
    m_shown.clear();
    for (std::size_t i = 0; i < facts.columns.size(); ++i)
        if (facts.columns[i].said > 0)
            m_shown.push_back(i);
    m_columns->setRowCount(0);
    m_columns->setRowCount(static_cast<int>(m_shown.size()));
    for (int row = 0; row < m_columns->rowCount(); ++row) {
        const std::size_t at = m_shown[static_cast<std::size_t>(row)];
        const QString name = said(facts.columnName(at));
        QStringList samples;
        for (const std::string& sample : facts.columns[at].samples)
            samples << text(sample).simplified();
        m_columns->setItem(row, Heading, new QTableWidgetItem(name));
        m_columns->setItem(row, Samples, new QTableWidgetItem(samples.join(u"   "_s)));
        QComboBox* role = boxNamed(u"role%1"_s.arg(at), tr("What \"%1\" is").arg(name));
        role->addItem(tr("not used"), notUsed);
        for (const Tidy offered : offeredRoles())
            role->addItem(roleName(offered), static_cast<int>(offered));
        connect(role, &QComboBox::activated, this, [this, at, role] {
            const int chosen = role->currentData().toInt();
            m_chosen.setRole(at, chosen == notUsed ? std::nullopt
                                                   : std::optional(static_cast<Tidy>(chosen)));
            showAnew();
        });
        QComboBox* written =
            boxNamed(u"written%1"_s.arg(at), tr("How \"%1\" is written").arg(name));
        connect(written, &QComboBox::activated, this, [this, at, written] {
            m_chosen.setWritten(at, written->currentData().toInt());
            showAnew();
        });
        QComboBox* unit = boxNamed(u"unit%1"_s.arg(at), tr("Unit of \"%1\"").arg(name));
        connect(unit, &QComboBox::activated, this, [this, at, unit] {
            m_chosen.setUnit(at, unit->currentData().toInt());
            showAnew();
        });
        m_columns->setCellWidget(row, Role, role);
        m_columns->setCellWidget(row, Written, written);
        m_columns->setCellWidget(row, Unit, unit);
    }
    for (int row = 0; row < m_columns->rowCount(); ++row)
        fillRow(row);
    m_columns->resizeRowsToContents();
    for (const auto& [column, width] :
         {std::pair{Heading, 150}, {Role, 170}, {Written, 170}, {Unit, 90}})
        m_columns->setColumnWidth(column, width);
}

// Only what a role needs is asked of its column.
void ShapeEditor::fillRow(int row) {
    const Shape& shape = m_chosen.shape();
    const std::size_t at = m_shown[static_cast<std::size_t>(row)];
    const auto role = m_chosen.roleOf(at);
    chooseIn(combo(row, Role), role ? static_cast<int>(*role) : notUsed);
    QComboBox* written = combo(row, Written);
    QComboBox* unit = combo(row, Unit);
    written->clear();
    unit->clear();
    if (role == TidyDate) {
        written->addItem(tr("Choose…"), notSaid);
        written->addItem(tr("year, month, day"), static_cast<int>(DateOrder::YearMonthDay));
        written->addItem(tr("day, month, year"), static_cast<int>(DateOrder::DayMonthYear));
        written->addItem(tr("month, day, year"), static_cast<int>(DateOrder::MonthDayYear));
        if (m_chosen.facts().columns[at].isSerialDays()) {
            written->clear();
            written->addItem(tr("Choose\u2026"), notSaid);
            written->addItem(tr("days counted from 1900"),
                             static_cast<int>(DateOrder::DaysFrom1900));
            written->addItem(tr("days counted from 1904"),
                             static_cast<int>(DateOrder::DaysFrom1904));
        }
        chooseIn(written, shape.dates ? static_cast<int>(*shape.dates) : notSaid);
    } else if (role && isMeasure(*role)) {
        written->addItem(tr("Choose…"), notSaid);
        written->addItem(tr("decimal point: 1.5"), static_cast<int>(Decimal::Point));
        written->addItem(tr("decimal comma: 1,5"), static_cast<int>(Decimal::Comma));
        const auto& uses = shape.columns[*role];
        const auto use = std::ranges::find(uses, at, &ColumnUse::at);
        chooseIn(written, use->decimal ? static_cast<int>(*use->decimal) : notSaid);
    }
    if (role == TidyVelocity) {
        unit->addItem(tr("Choose…"), notSaid);
        unit->addItem(u"m/s"_s, static_cast<int>(SpeedUnit::MetresPerSecond));
        unit->addItem(u"cm/s"_s, static_cast<int>(SpeedUnit::CentimetresPerSecond));
        chooseIn(unit, shape.speed ? static_cast<int>(*shape.speed) : notSaid);
    } else if (role == TidyLoad || role == TidyBodyMass) {
        unit->addItem(u"kg"_s, static_cast<int>(MassUnit::Kilogram));
        unit->addItem(u"lb"_s, static_cast<int>(MassUnit::Pound));
        chooseIn(unit, static_cast<int>(role == TidyLoad ? shape.load : shape.bodyMass));
    }
    written->setEnabled(written->count() > 0);
    unit->setEnabled(unit->count() > 0);
}

} // namespace slopebook::ui
