// SPDX-License-Identifier: GPL-3.0-or-later
// What a chart of load against velocity shows, as plain values: one entry a session.
#pragma once

#include "core/answers/comparison.h"
#include "core/model/session.h"
#include "ui/charts/look.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace slopebook::ui::charts {

struct LinePoint {
    double load = 0;       ///< kg
    double velocity = 0;   ///< m/s
    bool excluded = false; ///< drawn hollow
    friend bool operator==(const LinePoint&, const LinePoint&) = default;
};

/// A straight line, solid from..to, dotted from..end beyond both ways.
struct LineSegment {
    double intercept = 0, slope = 0; ///< m/s, m/s per kg
    double from = 0, to = 0;         ///< kg: lightest and heaviest load lifted
    double start = 0, end = 0;       ///< kg: as far as it is drawn
    double at(double load) const { return intercept + slope * load; }
    friend bool operator==(const LineSegment&, const LineSegment&) = default;
};

struct BandPoint {
    double load = 0, low = 0, high = 0;
    friend bool operator==(const BandPoint&, const BandPoint&) = default;
};

struct OneRmMark {
    double estimate = 0;                       ///< kg
    std::optional<stats::Interval> interval{}; ///< of the line alone
    std::optional<double> measured{};          ///< kg: drawn beside, never instead
    std::optional<stats::Interval> whole{};    ///< with days and bend; where planned, to plan with
    std::optional<double> planned{};           ///< kg: the estimate to plan with, whole is its
    friend bool operator==(const OneRmMark&, const OneRmMark&) = default;
};

/// A whisker may be very long: it is drawn to this share of the estimate, and says so by an arrow.
inline constexpr double longestWhisker = 1.25;

struct LineEntry {
    QString key{};   ///< names the series: "points:KEY", "line:KEY", "beyond:KEY", "band:KEY"
    QString label{}; ///< at the line's end
    look::Role role{};
    std::vector<LinePoint> points{};
    std::optional<LineSegment> line{};
    std::vector<BandPoint> band{};
    std::optional<OneRmMark> oneRm{};
    /// The lightest load that was tried and not lifted, kg: it bounds the max from above, and has a
    /// mark of its own on the axis of loads.
    std::optional<double> notLifted{};
    /// Stays as it is while others grow: points and line are painted on one sheet with those of its
    /// like, under all others and without series of their own. They cannot be clicked.
    bool still = false;
    friend bool operator==(const LineEntry&, const LineEntry&) = default;
};

struct LineData {
    std::vector<LineEntry> sessions{}; ///< in drawing order: oldest first
    std::optional<double> mvt{};       ///< m/s
    std::vector<double> checkLoads{};  ///< kg
    bool notComparable = false;        ///< the two that are compared: hatched
    QString velocityTitle{}; ///< of the axis; empty: "Velocity (m/s)" in the desktop's language
    LoadUnit unit = LoadUnit::Kilograms;
    /// kg: the axis of loads reaches so far at the least. What the next sets will want drawn stands
    /// there before they come, and no set lays the chart out anew.
    std::optional<double> reach{};
    friend bool operator==(const LineData&, const LineData&) = default;
};

/// What to show of a session's profile. withBand: the interval of the line and of its 1RM.
struct Show {
    bool band = true;
    bool oneRm = true;
    bool toPlan = false; ///< of a profile that holds what the whole log says, maxima lifted too
};

/// A profile as an entry. The line reaches from its lightest load to where it meets the MVT.
LineEntry entryOf(const answers::Profile& profile, const QString& label, const look::Role& role,
                  const Show& show = {});
/// A session without a line (or not enough for one): its points alone.
LineEntry entryOf(const LiftSession& session, const QString& label, const look::Role& role);
/// Both lines of a comparison, with the MVT and the check loads.
LineData linesOf(const answers::Comparison& comparison, LoadUnit unit);
/// What is drawn hollow: the point that an excluded set would have made by the lift's rule, and the
/// excluded reps of sets that count.
std::vector<LinePoint> excludedPoints(std::span<const Set> sets, PointRule rule);

} // namespace slopebook::ui::charts
