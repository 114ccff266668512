// SPDX-License-Identifier: GPL-3.0-or-later
// Defaults from the literature, each with its source: resources/published.csv, compiled in.
#pragma once

#include "core/model/lift.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::answers {

struct PublishedLift {
    std::string lift = {};
    VelocityKind kind = VelocityKind::Mean;
    std::optional<Mvt> mvt = {};
    std::optional<double> dayNoise = {}; ///< SD, m/s
    std::string dayNoiseSource = {};
    std::optional<double> smallestVelocity = {};     ///< m/s
    std::optional<double> smallestOneRmPercent = {}; ///< % of the earlier estimate
    std::string smallestSource = {};
};

/// Reads a text laid out as resources/published.csv. Throws BadInput (line, column) for a value
/// that is no figure, a kind that is none, or a figure without its source.
std::vector<PublishedLift> parsePublished(std::string_view csv);

/// The rows of resources/published.csv, in its order; "*" stands for any lift of that kind.
std::span<const PublishedLift> publishedLifts();

/// The row of that name (letter case aside) and velocity kind, its gaps in noise and smallest
/// changes filled from the row "*" of that kind; without such a row, the row "*" itself, which has
/// no MVT. Nothing where neither is there.
std::optional<PublishedLift> published(const std::string& lift, VelocityKind kind);

} // namespace slopebook::answers
