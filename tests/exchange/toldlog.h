// SPDX-License-Identifier: GPL-3.0-or-later
// A log in words.
#pragma once

#include "core/log/log.h"

#include <algorithm>
#include <map>
#include <sstream>

namespace slopebook::tests {

/// The log in words, names for keys: two logs that tell the same are equal.
class Teller {
public:
    explicit Teller(const log::Log& log) : m_log(log) {}

    std::string tell() {
        for (const auto& device : m_log.devices())
            m_devices[device.id] = device.value.name;
        for (const auto& lift : m_log.lifts())
            m_lifts[lift.id] = lift.value.name;
        for (const auto& device : m_log.devices())
            line() << "device " << q(device.value.name) << q(device.value.note);
        for (const auto& lift : m_log.lifts())
            tell(lift.value);
        for (const auto& block : m_log.blocks())
            line() << "block " << q(block.value.name) << isoDate(block.value.first) << " "
                   << isoDate(block.value.last) << " "
                   << (block.value.ceiling ? block.value.ceiling->grams : -1)
                   << q(block.value.trained)
                   << (block.value.aWeek ? typedText(*block.value.aWeek) : "-") << " "
                   << q(block.value.note);
        for (const auto& test : m_log.testKinds()) {
            m_tests[test.id] = test.value.name;
            tell(test.value);
        }
        for (const auto& athlete : m_log.athletes()) {
            m_athletes[athlete.id] = athlete.value.name;
            tell(athlete);
        }
        for (const auto& station : m_log.stations()) {
            m_stations[station.id] = station.value.name;
            tell(station.value);
        }
        for (const Roster& roster : m_log.rosters()) {
            auto out = line();
            out << "roster " << q(m_stations[roster.station]) << isoDate(roster.day);
            for (const AthleteId athlete : roster.athletes)
                out << " " << q(m_athletes[athlete]);
        }
        std::ranges::sort(m_lines);
        std::string all;
        for (const auto& text : m_lines)
            all += text + "\n";
        return all;
    }

private:
    // One line of the tale, told when it goes out of scope.
    class Line {
    public:
        explicit Line(std::vector<std::string>& lines) : m_lines(lines) { m_out.precision(17); }
        ~Line() { m_lines.push_back(m_out.str()); }
        Line(const Line&) = delete;
        Line& operator=(const Line&) = delete;
        template <class T>
        Line& operator<<(const T& part) {
            m_out << part;
            return *this;
        }

    private:
        std::vector<std::string>& m_lines;
        std::ostringstream m_out;
    };
    Line line() { return Line(m_lines); }
    static std::string q(const std::string& text) { return "<" + text + "> "; }

    void tell(const Lift& lift) {
        auto out = line();
        out << "lift " << q(lift.name) << word(lift.kind) << word(lift.rule) << lift.ballistic
            << lift.movesBody;
        if (lift.mvt)
            out << " mvt " << lift.mvt->value << " " << lift.mvt->sd.value_or(-1) << " "
                << static_cast<int>(lift.mvt->origin) << q(lift.mvt->source);
        out << " " << lift.smallestVelocity.value_or(-1) << " " << lift.smallestOneRm.value_or(-1)
            << q(lift.note);
    }

    void tell(const Stored<AthleteId, Athlete>& athlete) {
        const std::string who = "athlete " + q(athlete.value.name);
        line() << who << q(athlete.value.note);
        for (const auto& [id, lift] : m_lifts)
            for (const Mass load : m_log.checkLoads(athlete.id, id))
                line() << who << "check load " << q(lift) << load.grams;
        std::map<SessionId, std::string> keys;
        for (const auto& session : m_log.sessions(athlete.id))
            keys[session.id] = dateKey(session.value.date, session.value.ordinal);
        for (const auto& session : m_log.sessions(athlete.id)) {
            const SessionHead& head = session.value;
            const std::string when = who + keys[session.id] + " ";
            for (const auto& [lift, under] : m_log.session(session.id).conditions)
                line() << when << q(m_lifts[lift]) << told(under);
            line() << when << (head.bodyMass ? head.bodyMass->grams : -1) << " "
                   << (head.repeatOf ? keys[*head.repeatOf] : "") << q(head.note);
            for (const auto& placed : m_log.session(session.id).sets)
                tell(when, placed);
            tell(when, m_log.battery(session.id));
        }
    }

