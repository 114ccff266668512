// SPDX-License-Identifier: GPL-3.0-or-later
// What a season's matrix and a squad take, on a made log: slopebook_bench_season. ms of the
// processor, medians; contexts kept, as the window keeps them.
#include "core/log/log.h"
#include "core/questions/keptcontext.h"
#include "core/questions/seasonquestions.h"
#include "tests/bench/biglog.h"
#include "tests/bench/timing.h"

#include <cstdio>
#include <filesystem>
#include <map>
#include <string>
#include <unistd.h>

namespace {

using namespace slopebook;
namespace fs = std::filesystem;

/// An athlete's season of 40 sessions, and the squads of 40 that each lift has over the years.
void askSeasons(const fs::path& folder) {
    const bench::Institute institute{.sessions = 4800, .sessionsAnAthlete = 40};
    const fs::path file = folder / "seasons.slopebook";
    bench::writeInstitute(file, institute);
    const log::Log log = log::Log::open(file);
    std::map<LiftId, questions::KeptContext> contexts;
    const questions::ContextOf contextOf = [&](LiftId lift) -> const questions::LiftContext& {
        return contexts.try_emplace(lift, lift).first->second.of(log);
    };
    const AthleteId athlete{institute.athletes() / 2};
    std::size_t rows = 0, blocks = 0;
    const auto matrix = [&] {
        const auto answer = questions::seasonMatrixOf(log, contextOf, athlete, {}, {});
        if (answer) {
            rows = answer->matrix.rows.size();
            blocks = answer->matrix.blocks.size();
        }
    };
    const double first = bench::worked(matrix);
    const double again = bench::median(matrix);
    std::printf(
        "\na season's matrix, %zu measures over %zu sessions in %zu blocks: %.1f ms; the first "
        "time, with what everybody's sessions say: %.1f\n",
        rows, log.sessions(athlete).size(), blocks, again, first);
    const auto all = log.blocks();
    const auto lift = log.lifts().front();
    std::size_t members = 0;
    const double squad = bench::median([&] {
        const auto answer =
            questions::squadOf(log, contextOf(lift.id), answers::inBlock(all[9].value),
                               answers::inBlock(all[12].value), {}, {}, {});
        if (answer && !answer->parts.empty())
            members = answer->parts.front().rows.size();
    });
    std::printf("a squad of %zu between two blocks: %.1f ms\n", members, squad);
}

} // namespace

int main() {
    const fs::path folder = fs::current_path() / ("slopebook-season-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    askSeasons(folder);
    fs::remove_all(folder);
    return 0;
}
