// SPDX-License-Identifier: GPL-3.0-or-later
// The straight line y = a + b x by ordinary least squares, and what may be inferred from it.
// Knows numbers only. Sums are centred and taken in two passes, so that x far from zero loses no
// digits (checked on NIST StRD Norris).
#pragma once

#include "core/stats/quantiles.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::stats {

struct Line {
    int n = 0;        ///< points
    int distinct = 0; ///< distinct x
    double xMean = 0, yMean = 0;
    double sxx = 0, sxy = 0, syy = 0; ///< centred sums of squares and products
    double xMin = 0, xMax = 0;
    double slope = 0, intercept = 0;
    double rss = 0; ///< residual sum of squares; 0 where only rounding is left of it
    double r2 = 0;  ///< 1 where syy is zero

    /// n - 2; 0 where nothing can be inferred.
    double df() const { return n > 2 ? n - 2 : 0; }
    bool hasInference() const { return n > 2; }
    /// Residual variance and SD; 0 where df() is 0 (then no interval may be made).
    double s2() const { return n > 2 ? rss / (n - 2) : 0; }
    double s() const;
    double slopeSe() const;
    double interceptSe() const;
    double at(double x) const { return yMean + slope * (x - xMean); }
    /// Standard error of the line's mean at x: s sqrt(1/n + (x - xMean)^2 / sxx).
    double seAt(double x) const;
    /// x at y = 0; slope must not be zero.
    double root() const { return xMean - yMean / slope; }
};

/// Fits the line. Nothing with fewer than two points or fewer than two distinct x.
/// x and y have the same length; all values finite.
std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y);

/// Interval of the line's mean at x. Line::hasInference() must hold.
Interval meanInterval(const Line& line, double x, double level);
/// Interval of the mean of m new observations at x.
Interval predictionInterval(const Line& line, double x, double level, int m = 1);
/// The simultaneous band over all x (Working and Hotelling 1929): half-width sqrt(2 F(level; 2,
/// n-2)) se.
Interval workingHotelling(const Line& line, double x, double level);
Interval slopeInterval(const Line& line, double level);
Interval interceptInterval(const Line& line, double level);

/// What one point does to the line.
struct PointDiagnostics {
    double residual = 0;
    double leverage = 0;
    std::optional<double>
        studentised; ///< externally; nothing where the rest of the points leave no scatter
    std::optional<double> cook; ///< Cook's distance; nothing where df is 0
};
/// One per point, in their order (Belsley, Kuh and Welsch 1980; Cook 1977). Equal to R's rstudent,
/// hatvalues, cooks.distance.
std::vector<PointDiagnostics> diagnose(const Line& line, std::span<const double> x,
                                       std::span<const double> y);

/// The t-test of a quadratic term added to the line.
struct Curvature {
    double coefficient = 0; ///< of x^2
    double t = 0;           ///< infinite where a parabola fits exactly
    double df = 0;
    double p = 0;
};
/// Nothing with fewer than 4 distinct x or no residual df. Agrees with R's lm(y ~ x + I(x^2)).
std::optional<Curvature> curvature(std::span<const double> x, std::span<const double> y);

} // namespace slopebook::stats
