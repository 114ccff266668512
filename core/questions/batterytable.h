// SPDX-License-Identifier: GPL-3.0-or-later
// A comparison of the battery as a CSV table: one row a test and side, then the lifts' check loads
// and 1RM; every digit, units in the header;
// of a block the mean of its sessions, how many they are, and of tests its interval. No Qt in here.
#pragma once

#include "core/log/target.h"
#include "core/questions/batteryquestions.h"

namespace slopebook::questions {

std::string batteryCsv(const BatteryAnswer& answer);
/// Writes it, whole or not at all. Throws LogError.
void writeBatteryCsv(const BatteryAnswer& answer, const log::Destination& to);

} // namespace slopebook::questions
