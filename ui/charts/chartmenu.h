// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with a chart in a window, alike for all: by its context menu, by keys while it
// has the focus, and by the window's Chart menu.
#pragma once

#include "ui/charts/chartout.h"

#include <QObject>
#include <QTimer>

class QKeyEvent;
class QMenu;
class QWidget;

namespace slopebook::ui::charts {

class ChartMenu final : public QObject {
    Q_OBJECT
public:
    /// Both are the chart: it owns this. Tab reaches it from now on.
    ChartMenu(QWidget* chart, const ChartOut& out);

    /// The menu that belongs to the window's page: of the chart with the focus, else of the largest
    /// that is seen. Nothing where the page shows no chart.
    static ChartMenu* of(const QWidget& page);

    QWidget* chart() const { return m_chart; }
    /// What a screen reader says: the sentence of the result, then the figures.
    void setSpoken(const QString& sentence);
    /// The data have changed: the figures that are read aloud follow soon.
    void dataChanged();

    /// The chart's own keys go through what it shows. Without it arrow keys go from figure to
    /// figure, Home and End to the first and last, and each is read beside the chart.
    void leaveKeys() { m_keys = false; }

    void copyPicture() const;
    void copyFigures() const;
    void savePng();
    void saveSvg();
    /// Asks nothing: writes to that file and says so where it cannot.
    void saveAs(const log::Destination& to);
    void showFigures();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool walk(const QKeyEvent& key);
    void fill(QMenu& menu);
    void readAloud(const QStringList& headings, const QStringList& cells);
    void save(const QString& ending, const QString& filter);

    QWidget* m_chart;
    const ChartOut& m_out;
    QTimer m_describe;
    qsizetype m_at = -1; ///< the figure that was read last
    bool m_keys = true;
};

} // namespace slopebook::ui::charts
