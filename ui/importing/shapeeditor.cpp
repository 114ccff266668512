// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/shapeeditor.h"

#include "core/exchange/headings.h"
#include "core/exchange/proposal.h"
#include "ui/importing/importwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using namespace exchange;

namespace {

enum Column { Heading, Samples, Role, Written, Unit, ColumnCount };
constexpr int notUsed = -1;
constexpr int notSaid = -1;
constexpr int mostTitles = 1000;

void choose(QComboBox* box, int value) {
    box->setCurrentIndex(std::max(0, box->findData(value)));
}

QComboBox* named(const QString& name, const QString& accessible) {
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    return box;
}

QLabel* labelOf(const QString& words, QWidget* of) {
    auto* label = new QLabel(words);
    label->setBuddy(of);
    return label;
}

} // namespace

ShapeEditor::ShapeEditor(const QStringList& athletes, const QStringList& lifts,
                         const QStringList& devices, QWidget* parent)
    : QWidget(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(buildLayoutRow());
    layout->addWidget(buildRowsRow());
    buildColumns();
    layout->addWidget(m_columns, 1);
    layout->addWidget(buildForAllRows(athletes, lifts, devices));
}

QWidget* ShapeEditor::buildLayoutRow() {
    m_delimiter = named(u"delimiter"_s, tr("What divides the cells"));
    m_delimiter->addItem(tr("comma"), int(','));
    m_delimiter->addItem(tr("semicolon"), int(';'));
    m_delimiter->addItem(tr("tab"), int('\t'));
    m_encoding = named(u"encoding"_s, tr("How the letters are written"));
    for (const Encoding each :
         {Encoding::Utf8, Encoding::Latin1, Encoding::Utf16Little, Encoding::Utf16Big})
        m_encoding->addItem(encodingName(each), static_cast<int>(each));
    m_skip = new QSpinBox;
    m_skip->setObjectName(u"skip"_s);
    m_skip->setRange(0, mostTitles);
    m_skip->setAccessibleName(tr("Rows passed over at the beginning"));
    m_header = new QCheckBox(tr("First row &names the columns"));
    m_header->setObjectName(u"header"_s);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(labelOf(tr("Cells divided &by"), m_delimiter));
    line->addWidget(m_delimiter);
    line->addWidget(labelOf(tr("&Letters"), m_encoding));
    line->addWidget(m_encoding);
    line->addWidget(labelOf(tr("&Pass over rows"), m_skip));
    line->addWidget(m_skip);
    line->addWidget(m_header);
    line->addStretch(1);
    connect(m_delimiter, &QComboBox::activated, this, &ShapeEditor::layoutChanged);
    connect(m_encoding, &QComboBox::activated, this, &ShapeEditor::layoutChanged);
    const auto touched = [this] {
        if (!m_filling)
            Q_EMIT layoutChanged();
    };
    connect(m_skip, &QSpinBox::valueChanged, this, touched);
    connect(m_header, &QCheckBox::toggled, this, touched);
    return row;
}

QWidget* ShapeEditor::buildRowsRow() {
    m_rowIs = named(u"rowIs"_s, tr("What a row is"));
    m_rowIs->addItem(tr("one rep"), 0);
    m_rowIs->addItem(tr("one set, its velocities side by side"), 1);
    m_above = new QCheckBox(tr("A blank date, athlete, lift or load is the one abo&ve"));
    m_above->setObjectName(u"above"_s);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(labelOf(tr("A ro&w is"), m_rowIs));
    line->addWidget(m_rowIs);
    line->addWidget(m_above);
    line->addStretch(1);
    connect(m_rowIs, &QComboBox::activated, this, [this] {
        m_shape.rowIsSet = m_rowIs->currentData().toInt() == 1;
        auto& speeds = m_shape.columns[TidyVelocity];
        if (!m_shape.rowIsSet && speeds.size() > 1)
            speeds.resize(1);
        told();
    });
    connect(m_above, &QCheckBox::toggled, this, [this](bool on) {
        if (m_filling)
            return;
        m_shape.blankAsAbove = on;
        told();
    });
    return row;
}

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

