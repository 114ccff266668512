// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/shapeeditor.h"

#include "core/exchange/headings.h"
#include "ui/importing/importwords.h"
#include "ui/importing/shapeboxes.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/wraprow.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
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

constexpr int mostTitles = 1000;

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

// Rows of controls go on in a next line where there is no room: a layout's least height knows
// nothing of that, and they would lie on the columns.
bool ShapeEditor::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
        setMinimumHeight(layout()->totalHeightForWidth(width()) - m_columns->sizeHint().height() +
                         m_columns->minimumHeight());
    return done;
}

QWidget* ShapeEditor::buildLayoutRow() {
    m_delimiter = boxNamed(u"delimiter"_s, tr("What divides the cells"));
    m_delimiter->addItem(tr("comma"), int(','));
    m_delimiter->addItem(tr("semicolon"), int(';'));
    m_delimiter->addItem(tr("tab"), int('\t'));
    m_encoding = boxNamed(u"encoding"_s, tr("How the letters are written"));
    for (const Encoding each :
         {Encoding::Utf8, Encoding::Latin1, Encoding::Utf16Little, Encoding::Utf16Big})
        m_encoding->addItem(encodingName(each), static_cast<int>(each));
    m_skip = new QSpinBox;
    m_skip->setObjectName(u"skip"_s);
    m_skip->setRange(0, mostTitles);
    m_skip->setAccessibleName(tr("Rows passed over at the beginning"));
    m_header = new QCheckBox(tr("First row &names the columns"));
    m_header->setObjectName(u"header"_s);
    m_sheet = boxNamed(u"sheet"_s, tr("Sheet of the workbook"));
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
    setHint(*m_totals, tr("none: every row is read"));
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
    m_totals->setText(namesText(words));
    if (!words.isEmpty())
        m_totalsPart->show();
}

QWidget* ShapeEditor::buildRowsRow() {
    m_rowIs = boxNamed(u"rowIs"_s, tr("What a row is"));
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

QWidget* ShapeEditor::buildForAllRows(const QStringList& athletes, const QStringList& lifts,
                                      const QStringList& devices) {
    auto* row = new QWidget;
    auto* line = new WrapRow(row);
    line->addWidget(new QLabel(tr("The same in all rows:")));
    const auto names = [&](const QString& object, const QString& label, const QString& accessible,
                           const QStringList& list) {
        QComboBox* box = boxNamed(object, accessible);
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
    setHint(*m_day, u"2026-03-14"_s);
    line->addField(labelOf(tr("Da&y"), m_day), m_day);
    connect(m_day, &QLineEdit::textChanged, this, &ShapeEditor::takeForAllRows);
    m_device = names(u"allDevice"_s, tr("D&evice"), tr("Device in all rows"), devices);
    m_kind = boxNamed(u"allKind"_s, tr("Kind of velocity in all rows"));
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
    chooseIn(m_delimiter, static_cast<unsigned char>(facts.layout.delimiter));
    chooseIn(m_encoding, static_cast<int>(facts.layout.encoding));
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

void ShapeEditor::showChoices() {
    const Shape& shape = m_chosen.shape();
    chooseIn(m_rowIs, shape.lists ? 2 : shape.rowIsSet ? 1 : 0);
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
