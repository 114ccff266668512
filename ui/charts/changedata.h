// SPDX-License-Identifier: GPL-3.0-or-later
// What a chart of the change of speed by load shows, as plain values.
#pragma once

#include "core/answers/comparison.h"
#include "ui/charts/whisker.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui::charts {

/// The change along the line of loads: of the lines alone, pointwise and for all loads at once.
struct ChangePoint {
    double load = 0;   ///< kg
    double change = 0; ///< m/s
    stats::Interval interval{}, band{};
    friend bool operator==(const ChangePoint&, const ChangePoint&) = default;
};

/// One load's reading, with day-to-day noise and the bend.
struct ChangeReading {
    double load = 0; ///< kg
    double change = 0;
    Whisker whisker{};
    answers::Reading reading = answers::Reading::Unclear;
    QString word{};  ///< as it is drawn beside its interval
    QString alone{}; ///< the same where it stands alone: unclear with what such tests show
    bool checkLoad = false;
    friend bool operator==(const ChangeReading&, const ChangeReading&) = default;
};

struct LoadRange {
    double from = 0, to = 0; ///< kg
    friend bool operator==(const LoadRange&, const LoadRange&) = default;
};

struct ChangeData {
    std::vector<ChangePoint> along{};
    std::optional<LoadRange> common{}; ///< loads that both sessions cover
    std::vector<ChangeReading> readings{};
    std::vector<LoadRange> differs{}; ///< where the lines differ, load by load
    std::optional<double> smallest{}; ///< m/s; drawn where it is one for all loads
    bool bands = false;               ///< of these two days alone as well: another question
    bool notComparable = false;       ///< the two days: hatched
    bool allAtOnce = false;           ///< readings: answers::Comparison::allAtOnce
    double level = 0.95;
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const ChangeData&, const ChangeData&) = default;
};

ChangeData changeOf(const answers::Comparison& comparison, LoadUnit unit);

} // namespace slopebook::ui::charts
