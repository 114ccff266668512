// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing of the change of speed by load: the change with its interval and band, readings as
// whiskers, the strip of the smallest change that matters, hatching beyond the loads of both.
#pragma once

#include "ui/charts/changedata.h"
#include "ui/charts/figure.h"
#include "ui/charts/key.h"

#include <QAreaSeries>
#include <QLineSeries>

namespace slopebook::ui::charts {

class ChangeFigure : public Figure {
    Q_OBJECT
public:
    ChangeFigure();
    ~ChangeFigure() override;

    void setData(const ChangeData& data);
    const ChangeData& data() const { return m_data; }
    /// Rings the reading of that index.
    void setHighlight(std::optional<int> reading);

protected:
    void dress() override;
    void paintUnder(QPainter& painter) override;
    void paintOver(QPainter& painter) override;
    void resizeEvent(QGraphicsSceneResizeEvent* event) override;

private:
    void rescale();
    void makeRoomForKey();
    std::vector<KeyEntry> key() const;
    void paintReadings(QPainter& painter) const;
    double shown(double kilogram) const { return inUnit(kilogram, m_data.unit); }

    ChangeData m_data;
    std::optional<int> m_highlight;
    // The edges outlive the area that borrows them.
    QLineSeries m_upper, m_lower;
    QAreaSeries* m_interval;
    QLineSeries* m_bandUpper;
    QLineSeries* m_bandLower;
    QLineSeries* m_below;
    QLineSeries* m_inside;
    QLineSeries* m_beyond;
};

} // namespace slopebook::ui::charts
