// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a log beside lifts and sets.
#pragma once

#include "tests/log/builders.h"

namespace slopebook::test {

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
    battery.context.surface = "boards";
    battery.tests = {{kind, {}}};
    for (const double metres : {1.82, 1.9, 1.88})
        battery.tests[0].attempts.push_back({BodySide::Left, metres, {}, {}, {}});
    battery.gaps = {{{}, s.pull, BodySide::Both, "plates lost"},
                    {kind, {}, BodySide::Right, "sore"}};
    log.setBattery(s.autumn, battery);
    return kind;
}

} // namespace slopebook::test
