// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's chart shows, as plain values.
#pragma once

#include "core/answers/followedseason.h"
#include "core/model/people.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <vector>

namespace slopebook::ui {

/// From here on, kg, the estimate that is planned with is shown beside the line's.
constexpr double plannedApartFrom = 0.05;

struct SeasonPoint {
    SessionId session{};
    double day = 0;               ///< from 1970-01-01
    std::vector<double> seen{};   ///< m/s
    QString felt{};               ///< RPE of the sets at the load
    std::optional<double> line{}; ///< m/s, a device's bias taken off
    std::optional<stats::Interval> interval{};
    bool hollow = false;                            ///< beyond the session's loads
    bool corrected = false;                         ///< a device's bias is taken off
    std::optional<double> oneRm{};                  ///< kg
    std::optional<stats::Interval> oneRmInterval{}; ///< of the line alone
    std::optional<stats::Interval> oneRmToPlan{};   ///< the interval to plan with
    std::optional<double> oneRmPlanned{};           ///< kg, the estimate that it is around
    bool far = false;                               ///< a reach below 0.80
    std::optional<double> measured{};               ///< kg
    bool notComparable = false;                     ///< with the baseline: hatched
    /// Whether that is another than the line's: by the log's own maxima.
    bool plannedApart() const;
    friend bool operator==(const SeasonPoint&, const SeasonPoint&) = default;
};

/// A training block behind the points, first to last day.
struct SeasonSpan {
    double from = 0, to = 0;
    QString name{};
    QString ceiling{}; ///< "up to 40 kg"
    friend bool operator==(const SeasonSpan&, const SeasonSpan&) = default;
};

/// A block's sessions made one, from its first to its last day.
struct SeasonMean {
    double from = 0, to = 0;
    double value = 0; ///< m/s
    std::optional<stats::Interval> interval{};
    QString label{};     ///< "+0.045 better", "baseline"; empty: nothing is read
    bool strong = false; ///< better or worse
    bool hollow = false; ///< beyond the loads of all its sessions
    bool notComparable = false;
    friend bool operator==(const SeasonMean&, const SeasonMean&) = default;
};

/// The load, or a lighter one, did not go up on that day.
struct SeasonMark {
    double day = 0;
    bool tried = true; ///< false: not possible
    friend bool operator==(const SeasonMark&, const SeasonMark&) = default;
};

/// What keys and rows go through: sessions, days not lifted, and each block after its last session.
struct SeasonItem {
    enum class Kind { Session, NotLifted, Block };
    Kind kind = Kind::Session;
    std::size_t index = 0; ///< into the sessions, the days not lifted, the blocks
    friend bool operator==(const SeasonItem&, const SeasonItem&) = default;
};
std::vector<SeasonItem> seasonItems(const answers::FollowedSeason& season);

struct SeasonTrend {
    double day = 0, value = 0; ///< where it begins
    double perWeek = 0;
    double last = 0; ///< the day it ends on
    friend bool operator==(const SeasonTrend&, const SeasonTrend&) = default;
};

struct SeasonData {
    std::vector<SeasonPoint> points{};
    int baseline = -1;                     ///< of the points; -1: a block
    std::optional<double> baselineValue{}; ///< m/s
    std::optional<double> detectable{};    ///< m/s, around it
    std::optional<double> matters{};       ///< m/s, around it: less does not matter
    std::optional<SeasonTrend> trend{};
    std::vector<SeasonTrend> blockTrends{};         ///< where they are asked for
    std::vector<std::optional<SeasonMean>> means{}; ///< of each block; none: it has no figure
    std::vector<SeasonMark> marks{};
    std::vector<SeasonItem> items{}; ///< by time
    QStringList told{};              ///< of each item, in words
    std::vector<SeasonSpan> spans{};
    QString velocityTitle{};
    double level = 0.95;
    LoadUnit unit = LoadUnit::Kilograms;
    friend bool operator==(const SeasonData&, const SeasonData&) = default;
};

double dayNumber(Date date);

/// Which straight lines are drawn.
struct SeasonTrends {
    bool ofTheSeason = true, withinBlocks = false;
};

SeasonData seasonData(const answers::FollowedSeason& season,
                      std::span<const Stored<BlockId, Block>> blocks, VelocityKind kind,
                      double level, LoadUnit unit, const SeasonTrends& trends = {});

} // namespace slopebook::ui
