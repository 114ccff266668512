// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/testdialog.h"

#include "ui/parts/listlayout.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QSpinBox>

namespace slopebook::ui {

namespace {

QComboBox* choices(const QStringList& words, int current) {
    auto* box = new QComboBox;
    box->addItems(words);
    box->setCurrentIndex(current);
    return box;
}

QString decimalText(const std::optional<double>& value) {
    return value ? QLocale().toString(*value, 'g', 10) : QString();
}

} // namespace

TestDialog::TestDialog(Logbook& logbook, std::optional<TestKindId> id, const TestKind& start,
                       QWidget* parent)
    : FormDialog(logbook, id ? tr("Test") : tr("New test"), parent), m_id(id) {
    build(start);
    finish();
}

void TestDialog::build(const TestKind& start) {
    m_name = addLine(tr("&Name"), text(start.name));
    m_unit = addLine(tr("&Unit"), text(start.unit), tr("of the day's value: m, s, N, points"));
    m_better = choices({tr("higher"), tr("lower")}, start.higherIsBetter ? 0 : 1);
    addField(tr("&Better is"), m_better);
    m_sides =
        choices({tr("no sides"), tr("left and right apart"), tr("left, right, and both at once")},
                !start.twoSided ? 0
                : start.bothToo ? 2
                                : 1);
    addField(tr("&Sides"), m_sides);
    m_rule = choices({tr("best attempt"), tr("mean of the attempts")},
                     start.rule == AttemptRule::Best ? 0 : 1);
    addField(tr("Value of the &day"), m_rule);
    m_bestOf = new QSpinBox;
    m_bestOf->setRange(0, 50);
    m_bestOf->setSpecialValueText(tr("all"));
    m_bestOf->setValue(start.bestOf);
    addField(tr("Mean of t&he best"), m_bestOf);
    const auto fitBest = [this] { m_bestOf->setEnabled(m_rule->currentIndex() == 1); };
    connect(m_rule, &QComboBox::currentIndexChanged, this, fitBest);
    fitBest();
    m_attempts = new QSpinBox;
    m_attempts->setRange(1, 50);
    m_attempts->setValue(start.attempts);
    addField(tr("&Attempts planned"), m_attempts);
    m_formula = choices({tr("the number as it is read"), tr("jump height from flight time (s)"),
                         tr("reactive strength from height (m) / contact time (s)"),
                         tr("reactive strength from flight time / contact time (s)"),
                         tr("force (N) per kg of body mass")},
                        static_cast<int>(start.formula));
    addField(tr("&Computed from"), m_formula);
    m_decimals = new QSpinBox;
    m_decimals->setRange(0, 4);
    m_decimals->setValue(start.decimals);
    addField(tr("D&ecimals shown"), m_decimals);
    m_noise = addLine(tr("&Typical error"),
                      decimalText(start.noise ? std::optional(start.noise->value) : std::nullopt),
                      tr("used until the log has two repeat tests of its own"));
    m_noiseIn = choices({tr("in the unit"), tr("percent of the value")},
                        start.noise && start.noise->percent ? 1 : 0);
    addField(tr("Typical error &in"), m_noiseIn);
    m_noiseSource =
        addLine(tr("Where it comes &from"), start.noise ? text(start.noise->source) : QString());
    m_smallest = addLine(tr("S&mallest change that matters"), decimalText(start.smallest),
                         tr("in the unit; used until eight athletes have the test"));
    m_smallestSource = addLine(tr("Where that comes f&rom"), text(start.smallestSource),
                               tr("left empty: your own"));
    m_note = addLine(tr("N&ote"), text(start.note));
}

TestKind TestDialog::read() const {
    TestKind kind;
    kind.name = required(m_name, tr("Give the test a name."));
    kind.unit = required(m_unit, tr("Give the unit of its value, such as m, s, N or points."));
    kind.higherIsBetter = m_better->currentIndex() == 0;
    kind.twoSided = m_sides->currentIndex() > 0;
    kind.bothToo = m_sides->currentIndex() == 2;
    kind.rule = m_rule->currentIndex() == 0 ? AttemptRule::Best : AttemptRule::Mean;
    kind.bestOf = kind.rule == AttemptRule::Mean ? m_bestOf->value() : 0;
    kind.attempts = m_attempts->value();
    kind.formula = static_cast<TestFormula>(m_formula->currentIndex());
    kind.decimals = m_decimals->value();
    const QString positive = tr("A number above 0, such as 0.05, or nothing.");
    if (const auto error = decimal(m_noise, 0, largestTestValue, positive))
        kind.noise = TestNoise{
            .value = *error,
            .percent = m_noiseIn->currentIndex() == 1,
            .source = required(m_noiseSource, tr("Say where the typical error comes from."))};
    kind.smallest = decimal(m_smallest, 0, largestTestValue, positive);
    kind.smallestSource = kind.smallest ? utf8(m_smallestSource->text().trimmed()) : std::string();
    kind.note = utf8(m_note->text().trimmed());
    return kind;
}

void TestDialog::save() {
    const TestKind kind = read();
    if (m_id)
        logbook().changeTestKind(*m_id, kind);
    else
        m_id = logbook().addTestKind(kind);
}

TestsDialog::TestsDialog(Logbook& logbook, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_list(new QListWidget) {
    setWindowTitle(tr("Tests of the battery"));
    m_list->setAccessibleName(tr("Tests"));
    auto* add = new QPushButton(tr("&New..."));
    auto* changeButton = new QPushButton(tr("&Change..."));
    auto* removeButton = new QPushButton(tr("Re&move"));
    layOutList(*this, m_list, {add, changeButton, removeButton});
    connect(add, &QPushButton::clicked, this, [this] {
        if (TestDialog(m_logbook, std::nullopt, TestKind{}, this).exec() == QDialog::Accepted)
            fill();
    });
    connect(changeButton, &QPushButton::clicked, this, &TestsDialog::change);
    connect(m_list, &QListWidget::itemActivated, this, &TestsDialog::change);
    connect(removeButton, &QPushButton::clicked, this, &TestsDialog::remove);
    fill();
}

void TestsDialog::fill() {
    m_list->clear();
    try {
        for (const auto& kind : m_logbook.log().testKinds()) {
            auto* item = new QListWidgetItem(testText(kind.value.name), m_list);
            item->setData(Qt::UserRole, qint64(raw(kind.id)));
        }
    } catch (const std::exception& error) {
        QMessageBox::warning(this, windowTitle(), said(error));
    }
}

std::optional<TestKindId> TestsDialog::current() const {
    if (!m_list->currentItem())
        return std::nullopt;
    return TestKindId{m_list->currentItem()->data(Qt::UserRole).toLongLong()};
}

void TestsDialog::change() {
    const auto id = current();
    if (!id)
        return;
    try {
        for (const auto& kind : m_logbook.log().testKinds())
            if (kind.id == *id)
                TestDialog(m_logbook, id, kind.value, this).exec();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, windowTitle(), said(error));
    }
    fill();
}

void TestsDialog::remove() {
    const auto id = current();
    if (!id)
        return;
    try {
        m_logbook.removeTestKind(*id);
    } catch (const std::exception& error) {
        QMessageBox::warning(this, windowTitle(), said(error));
    }
    fill();
}

} // namespace slopebook::ui
