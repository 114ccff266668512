// SPDX-License-Identifier: GPL-3.0-or-later
// Under what a lift or a test was measured: what a comparison of two days of it rests on, and
// nothing that belongs to another lift or test of the same session.
#pragma once

#include "core/model/ids.h"

#include <optional>
#include <string>

namespace slopebook {

/// Of one lift or one test in one session. Empty, or none: not written down.
struct Conditions {
    std::optional<DeviceId> device{};
    std::string place{}, surface{}, footwear{}, technique{};
    std::string notComparable{}; ///< the coach's reason why this stands beside no other day of the
                                 ///< same lift or test; empty: it may
    friend bool operator==(const Conditions&, const Conditions&) = default;
};

} // namespace slopebook
