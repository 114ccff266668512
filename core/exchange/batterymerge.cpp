// SPDX-License-Identifier: GPL-3.0-or-later
// Brings the battery of CSV files into a log.
#include "core/exchange/attemptunit.h"
#include "core/exchange/batterycolumns.h"
#include "core/exchange/batterycsv.h"
#include "core/exchange/byname.h"
#include "core/exchange/faults.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <map>

namespace slopebook::exchange {

namespace {

class Merging {
public:
    Merging(log::Log& log, const KnownTest& known, const WhoIsWho& who, const KnownThings& met)
        : m_log(log), m_known(known), m_who(who), m_met(met), m_kinds(log.testKinds()),
          m_athletes(log.athletes()), m_lifts(log.lifts()), m_devices(log.devices()) {
        met.each<TestKindId>("test",
                             [&](const auto& name, TestKindId id) { m_kinds.also(name, id); });
        met.each<LiftId>("lift", [&](const auto& name, LiftId id) { m_lifts.also(name, id); });
        met.each<DeviceId>("device",
                           [&](const auto& name, DeviceId id) { m_devices.also(name, id); });
    }

    void test(const BatteryTables::TestRow& row) {
        const auto* held = m_kinds.find(row.kind.name);
        if (!held) {
            make(row.kind);
            return;
        }
        TestKind same = row.kind;
        same.name = held->value.name;
        if (held->value != same)
            throw BadInput(row.where, say("the test \"%1\" told otherwise", row.kind.name),
                           say("that test as the log has it"));
    }

    void session(const StagedBattery& staged) {
        const AthleteId athlete = athleteFor(staged.athlete);
        const SessionId id = sessionFor(athlete, staged);
        const Battery before = m_log.battery(id);
        Battery battery = before;
        for (const auto& test : staged.tests)
            attempts(battery, test);
        const int filled = fillContext(battery, staged);
        for (const auto& missing : staged.missing)
            gap(battery, missing);
        if (staged.tests.empty())
            keepContextInNote(id, staged.context);
        if (battery == before)
            return;
        try {
            m_log.setBattery(id, battery);
        } catch (const BadInput& bad) {
            throw BadInput(staged.where, bad.found(), bad.expected());
        }
        m_report.contextsFilled += filled;
    }

    BatteryReport report() const { return m_report; }

private:
    const Stored<TestKindId, TestKind>& make(TestKind kind) {
        kind.name = newName(kind.name);
        m_report.testsMade.push_back(kind.name);
        return m_kinds.add(m_log.add(kind), kind);
    }

    const Stored<TestKindId, TestKind>& kindFor(const std::string& name, const Where& where) {
        if (const auto* held = m_kinds.find(name))
            return *held;
        if (const auto known = m_known ? m_known(name) : std::nullopt)
            return make(*known);
        throw BadInput(where, say("the test \"%1\"", name),
                       say("a test of the log, one that the program knows, or a file of tests that "
                           "explains it"));
    }

    AthleteId athleteFor(const std::string& spelled) {
        const std::string& name = m_who.named(spelled);
        if (const auto* held = m_athletes.find(name))
            return held->id;
        const Athlete athlete{.name = newName(name)};
        m_report.athletesMade.push_back(athlete.name);
        return m_athletes.add(m_log.add(athlete), athlete).id;
    }

    SessionId sessionFor(AthleteId athlete, const StagedBattery& staged) {
        const auto [place, isNew] = m_sessions.try_emplace(athlete);
        auto& known = place->second;
        if (isNew) {
            for (const auto& held : m_log.sessions(athlete))
                known.emplace(std::pair{held.value.date, held.value.ordinal}, held.id);
            m_met.eachSession(
                athlete, [&](const auto& day, SessionId id) { known.insert_or_assign(day, id); });
        }
        const std::pair key{staged.date, staged.ordinal};
        if (const auto held = known.find(key); held != known.end())
            return held->second;
        SessionHead head;
        head.athlete = athlete;
        head.date = staged.date;
        head.ordinal = staged.ordinal;
        const SessionId id = m_log.add(head);
        known.emplace(key, id);
        ++m_report.sessionsAdded;
        return id;
    }

    /// 1 where anything came to the conditions of a test, else 0.
    int fillContext(Battery& battery, const StagedBattery& staged) {
        const Battery before = battery;
        const auto refuse = [&](const std::string& found, const std::string& held,
                                const char* column) {
            throw BadInput({staged.where.file, staged.where.line, asIs(column)},
                           say("\"%1\"", found), say("\"%1\", as the log has it", held));
        };
        const auto fill = [&](std::string& text, const std::string& now, const char* column) {
            if (now.empty() || now == text)
                return;
            if (!text.empty())
                refuse(now, text, column);
            text = now;
        };
        for (const auto& test : staged.tests) {
            Conditions& held = conditionsOf(battery, kindFor(test.name, test.where).id);
            const StagedBattery::Context none;
            const StagedBattery::Context& said =
                test.context == none ? staged.context : test.context;
            fill(held.place, said.place, "place");
            fill(held.notComparable, said.notComparable, "not_comparable");
            fill(held.surface, said.surface, "surface");
            fill(held.footwear, said.footwear, "footwear");
            fill(held.technique, said.technique, "technique");
            if (said.device.empty())
                continue;
            const DeviceId device = deviceFor(said.device);
            if (held.device && *held.device != device)
                refuse(said.device, m_devices.find(*held.device)->value.name, "test_device");
            held.device = device;
        }
        return battery == before ? 0 : 1;
    }

