// SPDX-License-Identifier: GPL-3.0-or-later
// An open log in the window: the chooser of athlete and lift, the bar, and one tab a task.
#pragma once

#include "ui/importing/importmaps.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"
#include "ui/window/openlog.h"

#include <QWidget>

#include <functional>
#include <set>

class QLabel;
class QTabWidget;
class QTimer;

namespace slopebook::ui {

class BatteryPage;
class EntryPage;
class MessageBar;
class NameCombo;

class Workspace final : public QWidget {
    Q_OBJECT
public:
    Workspace(OpenedLog opened, Clock clock, QWidget* parent = nullptr);
    ~Workspace() override;
    /// Hands over the open log with its undo; the workspace is of no more use then.
    OpenedLog giveUpLog();

    static QStringList taskNames();

    Logbook& logbook() { return *m_logbook; }
    EntryPage& entry() { return *m_entry; }
    MessageBar& bar() { return *m_bar; }
    int task() const;
    void showTask(int task);
    TaskPage* currentPage() const;
    std::optional<AthleteId> athlete() const;
    std::optional<LiftId> lift() const;
    void choose(std::optional<AthleteId> athlete, std::optional<LiftId> lift);
    void focusAthlete();
    void focusLift();

    // The record dialogs, for the shell's actions.
    void addAthlete();
    void changeAthlete();
    void addLift();
    void changeLift();
    void setCheckLoads();
    void keepDevices();
    void keepBlocks();
    /// As importTables().
    void importCsv(const QStringList& files, ImportMaps& maps);
    /// A table from the clipboard.
    void importText(const QString& pasted, ImportMaps& maps);
    /// Undoes (else redoes) the next step and names it. What cannot be seen just now is gone to
    /// first, and said: the next call takes it.
    void step(bool undo);
    /// A short sentence beside the chooser, for a while.
    void say(const QString& message);
    /// In the bar, with the way to the backups.
    void sayDamaged(const QString& why);

Q_SIGNALS:
    void backupsWanted();
    void taskChanged(int task);
    /// A table was pasted that names its own athletes or days: it is to be imported.
    void tablePasted(const QString& text);

private:
    QWidget* buildChooser();
    void buildTasks();
    void connectParts();
    void addTask(TaskPage* page);
    void closeTasks();
    void openSession(SessionId session);
    void openComparison(SessionId from, SessionId to);
    void focusEntry();
    TaskPage* pageAt(int task) const;
    bool isShown(const Logbook::Step& step) const;
    void goTo(const Logbook::Step& step);
    void fillAthletes();
    void fillLifts();
    void tellPages();
    void changed(Logbook::What what, qint64 session);
    void catchUp(TaskPage* page);
    void lookAround();
    void guarded(const std::function<void()>& work);

    std::unique_ptr<Logbook> m_logbook;
    Clock m_clock;
    NameCombo* m_athlete;
    NameCombo* m_lift;
    QLabel* m_message;
    QTimer* m_messageEnd;
    MessageBar* m_bar;
    bool m_damaged = false;
    Date m_day{}; ///< when the pages were last told of it
    QTabWidget* m_tabs;
    EntryPage* m_entry = nullptr;
    BatteryPage* m_battery = nullptr;
    const void* m_announced = nullptr; ///< the edit that was gone to, for the next call to take
    std::set<TaskPage*> m_behind; ///< hidden pages that have not heard of a change or a choice yet
};

} // namespace slopebook::ui
