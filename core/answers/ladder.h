// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder: which load comes next, from today's loads and last time's.
#pragma once

#include "core/model/mass.h"

#include <optional>
#include <span>

namespace slopebook::answers {

/// The load after `from`: the next heavier one of last time's ladder; above its top, `from` plus
/// the last rise of today's loads, else of last time's. Nothing where neither shows a rise.
std::optional<Mass> loadAfter(Mass from, std::span<const Mass> today,
                              std::span<const Mass> lastTime);

/// The load before `from`: the next lighter one of last time's ladder; below its foot nothing.
std::optional<Mass> loadBefore(Mass from, std::span<const Mass> lastTime);

/// What to put on the bar now: the load after today's last one; before the first set, where last
/// time began.
std::optional<Mass> nextLoad(std::span<const Mass> today, std::span<const Mass> lastTime);

/// next, unless it is above what a maximum is estimated at; a load that last time was lifted as a
/// true maximum may be tried again.
std::optional<Mass> notAbove(std::optional<Mass> next, std::optional<Mass> limit,
                             std::span<const Mass> maxima);

} // namespace slopebook::answers
