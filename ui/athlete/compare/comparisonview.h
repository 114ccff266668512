// SPDX-License-Identifier: GPL-3.0-or-later
// What a comparison looks like in a window: the sentence in large type, charts, tables, notes; or
// the reason why there is none.
#pragma once

#include "ui/charts/changechart.h"
#include "ui/charts/linechart.h"
#include "ui/charts/maxchart.h"
#include "ui/paper/printedcomparison.h"
#include "ui/parts/texttable.h"

#include <QLabel>
#include <QTableView>

class QScrollArea;
class QSplitter;

namespace slopebook::ui {

class Sentence;
class SettledLabel;

class ComparisonView : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonView(QWidget* parent = nullptr);

    void show(const answers::Comparison& comparison, const PageHeader& header);
    /// The reason in place of the sentence; the sessions' points, where there are any, stay on the
    /// chart.
    void showReason(const QString& reason, std::span<const LiftSession> sessions, LoadUnit unit);

    /// What stands under a sentence that says what is missing.
    void setWay(QWidget* way);
    /// Whether the bands of these two days alone are drawn beside the readings.
    void setBands(bool shown);

    QString sentence() const;
    const QAbstractItemModel* byLoad() const { return m_byLoad; }
    const QAbstractItemModel* oneRm() const { return m_oneRm; }
    QString notes() const { return m_notes->text(); }
    const charts::ChangeChart& changeChart() const { return *m_changeChart; }
    const charts::LineChart& lineChart() const { return *m_lineChart; }
    const charts::MaxChart& maxChart() const { return *m_maxChart; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* buildCharts();
    QScrollArea* buildTables();
    void fitTables();
    /// Too narrow or too low for a picture with tables beside it.
    bool isLow() const;
    void arrange();
    void showTables(const answers::Comparison& comparison, const PageHeader& header);

    bool m_bands = false;
    Sentence* m_sentence;
    SettledLabel* m_under; ///< what of it stands in smaller type
    QLabel* m_caution;
    QScrollArea* m_page;
    QSplitter* m_splitter;
    QScrollArea* m_tables;
    charts::ChangeChart* m_changeChart;
    charts::LineChart* m_lineChart;
    QLabel* m_heaviest; ///< that of several days a side the lines are the heaviest's
    charts::MaxChart* m_maxChart;
    TextTable* m_byLoad;
    TextTable* m_oneRm;
    QLabel* m_alone; ///< what the readings are held against
    QTableView* m_byLoadView;
    QTableView* m_oneRmView;
    QLabel* m_notes;
};

} // namespace slopebook::ui
