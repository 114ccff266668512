// SPDX-License-Identifier: GPL-3.0-or-later
// What may be said of a change: better, worse, held, unclear (method.md section 7).
#pragma once

#include "core/answers/conditionchange.h"
#include "core/model/words.h"
#include "core/stats/lognormal.h"
#include "core/stats/twolines.h"

#include <optional>
#include <string>
#include <string_view>

namespace slopebook::answers {

enum class Reading { Better, Worse, Held, Unclear, NoFigure };

/// "better", "worse", "held", "unclear", "no figure".
std::string_view word(Reading reading);
Words readingWords(Reading reading);

/// The smallest change that matters and where it came from.
struct Smallest {
    enum class Origin { Squad, Coach, Published };
    double value = 0;
    Origin origin = Origin::Published;
    std::string source = {}; ///< "0.2 x SD of 12 athletes", "coach", a citation
    int athletes = 0;        ///< behind a squad's
    std::optional<stats::Interval> interval = {}; ///< of a squad's, 95 %
};

/// The day-to-day SD of a whole line, m/s, with its degrees of freedom, and where it came from.
struct DayNoise {
    enum class Origin { Athlete, LogLift, Published, None };
    stats::Variance variance = {}; ///< (m/s)^2, with the df its critical value is taken on
    Origin origin = Origin::None;  ///< what has the largest share in it
    std::string source = {};       ///< of the published figure, where one is behind it
    int pairs = 0;                 ///< repeat tests behind it
    /// The published SD, m/s, that it started from; 0: none, and then nothing is known of tilt.
    double published = 0;
    double expected = 0; ///< (m/s)^2, what chances are worked out with; 0: as variance
    int ownPairs = 0, othersPairs = 0;
    bool withBlocks = false;              ///< days of one block are among ownPairs
    double ownShare = 0, othersShare = 0; ///< the rest is the published figure's
    /// What the athlete's SD is likely to be, m/s; none without a published figure.
    std::optional<stats::LogNormal> likely = {};

    /// How much the slope varies from day to day: 2.5 % of it where days are as noisy as published
    /// (tests/README.md, 'Worlds').
    double slopeCv() const;
    /// The variance to be expected over the one that readings take.
    double expectedRatio() const {
        return expected > 0 && variance.value > 0 ? expected / variance.value : 1;
    }
};

/// The level of the interval by which an unclear change leans.
constexpr double leaningLevel = 0.80;

/// A change with the interval its reading is made from.
struct ReadChange {
    double change = 0;
    stats::Interval interval = {};    ///< at the level
    stats::Interval equivalence = {}; ///< at 1 - 2 (1 - level): 90 % for 95 %
    std::optional<Smallest> smallest = {};
    Reading reading = Reading::NoFigure;
    bool beyondSmallest = false; ///< the interval also excludes m
    bool withinSmallest = false; ///< the equivalence interval lies inside -m..+m
    /// At the level, were the line as straight as it is drawn; interval is wider by the bend.
    std::optional<stats::Interval> straight = {};
    /// The least and the most by which the change errs because lines bend; zero without a bend.
    stats::Interval bend = {};
    /// What was different around it, as "on another surface"; empty: nothing that is known of.
    Words under = {};
    /// Why the two days may not be compared; not empty: the reading is NoFigure, its change is told
    /// all the same.
    Words notComparable = {};
    /// At 80 %, with the same parts; where an unclear change's excludes zero it leans.
    std::optional<stats::Interval> at80 = {};
    bool higherIsBetter = true;
    /// Where it is read together with others, which asks for more: what it is by itself.
    std::optional<Reading> byItself = {};
    /// +1 or -1 where it is better or worse by itself and unclear together with others; else 0.
    int clearAlone() const;
    /// +1 or -1 where the reading is unclear and leans to better or to worse; else 0.
    int leans() const;
    /// How much an unclear change says all the same: 2 where it is clear alone, 1 where it leans.
    int tells() const { return clearAlone() != 0 ? 2 : leans() != 0 ? 1 : 0; }
    /// The change as words and marks have it beside the interval: the middle of the interval where
    /// what lines bend moves it off the change as it was read.
    double besideInterval() const;
    /// What such tests could show: half of the interval.
    double shows() const { return (interval.high - interval.low) / 2; }
    /// From this size on a change to the side of the one seen is clear: what lies between it and
    /// the end of the interval that holds zero. Where lines bend the two ends are not as far.
    double clearSize() const;
};

/// The bare reading, for a mark of a chart: "better", "not comparable".
Words shortReading(const ReadChange& read);
/// A reading with where an unclear change leans, or what it is alone: "unclear, better alone".
Words leaningReading(const ReadChange& read);
/// A reading with what was different around it: "better, on another surface"; "not comparable".
/// What is unclear stays as it is: the sentence and the notes tell of it.
Words withUnder(const ReadChange& read, const Words& reading);

/// Gives a reading what was different around it, or that it may not be compared at all.
void setUnder(ReadChange& read, const Under& under);

/// "better, by over 0.03, on another surface": with what the smallest change adds, of so many
/// decimals, and with what was different; "not comparable".
Words readingWords(const ReadChange& read, int decimals);
/// "better, by more than matters": the same where the smallest change stands beside it.
Words sizedReading(const ReadChange& read);

/// The five-way rule. Better or worse first (the interval excludes zero), then held (the
/// equivalence interval lies inside -m..+m), else unclear. higherIsBetter: false for times.
ReadChange read(double change, const stats::Interval& interval, const stats::Interval& equivalence,
                const std::optional<Smallest>& smallest, bool higherIsBetter = true);

/// The level of the two one-sided tests that goes with a level: 0.90 for 0.95.
constexpr double equivalenceLevel(double level) {
    return 1 - 2 * (1 - level);
}

} // namespace slopebook::answers
