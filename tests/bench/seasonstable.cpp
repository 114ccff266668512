// SPDX-License-Identifier: GPL-3.0-or-later
// The table 'Seasons' of tests/README.md: slopebook_seasons [seasons a world [part of a name]],
// 2000 where left out; a quarter as many show the power. Then how long a matrix takes.
#include "tests/answers/seasonworlds.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>

using namespace slopebook;

namespace {

void timeMatrix() {
    using Clock = std::chrono::steady_clock;
    const auto source = tests::madeSeason({.sessions = 8, .blocks = 5}, 3);
    double least = 1e9;
    for (int i = 0; i < 20; ++i) {
        const auto start = Clock::now();
        const auto matrix = answers::seasonMatrix(source);
        const double ms = std::chrono::duration<double, std::milli>(Clock::now() - start).count();
        if (matrix.rows.size() >= 12 && ms < least)
            least = ms;
    }
    std::printf("\n12 measures over 40 sessions, 5 blocks: %.1f ms\n", least);
}

} // namespace

int main(int argc, char** argv) {
    const long seasons = argc > 1 ? std::atol(argv[1]) : 2000;
    const std::string part = argc > 2 ? argv[2] : "";
    std::printf(
        "| world | false %% (SE): loads, 1RM | from block to block, either %% | found (SE), "
        "by chance, ratio (SE) | m seen %%: loads, 1RM | half-width m/s, kg |\n"
        "|---|---|---|---|---|---|\n");
    std::uint64_t seed = 40;
    for (auto world : tests::seasonWorlds()) {
        ++seed;
        if (world.name.find(part) == std::string::npos)
            continue;
        const auto t = tests::playSeasons(world, seasons, seed);
        world.gain = 0.06;
        const auto gained = tests::playSeasons(world, seasons / 4, seed);
        std::printf(
            "| %s%s | %.1f (%.1f): %.1f, %.1f | %.1f, %.1f | %.2f (%.2f), %.2f, %.2f (%.2f) "
            "| %.0f, %.0f | %.3f, %.1f |\n",
            world.name.c_str(), world.held ? world.counted ? "" : " *" : " **", t.falseMeasure.mean,
            t.falseMeasure.se, t.falseLoads.mean, t.falseMaxima.mean, t.falseBefore.mean,
            t.falseEither.mean, t.found.mean, t.found.se, t.byChance.mean, t.ratio.mean, t.ratio.se,
            gained.power, gained.powerMax, t.halfLoad, t.halfMax);
        std::fflush(stdout);
    }
    if (part.empty())
        timeMatrix();
    return 0;
}
