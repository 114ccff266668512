// SPDX-License-Identifier: GPL-3.0-or-later
// What the log costs beside bare SQLite in the same run: slopebook_bench_log [SESSIONS ...]
#include "core/log/log.h"
#include "core/stats/line.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <random>
#include <string>
#include <sys/resource.h>
#include <unistd.h>
#include <vector>

namespace {
using namespace slopebook;
using Clock = std::chrono::steady_clock;
namespace fs = std::filesystem;

constexpr int setsEach = 6;
constexpr int repsEach = 3;
constexpr int sessionsAnAthlete = 25;
constexpr int runs = 7;
constexpr int durableWrites = 400;

double milliseconds(Clock::time_point from) {
    return std::chrono::duration<double, std::milli>(Clock::now() - from).count();
}

template <class Work>
double once(const Work& work) {
    const auto from = Clock::now();
    work();
    return milliseconds(from);
}

double quantile(std::vector<double> values, double p) {
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(p * static_cast<double>(values.size() - 1))];
}

template <class Work>
double median(const Work& work) {
    std::vector<double> times;
    for (int i = 0; i < runs; ++i)
        times.push_back(once(work));
    return quantile(times, 0.5);
}

Set ladderSet(int number, std::mt19937_64& random) {
    std::uniform_real_distribution<double> noise(-0.02, 0.02);
    Set set{.load = Mass{40'000 + 10'000 * number}};
    for (int rep = 0; rep < repsEach; ++rep)
        set.reps.push_back({.velocity = 1.3 - 0.12 * number + noise(random)});
    return set;
}

/// Sessions in the order of an import: by day, so that neighbours in time are neighbours in the
/// file and an athlete's sessions are not.
void generate(log::Log& log, int sessions, int athletes) {
    std::mt19937_64 random(20260314);
    log.together([&] {
        const LiftId lift = log.add(Lift{.name = "Bench pull"});
        std::vector<AthleteId> squad;
        for (int i = 0; i < athletes; ++i)
            squad.push_back(log.add(Athlete{.name = "Athlete " + std::to_string(i + 1)}));
        for (int i = 0; i < sessions; ++i) {
            const auto date = Date{std::chrono::sys_days{std::chrono::year{1990} / 1 / 1} +
                                   std::chrono::days{i / athletes}};
            const SessionId session = log.add(SessionHead{
                .athlete = squad[static_cast<std::size_t>(i % athletes)], .date = date});
            for (int number = 0; number < setsEach; ++number)
                log.add(session, lift, ladderSet(number, random));
        }
    });
}

sqlite3* bare(const fs::path& file) {
    sqlite3* db = nullptr;
    if (sqlite3_open(file.c_str(), &db) != SQLITE_OK)
        std::abort();
    return db;
}

double bareScan(sqlite3* db, const char* sql) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(db, sql, -1, &statement, nullptr) != SQLITE_OK)
        std::abort();
    double sum = 0;
    while (sqlite3_step(statement) == SQLITE_ROW)
        sum += static_cast<double>(sqlite3_column_int64(statement, 0) +
                                   sqlite3_column_int64(statement, 1)) +
               sqlite3_column_double(statement, 2);
    sqlite3_finalize(statement);
    return sum;
}

double fitAll(const log::Log& log) {
    std::vector<double> loads;
    std::vector<double> velocities;
    double sum = 0;
    log.scan({}, [&](const LiftSession& line) {
        loads.clear();
        velocities.clear();
        for (const Point& point : line.points) {
            loads.push_back(point.load);
            velocities.push_back(point.velocity);
        }
        if (const auto fitted = stats::fitLine(loads, velocities))
            sum += fitted->slope;
    });
    return sum;
}

