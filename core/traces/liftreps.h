// SPDX-License-Identifier: GPL-3.0-or-later
// Reps of a lift from a displacement trace (m, upwards positive): found from rest to top, and their
// mean, mean propulsive and peak velocity.
#pragma once

#include "core/traces/trace.h"

namespace slopebook::traces {

/// Velocity and acceleration by a cubic fitted over a moving tenth of a second (Savitzky-Golay).
/// Why a tenth of a second: its cut-off is near 12 Hz ((order + 1) / (3.2 half-windows), Schafer
/// 2011, from memory), twice what a bar with an athlete on it does; for the fastest lift in mind
/// (0.6 m in 0.35 s, minimum jerk) it bends the velocity by 5/21 h^4 x5/120 = 0.001 m/s, and at
/// 100 Hz it lets 0.5 mm of noise through as 0.013 m/s. Why a cubic: a straight line or parabola
/// over that window would cut the peak of such a lift by 0.1 m/s (h^2/10 times its jerk).
struct LiftSettings {
    double windowSeconds = 0.10;
    int order = 3;
    double restSpeed = 0.02;     ///< m/s; slower is rest (or 5 SD of the quietest half second)
    double leastRise = 0.10;     ///< m; a smaller rise is no rep
    double leastOfLargest = 0.5; ///< nor one under half of the trace's largest rise
    double longestStall = 0.5;   ///< s at rest inside a rep, when the bar sinks less than a stall's
    double stallSink = 0.005;    ///< m
};

/// Times in s.
struct RepMarks {
    double start = 0;
    double propulsiveEnd = 0; ///< acceleration falls under -9.81 m/s2 for good; else the top
    double top = 0;
    friend bool operator==(const RepMarks&, const RepMarks&) = default;
};

struct RepFigures {
    double mean = 0;         ///< m/s, displacement / time from start to top
    double propulsive = 0;   ///< m/s, the same from start to propulsiveEnd
    double peak = 0;         ///< m/s, largest smoothed velocity
    double timeOfPeak = 0;   ///< s
    double displacement = 0; ///< m, start to top
    double seconds = 0;      ///< start to top
};

/// The trace smoothed once: position m, velocity m/s, acceleration m/s2, one each a sample.
struct Motion {
    Trace position, velocity, acceleration;
};

/// A fault where the trace is shorter than the window.
Found<Motion> motion(const Trace& trace, const LiftSettings& settings = {});

/// Every rep, in order. From the fastest moment of a rise outwards to where the bar is at rest
/// speed, and from there by the tangent (speed over acceleration, 0.1 s at the most) to where it
/// stood. A fault where nothing rises far enough.
Found<std::vector<RepMarks>> findReps(const Motion& motion, const LiftSettings& settings = {});

/// Figures of one rep; a fault where the marks are out of order or outside the trace.
Found<RepFigures> repFigures(const Motion& motion, const RepMarks& marks);

} // namespace slopebook::traces
