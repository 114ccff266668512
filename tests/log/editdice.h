// SPDX-License-Identifier: GPL-3.0-or-later
// Edits by dice through a log's own doors, and whether each is one step of what it changed and of
// nothing else.
#pragma once

#include "tests/log/carriedlogs.h"

#include <algorithm>
#include <array>
#include <random>

namespace slopebook::test {

/// One edit after another through the log's own doors, and what of each thing they may leave.
class Dice {
public:
    Dice(log::Log& log, unsigned seed) : m_log(log), m_engine(seed), m_before(heldBy(log)) {}

    void go() {
        const auto work = m_works[below(m_works.size())];
        try {
            (this->*work)();
        } catch (const LogError& error) { // still in use, or there already
            if (error.kind() != LogError::Kind::Conflict)
                throw;
        } catch (const BadInput&) { // NOLINT(bugprone-empty-catch): a name that is taken
        }
        compare();
    }
    int steps = 0, removals = 0, returns = 0;
    QString wrong;

private:
    using Work = void (Dice::*)();

    std::size_t below(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(m_engine);
    }
    template <class List>
    const auto& any(const List& list) {
        return list[below(list.size())];
    }
    double speed() { return 0.2 + 0.01 * static_cast<double>(below(100)); }
    SessionId session() {
        std::vector<SessionId> all;
        for (const auto& athlete : m_log.athletes())
            for (const auto& one : m_log.sessions(athlete.id))
                all.push_back(one.id);
        if (all.empty())
            all.push_back(m_log.add(
                SessionHead{.athlete = any(m_log.athletes()).id, .date = day(2026, 5, 1)}));
        return any(all);
    }

