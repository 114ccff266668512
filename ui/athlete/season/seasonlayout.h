// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything of the season's chart stands: its two frames over one axis of time, and its
// words, which lie on no point and not on each other.
#pragma once

#include "ui/athlete/season/seasondata.h"
#include "ui/charts/key.h"
#include "ui/charts/plotframe.h"

#include <optional>
#include <set>
#include <vector>

namespace slopebook::ui {

/// A mark among the maxima.
struct MaxMark {
    enum class Kind { Estimate, Planned, Measured };
    Kind kind = Kind::Estimate;
    std::size_t point = 0; ///< of the sessions
    QPointF at{};
    QRectF box{}; ///< that it covers
};

/// A word beside what it names; what has none stands in the key.
struct SeasonName {
    /// In the order in which they are placed.
    enum class Of {
        Alone,
        Trend,
        BlockTrend,
        NotLifted,
        NotPossible,
        Measured,
        Far,
        ToPlan,
        Planned,
        Seen,
        Matters
    };
    Of of = Of::Trend;
    QString text{};
    QRectF box{};
};

struct SeasonLayout {
    charts::PlotFrame velocity, oneRm;
    /// A chart too low for both has the speeds alone; the maxima stand in the table.
    bool showsMax = true;
    /// The strip under the speeds for days on which the load did not go up; empty where there are
    /// none.
    QRectF foot{};
    struct Label {
        std::size_t mean = 0;
        QRectF box{};
        bool apart = false; ///< above the frame, with a line to its segment
    };
    std::vector<Label> labels{}; ///< of the blocks' readings
    std::optional<QRectF> baselineWord{};
    std::vector<MaxMark> maxima{};
    std::vector<SeasonName> names{};
    /// Where the names of blocks stand: so far above the frame.
    double header = 0;
    std::vector<charts::KeyEntry> key{}; ///< in a low chart of one row, what matters most
};

/// A reading that has no place beside its segment stands in a line of its own above the frame.
SeasonLayout seasonLayout(const QRectF& target, const SeasonData& data, const look::Ground& ground,
                          double textSize);

/// "too small to matter, ±0.050 m/s", where that is known.
QString mattersText(const SeasonData& data);

/// More than these nobody reads.
constexpr std::size_t mostKeyEntries = 6;
/// The whole key, what matters most first: what is drawn and named by no word beside it.
/// unnamed: what is drawn and has no such word. Of the maxima's whiskers and ticks the key says
/// nothing: they have their words beside them.
std::vector<charts::KeyEntry> seasonKey(const SeasonData& data, const look::Ground& ground,
                                        const std::set<SeasonName::Of>& unnamed);

/// A block's segment between its ends within the frame; nothing where it lies outside.
std::optional<QRectF> segmentBox(const SeasonLayout& layout, const SeasonMean& mean);
/// Where a day's mark stands in the foot.
QPointF markAt(const SeasonLayout& layout, const SeasonMark& mark);

/// The radius of a session's point and half of a seen speed's tick.
double pointRadius(double textSize);
double tickWidth(double reach);
/// From tip to tip of what a measured 1RM is drawn as.
double measuredSize(double textSize);

/// A mass in the coach's unit.
double shownMass(const SeasonData& data, double kilogram);

// How the marks look, in the chart and in its key.
void paintDot(QPainter& painter, const QPointF& at, double radius, const QColor& ink,
              const QColor& fill);
void paintTick(QPainter& painter, const QPointF& at, double reach, const QColor& ink);
void paintNotLifted(QPainter& painter, const QPointF& at, double reach, bool tried,
                    const QColor& ink);
void paintMeasured(QPainter& painter, const QPointF& at, double size, const look::Ground& ground);
QPen blockTrendPen(const look::Ground& ground);
/// A block's mean at that height in its interval; an end that the frame cuts is open, its sides run
/// on in arrows.
struct MeanBox {
    QRectF interval{};
    double at = 0;
    bool hollow = false;
    bool cutAbove = false, cutBelow = false;
};
void paintMean(QPainter& painter, const MeanBox& mean, double textSize, const look::Ground& ground);

} // namespace slopebook::ui
