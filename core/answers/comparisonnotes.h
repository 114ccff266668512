// SPDX-License-Identifier: GPL-3.0-or-later
// The remarks that go with a comparison: where its noise and its smallest changes came from, what
// to beware of.
#pragma once

#include "core/answers/comparison.h"

#include <vector>

namespace slopebook::answers {

/// The notes of a comparison whose other parts are whole; of the 1RM: those that its change made.
std::vector<Note> comparisonNotes(const Comparison& comparison, std::vector<Note> ofTheOneRm);

/// Where a change is told of what was seen at a load, for want of a line.
Note asSeenNote();
/// The day-to-day noise in the readings and where it comes from; that there is none.
Note dayNoiseNote(const DayNoise& noise);
/// The same as words.
Words dayNoiseWords(const DayNoise& noise);
/// Each smallest change that matters, and whose it is.
std::vector<Words> smallestWords(const Comparison& comparison);
/// Those of them that are published, cited, each publication once.
std::vector<Words> smallestCitations(const Comparison& comparison);
/// What of that noise is published, cited: behind the others.
void citeDayNoise(const DayNoise& noise, std::vector<Note>& notes);
/// The smallest change of speed that matters and whose it is.
Note smallestSpeedNote(const Smallest& smallest);
/// Where it is published, cited: behind the others, once for all that share the publication.
void citeSmallest(const Smallest& smallest, std::vector<Note>& notes);
/// That intervals are at another level than usual.
Note levelNote(double level);

} // namespace slopebook::answers
