// SPDX-License-Identifier: GPL-3.0-or-later
// Made seasons whose truth is known, read as a matrix: three blocks, twelve measures (three lifts
// at three loads and their 1RM), days that are alike from one to the next.
#pragma once

#include "core/answers/seasonsource.h"

#include <cstdint>
#include <string>
#include <vector>

namespace slopebook::tests {

struct SeasonWorld {
    std::string name = {};
    int sessions = 1;               ///< a block
    std::vector<int> perBlock = {}; ///< or so many, one a block
    int blocks = 3;
    int lightDays = 0;       ///< of them, the last ones: light sets of an ordinary day
    bool lightBlock = false; ///< the last block holds nothing else
    bool missing = false;    ///< the first lift was not done in the second block
    bool bend = false;       ///< athletes bend by 0 to 1 of the published curves, and it is allowed
    double phi = 0.5;        ///< correlation of one day with the next
    double day = 1;          ///< SD of days over the published one, the mean of athletes
    double tau = 0.45;       ///< log SD between athletes of the SD of their days
    bool heavy = false;      ///< days are t on 3 df, of the same SD
    double tilt = 0.025;     ///< SD of a day's slope as a share of it
    double scatter = 1;      ///< of every other athlete's points, times what others' have
    double trend = 0;        ///< m/s over a block, from its first day to its last and back again
    double gain = 0;         ///< m/s in the last block
    /// What the rule was made for: at most 5 % false; false: told, and not held.
    bool held = true;
    /// And days are as alike, and athletes as different, as the count by chance takes them to be.
    bool counted = true;
};
/// 1 to 8 sessions a block as assumed, and those that break it.
std::vector<SeasonWorld> seasonWorlds();

/// One season of the world, of a lift an athlete would have it: what the matrix is made from.
answers::SeasonSource madeSeason(const SeasonWorld& world, std::uint64_t seed);

/// A share or a mean over seasons, with its standard error: seasons are the clusters, for the
/// measures of one are alike.
struct OverSeasons {
    double mean = 0, se = 0;
};

struct SeasonTally {
    long seasons = 0;
    OverSeasons falseMeasure; ///< %, of a measure over its blocks against the first: better, worse
    OverSeasons falseLoads, falseMaxima; ///< likewise of speeds and of 1RM alone
    OverSeasons falseBefore;             ///< %, likewise against the block before
    OverSeasons falseEither;             ///< %, in one of the two
    OverSeasons found;                   ///< better or worse a season, against the first
    OverSeasons byChance;                ///< what the matrix says chance alone gives, a season
    OverSeasons ratio = {};              ///< byChance over found
    double power = 0;                    ///< %, better at the loads in the last block
    double powerMax = 0;                 ///< of the 1RM
    double halfLoad = 0;                 ///< m/s, mean half-width of those
    double halfMax = 0;                  ///< kg, of the 1RM that are bounded
};
SeasonTally playSeasons(const SeasonWorld& world, long seasons, std::uint64_t seed);

} // namespace slopebook::tests
