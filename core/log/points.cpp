// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/points.h"

namespace slopebook::log {

StoredSet withPoint(PlacedSet set, PointRule rule) {
    StoredSet stored{.placed = std::move(set)};
    stored.point = pointVelocity(stored.placed.set, rule);
    if (stored.point)
        for (const Rep& rep : stored.placed.set.reps)
            stored.counting += rep.excluded.empty() ? 1 : 0;
    return stored;
}

} // namespace slopebook::log
