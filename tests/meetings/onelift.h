// SPDX-License-Identifier: GPL-3.0-or-later
// A meeting that can only write in one long transaction: hundreds of the rack's sets are of a lift
// that becomes one with the store's. What it does is watched statement by statement.
#pragma once

#include "core/log/connection.h"
#include "core/log/newsessions.h"
#include "tests/meetings/twodesks.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <stdexcept>
#include <string>
#include <utility>

namespace slopebook::test {

/// What a meeting does through its connection, statement by statement.
class Steps {
public:
    enum In { Reading = SQLITE_TXN_READ, Writing = SQLITE_TXN_WRITE };

    /// At that statement of a transaction in which it only reads, or writes, something is done.
    Steps(const log::Log& log, In in, int at, std::function<void()> what)
        : m_db(log::connectionOf(log).database().getHandle()), m_in(in), m_at(at),
          m_what(std::move(what)) {
        sqlite3_trace_v2(m_db, SQLITE_TRACE_STMT, &Steps::begins, this);
        sqlite3_rollback_hook(m_db, &Steps::rolledBack, this);
        sqlite3_commit_hook(m_db, &Steps::commits, this);
    }
    ~Steps() {
        sqlite3_trace_v2(m_db, 0, nullptr, nullptr);
        sqlite3_rollback_hook(m_db, nullptr, nullptr);
        sqlite3_commit_hook(m_db, nullptr, nullptr);
    }
    Steps(const Steps&) = delete;
    Steps& operator=(const Steps&) = delete;

    /// From then until the transaction ended, and how it did; -1: it was not done, or is under way.
    int statementsUntilEnd() const { return m_untilEnd; }
    bool wasTakenBack() const { return m_takenBack; }
    /// Of the longest transaction that was committed.
    int longest() const { return m_longest; }

private:
    static int begins(unsigned /*event*/, void* self, void* /*statement*/, void* /*sql*/) {
        auto& steps = *static_cast<Steps*>(self);
        const int in = sqlite3_txn_state(steps.m_db, "main");
        steps.m_here = in == steps.m_was ? steps.m_here + 1 : 0;
        steps.m_was = in;
        if (steps.m_since >= 0)
            ++steps.m_since;
        if (in == steps.m_in && steps.m_here == steps.m_at && steps.m_what) {
            steps.m_since = 0;
            std::exchange(steps.m_what, nullptr)();
        }
        return 0;
    }
    void end(bool takenBack) {
        if (m_since < 0 || m_untilEnd >= 0)
            return;
        m_untilEnd = m_since;
        m_takenBack = takenBack;
    }
    static void rolledBack(void* self) { static_cast<Steps*>(self)->end(true); }
    static int commits(void* self) {
        auto& steps = *static_cast<Steps*>(self);
        steps.m_longest = std::max(steps.m_longest, steps.m_here);
        steps.end(false);
        return 0;
    }

    sqlite3* m_db;
    In m_in;
    int m_at;
    std::function<void()> m_what;
    int m_was = -1, m_here = 0, m_since = -1, m_untilEnd = -1, m_longest = 0;
    bool m_takenBack = false;
};

class OneLift : public TwoDesks {
protected:
    enum class Who { Window, Program };

    /// A log with a "Bench pull" of its own.
    static void fill(const MeetingDesk& desk, const std::string& name, int sessions) {
        log::Log log = log::Log::create(desk.file());
        const LiftId lift = log.add(Lift{.name = "Bench pull"});
        const AthleteId who = log.add(Athlete{.name = name});
        log::addSessions(log, manySessions(who, lift, sessions));
    }
    /// The office's lift is in the store; hundreds of the rack's sets are of one that will be it.
    void prepare() {
        beginEmpty();
        fill(*m_office, "Ada", 2);
        m_office->join("Rowing");
        m_office->meet();
        fill(*m_rack, "Bea", 40);
        m_rack->join("Rowing");
    }
    static meetings::MeetingReport meet(log::Log& log, const meetings::Patience& patience = {},
                                        const Progress& progress = {}) {
        Connection store = Connection::open(meetings::addressOf(log));
        return meetings::meet(log, store, "2026-03-14T09:30:00Z", progress, patience);
    }
    /// At the rack; throws where it is refused.
    void enter(Who who) const {
        if (who == Who::Window) {
            log::Log log = m_rack->open();
            log.add(aSession(log), log.lifts().front().id, ladderSet(77.5, {0.5}));
            return;
        }
        const auto file = m_folder->path("sets.csv");
        std::ofstream(file) << "athlete,date,lift,set,rep,load_kg,velocity\n"
                               "Bea,2020-03-01,Bench pull,1,1,77.5,0.5\n";
        const std::string command = std::string(SLOPEBOOK_PROGRAM) + " import '" +
                                    m_rack->file().string() + "' '" + file.string() +
                                    "' >/dev/null";
        if (std::system(command.c_str()) != 0)
            throw std::runtime_error(command);
    }
    static bool hasEntry(const MeetingDesk& desk) {
        const log::Log log = desk.open();
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                for (const auto& placed : log.session(session.id).sets)
                    if (placed.set.load == massFromKilograms(77.5))
                        return true;
        return false;
    }

    void requireOneLift() const {
        for (int i = 0; i < 2; ++i) {
            m_office->meet();
            m_rack->meet();
        }
        requireSame();
        QCOMPARE(m_rack->open().lifts().size(), std::size_t(1));
    }
};

} // namespace slopebook::test
