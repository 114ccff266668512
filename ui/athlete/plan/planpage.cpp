// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/planpage.h"

#include "core/answers/barfit.h"
#include "core/answers/maxwords.h"
#include "core/answers/method.h"
#include "core/answers/plansummary.h"
#include "core/answers/restrictedflow.h"
#include "core/model/errors.h"
#include "ui/athlete/plan/nexttestpane.h"
#include "ui/athlete/plan/relationpane.h"
#include "ui/parts/downscroll.h"
#include "ui/parts/givesway.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/striptabs.h"
#include "ui/parts/wayon.h"
#include "ui/parts/wrappedpage.h"
#include "ui/records/equipmentdialog.h"
#include "ui/words/format.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

// No exception crosses the event loop: it is told where the answer would stand.
template <class Work>
void PlanPage::atTheEdge(const Work& work) {
    try {
        work();
    } catch (const std::exception& error) {
        showReason(said(error));
    }
}

PlanPage::PlanPage(Logbook& logbook, QWidget* parent, Clock clock)
    : TaskPage(parent), m_logbook(logbook), m_clock(std::move(clock)), m_form(new PlanForm),
      m_tabs(new StripTabs), m_age(new QLabel), m_sentence(new Sentence), m_chart(new PlanChart),
      m_model(new PlanModel(this)), m_cautions(new QLabel), m_borrowed(new QLabel),
      m_next(new NextTestPane), m_relations(new RelationPane) {
    build();
    connectParts();
    ask();
}

void PlanPage::build() {
    m_form->setUnit(m_logbook.loadUnit());
    m_next->setUnit(m_logbook.loadUnit());
    for (QLabel* label : {m_age, m_cautions, m_borrowed}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    }
    m_sentence->setObjectName(u"sentence"_s);
    m_cautions->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_age->setAccessibleDescription(tr("The line that is planned from"));
    m_age->setObjectName(u"lineAge"_s);
    m_sentence->setAccessibleDescription(tr("What is planned"));
    m_borrowed->setAccessibleDescription(tr("Borrowed from earlier sessions"));
    m_cautions->setAccessibleDescription(tr("Cautions"));
    // Plates wrap, and are never cut: what a load is of a 1RM that nobody lifted goes first.
    m_table = rowTable(m_model, tr("Loads that can be built"),
                       {.compact = true,
                        .giving = {PlanModel::PerSide, PlanModel::Speed, PlanModel::Related},
                        .leaving = {PlanModel::Percent, PlanModel::Related}});
    m_table->setObjectName(u"loads"_s);
    keepLeastHeight(*m_table);
    m_chart->setSpokenText(tr("The line that is planned from, and what can be built on it"));

    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart);
    split->addWidget(m_table);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({320, 200});
    auto* loads = new WrappedPage;
    auto* column = new QVBoxLayout(loads);
    column->addWidget(m_sentence);
    column->addWidget(m_way = new WayOn(*this, Place::Session));
    column->addWidget(m_age);
    column->addWidget(m_borrowed);
    column->addWidget(split, 1);
    column->addWidget(new GivesWay(m_cautions, GivesWay::allLines));
    m_tabs->addTab(loads, tr("Loa&ds"));
    m_tabs->addTab(m_next, tr("Ne&xt test"));
    m_tabs->addTab(m_relations, tr("S&quad"));

    auto* both = new QSplitter;
    auto* form = new DownScroll(m_form);
    form->setAccessibleName(tr("What to plan"));
    both->addWidget(form);
    both->addWidget(m_tabs);
    both->setChildrenCollapsible(false);
    both->setStretchFactor(1, 1);
    both->setSizes({280, 900});
    m_strip = new QHBoxLayout;
    m_strip->setSpacing(12);
    m_strip->addWidget(barInStrip(*m_tabs, tr("What is planned")));
    m_strip->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_strip);
    layout->addWidget(both, 1);
}

void PlanPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    constexpr int lines = 20; // with what its marks are
    m_chart->setMinimumHeight(pictureHeight(*this, lines));
    m_next->fitPicture(pictureHeight(*this));
}

