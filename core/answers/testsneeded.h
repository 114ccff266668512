// SPDX-License-Identifier: GPL-3.0-or-later
// What would make an unclear change clear: how many tests of the same ladder, on one day or on
// separate days, until a change that matters, or none, would be said with a good chance.
#pragma once

#include "core/answers/uncertainty.h"
#include "core/model/mass.h"
#include "core/model/words.h"
#include "core/stats/twolines.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::answers {

/// What is needed to turn an unclear change clear. In one unit: m/s for a speed, kg for a 1RM.
struct RepeatsQuestion {
    stats::Variance earlier;       ///< of the earlier test's value (line alone)
    stats::Variance later;         ///< of one later test's value; shares its df with earlier
    stats::Variance day;           ///< of one day, as readings take it
    double dayExpected = 0;        ///< of one day, as it is expected to be; 0: as day
    double span = 0;               ///< of what bent lines may make wrong, whatever is repeated
    stats::Variance standing = {}; ///< what no number of tests lessens: a device's bias
    double smallest = 0;           ///< the smallest change that matters
    double level = 0.95;
    double power = 0.80;
    int most = 20;       ///< tests of a side
    int mostSameDay = 4; ///< times a ladder is lifted on one day
};

/// Of a change that these parts make uncertain, its days to be as noisy as the noise is expected.
RepeatsQuestion repeatsQuestion(const ChangeParts& parts, const DayNoise& noise, double smallest,
                                double level);

/// Number of later tests (1: as it is), or of tests on each side, until the chance of a clear
/// reading reaches the power. Absent: not within `most`.
struct Repeats {
    std::optional<int> changeLater = {}, changeBoth = {}; ///< if the change truly is `smallest`
    std::optional<int> heldLater = {}, heldBoth = {};     ///< if there truly is none
    /// The later ladder so many times on its one day, the day's own noise with it.
    std::optional<int> changeSameDay = {}, heldSameDay = {};
    double chanceNow = 0; ///< of better or worse, one test on each side, a true change of smallest
    double chanceHeldNow = 0; ///< of held, with no true change
};
/// Chances averaged over the scatter (core/stats/power.h), for held by two one-sided tests. Days
/// near each other are alike (their correlation 0.5 from one to the next: the mean of K days has
/// C / K of a day's variance, C = 1 + 2 sum (1 - i/K) 0.5^i), and tests that are repeated say
/// themselves how much days vary. Agrees with R (tests/reference/settle.R). Throws BadInput without
/// a smallest change.
Repeats repeatsToSettle(const RepeatsQuestion& question);

/// The least work that settles a change whichever it is, one of `smallest` or none: each would then
/// be said with the question's power.
struct Settling {
    enum class By {
        SameDay,   ///< the later ladder `times` times on its day
        Later,     ///< the mean of `times` later tests on separate days
        BothSides, ///< `times` tests before and as many after
        OneMore,   ///< one test each had the power already: the change is likely smaller than
                   ///< smallest, or the chance was missed; one more later test
        Nothing    ///< not within the question's most
    };
    By by = By::Nothing;
    int times = 0;
    friend bool operator==(const Settling&, const Settling&) = default;
};
Settling settling(const Repeats& repeats);

/// How several tests are asked for as one: which two sides to compare, as they are typed.
struct MeanOfTests {
    std::string from = {};
    std::string to = {}; ///< a block, or days; of a test alone that no block holds, its day
    bool block = false;  ///< `to` is one
    int tests = 0;       ///< that lie in `to`; 1: the further ones are still to be done
    friend bool operator==(const MeanOfTests&, const MeanOfTests&) = default;
};
/// "3 tests lie in Spring: compare 2026-01-12 with it".
Words meanWords(const MeanOfTests& mean);

/// Unclear changes that the same would settle.
struct Unsettled {
    std::vector<Mass> loads = {};    ///< ascending; none: of the estimated 1RM
    double smallest = 0;             ///< m/s, or kg of a 1RM; 0: none is known
    stats::Interval chance = {};     ///< of seeing a change of smallest, over the loads
    stats::Interval chanceHeld = {}; ///< of calling none held
    Settling settling = {};
    int most = 0;                         ///< tests of a side that were looked at
    std::optional<MeanOfTests> mean = {}; ///< how more later tests are compared
};
/// Of one change; without a question (no smallest change is known) it says so by smallest 0.
Unsettled unsettled(const std::vector<Mass>& loads, const std::optional<RepeatsQuestion>& question);

/// "60 kg: a true change of 0.060 m/s is seen with a chance of 34 %, no change with 0 %;
/// the mean of 3 later tests on separate days would settle it; 2 tests lie in Spring: compare
/// 2026-01-12 with it".
Words settlingWords(const Unsettled& unsettled);

} // namespace slopebook::answers
