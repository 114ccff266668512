// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/meetings/chaosworld.h"

#include "core/desks/conflictsides.h"
#include "tests/desks/diceduuids.h"

#include <csignal>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace slopebook::test {

namespace fs = std::filesystem;

ChaosWorld::ChaosWorld()
    : m_world(std::make_unique<StoreWorld>()),
      m_proxy(std::make_unique<CuttingProxy>(m_world->server.port())) {
    m_world->server.addLogin("jo");
}

void ChaosWorld::begin(unsigned seed) {
    m_random.seed(seed);
    tests::seedUuids(seed);
    m_folder = std::make_unique<Folder>();
    m_acknowledged.clear();
    m_waits.clear();
    m_seenIn.clear();
    m_moved.clear();
    m_desks.clear();
    beginAnew(*m_world);
    const auto admin = store::Address::read(m_world->server.address("admin"));
    store::grant(admin, "jo", "Judo", store::May::Write);
    for (const char* squad : {"Rowing", "Judo"}) // who looks at the end whether all is there
        store::grant(admin, "eve", squad, store::May::Read);
    for (const auto& [login, squad] : {std::pair{"cora", "Rowing"},
                                       {"cora", "Rowing"},
                                       {"cora", "Rowing"},
                                       {"dora", "Judo"},
                                       {"dora", "Judo"},
                                       {"jo", "Judo"}}) {
        const std::string name = "desk" + std::to_string(m_desks.size());
        const Desk& desk = m_desks.emplace_back(Desk{
            MeetingDesk(*m_folder, name.c_str(), m_world->server.address(login)), login, squad});
        if (m_desks.size() == 1) {
            log::Log log = log::Log::create(desk.at.file());
            const Season season = fillSeason(log);
            addTestDay(log, season, addOtherThings(log, season));
        } else if (m_desks.size() == 2) {
            fs::copy_file(m_desks.front().at.file(), desk.at.file());
        } else {
            desk.at.create();
        }
    }
    for (const Desk& desk : m_desks) {
        desk.at.edit(static_cast<unsigned>(m_random()), 8);
        desk.at.join(desk.squad);
    }
}

void ChaosWorld::oneThing() {
    Desk& desk = someDesk();
    const int which = static_cast<int>(&desk - m_desks.data());
    const int what = below(100);
    if (what < 34) {
        ++did["edits"];
        desk.at.edit(static_cast<unsigned>(m_random()), 1 + below(4));
    } else if (what < 54)
        meet(desk, Line::Good);
    else if (what < 60)
        meet(desk, Line::Good, true);
    else if (what < 72)
        meetOnABadLine(desk);
    else if (what < 75)
        syncAndKill(desk);
    else if (what < 77)
        twoPrograms(desk);
    else if (what < 81)
        choose(desk);
    else if (what < 84)
        makeBackup(which);
    else if (what < 87)
        goBack(which);
    else if (what < 89)
        copyOver(desk);
    else if (what < 91)
        leaveAndJoin(desk);
    else if (what < 93)
        grantDora();
    else if (what < 96)
        moveAnAthlete();
    else if (what < 97) {
        ++did["servers killed"];
        m_world->server.killHard();
        m_world->server.start();
    } else if (what < 99)
        dump();
    else if (fs::exists(file("dump")))
        restoreStore();
}

bool ChaosWorld::meet(const Desk& desk, Line line, bool types) {
    constexpr const char* clocks[]{"2026-03-14T09:30:00Z", "1999-12-31T23:59:59Z",
                                   "2081-01-01T00:00:00Z"};
    const std::string now = clocks[below(3)];
    std::mt19937 own(static_cast<unsigned>(m_random()));
    ++did[types ? "meetings while somebody types" : "meetings"];
    try {
        log::Log log = desk.at.open();
        const std::string address = line == Line::Bad
                                        ? Postgres::addressAt(m_proxy->port(), desk.login) +
                                              " sslmode=disable gssencmode=disable"
                                        : desk.at.address();
        Connection store = Connection::open(store::Address::read(address));
        const auto report = meetings::meet(
            log, store, now,
            [&](std::int64_t /*done*/, std::int64_t /*of*/) {
                if (types && own() % 3 == 0) {
                    desk.at.edit(static_cast<unsigned>(own()), 1);
                    ++did["  typed meanwhile"];
                }
                return true;
            },
            {.pause = std::chrono::milliseconds(50), .longest = std::chrono::seconds(2)});
        did["  left"] += static_cast<int>(report.departed.size());
        did["  waited as what is not seen holds it"] += static_cast<int>(report.notTaken.size());
        did["  revived"] += static_cast<int>(report.taken.revived.size());
        did["  joined"] += static_cast<int>(report.taken.joined.size());
        did["  renamed"] += static_cast<int>(report.taken.renamed.size());
        did["  listed"] += static_cast<int>(report.taken.listed.size());
        if (!report.leftOut.empty())
            throw std::runtime_error("left out: " + english(report.leftOut.front()));
    } catch (const meetings::WaitsForPause&) {
        ++did["  waited for a pause"]; // the next meeting tries it again
        return false;
    } catch (const StoreError& error) {
        ++did["  failed"];
        if (line == Line::Good && error.kind() != StoreError::Kind::Starting &&
            error.kind() != StoreError::Kind::Unreachable)
            throw;
        return false;
    }
    acknowledge(desk);
    return true;
}

void ChaosWorld::meetOnABadLine(const Desk& desk) {
    ++did["  on a bad line"];
    if (below(3) == 0)
        m_proxy->holdAt(1 + below(120));
    else
        m_proxy->cutAt(1 + below(120));
    meet(desk, Line::Bad);
    m_proxy->deliverLate();
    m_proxy->cutAt(0);
}