void PlanPage::connectParts() {
    connect(m_form, &PlanForm::changed, this, [this] { ask(); });
    connect(m_form, &PlanForm::newEquipmentWanted, this, [this] { editEquipment({}); });
    connect(m_form, &PlanForm::changeEquipmentWanted, this,
            [this](EquipmentId id) { editEquipment(id); });
    connect(m_form, &PlanForm::removeEquipmentWanted, this,
            [this](EquipmentId id) { removeEquipment(id); });
    connect(m_next, &NextTestPane::fieldsChanged, this,
            [this] { atTheEdge([this] { askNextTest(); }); });
    connect(m_relations, &RelationPane::useChanged, this, [this] { ask(); });
    connect(m_tabs, &QTabWidget::currentChanged, this, [this] {
        atTheEdge([this] {
            askNextTest();
            readRelations();
        });
    });
}

void PlanPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    m_athlete = athlete;
    m_lift = lift;
    atTheEdge([this] { read(); });
    ask();
}

void PlanPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    setAthleteAndLift(m_athlete, m_lift);
}

void PlanPage::read() {
    m_about.reset();
    m_equipment = m_logbook.log().equipment();
    m_lifts.clear();
    for (const auto& lift : m_logbook.log().lifts())
        m_lifts.push_back(lift.value.name);
    if (m_athlete && m_lift)
        m_about = questions::background(m_logbook.log(), *m_athlete, *m_lift);
    m_form->setLift(m_about ? m_about->lift.value.name : std::string(), m_lifts);
    m_form->setEquipment(m_equipment);
    m_form->setSessions(m_about ? m_about->sessions : std::vector<LiftSession>{});
    readRelations();
}

// Goes through the whole log: only while it is looked at, or used.
void PlanPage::readRelations() {
    if (!m_about || (m_tabs->currentWidget() != m_relations && m_relations->name().empty()))
        return;
    const Lift& lift = m_about->lift.value;
    m_relations->setRelations(
        answers::squadRelation(lift, m_logbook.log().liftSessions({.lift = m_about->lift.id})),
        m_choice.unit, answers::publishedRelation(lift.name, lift.kind));
}

void PlanPage::showAge() {
    m_age->setText(
        m_profile ? said(answers::lineAge(m_profile->session.date,
                                          m_clock ? std::optional(m_clock.today()) : std::nullopt),
                         m_choice.unit)
                        .join(u' ')
                  : QString());
    if (m_profile && m_profile->oneRm)
        m_age->setText(tr("%1 %2", "a sentence on what is planned with, one on how old the line is")
                           .arg(said(asSentence(answers::planWithWords(*m_profile)), m_choice.unit),
                                m_age->text()));
    m_age->setVisible(m_profile.has_value());
    m_form->setLine(m_profile);
}

void PlanPage::ask() {
    m_profile.reset();
    m_way->hide();
    showAge();
    atTheEdge([this] {
        m_choice = m_form->choice();
        if (!m_about)
            return showReason(
                m_way->sayMissing(m_logbook.log(), tr("Choose an athlete and a lift."), false));
        m_way->sayMissing(m_logbook.log(), {}, !m_choice.session);
        if (!m_choice.session)
            return showReason(tr("No session of this lift yet: test first, then plan."));
        const auto session = questions::sessionOf(m_about->sessions, *m_choice.session);
        if (!session)
            return showReason(noAnswerText(session.why(), m_choice.unit));
        const auto profile = questions::profileOf(
            questions::within(m_logbook.context(*m_lift), *m_about, session->conditions.device),
            *session);
        if (!profile)
            return showReason(noAnswerText(profile.why(), m_choice.unit));
        const auto equipment = chosenEquipment();
        if (!equipment)
            return showReason(tr("Make a set of equipment first: the bars and plates at hand."));
        m_day = questions::planDay(m_logbook.log(), *m_about, *session,
                                   m_clock ? std::optional(m_clock.today()) : std::nullopt);
        if (m_day.notPossible)
            return showReason(noAnswerText(*m_day.notPossible, m_choice.unit));
        auto settings =
            questions::planSettings(m_logbook.context(*m_lift), *m_about, *session, *equipment);
        settings.bounds = m_day.bounds;
        settings.target = m_choice.target;
        settings.lossPercent = m_choice.lossPercent;
        settings.ceiling = m_choice.ceiling;
        settings.side = m_choice.side;
        settings.restrictedFlow = m_choice.restrictedFlow;
        settings.unit = m_choice.unit == LoadUnit::Pounds ? MassUnit::Pound : MassUnit::Kilogram;
        const bool noShare = m_about->lift.value.ballistic && settings.target &&
                             settings.target->kind == answers::Target::Kind::Percent;
        if (noShare) // every load is shown instead, with its speed
            settings.target.reset();
        m_profile = *profile;
        showAge();
        const auto plan = answers::plan(m_about->lift.value, *profile, settings);
        if (!plan)
            showReason(noAnswerText(plan.why(), m_choice.unit));
        else
            showPlan(*plan);
        if (plan && noShare) {
            m_sentence->setText(said(answers::noShareWords(), m_choice.unit).join(u' '));
            m_chart->setSpokenText(m_sentence->text());
        }
        askNextTest();
    });
}

