// SPDX-License-Identifier: GPL-3.0-or-later
// What was different around a lift or a test on two days, and whether the two may be compared at
// all (testday.md).
#pragma once

#include "core/model/conditions.h"
#include "core/model/people.h"
#include "core/model/words.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::answers {

/// "surface", "turf", "boards".
struct ConditionChange {
    enum class Of { Surface, Device, Footwear, Place, Technique };
    Of what = Of::Surface;
    std::string before = {}, after = {};
    friend bool operator==(const ConditionChange&, const ConditionChange&) = default;
};
/// "surface", "device", "footwear", "place", "technique".
std::string_view word(ConditionChange::Of what);
/// "surface: turf, then boards".
Words changeWords(const ConditionChange& change);
/// That a difference may be its doing.
Words conditionNote(const ConditionChange& change);

using Devices = std::span<const Stored<DeviceId, Device>>;

/// What differs between the conditions of two days; what is not written down on a side does not
/// count. devices: their names.
std::vector<ConditionChange> conditionChanges(const Conditions& before, const Conditions& after,
                                              Devices devices);

/// "on another surface, in other footwear": what a reading is told with; empty where nothing
/// differs.
Words underWords(std::span<const ConditionChange> changes);

/// Why the two stand beside no other day, by what the coach wrote; empty where they may.
Words notComparableWords(const Conditions& before, const Conditions& after);

/// How two days of one lift differ.
struct Under {
    std::vector<ConditionChange> changes = {};
    Words notComparable = {}; ///< why they may not be compared; empty: they may
};
/// biasTakenOff: a study of the two devices corrects the later one, which then is no change;
/// without one another device makes them not comparable.
Under underOf(const Conditions& before, const Conditions& after, Devices devices,
              bool biasTakenOff);

} // namespace slopebook::answers
