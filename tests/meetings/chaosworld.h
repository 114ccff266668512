// SPDX-License-Identifier: GPL-3.0-or-later
// Six desks of three logins, two squads and a store in which everything goes wrong at once. cora
// writes Rowing at three desks, dora writes Judo at two and is let into Rowing and out of it, jo
// writes Judo at one; athletes move between the squads.
#pragma once

#include "tests/meetings/meetingworld.h"
#include "tests/support/cuttingproxy.h"

#include <map>
#include <memory>
#include <random>
#include <set>

namespace slopebook::test {

class ChaosWorld {
public:
    ChaosWorld();
    /// Three desks begin with what two of them share, the others apart.
    void begin(unsigned seed);
    /// Throws std::exception for what must not be.
    void oneThing();
    /// After everybody has met: what is not as it must be; empty: nothing.
    std::string whatIsWrong();

    std::map<std::string, int> did; ///< how often, in all worlds

private:
    struct Desk {
        MeetingDesk at;
        std::string login, squad;
    };
    using States = std::map<Sixteen, std::set<Sixteen>>; ///< revisions by thing

    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(m_random); }
    std::filesystem::path file(const std::string& name) const {
        return m_folder->path(name.c_str());
    }
    Desk& someDesk() { return m_desks[static_cast<std::size_t>(below(int(m_desks.size())))]; }

    enum class Line { Good, Bad };
    /// Whether it came to its end.
    bool meet(const Desk& desk, Line line, bool types = false);
    void meetOnABadLine(const Desk& desk);
    void syncAndKill(const Desk& desk);
    void twoPrograms(const Desk& desk);
    void choose(const Desk& desk);
    void leaveAndJoin(const Desk& desk);
    void makeBackup(int which);
    void goBack(int which);
    void copyOver(Desk& desk);
    void grantDora();
    void moveAnAthlete();
    void move(const Sixteen& athlete, const Sixteen& squad);
    void repeatMoves();
    void dump();
    void restoreStore();
    pid_t startSync(const Desk& desk) const;

    void acknowledge(const Desk& desk);
    /// After something was destroyed: what nobody has any more is not asked for.
    void forgetWhatNobodyHas();
    Said allInStore();
    /// Where each thing is in the store now.
    std::map<Sixteen, Sixteen> squadsInStore() const;
    void seeSquads();
    std::string wrongAt(const Desk& desk);
    std::string whereItIs(const Sixteen& uuid) const;
    std::string whyWaits(log::Connection& db, const Sixteen& uuid,
                         const std::map<Sixteen, Sixteen>& squads,
                         const std::set<Sixteen>& open) const;

    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<CuttingProxy> m_proxy;
    std::unique_ptr<Folder> m_folder;
    std::vector<Desk> m_desks;
    std::mt19937 m_random;
    States m_acknowledged;
    std::set<Sixteen> m_waits; ///< at last, at some desk, for what may never come
    std::map<Sixteen, std::set<Sixteen>> m_seenIn; ///< the squads that a thing ever was in
    std::map<Sixteen, Sixteen> m_moved;            ///< where an athlete was moved last
};

} // namespace slopebook::test
