// SPDX-License-Identifier: GPL-3.0-or-later
// An isometric push or pull: from a force trace to marks, and from marks to figures. Every figure
// is a function of the trace and the marks, so that a coach who moves a mark sees what follows.
#pragma once

#include "core/traces/trace.h"

#include <array>

namespace slopebook::traces {

struct IsometricSettings {
    double quietSeconds = 1.0; ///< the quiet stretch before the push (common practice)
    double sds = 5;            ///< onset: quiet mean + 5 SD (Maffiuletti et al. 2016, from memory)
    double floor = 10;         ///< N; the least rise that counts as an onset, for a silent channel
};

/// Times in s.
struct IsometricMarks {
    double quietFrom = 0, quietTo = 0;
    double onset = 0;
    double peak = 0;
    double end = 0;
    friend bool operator==(const IsometricMarks&, const IsometricMarks&) = default;
};

/// The windows from onset in which force and its rate are given, s.
constexpr std::array<double, 5> isometricWindows{0.050, 0.100, 0.150, 0.200, 0.250};

struct WindowFigures {
    double seconds = 0;
    double force = 0;    ///< N, gross, at onset + seconds
    double netForce = 0; ///< N, over the quiet baseline
    double rfd = 0;      ///< N/s, (force at the window's end - force at onset) / seconds
    double impulse = 0;  ///< N s, net, from onset
};

struct IsometricFigures {
    double baseline = 0;                ///< N, mean of the quiet stretch
    double baselineSd = 0;              ///< N
    double peakGross = 0;               ///< N
    double peakNet = 0;                 ///< N, gross less baseline
    double secondsToPeak = 0;           ///< onset to peak
    double impulse = 0;                 ///< N s, net, onset to end
    std::vector<WindowFigures> windows; ///< those that lie inside the trace
};

/// Finds the marks. Peak: the largest sample. Quiet: the quietest stretch of the 3 s before force
/// first reaches half of its rise. Onset: where force last leaves the quiet mean + max(sds SD,
/// floor) before that half, between two samples by a straight line. End: where it next falls to
/// that level, or the trace's end.
Found<IsometricMarks> findIsometric(const Trace& trace, const IsometricSettings& settings = {});

/// The figures of a trace with these marks; a fault where the marks are not in order or outside
/// the trace.
Found<IsometricFigures> isometricFigures(const Trace& trace, const IsometricMarks& marks);

} // namespace slopebook::traces
