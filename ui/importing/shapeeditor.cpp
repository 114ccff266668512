// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/shapeeditor.h"

#include "core/exchange/headings.h"
#include "ui/importing/importwords.h"
#include "ui/parts/wraprow.h"
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
constexpr int notSaid = ShapeChoices::notSaid;
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
    layout->addWidget(buildOddRow());
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
    m_sheet = named(u"sheet"_s, tr("Sheet of the workbook"));
    m_sheet->setMinimumContentsLength(12);
    const auto part = [](std::initializer_list<QWidget*> fields) {
        auto* of = new QWidget;
        auto* fieldsLine = new QHBoxLayout(of);
        fieldsLine->setContentsMargins(0, 0, 0, 0);
        for (QWidget* field : fields)
            fieldsLine->addWidget(field);
        return of;
    };
    m_sheetPart = part({labelOf(tr("S&heet"), m_sheet), m_sheet});
    m_sheetPart->hide();
    m_textPart = part({labelOf(tr("Cells divided &by"), m_delimiter), m_delimiter,
                       labelOf(tr("&Letters"), m_encoding), m_encoding});
    auto* row = new QWidget;
    auto* line = new WrapRow(row);
    line->addWidget(m_sheetPart);
    line->addWidget(m_textPart);
    line->addField(labelOf(tr("&Pass over rows"), m_skip), m_skip);
    line->addWidget(m_header);
    connect(m_delimiter, &QComboBox::activated, this, &ShapeEditor::layoutChanged);
    connect(m_encoding, &QComboBox::activated, this, &ShapeEditor::layoutChanged);
    connect(m_sheet, &QComboBox::activated, this, [this] {
        m_otherSheet = true;
        Q_EMIT layoutChanged();
        m_otherSheet = false;
    });
    const auto touched = [this] {
        if (!m_filling)
            Q_EMIT layoutChanged();
    };
    connect(m_skip, &QSpinBox::valueChanged, this, touched);
    connect(m_header, &QCheckBox::toggled, this, touched);
    return row;
}

QWidget* ShapeEditor::buildOddRow() {
    const auto box = [](const QString& words, const QString& object) {
        auto* made = new QCheckBox(words);
        made->setObjectName(object);
        made->hide();
        return made;
    };
    m_units = box(tr("The uni&ts stand under the names"), u"units"_s);
    m_loads = box(tr("Columns are named by their l&oads"), u"loads"_s);
    m_byTime = box(tr("Rows in order of ti&me"), u"byTime"_s);
    m_totals = new QLineEdit;
    m_totals->setObjectName(u"totals"_s);
    m_totals->setAccessibleName(tr("Words of totals, whose rows are left out"));
    m_totals->setPlaceholderText(tr("none: every row is read"));
    m_totalsPart = new QWidget;
    auto* totals = new QHBoxLayout(m_totalsPart);
    totals->setContentsMargins(0, 0, 0, 0);
    totals->addWidget(labelOf(tr("Totals left out, rows that be&gin with"), m_totals));
    totals->addWidget(m_totals);
    m_totalsPart->hide();
    auto* row = new QWidget;
    auto* line = new WrapRow(row);
    for (QWidget* part : std::initializer_list<QWidget*>{m_units, m_loads, m_byTime, m_totalsPart})
        line->addWidget(part);
    const auto touched = [this] {
        if (!m_filling)
            Q_EMIT layoutChanged();
    };
    for (const QCheckBox* each : {m_units, m_loads})
        connect(each, &QCheckBox::toggled, this, touched);
    connect(m_totals, &QLineEdit::editingFinished, this, [this, touched] {
        if (m_totals->isModified())
            touched();
        m_totals->setModified(false);
    });
    connect(m_byTime, &QCheckBox::toggled, this, [this](bool on) {
        if (m_filling)
            return;
        m_chosen.setByTime(on);
        showAnew();
    });
    return row;
}

// Once shown they stay, so that what was taken away can be had again.
void ShapeEditor::showOdd(const FileFacts& facts, const Shape& shape) {
    const auto show = [](QCheckBox* box, bool on) {
        box->setChecked(on);
        if (on)
            box->show();
    };
    show(m_units, facts.layout.unitsRow);
    show(m_loads, facts.layout.loadsAsColumns);
    show(m_byTime, shape.layout.byTime);
    QStringList words;
    for (const std::string& word : facts.layout.leftOut)
        words << text(word);
    m_totals->setText(words.join(u", "_s));
    if (!words.isEmpty())
        m_totalsPart->show();
}

