// SPDX-License-Identifier: GPL-3.0-or-later
// How readings hold in worlds that are not the model: slopebook_worlds [PAIRS [PART OF A NAME
// [PAIRS OF A CHANGE]]]
#include "tests/answers/worlds.h"

#include <cstdio>
#include <cstdlib>
#include <string>

int main(int argc, char** argv) {
    const long pairs = argc > 1 ? std::strtol(argv[1], nullptr, 10) : 4000;
    const std::string part = argc > 2 ? argv[2] : "";
    const long changed = argc > 3 ? std::strtol(argv[3], nullptr, 10) : pairs;
    if (pairs < 1 || changed < 0) {
        std::fputs("slopebook_worlds [PAIRS [PART OF A NAME [PAIRS OF EACH TRUE CHANGE]]]\n",
                   stderr);
        return 2;
    }
    std::printf(
        "| world | false at a load, of the 1RM, anything | lines as straight: load, 1RM | "
        "wrong way | false held | half-width m/s, %% 1RM | power at m/2m: loads, 1RM | to "
        "plan with: holds, half-width, line alone %% 1RM |\n|---|---|---|---|---|---|---|---|\n");
    std::uint64_t seed = 500;
    for (const auto& world : slopebook::tests::worlds()) {
        ++seed;
        if (world.name.find(part) == std::string::npos)
            continue;
        const auto t = slopebook::tests::play(world, pairs, seed, changed);
        std::printf("| %s%s | %.1f, %.1f, %.1f | %.1f, %.1f | %.1f, %.1f | %.1f, %.1f | %.3f, %.1f "
                    "| %.0f/%.0f, %.0f/%.0f | %.1f, %.1f, %.1f |\n",
                    world.name.c_str(),
                    world.biased  ? " (own, biased)"
                    : world.tuned ? ""
                                  : " (own)",
                    t.falseLoad, t.falseMax, t.falseAny, t.straightFalseLoad, t.straightFalseMax,
                    t.wrongLoad, t.wrongMax, t.falseHeldLoad, t.falseHeldMax, t.halfLoad, t.halfMax,
                    t.powerLoad, t.powerLoadTwice, t.powerMax, t.powerMaxTwice, t.coverPlan,
                    t.widthPlan, t.widthOld);
        std::fflush(stdout);
    }
    return 0;
}
