// SPDX-License-Identifier: GPL-3.0-or-later
// Changes of many athletes as intervals on one axis, under each other.
#pragma once

#include "core/answers/squad.h"
#include "ui/charts/paintedchart.h"
#include "ui/charts/scale.h"
#include "ui/words/units.h"

#include <QPainter>
#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui {

/// One athlete: a change with its interval, or the reason why there is none.
struct SquadForestRow {
    QString name{};
    std::optional<double> change{};
    stats::Interval interval{};
    std::optional<double> smallest{}; ///< half-width of the strip behind it
    std::optional<double> drawn{};    ///< drawn to all: a second mark
    answers::Reading reading = answers::Reading::NoFigure;
    QString word{};   ///< of the reading, beside its interval
    QString told{};   ///< the same as a text of its own
    QString reason{}; ///< where there is no change
    bool hollow = false;
    bool notComparable = false; ///< hatched behind its reason
    friend bool operator==(const SquadForestRow&, const SquadForestRow&) = default;
};

struct SquadForest {
    std::vector<SquadForestRow> rows{};  ///< from the top
    std::optional<SquadForestRow> all{}; ///< the mean of all, below them
    charts::Scale scale{};
    QString title{}; ///< of the axis
    QString empty{}; ///< what stands there without rows, if not that nobody can be compared
    double level = 0.95;
    friend bool operator==(const SquadForest&, const SquadForest&) = default;
};

/// One part of a squad's answer, its rows in their order.
SquadForest squadForest(const answers::SquadPart& part, double level, LoadUnit unit);
/// The same with rows first .. last (without it) alone, on the same scale; the mean of all stands
/// under the last of them.
SquadForest squadForestRows(const SquadForest& data, std::size_t first, std::size_t last);

/// Height that the rows, the key and the axis take in that width.
double squadForestHeight(const SquadForest& data, double textSize, double width);
void paintSquadForest(QPainter& painter, const QRectF& target, const SquadForest& data,
                      const look::Ground& ground, double textSize, std::optional<int> ringed = {});

class SquadForestChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;
    void setData(SquadForest data);
    const SquadForest& data() const { return m_data; }
    void setRinged(std::optional<int> row);
    QSize sizeHint() const override;
    QSizeF paperSize() const override;
    charts::FigureTable figures() const override;

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitHeight();
    SquadForest m_data;
    std::optional<int> m_ringed;
};

} // namespace slopebook::ui
