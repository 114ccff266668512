// SPDX-License-Identifier: GPL-3.0-or-later
// Six desks and a store in which everything goes wrong at once: connections cut at any message, the
// server killed, the store gone back to a backup, desks gone back to theirs or copied over one
// another, athletes and days entered everywhere. In the end all say the same as the store, and
// nothing that the store had acknowledged is missing while anybody still had it.
#include "core/desks/conflictsides.h"
#include "core/store/thingjson.h"
#include "tests/meetings/meetingworld.h"
#include "tests/support/cuttingproxy.h"
#include "tests/support/longrun.h"

#include <map>
#include <memory>
#include <random>

using namespace slopebook;
using namespace slopebook::test;
namespace fs = std::filesystem;

namespace {
constexpr int desksInAll = 6;

/// A state of a thing: by its revision.
using States = std::map<Sixteen, std::set<Sixteen>>; ///< revisions by thing

States statesIn(const Said& said) {
    States all;
    for (const auto& [uuid, one] : said)
        all[uuid].insert(std::get<2>(one).back());
    return all;
}
} // namespace

class TestMeetingChaos : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<CuttingProxy> m_proxy;
    std::unique_ptr<Folder> m_folder;
    std::vector<MeetingDesk> m_desks;
    std::mt19937 m_random;
    States m_acknowledged;
    std::map<std::string, int> m_did;

    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(m_random); }
    fs::path file(const std::string& name) const { return m_folder->path(name.c_str()); }

    /// How a meeting ended; whatever it was, the log is sound.
    bool meet(const MeetingDesk& desk, bool throughProxy) {
        try {
            log::Log log = desk.open();
            const std::string address = throughProxy
                                            ? Postgres::addressAt(m_proxy->port(), "cora") +
                                                  " sslmode=disable gssencmode=disable"
                                            : desk.address();
            Connection store = Connection::open(store::Address::read(address));
            const auto report = meetings::meet(log, store, "2026-03-14T09:30:00Z");
            if (!report.leftOut.empty())
                throw std::runtime_error("left out: " + english(report.leftOut.front()));
            if (report.waiting != 0)
                throw std::runtime_error("something waits after a meeting");
        } catch (const StoreError& error) {
            ++m_did["  of them failed"];
            if (!throughProxy && error.kind() != StoreError::Kind::Starting &&
                error.kind() != StoreError::Kind::Unreachable)
                throw;
            return false;
        }
        for (auto& [uuid, states] : statesIn(saidBy(desk.file())))
            m_acknowledged[uuid].merge(states);
        return true;
    }

    /// After something was destroyed: what nobody has any more is not asked for.
    void forgetWhatNobodyHas() {
        std::map<Sixteen, std::set<Sixteen>> held;
        const auto add = [&](const Said& said) {
            for (const auto& [uuid, one] : said)
                held[uuid].insert(std::get<2>(one).begin(), std::get<2>(one).end());
        };
        for (const MeetingDesk& desk : m_desks)
            add(saidBy(desk.file()));
        Connection cora = m_world->as("cora");
        add(saidByStore(cora));
        for (auto at = m_acknowledged.begin(); at != m_acknowledged.end();) {
            const auto now = held.find(at->first);
            std::erase_if(at->second, [&](const Sixteen& revision) {
                return now == held.end() || !now->second.contains(revision);
            });
            at = at->second.empty() ? m_acknowledged.erase(at) : std::next(at);
        }
    }

    void restoreStore() {
        m_world->server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        m_world->server.sql("CREATE DATABASE squad", "postgres");
        m_world->server.run("pg_restore", "-d squad " + file("dump").string());
        forgetWhatNobodyHas();
    }

    void oneThing() {
        const int i = below(desksInAll);
        const MeetingDesk& desk = m_desks[static_cast<std::size_t>(i)];
        const int what = below(100);
        if (what < 40) {
            ++m_did["edits"];
            desk.edit(static_cast<unsigned>(m_random()), 1 + below(4));
        } else if (what < 68) {
            ++m_did["meetings"];
            meet(desk, false);
        } else if (what < 84) {
            ++m_did["meetings on a bad line"];
            if (below(3) == 0)
                m_proxy->holdAt(1 + below(120));
            else
                m_proxy->cutAt(1 + below(120));
            meet(desk, true);
            m_proxy->deliverLate();
            m_proxy->cutAt(0);
        } else if (what < 88) {
            ++m_did["choices"];
            log::Log log = desk.open();
            const auto open = desks::openConflicts(log);
            if (open.empty())
                return;
            const auto& one = open[static_cast<std::size_t>(below(static_cast<int>(open.size())))];
            try {
                desks::settle(log, one.uuid,
                              below(2) == 0 ? desks::Choice::AsItStands : desks::Choice::WhatLost);
            } catch (const LogError&) { // it cannot stand now
            }
        } else if (what < 91) {
            ++m_did["backups made"];
            fs::copy_file(desk.file(), file("backup" + std::to_string(i)),
                          fs::copy_options::overwrite_existing);
        } else if (what < 94) {
            const fs::path backup = file("backup" + std::to_string(i));
            if (!fs::exists(backup))
                return;
            ++m_did["desks gone back"];
            fs::copy_file(backup, desk.file(), fs::copy_options::overwrite_existing);
            forgetWhatNobodyHas();
        } else if (what < 96) {
            ++m_did["desks copied"];
            const auto& other = m_desks[static_cast<std::size_t>(below(desksInAll))];
            if (other.file() == desk.file())
                return;
            fs::copy_file(other.file(), desk.file(), fs::copy_options::overwrite_existing);
            forgetWhatNobodyHas();
        } else if (what < 97) {
            ++m_did["servers killed"];
            m_world->server.killHard();
            m_world->server.start();
        } else if (what < 99) {
            ++m_did["dumps"];
            m_world->server.run("pg_dump", "-Fc -f " + file("dump").string() + " squad");
        } else if (fs::exists(file("dump"))) {
            ++m_did["stores gone back"];
            restoreStore();
        }
    }

    /// Three desks begin as copies of one log, the others with their own.
    void begin(unsigned seed) {
        m_random.seed(seed);
        m_folder = std::make_unique<Folder>();
        m_acknowledged.clear();
        m_desks.clear();
        beginAnew(*m_world);
        for (int i = 0; i < desksInAll; ++i) {
            const MeetingDesk& desk = m_desks.emplace_back(
                *m_folder, ("desk" + std::to_string(i)).c_str(), m_world->server.address("cora"));
            if (i == 0) {
                log::Log log = log::Log::create(desk.file());
                const Season season = fillSeason(log);
                addTestDay(log, season, addOtherThings(log, season));
            } else if (i < 3) {
                fs::copy_file(m_desks.front().file(), desk.file());
            } else {
                desk.create();
            }
        }
        for (const MeetingDesk& desk : m_desks) {
            desk.edit(static_cast<unsigned>(m_random()), 8);
            desk.join();
        }
    }

    void requireEnd() {
        for (int round = 0; round < 4; ++round)
            for (const MeetingDesk& desk : m_desks)
                QVERIFY(meet(desk, false));
        Connection cora = m_world->as("cora");
        const Said there = saidByStore(cora);
        for (const MeetingDesk& desk : m_desks) {
            const std::string where = difference(saidBy(desk.file()), there);
            QVERIFY2(where.empty(), where.c_str());
            const std::string found = findingsIn(desk.file());
            QVERIFY2(found.empty(), found.c_str());
            QCOMPARE(desk.waiting(), 0);
        }
        for (const auto& [uuid, states] : m_acknowledged) {
            const auto at = there.find(uuid);
            QVERIFY2(at != there.end(), (std::string("lost ") + store::uuidText(uuid)).c_str());
            for (const Sixteen& revision : states)
                QVERIFY2(std::ranges::find(std::get<2>(at->second), revision) !=
                             std::get<2>(at->second).end(),
                         ("a state lost of " + store::uuidText(uuid)).c_str());
        }
        m_did["things at last"] += static_cast<int>(there.size());
    }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        m_proxy = std::make_unique<CuttingProxy>(m_world->server.port());
    }

    void allSayTheSame_data() {
        QTest::addColumn<unsigned>("seed");
        const int first = std::max(1, qEnvironmentVariableIntValue("SLOPEBOOK_MEETING_SEED"));
        const int worlds = rounds("SLOPEBOOK_MEETING_WORLDS", 2, 50);
        for (int seed = first; seed < first + worlds; ++seed)
            QTest::addRow("seed %d", seed) << static_cast<unsigned>(seed);
    }
    void allSayTheSame() {
        QFETCH(unsigned, seed);
        QVERIFY(m_world);
        begin(seed);
        try {
            for (int i = rounds("SLOPEBOOK_MEETING_ROUNDS", 150, 200); i > 0; --i)
                oneThing();
            requireEnd();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
    }
    void whatWasDone() {
        for (const auto& [what, times] : m_did)
            qInfo("%s: %d", what.c_str(), times);
        QVERIFY(m_did["meetings"] > 0 && m_did["  of them failed"] > 0);
    }
};

QTEST_GUILESS_MAIN(TestMeetingChaos)
#include "tst_meetingchaos.moc"
