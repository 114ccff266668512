// SPDX-License-Identifier: GPL-3.0-or-later
// Every session of a lift, of an athlete or of everybody: the table, and the chosen ones' lines
// laid over each other.
#pragma once

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

namespace slopebook::ui {

class HistoryPage : public TaskPage {
    Q_OBJECT
public:
    explicit HistoryPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    /// Takes the session out of the log, as one step that undo brings back. Throws LogError.
    void deleteSession(SessionId session);
    /// The rows chosen in the table, by date.
    std::vector<SessionId> chosen() const;

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    QTableView* table() { return m_table; }
    const charts::LineChart& chart() const { return *m_chart; }

private:
    void buildTable();
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
    std::vector<SessionId> sessionsToDraw() const;
    charts::LineData linesOf(const std::vector<SessionId>& sessions) const;
    QString nameOf(SessionId session) const;
    QString nameOf(const Background& about) const;

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
    QLabel* m_says;
    charts::LineChart* m_chart;
};

} // namespace slopebook::ui