QWidget* ShapeEditor::buildForAllRows(const QStringList& athletes, const QStringList& lifts,
                                      const QStringList& devices) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(new QLabel(tr("The same in all rows:")));
    const auto names = [&](const QString& object, const QString& label, const QString& accessible,
                           const QStringList& list) {
        QComboBox* box = named(object, accessible);
        box->setEditable(true);
        box->addItem(QString());
        box->addItems(list);
        box->setCurrentIndex(0);
        box->setMinimumContentsLength(8);
        line->addWidget(labelOf(label, box));
        line->addWidget(box, 2);
        connect(box, &QComboBox::currentTextChanged, this, &ShapeEditor::takeForAllRows);
        return box;
    };
    m_athlete = names(u"allAthlete"_s, tr("&Athlete"), tr("Athlete in all rows"), athletes);
    m_lift = names(u"allLift"_s, tr("Li&ft"), tr("Lift in all rows"), lifts);
    m_day = new QLineEdit;
    m_day->setObjectName(u"allDay"_s);
    m_day->setAccessibleName(tr("Day of all rows"));
    m_day->setPlaceholderText(u"2026-03-14"_s);
    line->addWidget(labelOf(tr("Da&y"), m_day));
    line->addWidget(m_day, 1);
    connect(m_day, &QLineEdit::textChanged, this, &ShapeEditor::takeForAllRows);
    m_device = names(u"allDevice"_s, tr("D&evice"), tr("Device in all rows"), devices);
    m_kind = named(u"allKind"_s, tr("Kind of velocity in all rows"));
    m_kind->addItem(tr("velocity as the lift has it"), QString());
    for (const VelocityKind kind :
         {VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak})
        m_kind->addItem(kindText(kind), text(std::string(word(kind))));
    line->addWidget(m_kind, 1);
    connect(m_kind, &QComboBox::activated, this, &ShapeEditor::takeForAllRows);
    return row;
}

void ShapeEditor::setTable(const FileFacts& facts, const Shape& shape) {
    m_facts = facts;
    m_shape = shape;
    m_taken.clear();
    m_filling = true;
    choose(m_delimiter, static_cast<unsigned char>(facts.layout.delimiter));
    choose(m_encoding, static_cast<int>(facts.layout.encoding));
    m_skip->setValue(static_cast<int>(facts.layout.skip));
    m_header->setChecked(facts.layout.header);
    m_above->setChecked(shape.blankAsAbove);
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(text(shape.fixed[TidyKind]))));
    const auto put = [&](QComboBox* box, Tidy role) {
        if (!shape.fixed[role].empty())
            box->setCurrentText(text(shape.fixed[role]));
    };
    put(m_athlete, TidyAthlete);
    put(m_lift, TidyLift);
    put(m_device, TidyDevice);
    if (!shape.fixed[TidyDate].empty())
        m_day->setText(text(shape.fixed[TidyDate]));
    fillColumns();
    showChoices();
    m_filling = false;
    takeForAllRows();
}

LayoutTold ShapeEditor::layoutTold() const {
    return {.encoding = static_cast<Encoding>(m_encoding->currentData().toInt()),
            .delimiter = static_cast<char>(m_delimiter->currentData().toInt()),
            .skip = m_skip->value(),
            .header = m_header->isChecked()};
}

void ShapeEditor::focusColumns() {
    if (m_columns->rowCount() > 0)
        combo(0, Role)->setFocus();
}

QComboBox* ShapeEditor::combo(int row, int column) const {
    return qobject_cast<QComboBox*>(m_columns->cellWidget(row, column));
}

std::optional<Tidy> ShapeEditor::roleOf(std::size_t column) const {
    for (const Tidy role : offeredRoles())
        for (const ColumnUse& use : m_shape.columns[role])
            if (use.at == column)
                return role;
    return {};
}

