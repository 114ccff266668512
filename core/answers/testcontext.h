// SPDX-License-Identifier: GPL-3.0-or-later
// What was different around a test on two days: its surface, device, footwear, technique.
#pragma once

#include "core/model/battery.h"
#include "core/model/words.h"

#include <string>
#include <string_view>
#include <vector>

namespace slopebook::answers {

/// "surface", "turf", "boards".
struct ContextChange {
    enum class Of { Surface, Device, Footwear, Technique };
    Of what = Of::Surface;
    std::string before = {}, after = {};
    friend bool operator==(const ContextChange&, const ContextChange&) = default;
};
/// "surface", "device", "footwear", "technique".
std::string_view word(ContextChange::Of what);
/// "surface: turf, then boards".
Words changeWords(const ContextChange& change);
/// That a difference may be its doing.
Words contextNote(const ContextChange& change);
/// What differs between two contexts; what is not written down on a side does not count.
std::vector<ContextChange> contextChanges(const TestContext& before, const TestContext& after);

} // namespace slopebook::answers
