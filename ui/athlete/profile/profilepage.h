// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of chosen sessions on one chart, their figures, and the points of the selected one.
#pragma once

#include "core/answers/history.h"
#include "core/questions/questions.h"
#include "ui/athlete/profile/linesmodel.h"
#include "ui/athlete/profile/pointsmodel.h"
#include "ui/charts/linechart.h"
#include "ui/parts/taskpage.h"

class QCheckBox;
class QLabel;
class QTableView;

namespace slopebook::ui {

class FiguresPanel;
class FoldButton;
class Sentence;
class WayOn;

class ProfilePage final : public TaskPage {
    Q_OBJECT
public:
    explicit ProfilePage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    const charts::LineChart& chart() const { return *m_chart; }
    LinesModel& lines() { return *m_lines; }
    PointsModel& points() { return *m_points; }

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* buildTables();
    void connectParts();
    void reload();
    void readRows();
    void showChart();
    void showPoints();
    void highlight();
    void openCurrent();
    void readBorrowed();
    void drawBorrowed();
    std::optional<charts::LineEntry> borrowedEntry() const;
    void showNothing(const QString& why);
    int currentLine() const;
    charts::LineEntry entryOf(const LineRow& row, const look::Role& role) const;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<questions::Background> m_about;
    std::vector<SessionId> m_drawn; ///< sessions of the chart, in its order
    charts::LineChart* m_chart;
    FiguresPanel* m_figures;
    LinesModel* m_lines;
    PointsModel* m_points;
    QTableView* m_lineTable;
    QTableView* m_pointTable;
    QLabel* m_pointTitle;
    FoldButton* m_wellFits; ///< diagnostics: on demand
    Sentence* m_empty;
    WayOn* m_way; ///< where the first set is typed
    QCheckBox* m_drawBorrowed;
    QLabel* m_borrowedText;
    std::optional<Answer<answers::History>> m_history; ///< about the session of the current row
};

} // namespace slopebook::ui
