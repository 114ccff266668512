// SPDX-License-Identifier: GPL-3.0-or-later
// What it costs to look at, to import, and to import again a CSV of many rows:
// slopebook_bench_import [ROWS ...]
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <sys/resource.h>
#include <unistd.h>
#include <vector>

namespace {
using namespace slopebook;
using namespace slopebook::exchange;
using Clock = std::chrono::steady_clock;
namespace fs = std::filesystem;

constexpr int repsEach = 3;
constexpr int setsEach = 6;
constexpr int athletes = 40;

// Wall clock and this program's own processor time: the machine may be busy with others.
struct Watch {
    Clock::time_point from = Clock::now();
    std::clock_t cpu = std::clock();
    std::string read() const {
        char text[60];
        std::snprintf(text, sizeof text, "%.1f s (%.1f s of processor)",
                      std::chrono::duration<double>(Clock::now() - from).count(),
                      static_cast<double>(std::clock() - cpu) / CLOCKS_PER_SEC);
        return text;
    }
};

double peakMegabytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

// A table as a German desk may have it: semicolons, decimal commas, day first, one row a rep.
void writeTable(const fs::path& file, long rows) {
    std::ofstream out(file);
    out << "Datum;Name;Übung;Satz;Wdh;Gewicht (kg);Geschwindigkeit (m/s)\n";
    for (long row = 0; row < rows; ++row) {
        const long rep = row % repsEach, set = row / repsEach % setsEach;
        const long session = row / (repsEach * setsEach), athlete = session % athletes;
        const long dayNumber = session / athletes;
        const std::chrono::year_month_day day{
            std::chrono::sys_days{std::chrono::year{2000} / 1 / 1} + std::chrono::days{dayNumber}};
        char line[200];
        std::snprintf(line, sizeof line, "%02u.%02u.%d;Lane %ld;Rudern;%ld;%ld;%ld,5;%ld,%02ld\n",
                      static_cast<unsigned>(day.day()), static_cast<unsigned>(day.month()),
                      static_cast<int>(day.year()), athlete + 1, set + 1, rep + 1, 40 + 10 * set,
                      (120 - 12 * set - rep) / 100, (120 - 12 * set - rep) % 100);
        out << line;
    }
}

void measure(long rows) {
    const fs::path folder =
        fs::temp_directory_path() / ("bench-import-" + std::to_string(getpid()));
    fs::create_directories(folder);
    const Source table{.file = folder / "table.csv", .text = {}};
    writeTable(table.file, rows);
    const Watch look;
    const FileFacts facts = lookAt(table);
    const std::string looking = look.read();
    const Shape shape = propose(facts);
    if (!openQuestions(shape, facts).empty())
        throw std::logic_error("the table leaves something open");
    log::Log log = log::Log::create(folder / "log.slopebook");
    long told = 0;
    ImportSettings settings;
    settings.progress = [&](std::int64_t, std::int64_t) { return ++told > 0; };
    const Watch once;
    const auto first = importShaped(log, table, shape, facts.headings(), settings);
    const std::string importing = once.read();
    const Watch second;
    const auto again = importShaped(log, table, shape, facts.headings(), settings);
    const std::string twice = second.read();
    if (!first.refused.empty() || first.report.repsAdded != rows || !again.report.addedNothing())
        throw std::logic_error("the import is not what was written");
    std::printf("%ld rows, %.1f MB\n  looked at in %s\n  imported in %s\n  again, nothing new, in "
                "%s\n  log %.1f MB, peak memory %.0f MB, progress told %ld times\n",
                rows, static_cast<double>(fs::file_size(table.file)) / 1e6, looking.c_str(),
                importing.c_str(), twice.c_str(),
                static_cast<double>(fs::file_size(folder / "log.slopebook")) / 1e6, peakMegabytes(),
                told);
    std::error_code ignored;
    fs::remove_all(folder, ignored);
}
} // namespace

int main(int argc, char** argv) {
    std::vector<long> sizes;
    for (int i = 1; i < argc; ++i)
        sizes.push_back(std::strtol(argv[i], nullptr, 10));
    if (sizes.empty())
        sizes = {10'000, 100'000, 1'000'000};
    for (const long rows : sizes)
        measure(rows);
    return 0;
}
