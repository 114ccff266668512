// SPDX-License-Identifier: GPL-3.0-or-later
// How long who enters a set waits for a meeting that writes just then:
//   slopebook_bench_waits REPS [small | alone | commit | types]
// First where all that comes is written in small steps: an empty log meets a store of so many reps,
// and a set is entered each half second. Then where it can only be written in one transaction: a
// log of so many reps meets a store that has lifts of the same names. By the clock on the wall,
// each entry with its own commit; slowdisk.cpp makes a disk of this machine's as slow as is wanted.
#include "core/log/connection.h"
#include "core/log/snapshot.h"
#include "core/log/typists.h"
#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "core/store/setup.h"
#include "tests/bench/biglog.h"
#include "tests/bench/timing.h"
#include "tests/support/postgres.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <future>
#include <string>
#include <string_view>
#include <thread>
#include <utility>

using namespace slopebook;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

namespace {

constexpr int repsASession = 18;

double now() {
    return bench::milliseconds(CLOCK_MONOTONIC);
}

/// Somebody at the log, with a connection of his own.
class Person {
public:
    explicit Person(const fs::path& file)
        : m_log(log::Log::open(file)), m_typist(file), m_lift(m_log.add(Lift{.name = "Sled"})),
          m_session(m_log.add(SessionHead{.athlete = m_log.add(Athlete{.name = "Zoe"}),
                                          .date = Date{std::chrono::year(2026) / 3 / 14}})) {}

    /// ms that it takes.
    double enter() {
        Set set{.load = massFromKilograms(52.5)};
        set.reps.push_back({.velocity = 0.91});
        const double from = now();
        m_log.add(m_session, m_lift, set);
        return now() - from;
    }
    /// Types for so long, then enters.
    double typeAndEnter(std::chrono::milliseconds typing) {
        m_typist.setTypes(true);
        std::this_thread::sleep_for(typing);
        const double took = enter();
        m_typist.setTypes(false);
        return took;
    }

private:
    log::Log m_log;
    log::Typist m_typist;
    LiftId m_lift;
    SessionId m_session;
};

void tell(const char* what, const std::vector<double>& waits) {
    if (waits.empty())
        return;
    std::printf("  %-30s %4zu entries, half within %5.0f ms, 9 of 10 %5.0f, the longest %5.0f\n",
                what, waits.size(), bench::quantile(waits, 0.5), bench::quantile(waits, 0.9),
                bench::quantile(waits, 1));
}

/// The commits of a log's connection: how many, and the longest of those that changed many rows,
/// told of as it begins.
class Commits {
public:
    Commits(const log::Log& log, std::function<void()> longBegins)
        : m_db(log::connectionOf(log).database().getHandle()), m_longBegins(std::move(longBegins)),
          m_before(sqlite3_total_changes64(m_db)) {
        sqlite3_commit_hook(m_db, &Commits::commits, this);
        sqlite3_trace_v2(m_db, SQLITE_TRACE_PROFILE, &Commits::ended, this);
    }
    ~Commits() {
        sqlite3_commit_hook(m_db, nullptr, nullptr);
        sqlite3_trace_v2(m_db, 0, nullptr, nullptr);
    }
    Commits(const Commits&) = delete;
    Commits& operator=(const Commits&) = delete;

    int count() const { return m_count; }
    std::int64_t mostRows() const { return m_mostRows; }
    double longTook() const { return m_longTook; } ///< ms
    double backTook() const { return m_backTook; } ///< of the longest that was taken back

private:
    static constexpr std::int64_t many = 10'000;

    static int commits(void* self) {
        auto& one = *static_cast<Commits*>(self);
        const std::int64_t all = sqlite3_total_changes64(one.m_db);
        const std::int64_t rows = all - std::exchange(one.m_before, all);
        ++one.m_count;
        one.m_mostRows = std::max(one.m_mostRows, rows);
        one.m_isLong = rows >= many;
        if (one.m_isLong && one.m_longBegins)
            one.m_longBegins();
        return 0;
    }
    static int ended(unsigned /*event*/, void* self, void* statement, void* nanoseconds) {
        auto& one = *static_cast<Commits*>(self);
        const auto took = static_cast<double>(*static_cast<sqlite3_int64*>(nanoseconds)) / 1e6;
        if (std::exchange(one.m_isLong, false)) // what ends after the hook is the commit
            one.m_longTook = std::max(one.m_longTook, took);
        else if (std::string_view(sqlite3_sql(static_cast<sqlite3_stmt*>(statement))) == "ROLLBACK")
            one.m_backTook = std::max(one.m_backTook, took);
        return 0;
    }

    sqlite3* m_db;
    std::function<void()> m_longBegins;
    std::int64_t m_before;
    int m_count = 0;
    std::int64_t m_mostRows = 0;
    double m_longTook = 0, m_backTook = 0;
    bool m_isLong = false;
};

class Bench {
public:
    Bench() { m_server.addLogin("anna"); }

