// SPDX-License-Identifier: GPL-3.0-or-later
// Every session of an athlete and lift: the table, and the chosen ones' lines laid over each other.
#pragma once

#include "ui/charts/linechart.h"
#include "ui/history/historymodel.h"
#include "ui/shell/taskpage.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSortFilterProxyModel>
#include <QTableView>

namespace slopebook::ui {

class HistoryPage : public TaskPage {
    Q_OBJECT
public:
    explicit HistoryPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;
    void setLoadUnit(LoadUnit unit);

    /// Takes the session out of the log, as one step that undo brings back. Throws LogError.
    void deleteSession(SessionId session);
    /// The rows chosen in the table, by date.
    std::vector<SessionId> chosen() const;

    QTableView* table() { return m_table; }
    const charts::LineChart& chart() const { return *m_chart; }

private:
    void buildTable();
    void connectTable();
    void read();
    void showRows();
    void showChart();
    void showMenu(const QPoint& at);
    void addCompareActions(QMenu& menu, const std::vector<SessionId>& sessions);
    void askAndDelete(SessionId session);
    void openCurrent();
    void copyRows() const;
    QString nameOf(SessionId session) const;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<Background> m_about;
    LoadUnit m_unit = LoadUnit::Kilograms;

    HistoryModel* m_model;
    QSortFilterProxyModel* m_sorted;
    QTableView* m_table;
    QLineEdit* m_find;
    QLabel* m_says;
    charts::LineChart* m_chart;
};

} // namespace slopebook::ui
