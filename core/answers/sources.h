// SPDX-License-Identifier: GPL-3.0-or-later
// Where a figure comes from, as sentences name it: the athlete's own, this log's, the coach's, or
// published and not yours.
#pragma once

#include "core/answers/figures.h"
#include "core/answers/reading.h"
#include "core/model/lift.h"
#include "core/model/words.h"

namespace slopebook::answers {

/// For a sentence: "from memory" stands where sources are listed, and there alone.
template <class Sourced>
Sourced asCited(Sourced figure) {
    figure.source = cited(figure.source);
    return figure;
}

/// "squad: 0.2 x SD of 12 athletes", "the coach's own", "published, not yours: ...".
Words sourceOf(const Smallest& smallest);
/// "the athlete's own: 4 repeat tests", "40 % the athlete's own: 4 repeat tests, 60 % published,
/// not yours: ..."; nothing where no noise is known.
Words sourceOf(const DayNoise& noise);
/// "the athlete's own: mean of 3 true maxima, drawn towards the lift's figure".
Words sourceOf(const Mvt& mvt);

/// Whether it is the scatter within a day that explains all: then there is no SD to name.
bool noneFound(const DayNoise& noise);

} // namespace slopebook::answers
