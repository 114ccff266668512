// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/equipmentdialog.h"

#include "core/model/errors.h"
#include "core/model/names.h"
#include "core/model/phrases/questions.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/units.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

QString shownMass(ExactMass mass, MassUnit unit) {
    const QString shown =
        example(text(slopebook::massText(mass, unit, unit == MassUnit::Pound ? 3 : 6)));
    return unit == MassUnit::Pound ? shown + u" lb"_s : shown;
}

/// The table's last row is always empty, so that typing into it adds one.
void keepEmptyRow(QTableWidget* table) {
    const int last = table->rowCount() - 1;
    bool filled = last < 0;
    for (int column = 0; !filled && column < table->columnCount(); ++column)
        filled =
            table->item(last, column) && !table->item(last, column)->text().trimmed().isEmpty();
    if (filled)
        table->insertRow(table->rowCount());
}

QTableWidget* makeTable(const QStringList& headings, const QString& name) {
    auto* table = new QTableWidget(0, static_cast<int>(headings.size()));
    table->setHorizontalHeaderLabels(headings);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->verticalHeader()->hide();
    table->setAccessibleName(name);
    table->setTabKeyNavigation(false); // arrows go from cell to cell, Tab goes on
    table->setMinimumHeight(110);
    int widest = 0; // columns share the room alike
    for (int column = 0; column < headings.size(); ++column)
        widest = std::max(widest, table->horizontalHeader()->sectionSizeHint(column));
    constexpr int frameAndBar = 24; // px
    table->setMinimumWidth(static_cast<int>(headings.size()) * widest + frameAndBar);
    QObject::connect(table, &QTableWidget::itemChanged, table, [table] { keepEmptyRow(table); });
    return table;
}

void addRow(QTableWidget* table, const QStringList& cells) {
    const QSignalBlocker quiet(table);
    const int row = table->rowCount();
    table->insertRow(row);
    for (int column = 0; column < cells.size(); ++column)
        table->setItem(row, column, new QTableWidgetItem(cells[column]));
}

QString cell(const QTableWidget* table, int row, int column) {
    const QTableWidgetItem* item = table->item(row, column);
    return item ? item->text().trimmed() : QString();
}

bool blank(const QTableWidget* table, int row) {
    for (int column = 0; column < table->columnCount(); ++column)
        if (!cell(table, row, column).isEmpty())
            return false;
    return true;
}

} // namespace

std::pair<ExactMass, MassUnit> readMassWithUnit(const QString& typed, const QString& what) {
    QString number = typed.trimmed();
    MassUnit unit = MassUnit::Kilogram;
    for (const MassUnit each : {MassUnit::Kilogram, MassUnit::Pound}) {
        const QString suffix = QString::fromLatin1(word(each).data(), 2);
        if (number.endsWith(suffix, Qt::CaseInsensitive)) {
            unit = each;
            number.chop(suffix.size());
            break;
        }
    }
    number = number.trimmed().replace(u',', u'.');
    const auto mass = parseExactMass(number.toStdString(), unit);
    if (!mass || mass->units <= 0)
        throw BadInput(questions::say("\"%1\"", utf8(typed)),
                       asIs(utf8(EquipmentDialog::tr("a mass in kg, or in pounds with lb behind "
                                                     "it, for %1")
                                     .arg(what))));
    return {*mass, unit};
}

EquipmentDialog::EquipmentDialog(const Equipment& equipment, QWidget* parent)
    : QDialog(parent), m_name(new QLineEdit),
      m_bars(makeTable({tr("Bar"), tr("Mass with collars")}, tr("Bars"))),
      m_plates(makeTable({tr("Mass of one plate"), tr("Pairs")}, tr("Plates"))),
      m_alone(makeTable({tr("Dumbbell, kettlebell, …"), tr("Mass")}, tr("Masses on their own"))),
      m_added(makeTable({tr("Vest, belt, band, …"), tr("Mass")}, tr("Masses added to any load"))),
      m_ceiling(new QLineEdit), m_note(new QLineEdit), m_problem(new QLabel) {
    build();
    fill(equipment);
}

