// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/trace.h"

#include "core/model/phrases/traces.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace slopebook::traces {
namespace {

constexpr std::size_t fewestSamples = 20;
constexpr double stepTolerance = 0.30;
constexpr double gridTolerance = 0.50;
constexpr double rateTolerance = 0.005; // 100 Hz written with rounded times is 100 Hz
constexpr double shortestQuiet = 0.2;
constexpr double quietTolerance = 1.05;

Words number(double value) {
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::general, 6);
    return figure(std::string(text, end.ptr));
}

Fault fault(Words what, std::size_t sample, double time) {
    return {std::move(what), sample, time};
}

std::optional<Fault> unusableValue(std::span<const double> times, std::span<const double> values) {
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (!std::isfinite(times[i]))
            return Fault{say("a time is not a number"), i, {}};
        if (!std::isfinite(values[i]))
            return fault(say("a value is not a number"), i, times[i]);
        if (i > 0 && times[i] <= times[i - 1])
            return fault(say("the times do not rise: %1 s follows %2 s", number(times[i]),
                             number(times[i - 1])),
                         i, times[i]);
    }
    return {};
}

std::optional<Fault> unevenStep(std::span<const double> times, double step) {
    for (std::size_t i = 1; i < times.size(); ++i) {
        const double here = times[i] - times[i - 1];
        if (std::abs(here - step) > stepTolerance * step)
            return fault(
                say("uneven times: a step of %1 s among steps of %2 s", number(here), number(step)),
                i, times[i]);
        const double grid = times[0] + static_cast<double>(i) * step;
        if (std::abs(times[i] - grid) > gridTolerance * step)
            return fault(say("uneven times: the sampling rate changes"), i, times[i]);
    }
    return {};
}

} // namespace

bool Trace::covers(double time) const {
    const double slack = 1e-9 * step();
    return !values.empty() && time >= start - slack && time <= end() + slack;
}

Found<Trace> makeTrace(std::span<const double> times, std::span<const double> values) {
    if (times.size() != values.size())
        return Fault{say("there are not as many values as times"), {}, {}};
    if (times.size() < fewestSamples)
        return Fault{say("fewer than %1 samples", fewestSamples), {}, {}};
    if (auto bad = unusableValue(times, values))
        return *bad;
    const double step = (times.back() - times.front()) / static_cast<double>(times.size() - 1);
    const double rate = 1 / step;
    if (rate < slowestRate * (1 - rateTolerance) || rate > fastestRate * (1 + rateTolerance))
        return Fault{
            say("sampled at %1 Hz; expected 100 to 10000 Hz, with times in seconds", number(rate)),
            {},
            {}};
    if (auto uneven = unevenStep(times, step))
        return *uneven;
    return Trace{times.front(), rate, {values.begin(), values.end()}};
}

double valueAt(const Trace& trace, double time) {
    const double last = static_cast<double>(trace.values.size()) - 1;
    const double at = std::clamp(trace.sampleOf(time), 0.0, last);
    const auto before = static_cast<std::size_t>(at);
    if (before + 1 >= trace.values.size())
        return trace.values.back();
    const double part = at - static_cast<double>(before);
    return trace.values[before] + part * (trace.values[before + 1] - trace.values[before]);
}

double integral(const Trace& trace, double from, double to, double baseline) {
    if (from > to)
        return -integral(trace, to, from, baseline);
    const double last = static_cast<double>(trace.values.size()) - 1;
    const double a = std::clamp(trace.sampleOf(from), 0.0, last);
    const double b = std::clamp(trace.sampleOf(to), 0.0, last);
    double sum = 0;
    double at = a;
    double value = valueAt(trace, trace.timeOf(a)) - baseline;
    while (at < b) {
        const double next = std::min(b, std::floor(at) + 1);
        const double nextValue = valueAt(trace, trace.timeOf(next)) - baseline;
        sum += (next - at) * (value + nextValue) / 2;
        at = next;
        value = nextValue;
    }
    return sum / trace.rate;
}

std::optional<Quiet> describe(const Trace& trace, double from, double to) {
    const double last = static_cast<double>(trace.values.size()) - 1;
    const double low = std::max(0.0, std::ceil(trace.sampleOf(from) - 1e-6));
    const double high = std::min(last, std::floor(trace.sampleOf(to) + 1e-6));
    if (high - low < 2)
        return {};
    const auto first = static_cast<std::size_t>(low);
    const auto past = static_cast<std::size_t>(high) + 1;
    const double n = static_cast<double>(past - first);
    double mean = 0;
    for (std::size_t i = first; i < past; ++i)
        mean += trace.values[i];
    mean /= n;
    double squares = 0;
    for (std::size_t i = first; i < past; ++i)
        squares += (trace.values[i] - mean) * (trace.values[i] - mean);
    return Quiet{trace.timeOf(low), trace.timeOf(high), mean, std::sqrt(squares / (n - 1))};
}

std::optional<Quiet> quietest(const Trace& trace, double from, double to, double seconds,
                              std::optional<double> least) {
    from = std::max(from, trace.start);
    to = std::min(to, trace.end());
    const double length = std::min(seconds, to - from);
    if (length < shortestQuiet - 1e-9)
        return {};
    // A fiftieth of the window is fine enough a step, and keeps a long trace at 10 kHz quick.
    const double stride = std::max(length / 50, trace.step());
    std::vector<Quiet> windows;
    for (double end = to; end - length >= from - 1e-9; end -= stride)
        if (const auto window = describe(trace, end - length, end))
            if (!least || window->mean >= *least)
                windows.push_back(*window);
    if (windows.empty())
        return {};
    double smallest = windows.front().sd;
    for (const Quiet& window : windows)
        smallest = std::min(smallest, window.sd);
    const auto [low, high] = std::minmax_element(trace.values.begin(), trace.values.end());
    const double bound = smallest * quietTolerance + 1e-6 * (*high - *low);
    return *std::find_if(windows.begin(), windows.end(),
                         [bound](const Quiet& window) { return window.sd <= bound; });
}

double crossing(const Trace& trace, std::size_t before, double level) {
    const double a = trace.values[before];
    const double b = trace.values[before + 1];
    const double part = a == b ? 0.5 : std::clamp((level - a) / (b - a), 0.0, 1.0);
    return trace.timeOf(static_cast<double>(before) + part);
}

} // namespace slopebook::traces
