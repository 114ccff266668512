// SPDX-License-Identifier: GPL-3.0-or-later
// What a page of all tests says over and under its figures.
#pragma once

#include "core/answers/batterycomparison.h"

#include <vector>

namespace slopebook::answers {

/// "6 tests: 2 better (Single hop, left; Seated throw); 4 held (...)": the sentence that leads. That
/// no test was done.
Words batterySummary(const BatteryComparison& battery);
/// What to beware of: its notes, what its marks mean, what the chart cannot show.
std::vector<Words> batteryRemarks(const BatteryComparison& battery);
/// Where typical errors and smallest changes come from, each once.
std::vector<Words> batterySources(const BatteryComparison& battery);
/// What damage took out of the answer.
Words leftOutWords(const Words& what);
/// How intervals and readings of tests are made.
Words batteryMethod();
/// A change for certain, and for certain too small to matter.
bool surelySmall(const ReadChange& read);

} // namespace slopebook::answers
