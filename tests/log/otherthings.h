// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a log beside lifts and sets.
#pragma once

#include "core/log/conflicts.h"
#include "core/log/storerows.h"
#include "tests/log/builders.h"

namespace slopebook::test {

/// A load that was not lifted and how a set felt, a lift's conditions to the last, a lift that
/// moves the body, and two stations with a roster.
inline void addTestDay(log::Log& log, const Season& s, TestKindId kind) {
    log.add(s.autumn, s.pull,
            Set{.load = Mass{100'000},
                .trueMaximum = true,
                .outcome = Outcome::NotLifted,
                .reason = "out of the groove",
                .effort = Effort{20}});
    log.setConditions(s.repeat, s.pull,
                      {.device = s.encoder,
                       .place = "hall",
                       .surface = "concrete",
                       .footwear = "barefoot",
                       .technique = "paused",
                       .notComparable = "another bench"});
    const LiftId pullUp = log.add(Lift{.name = "Pull-up", .movesBody = true});
    log.add(s.autumn, pullUp, ladderSet(10, {0.8}));
    const StationId rack = log.add(Station{.name = "Rack 1",
                                           .lift = s.pull,
                                           .conditions = {.device = s.encoder, .surface = "mat"},
                                           .ladder = {Mass{40'000}, Mass{60'000}},
                                           .sets = 3,
                                           .rotates = false,
                                           .note = "by the door"});
    log.add(Station{.name = "Mat", .tests = {kind}});
    Battery battery = log.battery(s.autumn);
    battery.gaps.push_back({.lift = s.pull, .load = Mass{110'000}, .reason = "no plates"});
    conditionsOf(battery, kind).footwear = "court shoes";
    log.setBattery(s.autumn, battery);
    log.setRoster({.station = rack, .day = day(2026, 3, 14), .athletes = {s.stroke, s.lane3}});
}

/// What two logs could not agree on, once settled and once not, and a store that the log meets.
inline void joinAStore(log::Log& log) {
    const auto sixteen = [](unsigned char first) {
        log::Sixteen value{};
        value.fill(0x5A);
        value[0] = first;
        return value;
    };
    log.together([&] {
        log::noteConflict(log, {.about = sixteen(1),
                                .revision = sixteen(2),
                                .why = "both changed",
                                .lived = true,
                                .content = "what it said"});
        const auto settled = log::noteConflict(
            log, {.about = sixteen(1), .revision = sixteen(3), .why = "same name"});
        log::settleConflict(log, *settled);
    });
    log.together([&] {
        log::Connection& db = log::connectionOf(log);
        log::setJoinedStore(
            db, {.id = sixteen(4), .connection = "host=rack.example", .squad = sixteen(5)});
        log::putSquad(db, {.id = sixteen(5), .name = "Eights", .mayWrite = true, .taken = 3});
        log::putSquad(db, {.id = sixteen(6), .name = "Fours", .mayWrite = false, .taken = 1});
        log::putMark(db, {.n = 3, .tag = sixteen(7)});
        const std::vector<log::Sent> sent{{sixteen(8), sixteen(5), 2, sixteen(9)},
                                          {sixteen(10), sixteen(6), 1, sixteen(11)}};
        log::putSent(db, sent);
        const std::vector<log::Unsent> unsent{{sixteen(8), {}}, {sixteen(12), sixteen(6)}};
        log::noteUnsent(db, unsent);
    });
}

/// A set of equipment, a test, and what the season's autumn session says of it: everything optional
/// used somewhere. Gives the test.
inline TestKindId addOtherThings(log::Log& log, const Season& s) {
    log.add(
        Equipment{.name = "boathouse",
                  .bars = {{.name = "long bar", .mass = *parseExactMass("20", MassUnit::Kilogram)}},
                  .plates = parsePlates("20x2,2.5x1", MassUnit::Kilogram),
                  .fixed = {{.name = "sled", .mass = *parseExactMass("30", MassUnit::Kilogram)}}});
    TestKind hop;
    hop.name = "Single hop";
    hop.unit = "m";
    hop.twoSided = true;
    hop.noise = TestNoise{.value = 3, .percent = true, .source = "own repeats"};
    hop.smallest = 0.1;
    const TestKindId kind = log.add(hop);
    Battery battery;
    battery.tests = {
        {.kind = kind,
         .attempts = {},
         .conditions = {.device = s.encoder, .place = "boathouse", .surface = "boards"}}};
    for (const double metres : {1.82, 1.9, 1.88})
        battery.tests[0].attempts.push_back({BodySide::Left, metres, {}, {}, {}});
    battery.gaps = {{.lift = s.pull, .reason = "plates lost"},
                    {.kind = kind, .side = BodySide::Right, .reason = "sore"}};
    log.setBattery(s.autumn, battery);
    return kind;
}

} // namespace slopebook::test
