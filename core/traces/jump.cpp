// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/jump.h"

#include "core/model/phrases/traces.h"

#include <algorithm>
#include <cmath>

namespace slopebook::traces {
namespace {

constexpr double searchAround = 5.0; // s before take-off or after landing: common practice
constexpr double leastWeight = 150;  // N; nobody who jumps weighs less
constexpr double zeroTolerance = 5;  // N, half a kilogram: what a zeroed plate may read in flight
constexpr double emptySd = 15;       // N; what varies more between two marks is no empty plate
constexpr double onsetLead = 0.030;  // s; Owen et al. 2014 (from memory)
constexpr double onsetFloor = 0.01;  // of the weight
constexpr double firstLook = 0.05;   // of the trace's largest force

Words whole(double newtons) {
    return figure(std::to_string(std::lround(newtons)));
}

Fault farOffZero(double reads, std::optional<double> at) {
    return {say("the plate reads %1 N in flight, with nobody on it: zero it and jump again",
                whole(reads)),
            {},
            at};
}

/// The mean of what lies far below zero, where that is more than the ringing of an impact: with
/// such a plate a dip looks like a flight.
std::optional<double> farBelowZero(const Trace& trace) {
    double sum = 0;
    long count = 0;
    for (const double force : trace.values)
        if (force < -leastWeight) {
            sum += force;
            ++count;
        }
    if (count == 0 || static_cast<double>(count) < 0.05 * trace.rate)
        return {};
    return sum / static_cast<double>(count);
}

struct Flight {
    std::size_t first = 0, past = 0; ///< samples under the level
};

/// Stretches under the level that do not touch either end of the trace.
std::vector<Flight> stretchesUnder(const Trace& trace, double level) {
    std::vector<Flight> flights;
    const auto& f = trace.values;
    std::size_t i = 0;
    while (i < f.size()) {
        if (f[i] > level) {
            ++i;
            continue;
        }
        const std::size_t first = i;
        while (i < f.size() && f[i] <= level)
            ++i;
        if (first > 0 && i < f.size())
            flights.push_back({first, i});
    }
    return flights;
}

/// The empty plate, by the middle half of a flight.
std::optional<Quiet> emptyPlate(const Trace& trace, double from, double to) {
    const double quarter = (to - from) / 4;
    return describe(trace, from + quarter, to - quarter);
}

/// What the empty plate reads at the most.
std::optional<double> emptyLevel(const Trace& trace, const Flight& flight,
                                 const JumpSettings& settings) {
    const auto empty = emptyPlate(trace, trace.timeOf(static_cast<double>(flight.first)),
                                  trace.timeOf(static_cast<double>(flight.past)));
    if (!empty)
        return {};
    return empty->mean + std::max(settings.floor, settings.sds * empty->sd);
}

std::optional<JumpMarks> refine(const Trace& trace, const Flight& flight, double level,
                                const JumpSettings& settings) {
    const auto& f = trace.values;
    std::size_t off = (flight.first + flight.past) / 2;
    std::size_t on = off;
    while (off > 0 && f[off] <= level)
        --off;
    while (on < f.size() && f[on] <= level)
        ++on;
    if (f[off] <= level || on >= f.size())
        return {};
    JumpMarks marks;
    marks.takeOff = crossing(trace, off, level);
    marks.landing = crossing(trace, on - 1, level);
    const double seconds = marks.landing - marks.takeOff;
    if (seconds < settings.shortestFlight || seconds > settings.longestFlight)
        return {};
    return marks;
}

/// The touch-down that the contact before this take-off began with, where there was one.
std::optional<double> contactBefore(const Trace& trace, double takeOff, double level, double loaded,
                                    const JumpSettings& settings) {
    const auto& f = trace.values;
    std::size_t i = static_cast<std::size_t>(std::max(0.0, trace.sampleOf(takeOff)));
    // Noise crosses the level to and fro while the force fades: start from where it is well loaded.
    while (i > 0 && f[i] <= loaded)
        --i;
    while (i > 0 && f[i] > level)
        --i;
    if (f[i] > level)
        return {};
    const double touch = crossing(trace, i, level);
    if (takeOff - touch > settings.longestContact)
        return {};
    return touch;
}

void findStill(const Trace& trace, JumpMarks& marks, const JumpSettings& settings) {
    const auto weighs = [&](double from, double to) {
        return quietest(trace, from, to, settings.quietSeconds, leastWeight);
    };
    std::optional<Quiet> still;
    if (!marks.contact)
        still = weighs(marks.takeOff - searchAround, marks.takeOff);
    if (still) {
        const double level = std::max(settings.sds * still->sd, onsetFloor * still->mean);
        auto i = static_cast<std::size_t>(std::max(0.0, std::ceil(trace.sampleOf(still->to))));
        const auto& f = trace.values;
        while (i < f.size() && std::abs(f[i] - still->mean) <= level)
            ++i;
        marks.start = std::max(still->to, trace.timeOf(static_cast<double>(i)) - onsetLead);
        if (*marks.start >= marks.takeOff)
            marks.start.reset();
    } else {
        still = weighs(marks.landing, marks.landing + searchAround);
    }
    if (still)
        marks.still = JumpMarks::Still{still->from, still->to};
}

/// standing: the force of standing still as the plate reads it, an offset in it included.
void addImpulse(const Trace& trace, const JumpMarks& marks, double standing, JumpFigures& figures) {
    const double mass = *figures.mass;
    const bool before = marks.still->to <= marks.takeOff;
    const double impulse = before ? integral(trace, marks.still->to, marks.takeOff, standing)
                                  : -integral(trace, marks.takeOff, marks.still->from, standing);
    const double speed = impulse / mass;
    if (!(speed > 0))
        return;
    figures.takeOffSpeed = speed;
    figures.impulseHeight = speed * speed / (2 * standardGravity);
}

} // namespace

Found<std::vector<JumpMarks>> findJumps(const Trace& trace, const JumpSettings& settings) {
    const double largest = *std::max_element(trace.values.begin(), trace.values.end());
    if (largest < leastWeight)
        return Fault{say("nobody stands on the plate: the force stays under 150 N"), {}, {}};
    if (const auto below = farBelowZero(trace))
        return farOffZero(*below, {});
    const double level = std::max(settings.floor, firstLook * largest);
    std::vector<JumpMarks> jumps;
    for (const Flight& flight : stretchesUnder(trace, level))
        if (const auto empty = emptyLevel(trace, flight, settings))
            if (auto marks = refine(trace, flight, *empty, settings)) {
                marks->contact = contactBefore(trace, marks->takeOff, *empty,
                                               std::max(level, 2 * *empty), settings);
                findStill(trace, *marks, settings);
                jumps.push_back(*marks);
            }
    if (jumps.empty())
        return Fault{
            say("no flight found: the force never falls to nothing for 0.1 to 1.2 s between "
                "two contacts (on a plate that was not zeroed it does not)"),
            {},
            {}};
    return jumps;
}

Found<JumpFigures> jumpFigures(const Trace& trace, const JumpMarks& marks) {
    if (!trace.covers(marks.takeOff) || !trace.covers(marks.landing))
        return Fault{say("a mark lies outside the trace"), {}, marks.takeOff};
    if (marks.takeOff >= marks.landing || (marks.contact && *marks.contact >= marks.takeOff) ||
        (marks.start && *marks.start >= marks.takeOff))
        return Fault{say("the marks are not in order: contact or start, take-off, landing"),
                     {},
                     marks.takeOff};
    JumpFigures figures;
    figures.flightTime = marks.landing - marks.takeOff;
    figures.flightHeight = heightFromFlight(figures.flightTime);
    if (marks.contact) {
        figures.contactTime = marks.takeOff - *marks.contact;
        figures.rsi = figures.flightHeight / *figures.contactTime;
        figures.flightContactRatio = figures.flightTime / *figures.contactTime;
    }
    if (marks.start) {
        figures.secondsToTakeOff = marks.takeOff - *marks.start;
        figures.rsiModified = figures.flightHeight / *figures.secondsToTakeOff;
    }
    // In flight there is no force: what a plate reads then it reads too much of everything.
    if (const auto empty = emptyPlate(trace, marks.takeOff, marks.landing);
        empty && empty->sd <= emptySd && std::abs(empty->mean) > zeroTolerance)
        figures.plateOffset = empty->mean;
    if (figures.plateOffset && std::abs(*figures.plateOffset) > leastWeight)
        return farOffZero(*figures.plateOffset, marks.takeOff);
    if (!marks.still)
        return figures;
    const auto still = describe(trace, marks.still->from, marks.still->to);
    if (!still || still->mean < leastWeight ||
        (marks.still->to > marks.takeOff && marks.still->from < marks.landing))
        return Fault{say("nobody stands still on the plate between the marks for it"),
                     {},
                     marks.still->from};
    figures.weight = still->mean - figures.plateOffset.value_or(0);
    figures.mass = *figures.weight / standardGravity;
    addImpulse(trace, marks, still->mean, figures);
    return figures;
}

} // namespace slopebook::traces