/// The set of equipment with the bar that is planned for.
std::optional<Equipment> PlanPage::chosenEquipment() const {
    const auto found = std::ranges::find_if(
        m_equipment, [this](const auto& each) { return each.id == m_choice.equipment; });
    if (found == m_equipment.end())
        return std::nullopt;
    if (m_choice.bar && *m_choice.bar < found->value.bars.size())
        return answers::onBar(found->value, *m_choice.bar);
    return m_about ? answers::onFittingBars(found->value, m_about->lift.value.name, m_lifts)
                   : found->value;
}

void PlanPage::askNextTest() {
    if (m_tabs->currentWidget() != m_next)
        return;
    const auto equipment = chosenEquipment();
    if (!m_about || !m_profile || !equipment)
        return m_next->showReason(m_sentence->text());
    m_next->ask({.log = &m_logbook.log(),
                 .context = &m_logbook.context(*m_lift),
                 .about = &*m_about,
                 .profile = &*m_profile,
                 .equipment = *equipment,
                 .ceiling = m_choice.ceiling,
                 .bounds = m_day.bounds,
                 .unit = m_choice.unit});
}

void PlanPage::showReason(const QString& reason) {
    m_model->setPlan(std::nullopt, m_choice.unit);
    m_chart->setData({});
    m_sentence->setText(reason);
    m_chart->setSpokenText(reason);
    m_cautions->clear();
    m_borrowed->clear();
    if (m_tabs->currentWidget() == m_next)
        m_next->showReason(reason);
}

void PlanPage::showPlan(const answers::Plan& plan) {
    m_model->setPlan(plan, m_choice.unit, m_relations->related(plan), m_relations->heading());
    m_borrowed->setVisible(m_choice.history);
    m_borrowed->setText(
        m_choice.history
            ? planwords::borrowedText(answers::borrow(plan.lift, m_about->mvt, m_about->sessions,
                                                      plan.profile.session.session),
                                      plan.profile, m_choice.unit)
            : QString());
    m_chart->setData(planDrawing(plan, m_choice.unit));
    QStringList told =
        said(std::vector{answers::liftWords(plan), answers::aimWords(plan)}, m_choice.unit);
    told.removeAll(QString());
    m_sentence->setText(told.join(u' '));
    m_chart->setSpokenText(m_sentence->text());
    std::vector<answers::Caution> beware = plan.cautions;
    if (const Words name = m_relations->name(); !name.empty())
        beware.push_back(answers::relationCaution(name));
    QStringList cautions;
    if (plan.restrictedFlow)
        cautions = said(answers::restrictedFlowSentences(), m_choice.unit);
    cautions << planwords::allCautionTexts(std::move(beware), m_choice.unit);
    m_cautions->setText(cautions.join(u"\n"_s));
    showChosen();
}

// The table has its height only once it is shown.
void PlanPage::showChosen() {
    QTimer::singleShot(0, m_table, [this] {
        if (const auto& plan = m_model->plan(); plan && !plan->chosen.empty())
            m_table->scrollTo(m_model->index(static_cast<int>(plan->chosen.front()), 0),
                              QAbstractItemView::PositionAtCenter);
        shareWidth(*m_table);
    });
}

void PlanPage::showEvent(QShowEvent* event) {
    TaskPage::showEvent(event);
    showChosen();
}

void PlanPage::editEquipment(std::optional<EquipmentId> id) {
    try {
        Equipment before;
        for (const auto& each : m_equipment)
            if (each.id == id)
                before = each.value;
        EquipmentDialog dialog(before, this);
        if (dialog.exec() != QDialog::Accepted)
            return;
        if (id)
            m_logbook.changeEquipment(*id, dialog.equipment());
        else
            id = m_logbook.addEquipment(dialog.equipment());
        read();
        m_form->chooseEquipment(*id);
        ask();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Set of equipment"), said(error));
    }
}

void PlanPage::removeEquipment(EquipmentId id) {
    try {
        m_logbook.removeEquipment(id);
        Q_EMIT message(tr("Removed; undo brings it back."));
        read();
        ask();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Set of equipment"), said(error));
    }
}

} // namespace slopebook::ui
