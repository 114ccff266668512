// SPDX-License-Identifier: GPL-3.0-or-later
// The line or parabola y = c0 + c1 x + c2 x^2 by ordinary least squares, with prediction intervals.
// Works on centred and scaled x, so that no digits are lost (checked on NIST StRD Pontius).
#pragma once

#include "core/stats/quantiles.h"

#include <array>
#include <optional>
#include <span>

namespace slopebook::stats {

struct Parabola {
    int degree = 1; ///< 1: a line, c[2] is zero
    int n = 0;
    std::array<double, 3> c{}; ///< of 1, x, x^2
    double rss = 0, r2 = 0;
    double df = 0; ///< n - degree - 1
    double xMin = 0, xMax = 0;
    double s() const; ///< residual SD (the standard error of the estimate)
    double at(double x) const { return c[0] + x * (c[1] + x * c[2]); }

    // How x was centred and scaled, and (X'X)^-1 there.
    double centre = 0, scale = 1;
    std::array<std::array<double, 3>, 3> inverse{};
    /// Leverage of a new x: z'(X'X)^-1 z.
    double leverage(double x) const;
};

/// degree 1 or 2. Nothing with fewer than degree + 1 distinct x, or no residual df.
std::optional<Parabola> fitParabola(std::span<const double> x, std::span<const double> y,
                                    int degree);

/// Of one new observation at x. Agrees with R's predict(lm, interval = "prediction").
Interval predictionInterval(const Parabola& fit, double x, double level);

} // namespace slopebook::stats
