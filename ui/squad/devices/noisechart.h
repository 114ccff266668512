// SPDX-License-Identifier: GPL-3.0-or-later
// How noisy a lift is from day to day: the typical error at each load with its interval, and what
// readings use beside it.
#pragma once

#include "core/questions/liftcontext.h"
#include "ui/charts/paintedchart.h"
#include "ui/words/units.h"

#include <span>
#include <vector>

namespace slopebook::ui {

struct NoiseData {
    struct At {
        double load = 0;            ///< kg
        double error = 0;           ///< m/s
        stats::Interval interval{}; ///< 95 %
        int pairs = 0;
        friend bool operator==(const At&, const At&) = default;
    };
    struct Line {
        QString whose{};
        double sd = 0; ///< m/s
        friend bool operator==(const Line&, const Line&) = default;
    };
    std::vector<At> loads{};   ///< by load
    std::vector<Line> inUse{}; ///< of whole lines: everybody's, the chosen athlete's
    QString whose{};           ///< lift and device
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const NoiseData&, const NoiseData&) = default;
};

/// Of the group of all athletes with the most repeat tests; no loads where there is none.
NoiseData noiseData(std::span<const questions::NoiseGroup> groups, LoadUnit unit);

class NoiseChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;
    void setData(NoiseData data);
    const NoiseData& data() const { return m_data; }
    charts::FigureTable figures() const override;

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;

private:
    NoiseData m_data;
};

} // namespace slopebook::ui
