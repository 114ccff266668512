// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/liftreps.h"

#include "core/model/phrases/traces.h"
#include "core/traces/savitzkygolay.h"

#include <algorithm>
#include <cmath>

namespace slopebook::traces {
namespace {

constexpr double brakingAcceleration = -9.81; // m/s2, Sanchez-Medina, Perez, Gonzalez-Badillo 2010
constexpr double longestTangent = 0.1;        // s

/// Samples [first, past) that move up faster than rest.
struct Rise {
    std::size_t first = 0, past = 0;
};

double restSpeed(const Motion& motion, const LiftSettings& settings) {
    // The noise of the velocity is the same everywhere, so its quietest half second shows it.
    const auto quiet = quietest(motion.velocity, motion.velocity.start, motion.velocity.end(), 0.5);
    const double noise = quiet && std::abs(quiet->mean) < settings.restSpeed ? quiet->sd : 0;
    return std::max(settings.restSpeed, 5 * noise);
}

double climb(const Motion& motion, const Rise& rise) {
    return motion.position.values[rise.past - 1] - motion.position.values[rise.first];
}

std::vector<Rise> rises(const Motion& motion, double speed, const LiftSettings& settings) {
    std::vector<Rise> found;
    const auto& v = motion.velocity.values;
    const auto& x = motion.position.values;
    std::size_t i = 0;
    while (i < v.size()) {
        if (v[i] <= speed) {
            ++i;
            continue;
        }
        Rise rise{i, i};
        while (i < v.size() && v[i] > speed)
            ++i;
        rise.past = i;
        const bool stalled = !found.empty() &&
                             static_cast<double>(rise.first - found.back().past) <
                                 settings.longestStall * motion.position.rate &&
                             x[rise.first] > x[found.back().past - 1] - settings.stallSink &&
                             climb(motion, found.back()) > settings.stallSink;
        if (stalled)
            found.back().past = rise.past;
        else
            found.push_back(rise);
    }
    return found;
}

/// From where the speed passes `speed` along the tangent to where it would be zero.
double standstill(const Motion& motion, double time, double speed, double direction) {
    const double slope = direction * valueAt(motion.acceleration, time);
    const double lead = slope > 0 ? std::min(speed / slope, longestTangent) : 0;
    return std::clamp(time - direction * lead, motion.velocity.start, motion.velocity.end());
}

double propulsiveEnd(const Motion& motion, double fastest, double top) {
    const Trace& a = motion.acceleration;
    auto i = static_cast<std::size_t>(std::max(0.0, a.sampleOf(fastest)));
    for (; i + 1 < a.values.size() && a.timeOf(static_cast<double>(i) + 1) <= top; ++i)
        if (a.values[i] >= brakingAcceleration && a.values[i + 1] < brakingAcceleration)
            return std::min(top, crossing(a, i, brakingAcceleration));
    return top;
}

std::size_t fastestIn(const Motion& motion, std::size_t first, std::size_t past) {
    const auto& v = motion.velocity.values;
    return static_cast<std::size_t>(std::max_element(v.begin() + static_cast<long>(first),
                                                     v.begin() + static_cast<long>(past)) -
                                    v.begin());
}

} // namespace

Found<Motion> motion(const Trace& trace, const LiftSettings& settings) {
    const double half = settings.windowSeconds * trace.rate / 2;
    const int points = std::max(2 * static_cast<int>(std::lround(half)) + 1,
                                settings.order + 2 - settings.order % 2);
    if (trace.values.size() < static_cast<std::size_t>(points))
        return Fault{say("the trace is shorter than a tenth of a second"), {}, {}};
    Motion result{trace, trace, trace};
    result.position.values = savitzkyGolay(trace.values, trace.rate, points, settings.order, 0);
    result.velocity.values = savitzkyGolay(trace.values, trace.rate, points, settings.order, 1);
    result.acceleration.values = savitzkyGolay(trace.values, trace.rate, points, settings.order, 2);
    return result;
}

Found<std::vector<RepMarks>> findReps(const Motion& motion, const LiftSettings& settings) {
    const double speed = restSpeed(motion, settings);
    std::vector<Rise> found = rises(motion, speed, settings);
    double largest = 0;
    for (const Rise& rise : found)
        largest = std::max(largest, climb(motion, rise));
    const double least = std::max(settings.leastRise, settings.leastOfLargest * largest);
    std::vector<RepMarks> reps;
    const Trace& v = motion.velocity;
    for (const Rise& rise : found) {
        if (climb(motion, rise) < least)
            continue;
        const double from = rise.first > 0 ? crossing(v, rise.first - 1, speed) : v.start;
        const double to = rise.past < v.values.size() ? crossing(v, rise.past - 1, speed) : v.end();
        RepMarks marks;
        marks.start = standstill(motion, from, speed, +1);
        marks.top = standstill(motion, to, speed, -1);
        const double fastest =
            v.timeOf(static_cast<double>(fastestIn(motion, rise.first, rise.past)));
        marks.propulsiveEnd = propulsiveEnd(motion, fastest, marks.top);
        reps.push_back(marks);
    }
    if (reps.empty())
        return Fault{say("no rep found: nothing rises by 0.1 m; expected displacement in metres, "
                         "upwards positive"),
                     {},
                     {}};
    return reps;
}

Found<RepFigures> repFigures(const Motion& motion, const RepMarks& marks) {
    if (!motion.position.covers(marks.start) || !motion.position.covers(marks.top))
        return Fault{say("a mark lies outside the trace"), {}, marks.start};
    if (!(marks.start < marks.propulsiveEnd && marks.propulsiveEnd <= marks.top))
        return Fault{say("the marks are not in order: start, end of the propulsive part, top"),
                     {},
                     marks.start};
    const double bottom = valueAt(motion.position, marks.start);
    RepFigures figures;
    figures.seconds = marks.top - marks.start;
    figures.displacement = valueAt(motion.position, marks.top) - bottom;
    figures.mean = figures.displacement / figures.seconds;
    figures.propulsive = (valueAt(motion.position, marks.propulsiveEnd) - bottom) /
                         (marks.propulsiveEnd - marks.start);
    const auto first = static_cast<std::size_t>(std::ceil(motion.velocity.sampleOf(marks.start)));
    const auto past = static_cast<std::size_t>(std::floor(motion.velocity.sampleOf(marks.top))) + 1;
    if (first >= past)
        return Fault{say("the rep is shorter than a sample"), {}, marks.start};
    const std::size_t fastest =
        fastestIn(motion, first, std::min(past, motion.velocity.values.size()));
    figures.peak = motion.velocity.values[fastest];
    figures.timeOfPeak = motion.velocity.timeOf(static_cast<double>(fastest));
    return figures;
}

} // namespace slopebook::traces
