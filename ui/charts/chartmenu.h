// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with a chart in a window, alike for all: by its context menu, by keys while it
// has the focus, and by the window's Chart menu.
#pragma once

#include "ui/charts/chartout.h"

#include <QObject>
#include <QTimer>

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

    void copyPicture() const;
    void copyFigures() const;
    void savePng();
    void saveSvg();
    /// Asks nothing: writes to that file and says so where it cannot.
    void saveAs(const log::Destination& to);
    void showFigures();

private:
    void fill(QMenu& menu);
    void save(const QString& ending, const QString& filter);

    QWidget* m_chart;
    const ChartOut& m_out;
    QTimer m_describe;
};

} // namespace slopebook::ui::charts