void ShapeEditor::fillColumns() {
    m_shown.clear();
    for (std::size_t i = 0; i < m_facts.columns.size(); ++i)
        if (m_facts.columns[i].said > 0)
            m_shown.push_back(i);
    m_columns->setRowCount(0);
    m_columns->setRowCount(static_cast<int>(m_shown.size()));
    for (int row = 0; row < m_columns->rowCount(); ++row) {
        const std::size_t at = m_shown[static_cast<std::size_t>(row)];
        const QString name = said(m_facts.columnName(at));
        QStringList samples;
        for (const std::string& sample : m_facts.columns[at].samples)
            samples << text(sample).simplified();
        m_columns->setItem(row, Heading, new QTableWidgetItem(name));
        m_columns->setItem(row, Samples, new QTableWidgetItem(samples.join(u"   "_s)));
        QComboBox* role = named(u"role%1"_s.arg(at), tr("What \"%1\" is").arg(name));
        role->addItem(tr("not used"), notUsed);
        for (const Tidy offered : offeredRoles())
            role->addItem(roleName(offered), static_cast<int>(offered));
        connect(role, &QComboBox::activated, this,
                [this, row, role] { takeRole(row, role->currentData().toInt()); });
        QComboBox* written = named(u"written%1"_s.arg(at), tr("How \"%1\" is written").arg(name));
        connect(written, &QComboBox::activated, this,
                [this, row, written] { takeWritten(row, written->currentData().toInt()); });
        QComboBox* unit = named(u"unit%1"_s.arg(at), tr("Unit of \"%1\"").arg(name));
        connect(unit, &QComboBox::activated, this,
                [this, row, unit] { takeUnit(row, unit->currentData().toInt()); });
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
    const std::size_t at = m_shown[static_cast<std::size_t>(row)];
    const auto role = roleOf(at);
    choose(combo(row, Role), role ? static_cast<int>(*role) : notUsed);
    QComboBox* written = combo(row, Written);
    QComboBox* unit = combo(row, Unit);
    written->clear();
    unit->clear();
    if (role == TidyDate) {
        written->addItem(tr("Choose…"), notSaid);
        written->addItem(tr("year, month, day"), static_cast<int>(DateOrder::YearMonthDay));
        written->addItem(tr("day, month, year"), static_cast<int>(DateOrder::DayMonthYear));
        written->addItem(tr("month, day, year"), static_cast<int>(DateOrder::MonthDayYear));
        choose(written, m_shape.dates ? static_cast<int>(*m_shape.dates) : notSaid);
    } else if (role && isMeasure(*role)) {
        written->addItem(tr("Choose…"), notSaid);
        written->addItem(tr("decimal point: 1.5"), static_cast<int>(Decimal::Point));
        written->addItem(tr("decimal comma: 1,5"), static_cast<int>(Decimal::Comma));
        const auto& uses = m_shape.columns[*role];
        const auto use = std::ranges::find(uses, at, &ColumnUse::at);
        choose(written, use->decimal ? static_cast<int>(*use->decimal) : notSaid);
    }
    if (role == TidyVelocity) {
        unit->addItem(tr("Choose…"), notSaid);
        unit->addItem(u"m/s"_s, static_cast<int>(SpeedUnit::MetresPerSecond));
        unit->addItem(u"cm/s"_s, static_cast<int>(SpeedUnit::CentimetresPerSecond));
        choose(unit, m_shape.speed ? static_cast<int>(*m_shape.speed) : notSaid);
    } else if (role == TidyLoad || role == TidyBodyMass) {
        unit->addItem(u"kg"_s, static_cast<int>(MassUnit::Kilogram));
        unit->addItem(u"lb"_s, static_cast<int>(MassUnit::Pound));
        choose(unit, static_cast<int>(role == TidyLoad ? m_shape.load : m_shape.bodyMass));
    }
    written->setEnabled(written->count() > 0);
    unit->setEnabled(unit->count() > 0);
}

void ShapeEditor::showChoices() {
    choose(m_rowIs, m_shape.rowIsSet ? 1 : 0);
    const auto enable = [this](QWidget* field, Tidy role) {
        field->setEnabled(m_shape.columns[role].empty());
        field->setToolTip(field->isEnabled() ? QString() : tr("A column says it."));
    };
    enable(m_athlete, TidyAthlete);
    enable(m_lift, TidyLift);
    enable(m_day, TidyDate);
    enable(m_device, TidyDevice);
    enable(m_kind, TidyKind);
}

void ShapeEditor::takeRole(int row, int chosen) {
    const std::size_t at = m_shown[static_cast<std::size_t>(row)];
    const auto dateBefore = m_shape.columns[TidyDate];
    for (auto& uses : m_shape.columns)
        std::erase_if(uses, [at](const ColumnUse& use) { return use.at == at; });
    giveBack(at);
    if (chosen != notUsed) {
        auto& uses = m_shape.columns[static_cast<std::size_t>(chosen)];
        const bool several = (chosen == TidyVelocity && m_shape.rowIsSet) ||
                             (chosen == TidyAthlete && uses.size() == 1); // halves of a name
        if (!several && !uses.empty() && chosen == TidyVelocity)
            m_shape.rowIsSet = true; // a second column of velocities can mean nothing else
        else if (!several && !uses.empty()) {
            m_taken[at] = {static_cast<Tidy>(chosen), uses.front()};
            uses.clear();
        }
        uses.push_back({.at = at, .decimal = {}});
        std::ranges::sort(uses, {}, [&](const ColumnUse& use) {
            const auto part = namePartOf(m_facts.columns[use.at].heading);
            const bool family = chosen == TidyAthlete && part == NamePart::Family;
            return std::pair(family, use.at);
        });
        const ColumnFacts& column = m_facts.columns[at];
        if (chosen == TidyLoad || chosen == TidyBodyMass)
            (chosen == TidyLoad ? m_shape.load : m_shape.bodyMass) =
                massUnitOf(column.unit)
                    .value_or(massUnitOf(column.heading).value_or(MassUnit::Kilogram));
    }
    if (m_shape.columns[TidyDate] != dateBefore)
        m_shape.dates.reset(); // found again, or asked
    if (chosen == TidyVelocity && m_shape.columns[TidyVelocity].size() == 1)
        m_shape.speed.reset();
    told();
}

void ShapeEditor::giveBack(std::size_t column) {
    const auto taken = m_taken.find(column);
    if (taken == m_taken.end())
        return;
    const auto [role, from] = taken->second;
    m_taken.erase(taken);
    if (!roleOf(from.at) && m_shape.columns[role].empty())
        m_shape.columns[role] = {from};
}

void ShapeEditor::takeWritten(int row, int choice) {
    const std::size_t at = m_shown[static_cast<std::size_t>(row)];
    const auto role = roleOf(at);
    if (role == TidyDate) {
        m_shape.dates =
            choice == notSaid ? std::nullopt : std::optional(static_cast<DateOrder>(choice));
    } else if (role) {
        for (ColumnUse& use : m_shape.columns[*role])
            if (use.at == at)
                use.decimal =
                    choice == notSaid ? std::nullopt : std::optional(static_cast<Decimal>(choice));
    }
    told();
}

void ShapeEditor::takeUnit(int row, int choice) {
    const auto role = roleOf(m_shown[static_cast<std::size_t>(row)]);
    if (role == TidyVelocity)
        m_shape.speed =
            choice == notSaid ? std::nullopt : std::optional(static_cast<SpeedUnit>(choice));
    else if (role)
        (role == TidyLoad ? m_shape.load : m_shape.bodyMass) = static_cast<MassUnit>(choice);
    told();
}

// A day may be typed as it is said, where that can mean only one.
void ShapeEditor::takeForAllRows() {
    if (m_filling)
        return;
    const auto take = [this](Tidy role, const QString& said) {
        m_shape.fixed[role] = m_shape.columns[role].empty() ? utf8(said.trimmed()) : std::string();
    };
    take(TidyAthlete, m_athlete->currentText());
    take(TidyLift, m_lift->currentText());
    take(TidyDevice, m_device->currentText());
    take(TidyKind, m_kind->currentData().toString());
    const std::string day = utf8(m_day->text().trimmed());
    auto read = readDate(day, DateOrder::YearMonthDay);
    if (!read && day.find('.') != std::string::npos)
        read = readDate(day, DateOrder::DayMonthYear);
    take(TidyDate, read ? text(isoDate(*read)) : text(day));
    Q_EMIT changed();
}

void ShapeEditor::told() {
    settle(m_shape, m_facts);
    m_filling = true;
    for (int row = 0; row < m_columns->rowCount(); ++row)
        fillRow(row);
    showChoices();
    m_filling = false;
    takeForAllRows();
}

} // namespace slopebook::ui
