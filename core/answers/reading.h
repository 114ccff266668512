// SPDX-License-Identifier: GPL-3.0-or-later
// What may be said of a change: better, worse, held, unclear (method.md section 7).
#pragma once

#include "core/stats/twolines.h"

#include <optional>
#include <string>
#include <string_view>

namespace slopebook::answers {

enum class Reading { Better, Worse, Held, Unclear, NoFigure };

/// "better", "worse", "held", "unclear", "no figure".
std::string_view word(Reading reading);

/// The smallest change that matters and where it came from.
struct Smallest {
    enum class Origin { Squad, Coach, Published };
    double value = 0;
    Origin origin = Origin::Published;
    std::string source = {}; ///< "0.2 x SD of 12 athletes", "coach", a citation
};

/// The day-to-day SD of a whole line, m/s, with its degrees of freedom, and where it came from.
struct DayNoise {
    enum class Origin { Athlete, LogLift, Published, None };
    stats::Variance variance = {}; ///< (m/s)^2; df infinite where published
    Origin origin = Origin::None;
    std::string source = {};
    int pairs = 0; ///< repeat tests behind it
};

/// A change with the interval its reading is made from.
struct ReadChange {
    double change = 0;
    stats::Interval interval = {};    ///< at the level
    stats::Interval equivalence = {}; ///< at 1 - 2 (1 - level): 90 % for 95 %
    std::optional<Smallest> smallest = {};
    Reading reading = Reading::NoFigure;
    bool beyondSmallest = false; ///< the interval also excludes m
    bool withinSmallest = false; ///< the equivalence interval lies inside -m..+m
};

/// The five-way rule. Better or worse first (the interval excludes zero), then held (the
/// equivalence interval lies inside -m..+m), else unclear. higherIsBetter: false for times.
ReadChange read(double change, const stats::Interval& interval, const stats::Interval& equivalence,
                const std::optional<Smallest>& smallest, bool higherIsBetter = true);

/// The level of the two one-sided tests that goes with a level: 0.90 for 0.95.
constexpr double equivalenceLevel(double level) {
    return 1 - 2 * (1 - level);
}

} // namespace slopebook::answers
