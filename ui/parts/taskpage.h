// SPDX-License-Identifier: GPL-3.0-or-later
// What every task of the window is: a page about one athlete and lift that the shell keeps told.
#pragma once

#include "core/questions/batteryquestions.h"
#include "core/questions/liftside.h"
#include "ui/edits/logbook.h"

#include <QWidget>

#include <optional>

namespace slopebook::ui {

/// A page is made with (Logbook&, QWidget* parent), shows nothing until it is told of an athlete
/// and lift, reads the log through the logbook, and catches its own errors: no exception leaves a
/// slot.
class TaskPage : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;

    /// Where a page may send the coach.
    /// Athletes, Lifts: where the first of them is added.
    enum class Place { Overview, WholeSeason, Session, Stations, Athletes, Lifts };
    Q_ENUM(Place)

    /// Shows that athlete and lift, read afresh. Called whenever the chooser changes; either may be
    /// absent (a new log), then the page says what to do instead.
    virtual void setAthleteAndLift(std::optional<AthleteId> athlete,
                                   std::optional<LiftId> lift) = 0;
    /// The block that the coach counts this athlete's changes from, on whichever page it was
    /// chosen; absent: none was. Called before setAthleteAndLift(); pages without a start heed it
    /// not.
    virtual void setStart(std::optional<BlockId> /*start*/) {}
    /// Something in the log changed. session is 0 where the change is not about one session. Called
    /// for visible pages at once, for hidden ones when they are shown next.
    virtual void refresh(Logbook::What what, SessionId session) = 0;

    /// Whether what is shown just now is of the chosen lift: else its box is away. Of pages that
    /// are of a lift at all (window/pagetable.h).
    virtual bool isOfLift() const { return true; }

protected:
    /// Days that stand for blocks (questions::columnFor) are no start for other pages.
    void countFrom(AthleteId athlete, BlockId start) {
        if (raw(start) > 0)
            Q_EMIT startChosen(athlete, start);
    }

Q_SIGNALS:
    /// isOfLift() may say something else now.
    void ofLiftChanged();
    /// A short sentence for the shell's status area.
    void message(const QString& text);
    /// The coach counts changes of that athlete from this block: on every page from now on.
    void startChosen(slopebook::AthleteId athlete, slopebook::BlockId start);
    /// Asks the shell to show that session in the session form.
    void sessionWanted(slopebook::SessionId session);
    /// Asks the shell to show the tests of that session.
    void testsWanted(slopebook::SessionId session);
    /// Asks the shell to show a comparison of two sessions, blocks or stretches of days of the
    /// athlete.
    void comparisonWanted(slopebook::AthleteId athlete, const slopebook::questions::LiftSide& from,
                          const slopebook::questions::LiftSide& to);
    /// Asks the shell to choose that athlete, before it shows what is asked for next.
    void athleteWanted(slopebook::AthleteId athlete);
    /// Asks the shell to choose that lift, before it shows what is asked for next.
    void liftWanted(slopebook::LiftId lift);
    /// Asks the shell to show that load of the athlete's lift through the season.
    void seasonWanted(slopebook::LiftId lift, slopebook::Mass load);
    /// Asks the shell to show the athlete's tests of two days or blocks side by side.
    void batteryWanted(const slopebook::questions::BatterySide& from,
                       const slopebook::questions::BatterySide& to);
    /// Asks the shell to go there.
    void placeWanted(slopebook::ui::TaskPage::Place place);
};

/// Implemented by pages with something to print: the shell's Print, Preview and PDF actions call
/// it.
class Prints {
public:
    virtual ~Prints() = default;
    virtual bool canPrint() const = 0;
    virtual void print() = 0;
    virtual void printPreview() = 0;
    virtual void writePdf() = 0;
};

} // namespace slopebook::ui
