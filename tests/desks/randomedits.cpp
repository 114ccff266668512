// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desks/randomedits.h"

#include "core/model/errors.h"
#include "tests/log/builders.h"

namespace slopebook::tests {

using test::day;
using test::ladderSet;

SessionId RandomEdits::someSession(log::Log& log) {
    const auto athletes = log.athletes();
    const auto sessions = log.sessions(some(athletes).id);
    return some(sessions).id;
}

void RandomEdits::addSomething(log::Log& log) {
    switch (below(9)) {
    case 0:
        log.add(Athlete{.name = name("Runner "), .note = note()});
        break;
    case 1:
        log.add(Lift{.name = name("Lift "), .note = note()});
        break;
    case 2:
        log.add(Device{.name = name("Encoder "), .note = note()});
        break;
    case 3:
        log.add(Block{.name = name("Block "), .first = day(2026, 1, 1), .last = day(2026, 2, 1)});
        break;
    case 4: {
        TestKind kind;
        kind.name = name("Hop ");
        kind.unit = "m";
        log.add(kind);
        break;
    }
    case 5:
        log.add(Equipment{
            .name = name("Rack room "),
            .plates = parsePlates("20x2", MassUnit::Kilogram),
            .fixed = {{.name = "sled", .mass = *parseExactMass("30", MassUnit::Kilogram)}}});
        break;
    case 6:
        log.add(Station{.name = name("Corner "), .lift = some(log.lifts()).id});
        break;
    default: {
        SessionHead head{.athlete = some(log.athletes()).id,
                         .date = day(2026, 3, 1 + static_cast<unsigned>(below(3)))};
        for (const auto& session : log.sessions(head.athlete))
            if (session.value.date == head.date)
                head.ordinal = std::max(head.ordinal, session.value.ordinal + 1);
        log.add(head);
    }
    }
}

void RandomEdits::changeSomething(log::Log& log) {
    switch (below(8)) {
    case 0: {
        const auto one = some(log.athletes());
        log.change(one.id, Athlete{.name = below(2) == 0 ? one.value.name : name("Runner "),
                                   .note = note()});
        break;
    }
    case 1: {
        auto [id, lift] = some(log.lifts());
        lift.rule = below(2) == 0 ? PointRule::Fastest : PointRule::Mean;
        lift.note = note();
        if (below(3) == 0)
            lift.name = name("Lift ");
        log.change(id, lift);
        break;
    }
    case 2: {
        auto [id, device] = some(log.devices());
        device.name = name("Encoder ");
        log.change(id, device);
        break;
    }
    case 3: {
        auto [id, block] = some(log.blocks());
        block.trained = note();
        log.change(id, block);
        break;
    }
    case 4: {
        auto [id, kind] = some(log.testKinds());
        kind.note = note();
        log.change(id, kind);
        break;
    }
    case 5: {
        auto [id, station] = some(log.stations());
        station.note = note();
        log.change(id, station);
        break;
    }
    case 6: {
        auto [id, equipment] = some(log.equipment());
        equipment.note = note();
        log.change(id, equipment);
        break;
    }
    default: {
        const SessionId id = someSession(log);
        SessionHead head = log.session(id).head.value;
        head.bodyMass = Mass{70'000 + 100 * static_cast<std::int64_t>(below(50))};
        if (below(4) == 0)
            head.date = day(2026, 3, 1 + static_cast<unsigned>(below(3)));
        log.change(id, head);
    }
    }
}

void RandomEdits::removeSomething(log::Log& log) {
    switch (below(8)) {
    case 0: {
        const AthleteId id = some(log.athletes()).id;
        for (const auto& session : log.sessions(id))
            log.remove(session.id);
        for (const auto& lift : log.lifts())
            log.setCheckLoads(id, lift.id, {});
        log.remove(id);
        break;
    }
    case 1:
        log.remove(some(log.lifts()).id);
        break;
    case 2:
        log.remove(some(log.devices()).id);
        break;
    case 3:
        log.remove(some(log.blocks()).id);
        break;
    case 4:
        log.remove(some(log.testKinds()).id);
        break;
    case 5:
        log.remove(some(log.stations()).id);
        break;
    case 6:
        log.remove(some(log.equipment()).id);
        break;
    default:
        log.remove(someSession(log));
    }
}

void RandomEdits::battery(log::Log& log, SessionId session) {
    Battery battery = log.battery(session);
    const TestKindId test = some(log.testKinds()).id;
    conditionsOf(battery, test).surface = note();
    TestAttempts& tried = *std::ranges::find(battery.tests, test, &TestAttempts::kind);
    const bool twoSided = [&] {
        for (const auto& kind : log.testKinds())
            if (kind.id == test)
                return kind.value.twoSided;
        return false;
    }();
    Attempt attempt;
    attempt.side = twoSided ? BodySide::Left : BodySide::Both;
    attempt.value = 0.2 + 0.01 * static_cast<double>(below(40));
    if (tried.attempts.empty() || below(2) == 0)
        tried.attempts.push_back(attempt);
    else if (below(2) == 0)
        tried.attempts[below(tried.attempts.size())].note = note();
    else
        tried.attempts.erase(tried.attempts.begin());
    if (below(3) == 0) {
        Gap gap;
        gap.lift = some(log.lifts()).id;
        gap.reason = note();
        battery.gaps.push_back(gap);
    } else if (!battery.gaps.empty() && below(2) == 0) {
        battery.gaps.erase(battery.gaps.begin());
    }
    log.setBattery(session, asKept(std::move(battery)));
}

void RandomEdits::ofASession(log::Log& log) {
    const SessionId session = someSession(log);
    const auto record = log.session(session);
    switch (below(8)) {
    case 0:
    case 1:
        log.add(session, some(log.lifts()).id,
                ladderSet(20 + 5 * static_cast<double>(below(20)), {0.9, 0.85}));
        break;
    case 2: {
        log::PlacedSet placed = some(record.sets);
        placed.set.note = note();
        log.change(placed.id, placed.set);
        break;
    }
    case 3:
        log.remove(some(record.sets).id);
        break;
    case 4:
        log.setConditions(
            session, some(log.lifts()).id,
            {.device = below(2) == 0 ? std::optional(some(log.devices()).id) : std::nullopt,
             .place = below(3) == 0 ? std::string() : note()});
        break;
    case 5:
        log.setCheckLoads(record.head.value.athlete, some(log.lifts()).id,
                          {Mass{40'000}, Mass{50'000 + 5'000 * static_cast<int>(below(3))}});
        break;
    case 6: {
        Roster roster{.station = some(log.stations()).id, .day = day(2026, 3, 1), .athletes = {}};
        for (const auto& athlete : log.athletes())
            if (below(2) == 0)
                roster.athletes.push_back(athlete.id);
        std::ranges::shuffle(roster.athletes, m_random);
        log.setRoster(roster);
        break;
    }
    default:
        battery(log, session);
    }
}

void RandomEdits::edit(log::Log& log) {
    try {
        log.together([&] {
            switch (below(10)) {
            case 0:
            case 1:
                addSomething(log);
                break;
            case 2:
            case 3:
                changeSomething(log);
                break;
            case 4:
                removeSomething(log);
                break;
            default:
                ofASession(log);
            }
        });
        ++m_done;
    } catch (const NothingThere&) { // NOLINT(bugprone-empty-catch): there is nothing to do it to
    } catch (const BadInput&) {     // NOLINT(bugprone-empty-catch): a name that is taken
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Conflict)
            throw;
    }
}

} // namespace slopebook::tests
