// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that an athlete did, or every session of one lift, of an athlete or of everybody: the
// table, and of one lift the chosen sessions' lines laid over each other.
#pragma once

#include "ui/athlete/history/everything.h"
#include "ui/athlete/history/historyreader.h"
#include "ui/charts/linechart.h"
#include "ui/parts/taskpage.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTableView>
#include <QTimer>

class QBoxLayout;
class QComboBox;
class QSplitter;

namespace slopebook::ui {

class Sentence;
class WayOn;

class HistoryPage : public TaskPage {
    Q_OBJECT
public:
    explicit HistoryPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;
    bool isOfLift() const override { return !showsEverything(); }

    /// Takes the session out of the log, as one step that undo brings back. Throws LogError.
    void deleteSession(SessionId session);
    /// The rows chosen in the table, by date.
    std::vector<SessionId> chosen() const;

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    QTableView* table() { return m_table; }
    /// Every lift and test of the athlete; which of the two tables is shown is chosen above them.
    QTableView* everything() { return m_allTable; }
    const charts::LineChart& chart() const { return *m_chart; }

private:
    void buildTable();
    void buildEverything();
    void readEverything();
    void openDone(int row);
    bool showsEverything() const;
    QBoxLayout* buildTop();
    void connectParts();
    void connectTable();
    void read();
    void showRows();
    void showChart();
    void showMenu(const QPoint& at);
    void addCompareActions(QMenu& menu, const std::vector<SessionId>& sessions);
    void askAndDelete(SessionId session);
    void openCurrent();
    void copyRows() const;
    QString countText() const;
    QString everythingText() const;
    std::vector<SessionId> sessionsToDraw() const;
    charts::LineData linesOf(const std::vector<SessionId>& sessions) const;
    QString nameOf(SessionId session) const;
    QString nameOf(const questions::Background& about) const;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::shared_ptr<HistoryReader> m_reader; ///< nothing while there is nothing to show
    LoadUnit m_unit = LoadUnit::Kilograms;

    QBoxLayout* m_strip = nullptr;
    HistoryModel* m_model;
    QTableView* m_table;
    QComboBox* m_whose;
    QLineEdit* m_find;
    QTimer* m_findSoon;
    Sentence* m_says;
    WayOn* m_way; ///< where nobody is there yet
    QLabel* m_hint;
    EverythingModel* m_all;
    QTableView* m_allTable;
    QSplitter* m_ofOneLift = nullptr; ///< picture and table
    charts::LineChart* m_chart;
};

} // namespace slopebook::ui
