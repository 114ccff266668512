// SPDX-License-Identifier: GPL-3.0-or-later
// What a page of all tests says over and under its figures.
#pragma once

#include "core/answers/batterycomparison.h"

#include <vector>

namespace slopebook::answers {

/// "Of 19 readings, better: Single hop, left (+0.10 m); unclear: ... and 13 more; without a figure:
/// ...": the sentence that leads; it counts the rows of the chart. That no test was done.
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
