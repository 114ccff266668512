// SPDX-License-Identifier: GPL-3.0-or-later
// Worlds that are not the model: pairs of made sessions whose truth is known, read by the program.
// Days move and tilt and differ by athlete, light loads scatter more, athletes bend, ladders
// differ, reps differ.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::tests {

/// An athlete's own relation in place of a published curve: speed at the 1RM, and what it gains
/// with every % of the 1RM less, and with that squared.
struct Shape {
    double atMax = 0, slope = 0, square = 0; ///< m/s, m/s a %, m/s a % squared
};

struct World {
    std::string name = {};
    std::string relation = "Bench press"; ///< of the truth, propulsive unless kind says else
    std::optional<Shape> shape = {};      ///< of the truth instead; the lift is named all the same
    bool mean = false;                    ///< mean velocity's relation
    std::vector<double> earlier = {}, later = {}; ///< loads, % of the athlete's 1RM
    double day = 1;                               ///< SD of a day's level, times the shipped day SD
    double tau = 0;                               ///< log SD between athletes of that SD
    double tilt = 0;                              ///< SD of a day's slope as a share of it
    double pivot = 60;                            ///< % of the 1RM that days tilt about
    double noise = 0.012;                         ///< SD of a point about its day's line, m/s
    double wide = 0; ///< light loads: noise x (1 + wide x how far under 60 %, in 40 %)
    int repsEarlier = 1, repsLater = 1;
    double kappaLow = 0, kappaHigh = 0; ///< of the athletes' bend, uniform
    bool narrow = false;                ///< the athlete has three full ladders of their own before
    bool tuned = true;   ///< one of the design's; false: nobody has tuned anything to it
    bool biased = false; ///< a line reads this athlete wrong, as in some studies: told, not held
};

/// The 34 worlds of the design, and others of our own that nobody has tuned to.
std::vector<World> worlds();

/// How often what was said, in %, of so many pairs; loads: the worst of three inside the shared
/// stretch.
struct WorldTally {
    long pairs = 0;
    double falseLoad = 0, falseMax = 0, falseAny = 0; ///< better or worse of nothing
    double wrongLoad = 0, wrongMax = 0;               ///< the wrong way, with a true change
    double falseHeldLoad = 0, falseHeldMax = 0;       ///< held, with a true change of the smallest
    double powerLoad = 0, powerLoadTwice = 0;         ///< of a change of m and 2 m
    double powerMax = 0, powerMaxTwice = 0;
    double coverPlan = 0; ///< the interval to plan with holds the session's truth; unbounded: yes
    double widthPlan = 0,
           widthOld = 0;              ///< medians of its half-width and of the line's alone, % 1RM
    double halfLoad = 0, halfMax = 0; ///< mean m/s, median % 1RM
    double straightFalseLoad = 0, straightFalseMax = 0; ///< had lines been taken as straight
};
/// The same seed plays the same pairs. changed: so many pairs for each true change; 0: none is
/// played, and what is told of them is 0.
WorldTally play(const World& world, long pairs, std::uint64_t seed, long changed = 0);

} // namespace slopebook::tests
