// SPDX-License-Identifier: GPL-3.0-or-later
// Counts how often a reading is wrong on made logs whose truth is known: one athlete, two sessions,
// a day-to-day SD that is published or comes from the athlete's own repeat tests.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace slopebook::tests {

struct ReadingsCase {
    int points = 5;      ///< of each ladder
    double daySd = 0;    ///< true, m/s
    int repeatTests = 0; ///< 0: the day-to-day SD is known, as a published one is taken to be
    std::string name() const;
};

/// How often one reading was wrongly said.
struct ReadingsTally {
    std::string question;
    long asked = 0;
    long falseChange = 0; ///< better or worse, with no true change
    long falseHeld = 0;   ///< held, with a true change of the smallest one that matters
    double changePercent() const { return 100.0 * double(falseChange) / double(asked); }
    double heldPercent() const { return 100.0 * double(falseHeld) / double(asked); }
};

/// 3 and 5 points; day-to-day SD 0, 0.010 and 0.025 m/s; known, and from 3, 4, 8 and 20 repeat
/// tests.
std::vector<ReadingsCase> readingsCases();

/// The check load in the ladder's middle, the one at its end, and the estimated 1RM.
std::vector<ReadingsTally> playReadings(const ReadingsCase& played, long runs, std::uint64_t seed);

} // namespace slopebook::tests
