// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on either side of a change, so that the second less the first is the change: of two
// days their lines, of several what all of a side come to (side.h).
#pragma once

#include "core/answers/comparison.h"

namespace slopebook::answers {

struct TwoFigures {
    double before = 0, after = 0;
};

/// At a load, m/s; the later side with its device's bias taken off, as the change has it.
TwoFigures speedsOf(const Comparison& comparison, double load);

/// The estimated 1RM, kg; nothing where a side has none.
std::optional<TwoFigures> maximaOf(const Comparison& comparison);

} // namespace slopebook::answers
