// SPDX-License-Identifier: GPL-3.0-or-later
// Where a figure comes from, as sentences name it: the athlete's own, this log's, the coach's, or
// published and not yours.
#pragma once

#include "core/answers/figures.h"
#include "core/answers/reading.h"
#include "core/model/lift.h"
#include "core/model/words.h"

#include <vector>

namespace slopebook::answers {

/// For a sentence: "from memory" stands where sources are listed, and there alone.
template <class Sourced>
Sourced asCited(Sourced figure) {
    figure.source = cited(figure.source);
    return figure;
}

/// A source of the shipped figures as the window's language says it; any other as it is written.
Words sourceWords(const std::string& source);

/// "0.2 x robust SD of 12 athletes", "the coach's own", or the citation: where a line holds the
/// source and nothing else.
Words wholeSourceOf(const Smallest& smallest);
/// "squad: 0.2 x SD of 12 athletes", "the coach's own", "published, not yours". What is published
/// is cited behind (citationOf).
Words sourceOf(const Smallest& smallest);
/// "published smallest change that matters: ...", for where sources are listed; empty where it is
/// nobody's publication.
Words citationOf(const Smallest& smallest);
/// What is told of one change beside its row: whose it is, and the citation behind.
std::vector<Words> smallestTold(const Smallest& smallest);
/// "the athlete's own: 4 repeat tests", "40 % the athlete's own: 4 repeat tests, 60 % published,
/// not yours"; nothing where no noise is known. What is published is cited behind (citationOf).
Words sourceOf(const DayNoise& noise);
/// "published day-to-day noise: ...", for where sources are listed; empty where none is in it.
Words citationOf(const DayNoise& noise);
/// "the athlete's own: mean of 3 true maxima, drawn towards the lift's figure", "published, not
/// yours".
Words sourceOf(const Mvt& mvt);
/// "published MVT: ...", for where sources are listed; empty where it is nobody's publication.
Words citationOf(const Mvt& mvt);
/// Both in one, "published, not yours: ...", where a field holds the source and nothing else.
Words wholeSourceOf(const Mvt& mvt);

/// Whether it is the scatter within a day that explains all: then there is no SD to name.
bool noneFound(const DayNoise& noise);

} // namespace slopebook::answers
