// SPDX-License-Identifier: GPL-3.0-or-later
// Logs made at random: everything that the exchange carries, with the names and notes that files
// stumble over.
#pragma once

#include "core/log/log.h"
#include "core/model/names.h"

#include <algorithm>
#include <map>
#include <random>

namespace slopebook::tests {

/// A log made at random, from a fixed seed.
class Maker {
public:
    explicit Maker(unsigned seed) : m_engine(seed) {}

    void fill(log::Log& log) {
        std::vector<DeviceId> devices;
        for (int i = 0; i < 2; ++i)
            devices.push_back(log.add(Device{.name = name("device", i), .note = text()}));
        std::vector<LiftId> lifts;
        for (int i = 0; i < 3; ++i)
            lifts.push_back(log.add(lift(i)));
        for (int i = 0; i < 3; ++i)
            block(log, i);
        for (int i = 0; i < 4; ++i)
            test(log, i);
        for (int i = 0; i < 3; ++i) {
            const AthleteId athlete = log.add(Athlete{.name = name("athlete", i), .note = text()});
            log.setCheckLoads(athlete, lifts[0], {Mass{below(400) * 500}});
            m_athletes.push_back(athlete);
            sessions(log, athlete, devices, lifts);
        }
        for (int i = below(4); i > 0; --i)
            station(log, i, devices, lifts);
    }

private:
    int below(int n) { return std::uniform_int_distribution<int>(0, n - 1)(m_engine); }
    bool chance(int oneIn) { return below(oneIn) == 0; }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    Date day() {
        return Date{std::chrono::sys_days{std::chrono::year{2025} / 1 / 1} +
                    std::chrono::days{below(40)}};
    }

    std::string text() {
        static const std::vector<std::string> awkward{"",           "missed the groove",
                                                      "=1+1",       "+49 170",
                                                      "-5",         "@x",
                                                      "\t=1",       "'=1",
                                                      "''+x",       "a, b",
                                                      "say \"go\"", " blank ",
                                                      "two\nlines", "CR\r\nLF",
                                                      "\rCR first", "\xC3\xA4\xE2\x82\xAC",
                                                      "; ;",        "#1",
                                                      "'",          "\"",
                                                      "1,5",        "TRUE",
                                                      "nan",        "  =2"};
        return awkward[static_cast<std::size_t>(below(static_cast<int>(awkward.size())))];
    }
    // Names are told apart by a number; some are near enough to be asked about, were they not
    // listed as two.
    std::string name(const std::string& kind, int i) {
        if (i == 2)
            return kind == "athlete" ? "Jose" : *tidyName(text() + "x");
        return i == 1 && kind == "athlete" ? "Jos\xC3\xA9"
                                           : *tidyName(text() + kind + std::to_string(i));
    }

    Lift lift(int i) {
        Lift made;
        made.name = name("lift", i);
        made.kind = static_cast<VelocityKind>(below(3));
        made.rule = chance(2) ? PointRule::Mean : PointRule::Fastest;
        made.ballistic = chance(4);
        made.movesBody = chance(3);
        if (chance(2))
            made.mvt = Mvt{.value = real(0.1, 0.6),
                           .sd = chance(2) ? std::optional(real(0, 0.1)) : std::nullopt,
                           .origin = chance(2) ? Mvt::Origin::Coach : Mvt::Origin::Published,
                           .source = text()};
        if (chance(2))
            made.smallestVelocity = real(0.01, 0.1);
        if (chance(2))
            made.smallestOneRm = real(1, 5);
        made.note = text();
        return made;
    }

