// SPDX-License-Identifier: GPL-3.0-or-later
// Two lines in one model: y = a1 + b1 x + G (c + d x), G = 1 on the second line.
#pragma once

#include "core/stats/line.h"

#include <optional>
#include <vector>

namespace slopebook::stats {

enum class Variances {
    Pooled,  ///< one s^2 on n1 + n2 - 4 df
    Separate ///< each line its own, df by Satterthwaite at each x; see interval()
};

/// f is infinite (and p 0) where there is no scatter to test against and the lines differ.
struct FTest {
    double f = 0, df1 = 0, df2 = 0, p = 0;
};

/// A variance with its degrees of freedom (infinite where it is taken as known).
struct Variance {
    double value = 0;
    double df = 0;
};
/// Sum of independent variances; df by Satterthwaite (1946). A part of zero adds nothing, a part
/// of infinite df is taken as known, a part of positive value needs df > 0.
Variance sum(const Variance& a, const Variance& b);

/// A stretch of x on which the difference is of one sign; ends may be infinite before they are
/// clipped.
struct Stretch {
    double from = 0, to = 0;
    int sign = 0; ///< +1 second line above, -1 below
};

class TwoLines {
public:
    /// Both lines must have inference (three points or more), or together leave residual df > 0
    /// when pooled.
    TwoLines(const Line& first, const Line& second, Variances variances = Variances::Pooled);

    double c() const;                  ///< difference of intercepts
    double d() const;                  ///< difference of slopes
    double s2() const { return m_s2; } ///< pooled residual variance
    double df() const { return m_df; } ///< n1 + n2 - 4
    const Line& first() const { return m_first; }
    const Line& second() const { return m_second; }

    /// D(x) = c + d x.
    double difference(double x) const;
    /// Its variance and df; extra is added to it (day-to-day noise), df by Satterthwaite.
    Variance variance(double x, const Variance& extra = {}) const;
    /// Student's, by the df of variance(), but never narrower than what is in it says alone: one of
    /// two lines of separate variances on its own df, or both lines without the extra.
    /// Satterthwaite's df come from the estimates themselves; where one part has one or two df, an
    /// interval by them alone misses the truth in up to 11 % of cases, and one with extra noise may
    /// be the narrower. With this floor it is at most the nominal 5 % (tests/README.md, 'Truth of
    /// the intervals').
    Interval interval(double x, double level, const Variance& extra = {}) const;
    /// The simultaneous band over all x: half-width sqrt(2 F(level; 2, df)) se, with the same
    /// floor.
    Interval band(double x, double level, const Variance& extra = {}) const;

    /// Where the interval of D(x) excludes zero (Johnson and Neyman 1936), over the whole axis;
    /// pointwise, or with the simultaneous band (Potthoff 1964). Ordered; at most two stretches,
    /// but for separate variances, whose moving df may cut out more. For every x it agrees with
    /// interval() and band() without extra noise. Two perfect lines differ wherever they are apart
    /// by more than rounding.
    std::vector<Stretch> differs(double level, bool simultaneous = false) const;

    /// x where the lines cross, with the Fieller interval of -c/d; nothing where d is zero.
    /// interval absent where g >= 1, that is where the lines are not told from parallel. It is the
    /// gap that differs() leaves, which for pooled variances is Fieller's with the covariance of c
    /// and d.
    struct Crossing {
        double x = 0;
        std::optional<Interval> interval;
    };
    std::optional<Crossing> crossing(double level) const;

    FTest parallel() const;   ///< H0: d = 0; by the pooled model, whichever the variances
    FTest coincident() const; ///< H0: c = d = 0; likewise
    /// Larger residual variance over the smaller, with its two-sided p; nothing where a line has no
    /// df.
    std::optional<FTest> varianceRatio() const;

private:
    /// Of the half-width, for the square of the critical value at a df.
    template <typename Critical2>
    double halfWidth(double x, const Variance& extra, const Critical2& critical2) const;

    Line m_first, m_second;
    Variances m_variances;
    double m_s2 = 0, m_df = 0;
};

/// The stretches cut to [from, to]; empty ones dropped.
std::vector<Stretch> clip(const std::vector<Stretch>& stretches, double from, double to);

} // namespace slopebook::stats