    DeviceId deviceFor(const std::string& name) {
        if (const auto* held = m_devices.find(name))
            return held->id;
        const Device made{.name = newName(name)};
        m_report.devicesMade.push_back(made.name);
        return m_devices.add(m_log.add(made), made).id;
    }

    // What no test of the session can say is kept in words.
    void keepContextInNote(SessionId session, const StagedBattery::Context& context) {
        std::string words;
        for (const std::string* text :
             {&context.device, &context.surface, &context.footwear, &context.technique})
            if (!text->empty())
                words += (words.empty() ? "" : ", ") + *text;
        SessionHead head = m_log.session(session).head.value;
        if (words.empty() || head.note.ends_with(words))
            return;
        head.note += (head.note.empty() ? "" : "; ") + words;
        m_log.change(session, head);
        ++m_report.contextsFilled;
    }

    void attempts(Battery& battery, const StagedBattery::Test& test) {
        const auto& kind = kindFor(test.name, test.where);
        if (!test.unit.empty() && test.unit != unitAsRead(kind.value))
            throw BadInput({test.where.file, test.where.line, inWords(attemptColumns[AttemptUnit])},
                           say("\"%1\"", test.unit),
                           say("\"%1\", in which attempts of that test are written down",
                               unitAsRead(kind.value)));
        for (const Attempt& attempt : test.attempts)
            try {
                validate(attempt, kind.value);
            } catch (const BadInput& bad) {
                throw BadInput(test.where, bad.found(), bad.expected());
            }
        const auto held = std::ranges::find(battery.tests, kind.id, &TestAttempts::kind);
        if (held == battery.tests.end()) {
            battery.tests.push_back({.kind = kind.id, .attempts = test.attempts});
            m_report.attemptsAdded += static_cast<int>(test.attempts.size());
        } else if (held->attempts.empty()) {
            held->attempts = test.attempts;
            m_report.attemptsAdded += static_cast<int>(test.attempts.size());
        } else if (held->attempts == test.attempts) {
            m_report.attemptsAlreadyThere += static_cast<int>(test.attempts.size());
        } else {
            throw BadInput(test.where, say("other attempts of \"%1\"", test.name),
                           say("the attempts of that session as the log has them"));
        }
    }

    void gap(Battery& battery, const StagedBattery::Missing& missing) {
        Gap gap{.load = missing.load, .side = missing.side, .reason = missing.reason};
        if (!missing.test.empty()) {
            gap.kind = kindFor(missing.test, missing.where).id;
        } else {
            const auto* lift = m_lifts.find(missing.lift);
            if (!lift)
                throw BadInput(missing.where, say("the lift \"%1\"", missing.lift),
                               say("a lift of the log"));
            gap.lift = lift->id;
        }
        if (std::ranges::find(battery.gaps, gap) != battery.gaps.end())
            return;
        battery.gaps.push_back(std::move(gap));
        ++m_report.gapsAdded;
    }

    log::Log& m_log;
    const KnownTest& m_known;
    const WhoIsWho& m_who;
    const KnownThings& m_met;
    ByName<TestKindId, TestKind> m_kinds;
    ByName<AthleteId, Athlete> m_athletes;
    ByName<LiftId, Lift> m_lifts;
    ByName<DeviceId, Device> m_devices;
    std::map<AthleteId, std::map<std::pair<Date, int>, SessionId>> m_sessions;
    BatteryReport m_report;
};

} // namespace

bool BatteryReport::addedNothing() const {
    return attemptsAdded == 0 && gapsAdded == 0 && contextsFilled == 0 && sessionsAdded == 0 &&
           testsMade.empty() && athletesMade.empty() && devicesMade.empty();
}

BatteryReport mergeBattery(log::Log& log, const BatteryTables& tables, const KnownTest& known,
                           const WhoIsWho& who, const KnownThings& met) {
    Merging merging(log, known, who, met);
    FaultList faults;
    for (const auto& row : tables.tests)
        faults.collect([&] { merging.test(row); });
    for (const auto& session : tables.sessions)
        faults.collect([&] { merging.session(session); });
    faults.throwIfAny();
    return merging.report();
}

} // namespace slopebook::exchange
