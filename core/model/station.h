// SPDX-License-Identifier: GPL-3.0-or-later
// Where a lift or a test is done on a test day, athletes taking turns.
#pragma once

#include "core/model/conditions.h"
#include "core/model/date.h"
#include "core/model/ids.h"
#include "core/model/mass.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook {

/// Set up once by the coach and kept: what is done here, under which conditions.
struct Station {
    std::string name{};
    std::optional<LiftId> lift{};    ///< either a lift
    std::vector<TestKindId> tests{}; ///< or a test or a few, in order, each once
    Conditions conditions{};         ///< given to what is typed here
    std::vector<Mass> ladder{};      ///< planned, rising; empty: each athlete's own last ladder
    int sets = 0;                    ///< planned for each athlete; 0: as many as the ladder has
    bool rotates = true;             ///< an entered set makes it the next one's turn
    std::string note{};
    friend bool operator==(const Station&, const Station&) = default;
};

/// Who is at a station on a day, in the order of their turns; each athlete once.
struct Roster {
    StationId station{};
    Date day{};
    std::vector<AthleteId> athletes{};
    friend bool operator==(const Roster&, const Roster&) = default;
};

constexpr int mostPlanned = 50;

/// Throws BadInput for what may not stand: a lift and tests or neither, a test twice, a ladder
/// without a lift or one that does not rise, more planned sets than mostPlanned. The name is the
/// log's to look at.
void validate(const Station& station);
/// Throws BadInput where an athlete stands twice.
void validate(const Roster& roster);

} // namespace slopebook