    void note() {
        auto one = any(m_log.athletes());
        one.value.note = "note " + std::to_string(below(4));
        m_log.change(one.id, one.value);
    }
    void lift() {
        auto one = any(m_log.lifts());
        one.value.rule = below(2) == 0 ? PointRule::Mean : PointRule::Fastest; // rewrites points
        m_log.change(one.id, one.value);
    }
    void newSet() {
        m_log.add(session(), any(m_log.lifts()).id,
                  ladderSet(20 + static_cast<double>(below(80)), {speed(), speed()}));
    }
    void changeSet() {
        const auto sets = m_log.session(session()).sets;
        if (sets.empty())
            return;
        log::PlacedSet placed = any(sets);
        if (placed.set.outcome == Outcome::Lifted)
            placed.set.reps.push_back({.velocity = speed()});
        m_log.change(placed.id, placed.set);
    }
    void removeSet() {
        const auto sets = m_log.session(session()).sets;
        if (sets.empty())
            return;
        m_gone.push_back(any(sets));
        m_log.remove(m_gone.back().id);
    }
    void putSetBack() {
        if (m_gone.empty())
            return;
        const log::PlacedSet set = m_gone.back();
        m_gone.pop_back();
        m_log.add(set.session, set.lift, set.set, set.ordinal, set.id);
    }
    void head() {
        const auto id = session();
        SessionHead head = m_log.session(id).head.value;
        head.bodyMass = Mass{50'000 + static_cast<std::int64_t>(below(3)) * 500};
        m_log.change(id, head);
    }
    void removeSession() { m_log.remove(session()); }
    void conditions() {
        m_log.setConditions(session(), any(m_log.lifts()).id,
                            below(3) == 0 ? Conditions{}
                                          : Conditions{.device = any(m_log.devices()).id,
                                                       .place = std::to_string(below(3))});
    }
    void testConditions() {
        m_log.setConditions(session(), any(m_log.testKinds()).id,
                            below(3) == 0 ? Conditions{} : Conditions{.footwear = "spikes"});
    }
    void battery() {
        const auto id = session();
        Battery held = m_log.battery(id);
        const auto kind = any(m_log.testKinds());
        if (!held.tests.empty() && !held.tests[0].attempts.empty() && below(2) == 0) {
            auto& attempts = held.tests[0].attempts;
            attempts.erase(attempts.begin() + static_cast<std::ptrdiff_t>(below(attempts.size())));
        } else {
            auto found = std::ranges::find(held.tests, kind.id, &TestAttempts::kind);
            if (found == held.tests.end())
                found = held.tests.insert(
                    held.tests.end(),
                    TestAttempts{.kind = kind.id, .attempts = {}, .conditions = {}});
            Attempt attempt;
            attempt.side = kind.value.twoSided ? BodySide::Left : BodySide::Both;
            attempt.value = speed();
            if (takesContact(kind.value.formula))
                attempt.contact = 0.2;
            found->attempts.push_back(attempt);
        }
        if (!held.gaps.empty() && below(2) == 0)
            held.gaps.erase(held.gaps.begin());
        m_log.setBattery(id, held);
    }
    void loads() {
        std::vector<Mass> loads;
        for (std::size_t n = below(4); n > 0; --n)
            loads.push_back(Mass{static_cast<std::int64_t>(below(5)) * 10'000});
        std::ranges::sort(loads);
        loads.erase(std::unique(loads.begin(), loads.end()), loads.end());
        m_log.setCheckLoads(any(m_log.athletes()).id, any(m_log.lifts()).id, loads);
    }
    void roster() {
        const auto stations = m_log.stations();
        if (stations.empty())
            return;
        Roster roster{.station = any(stations).id, .day = day(2026, 3, 14)};
        auto athletes = m_log.athletes();
        std::ranges::shuffle(athletes, m_engine);
        athletes.resize(below(athletes.size() + 1));
        for (const auto& athlete : athletes)
            roster.athletes.push_back(athlete.id);
        m_log.setRoster(roster);
    }
    void station() {
        const auto stations = m_log.stations();
        if (stations.empty())
            return;
        auto one = any(stations);
        if (below(4) == 0)
            return m_log.remove(one.id);
        one.value.sets = static_cast<int>(below(5));
        m_log.change(one.id, one.value);
    }
    void named() {
        switch (below(4)) {
        case 0:
            m_log.add(Device{.name = "device " + std::to_string(below(9))});
            break;
        case 1:
            m_log.remove(any(m_log.devices()).id);
            break;
        case 2:
            m_log.remove(any(m_log.blocks()).id);
            break;
        default:
            m_log.add(Block{.name = "block " + std::to_string(below(9)),
                            .first = day(2026, 1, 1),
                            .last = day(2026, 2, 1)});
        }
    }

    void compare() {
        const Held now = heldBy(m_log);
        const auto fault = [&](const log::Carried& one, const char* what) {
            wrong += QString::fromStdString(one.kind + " " + std::to_string(one.place.one)) + ": " +
                     what + "\n";
        };
        for (const auto& [uuid, one] : now) {
            if (one.trail.empty() || one.trail.back().hash != log::stepHash(one.hash, one.alive))
                fault(one, "the trail does not end with what it says");
            if (log::hashOf(one.content) != one.hash)
                fault(one, "the hash is not that of the content");
            const auto found = m_before.find(uuid);
            if (found == m_before.end()) {
                if (one.trail.size() != 1 || !one.alive)
                    fault(one, "new, and not of one step");
                ++steps;
                continue;
            }
            const log::Carried& was = found->second;
            if (one.hash == was.hash && one.alive == was.alive) {
                if (one.trail != was.trail)
                    fault(one, "the same, and another trail");
                continue;
            }
            ++steps;
            removals += one.alive ? 0 : 1;
            returns += one.alive && !was.alive ? 1 : 0;
            if (one.trail.size() != was.trail.size() + 1 ||
                !std::equal(was.trail.begin(), was.trail.end(), one.trail.begin()))
                fault(one, "not one step more");
            if (!one.alive && one.content != was.content)
                fault(one, "removed, and says something else");
        }
        for (const auto& [uuid, was] : m_before)
            if (!now.contains(uuid))
                fault(was, "forgotten");
        m_before = now;
    }

    static constexpr std::array<Work, 15> m_works{
        &Dice::note,           &Dice::lift,       &Dice::newSet,       &Dice::changeSet,
        &Dice::removeSet,      &Dice::putSetBack, &Dice::head,         &Dice::conditions,
        &Dice::testConditions, &Dice::battery,    &Dice::loads,        &Dice::roster,
        &Dice::station,        &Dice::named,      &Dice::removeSession};
    log::Log& m_log;
    std::mt19937 m_engine;
    Held m_before;
    std::vector<log::PlacedSet> m_gone;
};

} // namespace slopebook::test
