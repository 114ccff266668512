// SPDX-License-Identifier: GPL-3.0-or-later
// What the log costs beside bare SQLite in the same run: slopebook_bench_log [SESSIONS ...]
#include "core/answers/bend.h"
#include "core/answers/comparison.h"
#include "core/answers/noise.h"
#include "core/answers/profile.h"
#include "core/answers/published.h"
#include "core/answers/threshold.h"
#include "core/log/log.h"
#include "core/stats/inverse.h"
#include "core/stats/line.h"
#include "tests/bench/baresql.h"
#include "tests/bench/biglog.h"
#include "tests/bench/timing.h"

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
using bench::BareSql;
using bench::BareStatement;
using bench::median;
using bench::quantile;
using bench::worked;
using Clock = std::chrono::steady_clock;
namespace fs = std::filesystem;

constexpr int setsEach = 6;
constexpr int durableWrites = 400;
constexpr double level = 0.95;

double milliseconds(Clock::time_point from) {
    return std::chrono::duration<double, std::milli>(Clock::now() - from).count();
}

template <class Work>
double once(const Work& work) {
    const auto from = Clock::now();
    work();
    return milliseconds(from);
}

/// What the log itself reads, in the order it reads it, by SQLite alone.
double bareScan(const BareSql& db, const char* sql) {
    BareStatement rows(db, sql);
    double sum = 0;
    while (rows.next())
        sum += static_cast<double>(rows.integer(0) + rows.integer(1)) + rows.real(2);
    return sum;
}

double bareSessions(const BareSql& db) {
    return bareScan(db, "SELECT athlete, id, ordinal, day, body_mass_g, repeat_of, line_checksum "
                        "FROM sessions ORDER BY athlete, day, ordinal");
}

double bareConditions(const BareSql& db) {
    return bareScan(db, "SELECT session, lift, device, place, surface, footwear, technique, "
                        "not_comparable FROM lift_conditions ORDER BY session, lift");
}

double bareSets(const BareSql& db) {
    return bareScan(db, "SELECT session, load_g, point, lift, ordinal, maximum, counting, outcome "
                        "FROM sets ORDER BY session, lift, ordinal");
}

double bareReps(const BareSql& db) {
    return bareScan(db, "SELECT set_id, ordinal, velocity FROM reps ORDER BY set_id, ordinal");
}

/// Goes through the log athlete by athlete, the sessions of one at a time.
template <class Work>
void eachAthlete(const log::Log& log, const Work& work) {
    std::vector<LiftSession> ofOne;
    AthleteId athlete{};
    log.scan({}, [&](const LiftSession& session) {
        if (!ofOne.empty() && athlete != session.athlete) {
            work(ofOne);
            ofOne.clear();
        }
        athlete = session.athlete;
        ofOne.push_back(session);
    });
    work(ofOne);
}

/// The threshold of one lift, from the athlete's own maxima where there are any.
Answer<Mvt> mvtOf(const Lift& lift, LiftId id, const std::vector<LiftSession>& sessions) {
    std::vector<Point> maxima;
    for (const LiftSession& session : sessions)
        if (session.lift == id)
            maxima.insert(maxima.end(), session.maxima.begin(), session.maxima.end());
    return answers::chooseMvt(lift, maxima);
}

/// Asks work of each session with its lift's threshold.
template <class Work>
void eachSession(const log::Log& log, const Work& work) {
    const auto lifts = log.lifts();
    eachAthlete(log, [&](const std::vector<LiftSession>& sessions) {
        for (const auto& lift : lifts) {
            if (std::ranges::find(sessions, lift.id, &LiftSession::lift) == sessions.end())
                continue;
            const auto mvt = mvtOf(lift.value, lift.id, sessions);
            for (const LiftSession& session : sessions)
                if (session.lift == lift.id)
                    work(lift.value, mvt, session);
        }
    });
}

/// Every line with its 1RM and Fieller's interval.
double lines(const log::Log& log) {
    std::vector<double> loads, velocities;
    double sum = 0;
    eachSession(log, [&](const Lift&, const Answer<Mvt>& mvt, const LiftSession& session) {
        loads.clear();
        velocities.clear();
        for (const Point& point : session.points) {
            loads.push_back(point.load);
            velocities.push_back(point.velocity);
        }
        const auto line = stats::fitLine(loads, velocities);
        if (line && line->hasInference() && mvt)
            sum += stats::inversePrediction(*line, mvt->value, 0, level).interval.low;
    });
    return sum;
}

/// What is published of the days of a lift.
answers::PublishedNoise daysOf(const Lift& lift) {
    const auto row = answers::published(lift.name, lift.kind);
    if (!row || !row->dayNoise)
        return {};
    return std::pair{*row->dayNoise, row->dayNoiseSource};
}

