// SPDX-License-Identifier: GPL-3.0-or-later
// The one sentence that leads a comparison: first what it tells of, then in words.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/figures.h"

#include <vector>

namespace slopebook::answers {

/// Neighbouring loads that share a reading.
struct Clause {
    Reading reading = Reading::Unclear;
    double fromLoad = 0, toLoad = 0;              ///< kg
    double smallestChange = 0, largestChange = 0; ///< m/s, of the estimates in it
    bool beyondSmallest = false, withinSmallest = false;
};

struct SentenceParts {
    std::vector<Clause> clauses = {}; ///< by load, over the loads inside what both sessions cover
    bool noOverlap = false;
    std::optional<OneRmChange> oneRm = {}; ///< absent: no figure, see oneRmReason
    Words oneRmReason = {};
    double reachFrom = 0, reachTo = 0; ///< said wherever below 0.80
};

/// Clauses are made of Comparison::at inside the common loads; where it has fewer than two there,
/// of the lightest and the heaviest common load too.
SentenceParts sentenceParts(const Comparison& comparison);

/// "Faster from 40 to 65 kg (by 0.05 to 0.09 m/s); no clear change above; estimated max held: -0.8
/// kg (-3.9 to +2.3)."
Words sentence(const SentenceParts& parts);

} // namespace slopebook::answers