pid_t ChaosWorld::startSync(const Desk& desk) const {
    const std::string log = desk.at.file().string();
    std::string program = SLOPEBOOK_PROGRAM, sync = "sync", path = log;
    char* arguments[]{program.data(), sync.data(), path.data(), nullptr};
    posix_spawn_file_actions_t quiet;
    ::posix_spawn_file_actions_init(&quiet);
    for (const int end : {1, 2})
        ::posix_spawn_file_actions_addopen(&quiet, end, "/dev/null", O_WRONLY, 0);
    pid_t child = -1;
    const int failed = ::posix_spawn(&child, program.c_str(), &quiet, nullptr, arguments, environ);
    ::posix_spawn_file_actions_destroy(&quiet);
    if (failed != 0)
        throw std::runtime_error("slopebook does not start");
    return child;
}

void ChaosWorld::syncAndKill(const Desk& desk) {
    const pid_t child = startSync(desk);
    ::usleep(static_cast<unsigned>(below(3) == 0 ? below(20'000) : below(400'000)));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    ++did[WIFSIGNALED(status) ? "programs killed" : "programs that ended before"];
    const std::string found = findingsIn(desk.at.file()); // and open again at once
    if (!found.empty())
        throw std::runtime_error("after a kill: " + found);
}

// The window and the command, say.
void ChaosWorld::twoPrograms(const Desk& desk) {
    ++did["two programs at one log"];
    const pid_t child = startSync(desk);
    try {
        for (int i = 0; i < 3; ++i)
            meet(desk, Line::Good, true);
    } catch (...) {
        ::waitpid(child, nullptr, 0);
        throw;
    }
    ::waitpid(child, nullptr, 0);
}

void ChaosWorld::choose(const Desk& desk) {
    log::Log log = desk.at.open();
    const auto open = desks::openConflicts(log);
    if (open.empty())
        return;
    const auto& one = open[static_cast<std::size_t>(below(static_cast<int>(open.size())))];
    const auto choice = below(2) == 0 ? desks::Choice::AsItStands : desks::Choice::WhatLost;
    try {
        desks::settle(log, one.uuid, choice);
        ++did["choices settled"];
    } catch (const LogError&) {
        ++did["choices that could not stand"];
    }
}

void ChaosWorld::leaveAndJoin(const Desk& desk) {
    ++did["left and joined"];
    {
        log::Log log = desk.at.open();
        meetings::leaveStore(log);
    }
    desk.at.edit(static_cast<unsigned>(m_random()), below(3));
    desk.at.join(desk.squad);
}

void ChaosWorld::makeBackup(int which) {
    ++did["backups made"];
    fs::copy_file(m_desks[static_cast<std::size_t>(which)].at.file(),
                  file("backup" + std::to_string(which)), fs::copy_options::overwrite_existing);
}

void ChaosWorld::goBack(int which) {
    const fs::path backup = file("backup" + std::to_string(which));
    if (!fs::exists(backup))
        return;
    ++did["desks gone back"];
    fs::copy_file(backup, m_desks[static_cast<std::size_t>(which)].at.file(),
                  fs::copy_options::overwrite_existing);
    forgetWhatNobodyHas();
}

void ChaosWorld::copyOver(Desk& desk) {
    const Desk& other = someDesk();
    if (other.at.file() == desk.at.file() || other.login != desk.login)
        return;
    ++did["desks copied"];
    fs::copy_file(other.at.file(), desk.at.file(), fs::copy_options::overwrite_existing);
    forgetWhatNobodyHas();
}

void ChaosWorld::grantDora() {
    constexpr store::May rights[]{store::May::Nothing, store::May::Read, store::May::Write};
    ++did["rights given or taken"];
    store::grant(store::Address::read(m_world->server.address("admin")), "dora", "Rowing",
                 rights[below(3)]);
}

void ChaosWorld::move(const Sixteen& athlete, const Sixteen& squad) {
    seeSquads();
    try {
        Connection admin = m_world->as("admin");
        admin.ask("SELECT slopebook.move_athlete($1, $2)",
                  {store::uuidText(athlete), store::uuidText(squad)});
        m_moved[athlete] = squad;
        ++did["athletes moved"];
    } catch (const StoreError&) {
        ++did["moves refused"]; // another has that name there, or he is there already
    }
    seeSquads();
}

void ChaosWorld::moveAnAthlete() {
    Connection admin = m_world->as("admin");
    const store::Rows all =
        admin.ask("SELECT id, squad FROM slopebook.atoms WHERE kind = 'athlete' ORDER BY id", {});
    if (all.size() == 0)
        return;
    const int row = below(all.size());
    move(all.uuid(row, 0), all.uuid(row, 1) == m_world->rowing ? m_world->judo : m_world->rowing);
}

// A store that went back does not know of them; who manages it moves them once more.
void ChaosWorld::repeatMoves() {
    const auto now = squadsInStore();
    for (const auto& [athlete, squad] : std::map(m_moved))
        if (const auto at = now.find(athlete); at != now.end() && at->second != squad)
            move(athlete, squad);
}

void ChaosWorld::dump() {
    ++did["dumps"];
    m_world->server.run("pg_dump", "-Fc -f " + file("dump").string() + " squad");
}

void ChaosWorld::restoreStore() {
    ++did["stores gone back"];
    seeSquads();
    m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
    m_world->server.sql("CREATE DATABASE squad", "postgres");
    m_world->server.run("pg_restore", "-d squad " + file("dump").string());
    repeatMoves();
    forgetWhatNobodyHas();
}

} // namespace slopebook::test
