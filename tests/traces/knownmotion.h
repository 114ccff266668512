// SPDX-License-Identifier: GPL-3.0-or-later
// Traces made from motions whose every figure is known exactly, sampled at a rate, with noise.
#pragma once

#include "core/traces/trace.h"

#include <cmath>
#include <functional>
#include <numbers>
#include <random>
#include <vector>

namespace slopebook::tests {

inline constexpr double rates[] = {100, 200, 1000, 2000, 10'000};

/// The function sampled from 0 to seconds; the first sample lies a third of a step after 0, so that
/// no event falls on a sample. noise: SD of a normal error, seeded.
inline traces::Trace sampled(const std::function<double(double)>& f, double seconds, double rate,
                             double noise = 0, unsigned seed = 1) {
    std::mt19937 random(seed);
    std::normal_distribution<double> error(0, 1);
    traces::Trace trace{.start = 1 / (3 * rate), .rate = rate, .values = {}};
    for (long i = 0; trace.timeOf(static_cast<double>(i)) <= seconds; ++i) {
        const double clean = f(trace.timeOf(static_cast<double>(i)));
        trace.values.push_back(clean + (noise > 0 ? noise * error(random) : 0));
    }
    return trace;
}

/// A push that rises and falls as half a sine over a steady baseline.
struct HalfSinePush {
    double baseline = 780, amplitude = 1900, at = 1.7, seconds = 1.2;
    double omega() const { return std::numbers::pi / seconds; }
    double force(double t) const {
        const double s = t - at;
        return baseline + (s > 0 && s < seconds ? amplitude * std::sin(omega() * s) : 0);
    }
    /// When it first reaches a net force.
    double reaches(double net) const { return at + std::asin(net / amplitude) / omega(); }
    /// Net impulse between two times inside the push.
    double impulse(double from, double to) const {
        return amplitude / omega() *
               (std::cos(omega() * (from - at)) - std::cos(omega() * (to - at)));
    }
    double steepest() const { return amplitude * omega(); }
    double mostCurved() const { return amplitude * omega() * omega(); }
};

/// A rise of height metres in seconds with the least jerk, and its derivatives.
struct MinimumJerk {
    double height = 0.5, seconds = 0.8;
    double position(double t) const {
        const double s = std::clamp(t / seconds, 0.0, 1.0);
        return height * s * s * s * (10 + s * (-15 + s * 6));
    }
    double velocity(double t) const {
        const double s = std::clamp(t / seconds, 0.0, 1.0);
        return height / seconds * 30 * s * s * (1 - s) * (1 - s);
    }
    double acceleration(double t) const {
        const double s = std::clamp(t / seconds, 0.0, 1.0);
        return height / (seconds * seconds) * 60 * s * (1 - s) * (1 - 2 * s);
    }
    double peak() const { return 1.875 * height / seconds; }
    /// The time at which the velocity first reaches a value, by halving.
    double reaches(double speed) const {
        double low = 0, high = seconds / 2;
        for (int i = 0; i < 100; ++i)
            (velocity((low + high) / 2) < speed ? low : high) = (low + high) / 2;
        return low;
    }
};

} // namespace slopebook::tests
