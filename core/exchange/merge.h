// SPDX-License-Identifier: GPL-3.0-or-later
// Brings what files say into a log: adds what is new, fills in what is blank, leaves what is there
// already, refuses what contradicts it. Runs inside one transaction of the caller's.
#pragma once

#include "core/exchange/byname.h"
#include "core/exchange/staging.h"
#include "core/exchange/tables.h"
#include "core/exchange/tidyimport.h"

#include <functional>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace slopebook::exchange {

class Merge {
public:
    Merge(log::Log& log, const ImportSettings& settings, ImportReport& report);

    // In this order: rows refer to what the tables name.
    void tables(const Tables& tables);
    void rows(const Staging& staging);
    /// --mvt; the lifts of the files and of the log are known by then.
    void thresholds();
    void checkLoads(const Tables& tables);

    /// What a table of sessions says of a whole session goes to each lift and test that it holds,
    /// once those are there; to the session's note where it holds none.
    void sessionConditions(const Staging& staging);
    /// Where set: what of a row contradicts the log is handed to it, and the work goes on, for the
    /// caller to take the transaction back; else it is thrown.
    std::function<void(const BadInput&)> refused;

private:
    template <class Work>
    void orRefuse(const Work& work) {
        try {
            work();
        } catch (const BadInput& bad) {
            if (!refused)
                throw;
            refused(bad);
        }
    }
    /// The same for a row of a table: what has no place of its own has the row's.
    template <class Work>
    void orRefuse(const Where& where, const Work& work) {
        orRefuse([&] {
            try {
                work();
            } catch (const BadInput& bad) {
                if (bad.where().line > 0)
                    throw;
                throw BadInput(where, bad.found(), bad.expected());
            }
        });
    }
    using SessionKey = std::pair<Date, int>;

    void athlete(const Row<Athlete>& row);
    void device(const Row<Device>& row);
    void lift(const Row<LiftRow>& row);
    void block(const Row<Block>& row, const std::vector<Stored<BlockId, Block>>& before);
    void fillLift(const Row<LiftRow>& row, Stored<LiftId, Lift>& held);
    void fillMvt(const Row<LiftRow>& row, Lift& lift);
    void threshold(const std::string& lift, double value);
    void checkLoad(const Row<CheckLoadRow>& row);
    AthleteId athleteFor(const std::string& name);
    DeviceId deviceFor(const std::string& name);
    LiftId liftFor(const StagedLift& staged, const Staging& staging);
    void blocksOf(const Staging& staging);
    void extendBlock(const StagedBlock& staged);

    void sessions(const Staging& staging);
    SessionId sessionFor(const Staging& staging, const StagedSession& staged);
    void fillHead(const Staging& staging, const StagedSession& staged,
                  Stored<SessionId, SessionHead>& held);
    void repeats(const Staging& staging);
    void conditions(const Staging& staging);
    void conditionsOf(const Staging& staging, const StagedConditions& staged);
    void spread(const Staging& staging, const StagedSession& staged, SessionId session);
    void sets(const Staging& staging);
    void flag(const Words& what) {
        if (m_report.flagged.size() < flagsKept)
            m_report.flagged.push_back(what);
        else
            ++m_report.flaggedMore;
    }
    void newSet(const Staging& staging, const StagedSet& staged);
    void knownSet(const Staging& staging, const StagedSet& staged, const log::PlacedSet& held);
    std::map<SessionKey, Stored<SessionId, SessionHead>>& sessionsOf(AthleteId athlete);
    Words about(const Staging& staging, const StagedSession& session) const;

    log::Log& m_log;
    const ImportSettings& m_settings;
    ImportReport& m_report;
    ByName<AthleteId, Athlete> m_athletes;
    ByName<LiftId, Lift> m_lifts;
    ByName<DeviceId, Device> m_devices;
    std::vector<Stored<BlockId, Block>> m_blocks;
    std::map<AthleteId, std::map<SessionKey, Stored<SessionId, SessionHead>>> m_sessions;
    std::vector<AthleteId> m_athleteIds; // by the index of Staging
    std::vector<LiftId> m_liftIds;       // likewise
    std::vector<SessionId> m_sessionIds; // likewise
    std::vector<char> m_sessionWasThere; // likewise
};

} // namespace slopebook::exchange
