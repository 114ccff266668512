// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/answers/figures.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace slopebook::answers {

namespace {

using stats::Variance;

/// One session's part in the change.
struct Side {
    stats::Line line;
    stats::Scatter scatter; ///< of its points, pooled or its own
    Variance day = {};      ///< of the line as a whole from day to day, (m/s)^2
    Variance bias = {};     ///< of the device's bias that was taken off, (m/s)^2
    double known = 0;       ///< of both, what is taken as known: not in day or bias

    /// Variance of y for Fieller's interval with critical value t: a known part goes with z.
    double wholeLine(double t, double z) const {
        return day.value + bias.value + known * (z / t) * (z / t);
    }
};

/// Variance of the estimate from the scatter about the line, by the delta method.
Variance ofTheLine(const Side& side, double mvt) {
    const auto& l = side.line;
    const double d = (mvt - l.yMean) / l.slope;
    return {side.scatter.s2 / (l.slope * l.slope) * (1.0 / l.n + d * d / l.sxx), side.scatter.df};
}

/// What a variance in m/s is in kg on that line.
Variance onTheLine(const Variance& speed, const stats::Line& line) {
    return {speed.value / (line.slope * line.slope), speed.df};
}

std::vector<Side> sidesOf(const stats::TwoLines& lines, const ComparisonSettings& settings) {
    const bool pooled = settings.variances == stats::Variances::Pooled;
    const auto scatter = [&](const stats::Line& line) {
        return pooled ? stats::Scatter{lines.s2(), lines.df()}
                      : stats::Scatter{line.s2(), line.df()};
    };
    const Variance day = settings.dayNoise.origin == DayNoise::Origin::None
                             ? Variance{}
                             : settings.dayNoise.variance;
    const Variance bias = settings.deviceBias ? settings.deviceBias->second : Variance{};
    const auto known = [](const Variance& v) { return std::isinf(v.df) ? v.value : 0; };
    const auto estimated = [](const Variance& v) { return std::isinf(v.df) ? Variance{} : v; };
    return {{lines.first(), scatter(lines.first()), estimated(day), {}, known(day)},
            {lines.second(), scatter(lines.second()), estimated(day), estimated(bias),
             known(day) + known(bias)}};
}

/// The degrees of freedom that the reading's Fieller intervals use, of what is estimated. Pooled:
/// one, of the whole variance of the change. Separate: each side its own.
std::vector<double> readingDf(const std::vector<Side>& sides, double mvt, bool pooled) {
    const Side& first = sides[0];
    const Side& second = sides[1];
    if (!pooled) {
        std::vector<double> dfs;
        for (const Side& side : sides) {
            const Variance whole =
                stats::sum(onTheLine(side.day, side.line), onTheLine(side.bias, side.line));
            dfs.push_back(whole.value > 0 ? stats::sum(ofTheLine(side, mvt), whole).df
                                          : side.scatter.df);
        }
        return dfs;
    }
    if (!(second.day.value + second.bias.value > 0))
        return {first.scatter.df, second.scatter.df};
    const Variance scatter{ofTheLine(first, mvt).value + ofTheLine(second, mvt).value,
                           first.scatter.df};
    // One day-to-day SD serves both sessions: its two parts are not independent estimates.
    const Variance day{onTheLine(first.day, first.line).value +
                           onTheLine(second.day, second.line).value,
                       first.day.df};
    const double df = stats::sum(stats::sum(scatter, day), onTheLine(second.bias, second.line)).df;
    return {df, df};
}

/// The interval of the change by variance recovery; nothing where a side cannot be bounded.
std::optional<stats::Interval> recovered(const std::vector<Side>& sides, double mvt,
                                         const std::vector<double>& dfs, bool withDay,
                                         double level) {
    std::vector<stats::Inverse> each;
    const double z = stats::tCritical(level, std::numeric_limits<double>::infinity());
    for (std::size_t i = 0; i < sides.size(); ++i) {
        each.push_back(stats::inversePrediction(
            sides[i].line, mvt,
            withDay ? sides[i].wholeLine(stats::tCritical(level, dfs[i]), z) : 0,
            {sides[i].scatter.s2, dfs[i]}, level));
        if (each.back().shape != stats::Inverse::Shape::Bounded)
            return std::nullopt;
    }
    return stats::differenceInterval(each[0].estimate, each[0].interval, each[1].estimate,
                                     each[1].interval);
}

/// With day-to-day noise and the device's, never narrower than that of the two days alone
/// (TwoLines::interval says why); nothing where either cannot be bounded.
std::optional<stats::Interval> readingInterval(const std::vector<Side>& sides, double mvt,
                                               bool pooled, double level) {
    const auto noisy = recovered(sides, mvt, readingDf(sides, mvt, pooled), true, level);
    const auto alone =
        recovered(sides, mvt, {sides[0].scatter.df, sides[1].scatter.df}, false, level);
    if (!noisy || !alone)
        return std::nullopt;
    return stats::Interval{std::min(noisy->low, alone->low), std::max(noisy->high, alone->high)};
}

/// In kg on each side; a day's variance is that of the two lines' mean.
std::optional<RepeatsQuestion> questionOf(const stats::TwoLines& lines, double mvt,
                                          const ComparisonSettings& settings) {
    const auto& smallest = settings.smallestOneRm;
    if (!smallest || !(smallest->value > 0))
        return std::nullopt;
    const auto ofLine = [&](const stats::Line& line) {
        return ofTheLine({.line = line, .scatter = {lines.s2(), lines.df()}}, mvt);
    };
    const auto& day = settings.dayNoise.variance;
    const double days =
        (onTheLine(day, lines.first()).value + onTheLine(day, lines.second()).value) / 2;
    return RepeatsQuestion{.earlier = ofLine(lines.first()),
                           .later = ofLine(lines.second()),
                           .day = {days, day.df},
                           .standing = settings.deviceBias
                                           ? onTheLine(settings.deviceBias->second, lines.second())
                                           : Variance{},
                           .smallest = smallest->value,
                           .level = settings.level};
}

std::optional<double> measuredChange(const LiftSession& from, const LiftSession& to) {
    if (!from.measuredOneRm || !to.measuredOneRm)
        return std::nullopt;
    return kilograms(*to.measuredOneRm) - kilograms(*from.measuredOneRm);
}

void noteTheThreshold(const Profile& from, double residue, std::vector<Note>& notes) {
    if (!from.mvt->sd)
        return;
    notes.push_back({Note::Kind::MvtCancels,
                     {residue},
                     "both estimates use one MVT, so its uncertainty nearly cancels in their "
                     "change (what is left is " +
                         fixed(residue, 2) + " kg) and is not in its interval"});
}

} // namespace

