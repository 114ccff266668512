// SPDX-License-Identifier: GPL-3.0-or-later
// The table 'Seasons' of tests/README.md: slopebook_seasons [seasons a world], 2000 where left out.
#include "tests/answers/seasonworlds.h"

#include <cstdio>
#include <cstdlib>

using namespace slopebook;

int main(int argc, char** argv) {
    const long seasons = argc > 1 ? std::atol(argv[1]) : 2000;
    std::printf("| world | false, first | false, before | found | by chance | m seen | of 1RM | "
                "half-width |\n");
    std::uint64_t seed = 40;
    for (auto world : tests::seasonWorlds()) {
        const auto nothing = tests::playSeasons(world, seasons, ++seed);
        world.gain = 0.06;
        const auto gained = tests::playSeasons(world, seasons / 2, seed);
        std::printf("| %s | %.1f | %.1f | %.2f | %.2f | %.0f | %.0f | %.3f |\n", world.name.c_str(),
                    nothing.falseMeasure, nothing.falseBefore, nothing.found, nothing.byChance,
                    gained.power, gained.powerMax, nothing.halfLoad);
        std::fflush(stdout);
    }
    return 0;
}
