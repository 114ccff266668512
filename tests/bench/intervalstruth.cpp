// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the table 'Truth of the intervals' of tests/README.md: slopebook_truth [--runs N]
#include "tests/answers/truth.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdio>

using namespace slopebook::tests;

namespace {

/// Separate variances cost fifty times as much: a fifth as many.
long runsOf(const TruthCase& played, long runs) {
    return played.variances == slopebook::stats::Variances::Separate ? std::max(1L, runs / 5)
                                                                     : runs;
}

void printRow(const TruthCase& played, const TruthTally& t) {
    std::printf("| %s | %s | %ld | %.2f | ", played.name.c_str(), t.question.c_str(), t.asked,
                t.percent());
    if (!t.bound.isOne())
        std::printf("told |\n");
    else if (t.bound.most >= 100)
        std::printf("%g or more |\n", t.bound.least);
    else if (t.bound.least <= 0)
        std::printf("%g or less |\n", t.bound.most);
    else
        std::printf("%g to %g |\n", t.bound.least, t.bound.most);
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app("Counts how often the 95 % intervals are right on made sessions of known truth");
    long runs = 20000;
    app.add_option("--runs", runs,
                   "made pairs of sessions for each case; a fifth as many for separate variances")
        ->check(CLI::PositiveNumber);
    CLI11_PARSE(app, argc, argv);
    std::printf("| case | question | asked | yes, %% | bound |\n|---|---|---:|---:|---|\n");
    std::uint64_t seed = 1;
    for (const TruthCase& played : truthCases()) {
        for (const TruthTally& tally : playTruth(played, runsOf(played, runs), seed++))
            printRow(played, tally);
        std::fflush(stdout);
    }
    return 0;
}
