// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/isometric.h"

#include "core/model/phrases/traces.h"

#include <algorithm>

namespace slopebook::traces {
namespace {

constexpr double searchBefore = 3.0; // s before the push in which it is quiet; common practice

std::size_t indexOf(const Trace& trace, double time) {
    const double last = static_cast<double>(trace.values.size()) - 1;
    return static_cast<std::size_t>(std::clamp(trace.sampleOf(time), 0.0, last));
}

} // namespace

Found<IsometricMarks> findIsometric(const Trace& trace, const IsometricSettings& settings) {
    const auto& f = trace.values;
    const auto peak = static_cast<std::size_t>(std::max_element(f.begin(), f.end()) - f.begin());
    const double least = *std::min_element(f.begin(), f.begin() + static_cast<long>(peak) + 1);
    const double half = least + (f[peak] - least) / 2;
    std::size_t risen = peak;
    while (risen > 0 && f[risen - 1] >= half)
        --risen;
    const double rise = trace.timeOf(static_cast<double>(risen));
    const auto quiet = quietest(trace, rise - searchBefore, rise, settings.quietSeconds);
    if (!quiet)
        return Fault{say("no quiet stretch of 0.2 s before the force rises"), {}, rise};
    const double level = quiet->mean + std::max(settings.sds * quiet->sd, settings.floor);
    if (f[peak] <= level)
        return Fault{say("the force never rises out of its quiet stretch"), peak,
                     trace.timeOf(static_cast<double>(peak))};
    std::size_t on = risen;
    while (on > 0 && f[on] > level)
        --on;
    if (f[on] > level)
        return Fault{say("the force has risen before the trace begins"), 0, trace.start};
    std::size_t off = peak;
    while (off + 1 < f.size() && f[off + 1] > level)
        ++off;
    const double end = off + 1 < f.size() ? crossing(trace, off, level) : trace.end();
    return IsometricMarks{quiet->from, quiet->to, crossing(trace, on, level),
                          trace.timeOf(static_cast<double>(peak)), end};
}

Found<IsometricFigures> isometricFigures(const Trace& trace, const IsometricMarks& marks) {
    for (const double mark : {marks.quietFrom, marks.quietTo, marks.onset, marks.peak, marks.end})
        if (!trace.covers(mark))
            return Fault{say("a mark lies outside the trace"), {}, mark};
    if (!(marks.onset < marks.peak && marks.peak <= marks.end))
        return Fault{say("the marks are not in order: onset, peak, end"),
                     indexOf(trace, marks.onset), marks.onset};
    const auto quiet = describe(trace, marks.quietFrom, marks.quietTo);
    if (!quiet)
        return Fault{say("the quiet stretch holds fewer than three samples"), {}, marks.quietFrom};
    IsometricFigures figures;
    figures.baseline = quiet->mean;
    figures.baselineSd = quiet->sd;
    figures.peakGross = valueAt(trace, marks.peak);
    figures.peakNet = figures.peakGross - figures.baseline;
    figures.secondsToPeak = marks.peak - marks.onset;
    figures.impulse = integral(trace, marks.onset, marks.end, figures.baseline);
    const double atOnset = valueAt(trace, marks.onset);
    for (const double seconds : isometricWindows) {
        const double to = marks.onset + seconds;
        if (!trace.covers(to))
            continue;
        const double force = valueAt(trace, to);
        figures.windows.push_back({.seconds = seconds,
                                   .force = force,
                                   .netForce = force - figures.baseline,
                                   .rfd = (force - atOnset) / seconds,
                                   .impulse = integral(trace, marks.onset, to, figures.baseline)});
    }
    return figures;
}

} // namespace slopebook::traces
