// SPDX-License-Identifier: GPL-3.0-or-later
// The battery of an athlete: attempts of one session, and two dates or blocks side by side.
#pragma once

#include "ui/battery/attemptsview.h"
#include "ui/battery/beforeafterview.h"
#include "ui/shell/clock.h"
#include "ui/shell/taskpage.h"

class QTabWidget;

namespace slopebook::ui {

class TraceDialog;

class BatteryPage final : public TaskPage, public Prints {
    Q_OBJECT
public:
    BatteryPage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    bool canPrint() const override { return m_beforeAfter->answer().has_value(); }
    void print() override { m_beforeAfter->print(); }
    void printPreview() override { m_beforeAfter->printPreview(); }
    void writePdf() override { m_beforeAfter->writePdf(); }

    AttemptsView& attempts() { return *m_attempts; }
    BeforeAfterView& beforeAfter() { return *m_beforeAfter; }
    /// Not modal: the session can be seen beside it.
    TraceDialog* openTrace();

Q_SIGNALS:
    /// Speeds of a trace's reps, as they would be typed after the load.
    void speedsFound(const QString& speeds, slopebook::VelocityKind kind);

private:
    Logbook& m_logbook;
    AttemptsView* m_attempts;
    BeforeAfterView* m_beforeAfter;
    QTabWidget* m_tabs;
    std::optional<AthleteId> m_athlete;
};

} // namespace slopebook::ui
