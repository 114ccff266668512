// SPDX-License-Identifier: GPL-3.0-or-later
// A check load and the estimated 1RM over the season, on one axis of time, with the training blocks
// behind them.
#pragma once

#include "ui/athlete/season/seasondata.h"
#include "ui/charts/paintedchart.h"

#include <QPainter>

namespace slopebook::ui {

/// Paints the chart into target, for a window or for paper. ringed: the table's selected session.
void paintSeason(QPainter& painter, const QRectF& target, const SeasonData& data,
                 const look::Ground& ground, double textSize, std::optional<int> ringed = {});

/// The session whose point lies nearest to pos, within reach of a finger.
std::optional<int> seasonPointAt(const QRectF& target, const SeasonData& data, double textSize,
                                 const QPointF& pos);

class SeasonChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;

    void setData(SeasonData data);
    const SeasonData& data() const { return m_data; }
    void setRinged(std::optional<int> session);
    charts::FigureTable figures() const override;
    QSizeF paperSize() const override { return {480, 340}; }

Q_SIGNALS:
    void sessionClicked(int session);

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    SeasonData m_data;
    std::optional<int> m_ringed;
};

} // namespace slopebook::ui
