// SPDX-License-Identifier: GPL-3.0-or-later
// A station: who is here and whose turn it is, the one line, and the athlete's own line as it
// grows. Everything by keys: Enter writes and moves on, Alt+Down passes, a name in front goes
// there.
#pragma once

#include "ui/charts/linechart.h"
#include "ui/floor/entry/sessionview.h"
#include "ui/floor/station/rostermodel.h"
#include "ui/floor/station/stationwords.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"
#include "ui/parts/texttable.h"
#include "ui/parts/undoableedit.h"

#include <QTimer>

#include <map>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace slopebook::ui {

/// The line, whose arrows offer: Up the next load, with Alt the athlete before and after.
class StationEdit final : public UndoableEdit {
    Q_OBJECT
public:
    using UndoableEdit::UndoableEdit;

Q_SIGNALS:
    void nextWanted();          ///< the load that is due
    void passed(int direction); ///< +1: whose turn it would be then; -1: back
    void escaped();

protected:
    void keyPressEvent(QKeyEvent* event) override;
};

class BodyField;

class StationPage final : public TaskPage {
    Q_OBJECT
public:
    StationPage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    QBoxLayout* strip() const { return m_strip; }
    void focusLine();
    void chooseStation(StationId station);
    std::optional<StationId> station() const;
    /// What stands in the box: its name and what is done there.
    QString stationTitle() const;
    /// Whose turn it is, as it is marked; nothing: nobody is here.
    std::optional<AthleteId> turn() const;
    /// Goes to that athlete; false where they are not at the station shown.
    bool goTo(AthleteId athlete);
    /// The same at any station of that lift or test that has them today.
    bool goTo(AthleteId athlete, std::optional<LiftId> lift, std::optional<SessionId> session);
    /// Whether a change of that session (and lift) is seen: it is of the athlete whose turn it is.
    bool shows(AthleteId athlete, std::optional<LiftId> lift) const;
    /// Asks for a new station; who is here.
    void addStation();
    void changeStation();
    void chooseWho();
    /// What is typed and not written yet, for the next window on this log: file, day, station,
    /// athlete and line of each, a line break between them.
    QStringList unwritten() const;
    /// Of this log and day; it stands there again when it is the athlete's turn.
    void takeUnwritten(const QStringList& kept);

    StationEdit* line() const { return m_line; }
    QString answer() const;
    const RosterModel& roster() const { return *m_roster; }
    const TextTable& done() const { return *m_done; }
    const charts::LineChart& chart() const { return *m_chart; }

Q_SIGNALS:
    /// Another station is shown, or it is called otherwise.
    void stationShown();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* buildRoster();
    QWidget* buildLine();
    QWidget* buildPicture();
    void connectParts();
    void connectLine();
    void guarded(const std::function<void()>& work);

    // What there is.
    void reload();
    void fillStations();
    void readAll();
    void readAnew(std::size_t at);
    bool isBeingLifted() const;
    void noteRests(const std::vector<int>& doneBefore, const std::vector<AthleteId>& before);
    void fillTests();

    // What is shown.
    void setTurn(std::optional<std::size_t> at);
    void keepDraft();
    void moveOn(std::size_t from);
    void pass(int direction);
    void showAll();
    void showRoster();
    void showTurn();
    void showPicture();
    void showDone();
    void fitRoster();
    void showTests(const questions::AtStation& at);
    void showBody();
    void takeBody();
    bool needsBody() const;
    std::optional<Mass> bodyMass(std::size_t who) const;
    void hideSilent();
    void showRests();
    void showFoot();
    void showNothing();
    void showParts(bool anybody);
    void say(const QString& words, bool problem);
    void sayHelp();
    void echo();

    // What is typed.
    void submit();
    void refuse(const LineProblem& problem, const QString& line, std::size_t who);
    void ask(const LineQuestion& question, std::size_t who);
    void askWho(const WhoQuestion& question);
    bool certain(const QString& doubt);
    void take(const TypedSet& set, std::size_t who);
    void take(const TypedGap& gap, std::size_t who);
    void take(const TypedAttempts& attempts, std::size_t who);
    void write(Entry entry, std::size_t who);
    Entry entryFor(std::size_t who) const;
    QString doubtOf(const Set& set, std::size_t who) const;
    QString doubtOf(const TypedAttempts& attempts, std::size_t who) const;
    LineAt lineAt(std::optional<std::size_t> who) const;
    DayLine read(const QString& line) const;
    std::vector<std::string> names() const;
    const Stored<TestKindId, TestKind>* testOf(std::optional<std::size_t> who) const;
    std::vector<bool> due() const;
    std::optional<std::size_t> rowOf(AthleteId athlete) const;

    Logbook& m_logbook;
    Clock m_clock;
    Date m_day{};
    std::optional<questions::StationWork> m_work;
    std::vector<questions::AtStation> m_here; ///< in the order of turns
    std::optional<std::size_t> m_turn;
    std::optional<SessionView> m_view;                     ///< of whose turn it is, at a lift
    std::map<AthleteId, std::chrono::sys_seconds> m_since; ///< their last set
    /// Typed for somebody at a station, and not written yet.
    std::map<std::pair<StationId, AthleteId>, QString> m_drafts;
    std::map<AthleteId, Mass> m_bodies; ///< typed today for whom no session is begun
    std::optional<AthleteId> m_bodyOf;  ///< whose mass is shown
    bool m_writing = false;
    QString m_meant;   ///< the line as probably meant, while a question stands
    QString m_doubted; ///< the line that was asked about: Enter again takes it
    QTimer m_tick;

    QBoxLayout* m_strip = nullptr;
    QComboBox* m_stations;
    QPushButton* m_new;
    QPushButton* m_change;
    QPushButton* m_who;
    QPushButton* m_begin; ///< in the place of an empty picture
    QCheckBox* m_rotates;
    QComboBox* m_tests;
    QLabel* m_conditions;
    BodyField* m_body;
    RosterModel* m_roster;
    QTableView* m_rosterTable;
    QLabel* m_sentence;
    QLabel* m_reason;
    QLabel* m_rest;
    StationEdit* m_line;
    QLabel* m_answer;
    charts::LineChart* m_chart;
    TextTable* m_done;
    QTableView* m_doneTable;
    QLabel* m_next;
    QLabel* m_undo;
    QString m_words; ///< of the answer, without its mark
};

} // namespace slopebook::ui
