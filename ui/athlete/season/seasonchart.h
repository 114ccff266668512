// SPDX-License-Identifier: GPL-3.0-or-later
// A check load and the estimated 1RM over the season, on one axis of time, with the training blocks
// behind them, each block's mean, and the days on which the load did not go up.
#pragma once

#include "ui/athlete/season/seasondata.h"
#include "ui/charts/paintedchart.h"

#include <QPainter>

namespace slopebook::ui {

/// Paints the chart into target, for a window or for paper. ringed: the table's selected row.
void paintSeason(QPainter& painter, const QRectF& target, const SeasonData& data,
                 const look::Ground& ground, double textSize,
                 const std::optional<SeasonItem>& ringed = {});

/// What lies nearest to pos, within reach of a finger; points and marks before blocks' means.
std::optional<SeasonItem> seasonItemAt(const QRectF& target, const SeasonData& data,
                                       double textSize, const QPointF& pos);

class SeasonChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;

    void setData(SeasonData data);
    const SeasonData& data() const { return m_data; }
    void setRinged(const std::optional<SeasonItem>& item);
    charts::FigureTable figures() const override;
    QSizeF paperSize() const override { return {480, 340}; }

Q_SIGNALS:
    void itemClicked(slopebook::ui::SeasonItem item);
    /// Left and right go along the season by keys: to that of data().items.
    void itemWalkedTo(int place);

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    /// The tool tip of what the pointer is at.
    bool event(QEvent* event) override;

private:
    SeasonData m_data;
    std::optional<SeasonItem> m_ringed;
};

} // namespace slopebook::ui
