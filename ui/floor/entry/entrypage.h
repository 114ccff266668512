// SPDX-License-Identifier: GPL-3.0-or-later
// The session form: one line a set, the sets beside last time's ladder, the chart that follows.
#pragma once

#include "ui/charts/linechart.h"
#include "ui/floor/entry/sessionview.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"

#include <map>

class QBoxLayout;
class QLabel;
class QTableView;
class QPushButton;
class QSpinBox;

namespace slopebook::ui {

class BesideLast;
class EntryLine;
class FiguresPanel;
class RestTimer;
class SessionBar;
class SplitOffer;

struct PastedBlock;
struct TypedGap;

class EntryPage final : public TaskPage {
    Q_OBJECT
public:
    EntryPage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;
    /// Nothing: a new one, not begun yet.
    void showSession(std::optional<SessionId> session);
    /// To be asked often: a window stays open over midnight.
    void lookAtTheDay();

    /// A set's speeds from a trace, put into the line for the coach to accept; refused where the
    /// lift is measured in another kind of velocity.
    void offerSpeeds(const QString& speeds, VelocityKind kind);

    /// What is typed and not written yet, for the next window on this log: file, day, athlete and
    /// line of each, a line break between them.
    QStringList unwritten() const;
    /// Of this log and day; it stands there again when its athlete is chosen.
    void takeUnwritten(const QStringList& kept);

    // For the shell's actions.
    void beginSession();
    void openDetails();
    void removeSession();
    void openSet();
    void removeSet();
    void focusLine();
    /// Takes cells as a spreadsheet copies them; asks first where they can be read in two ways.
    void pasteBlock(const QString& text);
    void showRest(bool wanted);

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    const charts::LineChart& chart() const { return *m_chart; }
    SetModel& sets() { return *m_sets; }
    LadderModel& ladder() { return *m_ladder; }
    std::optional<SessionId> session() const;

Q_SIGNALS:
    /// A table was pasted that names its own days, athletes or lifts.
    void tablePasted(const QString& text);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build(const Clock& clock);
    QWidget* buildTables();
    QWidget* buildPicture();
    void connectParts();
    /// Keeps the line for its athlete, and shows the next one's.
    void changeDraft(std::optional<AthleteId> next);
    void reload();
    std::optional<SessionId> sessionToWrite();
    void showView(const SessionView& view);
    void fillTables(const SessionView& view);
    void fitSets();
    std::optional<charts::PointRef> chartPointOf(int row) const;
    void showNothing(const QString& why);
    QString take(const std::vector<Set>& sets);
    QString note(const TypedGap& gap);
    QStringList questionsOf(const PastedBlock& block, const std::vector<Set>& sets) const;
    QString whose() const;
    void highlight();
    QString doubtOf(const Set& typed, std::optional<SetId> changed) const;
    std::optional<SetId> currentSet() const;

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::map<AthleteId, QString> m_drafts; ///< of athletes who are not shown
    std::optional<SessionView> m_view;
    int m_held = 0;    ///< above 0: what changes is shown once, when that is done
    int m_taking = 0;  ///< above 0: sets are being written, and the last is chosen in the table
    int m_filling = 0; ///< above 0: rows come and go, and what is chosen is not yet what it will be
    QBoxLayout* m_strip = nullptr;
    SessionBar* m_bar;
    SplitOffer* m_split;
    EntryLine* m_line;
    QLabel* m_next;
    QLabel* m_nextWhy;
    BesideLast* m_against;
    RestTimer* m_rest;
    SetModel* m_sets;
    LadderModel* m_ladder;
    QTableView* m_setTable;
    QTableView* m_ladderTable;
    QLabel* m_setTitle;
    QLabel* m_ladderTitle;
    QPushButton* m_setButton;
    QPushButton* m_removeButton;
    QSpinBox* m_earlier;
    FiguresPanel* m_figures;
    charts::LineChart* m_chart;
};

} // namespace slopebook::ui
