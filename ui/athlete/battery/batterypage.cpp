// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/batterypage.h"

#include "core/questions/batteryquestions.h"
#include "ui/athlete/battery/tracedialog.h"
#include "ui/parts/striptabs.h"
#include "ui/parts/wayon.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

namespace slopebook::ui {

BatteryPage::BatteryPage(Logbook& logbook, Clock clock, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_clock(clock),
      m_attempts(new AttemptsView(logbook, std::move(clock))),
      m_beforeAfter(new BeforeAfterView(logbook)), m_tabs(new StripTabs) {
    m_tabs->addTab(m_beforeAfter, tr("Before and after")); // the answer first
    m_tabs->addTab(m_attempts, tr("Attempts of a session"));
    m_controls = new QStackedWidget;
    for (QWidget* each : {m_beforeAfter->choices(), m_attempts->choices()})
        m_controls->addWidget(each);
    m_controls->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_line = new QBoxLayout(QBoxLayout::LeftToRight);
    m_strip = new QHBoxLayout;
    m_strip->addWidget(barInStrip(*m_tabs, tr("Kinds of answers")));
    m_strip->addStretch(1); // in a line of their own too they begin at its left
    m_line->addLayout(m_strip);
    m_line->addWidget(m_controls, 1);
    m_line->setSpacing(12);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_line);
    layout->addWidget(m_tabs, 1);
    m_beforeAfter->setWay(new WayOn(*this, Place::Session));
    connect(m_tabs, &QTabWidget::currentChanged, m_controls, &QStackedWidget::setCurrentIndex);
    connect(m_attempts, &AttemptsView::message, this, &TaskPage::message);
    connect(m_beforeAfter, &BeforeAfterView::message, this, &TaskPage::message);
    connect(m_beforeAfter, &BeforeAfterView::startChosen, this, [this](BlockId start) {
        if (m_athlete)
            countFrom(*m_athlete, start);
    });
    connect(m_beforeAfter, &BeforeAfterView::attemptsWanted, this,
            [this] { m_tabs->setCurrentWidget(m_attempts); });
    connect(m_attempts, &AttemptsView::traceWanted, this, [this] { openTrace(); });
}

void BatteryPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    const int wanted =
        m_strip->minimumSize().width() + m_line->spacing() + m_controls->minimumSizeHint().width();
    const bool narrow = wanted > layout()->contentsRect().width();
    m_line->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_line->setSpacing(narrow ? 4 : 12);
}

void BatteryPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId>) {
    const bool same = athlete == m_athlete;
    m_athlete = athlete;
    if (same) {
        refresh(Logbook::What::Everything, SessionId{});
        return;
    }
    m_attempts->setAthlete(athlete);
    m_beforeAfter->setAthlete(athlete);
}

void BatteryPage::setStart(std::optional<BlockId> start) {
    m_beforeAfter->setStart(start);
}

void BatteryPage::refresh(Logbook::What, SessionId) {
    m_attempts->reload();
    m_beforeAfter->reload();
}

bool BatteryPage::shows(SessionId session) const {
    return m_tabs->currentWidget() == m_attempts && m_attempts->session() == session;
}

void BatteryPage::showSession(SessionId session) {
    m_tabs->setCurrentWidget(m_attempts);
    m_attempts->showSession(session);
}

void BatteryPage::compare(const questions::BatterySide& from, const questions::BatterySide& to) {
    m_tabs->setCurrentWidget(m_beforeAfter);
    m_beforeAfter->compare(from, to);
}

TraceTarget BatteryPage::targetOf(AthleteId athlete, std::optional<SessionId> session) {
    TraceTarget target;
    for (const auto& one : m_logbook.log().athletes())
        if (one.id == athlete)
            target.whose = text(one.value.name);
    if (session)
        target.day = m_logbook.log().session(*session).head.value.date;
    target.test = m_attempts->test();
    target.today = [this] { return m_clock.today(); };
    const auto into = std::make_shared<std::optional<SessionId>>(session);
    target.add = [this, athlete, into](const TestKind& kind, const Attempt& attempt, bool today) {
        if (today)
            into->reset();
        *into = m_attempts->addAttempts(athlete, *into, kind, {attempt});
        return m_logbook.log().session(**into).head.value.date;
    };
    target.stands = [this, into](const TestKind& kind, const Attempt& attempt) {
        if (!*into)
            return false;
        for (const auto& held : m_logbook.log().testKinds())
            for (const TestAttempts& test : m_logbook.log().battery(**into).tests)
                if (held.value.name == kind.name && test.kind == held.id &&
                    std::ranges::find(test.attempts, attempt) != test.attempts.end())
                    return true;
        return false;
    };
    return target;
}

TraceDialog* BatteryPage::openTrace() {
    if (!m_athlete) {
        Q_EMIT message(tr("Choose an athlete first: a trace is somebody's."));
        return nullptr;
    }
    try {
        auto* dialog = new TraceDialog(this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog, &TraceDialog::speedsAccepted, this,
                [this, athlete = *m_athlete](const QString& speeds, VelocityKind kind) {
                    Q_EMIT speedsFound(athlete, speeds, kind);
                });
        // The load is typed in the session form next, which the dialog would cover.
        connect(dialog, &TraceDialog::speedsAccepted, dialog, &QDialog::close);
        std::vector<TestKind> tests;
        for (const questions::OfferedTest& each : questions::offeredTests(m_logbook.log()))
            tests.push_back(each.kind);
        dialog->setTests(std::move(tests));
        dialog->setTarget(targetOf(*m_athlete, m_attempts->session()));
        dialog->show();
        return dialog;
    } catch (const std::exception& error) {
        Q_EMIT message(said(error));
        return nullptr;
    }
}

} // namespace slopebook::ui
