// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix as JSON and as CSV.
#pragma once

#include "core/questions/seasonquestions.h"

#include <string>

namespace slopebook::app {

std::string seasonJson(const questions::SeasonAnswer& answer);
/// One row a measure and block: every digit, units in a column.
std::string seasonCsv(const questions::SeasonAnswer& answer);

} // namespace slopebook::app
