// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that says how uncertain a figure is: profile, comparison, band, followed loads,
// plan, next test and settling ask it alike (method: tests/README.md, 'Worlds').
#pragma once

#include "core/answers/bend.h"
#include "core/answers/calibration.h"
#include "core/answers/reading.h"
#include "core/answers/side.h"
#include "core/stats/moving.h"

#include <functional>
#include <optional>

namespace slopebook::answers {

/// What is not known of a session's figures beside the scatter about its line: of an athlete and
/// lift, worked out once and asked for every session.
struct Beyond {
    DayNoise day = {};
    Bend bend = {};
    /// From the log's own pairs of an estimate and a maximum lifted, where there are enough.
    std::optional<Calibration> calibration = {};
};

/// The load, kg, that days tilt a line about, and that a ladder's reach is taken of: the estimate
/// of the 1RM; without one 0.85 of the load at zero speed, which published lifts have it near; a
/// line that does not fall: nothing.
std::optional<double> referenceMax(const stats::Line& line, const std::optional<double>& mvt);

/// How a line moves from day to day: level s_d^2, and a tilt of slopeCv() of the slope about 60 %
/// of the maximum (of the middle of its loads where there is none). Nothing where no day-to-day
/// noise is known.
stats::Moving dayOf(const DayNoise& noise, const stats::Line& line,
                    const std::optional<double>& max);
/// Of two sessions, the same for both: about 60 % of the earlier one's maximum, by the mean of
/// their slopes.
stats::Moving dayOf(const DayNoise& noise, const stats::Line& earlier, const stats::Line& later,
                    const std::optional<double>& earlierMax);

/// The critical value as a function of df at a level; Student's, or one for many looks.
using CriticalOf = std::function<stats::Critical(double level)>;

/// The interval of a session's 1RM to plan with: all loads x with (line(x) - mvt)^2 <= t1^2 s^2
/// h(x)
/// + t0^2 V_day(x) + tu^2 u^2, widened by the bend. Nothing where it cannot be bounded, or the line
/// has no inference.
std::optional<stats::Interval> intervalToPlanWith(const stats::Line& line, const Mvt& mvt,
                                                  const stats::Moving& day,
                                                  const stats::Interval& bend, double level);

/// What the variance of a change is made of, each part with the df of its critical value: (m/s)^2
/// of a speed, kg^2 of the max.
struct ChangeParts {
    stats::Variance earlier = {}, later = {}; ///< of the scatter, on each side; they share their df
    stats::Variance day = {};                 ///< of one day; there are two
    stats::Variance device = {};              ///< of the bias that was taken off the later side
    stats::Interval bend = {};                ///< the least and the most by which the change errs
    /// What the athlete's variance of days is likely to be, over that of `day`.
    std::optional<stats::LogNormal> likely = {};
    /// What earlier and later come to by the pooled scatter, over what they are taken for: a
    /// session that shows more than pooled keeps its own, which is caution and not what is likely.
    double pooledShare = 1;
};
/// Of a change with these parts, were lines straight: t1^2 V_lines + t0^2 2 V_day + t^2 V_device;
/// sides whose df are not the same each with its own t.
double squaredHalfWidth(const ChangeParts& parts, const stats::Critical& critical);

/// What is not known of a change between two sessions.
struct ChangeUncertainty {
    stats::TwoLines lines;
    stats::Variances variances = stats::Variances::Pooled;
    stats::Moving day = {};      ///< of one session
    stats::Variance device = {}; ///< of the bias that was taken off the later line
    BendErrors bend = {};
    CriticalOf critical = stats::tOf;
    /// Of a test that is still to be done: the scatter that its points and the earlier ones are
    /// expected to show, and the df it will be known on. The later line then tells where its points
    /// will lie, and no more.
    std::optional<stats::Scatter> expected = {};
    /// Blocks: the sessions that each side stands on; lines are those of their leads. Of one
    /// session a side everything is the same to the last digit as without.
    struct Sides {
        SideSessions earlier, later;
    };
    std::optional<Sides> sides = {};

    /// Whether x lies outside the loads of all sessions of a side; of sides alone.
    bool extrapolated(double x) const;
    /// The scatter that all points of both sides show together.
    stats::Scatter pooled() const;
    /// The change of speed at x.
    double change(double x) const;
    /// What the change of speed at x is made of: every interval here, every chance and every number
    /// of tests that a change needs is asked of these. Separate variances: each side on its own
    /// scatter, the df those of both.
    ChangeParts at(double x) const;
    /// Of the change of the load at which the lines reach y, by the delta method.
    ChangeParts ofMax(double y) const;
    /// s^2 of a session's points: pooled, but never less than its own; or its own.
    stats::Scatter scatter(const stats::Line& line) const;
    /// Of the lines alone, with each session's own scatter no more than pooled: what the two days
    /// say by themselves.
    stats::Interval alone(double x, double level) const;
    stats::Interval aloneBand(double x, double level) const;
    stats::Variance aloneVariance(double x) const;
    /// The load at which a side's mean line reaches y; nothing where it does not fall so far.
    std::optional<double> maxOfEarlier(double y) const;
    std::optional<double> maxOfLater(double y) const;
    /// By how much bent lines make the change at x, and of that load, err.
    stats::Interval bendAt(double x) const;
    stats::Interval bendOfMax(double y) const;
    /// Interval of D(x) as if lines were straight.
    stats::Interval straight(double x, double level) const;
    /// The simultaneous band over all x, with the bend.
    stats::Interval band(double x, double level) const;
    /// Interval of the change of the load at which the lines reach y, by variance recovery from two
    /// Fieller intervals, as if lines were straight; nothing where a side cannot be bounded.
    std::optional<stats::Interval> maxStraight(double y, double level) const;

private:
    stats::Variance ofLine(const stats::Line& line, double x) const;
    double pooledShare(double first, double second) const;
    ChangeParts ofSides(double x) const;
    ChangeParts ofMaxOfSides(double y) const;
    std::optional<stats::Interval> maxOfSides(double y, const stats::Critical& by) const;
    /// With half of the lines' own interval in place of their parts.
    stats::Interval withLinesOf(const stats::Interval& lines, double x,
                                const stats::Critical& by) const;
};

/// A change with its interval as if lines were straight, by level, read with the bend that it may
/// have; no figure where straight has none.
ReadChange readWithBend(double change,
                        const std::function<std::optional<stats::Interval>(double)>& straight,
                        const stats::Interval& bend, double level,
                        const std::optional<Smallest>& smallest);

} // namespace slopebook::answers
