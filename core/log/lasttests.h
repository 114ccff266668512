// SPDX-License-Identifier: GPL-3.0-or-later
// When each athlete was last tested in what, by SQLite's own columns: no session is read.
#pragma once

#include "core/log/log.h"

#include <optional>
#include <vector>

namespace slopebook::log {

/// The last day of an athlete with a counting set of a lift, or a counting attempt of a test.
struct LastTest {
    AthleteId athlete{};
    std::optional<LiftId> lift{}; ///< one of the two
    std::optional<TestKindId> test{};
    Date last{};
    friend bool operator==(const LastTest&, const LastTest&) = default;
};

/// Of everybody or of one, lifts before tests, each by athlete. Throws LogError.
std::vector<LastTest> lastTests(const Log& log, std::optional<AthleteId> athlete = {});

} // namespace slopebook::log