    void smallSteps(int reps) {
        const fs::path folder = begin("small");
        const fs::path whole = folder / "a.slopebook", mine = folder / "b.slopebook";
        bench::writeInstitute(whole, {.sessions = reps / repsASession});
        join(whole);
        log::Log::create(mine);
        Person person(mine);
        std::vector<double> alone, beside;
        for (int i = 0; i < 20; ++i)
            alone.push_back(person.enter());
        std::atomic<bool> done = false;
        const double from = now();
        std::thread meeting([&] {
            log::Log log = log::Log::open(mine);
            const Commits commits(log, {});
            join(log);
            std::printf("%d reps in small steps: %.1f s, %d commits, of %lld rows at the most\n",
                        reps, (now() - from) / 1e3, commits.count(),
                        static_cast<long long>(commits.mostRows()));
            done = true;
        });
        while (!done) {
            beside.push_back(person.enter());
            std::this_thread::sleep_for(500ms);
        }
        meeting.join();
        tell("nobody else writes", alone);
        tell("a set each half second", beside);
        fs::remove_all(folder);
    }

    enum class Beside { Nobody, Types, EntersAtTheCommit };
    void oneGo(int reps, Beside beside) {
        const fs::path folder = begin("one" + std::to_string(static_cast<int>(beside)));
        const fs::path there = folder / "a.slopebook", mine = folder / "b.slopebook";
        bench::writeInstitute(there, {.sessions = 40});
        join(there);
        bench::writeInstitute(mine, {.sessions = reps / repsASession});
        Person person(mine);
        log::Log log = log::Log::open(mine);
        std::promise<void> longBegins;
        std::atomic<bool> told = false, done = false;
        const auto tellOnce = [&] {
            if (!told.exchange(true))
                longBegins.set_value();
        };
        const Commits commits(log, tellOnce);
        std::vector<double> waits;
        const double from = now();
        const auto entered = [&](double took) {
            std::printf("  entered at %.1f s: %.0f ms\n", (now() - from) / 1e3, took);
            waits.push_back(took);
        };
        std::thread beginner([&] {
            if (beside == Beside::EntersAtTheCommit) {
                longBegins.get_future().wait();
                entered(person.enter());
            }
            while (beside == Beside::Types && !done) {
                entered(person.typeAndEnter(2s));
                for (int i = 0; i < 300 && !done; ++i)
                    std::this_thread::sleep_for(100ms);
            }
        });
        bool paused = true;
        try {
            join(log);
        } catch (const meetings::WaitsForPause&) {
            paused = false;
        }
        done = true;
        tellOnce();
        std::printf("%d reps in one go: %.1f s%s, %lld rows, the longest commit %.0f ms, "
                    "taken back in %.0f\n",
                    reps, (now() - from) / 1e3, paused ? "" : " (nobody paused)",
                    static_cast<long long>(commits.mostRows()), commits.longTook(),
                    commits.backTook());
        beginner.join();
        tell(beside == Beside::Types ? "typed for 2 s each 32 s" : "entered as it is committed",
             waits);
        fs::remove_all(folder);
    }

private:
    void join(log::Log& log) const {
        const std::string address = m_server.address("anna", m_database);
        meetings::joinStore(log, address, "Rowing");
        store::Connection store = store::Connection::open(meetings::addressOf(log));
        meetings::meet(log, store, "2026-03-14T09:30:00Z");
    }
    void join(const fs::path& file) const {
        log::Log log = log::Log::open(file);
        join(log);
    }
    /// A store of its own, and a folder beside the server's.
    fs::path begin(const std::string& name) {
        m_database = "squad_" + name;
        m_server.sql("CREATE DATABASE " + m_database, "postgres");
        const auto admin = store::Address::read(m_server.address("admin", m_database));
        store::initialise(admin, {"Rowing"});
        store::grant(admin, "anna", "Rowing", store::May::Write);
        const fs::path folder = m_server.folder() / m_database;
        fs::create_directory(folder);
        return folder;
    }

    test::Postgres m_server;
    std::string m_database;
};

} // namespace

int main(int count, char** arguments) {
    std::setvbuf(stdout, nullptr, _IOLBF, 0); // told as it is known, in a file as well
    const int reps = count == 2 || count == 3 ? std::atoi(arguments[1]) : 0;
    if (reps <= 0) {
        std::fputs("usage: slopebook_bench_waits REPS [small | alone | commit | types]\n", stderr);
        return 2;
    }
    const auto asked = [&](std::string_view part) { return count == 2 || part == arguments[2]; };
    try {
        Bench bench;
        if (asked("small"))
            bench.smallSteps(reps);
        if (asked("alone"))
            bench.oneGo(reps, Bench::Beside::Nobody);
        if (asked("commit"))
            bench.oneGo(reps, Bench::Beside::EntersAtTheCommit);
        if (asked("types"))
            bench.oneGo(reps, Bench::Beside::Types);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 1;
    }
    return 0;
}
