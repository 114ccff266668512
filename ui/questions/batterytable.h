// SPDX-License-Identifier: GPL-3.0-or-later
// A comparison of the battery as a CSV table: one row a test and side, then the lifts' check loads
// and 1RM; every digit, units in the header. No Qt in here.
#pragma once

#include "ui/questions/batteryquestions.h"

#include <filesystem>

namespace slopebook::ui {

std::string batteryCsv(const BatteryAnswer& answer);
/// Writes it under a temporary name, then renames. Throws LogError.
void writeBatteryCsv(const BatteryAnswer& answer, const std::filesystem::path& file);

} // namespace slopebook::ui
