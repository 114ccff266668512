// SPDX-License-Identifier: GPL-3.0-or-later
// Counts how often intervals and statements are right on made sessions whose truth is known.
#pragma once

#include "core/stats/twolines.h"
#include "tests/answers/madelog.h"

#include <cstdint>
#include <string>
#include <vector>

namespace slopebook::tests {

/// What a share must be, in percent; one-sided where a rule is cautious by construction.
struct Bound {
    double least = 0, most = 100;
    bool isOne() const { return least > 0 || most < 100; }
};

/// How often one thing was so.
struct TruthTally {
    std::string question;
    Bound bound; ///< none: told, not required
    long asked = 0;
    long hits = 0;
    double percent() const { return 100.0 * double(hits) / double(asked); }
};

/// Two sessions and how they are compared. With a day-to-day SD the readings' intervals are
/// counted, with that SD taken as known or from repeat tests, and those of the two days alone
/// beside them.
struct TruthCase {
    std::string name = {};
    TrueSession first = {}, second = {};
    stats::Variances variances = stats::Variances::Pooled;
    bool modelHolds = true; ///< else the changes are told, not required
    double daySd = 0;       ///< m/s
    int repeatTests = 0;    ///< 0: the day-to-day SD is known, as a published one is taken to be
};

/// Ladders of 5, 3 and light loads, unequal scatter, and days that differ.
std::vector<TruthCase> truthCases();

/// Plays a case runs times; only the questions that it asks.
std::vector<TruthTally> playTruth(const TruthCase& played, long runs, std::uint64_t seed);

/// Whether the simultaneous band holds the true difference at every load, by the load at which it
/// is nearest to failing (pooled variances).
bool bandHoldsEverywhere(const stats::TwoLines& lines, const TrueSession& first,
                         const TrueSession& second, double level);

} // namespace slopebook::tests
