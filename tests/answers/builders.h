// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions and lifts for the tests of core/answers.
#pragma once

#include "core/model/answer.h"
#include "core/model/session.h"

#include <initializer_list>
#include <utility>
#include <vector>

namespace slopebook::tests {

inline Date day(int year, unsigned month, unsigned dayOfMonth) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{dayOfMonth}};
}

/// The nth day after 2026-01-01, so that sessions made in a row are a row in time.
inline Date dayNumber(int n) {
    return Date{std::chrono::sys_days{day(2026, 1, 1)} + std::chrono::days{n}};
}

/// One athlete's session of one lift; its key and its date are from id.
inline LiftSession session(int id, const std::vector<std::pair<double, double>>& loadsAndSpeeds) {
    LiftSession s{.session = SessionId{id},
                  .athlete = AthleteId{1},
                  .lift = LiftId{1},
                  .date = dayNumber(7 * id),
                  .conditions = {.device = DeviceId{1}},
                  .bodyMass = {},
                  .repeatOf = {},
                  .points = {},
                  .maxima = {},
                  .measuredOneRm = {}};
    int set = 0;
    for (const auto& [load, velocity] : loadsAndSpeeds)
        s.points.push_back({.load = load, .velocity = velocity, .set = ++set});
    return s;
}

inline Lift benchPull() {
    return {
        .name = "Bench pull", .mvt = {}, .smallestVelocity = {}, .smallestOneRm = {}, .note = {}};
}

inline Mvt coachMvt(double value, std::optional<double> sd = {}) {
    return {.value = value, .sd = sd, .origin = Mvt::Origin::Coach, .source = "own tests"};
}

} // namespace slopebook::tests
