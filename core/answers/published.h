// SPDX-License-Identifier: GPL-3.0-or-later
// Defaults from the literature, each with its source: resources/published.csv, compiled in.
#pragma once

#include "core/model/lift.h"

#include <optional>
#include <span>
#include <string>

namespace slopebook::answers {

struct PublishedLift {
    std::string lift;
    VelocityKind kind = VelocityKind::Mean;
    std::optional<Mvt> mvt;
    std::optional<double> dayNoise; ///< SD, m/s
    std::string dayNoiseSource;
    std::optional<double> smallestVelocity;     ///< m/s
    std::optional<double> smallestOneRmPercent; ///< % of the earlier estimate
    std::string smallestSource;
};

std::span<const PublishedLift> publishedLifts();

/// The row of that name (letter case aside) and velocity kind, else the row "*" of that kind with
/// its noise and smallest changes only, else nothing.
std::optional<PublishedLift> published(const std::string& lift, VelocityKind kind);

} // namespace slopebook::answers