void EquipmentDialog::build() {
    setWindowTitle(tr("Set of equipment"));
    auto* top = new QFormLayout;
    top->addRow(tr("&Name"), m_name);
    setHint(*m_name, tr("home, gym, travel"));
    auto* tables = new QGridLayout;
    const auto place = [&](const QString& title, QTableWidget* table, int row, int column) {
        auto* label = new QLabel(title);
        label->setBuddy(table);
        tables->addWidget(label, 2 * row, column);
        tables->addWidget(table, 2 * row + 1, column);
    };
    place(tr("&Bars"), m_bars, 0, 0);
    place(tr("&Plates, in pairs"), m_plates, 0, 1);
    place(tr("Masses &on their own"), m_alone, 1, 0);
    place(tr("Masses &added to any load"), m_added, 1, 1);
    auto* below = new QFormLayout;
    below->addRow(tr("&Ceiling"), m_ceiling);
    setHint(*m_ceiling, tr("none: the heaviest load that may be used"));
    below->addRow(tr("No&te"), m_note);
    auto* hint = new QLabel(tr("Masses are kg; write lb behind a number for pounds (45 lb). Both "
                               "are kept exactly. A band counts with the pull you measured."));
    hint->setWordWrap(true);
    m_problem->setWordWrap(true);
    m_problem->setAccessibleDescription(tr("What is wrong"));
    QFont strong = m_problem->font();
    strong.setBold(true);
    m_problem->setFont(strong);
    m_problem->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &EquipmentDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &EquipmentDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addLayout(tables, 1);
    layout->addWidget(hint);
    layout->addLayout(below);
    layout->addWidget(m_problem);
    layout->addWidget(buttons);
    resize(620, 520);
}

void EquipmentDialog::fill(const Equipment& equipment) {
    m_name->setText(text(equipment.name));
    for (const Bar& bar : equipment.bars)
        addRow(m_bars, {text(bar.name), shownMass(bar.mass, bar.unit)});
    for (const Plate& plate : equipment.plates)
        addRow(m_plates, {shownMass(plate.mass, plate.unit), QString::number(plate.pairs)});
    for (const FixedMass& fixed : equipment.fixed)
        addRow(fixed.use == FixedMass::Use::Added ? m_added : m_alone,
               {text(fixed.name), shownMass(fixed.mass, fixed.unit)});
    if (equipment.ceiling)
        m_ceiling->setText(shownMass(*equipment.ceiling, MassUnit::Kilogram));
    m_note->setText(text(equipment.note));
    for (QTableWidget* table : {m_bars, m_plates, m_alone, m_added})
        keepEmptyRow(table);
}

Equipment EquipmentDialog::equipment() const {
    Equipment read{.name = tidyName(utf8(m_name->text())).value_or(std::string{}),
                   .note = utf8(m_note->text().trimmed())};
    for (int row = 0; row < m_bars->rowCount(); ++row)
        if (!blank(m_bars, row)) {
            const auto [mass, unit] = readMassWithUnit(cell(m_bars, row, 1), tr("the bar"));
            read.bars.push_back({.name = utf8(cell(m_bars, row, 0)), .mass = mass, .unit = unit});
        }
    for (int row = 0; row < m_plates->rowCount(); ++row)
        if (!blank(m_plates, row)) {
            const auto [mass, unit] = readMassWithUnit(cell(m_plates, row, 0), tr("the plate"));
            const QString pairs = cell(m_plates, row, 1);
            bool whole = pairs.isEmpty();
            const int count = whole ? 1 : pairs.toInt(&whole);
            if (!whole)
                throw BadInput(questions::say("\"%1\"", utf8(pairs)),
                               asIs(utf8(tr("how many pairs of the plate there are"))));
            read.plates.push_back({.mass = mass, .pairs = count, .unit = unit});
        }
    for (const auto& [table, use] :
         {std::pair{m_alone, FixedMass::Use::Alone}, {m_added, FixedMass::Use::Added}})
        for (int row = 0; row < table->rowCount(); ++row)
            if (!blank(table, row)) {
                const auto [mass, unit] = readMassWithUnit(cell(table, row, 1), tr("the mass"));
                read.fixed.push_back(
                    {.name = utf8(cell(table, row, 0)), .mass = mass, .use = use, .unit = unit});
            }
    if (!m_ceiling->text().trimmed().isEmpty())
        read.ceiling = readMassWithUnit(m_ceiling->text(), tr("the ceiling")).first;
    validate(read);
    return read;
}

void EquipmentDialog::accept() {
    try {
        (void)equipment();
        QDialog::accept();
    } catch (const BadInput& problem) {
        m_problem->setText(said(problem));
        m_problem->show();
    }
}

} // namespace slopebook::ui
