// SPDX-License-Identifier: GPL-3.0-or-later
// Several readings in one sentence: "better: bench pull at 40 kg (+0.05 m/s); held: ...".
#pragma once

#include "core/answers/seasonmatrix.h"

#include <vector>

namespace slopebook::answers {

struct NamedReading {
    Reading reading = Reading::NoFigure;
    Words name = {}; ///< what is read, with its figures
    int tells = 0;   ///< of an unclear change: ReadChange::tells()
};
/// Unclear is never told as a bare word: with what it came to and from what size on a change would
/// be clear.
NamedReading namedReading(const Words& name, const Measure& measure, const ReadChange& read);

/// The same of a cell, with whether it stands among all.
NamedReading namedReading(const Words& name, const Measure& measure, const CellChange& change);

/// A clause for each reading there is, best first, with no more than three names; what has no
/// figure is left out.
std::vector<Words> toldReadings(const std::vector<NamedReading>& all);

} // namespace slopebook::answers
