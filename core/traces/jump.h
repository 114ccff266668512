// SPDX-License-Identifier: GPL-3.0-or-later
// Jumps on a force plate: from a force trace to marks, and from marks to figures.
#pragma once

#include "core/traces/trace.h"

namespace slopebook::traces {

/// Standard acceleration of free fall, m/s2 (exact by convention, CGPM 1901).
constexpr double standardGravity = 9.80665;

struct JumpSettings {
    double quietSeconds = 1.0; ///< of standing still (common practice)
    double sds = 5;            ///< the empty plate's mean + 5 SD ends a flight
    double floor = 10;         ///< N; the least force that ends a flight
    double shortestFlight = 0.10, longestFlight = 1.2; ///< s; 1.2 s is a jump of 1.77 m
    double longestContact = 1.0; ///< s; a longer stand before a jump is no rebound
};

/// Times in s.
struct JumpMarks {
    /// Standing still, for the weight: before the jump, else after it; absent where there is none.
    struct Still {
        double from = 0, to = 0;
        friend bool operator==(const Still&, const Still&) = default;
    };
    std::optional<Still> still;
    std::optional<double> start;   ///< movement begins (stood still before)
    std::optional<double> contact; ///< touch-down before the take-off (drop jump, hop)
    double takeOff = 0;
    double landing = 0;
    friend bool operator==(const JumpMarks&, const JumpMarks&) = default;
};

struct JumpFigures {
    double flightTime = 0;   ///< s
    double flightHeight = 0; ///< m, g t^2 / 8 (Bosco, Luhtanen and Komi 1983, from memory)
    /// N, what the plate reads in flight where that is well off zero (not zeroed): taken off the
    /// weight, and so off the mass.
    std::optional<double> plateOffset;
    std::optional<double> weight;        ///< N
    std::optional<double> mass;          ///< kg, weight / g
    std::optional<double> takeOffSpeed;  ///< m/s, by impulse over mass from standing still
    std::optional<double> impulseHeight; ///< m, take-off speed squared / 2 g
    std::optional<double> contactTime;   ///< s
    std::optional<double> rsi;           ///< m/s, flight height / contact time
    std::optional<double> flightContactRatio;
    std::optional<double> secondsToTakeOff; ///< from the start of the movement
    std::optional<double> rsiModified;      ///< m/s, flight height / time to take-off
};

/// Every jump of the trace, in order. A flight is a stretch between two contacts on which the force
/// stays under max(floor, 5 SD) above what the empty plate reads; take-off and landing lie between
/// two samples by a straight line. A fault where there is none.
Found<std::vector<JumpMarks>> findJumps(const Trace& trace, const JumpSettings& settings = {});

/// The figures of one jump. Impulse runs from standing still to take-off, or, where the stillness
/// lies after the landing, backwards from it. A fault where marks are out of order, or where the
/// plate is so far off zero that nothing on it is believed.
Found<JumpFigures> jumpFigures(const Trace& trace, const JumpMarks& marks);

/// g t^2 / 8, m.
constexpr double heightFromFlight(double seconds) {
    return standardGravity * seconds * seconds / 8;
}

} // namespace slopebook::traces
