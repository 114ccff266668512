// SPDX-License-Identifier: GPL-3.0-or-later
// From a share of the estimated 1RM to the speed that the line says of it, and back.
#pragma once

#include "core/answers/profile.h"

namespace slopebook::answers {

/// m/s at percent of the estimated 1RM; nothing without an estimate.
inline std::optional<double> speedAtShare(const Profile& profile, double percent) {
    if (!profile.oneRm)
        return std::nullopt;
    return profile.line.at(percent / 100 * profile.oneRm->estimate);
}

/// Percent of the estimated 1RM at which the line says that speed (m/s); nothing without an
/// estimate, or for a speed that the line has at no load above zero.
inline std::optional<double> shareAtSpeed(const Profile& profile, double speed) {
    if (!profile.oneRm)
        return std::nullopt;
    const double load = profile.line.xMean + (speed - profile.line.yMean) / profile.line.slope;
    return load > 0 ? std::optional(100 * load / profile.oneRm->estimate) : std::nullopt;
}

} // namespace slopebook::answers
