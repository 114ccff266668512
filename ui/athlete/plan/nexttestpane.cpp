// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/nexttestpane.h"

#include "core/answers/nexttestwords.h"
#include "core/answers/plansummary.h"
#include "core/model/phrases/questions.h"
#include "ui/parts/downscroll.h"
#include "ui/parts/fold.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wraprow.h"
#include "ui/words/format.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

NextTestPane::NextTestPane(QWidget* parent)
    : QWidget(parent), m_steps(new QSpinBox), m_reps(new QSpinBox), m_heaviest(new QSpinBox),
      m_known(new QComboBox), m_sentence(new Sentence), m_settled(new QLabel),
      m_model(new PlanLadderModel(this)), m_chart(new charts::CeilingChart) {
    build();
    connect(this, &NextTestPane::fieldsChanged, this, &NextTestPane::nameSettings);
    nameSettings();
    for (QSpinBox* box : {m_steps, m_reps, m_heaviest})
        connect(box, &QSpinBox::valueChanged, this, &NextTestPane::fieldsChanged);
    connect(m_known, &QComboBox::currentIndexChanged, this, &NextTestPane::fieldsChanged);
}

void NextTestPane::build() {
    m_steps->setRange(2, 8);
    m_steps->setValue(5);
    m_reps->setRange(0, 10);
    m_reps->setSpecialValueText(tr("as before"));
    m_heaviest->setRange(20, 100);
    m_heaviest->setValue(90);
    m_heaviest->setSuffix(u" %"_s);
    m_known->addItems({tr("the test's own scatter"), tr("with earlier tests' scatter"),
                       tr("scatter taken as known")});
    m_known->setAccessibleName(tr("What the interval is made with"));
    auto* strip = new QWidget; // goes on in the next line where the window is narrow
    auto* row = new WrapRow(strip);
    const auto add = [row](const QString& text, QWidget* field) {
        auto* label = new QLabel(text);
        label->setBuddy(field);
        row->addField(label, field);
    };
    add(tr("S&teps"), m_steps);
    add(tr("Reps a set"), m_reps);
    add(tr("Heavie&st, of 1RM"), m_heaviest);
    add(tr("Intervals &by"), m_known);
    m_settled->setWordWrap(true);
    m_settled->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_sentence->setAccessibleDescription(tr("Which ladder to test with"));
    m_settled->setObjectName(u"canShow"_s);
    m_settled->setAccessibleDescription(
        tr("What two tests can show before they are done, and what would settle what is unclear"));
    m_settings = new FoldButton(QString(), {strip});
    m_settings->setObjectName(u"ladderSettings"_s);
    m_table = rowTable(
        m_model, tr("Ladders for the next test, best first"),
        {.compact = true,
         .giving = {PlanLadderModel::Name, PlanLadderModel::Loads, PlanLadderModel::FirstCheckLoad,
                    PlanLadderModel::FirstCheckLoad + 1, PlanLadderModel::FirstCheckLoad + 2,
                    PlanLadderModel::FirstCheckLoad + 3},
         // The loads to put on and what the 1RM gets from them stay.
         .leaving = {PlanLadderModel::Heaviest, PlanLadderModel::FirstCheckLoad + 3,
                     PlanLadderModel::FirstCheckLoad + 2, PlanLadderModel::FirstCheckLoad + 1,
                     PlanLadderModel::FirstCheckLoad, PlanLadderModel::OneRmChange}});
    m_table->setObjectName(u"ladders"_s);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout(inside);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->addWidget(m_sentence);
    layout->addWidget(m_chart);
    layout->addWidget(m_table);
    layout->addWidget(m_settings);
    layout->addWidget(strip);
    layout->addWidget(m_settled);
    auto* scroll = new QScrollArea;
    scroll->setAccessibleName(tr("Next test"));
    holdInside(*scroll, inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

void NextTestPane::fitPicture(int height) {
    // An ignored height would not be reckoned with, and the table lie on what stands below it.
    m_chart->setFixedHeight(height);
}

void NextTestPane::nameSettings() {
    const QString reps =
        m_reps->value() > 0 ? tr("%1 reps a set").arg(m_reps->value()) : tr("reps as before");
    m_settings->setText(tr("%1 steps, %2, up to %3 of the 1RM")
                            .arg(QString::number(m_steps->value()), reps, m_heaviest->text()));
}

void NextTestPane::setUnit(LoadUnit unit) {
    m_unit = unit;
    m_model->setNextTest(std::nullopt, unit);
}

void NextTestPane::showReason(const QString& reason) {
    m_model->setNextTest(std::nullopt, m_unit);
    m_chart->setData({});
    m_chart->setSpokenText(reason);
    m_sentence->setText(reason);
    m_settled->clear();
    showWhole(m_table);
}

void NextTestPane::ask(const Question& q) {
    auto settings =
        questions::nextTestSettings(*q.context, *q.about, q.profile->session, q.equipment);
    settings.ceiling = q.ceiling;
    settings.bounds = q.bounds;
    settings.steps = m_steps->value();
    settings.heaviestPercent = m_heaviest->value();
    settings.known = static_cast<answers::ScatterKnown>(m_known->currentIndex());
    QString repsNote;
    if (m_reps->value() > 0) {
        if (const auto sd = questions::repSd(*q.log, *q.about))
            settings.scatter.s = answers::scatterForReps(
                settings.scatter.s, *sd, q.about->lift.value.rule,
                questions::repsOf(*q.log, q.profile->session), m_reps->value());
        else
            repsNote =
                u' ' +
                said(questions::say("Too few sets of two reps to say what more reps would do."));
    }
    const auto next = answers::nextTest(*q.profile, settings);
    if (!next) {
        showReason(noAnswerText(next.why(), q.unit));
        return;
    }
    m_model->setNextTest(*next, q.unit);
    // What no ladder has to beware of leaves its room to the figures.
    const int last = m_model->columnCount() - 1;
    bool beware = false;
    for (int row = 0; row < m_model->rowCount(); ++row)
        beware = beware || !m_model->index(row, last).data().toString().isEmpty();
    for (int column = 0; column <= last; ++column)
        m_table->setColumnHidden(column, column == last && !beware);
    shareWidth(*m_table);
    showWhole(m_table);
    m_chart->setData({.curve = next->curve, .byOneRm = next->byOneRm, .unit = q.unit});
    QStringList told = said(answers::nextTestWords(*next), q.unit);
    // The answer first: what to put on the bar.
    m_sentence->setText(tr("Test with %1. %2")
                            .arg(planwords::ladderInWords(next->ladders.front(), q.unit),
                                 told.isEmpty() ? QString() : told.takeFirst()));
    m_chart->setSpokenText(m_sentence->text());
    QStringList settled;
    if (const QString rest = (told.join(QLatin1Char(' ')) + repsNote).trimmed(); !rest.isEmpty())
        settled << rest;
    if (const Words shows = answers::canShowWords(next->ladders.front(), next->byOneRm);
        !shows.empty())
        settled << said(asSentence(shows), q.unit);
    for (const questions::SettledAt& each :
         questions::settledAt(*q.context, *q.about, *q.profile, *next, next->ladders.front()))
        settled << said(asSentence(questions::settledWords(each)), q.unit);
    if (const auto max =
            questions::settledMax(*q.context, *q.about, *q.profile, *next, next->ladders.front()))
        settled << said(asSentence(questions::settledWords(*max)), q.unit);
    m_settled->setText(settled.join(u'\n'));
    m_settled->setVisible(!settled.isEmpty());
}

} // namespace slopebook::ui
