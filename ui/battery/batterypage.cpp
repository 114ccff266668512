// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/battery/batterypage.h"

#include "ui/battery/tracedialog.h"
#include "ui/questions/batteryquestions.h"

#include <QTabWidget>
#include <QVBoxLayout>

namespace slopebook::ui {

BatteryPage::BatteryPage(Logbook& logbook, Clock clock, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_attempts(new AttemptsView(logbook, std::move(clock))),
      m_beforeAfter(new BeforeAfterView(logbook)), m_tabs(new QTabWidget) {
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_attempts, tr("Attempts of a session"));
    m_tabs->addTab(m_beforeAfter, tr("Before and after"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tabs);
    connect(m_attempts, &AttemptsView::message, this, &TaskPage::message);
    connect(m_beforeAfter, &BeforeAfterView::message, this, &TaskPage::message);
    connect(m_attempts, &AttemptsView::traceWanted, this, [this] { openTrace(); });
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

void BatteryPage::refresh(Logbook::What, SessionId) {
    m_attempts->reload();
    m_beforeAfter->reload();
}

TraceDialog* BatteryPage::openTrace() {
    auto* dialog = new TraceDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &TraceDialog::attemptAccepted, this,
            [this](const TestKind& kind, const Attempt& attempt) {
                m_attempts->addAttempts(kind, {attempt});
            });
    connect(dialog, &TraceDialog::speedsAccepted, this, &BatteryPage::speedsFound);
    // The load is typed in the session form next, which the dialog would cover.
    connect(dialog, &TraceDialog::speedsAccepted, dialog, &QDialog::close);
    std::vector<TestKind> tests;
    for (const OfferedTest& each : offeredTests(m_logbook.log()))
        tests.push_back(each.kind);
    dialog->setTests(std::move(tests));
    dialog->show();
    return dialog;
}

} // namespace slopebook::ui
