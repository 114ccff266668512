// SPDX-License-Identifier: GPL-3.0-or-later
// Brings what files say into a log: adds what is new, fills in what is blank, leaves what is there
// already, refuses what contradicts it. Runs inside one transaction of the caller's.
#pragma once

#include "core/exchange/byname.h"
#include "core/exchange/identitycsv.h"
#include "core/exchange/staging.h"
#include "core/exchange/tables.h"
#include "core/exchange/tidyimport.h"
#include "core/log/newsessions.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace slopebook::exchange {

/// A session stands in rows that were handed over apart (Staging::handOver).
struct NotInOrder {};

class Merge {
public:
    Merge(log::Log& log, const ImportSettings& settings, ImportReport& report);

    /// Before all else: what things of the log are called in the files.
    void meet(const KnownThings& known);
    // In this order: rows refer to what the tables name.
    void tables(const Tables& tables);
    /// Once for all rows, or for one part of them after the other (Staging::handOver): throws
    /// NotInOrder where a session of this one is among those that an earlier one brought.
    void rows(const Staging& staging);
    /// Once all are there.
    void finishRows(const Staging& staging);
    /// --mvt; the lifts of the files and of the log are known by then.
    void thresholds();
    void checkLoads(const Tables& tables);

    /// What a table of sessions says of a whole session goes to each lift and test that it holds,
    /// once those are there; to the session's note where it holds none. Only where rows() was
    /// called once.
    void sessionConditions(const Staging& staging);
    /// Lifts and loads that were not possible, once the other tables are there.
    void gaps();
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
    const std::string& blockName(const std::string& name) const;

    void sessions(const Staging& staging);
    void names(const Staging& staging);
    std::optional<SessionId> knownSession(const Staging& staging, const StagedSession& staged);
    void newSession(const Staging& staging, std::size_t at, std::span<const std::size_t> itsSets);
    void writeNew(const Staging& staging);
    void takeGaps(const Staging& staging);
    std::optional<SessionId> sessionOn(AthleteId athlete, const SessionKey& key);
    static std::optional<SessionKey> repeatedDay(const std::string& key);
    void repeat(const Staging& staging, const StagedSession& staged, SessionId id);
    void fillHead(const Staging& staging, const StagedSession& staged,
                  Stored<SessionId, SessionHead>& held);
    void conditions(const Staging& staging);
    void conditionsOf(const Staging& staging, const StagedConditions& staged);
    void spread(const Staging& staging, const StagedSession& staged, SessionId session);
    void sets(const Staging& staging, const std::vector<std::size_t>& sessionsInOrder);
    void knownSets(const Staging& staging, std::size_t at, std::span<const std::size_t> itsSets);
    void flag(const Words& what) {
        if (m_report.flagged.size() < flagsKept)
            m_report.flagged.push_back(what);
        else
            ++m_report.flaggedMore;
    }
    void newSet(const Staging& staging, const StagedSet& staged);
    void told(std::size_t sets, std::size_t ofSets);
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
    std::map<std::string, std::string> m_blockNames; ///< of the files, by key: the log's
    const KnownThings* m_known = nullptr;
    std::map<AthleteId, std::map<SessionKey, Stored<SessionId, SessionHead>>> m_sessions;
    std::vector<AthleteId> m_athleteIds; // by the index of Staging
    std::vector<LiftId> m_liftIds;       // likewise
    std::vector<char> m_liftKindSaid;    // likewise
    // Of the sessions of the staging that rows() is at, or was last.
    std::vector<SessionId> m_sessionIds;
    std::vector<char> m_sessionIsNew;
    std::map<std::size_t, std::vector<LiftConditions>> m_newConditions;
    std::set<std::size_t> m_repeatsToCome; ///< new ones, whose repeated session was not there yet
    std::vector<log::NewSession> m_new;    // gathered, to be written together
    std::vector<std::size_t> m_newAt;
    std::size_t m_newSets = 0;
    std::int64_t m_setsDone = 0;
    // Of all that were added.
    struct OnDay {
        AthleteId athlete{};
        SessionKey key{};
        friend bool operator==(const OnDay&, const OnDay&) = default;
    };
    struct OnDaySpread {
        std::size_t operator()(const OnDay& day) const noexcept;
    };
    std::unordered_map<OnDay, SessionId, OnDaySpread> m_added;
    std::set<SessionId> m_met; ///< of the log's own, those that rows were of
    std::vector<std::pair<StagedSession, SessionId>> m_repeats;
    std::map<SessionId, std::vector<Gap>> m_gaps;
};

} // namespace slopebook::exchange
