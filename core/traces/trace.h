// SPDX-License-Identifier: GPL-3.0-or-later
// An evenly sampled trace (force or displacement against time) and the few sums that marks and
// figures are made of. Times are seconds. Between two samples a trace is a straight line.
#pragma once

#include "core/model/words.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace slopebook::traces {

/// Why a trace gives nothing: a sentence for the coach, and where it goes wrong.
struct Fault {
    Words what;
    std::optional<std::size_t> sample; ///< from 0
    std::optional<double> time;        ///< s
    friend bool operator==(const Fault&, const Fault&) = default;
};

/// Either what was asked for or the fault.
template <class T>
using Found = std::variant<T, Fault>;

struct Trace {
    double start = 0; ///< time of the first sample, s
    double rate = 0;  ///< samples a second
    std::vector<double> values;

    double step() const { return 1 / rate; }
    double timeOf(double sample) const { return start + sample / rate; }
    double sampleOf(double time) const { return (time - start) * rate; }
    double end() const { return timeOf(static_cast<double>(values.size()) - 1); }
    bool covers(double time) const;
    friend bool operator==(const Trace&, const Trace&) = default;
};

/// The slowest and fastest sampling that is taken, Hz.
constexpr double slowestRate = 100;
constexpr double fastestRate = 10'000;

/// A trace from times (s) and values of the same length; the rate is found from the times. Refused
/// with where: fewer than 20 samples, a value that is not a number, times that do not rise, a step
/// that differs from the mean step by more than 30 % or a sample more than half a step off the even
/// grid (a gap, a change of clock, times rounded too coarsely), a rate outside 100 Hz to 10 kHz.
Found<Trace> makeTrace(std::span<const double> times, std::span<const double> values);

/// The value at a time, between two samples by a straight line; outside the trace its end value.
double valueAt(const Trace& trace, double time);

/// Integral of (value - baseline) from one time to another, by trapezia, both ends interpolated.
double integral(const Trace& trace, double from, double to, double baseline = 0);

/// A stretch of time with the mean and SD of the samples in it.
struct Quiet {
    double from = 0, to = 0; ///< s
    double mean = 0, sd = 0;
    friend bool operator==(const Quiet&, const Quiet&) = default;
};

/// Mean and SD of the samples from one time to another; nothing with fewer than three.
std::optional<Quiet> describe(const Trace& trace, double from, double to);

/// The quietest window of that many seconds inside [from, to]: the latest whose SD is within 5 % of
/// the smallest. Windows with a mean under `least` do not count (an empty plate is quiet too). A
/// shorter stretch is searched with a window of its own length, down to 0.2 s; nothing under that.
std::optional<Quiet> quietest(const Trace& trace, double from, double to, double seconds,
                              std::optional<double> least = {});

/// The time at which the trace crosses a level between two neighbouring samples, by a straight
/// line.
double crossing(const Trace& trace, std::size_t before, double level);

} // namespace slopebook::traces
