// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the table 'Truth of the readings' of tests/README.md: slopebook_truth_readings [RUNS]
#include "tests/answers/readingstruth.h"

#include <cstdio>
#include <cstdlib>

using namespace slopebook::tests;

int main(int argc, char** argv) {
    const long runs = argc > 1 ? std::atol(argv[1]) : 20000;
    if (runs < 1) {
        std::fputs("usage: slopebook_truth_readings [RUNS]\n", stderr);
        return 2;
    }
    std::printf("| case (%ld runs) | question | changed, %% | held, %% |\n|---|---|---|---|\n",
                runs);
    std::uint64_t seed = 1;
    for (const ReadingsCase& played : readingsCases()) {
        for (const ReadingsTally& tally : playReadings(played, runs, seed))
            std::printf("| %s | %s | %.2f | %.2f |\n", played.name().c_str(),
                        tally.question.c_str(), tally.changePercent(), tally.heldPercent());
        std::fflush(stdout);
        ++seed;
    }
    return 0;
}
