// SPDX-License-Identifier: GPL-3.0-or-later
// The standard normal distribution, for sums that ask it often.
#pragma once

#include <cmath>
#include <numbers>

namespace slopebook::stats {

inline double normalDensity(double z) {
    return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}
/// P(Z < z).
inline double normalBelow(double z) {
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

} // namespace slopebook::stats
