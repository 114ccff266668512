// SPDX-License-Identifier: GPL-3.0-or-later
// Attempts that are probably slips of the finger: a decimal mark forgotten, centimetres for metres,
// a digit twice. Asked about and never changed.
#pragma once

#include "core/model/battery.h"
#include "core/model/words.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

/// A number that is far from what it usually is.
struct AttemptDoubt {
    std::size_t attempt = 0;       ///< which of those typed
    bool contact = false;          ///< its contact time, else its first number
    double typed = 0;              ///< as typed
    double low = 0, high = 0;      ///< the usual
    std::optional<double> perhaps; ///< typed over 10, 100 or 1000, or times 10, where that is usual
    friend bool operator==(const AttemptDoubt&, const AttemptDoubt&) = default;
};

/// The first of the typed attempts that is unusual. Usual is: from 1/1.6 of the least to 1.6 of the
/// greatest that the athlete has so far of the test (earlier, which counts and comes in the test's
/// own readings); without such, what a body can do (common practice); with neither, everything.
std::optional<AttemptDoubt> doubtOf(const TestKind& kind, const std::vector<Attempt>& typed,
                                    const std::vector<Attempt>& earlier);

/// What is doubted, and what may be meant, a sentence each; knownAthlete: whether it is the
/// athlete's own earlier attempts that say what is usual. "180 is far from this athlete's others
/// (1.12 to 3.04).", "Is 1.8 meant?".
std::vector<Words> attemptDoubtWords(const AttemptDoubt& doubt, bool knownAthlete);

} // namespace slopebook::answers
