// SPDX-License-Identifier: GPL-3.0-or-later
// The limits and tick step of an axis, computed by ourselves so that they never drift.
#pragma once

#include <vector>

namespace slopebook::ui::charts {

struct Scale {
    double from = 0, to = 1, step = 0.2;
    int decimals() const; ///< that the step needs
    friend bool operator==(const Scale&, const Scale&) = default;
};

/// 1, 2, 2.5 or 5 times a power of ten: the smallest that cuts span into at most most parts.
double niceStep(double span, int most);
/// The multiples of step within [from, to], ascending.
std::vector<double> ticksOf(const Scale& scale);
/// step, or the coarsest nice one under it of which two multiples lie within [from, to]: an axis
/// with one figure says nothing.
double stepWithTwo(double from, double to, double step);
/// Rounds low and high outwards to whole steps. A span of zero, or one that is not finite, is
/// widened to something that can be drawn.
Scale niceScale(double low, double high, int most);

} // namespace slopebook::ui::charts