/// Every line with its 1RM, Fieller's interval and the one to plan with: days, MVT and bend, kappa
/// narrowed by the athlete's own ladders.
double planned(const log::Log& log) {
    std::vector<double> loads, velocities;
    double sum = 0;
    const auto lifts = log.lifts();
    std::vector<answers::DayNoise> days;
    for (const auto& lift : lifts)
        days.push_back(answers::chooseDayNoise({}, {}, daysOf(lift.value)));
    std::vector<LiftSession> ofLift;
    eachAthlete(log, [&](std::vector<LiftSession>& sessions) {
        for (std::size_t i = 0; i < lifts.size(); ++i) {
            ofLift.clear();
            for (LiftSession& session : sessions)
                if (session.lift == lifts[i].id)
                    ofLift.push_back(std::move(session));
            if (ofLift.empty())
                continue;
            const auto mvt = answers::mvtOf(lifts[i].value, ofLift);
            const auto bend = answers::bendOf(lifts[i].value, mvt, ofLift);
            for (const LiftSession& session : ofLift) {
                loads.clear();
                velocities.clear();
                for (const Point& point : session.points) {
                    loads.push_back(point.load);
                    velocities.push_back(point.velocity);
                }
                const auto line = stats::fitLine(loads, velocities);
                if (!line || !line->hasInference() || !mvt || !(line->slope < 0))
                    continue;
                const auto own = stats::inversePrediction(*line, mvt->value, 0, level);
                const auto max = answers::referenceMax(*line, mvt->value);
                if (!max)
                    continue;
                const auto errors = answers::bendOfMax(bend, loads, *max);
                const auto plan = answers::intervalToPlanWith(
                    *line, *mvt, answers::dayOf(days[i], *line, max), errors, level);
                sum += own.interval.low + (plan ? plan->low : 0);
            }
        }
    });
    return sum;
}

/// All that the profile page says of every session.
double profiles(const log::Log& log) {
    double sum = 0;
    eachSession(log, [&](const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& session) {
        if (const auto profile = answers::profile(lift, mvt, session, level))
            sum += profile->line.slope;
    });
    return sum;
}

/// All profiles of one athlete and lift.
double page(const log::Log& log, AthleteId athlete, const Stored<LiftId, Lift>& lift) {
    double sum = 0;
    const auto sessions = log.liftSessions({.athlete = athlete, .lift = lift.id});
    const auto mvt = mvtOf(lift.value, lift.id, sessions);
    for (const LiftSession& session : sessions)
        if (const auto profile = answers::profile(lift.value, mvt, session, level))
            sum += profile->line.slope;
    return sum;
}

/// ms of the processor for all that a comparison page tells of one athlete's first and last session
/// of a lift, sentence and chances with it.
double comparisonOf(const log::Log& log, AthleteId athlete, const Stored<LiftId, Lift>& lift) {
    const auto sessions = log.liftSessions({.athlete = athlete, .lift = lift.id});
    if (sessions.size() < 2)
        return 0;
    const auto mvt = answers::mvtOf(lift.value, sessions);
    const answers::ComparisonSettings settings{
        .dayNoise = answers::chooseDayNoise({}, {}, daysOf(lift.value)),
        .bend = answers::bendOf(lift.value, mvt, sessions),
        .smallestVelocity = answers::Smallest{0.053},
        .smallestOneRm = answers::Smallest{4}};
    const auto made =
        answers::compare(lift.value, mvt, sessions.front(), sessions.back(), settings);
    double sum = 0;
    if (made)
        for (const auto& at : made->at)
            sum += at.read.change;
    return sum;
}

