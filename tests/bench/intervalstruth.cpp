// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the tables 'Truth of the intervals' of tests/README.md: slopebook_truth [--runs N]
#include "tests/answers/truth.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <span>

using namespace slopebook::tests;

namespace {

struct Column {
    const char* title;
    const char* question;
};

constexpr Column oneDay[]{
    {"slope", "slope"},
    {"line, lightest load", "speed at the lightest load"},
    {"line, all loads", "band of the line, all loads"},
    {"1RM", "1RM (Fieller's set, whatever its shape)"},
    {"1RM with the MVT's SD", "1RM, the threshold's SD in it"},
    {"change, lightest load", "change at the lightest common load"},
    {"change, heaviest", "change at the heaviest common load"},
    {"change, all loads", "band of the change, all loads"},
    {"1RM change", "1RM change, where it is shown"},
    {"or none shown", "1RM change, or none shown"},
    {"differ where they cross", "said to differ where they truly cross"},
    {"one line: differ, lightest", "no change: said to differ at the lightest common load"},
    {"middle", "no change: said to differ in the middle"},
    {"heaviest", "no change: said to differ at the heaviest common load"},
    {"anywhere, by the band", "no change: said to differ anywhere, by the band"},
};

constexpr Column days[]{
    {"change, lightest load", "change at the lightest common load"},
    {"these two days only", "(change at the lightest common load, these two days only)"},
    {"change, heaviest", "change at the heaviest common load"},
    {"these two days only", "(change at the heaviest common load, these two days only)"},
    {"change, all loads", "band of the change, all loads"},
    {"these two days only", "(band of the change, these two days only)"},
    {"1RM change", "1RM change, where it is shown"},
    {"these two days only", "(1RM change, these two days only)"},
};

/// Separate variances cost fifty times as much: a fifth as many.
long runsOf(const TruthCase& played, long runs) {
    return played.variances == slopebook::stats::Variances::Separate ? std::max(1L, runs / 5)
                                                                     : runs;
}

void printTable(bool withDays, long runs) {
    const std::span<const Column> columns =
        withDays ? std::span<const Column>(days) : std::span<const Column>(oneDay);
    std::printf("| case, %% | runs |");
    for (const Column& column : columns)
        std::printf(" %s |", column.title);
    std::printf("\n|---|---:|");
    for (std::size_t i = 0; i < columns.size(); ++i)
        std::printf("---:|");
    std::printf("\n");
    std::uint64_t seed = 0;
    for (const TruthCase& played : truthCases()) {
        ++seed;
        if ((played.daySd > 0) != withDays)
            continue;
        const long times = runsOf(played, runs);
        const auto tallies = playTruth(played, times, seed);
        std::printf("| %s | %ld |", played.name.c_str(), times);
        for (const Column& column : columns) {
            const auto found = std::ranges::find(tallies, column.question, &TruthTally::question);
            if (found == tallies.end())
                std::printf(" |");
            else
                std::printf(" %.2f |", found->percent());
        }
        std::printf("\n");
        std::fflush(stdout);
    }
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app("Counts how often the 95 % intervals are right on made sessions of known truth");
    long runs = 20000;
    app.add_option("--runs", runs,
                   "made pairs of sessions for each case; a fifth as many for separate variances")
        ->check(CLI::PositiveNumber);
    CLI11_PARSE(app, argc, argv);
    printTable(false, runs);
    std::printf("\n");
    printTable(true, runs);
    return 0;
}
