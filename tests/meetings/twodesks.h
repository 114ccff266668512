// SPDX-License-Identifier: GPL-3.0-or-later
// Two desks of one login, a rack's and an office's, that know all of each other, and what is done
// to them and to their store where rules are tried. Which test stands for which rule:
// DEVELOPERS.md, "A shared store".
#pragma once

#include "core/log/newsessions.h"
#include "tests/meetings/meetingworld.h"

#include <array>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>
#include <tuple>

namespace slopebook::test {

/// Of ten sets each, day after day; with conditions.
inline std::vector<log::NewSession> manySessions(AthleteId who, LiftId lift, int count) {
    std::vector<log::NewSession> made;
    for (int i = 0; i < count; ++i) {
        log::NewSession one{.head = {.athlete = who, .date = day(2020, 1, 1)}};
        one.head.date = std::chrono::sys_days(one.head.date) + std::chrono::days(i);
        one.conditions.push_back({.lift = lift, .conditions = {.surface = "boards"}});
        for (int set = 1; set <= 10; ++set)
            one.sets.push_back({.lift = lift, .ordinal = set, .set = ladderSet(20 + set, {0.9})});
        made.push_back(std::move(one));
    }
    return made;
}

class TwoDesks : public QObject {
protected:
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<Folder> m_folder;
    std::unique_ptr<MeetingDesk> m_rack, m_office;

    static AthleteId anAthlete(const log::Log& log) {
        for (const auto& one : log.athletes())
            if (!log.sessions(one.id).empty())
                return one.id;
        throw std::runtime_error("nobody has a session");
    }
    static SessionId aSession(const log::Log& log) {
        return log.sessions(anAthlete(log)).front().id;
    }
    static void addSet(const MeetingDesk& desk, double kg) {
        log::Log log = desk.open();
        log.add(aSession(log), log.lifts().front().id, ladderSet(kg, {0.8}));
    }
    static bool hasSet(const MeetingDesk& desk, double kg) {
        const log::Log log = desk.open();
        for (const auto& session : log.sessions(anAthlete(log)))
            for (const auto& placed : log.session(session.id).sets)
                if (placed.set.load == massFromKilograms(kg))
                    return true;
        return false;
    }
    static void setNote(const MeetingDesk& desk, const std::string& note) {
        log::Log log = desk.open();
        const auto session = log.sessions(anAthlete(log)).front();
        SessionHead head = session.value;
        head.note = note;
        log.change(session.id, head);
    }
    static std::string noteAt(const MeetingDesk& desk) {
        const log::Log log = desk.open();
        return log.sessions(anAthlete(log)).front().value.note;
    }
    static void addAthlete(const MeetingDesk& desk, const std::string& name) {
        log::Log log = desk.open();
        log.add(Athlete{.name = name});
    }
    static bool hasAthlete(const MeetingDesk& desk, const std::string& name) {
        const log::Log log = desk.open();
        return std::ranges::any_of(log.athletes(),
                                   [&](const auto& one) { return one.value.name == name; });
    }

    void dump() const {
        m_world->server.run("pg_dump", "-Fc -f " + m_folder->path("dump").string() + " squad");
    }
    void restore() const {
        m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        m_world->server.sql("CREATE DATABASE squad", "postgres");
        m_world->server.run("pg_restore", "-d squad " + m_folder->path("dump").string());
    }
    std::int64_t countInStore() const { return m_world->count("slopebook.ticks") - 1; }

    /// Until so many wait for another's transaction, or that is done.
    void waitForLocks(int count, const std::atomic<bool>* done = nullptr) const {
        Connection admin = m_world->as("admin");
        while (admin.ask("SELECT count(*) FROM pg_stat_activity WHERE datname = 'squad' AND "
                         "wait_event_type = 'Lock'",
                         {})
                       .integer(0, 0) < count &&
               (done == nullptr || !*done))
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }

    /// A meeting that is held up as it comes to push, while work is done; then it goes on.
    meetings::MeetingReport meetWith(const MeetingDesk& desk,
                                     const std::function<void()>& work) const {
        Connection holder = m_world->as("cora");
        holder.run("BEGIN");
        holder.run("SELECT slopebook.hold()");
        meetings::MeetingReport report;
        std::atomic<bool> failed = false;
        std::thread meeting([&] {
            try {
                report = desk.meet();
            } catch (const std::exception&) {
                failed = true;
            }
        });
        waitForLocks(1);
        work();
        holder.run("COMMIT");
        meeting.join();
        if (failed)
            throw std::runtime_error("the meeting failed");
        return report;
    }

    void meetAll() const {
        for (int i = 0; i < 3; ++i) {
            m_rack->meet();
            m_office->meet();
        }
    }
    void requireSame() const {
        Connection cora = m_world->as("cora");
        const Said there = saidByStore(cora);
        for (const MeetingDesk* desk : {m_rack.get(), m_office.get()}) {
            const std::string where = difference(saidBy(desk->file()), there);
            QVERIFY2(where.empty(), where.c_str());
            const std::string found = findingsIn(desk->file());
            QVERIFY2(found.empty(), found.c_str());
            QCOMPARE(desk->waiting(), 0);
        }
    }

    /// A server with an empty store.
    void startStore() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
    }
    /// An empty store, and two desks whose logs are not made yet.
    void beginEmpty() {
        QVERIFY(m_world);
        beginAnew(*m_world);
        m_folder = std::make_unique<Folder>();
        makeDesks();
    }
    /// Two desks that know all of each other, and their store, to begin with again and again.
    void startServer() {
        startStore();
        if (!m_world)
            return;
        try {
            m_readyFolder = std::make_unique<Folder>();
            m_folder = std::make_unique<Folder>();
            makeDesks();
            {
                log::Log log = log::Log::create(m_rack->file());
                addOtherThings(log, fillSeason(log));
            }
            m_office->create();
            m_rack->join();
            m_office->join();
            meetAll();
            m_ready = {m_world->rowing, m_world->judo, m_world->begin};
            for (const char* file : deskFiles)
                std::filesystem::copy_file(m_folder->path(file), m_readyFolder->path(file));
            m_world->server.sql("CREATE DATABASE ready TEMPLATE squad", "postgres");
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
    }
    /// As they were made, with the store as it was then.
    void beginTwoDesks() {
        QVERIFY(m_readyFolder && std::filesystem::exists(m_readyFolder->path(deskFiles[1])));
        m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        m_world->server.sql("CREATE DATABASE squad TEMPLATE ready", "postgres");
        std::tie(m_world->rowing, m_world->judo, m_world->begin) = m_ready;
        m_folder = std::make_unique<Folder>();
        makeDesks();
        for (const char* file : deskFiles)
            std::filesystem::copy_file(m_readyFolder->path(file), m_folder->path(file));
    }

private:
    static constexpr std::array deskFiles{"rack.slopebook", "office.slopebook"};
    void makeDesks() {
        const std::string cora = m_world->server.address("cora");
        m_rack = std::make_unique<MeetingDesk>(*m_folder, deskFiles[0], cora);
        m_office = std::make_unique<MeetingDesk>(*m_folder, deskFiles[1], cora);
    }
    std::unique_ptr<Folder> m_readyFolder;
    std::tuple<Sixteen, Sixteen, Mark> m_ready{};
};

} // namespace slopebook::test
