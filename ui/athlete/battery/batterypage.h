// SPDX-License-Identifier: GPL-3.0-or-later
// The battery of an athlete: attempts of one session, and two dates or blocks side by side.
#pragma once

#include "ui/athlete/battery/attemptsview.h"
#include "ui/athlete/battery/beforeafterview.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"

class QBoxLayout;
class QStackedWidget;
class QTabWidget;

namespace slopebook::ui {

class TraceDialog;
struct TraceTarget;

class BatteryPage final : public TaskPage, public Prints {
    Q_OBJECT
public:
    BatteryPage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void setStart(std::optional<BlockId> start) override;
    void refresh(Logbook::What what, SessionId session) override;

    bool canPrint() const override { return m_beforeAfter->answer().has_value(); }
    void print() override { m_beforeAfter->print(); }
    void printPreview() override { m_beforeAfter->printPreview(); }
    void writePdf() override { m_beforeAfter->writePdf(); }

    /// The control line: where the index is folded away its choice stands first in it.
    QBoxLayout* strip() const { return m_strip; }

    /// Whether the attempts of that session are on the page; shows them.
    bool shows(SessionId session) const;
    void showSession(SessionId session);
    /// Two days or blocks side by side.
    void compare(const questions::BatterySide& from, const questions::BatterySide& to);

    AttemptsView& attempts() { return *m_attempts; }
    BeforeAfterView& beforeAfter() { return *m_beforeAfter; }
    /// Not modal: the session can be seen beside it. It stays the athlete's and session's for whom
    /// it was opened; nothing where no athlete is chosen.
    TraceDialog* openTrace();

Q_SIGNALS:
    /// Speeds of a trace's reps of that athlete, as they would be typed after the load.
    void speedsFound(slopebook::AthleteId athlete, const QString& speeds,
                     slopebook::VelocityKind kind);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    TraceTarget targetOf(AthleteId athlete, std::optional<SessionId> session);

    Logbook& m_logbook;
    Clock m_clock;
    AttemptsView* m_attempts;
    BeforeAfterView* m_beforeAfter;
    QTabWidget* m_tabs;
    QBoxLayout* m_line;         ///< tabs and what belongs to them, in two lines where it is narrow
    QBoxLayout* m_strip;        ///< the first of it
    QStackedWidget* m_controls; ///< by tab
    std::optional<AthleteId> m_athlete;
};

} // namespace slopebook::ui