    std::string told(const Conditions& under) {
        return (under.device ? q(m_devices[*under.device]) : "none ") + q(under.place) +
               q(under.surface) + q(under.footwear) + q(under.technique) + q(under.notComparable);
    }

    void tell(const TestKind& test) {
        line() << "test " << q(test.name) << q(test.unit) << test.higherIsBetter << test.twoSided
               << test.bothToo << word(test.rule) << test.bestOf << " " << test.attempts << " "
               << word(test.formula) << test.decimals << " "
               << (test.noise ? test.noise->value : -1)
               << (test.noise ? test.noise->percent : false)
               << q(test.noise ? test.noise->source : "") << test.smallest.value_or(-1)
               << q(test.smallestSource) << q(test.note);
    }

    // In their order, which counts; tests without attempts stand last, by their keys in that log.
    void tell(const std::string& when, Battery battery) {
        std::ranges::stable_sort(battery.tests, {}, [&](const TestAttempts& test) {
            return test.attempts.empty() ? m_tests[test.kind] : std::string();
        });
        auto out = line();
        out << when << "battery";
        for (const TestAttempts& test : battery.tests) {
            out << " test " << q(m_tests[test.kind]) << told(test.conditions);
            for (const Attempt& one : test.attempts)
                out << " " << word(one.side) << one.value << " " << one.contact.value_or(-1)
                    << q(one.note) << q(one.excluded);
        }
        for (const Gap& gap : battery.gaps)
            out << " gap " << q(gap.kind ? m_tests[*gap.kind] : "")
                << q(gap.lift ? m_lifts[*gap.lift] : "") << (gap.load ? gap.load->grams : -1)
                << word(gap.side) << q(gap.reason);
    }

    void tell(const Station& station) {
        auto out = line();
        out << "station " << q(station.name) << q(station.lift ? m_lifts[*station.lift] : "")
            << told(station.conditions) << station.sets << " " << station.rotates
            << q(station.note);
        for (const TestKindId test : station.tests)
            out << q(m_tests[test]);
        for (const Mass load : station.ladder)
            out << " " << load.grams;
    }

    void tell(const std::string& when, const log::PlacedSet& placed) {
        auto out = line();
        out << when << q(m_lifts[placed.lift]) << placed.ordinal << " " << placed.set.load.grams
            << " " << placed.set.trueMaximum << word(placed.set.outcome) << q(placed.set.reason)
            << (placed.set.effort ? placed.set.effort->halves : 0) << q(placed.set.excluded)
            << q(placed.set.note);
        for (const Rep& rep : placed.set.reps)
            out << " " << rep.velocity << q(rep.excluded);
    }

    const log::Log& m_log;
    std::map<DeviceId, std::string> m_devices;
    std::map<LiftId, std::string> m_lifts;
    std::map<TestKindId, std::string> m_tests;
    std::map<AthleteId, std::string> m_athletes;
    std::map<StationId, std::string> m_stations;
    std::vector<std::string> m_lines;
};

inline std::string tell(const log::Log& log) {
    return Teller(log).tell();
}

/// The lines in which two tales differ; empty where they tell the same.
inline std::string otherwise(const std::string& before, const std::string& after) {
    std::map<std::string, int> lines;
    const auto count = [&](const std::string& told, int by) {
        std::istringstream in(told);
        for (std::string line; std::getline(in, line);)
            lines[line] += by;
    };
    count(before, 1);
    count(after, -1);
    std::string all;
    for (const auto& [line, by] : lines)
        if (by != 0)
            all += (by > 0 ? "\nLOST " : "\nCAME ") + line;
    return all;
}

} // namespace slopebook::tests
