// SPDX-License-Identifier: GPL-3.0-or-later
// Invented ladders for tests that need sessions and comparisons, not figures.
#pragma once

#include "core/answers/comparison.h"
#include "core/model/session.h"

#include <utility>
#include <vector>

namespace slopebook::test {

inline Date day(int year, unsigned month, unsigned dayOfMonth) {
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth};
}

inline Lift benchPull() {
    Lift lift;
    lift.name = "Bench pull";
    lift.mvt = Mvt{.value = 0.45,
                   .sd = 0.05,
                   .origin = Mvt::Origin::Published,
                   .source = "a published study of this lift"};
    return lift;
}

inline LiftSession ladder(int session, Date date,
                          const std::vector<std::pair<double, double>>& points) {
    LiftSession s;
    s.session = SessionId{session};
    s.athlete = AthleteId{1};
    s.lift = LiftId{1};
    s.date = date;
    int set = 0;
    for (const auto& [load, velocity] : points)
        s.points.push_back({.load = load, .velocity = velocity, .set = ++set});
    return s;
}

/// Faster at the light loads, the estimate held: the usual story of a light block.
inline LiftSession autumn() {
    LiftSession s =
        ladder(1, day(2025, 10, 4),
               {{30, 1.27}, {40, 1.11}, {50, 0.99}, {60, 0.85}, {70, 0.73}, {80, 0.58}});
    s.bodyMass = Mass{78'400};
    s.measuredOneRm = Mass{90'000};
    return s;
}
inline LiftSession winter() {
    LiftSession s =
        ladder(2, day(2026, 1, 17), {{30, 1.38}, {40, 1.22}, {50, 1.05}, {60, 0.89}, {70, 0.74}});
    s.bodyMass = Mass{79'100};
    return s;
}

inline answers::ComparisonSettings usualSettings() {
    using answers::DayNoise;
    using answers::Smallest;
    return {.checkLoads = {Mass{40'000}, Mass{60'000}, Mass{80'000}},
            .dayNoise = {.variance = {0.02 * 0.02, 12},
                         .origin = DayNoise::Origin::Athlete,
                         .source = "3 repeat tests",
                         .pairs = 3},
            .smallestVelocity = Smallest{0.03, Smallest::Origin::Coach, "coach"},
            .smallestOneRm = Smallest{2.0, Smallest::Origin::Published, "a published study"}};
}

inline answers::Comparison usualComparison(const LiftSession& from = autumn(),
                                           const LiftSession& to = winter()) {
    const Lift lift = benchPull();
    return *answers::compare(lift, *lift.mvt, from, to, usualSettings());
}

} // namespace slopebook::test
