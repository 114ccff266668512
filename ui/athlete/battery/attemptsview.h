// SPDX-License-Identifier: GPL-3.0-or-later
// The battery of one session as it is typed: conditions, one line a test, what was not possible.
#pragma once

#include "core/answers/battery.h"
#include "core/questions/batteryquestions.h"
#include "ui/edits/logbook.h"
#include "ui/parts/clock.h"
#include "ui/parts/texttable.h"
#include "ui/parts/undoableedit.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace slopebook::ui {

class FoldButton;

class AttemptsView final : public QWidget {
    Q_OBJECT
public:
    AttemptsView(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthlete(std::optional<AthleteId> athlete);
    void reload();
    std::optional<SessionId> session() const;
    void showSession(SessionId session);

    /// Adds attempts that something else found (a trace), whoever is shown by now: into that
    /// session, or where there is none into the athlete's of today, which is made where it has to
    /// be. Throws LogError or BadInput.
    SessionId addAttempts(AthleteId athlete, std::optional<SessionId> into, const TestKind& kind,
                          const std::vector<Attempt>& attempts);
    /// The test that is chosen.
    std::optional<TestKind> test() const;

    /// Which session, for the page's control line.
    QWidget* choices() const { return m_choices; }
    UndoableEdit* line() const { return m_line; }
    QComboBox* testBox() const { return m_test; }
    QString answer() const;
    const TextTable& attempts() const { return *m_attempts; }
    const TextTable& values() const { return *m_values; }
    void selectAttempt(int row);
    /// Leaves the selected attempt out (or takes it in again), for that reason.
    void leaveOut(const QString& reason);
    void removeSelected();
    /// Writes the selected attempt anew as typed ("1.65", "0.48/0.2", "1.65 # note"); false where
    /// that cannot be read, and it stays as it was.
    bool changeSelected(const QString& typed);

Q_SIGNALS:
    void message(const QString& text);
    void traceWanted();

private:
    /// What a row of the attempts table stands for.
    struct Row {
        std::optional<std::size_t> test; ///< index into the battery's tests
        std::size_t attempt = 0;         ///< in that test; else index of a gap
    };
    QWidget* buildSession();
    QWidget* buildContext();
    QWidget* buildLine();
    QWidget* buildTables();
    QWidget* buildButtons();
    void connectParts();
    void fillSessions();
    void fillTests();
    void showBattery();
    void showConditions();
    void nameConditions();
    void showAttempts();
    void showValues();
    void newSession();
    void takeConditionsOver(SessionId into);
    SessionId addSessionToday(AthleteId athlete);
    void keepCondition(const QLineEdit* field);
    std::optional<DeviceId> deviceNamed(const std::string& name);
    void submit();
    void askReason();
    void askChange();
    /// Asks once about typed attempts that are far from usual; true when they may be taken.
    bool certain(const questions::OfferedTest& test, const std::vector<Attempt>& typed);
    void say(const QString& words, bool problem);
    QString help() const;
    TestKindId keyOf(const TestKind& kind);
    const questions::OfferedTest* offered() const;
    const Stored<TestKindId, TestKind>* kindOf(TestKindId id) const;
    std::optional<Row> selected() const;
    void keep(const Battery& battery, const QString& text);
    void put(Battery& battery, const Stored<TestKindId, TestKind>& kind,
             const std::vector<Attempt>& attempts) const;
    void guarded(const std::function<void()>& work);

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<AthleteId> m_athlete;
    std::vector<BatterySession> m_sessions; ///< newest first
    std::vector<questions::OfferedTest> m_offered;
    std::vector<Stored<TestKindId, TestKind>> m_kinds;
    std::vector<Row> m_rows;
    QWidget* m_choices;
    QComboBox* m_session;
    QPushButton* m_newSession;
    FoldButton* m_conditions = nullptr; ///< opens their fields; its words say what is set
    QLineEdit* m_surface;
    QLineEdit* m_device;
    QLineEdit* m_footwear;
    QLineEdit* m_technique;
    QLineEdit* m_place;
    QLineEdit* m_notComparable;
    QComboBox* m_test;
    QPushButton* m_tests;
    UndoableEdit* m_line;
    QLabel* m_answer;
    TextTable* m_attempts;
    TextTable* m_values;
    QTableView* m_attemptTable;
    QTableView* m_valueTable;
    QString m_askedAbout; ///< a line whose figures were asked about: Enter again takes it
    QPushButton* m_change;
    QPushButton* m_leaveOut;
    QPushButton* m_remove;
    QPushButton* m_trace;
};

} // namespace slopebook::ui
