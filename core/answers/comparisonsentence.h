// SPDX-License-Identifier: GPL-3.0-or-later
// The one sentence that leads a comparison: first what it tells of, then in words.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/figures.h"

#include <vector>

namespace slopebook::answers {

/// What an unclear stretch comes to at its most telling load.
struct Telling {
    double load = 0;               ///< kg
    double change = 0;             ///< m/s
    stats::Interval interval = {}; ///< of it
    double shows = 0;              ///< from this size on a change is clear
    int leans = 0;                 ///< ReadChange::leans
    int alone = 0;                 ///< ReadChange::clearAlone
};

/// Neighbouring loads that share a reading.
struct Clause {
    Reading reading = Reading::Unclear;
    double fromLoad = 0, toLoad = 0;              ///< kg
    double smallestChange = 0, largestChange = 0; ///< m/s, of the estimates in it
    bool beyondSmallest = false, withinSmallest = false;
    std::optional<double> smallest = {}; ///< m/s, that matters: the least of its loads
    std::optional<Telling> telling = {}; ///< of an unclear one
};

/// A load that was tried on a day and not lifted.
struct LoadNotLifted {
    Mass load = {};
    Date date = {};
    int ordinal = 1;
};

struct SentenceParts {
    Words heldAgainst = {};           ///< days or blocks, each change alone; said first
    std::vector<Clause> clauses = {}; ///< by load, over the loads inside what both sessions cover
    bool noOverlap = false;
    std::optional<OneRmChange> oneRm = {}; ///< absent: no figure, see oneRmReason
    Words oneRmReason = {};
    double reachFrom = 0, reachTo = 0; ///< said wherever below 0.80
    /// Where loads too light leave the change of the max within so wide an interval, in % of the
    /// earlier estimate, that nothing is said of it: in place of oneRm, after the loads.
    std::optional<stats::Interval> nothingOfMax = {};
    bool lightLater = false;                   ///< by the later loads (else by the earlier)
    std::vector<LoadNotLifted> notLifted = {}; ///< the lightest of each day
    Words under = {};                          ///< what was different around it (ReadChange::under)
    Words notComparable = {};                  ///< why nothing else is told; empty: all of it is
};

/// Whether what was different (underWords()) is one condition: "than before" does not follow a
/// list.
bool ofOneCondition(const Words& under);

/// An interval of the max's change this many % of it to a side or wider says nothing where a line
/// that was drawn far beyond its loads makes it (2.5 smallest changes; a choice of this program).
constexpr double saysNothingFrom = 10;

/// Clauses are made of Comparison::at inside the common loads; where it has fewer than two there,
/// of the lightest and the heaviest common load too.
SentenceParts sentenceParts(const Comparison& comparison);

/// "Faster from 40 to 65 kg (by 0.05 to 0.09 m/s); no clear change above; estimated max held: -0.8
/// kg (-3.9 to +2.3)."
Words sentence(const SentenceParts& parts);
Headline headline(const SentenceParts& parts);

/// Gives a comparison both.
void tellSentence(Comparison& comparison);

} // namespace slopebook::answers
