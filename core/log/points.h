// SPDX-License-Identifier: GPL-3.0-or-later
// How a set becomes a point of its line: what the log derives from a set's reps and keeps beside
// them. core/model/session.h says which reps count.
#pragma once

#include "core/log/log.h"

#include <optional>

namespace slopebook::log {

/// A set with what the log derives from its reps.
struct StoredSet {
    PlacedSet placed{};
    std::optional<double> point{}; ///< m/s
    int counting = 0;              ///< reps that the point is made of
    friend bool operator==(const StoredSet&, const StoredSet&) = default;
};

/// The set's derived columns under the lift's rule.
StoredSet withPoint(PlacedSet set, PointRule rule);

} // namespace slopebook::log
