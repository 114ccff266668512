// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/pastedialog.h"

#include "core/model/errors.h"
#include "ui/importing/importwords.h"
#include "ui/words/format.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using namespace exchange;

namespace {
constexpr std::size_t setsShown = 8;
}

PasteDialog::PasteDialog(PastedBlock block, LoadUnit unit, QWidget* parent)
    : QDialog(parent), m_block(std::move(block)), m_unit(unit), m_questions(new QFormLayout),
      m_sets(new QLabel) {
    setWindowTitle(tr("Pasted sets"));
    m_questions->setRowWrapPolicy(QFormLayout::WrapAllRows);
    if (m_block.asksRows)
        askRows();
    for (const Question& question : m_block.open) {
        if (question.about == Question::About::Decimal)
            askDecimal(question);
        else if (question.about == Question::About::SpeedUnit)
            askSpeed(question);
    }
    m_sets->setObjectName(u"pastedSets"_s);
    m_sets->setWordWrap(true);
    m_sets->setAccessibleDescription(tr("Sets as they will be taken"));
    m_sets->setMinimumWidth(420);
    auto* buttons = new QDialogButtonBox;
    m_take = buttons->addButton(tr("&Take these sets"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_questions);
    layout->addWidget(m_sets, 1);
    layout->addWidget(buttons);
    m_take->setDefault(true);
    showSets();
}

QComboBox* PasteDialog::ask(const QString& question, const QString& name) {
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(question);
    box->addItem(tr("Choose…"), -1);
    auto* label = new QLabel(question);
    label->setWordWrap(true);
    label->setBuddy(box);
    m_questions->addRow(label, box);
    m_asked.push_back(box);
    return box;
}

void PasteDialog::askRows() {
    QComboBox* box = ask(tr("Rows below each other have the same load. A row is"), u"rows"_s);
    box->addItem(tr("one rep: rows of the same load make one set"), 0);
    box->addItem(tr("one set of its own"), 1);
    connect(box, &QComboBox::currentIndexChanged, this, [this, box] {
        m_block.shape.rowIsSet = box->currentData().toInt() == 1;
        showSets();
    });
}

void PasteDialog::askDecimal(const Question& question) {
    QComboBox* box = ask(questionText(question, m_block.facts), u"decimal"_s);
    box->addItem(tr("The point is the decimal mark"), static_cast<int>(Decimal::Point));
    box->addItem(tr("The comma is the decimal mark"), static_cast<int>(Decimal::Comma));
    connect(box, &QComboBox::currentIndexChanged, this, [this, box, question] {
        const int said = box->currentData().toInt();
        for (ColumnUse& use : m_block.shape.columns[question.role])
            if (use.at == question.column)
                use.decimal = said < 0 ? std::nullopt : std::optional(static_cast<Decimal>(said));
        showSets();
    });
}

void PasteDialog::askSpeed(const Question& question) {
    QComboBox* box = ask(questionText(question, m_block.facts), u"speed"_s);
    box->addItem(tr("cm/s, or hundredths: 92 is 0.92 m/s"),
                 static_cast<int>(SpeedUnit::CentimetresPerSecond));
    box->addItem(tr("m/s"), static_cast<int>(SpeedUnit::MetresPerSecond));
    connect(box, &QComboBox::currentIndexChanged, this, [this, box] {
        const int said = box->currentData().toInt();
        m_block.shape.speed = said < 0 ? std::nullopt : std::optional(static_cast<SpeedUnit>(said));
        showSets();
    });
}

void PasteDialog::showSets() {
    m_take->setEnabled(false);
    const bool answered = std::ranges::all_of(
        m_asked, [](const QComboBox* box) { return box->currentData().toInt() >= 0; });
    if (!answered) {
        m_sets->setText(tr("Nothing is taken before this is said."));
        return;
    }
    try {
        const std::vector<Set> sets = setsOf(m_block);
        QStringList lines{tr("Sets: %1").arg(sets.size())};
        for (std::size_t i = 0; i < std::min(sets.size(), setsShown); ++i)
            lines << tr("%1: %2", "a load: its reps")
                         .arg(massWithUnit(sets[i].load, m_unit), repsText(sets[i]));
        if (sets.size() > setsShown)
            lines << tr("and so on");
        m_sets->setText(lines.join(u'\n'));
        m_take->setEnabled(!sets.empty());
    } catch (const BadInput& bad) {
        m_sets->setText(pastedProblem(bad));
    }
}

} // namespace slopebook::ui