void compareReads(const fs::path& folder, int sessions) {
    const int athletes = std::max(1, sessions / sessionsAnAthlete);
    const fs::path file = folder / ("log" + std::to_string(sessions) + ".slopebook");
    const fs::path lone = folder / ("lone" + std::to_string(sessions) + ".slopebook");
    double written = 0;
    {
        log::Log log = log::Log::create(file);
        written = once([&] { generate(log, sessions, athletes); });
        log::Log one = log::Log::create(lone);
        generate(one, sessionsAnAthlete, 1);
    }
    volatile double sink = 0;
    sqlite3* const db = bare(file);
    // A cache of the same size as the log's own.
    const double sets =
        median([&] { sink = sink + bareScan(db, "SELECT session, load_g, point FROM sets"); });
    const double reps =
        median([&] { sink = sink + bareScan(db, "SELECT set_id, ordinal, velocity FROM reps"); });
    sqlite3_close(db);
    const double opening = median([&] { log::Log::open(file); });
    const double openingLone = median([&] { log::Log::open(lone); });
    const log::Log log = log::Log::open(file);
    const log::Log one = log::Log::open(lone);
    const double scanned = median([&] { log.scan({}, [&](const LiftSession&) {}); });
    const double fitted = median([&] { sink = sink + fitAll(log); });
    const auto page = [&](const log::Log& of, AthleteId athlete) {
        return median([&] {
            for (int i = 0; i < 20; ++i)
                sink = sink + static_cast<double>(
                                  of.liftSessions({.athlete = athlete, .lift = LiftId{1}}).size());
        });
    };
    const double pageHere = page(log, AthleteId{athletes / 2 + 1});
    const double pageLone = page(one, AthleteId{1});
    const double checked = once([&] { sink = sink + static_cast<double>(log.check().size()); });
    const double kept = static_cast<double>(fs::file_size(file)) / 1048576;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("%9d %8.1f %9.0f %9.1f %9.1f %8.2f %8.2f %8.2f %8.2f %8.2f %9.0f %7ld\n", sessions,
                kept, sessions * setsEach / written, sets, reps, scanned / sets, fitted / sets,
                fitted / reps, pageHere / pageLone, opening / openingLone, checked,
                usage.ru_maxrss / 1024);
    std::fflush(stdout);
}

void compareWrites(const fs::path& folder) {
    log::Log log = log::Log::create(folder / "durable.slopebook");
    generate(log, 200, 8);
    sqlite3* const db = bare(folder / "bare.db");
    sqlite3_exec(db,
                 "PRAGMA journal_mode = DELETE; PRAGMA synchronous = FULL; "
                 "CREATE TABLE sets (id INTEGER PRIMARY KEY, load INTEGER, velocity REAL)",
                 nullptr, nullptr, nullptr);
    std::mt19937_64 random(7);
    const SessionId session = log.sessions(AthleteId{3}).front().id;
    std::vector<double> ours;
    std::vector<double> bareOnes;
    for (int i = 0; i < durableWrites; ++i) {
        // A ladder's sets go to one session, then to the next.
        const SessionId into{raw(session) + i / setsEach % 100};
        const Set set = ladderSet(i % setsEach, random);
        bareOnes.push_back(once([&] {
            sqlite3_exec(db, "INSERT INTO sets (load, velocity) VALUES (40000, 1.1)", nullptr,
                         nullptr, nullptr);
        }));
        ours.push_back(once([&] { log.add(into, LiftId{1}, set); }));
    }
    sqlite3_close(db);
    std::printf("durable entry of a set, ms: median %.2f, p99 %.2f; a bare insert: median %.2f, "
                "p99 %.2f; ratio of medians %.2f\n",
                quantile(ours, 0.5), quantile(ours, 0.99), quantile(bareOnes, 0.5),
                quantile(bareOnes, 0.99), quantile(ours, 0.5) / quantile(bareOnes, 0.5));
}
} // namespace

int main(int count, char** arguments) {
    const fs::path folder =
        fs::temp_directory_path() / ("slopebook-bench-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    std::printf(
        " sessions      MiB    sets/s   sets ms   reps ms     scan    +fit  fit/reps     page "
        "    open  check ms     MB\n");
    if (count < 2)
        compareReads(folder, 20'000);
    for (int i = 1; i < count; ++i)
        compareReads(folder, std::atoi(arguments[i]));
    std::printf("scan, +fit: times the bare scan of the sets (of the reps: fit/reps); page, open: "
                "times the same on a log of one athlete\n");
    compareWrites(folder);
    fs::remove_all(folder);
    return 0;
}
