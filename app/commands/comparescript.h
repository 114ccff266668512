// SPDX-License-Identifier: GPL-3.0-or-later
// A comparison of two sessions as an R script that works it out anew from an export.
#pragma once

#include "core/answers/comparison.h"
#include "core/questions/questions.h"

#include <string>

namespace slopebook::app {

/// comparison: of one session a side (not ofSeveral()).
std::string comparisonForR(const questions::Background& about,
                           const answers::Comparison& comparison);

} // namespace slopebook::app
