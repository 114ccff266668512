// SPDX-License-Identifier: GPL-3.0-or-later
// The names of a session's attempts, gaps and tests' conditions among other logs, kept while the
// battery is written anew as a whole.
#pragma once

#include "core/log/atoms.h"

namespace slopebook::log {

/// An attempt with its place in the battery.
struct PlacedAttempt {
    TestKindId test{};
    Attempt attempt{};
    friend bool operator==(const PlacedAttempt&, const PlacedAttempt&) = default;
};
/// All of a battery, numbered from 1 on.
std::vector<PlacedAttempt> attemptsOf(const Battery& battery);

/// Notes what came, changed and went. One that stands there as before keeps its name wherever it
/// stands now; of the others of a test, those in the same order are taken for the same.
void keepBattery(Connection& db, SessionId session, const Battery& before, const Battery& now);

} // namespace slopebook::log
