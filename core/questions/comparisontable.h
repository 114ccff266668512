// SPDX-License-Identifier: GPL-3.0-or-later
// A comparison's figures as CSV: what its PDF carries. Units in a column or in the names, every
// digit. No Qt in here.
#pragma once

#include "core/answers/comparison.h"

#include <string>

namespace slopebook::questions {

/// One row a load, then the estimated 1RM: earlier, later, the change with its standard error, its
/// interval by the lines alone and the one that the reading is made from.
std::string comparisonFiguresCsv(const answers::Comparison& comparison);
/// One row a point of either session, as they were compared.
std::string comparisonPointsCsv(const answers::Comparison& comparison);

} // namespace slopebook::questions
