// SPDX-License-Identifier: GPL-3.0-or-later
// Published equations of %1RM on velocity. Coefficients from memory, each checked against the
// velocity that its paper gives for 100 %; drawn beside a squad's own relation, and used for a
// figure only when the coach asks.
#pragma once

#include "core/model/lift.h"
#include "core/model/words.h"

#include <optional>
#include <span>
#include <string_view>

namespace slopebook::answers {

struct PublishedRelation {
    std::string_view lift;
    VelocityKind kind = VelocityKind::Mean;
    double c0 = 0, c1 = 0, c2 = 0;  ///< % = c0 + c1 v + c2 v^2
    std::optional<double> see = {}; ///< % of 1RM, where known
    std::string_view source = {};
    double percentAt(double velocity) const { return c0 + velocity * (c1 + velocity * c2); }
};

std::span<const PublishedRelation> publishedRelations();

/// The equation of that lift (letter case aside; "Full squat" is "Full squat (guided bar)" too) and
/// velocity kind; nothing where there is none.
std::optional<PublishedRelation> publishedRelation(std::string_view lift, VelocityKind kind);

/// "the published equation (...)", with its source.
Words nameOf(const PublishedRelation& relation);

/// The velocity at which the equation says percent: the falling root.
double velocityAt(const PublishedRelation& relation, double percent);

} // namespace slopebook::answers