Answer<OneRmChange> oneRmChange(const Profile& from, const Profile& to,
                                const stats::TwoLines& lines, const ComparisonSettings& settings,
                                std::vector<Note>& notes) {
    for (const Profile* p : {&from, &to})
        if (!p->oneRm)
            return p->oneRm.why();
    const double mvt = from.mvt->value;
    const bool pooled = settings.variances == stats::Variances::Pooled;
    const auto sides = sidesOf(lines, settings);
    const auto estimate = [&](const stats::Line& l) { return l.xMean + (mvt - l.yMean) / l.slope; };
    OneRmChange change{.estimate = estimate(lines.second()) - estimate(lines.first()),
                       .mvtResidue = from.mvt->sd.value_or(0) *
                                     std::abs(1 / lines.first().slope - 1 / lines.second().slope),
                       .measured = measuredChange(from.session, to.session)};
    const std::vector<double> alone{sides[0].scatter.df, sides[1].scatter.df};
    change.interval = recovered(sides, mvt, alone, false, settings.level);
    const auto reading = readingInterval(sides, mvt, pooled, settings.level);
    const auto equivalence = readingInterval(sides, mvt, pooled, equivalenceLevel(settings.level));
    change.read.change = change.estimate;
    change.read.smallest = settings.smallestOneRm;
    if (change.interval && reading && equivalence)
        change.read = read(change.estimate, *reading, *equivalence, settings.smallestOneRm);
    else
        notes.push_back({Note::Kind::SlopeUncertain,
                         {},
                         "a slope is not certain enough to bound the change of the estimated max"});
    if (change.read.reading == Reading::Unclear)
        change.unsettled = questionOf(lines, mvt, settings);
    noteTheThreshold(from, change.mvtResidue, notes);
    return change;
}

} // namespace slopebook::answers
