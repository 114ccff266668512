// SPDX-License-Identifier: GPL-3.0-or-later
// A log that two windows write to, with what a coach does to its sessions by dice: what is kept
// beside a log has to hold through all of it.
#pragma once

#include "core/log/log.h"
#include "core/model/errors.h"
#include "core/questions/repeats.h"
#include "tests/log/builders.h"

#include <QString>

#include <optional>
#include <random>
#include <stdexcept>
#include <vector>

namespace slopebook::tests {

inline bool same(const stats::RepeatSums& a, const stats::RepeatSums& b) {
    return a.pairs == b.pairs && a.halfSquares == b.halfSquares && a.within == b.within;
}

class TwoWindows {
protected:
    explicit TwoWindows(unsigned seed) : m_random(seed) {}

    int upTo(int count) { return std::uniform_int_distribution(0, count - 1)(m_random); }
    template <class Value>
    Value any(const std::vector<Value>& of) {
        return of[static_cast<std::size_t>(upTo(static_cast<int>(of.size())))];
    }
    /// Two lifts and two devices; the athletes are the world's own.
    void addLiftsAndDevices() {
        for (const char* name : {"Bench pull", "Back squat"})
            m_lifts.push_back(m_log.add(Lift{.name = name}));
        for (const char* name : {"Encoder A", "Encoder B"})
            m_devices.push_back(m_log.add(Device{.name = name}));
    }
    /// The last session before, that is no repeat itself.
    static std::optional<SessionId> earlierOf(const log::Log& by, const SessionHead& head) {
        std::optional<SessionId> found;
        for (const auto& one : by.sessions(head.athlete))
            if (one.value.date < head.date && !one.value.repeatOf)
                found = one.id;
        return found;
    }
    static void makeARepeat(log::Log& by, SessionId session) {
        SessionHead head = by.session(session).head.value;
        head.repeatOf = earlierOf(by, head);
        by.change(session, head);
    }
    static void makeNoRepeat(log::Log& by, SessionId session) {
        SessionHead head = by.session(session).head.value;
        head.repeatOf.reset();
        by.change(session, head);
    }
    /// This window's log, or now and then the other's.
    log::Log& anyWindow() { return upTo(3) == 0 ? m_other : m_log; }
    void removeASet(log::Log& by, SessionId session, LiftId lift) {
        if (const auto sets = by.sets(session, lift); !sets.empty())
            by.remove(any(sets).id);
    }
    template <class Work>
    static void takenBack(log::Log& by, const Work& work) {
        try {
            by.together([&] {
                work();
                throw std::runtime_error("taken back");
            });
        } catch (const std::runtime_error&) { // NOLINT(bugprone-empty-catch)
        }
    }

    std::mt19937 m_random;
    test::Folder m_folder;
    log::Log m_log = log::Log::create(m_folder.path());
    log::Log m_other = log::Log::open(m_folder.path());
    std::vector<AthleteId> m_athletes;
    std::vector<LiftId> m_lifts;
    std::vector<DeviceId> m_devices;
    std::vector<SessionId> m_sessions;
};

/// Has the world act so often, and asks it each time what is wrong; the first answer, with its
/// step.
template <class World, class Wrong>
QString firstWrong(World& world, int steps, const Wrong& wrong) {
    QString found = wrong();
    for (int i = 0; i < steps && found.isEmpty(); ++i) {
        try {
            world.act();
        } catch (const LogError&) { // a repeat of a repeat and its like: refused, no harm
        } catch (const BadInput&) { // NOLINT(bugprone-empty-catch)
        }
        found = wrong();
        if (!found.isEmpty())
            found += QStringLiteral(" at step %1").arg(i);
    }
    return found;
}

} // namespace slopebook::tests