QWidget* ShapeEditor::buildRowsRow() {
    m_rowIs = named(u"rowIs"_s, tr("What a row is"));
    m_rowIs->addItem(tr("one rep"), 0);
    m_rowIs->addItem(tr("one set, its velocities side by side"), 1);
    m_rowIs->addItem(tr("one set, its velocities in one cell"), 2);
    m_above = new QCheckBox(tr("A blank date, athlete, lift or load is the one abo&ve"));
    m_above->setObjectName(u"above"_s);
    auto* row = new QWidget;
    auto* line = new WrapRow(row);
    line->addField(labelOf(tr("A ro&w is"), m_rowIs), m_rowIs);
    line->addWidget(m_above);
    connect(m_rowIs, &QComboBox::activated, this, [this] {
        m_chosen.setRowIsSet(m_rowIs->currentData().toInt() > 0,
                             m_rowIs->currentData().toInt() == 2);
        showAnew();
    });
    connect(m_above, &QCheckBox::toggled, this, [this](bool on) {
        if (m_filling)
            return;
        m_chosen.setBlankAsAbove(on);
        showAnew();
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
    auto* line = new WrapRow(row);
    line->addWidget(new QLabel(tr("The same in all rows:")));
    const auto names = [&](const QString& object, const QString& label, const QString& accessible,
                           const QStringList& list) {
        QComboBox* box = named(object, accessible);
        box->setEditable(true);
        box->addItem(QString());
        box->addItems(list);
        box->setCurrentIndex(0);
        box->setMinimumContentsLength(8);
        line->addField(labelOf(label, box), box);
        connect(box, &QComboBox::currentTextChanged, this, &ShapeEditor::takeForAllRows);
        return box;
    };
    m_athlete = names(u"allAthlete"_s, tr("&Athlete"), tr("Athlete in all rows"), athletes);
    m_lift = names(u"allLift"_s, tr("Li&ft"), tr("Lift in all rows"), lifts);
    m_day = new QLineEdit;
    m_day->setObjectName(u"allDay"_s);
    m_day->setAccessibleName(tr("Day of all rows"));
    m_day->setPlaceholderText(u"2026-03-14"_s);
    line->addField(labelOf(tr("Da&y"), m_day), m_day);
    connect(m_day, &QLineEdit::textChanged, this, &ShapeEditor::takeForAllRows);
    m_device = names(u"allDevice"_s, tr("D&evice"), tr("Device in all rows"), devices);
    m_kind = named(u"allKind"_s, tr("Kind of velocity in all rows"));
    m_kind->addItem(tr("velocity as the lift has it"), QString());
    for (const VelocityKind kind :
         {VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak})
        m_kind->addItem(kindText(kind), text(std::string(word(kind))));
    line->addWidget(m_kind);
    connect(m_kind, &QComboBox::activated, this, &ShapeEditor::takeForAllRows);
    return row;
}

void ShapeEditor::setTable(const FileFacts& facts, const Shape& shape) {
    m_chosen.set(facts, shape);
    m_filling = true;
    fillSheets(facts, shape);
    choose(m_delimiter, static_cast<unsigned char>(facts.layout.delimiter));
    choose(m_encoding, static_cast<int>(facts.layout.encoding));
    m_skip->setValue(static_cast<int>(facts.layout.skip));
    m_header->setChecked(facts.layout.header);
    showOdd(facts, shape);
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

void ShapeEditor::fillSheets(const FileFacts& facts, const Shape& shape) {
    m_sheetPart->setVisible(!facts.sheets.empty());
    m_textPart->setVisible(facts.sheets.empty());
    m_sheet->clear();
    if (shape.layout.sheet.empty())
        m_sheet->addItem(tr("Choose…"), QString());
    for (const SheetName& sheet : facts.sheets)
        m_sheet->addItem(sheet.hidden ? tr("%1 (hidden)").arg(text(sheet.name)) : text(sheet.name),
                         text(sheet.name));
    m_sheet->setCurrentIndex(std::max(0, m_sheet->findData(text(shape.layout.sheet))));
}

namespace {
/// What the coach can see is told, the rest found.
template <class Value>
std::optional<Value> told(const QWidget* field, const Value& value) {
    return field->isHidden() ? std::nullopt : std::optional<Value>(value);
}

std::vector<std::string> wordsOf(const QString& line) {
    std::vector<std::string> words;
    for (const QString& word : line.split(u',', Qt::SkipEmptyParts))
        if (const QString one = word.trimmed(); !one.isEmpty())
            words.push_back(utf8(one));
    return words;
}
} // namespace

LayoutTold ShapeEditor::layoutTold() const {
    const std::string sheet = utf8(m_sheet->currentData().toString());
    if (m_otherSheet)
        return {.sheet = sheet};
    return {.encoding = static_cast<Encoding>(m_encoding->currentData().toInt()),
            .delimiter = static_cast<char>(m_delimiter->currentData().toInt()),
            .skip = m_skip->value(),
            .header = m_header->isChecked(),
            .sheet = sheet,
            .unitsRow = told(m_units, m_units->isChecked()),
            .leftOut = told(m_totalsPart, wordsOf(m_totals->text())),
            .loadsAsColumns = told(m_loads, m_loads->isChecked())};
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
        QComboBox* role = named(u"role%1"_s.arg(at), tr("What \"%1\" is").arg(name));
        role->addItem(tr("not used"), notUsed);
        for (const Tidy offered : offeredRoles())
            role->addItem(roleName(offered), static_cast<int>(offered));
        connect(role, &QComboBox::activated, this, [this, at, role] {
            const int chosen = role->currentData().toInt();
            m_chosen.setRole(at, chosen == notUsed ? std::nullopt
                                                   : std::optional(static_cast<Tidy>(chosen)));
            showAnew();
        });
        QComboBox* written = named(u"written%1"_s.arg(at), tr("How \"%1\" is written").arg(name));
        connect(written, &QComboBox::activated, this, [this, at, written] {
            m_chosen.setWritten(at, written->currentData().toInt());
            showAnew();
        });
        QComboBox* unit = named(u"unit%1"_s.arg(at), tr("Unit of \"%1\"").arg(name));
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
        if (m_chosen.facts().columns[at].isSerialDays()) {
            written->clear();
            written->addItem(tr("Choose\u2026"), notSaid);
            written->addItem(tr("days counted from 1900"),
                             static_cast<int>(DateOrder::DaysFrom1900));
            written->addItem(tr("days counted from 1904"),
                             static_cast<int>(DateOrder::DaysFrom1904));
        }
        choose(written, shape.dates ? static_cast<int>(*shape.dates) : notSaid);
    } else if (role && isMeasure(*role)) {
        written->addItem(tr("Choose…"), notSaid);
        written->addItem(tr("decimal point: 1.5"), static_cast<int>(Decimal::Point));
        written->addItem(tr("decimal comma: 1,5"), static_cast<int>(Decimal::Comma));
        const auto& uses = shape.columns[*role];
        const auto use = std::ranges::find(uses, at, &ColumnUse::at);
        choose(written, use->decimal ? static_cast<int>(*use->decimal) : notSaid);
    }
    if (role == TidyVelocity) {
        unit->addItem(tr("Choose…"), notSaid);
        unit->addItem(u"m/s"_s, static_cast<int>(SpeedUnit::MetresPerSecond));
        unit->addItem(u"cm/s"_s, static_cast<int>(SpeedUnit::CentimetresPerSecond));
        choose(unit, shape.speed ? static_cast<int>(*shape.speed) : notSaid);
    } else if (role == TidyLoad || role == TidyBodyMass) {
        unit->addItem(u"kg"_s, static_cast<int>(MassUnit::Kilogram));
        unit->addItem(u"lb"_s, static_cast<int>(MassUnit::Pound));
        choose(unit, static_cast<int>(role == TidyLoad ? shape.load : shape.bodyMass));
    }
    written->setEnabled(written->count() > 0);
    unit->setEnabled(unit->count() > 0);
}

void ShapeEditor::showChoices() {
    const Shape& shape = m_chosen.shape();
    choose(m_rowIs, shape.lists ? 2 : shape.rowIsSet ? 1 : 0);
    const auto enable = [&shape](QWidget* field, Tidy role) {
        field->setEnabled(shape.columns[role].empty());
        field->setToolTip(field->isEnabled() ? QString() : tr("A column says it."));
    };
    enable(m_athlete, TidyAthlete);
    enable(m_lift, TidyLift);
    enable(m_day, TidyDate);
    enable(m_device, TidyDevice);
    enable(m_kind, TidyKind);
}

// A day may be typed as it is said, where that can mean only one.
void ShapeEditor::takeForAllRows() {
    if (m_filling)
        return;
    const auto take = [this](Tidy role, const QString& said) {
        m_chosen.setFixed(role, utf8(said.trimmed()));
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

void ShapeEditor::showAnew() {
    m_chosen.fillIn();
    m_filling = true;
    for (int row = 0; row < m_columns->rowCount(); ++row)
        fillRow(row);
    showChoices();
    m_filling = false;
    takeForAllRows();
}

} // namespace slopebook::ui
