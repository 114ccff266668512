// SPDX-License-Identifier: GPL-3.0-or-later
// What meetings at a shared store cost, beside what PostgreSQL takes by itself for the same:
//   slopebook_bench_meetings SLOPEBOOK REPS...
// For each number of reps a log of an institute and a store of its own, on a server of the bench's
// own that writes to disk as it should; at the first number forty desks as well. Whole commands, by
// the clock on the wall; ten million reps need 10 GB in TMPDIR. Each figure is a median but those
// of what is done once.
#include "core/log/log.h"
#include "core/store/connection.h"
#include "tests/bench/biglog.h"
#include "tests/bench/timing.h"
#include "tests/support/postgres.h"

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <stdexcept>
#include <string>
#include <sys/resource.h>
#include <thread>

using namespace slopebook;
namespace fs = std::filesystem;

namespace {

constexpr int again = 5;
constexpr int desks = 40;
constexpr int repsASession = 18;

/// s by the clock, and of the processor of commands that have ended.
struct Took {
    double wall = 0, own = 0;
};

double childSeconds() {
    rusage used{};
    ::getrusage(RUSAGE_CHILDREN, &used);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

Took took(const std::function<void()>& work) {
    const double wall = bench::milliseconds(CLOCK_MONOTONIC), own = childSeconds();
    work();
    return {(bench::milliseconds(CLOCK_MONOTONIC) - wall) / 1e3, childSeconds() - own};
}

double medianWall(const std::function<void()>& work) {
    std::vector<double> walls;
    for (int i = 0; i < again; ++i)
        walls.push_back(took(work).wall);
    return bench::quantile(walls, 0.5);
}

class Bench {
public:
    explicit Bench(std::string program) : m_program(std::move(program)) {
        for (const char* login : {"chief", "anna"})
            m_server.addLogin(login);
    }

    void at(int reps, bool manyDesks) {
        m_database = "squad" + std::to_string(reps);
        m_server.sql("CREATE DATABASE " + m_database + " OWNER chief", "postgres");
        const fs::path folder = m_server.folder() / m_database;
        fs::create_directory(folder);
        const fs::path whole = folder / "a.slopebook", other = folder / "b.slopebook";
        bench::writeInstitute(whole, {.sessions = reps / repsASession});
        run("store init '" + m_server.address("chief", m_database) + "' --squad Rowing");
        run("store grant '" + m_server.address("chief", m_database) +
            "' --login anna --squad Rowing --may write");
        std::printf("\n%d reps\n", reps);
        tell("first meeting: all of it is sent", took([&] { join(whole); }));
        rawCopies();
        tell("another desk's first: all of it comes", took([&] {
                 log::Log::create(other);
                 join(other);
             }));
        tell("a meeting with nothing new", medianWall([&] { sync(whole); }));
        tell("  psql: there and back, a question", medianWall([&] { psql("SELECT 1"); }));
        roundTrips();
        setFromDeskToDesk(whole, other);
        m_server.sql("CREATE TABLE aside (row jsonb); GRANT ALL ON aside TO anna", m_database);
        tell("  psql twice: a row in, all of it out", medianWall([&] {
                 psql("INSERT INTO aside VALUES ('{}')");
                 psql("SELECT * FROM aside");
             }));
        std::printf(
            "%-46s %9s\n", "the store on disk",
            m_server
                .sql("SELECT pg_size_pretty(pg_database_size('" + m_database + "'))", m_database)
                .c_str());
        if (manyDesks)
            forty(folder);
        fs::remove_all(folder);
        m_server.sql("DROP DATABASE " + m_database + " WITH (FORCE)", "postgres");
    }

private:
    void run(const std::string& arguments) const {
        const std::string command = m_program + " " + arguments + " >/dev/null";
        if (std::system(command.c_str()) != 0)
            throw std::runtime_error(command);
    }
    void psql(const std::string& text) const {
        const auto ran = m_server.tryPsql("anna", text, m_database);
        if (ran.exit != 0)
            throw std::runtime_error(ran.out);
    }
    void join(const fs::path& log) const {
        run("sync '" + log.string() + "' --store '" + m_server.address("anna", m_database) +
            "' --squad Rowing");
    }
    void sync(const fs::path& log) const { run("sync '" + log.string() + "'"); }

    /// Entered at one, sent by its meeting, taken by the other's.
    void setFromDeskToDesk(const fs::path& one, const fs::path& other) const {
        std::vector<double> sent, taken;
        for (int i = 0; i < again; ++i) {
            enterSet(one);
            sent.push_back(took([&] { sync(one); }).wall);
            taken.push_back(took([&] { sync(other); }).wall);
        }
        tell("a set is sent, a meeting", bench::quantile(sent, 0.5));
        tell("  and taken at another desk, a meeting", bench::quantile(taken, 0.5));
    }

    /// One more set of the log's first session of a lift.
    static void enterSet(const fs::path& file) {
        log::Log log = log::Log::open(file);
        const auto sessions = log.liftSessions({.athlete = log.athletes().front().id});
        Set set{.load = massFromKilograms(52.5)};
        set.reps.push_back({.velocity = 0.91});
        log.add(sessions.front().session, sessions.front().lift, set);
    }

    static void tell(const char* what, double seconds) {
        std::printf("%-46s %9.3f s\n", what, seconds);
        std::fflush(stdout);
    }
    static void tell(const char* what, const Took& time) {
        std::printf("%-46s %9.3f s (%.3f of the desk's processor)\n", what, time.wall, time.own);
        std::fflush(stdout);
    }

    /// The same rows into tables that are made alike, keys and indexes too, and nothing else.
    void rawCopies() const {
        const std::string file = (m_server.folder() / "data" / "aside.copy").string();
        m_server.sql("CREATE SCHEMA raw", m_database);
        std::string tables = m_server.sql(
            "SELECT string_agg(tablename, ' ') FROM pg_tables WHERE schemaname = 'slopebook'",
            m_database);
        double seconds = 0;
        tables += ' ';
        for (std::size_t from = 0, to;
             (to = tables.find_first_of(" \n", from)) != std::string::npos; from = to + 1) {
            const std::string table = tables.substr(from, to - from);
            if (table.empty())
                continue;
            m_server.sql("COPY slopebook." + table + " TO '" + file + "' (FORMAT binary)",
                         m_database);
            m_server.sql("CREATE TABLE raw." + table + " (LIKE slopebook." + table +
                             " INCLUDING ALL EXCLUDING IDENTITY EXCLUDING GENERATED)",
                         m_database);
            seconds +=
                took([&] {
                    m_server.sql("COPY raw." + table + " FROM '" + file + "' (FORMAT binary)",
                                 m_database);
                }).wall;
        }
        m_server.sql("DROP SCHEMA raw CASCADE", m_database);
        tell("  COPY of the same rows, keys and indexes", seconds);
    }

    void roundTrips() const {
        auto store =
            store::Connection::open(store::Address::read(m_server.address("anna", m_database)));
        std::vector<double> each;
        for (int i = 0; i < 200; ++i)
            each.push_back(took([&] { store.ask("SELECT 1"); }).wall * 1e3);
        std::printf("%-46s %9.3f ms\n", "  one question more", bench::quantile(each, 0.5));
    }

    /// Work at all desks at once.
    static void atOnce(const std::function<void(int desk)>& work) {
        std::vector<std::thread> all;
        for (int i = 0; i < desks; ++i)
            all.emplace_back(work, i);
        for (std::thread& one : all)
            one.join();
    }

    void forty(const fs::path& folder) const {
        const auto desk = [&](int i) { return folder / ("d" + std::to_string(i) + ".slopebook"); };
        tell("forty desks' first meetings, all at once", took([&] {
                 atOnce([&](int i) {
                     log::Log::create(desk(i));
                     join(desk(i));
                 });
             }));
        for (int i = 0; i < desks; ++i)
            enterSet(desk(i));
        tell("forty desks send a set each, all at once",
             took([&] { atOnce([&](int i) { sync(desk(i)); }); }));
        tell("  and take those of the others",
             took([&] { atOnce([&](int i) { sync(desk(i)); }); }));
        tell("  psql: a row in and out, all at once", took([&] {
                 atOnce([&](int) {
                     psql("INSERT INTO aside VALUES ('{}')");
                     psql("SELECT * FROM aside");
                 });
             }));
        const std::size_t wanted = setsIn(desk(0));
        for (int i = 1; i < desks; ++i)
            if (setsIn(desk(i)) != wanted)
                throw std::runtime_error("the desks differ");
    }
    static std::size_t setsIn(const fs::path& file) {
        const log::Log log = log::Log::open(file, log::Access::ReadOnly);
        std::size_t sets = 0;
        log.scan({}, [&](const LiftSession& session) {
            sets += log.sets(session.session, session.lift).size();
        });
        return sets;
    }

    test::Postgres m_server{test::PostgresOptions{.durable = true}};
    std::string m_program, m_database;
};

} // namespace

int main(int count, char** arguments) {
    if (count < 3) {
        std::fputs("usage: slopebook_bench_meetings SLOPEBOOK REPS...\n", stderr);
        return 2;
    }
    try {
        Bench bench(arguments[1]);
        for (int i = 2; i < count; ++i)
            bench.at(std::atoi(arguments[i]), i == 2);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 1;
    }
    return 0;
}