void compareReads(const fs::path& folder, int sessions) {
    const bench::Institute institute{.sessions = sessions};
    const int athlete = institute.athletes() / 2;
    bench::Institute loneOne = institute;
    loneOne.only = athlete;
    const fs::path file = folder / ("log" + std::to_string(sessions) + ".slopebook");
    const fs::path lone = folder / ("lone" + std::to_string(sessions) + ".slopebook");
    const double written = worked([&] { bench::writeInstitute(file, institute); });
    bench::writeInstitute(lone, loneOne);
    volatile double sink = 0;
    double same = 0, reps = 0;
    {
        const BareSql db(file);
        same = median([&] { sink = sink + bareSessions(db) + bareConditions(db) + bareSets(db); });
        reps = median([&] { sink = sink + bareReps(db); });
    }
    const double opening = median([&] { log::Log::open(file); });
    const double openingLone = median([&] { log::Log::open(lone); });
    const log::Log log = log::Log::open(file);
    const log::Log one = log::Log::open(lone);
    const double scanned = median([&] { log.scan({}, [&](const LiftSession&) {}); });
    const double fitted = median([&] { sink = sink + lines(log); });
    const double plan = median([&] { sink = sink + planned(log); });
    const double asked = worked([&] { sink = sink + profiles(log); });
    const auto lift = log.lifts().at(static_cast<std::size_t>(0));
    const auto pages = [&](const log::Log& of, AthleteId who) {
        return median([&] {
            for (int i = 0; i < 20; ++i)
                sink = sink + page(of, who, lift);
        });
    };
    const double pageHere = pages(log, AthleteId{athlete + 1});
    const double pageLone = pages(one, AthleteId{1});
    const double compared =
        median([&] { sink = sink + comparisonOf(log, AthleteId{athlete + 1}, lift); });
    const double checked = worked([&] { sink = sink + static_cast<double>(log.check().size()); });
    const double kept = static_cast<double>(fs::file_size(file)) / 1048576;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("| %9d | %7.1f | %8.0f | %8.1f | %8.1f | %5.2f | %5.2f | %5.2f | %5.2f | %5.2f | "
                "%5.2f | %5.2f | %9.0f | %6ld |\n",
                sessions, kept, 1000.0 * sessions * setsEach / written, same, reps, scanned / same,
                fitted / same, fitted / reps, plan / reps, asked / same, pageHere / pageLone,
                opening / openingLone, checked, usage.ru_maxrss / 1024);
    std::printf("a comparison, its lines read from that log: %.2f ms\n", compared);
    std::fflush(stdout);
}

Set ladderSet(int number, std::mt19937_64& random) {
    std::uniform_real_distribution<double> noise(-0.02, 0.02);
    Set set{.load = Mass{40'000 + 10'000 * number}};
    for (int rep = 0; rep < 3; ++rep)
        set.reps.push_back({.velocity = 1.3 - 0.12 * number + noise(random)});
    return set;
}

void compareWrites(const fs::path& folder, const fs::path& file) {
    log::Log log = log::Log::open(file);
    BareSql db(folder / "bare.db");
    db.execute("PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA; "
               "CREATE TABLE sets (id INTEGER PRIMARY KEY, load INTEGER, velocity REAL)");
    std::mt19937_64 random(7);
    const LiftId lift = log.lifts().front().id;
    const auto sessions = log.sessions(AthleteId{3});
    std::vector<double> ours, bareOnes;
    for (int i = 0; i < durableWrites; ++i) {
        // A ladder's sets go to one session, then to the next.
        const SessionId into =
            sessions[static_cast<std::size_t>(i / setsEach) % sessions.size()].id;
        const Set set = ladderSet(i % setsEach, random);
        bareOnes.push_back(
            once([&] { db.execute("INSERT INTO sets (load, velocity) VALUES (40000, 1.1)"); }));
        ours.push_back(once([&] { log.add(into, lift, set); }));
    }
    std::printf("\ndurable entry of a set into that log, ms: median %.2f, p99 %.2f; a bare "
                "insert: median %.2f, p99 %.2f; ratio of medians %.2f\n",
                quantile(ours, 0.5), quantile(ours, 0.99), quantile(bareOnes, 0.5),
                quantile(bareOnes, 0.99), quantile(ours, 0.5) / quantile(bareOnes, 0.5));
}
} // namespace

int main(int count, char** arguments) {
    std::vector<int> sizes;
    for (int i = 1; i < count; ++i)
        sizes.push_back(std::atoi(arguments[i]));
    if (sizes.empty())
        sizes = {20'000};
    if (*std::ranges::min_element(sizes) < 100) {
        std::fputs("usage: slopebook_bench_log [SESSIONS ...], 100 or more of each\n", stderr);
        return 2;
    }
    // In the folder at hand: what is measured is its disk.
    const fs::path folder = fs::current_path() / ("slopebook-bench-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    std::puts("| sessions | MiB | sets/s | bare scan, ms | bare reps, ms | scan | lines | "
              "lines/reps | plan/reps | profiles | page | open | check, ms | MB |\n"
              "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (const int sessions : sizes)
        compareReads(folder, sessions);
    std::puts("scan, lines, profiles: times the bare ordered scan of sessions and sets "
              "(lines/reps: of the reps; plan/reps: with the interval to plan with); page, open: "
              "times the same on a log of that athlete "
              "alone");
    compareWrites(folder, folder / ("log" + std::to_string(sizes.back()) + ".slopebook"));
    fs::remove_all(folder);
    return 0;
}
