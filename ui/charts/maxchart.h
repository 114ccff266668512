// SPDX-License-Identifier: GPL-3.0-or-later
// The change of the estimated max, as if lines were straight and with what their bend may add, one
// under the other on one scale. One painting for window and paper.
#pragma once

#include "core/answers/comparison.h"
#include "ui/charts/paintedchart.h"
#include "ui/charts/whisker.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui::charts {

struct MaxChangeRow {
    QString name{}, reading{};
    double change = 0; ///< kg, as all of the row
    Whisker whisker{};
    friend bool operator==(const MaxChangeRow&, const MaxChangeRow&) = default;
};

struct MaxChangeData {
    std::vector<MaxChangeRow> rows{}; ///< none where the change of the max has no figure
    std::optional<double> smallest{}; ///< kg
    bool notComparable = false;       ///< the two days: hatched
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const MaxChangeData&, const MaxChangeData&) = default;
};

MaxChangeData maxChangeOf(const answers::Comparison& comparison, LoadUnit unit);

/// Height that the drawing takes at that width.
double maxChangeHeight(const MaxChangeData& data, double width, double textSize);
void paintMaxChange(QPainter& painter, const QRectF& target, const MaxChangeData& data,
                    const look::Ground& ground, double textSize);

class MaxChart final : public PaintedChart {
    Q_OBJECT
public:
    explicit MaxChart(QWidget* parent = nullptr);

    void setData(const MaxChangeData& shownData);
    const MaxChangeData& data() const { return m_data; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;
    FigureTable figures() const override;
    QSizeF paperSize() const override;

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;

private:
    MaxChangeData m_data;
};

} // namespace slopebook::ui::charts
