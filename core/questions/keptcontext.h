// SPDX-License-Identifier: GPL-3.0-or-later
// What all athletes' sessions of a lift say together, kept for a log that is open: after a write
// only the athletes whose sessions it changed are read anew.
#pragma once

#include "core/log/history.h"
#include "core/questions/liftcontext.h"

namespace slopebook::questions {

class KeptContext {
public:
    explicit KeptContext(LiftId lift) : m_lift(lift) {}
    /// The same as liftContext() makes of the log as it stands. Good until the next call. Throws
    /// LogError; then all is read anew at the next call.
    const LiftContext& of(const log::Log& log);
    /// Likewise, and hands it over: nothing is kept then.
    LiftContext taken(const log::Log& log) &&;

private:
    /// What the sessions of one athlete add.
    struct Part {
        std::vector<answers::RepeatPair> repeats{};
        std::vector<LiftSession> twoDevices{};
        std::vector<TestDay> days{};
        std::vector<AthleteId> athletes{}; ///< none, or the one
        std::vector<answers::EstimatePair> estimates{};
    };
    /// One repeat test's part of the sums.
    struct PairSums {
        AthleteId athlete{};
        std::optional<DeviceId> device{};
        stats::RepeatSums sums{};
    };

    void readAll(const log::Log& log);
    void readAnew(const log::Log& log, AthleteId athlete);
    Part partOf(const std::vector<LiftSession>& ofOne) const;
    void put(AthleteId athlete, Part part);
    void addUp();

    LiftId m_lift;
    LiftContext m_context;
    log::AthleteWatch m_watch;
    answers::SquadLatest m_squad;
    std::vector<PairSums> m_pairs; ///< of m_context.repeats, in their order
    std::optional<long> m_version; ///< of the log, when it was looked at
    bool m_read = false;
};

} // namespace slopebook::questions
