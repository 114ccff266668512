// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's chart shows, as plain values.
#pragma once

#include "core/answers/checkloads.h"
#include "core/model/people.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace slopebook::ui {

struct SeasonPoint {
    SessionId session{};
    double day = 0;               ///< from 1970-01-01
    std::vector<double> seen{};   ///< m/s
    QString felt{};               ///< RPE of the sets at the load
    std::optional<double> line{}; ///< m/s, a device's bias taken off
    std::optional<stats::Interval> interval{};
    bool hollow = false;           ///< beyond the session's loads
    bool corrected = false;        ///< a device's bias is taken off
    std::optional<double> oneRm{}; ///< kg
    std::optional<stats::Interval> oneRmInterval{};
    bool far = false;                 ///< a reach below 0.80
    std::optional<double> measured{}; ///< kg
    bool notComparable = false;       ///< with the baseline: hatched
    friend bool operator==(const SeasonPoint&, const SeasonPoint&) = default;
};

/// A training block behind the points, first to last day.
struct SeasonSpan {
    double from = 0, to = 0;
    QString name{};
    QString ceiling{}; ///< "up to 40 kg"
    friend bool operator==(const SeasonSpan&, const SeasonSpan&) = default;
};

struct SeasonTrend {
    double day = 0, value = 0; ///< where it begins
    double perWeek = 0;
    friend bool operator==(const SeasonTrend&, const SeasonTrend&) = default;
};

struct SeasonData {
    std::vector<SeasonPoint> points{};
    int baseline = -1;
    std::optional<double> detectable{}; ///< m/s, around the baseline's value
    std::optional<SeasonTrend> trend{};
    std::vector<SeasonSpan> spans{};
    QString velocityTitle{};
    double level = 0.95;
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const SeasonData&, const SeasonData&) = default;
};

double dayNumber(Date date);

SeasonData seasonData(const answers::Follow& follow, std::span<const Stored<BlockId, Block>> blocks,
                      VelocityKind kind, double level, LoadUnit unit);

} // namespace slopebook::ui
