// SPDX-License-Identifier: GPL-3.0-or-later
// Made seasons whose truth is known, read as a matrix: three blocks, twelve measures (three lifts
// at three loads and their 1RM), days that are alike from one to the next.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace slopebook::tests {

struct SeasonWorld {
    std::string name = {};
    int sessions = 1;    ///< a block
    int lightDays = 0;   ///< of them, the last ones: light sets of an ordinary day
    double phi = 0.5;    ///< correlation of one day with the next
    double tau = 0.45;   ///< log SD between athletes of the SD of their days
    double tilt = 0.025; ///< SD of a day's slope as a share of it
    double trend = 0;    ///< m/s over a block, from its first day to its last and back again
    double gain = 0;     ///< m/s in the last block
    bool assumed = true; ///< what the rule was made for; false: told, and not held
};
/// 1 to 8 sessions a block as assumed, and those that break it.
std::vector<SeasonWorld> seasonWorlds();

struct SeasonTally {
    long seasons = 0;
    double falseMeasure = 0; ///< %, of a measure over its blocks against the first: better or worse
    double falseBefore = 0;  ///< %, likewise against the block before
    double found = 0;        ///< better or worse a season, against the first
    double byChance = 0;     ///< what the matrix says chance alone gives, a season
    double power = 0;        ///< %, better at the loads in the last block
    double powerMax = 0;     ///< of the 1RM
    double halfLoad = 0;     ///< m/s, mean half-width of those
};
SeasonTally playSeasons(const SeasonWorld& world, long seasons, std::uint64_t seed);

} // namespace slopebook::tests