    // Blocks may share a name, overlap, and leave days free.
    void block(log::Log& log, int i) {
        const Date first{std::chrono::sys_days{std::chrono::year{2025} / 1 / 1} +
                         std::chrono::days{10 * i}};
        log.add(Block{.name = chance(2) ? "Winter" : *tidyName(text() + "block"),
                      .first = first,
                      .last = Date{std::chrono::sys_days{first} + std::chrono::days{below(20)}},
                      .ceiling = chance(2) ? std::optional(Mass{62'500}) : std::nullopt,
                      .trained = text(),
                      .aWeek = aWeek(),
                      .note = text()});
    }

    std::optional<SessionsAWeek> aWeek() {
        if (chance(3))
            return std::nullopt;
        const double fewest = 0.5 * (1 + below(42));
        return chance(2) ? sessionsAWeek(fewest, fewest)
                         : sessionsAWeek(fewest, std::min(mostAWeek, fewest + 0.5 * below(8)));
    }

    void sessions(log::Log& log, AthleteId athlete, const std::vector<DeviceId>& devices,
                  const std::vector<LiftId>& lifts) {
        std::map<Date, int> ofDay;
        std::vector<SessionId> made;
        for (int i = below(5); i > 0; --i) {
            SessionHead head;
            head.athlete = athlete;
            head.date = day();
            head.ordinal = ++ofDay[head.date];
            if (chance(2))
                head.bodyMass = Mass{50'000 + below(60'000)};
            if (!made.empty() && chance(3))
                head.repeatOf = made.back();
            head.note = text();
            made.push_back(log.add(head));
            sets(log, made.back(), lifts);
            for (const LiftId lift : lifts)
                if (chance(2))
                    log.setConditions(made.back(), lift, conditions(devices));
            log.setBattery(made.back(), battery(devices, lifts));
        }
    }

    // One with a contact time, one of two legs, one of each leg and both, one of the body's mass.
    void test(log::Log& log, int i) {
        TestKind kind;
        kind.name = *tidyName(text() + "test" + std::to_string(i));
        kind.unit = chance(2) ? "m" : "N/kg";
        kind.higherIsBetter = chance(2);
        kind.twoSided = i == 1 || i == 2;
        kind.bothToo = i == 2;
        kind.rule = chance(2) ? AttemptRule::Mean : AttemptRule::Best;
        if (kind.rule == AttemptRule::Mean)
            kind.bestOf = below(4);
        kind.attempts = 1 + below(50);
        kind.formula = i == 0   ? TestFormula::HeightRsi
                       : i == 3 ? TestFormula::PerBodyMass
                                : TestFormula::Value;
        kind.decimals = below(5);
        if (chance(2))
            kind.noise = TestNoise{.value = real(0.1, 9),
                                   .percent = chance(2),
                                   .source = *tidyName(text() + "repeats")};
        if (chance(2))
            kind.smallest = real(0.01, 3);
        kind.smallestSource = kind.smallest ? text() : "";
        kind.note = text();
        m_tests.push_back({log.add(kind), kind});
    }

    Battery battery(const std::vector<DeviceId>& devices, const std::vector<LiftId>& lifts) {
        Battery made;
        for (const auto& [id, kind] : m_tests) {
            if (!chance(2))
                continue;
            TestAttempts& test =
                made.tests.emplace_back(TestAttempts{.kind = id, .attempts = {}, .conditions = {}});
            if (chance(2))
                test.conditions = conditions(devices);
            for (int n = below(5); n > 0; --n)
                test.attempts.push_back(attempt(kind));
        }
        for (int n = below(4); n > 0; --n) {
            Gap gap;
            gap.reason = *tidyName(text() + "why");
            if (chance(2)) {
                const auto& [id, kind] = m_tests[static_cast<std::size_t>(below(4))];
                gap.kind = id;
                gap.side = side(kind);
            } else {
                gap.lift = lifts[static_cast<std::size_t>(below(3))];
                if (chance(2))
                    gap.load = Mass{below(200'000)};
                else if (chance(3))
                    gap.side = chance(2) ? BodySide::Left : BodySide::Right;
            }
            if (std::ranges::find(made.gaps, gap) == made.gaps.end())
                made.gaps.push_back(gap);
        }
        return made;
    }
    BodySide side(const TestKind& kind) {
        if (!kind.twoSided || (kind.bothToo && chance(3)))
            return BodySide::Both;
        return chance(2) ? BodySide::Left : BodySide::Right;
    }
    Attempt attempt(const TestKind& kind) {
        Attempt made;
        made.side = side(kind);
        made.value = real(0.01, 900);
        if (takesContact(kind.formula))
            made.contact = real(0.05, 9);
        made.note = chance(3) ? text() : "";
        made.excluded = chance(4) ? text() : "";
        return made;
    }

    void station(log::Log& log, int i, const std::vector<DeviceId>& devices,
                 const std::vector<LiftId>& lifts) {
        Station made{.name = *tidyName(text() + "station" + std::to_string(i))};
        if (chance(2)) {
            made.lift = lifts[static_cast<std::size_t>(below(3))];
            for (int n = below(5), kg = 0; n > 0; --n)
                made.ladder.push_back(Mass{kg += 1 + below(40'000)});
        } else {
            auto tests = m_tests;
            std::ranges::shuffle(tests, m_engine);
            for (int n = 1 + below(4); n > 0; --n, tests.pop_back())
                made.tests.push_back(tests.back().first);
        }
        if (chance(2))
            made.conditions = conditions(devices);
        made.sets = below(51);
        made.rotates = chance(2);
        made.note = text();
        const StationId id = log.add(made);
        for (int n = below(3); n > 0; --n) {
            Roster roster{.station = id, .day = day(), .athletes = m_athletes};
            std::ranges::shuffle(roster.athletes, m_engine);
            roster.athletes.resize(static_cast<std::size_t>(1 + below(3)));
            log.setRoster(roster);
        }
    }

    Conditions conditions(const std::vector<DeviceId>& devices) {
        Conditions made;
        if (chance(2))
            made.device = devices[static_cast<std::size_t>(below(2))];
        for (std::string* each :
             {&made.place, &made.surface, &made.footwear, &made.technique, &made.notComparable})
            if (chance(2))
                *each = text();
        return made;
    }

    void sets(log::Log& log, SessionId session, const std::vector<LiftId>& lifts) {
        std::vector<SetId> made;
        for (int i = below(6); i > 0; --i) {
            Set set;
            set.load = Mass{below(200'000)};
            set.trueMaximum = chance(6);
            set.excluded = chance(5) ? text() : "";
            set.note = chance(3) ? text() : "";
            if (chance(3))
                set.effort = Effort{2 + below(19)};
            if (chance(6)) {
                set.outcome = Outcome::NotLifted;
                set.reason = chance(2) ? text() : "";
            }
            for (int r = below(4); r > 0 && set.outcome == Outcome::Lifted; --r)
                set.reps.push_back({real(0.01, 9.99), chance(4) ? text() : ""});
            made.push_back(log.add(session, lifts[static_cast<std::size_t>(below(3))], set));
        }
        if (made.size() > 2) // a gap in the ordinals stays
            log.remove(made.front());
    }

    std::mt19937 m_engine;
    std::vector<AthleteId> m_athletes;
    std::vector<std::pair<TestKindId, TestKind>> m_tests;
};

} // namespace slopebook::tests
