// SPDX-License-Identifier: GPL-3.0-or-later
// The end of a range that has none.
#pragma once

#include <limits>

namespace slopebook::stats {

inline constexpr double infinity = std::numeric_limits<double>::infinity();

} // namespace slopebook::stats
